package org.fencecore.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Curves of public descriptions; where each comes from heads its file or stands beside its check. */
class CurveReferenceTest {

    private static final Angle SECOND = Angle.ofDms(0, 0, 1);

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/survey/curves.csv", useHeadersInDisplayName = true, quoteCharacter = '~')
    void arcsAndChords(
            String name,
            double radius,
            String delta,
            double arc,
            double arcTolerance,
            double chord,
            double chordTolerance) {
        Curve curve = Curve.of(Side.RIGHT, ft(radius), Angle.parse(delta));
        assertThat(curve.arc().feet()).as(name).isCloseTo(arc, within(arcTolerance));
        assertThat(curve.chord().feet()).as(name).isCloseTo(chord, within(chordTolerance));

        // The same curve from each other pair of calls that makes one.
        CurveCall[] calls = {
            call().radius(ft(radius)).arc(curve.arc()),
            curve.isMajor()
                    ? call().radius(ft(radius)).chord(curve.chord()).major()
                    : call().radius(ft(radius)).chord(curve.chord()).minor(),
            call().delta(Angle.parse(delta)).arc(curve.arc()),
            call().delta(Angle.parse(delta)).chord(curve.chord())
        };
        for (CurveCall call : calls) {
            Curve again = call.build().curve().orElseThrow();
            assertThat(again.radius().feet()).isCloseTo(radius, within(1e-6));
            assertThat(again.delta().minus(Angle.parse(delta)).abs()).isLessThan(SECOND.times(1e-3));
        }
    }

    private static CurveCall call() {
        return Course.curve(Side.RIGHT).chordBearing(Bearing.NORTH);
    }

    /**
     * United States Executive Order 5265: all calls of the curve agree. Tangent 69.5675, middle ordinate 7.7183, sector
     * 20,615.947 and segment 699.406 sq ft recomputed from them apart from this library.
     */
    @Test
    void executiveOrder5265() {
        Course course = Course.curve(Side.RIGHT)
                .radius(ft(301.53))
                .delta(Angle.parse("25°59'"))
                .arc(ft(136.73))
                .chord(ft(135.57))
                .chordBearing(Bearing.parse("S 5°55'30\" E"))
                .tangentOut(Bearing.parse("S 7°04' W"))
                .build();
        assertThat(course.findings()).isEmpty();
        assertThat(course.tangentIn().roundedTo(SECOND)).hasToString("S 18°55' E"); // azimuth 161°05'
        assertThat(course.tangentOut().roundedTo(SECOND)).hasToString("S 7°04' W");
        Curve curve = course.curve().orElseThrow();
        assertThat(curve.tangent().orElseThrow().feet()).isCloseTo(69.5675, within(0.00005));
        assertThat(curve.middleOrdinate().feet()).isCloseTo(7.7183, within(0.00005));
        assertThat(curve.sectorArea().squareFeet()).isCloseTo(20_615.947, within(0.0005));
        assertThat(curve.segmentArea().squareFeet()).isCloseTo(699.406, within(0.0005));
        assertThat(curve.worksheet().result()).isEqualTo(curve.segmentArea());
    }

    /**
     * A lot on that curve, which bulges into it, recomputed by two methods apart from this library: PT at N -134.849267, E
     * 13.994786, then azimuth 97°04' 100.00, N 5°55'30" W 180.535385 and S 71°05' W 100.00; chord polygon 15,400.8696 less
     * the segment is 14,701.4631 sq ft.
     */
    @Test
    void aLotOnThatCurve() {
        Course curve = Course.curve(Side.RIGHT)
                .radius(ft(301.53))
                .delta(Angle.parse("25°59'"))
                .tangentIn(Bearing.ofAzimuth(Angle.parse("161°05'")))
                .build();
        LotBoundary lot = LotBoundary.of(List.of(
                curve,
                Course.of(Bearing.ofAzimuth(Angle.parse("97°04'")), ft(100)),
                Course.of(Bearing.parse("N5°55'30\"W"), ft(180.535385)),
                Course.of(Bearing.parse("S71°05'00\"W"), ft(100))));
        Point pt = Point.ORIGIN.plus(curve.bearing(), curve.distance());
        assertThat(pt.north().feet()).isCloseTo(-134.849267, within(1e-6));
        assertThat(pt.east().feet()).isCloseTo(13.994786, within(1e-6));
        assertThat(lot.closure().misclosure().feet()).isLessThan(1e-5);
        assertThat(lot.findings()).isEmpty();
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(14_701.4631, within(0.0005));
        // The other way: (R + 100)^2 sin(delta) / 2 - R^2 delta / 2.
        double delta = Math.toRadians(25 + 59 / 60.0);
        double byRadii = 401.53 * 401.53 * Math.sin(delta) / 2 - 301.53 * 301.53 * delta / 2;
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(byRadii, within(0.001));
        double chords = LotBoundary.ofCorners(
                        lot.sides().stream().map(LotSide::start).toList())
                .area()
                .orElseThrow()
                .squareFeet();
        assertThat(chords).isCloseTo(15_400.8696, within(0.0005));
    }

    /** Cabarrus County, North Carolina, easement, document 1617322, p. 59: curve left, chord S 67°23'26" W. */
    @Test
    void cabarrusEasement() {
        Course course = Course.curve(Side.LEFT)
                .radius(ft(326.00))
                .arc(ft(254.40))
                .chord(ft(247.99))
                .chordBearing(Bearing.parse("S67°23'26\"W"))
                .build();
        assertThat(course.findings()).isEmpty();
        assertThat(course.curve()
                        .orElseThrow()
                        .delta()
                        .minus(Angle.parse("44°42'42.5\""))
                        .abs())
                .isLessThan(SECOND);
        assertThat(course.tangentIn().turnTo(course.tangentOut()).degrees()).isCloseTo(-44.7118, within(0.0001));
    }

    /**
     * The same page's tie: radius 460.00, arc 69.28, printed chord 69.22 (69.2145 by radius and arc), which rounding of a
     * hundredth allows; and the arc of a curve whose tangents are called, rpls.com: N 56°13'49" E to N 89°31'17" E.
     */
    @Test
    void callsThatAgreeWithinTheirRounding() {
        Course tie = call().radius(ft(460)).arc(ft(69.28)).chord(ft(69.22)).build();
        assertThat(tie.findings()).isEmpty();
        assertThat(tie.distance().feet()).isCloseTo(69.2145, within(0.0001));

        Course byTangents = Course.curve(Side.RIGHT)
                .radius(ft(160))
                .tangentIn(Bearing.parse("N56°13'49\"E"))
                .tangentOut(Bearing.parse("N89°31'17\"E"))
                .arc(ft(92.97))
                .build();
        assertThat(byTangents.findings()).isEmpty();
        assertThat(byTangents
                        .curve()
                        .orElseThrow()
                        .delta()
                        .minus(Angle.parse("33°17'28\""))
                        .abs())
                .isLessThan(SECOND.times(0.01));
        Course byDelta = Course.curve(Side.RIGHT)
                .radius(ft(160))
                .delta(Angle.parse("33°17'28\""))
                .tangentIn(Bearing.parse("N56°13'49\"E"))
                .build();
        assertThat(byDelta.tangentOut().roundedTo(SECOND)).hasToString("N 89°31'17\" E");
    }

    /** Monroe County, Florida, Resolution 315-2005: the corner between a fillet of 25 ft and its tangents, R²(1 - pi/4). */
    @Test
    void cornerOfAFillet() {
        Curve fillet = Curve.of(Side.LEFT, ft(25), Angle.RIGHT);
        Length tangent = fillet.tangent().orElseThrow();
        double corner =
                tangent.times(tangent).squareFeet() - fillet.sectorArea().squareFeet();
        assertThat(corner).isCloseTo(134.126, within(0.0005));
    }

    /** Esri knowledge base 000014063: radius 100 and chord 146.40 S 0°59'26" W fit a short and a long curve. */
    @Test
    void radiusAndChordAloneAreTwoCurves() {
        CurveCall call =
                Course.curve(Side.RIGHT).radius(ft(100)).chord(ft(146.40)).chordBearing(Bearing.parse("S0°59'26\"W"));
        assertThat(call.build().findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("curve-minor-assumed");
            assertThat(finding.message()).contains("164.25 ft");
        });
        Course major = call.major().build();
        assertThat(major.findings()).isEmpty();
        assertThat(major.length().feet()).isCloseTo(464.068, within(0.0005));
        Course minor = call.minor().build();
        assertThat(minor.findings()).isEmpty();
        assertThat(minor.length().feet()).isCloseTo(164.251, within(0.0005));
        assertThat(minor.distance()).isEqualTo(major.distance());
    }

    private static Length ft(double feet) {
        return Length.ofFeet(feet);
    }
}
