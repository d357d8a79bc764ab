package org.fencecore.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class ClosureDiagnosisTest {

    /** A lot of four unlike sides that closes, so that only the wrong course can be suspected. */
    private static List<Course> sound() {
        List<Course> courses = new ArrayList<>(List.of(
                Course.of(Bearing.parse("N 57°12' E"), Length.ofFeet(118.40)),
                Course.of(Bearing.parse("S 41°05' E"), Length.ofFeet(76.85)),
                Course.of(Bearing.parse("S 46°40' W"), Length.ofFeet(94.13))));
        courses.add(LotBoundary.of(courses).diagnosis().missing().orElseThrow());
        return courses;
    }

    private static ClosureDiagnosis with(int number, Course wrong) {
        List<Course> courses = sound();
        courses.set(number - 1, wrong);
        return LotBoundary.of(courses).diagnosis();
    }

    @Test
    void aSoundLotHasNothingLikely() {
        LotBoundary lot = LotBoundary.of(sound());
        assertThat(lot.closure().misclosure().millimetres()).isLessThan(0.001);
        assertThat(lot.diagnosis().likely()).isEmpty();
        assertThat(lot.diagnosis().fixes()).hasSize(4);
        assertThat(lot.diagnosis().missing()).isEmpty();
    }

    @Test
    void twoDigitsOfALengthSwapped() {
        CourseFix fix = only(with(2, Course.of(Bearing.parse("S 41°05' E"), Length.ofFeet(67.85))));
        assertThat(fix.number()).isEqualTo(2);
        assertThat(fix.change()).isEqualTo(CourseChange.LENGTH);
        assertThat(fix.reading()).contains("two digits swapped, 76.85 ft for 67.85 ft");
        assertThat(fix.corrected().orElseThrow()).hasToString("S 41°05' E, 76.85 ft");
        assertThat(fix.misclosure().feet()).isLessThan(0.001);
    }

    @Test
    void oneDigitOfALengthInMetres() {
        List<Course> courses = sound();
        Length metric = Length.ofMetres(25.300);
        courses.set(1, Course.of(courses.get(1).bearing(), metric));
        courses.remove(3);
        Course last = LotBoundary.of(courses).diagnosis().missing().orElseThrow();
        courses.add(last);
        courses.set(1, Course.of(courses.get(1).bearing(), Length.ofMetres(28.300)));
        CourseFix fix = only(LotBoundary.of(courses).diagnosis());
        assertThat(fix.reading()).contains("one digit, 25.300 m for 28.300 m");
    }

    @Test
    void lettersOfTheQuadrantSwapped() {
        CourseFix fix = only(with(3, Course.of(Bearing.parse("S 46°40' E"), Length.ofFeet(94.13))));
        assertThat(fix.number()).isEqualTo(3);
        assertThat(fix.change()).isEqualTo(CourseChange.BEARING);
        assertThat(fix.reading()).contains("E and W swapped");
        fix = only(with(3, Course.of(Bearing.parse("N 46°40' W"), Length.ofFeet(94.13))));
        assertThat(fix.reading()).contains("N and S swapped");
        assertThat(fix.corrected().orElseThrow()).hasToString("S 46°40' W, 94.13 ft");
    }

    @Test
    void aCourseCalledTheWrongWayRound() {
        CourseFix fix = only(with(1, Course.of(Bearing.parse("S 57°12' W"), Length.ofFeet(118.40))));
        assertThat(fix.number()).isEqualTo(1);
        assertThat(fix.reading()).contains("called the wrong way round");
    }

    @Test
    void oneDigitOfABearing() {
        CourseFix fix = only(with(1, Course.of(Bearing.parse("N 37°12' E"), Length.ofFeet(118.40))));
        assertThat(fix.number()).isEqualTo(1);
        assertThat(fix.reading()).contains("one digit, 57°12' for 37°12' in the bearing");
        // With seconds, which stay as they are.
        List<Course> courses = sound();
        Bearing withSeconds = Bearing.parse("N 57°12'20\" E");
        courses.set(0, Course.of(withSeconds, Length.ofFeet(118.40)));
        courses.remove(3);
        courses.add(LotBoundary.of(courses).diagnosis().missing().orElseThrow());
        courses.set(0, Course.of(Bearing.parse("N 75°12'20\" E"), Length.ofFeet(118.40)));
        fix = only(LotBoundary.of(courses).diagnosis());
        assertThat(fix.reading().orElseThrow()).startsWith("two digits swapped, 57°12' for 75°12'");
        assertThat(fix.corrected().orElseThrow().bearing().turnTo(withSeconds).abs())
                .isLessThan(Angle.ofDms(0, 0, 1).times(0.001));
    }

    @Test
    void aWrongLengthOnParallelSidesFitsBoth() {
        LotBoundary lot = LotBoundary.of(List.of(
                Course.of(Bearing.NORTH, Length.ofFeet(53.7)),
                Course.of(Bearing.EAST, Length.ofFeet(40)),
                Course.of(Bearing.SOUTH, Length.ofFeet(50)),
                Course.of(Bearing.WEST, Length.ofFeet(40))));
        assertThat(lot.diagnosis().likely()).extracting(CourseFix::number).containsExactly(1, 3);
        assertThat(lot.diagnosis().likely()).extracting(CourseFix::change).containsOnly(CourseChange.LENGTH);
        assertThat(lot.findings().get(0).remedy())
                .contains("look first at course 1 as N 0° E, 50.00 ft instead of 53.70 ft closes to 0.00 ft")
                .contains(", or at course 3 as S 0° E, 53.70 ft instead of 50.00 ft");
    }

    @Test
    void aCourseTooManyAndOneTooFew() {
        List<Course> courses = sound();
        courses.add(2, Course.of(Bearing.parse("N 11°11' W"), Length.ofFeet(33)));
        CourseFix fix = only(LotBoundary.of(courses).diagnosis());
        assertThat(fix.number()).isEqualTo(3);
        assertThat(fix.change()).isEqualTo(CourseChange.LEFT_OUT);
        assertThat(fix.corrected()).isEmpty();

        List<Course> few = sound();
        Course lost = few.remove(1);
        Course missing = LotBoundary.of(few).diagnosis().missing().orElseThrow();
        assertThat(missing.distance().feet()).isCloseTo(lost.distance().feet(), within(1e-6));
        assertThat(missing.bearing().turnTo(lost.bearing()).abs())
                .isLessThan(Angle.ofDms(0, 0, 1).times(0.001));
    }

    @Test
    void whatNoSingleChangeCloses() {
        LotBoundary lot = LotBoundary.of(List.of(
                Course.of(Bearing.parse("N 10° E"), Length.ofFeet(50)),
                Course.of(Bearing.parse("S 70° E"), Length.ofFeet(33)),
                Course.of(Bearing.parse("S 25° E"), Length.ofFeet(91))));
        assertThat(lot.diagnosis().likely()).isEmpty();
        assertThat(lot.findings().get(0).remedy())
                .endsWith("; no change of the bearing or the length of a single course closes it");
        assertThat(lot.diagnosis().worksheet().result()).isEqualTo(0);
    }

    @Test
    void aCurveIsDiagnosedByItsChord() {
        List<Course> courses = List.of(
                Course.of(Bearing.EAST, Length.ofFeet(75)),
                Course.curve(Side.LEFT)
                        .radius(Length.ofFeet(25))
                        .delta(Angle.RIGHT)
                        .chordBearing(Bearing.parse("N 54° E"))
                        .build(),
                Course.of(Bearing.NORTH, Length.ofFeet(95)),
                Course.of(Bearing.WEST, Length.ofFeet(100)),
                Course.of(Bearing.SOUTH, Length.ofFeet(120)));
        CourseFix fix = LotBoundary.of(courses).diagnosis().likely().get(0);
        assertThat(fix.number()).isEqualTo(2);
        assertThat(fix.reading()).contains("two digits swapped, 45° for 54° in the bearing");
        assertThat(fix.corrected().orElseThrow().curve()).isPresent();
        assertThat(fix.worksheet().result()).isEqualTo(fix.closingLength());
    }

    private static CourseFix only(ClosureDiagnosis diagnosis) {
        assertThat(diagnosis.likely()).hasSize(1);
        return diagnosis.likely().get(0);
    }
}
