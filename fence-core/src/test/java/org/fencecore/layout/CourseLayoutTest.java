package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.stream.IntStream;
import org.fencecore.EqualValues;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

class CourseLayoutTest {

    private static final BoardPattern TIGHT = BoardPattern.sideBySide(in(5.5));

    /*
     * By hand: 66 in is 12 courses of 5 1/2 in. In 24 ft with posts at 6, 12 and 18 ft and boards of 12 ft, two boards do
     * with the joint at 12; without a joint at 12, it is 6 + 12 + 6.
     */
    @Test
    void theExample() {
        CourseLayout layout = CourseLayout.fit(in(66), TIGHT, ft(24), List.of(ft(6), ft(12), ft(18)), ft(12));

        assertThat(layout.courses().count()).isEqualTo(12);
        assertThat(layout.pieces(0)).containsExactly(feet(0, 12), feet(12, 24));
        assertThat(layout.pieces(1)).containsExactly(feet(0, 6), feet(6, 18), feet(18, 24));
        assertThat(layout.pieces(10)).isEqualTo(layout.pieces(0));
        assertThat(layout.pieceCount()).isEqualTo(30);
        assertThat(layout.findings()).isEmpty();
        assertThat(layout.jointsInLine()).isEmpty();
        assertThat(layout.worksheet().result()).isEqualTo(30);
        assertThat(layout.worksheet().toText()).contains("elsewhere = 6 x 2 + 6 x 3 = 30");
        assertThat(layout).hasToString("12 courses of 24' 0\" in 30 boards");
    }

    @Test
    void boardsOfOneBayHaveTheirJointsInLine() {
        CourseLayout layout = CourseLayout.fit(in(66), TIGHT, ft(24), List.of(ft(8), ft(16)), ft(8));

        assertThat(layout.pieces(1)).isEqualTo(layout.pieces(0)).hasSize(3);
        assertThat(layout.jointsInLine()).containsExactly(ft(8), ft(16));
        assertThat(layout.findings()).extracting(Finding::code).containsExactly("joints-in-line");
        assertThat(layout.findings().get(0).message())
                .isEqualTo("2 posts have a joint in every course, the first at 8' 0\"");
        // One course alone has none above it.
        assertThat(CourseLayout.fit(in(5.5), TIGHT, ft(24), List.of(ft(8), ft(16)), ft(8))
                        .findings())
                .isEmpty();
    }

    @Test
    void aBayLongerThanABoardIsFound() {
        CourseLayout layout = CourseLayout.fit(in(66), TIGHT, ft(20), List.of(ft(8)), ft(10));

        assertThat(layout.pieces(0)).containsExactly(feet(0, 8), feet(8, 20));
        assertThat(layout.findings()).extracting(Finding::code).contains("bay-longer-than-board");
    }

    @Test
    void aShadowboxOfCoursesCountsBothFaces() {
        // 94 1/2 in is 11 courses outside and 10 inside: 6 + 5 of 1 board, 5 + 5 of 1.
        CourseLayout layout = CourseLayout.fit(in(94.5), BoardPattern.shadowbox(in(5.5)), ft(8), List.of(), ft(8));

        assertThat(layout.pieceCount()).isEqualTo(21);
        assertThat(layout.findings()).isEmpty();
    }

    @Test
    void tenThousandPostsAreNoTrouble() {
        List<Length> posts =
                IntStream.rangeClosed(1, 10_000).mapToObj(i -> ft(8).times(i)).toList();
        CourseLayout layout = CourseLayout.fit(in(66), TIGHT, ft(80_008), posts, ft(16));

        assertThat(layout.pieces(0)).hasSize(5_001);
        assertThat(layout.pieces(1)).hasSize(5_001);
        assertThat(layout.jointsInLine()).isEmpty();
    }

    @Test
    void theSheetBeginsWithTheCourses() {
        CourseLayout layout = CourseLayout.fit(in(66), TIGHT, ft(24), List.of(ft(6), ft(12), ft(18)), ft(12));
        assertThat(layout.worksheet().toText())
                .startsWith("Courses\n  clear length = 5' 6\"   [given]\n  board width = 5 1/2\"   [given]\n")
                .contains("spaces = boards - 1 = 12 - 1 = 11");
    }

    @Test
    void equalCoursesAreEqual() {
        EqualValues.assertDistinct(
                () -> CourseLayout.fit(in(66), TIGHT, ft(24), List.of(ft(12)), ft(12)),
                () -> CourseLayout.fit(in(60.5), TIGHT, ft(24), List.of(ft(12)), ft(12)),
                () -> CourseLayout.fit(in(66), TIGHT, ft(23), List.of(ft(12)), ft(12)),
                () -> CourseLayout.fit(in(66), TIGHT, ft(24), List.of(ft(11)), ft(12)),
                () -> CourseLayout.fit(in(66), TIGHT, ft(24), List.of(ft(12)), ft(13)),
                () -> CourseLayout.fit(in(66), TIGHT, ft(24), List.of(ft(6), ft(12), ft(18)), ft(12)));
    }

    @Test
    void badInputIsRefused() {
        assertRefused(in(5), ft(8), List.of(), ft(8), "clearLength was 5 in");
        assertRefused(in(66), Length.ZERO, List.of(), ft(8), "length was 0 in");
        assertRefused(in(66), ft(8), List.of(), Length.ZERO, "longest was 0 in");
        List<Length> tooMany =
                IntStream.rangeClosed(1, 10_001).mapToObj(i -> in(1).times(i)).toList();
        assertRefused(in(66), ft(8_000), tooMany, ft(8), "posts were 10001; a course passes up to 10000");
        assertRefused(in(66), ft(8), List.of(ft(8)), ft(8), "post 1 was at 8 ft");
        assertRefused(in(66), ft(8), List.of(ft(4), ft(4)), ft(8), "post 2 was at 4 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        CourseLayout.fit(in(66), TIGHT, ft(8), List.of(), ft(8)).pieces(12))
                .withMessageContaining("course was 12; it must be from 0 to 11");
    }

    private static void assertRefused(Length height, Length length, List<Length> posts, Length longest, String part) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CourseLayout.fit(height, TIGHT, length, posts, longest))
                .withMessageContaining(part);
    }

    private static Interval feet(double from, double to) {
        return Interval.of(ft(from), ft(to));
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }

    private static Length ft(double feet) {
        return Length.ofFeet(feet);
    }
}
