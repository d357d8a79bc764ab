package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** Arithmetic by hand; which board is ripped is common practice, no source. */
class RippingTest {

    /** 1/4 in less than 2 in apart at the least, so that no count of full boards fits 99 in: 13 leave 2.29, 14 leave 1.69. */
    private static final BoardPattern APART =
            BoardPattern.spaced(in(5.5), in(2)).withGaps(in(1.75), in(2), in(2));

    /* 14 x 5.5 + 13 x 2 = 103, 4 in over 99. One board of 1 1/2 is under half; two of 3 1/2 are not. */
    @Test
    void theFewestAreTwo() {
        BoardLayout layout = BoardLayout.fit(in(99), APART);
        assertThat(layout.choice()).isEqualTo(Fitting.MIDDLE_RIPPED);
        assertThat(layout.ripped()).extracting(BoardPlacement::width).containsExactly(in(3.5), in(3.5));
    }

    @Test
    void oneThatWouldBeTooNarrowIsNotRippedAndTheReasonSaysSo() {
        BoardLayout layout = BoardLayout.fit(in(99), APART.withRipping(Ripping.ONE));
        assertThat(layout.ripped()).hasSize(2);
        assertThat(layout.reason())
                .contains("one board ripped, as asked, would be left with 1 1/2\", under the least; so 2");
    }

    /* 2 in of the 4 come off the board, 2 off the 13 gaps: 3.5 + 13 x 5.5 + 24 = 99, gaps of 24 / 13 = 1.846. */
    @Test
    void theMiddleBoardSplitsTheDifferenceWithTheGaps() {
        BoardLayout layout = BoardLayout.fit(in(99), APART.withRipping(Ripping.SPLIT));
        assertThat(layout.choice()).isEqualTo(Fitting.MIDDLE_SPLIT);
        assertThat(layout.ripped()).extracting(BoardPlacement::width).containsExactly(in(3.5));
        assertThat(layout.row(Face.OUTSIDE).gap().inches()).isCloseTo(24.0 / 13, offset(1e-7));
        assertThat(layout.reason()).contains("shares out the 4\"");
        assertThat(layout.worksheet().result())
                .isEqualTo(layout.row(Face.OUTSIDE).gap());
    }

    /* 13 x 5.5 + 12 x 2 = 95 1/2 is 3 1/2 in over 92, and 12 boards leave 2.36 in: two are ripped to 3 3/4. */
    @Test
    void twoAreRippedAlikeOfAnOddCountToo() {
        BoardLayout two = BoardLayout.fit(in(92), APART.withRipping(Ripping.TWO));
        assertThat(two.row(Face.OUTSIDE).count()).isEqualTo(13);
        assertThat(two.ripped()).extracting(BoardPlacement::index).containsExactly(5, 6);
        assertThat(two.ripped()).extracting(BoardPlacement::width).containsExactly(in(3.75), in(3.75));
    }

    /** Side by side without any gap to give; the end boards are never ripped. */
    @Test
    void asManyAreRippedAsStandBetweenTheEnds() {
        BoardPattern one = BoardPattern.sideBySide(in(5.5)).withRipping(Ripping.ONE);
        BoardPattern two = BoardPattern.sideBySide(in(5.5)).withRipping(Ripping.TWO);
        assertThat(widths(one, 15.5)).containsExactly(in(5.5), in(4.5), in(5.5));
        assertThat(widths(two, 20)).containsExactly(in(5.5), in(4.5), in(4.5), in(5.5));
        assertThat(widths(one, 8)).containsExactly(in(4), in(4));
        assertThat(widths(two, 15.5)).containsExactly(in(5.5), in(4.5), in(5.5));
        assertThat(BoardLayout.fit(in(8), one).reason())
                .contains("one board ripped, as asked, would reach the ends; so");
        assertThat(BoardLayout.fit(in(15.5), two).reason())
                .contains("two boards ripped, as asked, would reach the ends; so");
        assertThat(BoardLayout.fit(in(20), two).reason()).doesNotContain("as asked, would");
    }

    private static List<Length> widths(BoardPattern pattern, double inches) {
        return BoardLayout.fit(in(inches), pattern).boards().stream()
                .map(BoardPlacement::width)
                .toList();
    }

    /* 14 x 5.5 + 13 x 2 = 103: half a board less is 100.25, where 13 boards leave 2.4 and 14 leave 1.79 in. */
    @Test
    void theLeastWidthAndTheLeastGapAreJustAllowed() {
        BoardPattern narrow = APART.withGaps(in(1.9), in(2), in(2)).withRipping(Ripping.ONE);
        BoardLayout half = BoardLayout.fit(in(100.25), narrow);
        assertThat(half.ripped()).extracting(BoardPlacement::width).containsExactly(in(2.75));
        // 5 boards of 5 1/2 and 4 gaps of 2 are 35 1/2; 2 in less is 1 off the board and 1/4 off each gap.
        BoardLayout split = BoardLayout.fit(in(33.5), APART.withRipping(Ripping.SPLIT));
        assertThat(split.choice()).isEqualTo(Fitting.MIDDLE_SPLIT);
        assertThat(split.ripped()).extracting(BoardPlacement::width).containsExactly(in(4.5));
        assertThat(split.row(Face.OUTSIDE).gap()).isEqualTo(in(1.75));
    }

    /* Full boards are taken where they fit, whatever is asked; the nearest lengths without a rip are told. */
    @Test
    void fullBoardsComeFirstAndTheNearestLengthsThatTakeThemAreTold() {
        BoardLayout full = BoardLayout.fit(in(103), APART.withRipping(Ripping.ONE));
        assertThat(full.choice()).isEqualTo(Fitting.FULL_BOARDS);
        BoardLayout ripped = BoardLayout.fit(in(99), APART.withRipping(Ripping.ONE));
        assertThat(ripped.flushShorter()).isEqualTo(in(13 * 5.5 + 12 * 2));
        assertThat(ripped.flushLonger()).isEqualTo(in(14 * 5.5 + 13 * 1.75));
    }

    @Property
    void whateverIsAskedTheBoardsFillTheLengthAndTheEndsAreFull(
            @ForAll @DoubleRange(min = 40, max = 2000) double inches, @ForAll Ripping way) {
        for (BoardPattern pattern : List.of(
                APART,
                BoardPattern.sideBySide(in(5.5)),
                BoardPattern.shadowbox(in(5.5)).withLaps(in(0.9), in(1), in(1.1)))) {
            BoardLayout layout = BoardLayout.fit(in(inches), pattern.withRipping(way));
            BoardRow row = layout.row(Face.OUTSIDE);
            Length place = Length.ZERO;
            for (BoardPlacement board : row.boards()) {
                Length gap = board.left().minus(place);
                assertThat(gap.isNegative()).isFalse();
                assertThat(board.isFull() || board.width().compareTo(in(2.75)) >= 0)
                        .isTrue();
                place = board.right();
            }
            assertThat(place).isEqualTo(in(inches));
            assertThat(row.boards().get(0).isFull()).isTrue();
            assertThat(row.boards().get(row.count() - 1).isFull()).isTrue();
            assertThat(layout.findings()).isEmpty();
            assertThat(layout.reason()).isNotBlank();
            for (int i = 0; i < layout.count(); i++) {
                assertThat(layout.boards().get(i))
                        .isEqualTo(layout.boards().stream().toList().get(i));
            }
        }
    }

    /* Laps of 1 in from 3/4 in: the row behind may move 1/4 in, and laps 3/4 in on one side then. */
    @Test
    void theRowBehindMovesWithinItsLaps() {
        BoardLayout layout = BoardLayout.fit(
                in(9 * 8 + 5.5 + 9), BoardPattern.shadowbox(in(5.5)).withLap(in(1)));
        assertThat(layout.lap()).hasValue(in(1));
        assertThat(layout.mostShift()).isEqualTo(in(0.25));
        BoardLayout moved = layout.withSecondRowMoved(in(-0.25));
        assertThat(moved.lap()).hasValue(in(0.75));
        assertThat(moved.row(Face.INSIDE).boards().get(3).left())
                .isEqualTo(layout.row(Face.INSIDE).boards().get(3).left().minus(in(0.25)));
        assertThat(moved.boards().stream().toList().get(12))
                .isEqualTo(moved.boards().get(12));
        assertThat(moved.row(Face.OUTSIDE).boards())
                .isEqualTo(layout.row(Face.OUTSIDE).boards());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> layout.withSecondRowMoved(in(0.3)))
                .withMessageContaining("up to 1/4 in either way");
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
