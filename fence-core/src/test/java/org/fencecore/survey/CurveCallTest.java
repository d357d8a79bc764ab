package org.fencecore.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

class CurveCallTest {

    private static final Angle QUARTER = Angle.RIGHT;

    @Test
    void aCurveContinuesTheCourseBefore() {
        Course front = Course.of(Bearing.parse("N 90° E"), Length.parse("80 ft"));
        Course rounding = Course.curve(Side.RIGHT)
                .radius(Length.parse("25 ft"))
                .delta(QUARTER)
                .tangentTo(front)
                .build();
        assertThat(rounding.bearing().roundedTo(Angle.ofDms(0, 0, 1))).hasToString("S 45° E");
        assertThat(rounding.distance().feet()).isCloseTo(35.3553, within(0.0001));
        assertThat(rounding.length().feet()).isCloseTo(39.2699, within(0.0001));
        assertThat(rounding.tangentOut().turnTo(Bearing.SOUTH).abs()).isLessThan(Angle.ofDms(0, 0, 1));
        assertThat(Course.curve(Side.LEFT)
                        .radius(Length.ofFeet(25))
                        .arc(Length.ofFeet(10))
                        .tangentTo(rounding)
                        .build()
                        .tangentIn()
                        .turnTo(rounding.tangentOut())
                        .abs())
                .isLessThan(Angle.ofDms(0, 0, 1).times(1e-6));
        assertThat(rounding.toString())
                .startsWith("curve right, radius 25.00 ft, delta 90°, arc 39.27 ft, chord S 45° E, 35.36 ft");
    }

    @Test
    void callsThatContradictEachOtherAreTold() {
        // By hand: 25 ft and a quarter turn make an arc of 39.27 ft and a chord of 35.36 ft.
        Course course = Course.curve(Side.RIGHT)
                .radius(Length.ofFeet(25))
                .delta(QUARTER)
                .arc(Length.ofFeet(39.72))
                .chord(Length.ofFeet(35.63))
                .tangentIn(Bearing.EAST)
                .tangentOut(Bearing.parse("S 2° W"))
                .build();
        assertThat(course.findings()).extracting(Finding::code).containsOnly("curve-calls-disagree");
        assertThat(course.findings())
                .extracting(Finding::message)
                .containsExactly(
                        "the arc called, 39.72 ft, does not fit the other calls: radius 25.00 ft and delta 90° make"
                                + " 39.27 ft",
                        "the chord called, 35.63 ft, does not fit the other calls: radius 25.00 ft and delta 90° make"
                                + " 35.36 ft",
                        "the tangent at the end called, S 2° W, does not fit the other calls: radius 25.00 ft and delta"
                                + " 90° make S 0° E");
        assertThat(course.length().feet()).isCloseTo(39.27, within(0.005));
        LotBoundary lot = LotBoundary.of(List.of(
                Course.of(Bearing.EAST, Length.ofFeet(75)),
                course,
                Course.of(Bearing.SOUTH, Length.ofFeet(95)),
                Course.of(Bearing.WEST, Length.ofFeet(100)),
                Course.of(Bearing.NORTH, Length.ofFeet(120))));
        assertThat(lot.findings()).hasSize(3).allSatisfy(finding -> {
            assertThat(finding.place()).isEqualTo("course 2");
            assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        });
    }

    @Test
    void anArcCountedInChordsOfAHundredFeet() {
        // Degree of curve 10° by chords: R = 50 ft / sin 5° = 573.686 ft; delta 30° is then 300 ft in chords of 100 ft,
        // and 300.38 ft along the curve (from memory: the two definitions of the degree of curve).
        Length radius = Length.ofFeet(50 / Math.sin(Math.toRadians(5)));
        Course course = Course.curve(Side.LEFT)
                .radius(radius)
                .delta(Angle.ofDegrees(30))
                .arc(Length.ofFeet(300))
                .tangentIn(Bearing.NORTH)
                .build();
        assertThat(course.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("curve-arc-by-chords");
            assertThat(finding.message())
                    .contains("300.00 ft")
                    .contains("chords of 100 ft")
                    .contains("300.38 ft");
        });
        assertThat(course.length().feet()).isCloseTo(300.38, within(0.005));
        // The same told by the chord in place of delta.
        Course byChord = Course.curve(Side.LEFT)
                .radius(radius)
                .arc(Length.ofFeet(300))
                .chord(Length.ofFeet(296.96))
                .tangentIn(Bearing.NORTH)
                .build();
        assertThat(byChord.findings()).extracting(Finding::code).containsExactly("curve-arc-by-chords");
        assertThat(byChord.length().feet()).isCloseTo(300.38, within(0.01));
        // An arc that fits neither is a contradiction.
        Course wrong = Course.curve(Side.LEFT)
                .radius(radius)
                .delta(Angle.ofDegrees(30))
                .arc(Length.ofFeet(303))
                .tangentIn(Bearing.NORTH)
                .build();
        assertThat(wrong.findings()).extracting(Finding::code).containsExactly("curve-calls-disagree");
    }

    @Test
    void howFinelyLengthsAreCalledDecides() {
        CurveCall call = Course.curve(Side.RIGHT)
                .radius(Length.ofMetres(25))
                .delta(QUARTER)
                .arc(Length.ofMetres(39.3))
                .chordBearing(Bearing.EAST);
        assertThat(call.build().findings()).extracting(Finding::code).containsExactly("curve-calls-disagree");
        assertThat(call.lengthsTo(Length.ofMetres(0.1)).build().findings()).isEmpty();
    }

    @Test
    void directionsStandForDelta() {
        Course byChord = Course.curve(Side.LEFT)
                .chord(Length.ofFeet(100))
                .tangentIn(Bearing.NORTH)
                .chordBearing(Bearing.parse("N 30° W"))
                .build();
        assertThat(byChord.curve().orElseThrow().delta().degrees()).isCloseTo(60, within(1e-9));
        assertThat(byChord.curve().orElseThrow().radius().feet()).isCloseTo(100, within(1e-6));
        Course byEnd = Course.curve(Side.LEFT)
                .radius(Length.ofFeet(100))
                .chordBearing(Bearing.parse("N 30° W"))
                .tangentOut(Bearing.parse("N 60° W"))
                .build();
        assertThat(byEnd.distance().feet()).isCloseTo(100, within(1e-6));
        assertThat(byEnd.tangentIn().turnTo(Bearing.NORTH).abs()).isLessThan(Angle.ofDms(0, 0, 1));
    }

    @Test
    void tooLittleOrImpossibleCallsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.curve(Side.LEFT)
                        .arc(Length.ofFeet(10))
                        .chord(Length.ofFeet(9))
                        .chordBearing(Bearing.EAST)
                        .build())
                .withMessageContaining("called by arc 10 ft, chord 9 ft and chord bearing")
                .withMessageContaining("look for the radius");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.curve(Side.LEFT).build())
                .withMessageContaining("called by nothing");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.curve(Side.LEFT)
                        .radius(Length.ofFeet(10))
                        .delta(QUARTER)
                        .build())
                .withMessageContaining("without a direction");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.curve(Side.LEFT)
                        .radius(Length.ofFeet(10))
                        .chord(Length.ofFeet(21))
                        .chordBearing(Bearing.EAST)
                        .build())
                .withMessageContaining("chord was 21 ft and radius 10 ft")
                .withMessageContaining("at most the diameter, 20 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.curve(Side.LEFT)
                        .radius(Length.ofFeet(10))
                        .arc(Length.ofFeet(63))
                        .chordBearing(Bearing.EAST)
                        .build())
                .withMessageContaining("arc was 63 ft")
                .withMessageContaining("shorter than the whole circle");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.curve(Side.LEFT).delta(Angle.ofDegrees(-30)))
                .withMessageContaining("delta was -30°")
                .withMessageContaining("without a sign");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Curve.of(Side.LEFT, Length.ofFeet(10), Angle.ofDegrees(360)))
                .withMessageContaining("360");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Curve.of(Side.LEFT, Length.ofFeet(1), Angle.ofDegrees(359.999)))
                .withMessageContaining("as two curves");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.curve(Side.LEFT).radius(Length.ZERO))
                .withMessageContaining("radius was 0 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.curve(Side.LEFT).lengthsTo(Length.ZERO))
                .withMessageContaining("step was 0 in");
    }
}
