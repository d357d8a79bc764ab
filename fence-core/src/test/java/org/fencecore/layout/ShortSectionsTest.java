package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sections that full boards do not fill: which boards are ripped, and to which length nothing is. */
class ShortSectionsTest {

    private static final Length WIDTH = in(5.5);

    private static final BoardPattern SHADOWBOX = BoardPattern.shadowbox(WIDTH);

    private static final BoardPattern TIGHT = BoardPattern.sideBySide(WIDTH);

    @ParameterizedTest
    @CsvSource({
        // length, choice, count, ripped, width of a ripped board, gap, findings; boards 5.5 in, gap 0 to 1/8
        "5.5,    FULL_BOARDS,   1, 0, 0,     0,      ''",
        "11,     FULL_BOARDS,   2, 0, 0,     0,      ''",
        "11.125, FULL_BOARDS,   2, 0, 0,     0.125,  ''",
        // Under two boards: two alike, 4 in each, rather than one full and a strip.
        "8,      ALL_RIPPED,    2, 2, 4,     0,      end-board-ripped",
        // Three boards less 1 in: the middle one takes it.
        "15.5,   MIDDLE_RIPPED, 3, 1, 4.5,   0,      ''",
        // Three boards less half a board: just allowed.
        "13.75,  MIDDLE_RIPPED, 3, 1, 2.75,  0,      ''",
        // A strip under half a board in the middle is not, so all three are ripped alike.
        "13.5,   ALL_RIPPED,    3, 3, 4.5,   0,      end-board-ripped",
        // Of four boards the middle two are ripped, as one alone would stand off the middle.
        "21,     MIDDLE_RIPPED, 4, 2, 5,     0,      ''",
        "17,     MIDDLE_RIPPED, 4, 2, 3,     0,      ''",
        // Five boards less 4 in: one would keep 1.5 in, so three.
        "23.5,   MIDDLE_RIPPED, 5, 3, 4.16666667, 0, ''",
    })
    void shortSectionsSideBySide(
            double length, Fitting choice, int count, int ripped, double rippedWidth, double gap, String findings) {
        assertFit(BoardLayout.fit(in(length), TIGHT), choice, count, ripped, rippedWidth, gap, findings);
    }

    @ParameterizedTest
    @CsvSource({
        // length, choice, outside count, ripped, width of a ripped board, gap, findings; 5.5 in, gap 2.5 to 4
        "5.5,  FULL_BOARDS,          1, 0, 0,     0,    ''",
        "13.5, FULL_BOARDS,          2, 0, 0,     2.5,  ''",
        "15,   FULL_BOARDS,          2, 0, 0,     4,    ''",
        // Two boards of 4.25, half a board and a lap of 1 in kept.
        "12,   ALL_RIPPED,           2, 2, 4.25,  3.5,  end-board-ripped",
        "9,    ALL_RIPPED,           2, 2, 2.75,  3.5,  end-board-ripped",
        // Here half a board is kept by closing the gap.
        "8.25, ALL_RIPPED,           2, 2, 2.75,  2.75, end-board-ripped",
        // Under two half boards and the least gap there is no way: it is left to two boards that touch.
        "7.5,  RULES_BROKEN,         2, 2, 3.75,  0,    gap-out-of-range end-board-ripped",
        // Three with 3.5 between are 23.5: the middle one keeps 4.5.
        "22.5, FULL_BOARDS,          3, 0, 0,     3,    ''",
        "21.4, MIDDLE_RIPPED,        3, 1, 3.4,   3.5,  ''",
        // At 3.5 the middle one would keep 2; at 3.125 it keeps half.
        "20,   MIDDLE_RIPPED_CLOSER, 3, 1, 2.75,  3.125, ''",
        // At 2.5 it keeps 3, and the two behind it, lapping 1 1/2 each, touch.
        "19,   MIDDLE_RIPPED_CLOSER, 3, 1, 3,     2.5,  ''",
        // Half boards and the least gap: just allowed.
        "8,    ALL_RIPPED,           2, 2, 2.75,  2.5,  end-board-ripped",
        // Here they would overlap, so all three are ripped.
        "18,   ALL_RIPPED,           3, 3, 3.66666667, 3.5, end-board-ripped",
    })
    void shortShadowboxes(
            double length, Fitting choice, int count, int ripped, double rippedWidth, double gap, String findings) {
        BoardLayout layout = BoardLayout.fit(in(length), SHADOWBOX);
        assertFit(layout, choice, count, ripped, rippedWidth, gap, findings);
        assertThat(layout.row(Face.INSIDE).count()).isEqualTo(count - 1);
    }

    /*
     * Gaps of 2.4 in preferred, 1.5 to 2.6. In 14 in two boards leave 3, and three of 3 in, 2.5 apart, keep room for the two
     * behind, 3 in of which lap the middle one. In 8 in two of 2.8 do, as the one behind laps each on one side only.
     */
    @Test
    void boardsThatAreAllRippedLeaveRoomForBothLaps() {
        BoardPattern close = SHADOWBOX.withLaps(in(1.45), in(1.55), in(2)).withSmallestPart(Ratio.of(0.25));
        assertFit(BoardLayout.fit(in(14), close), Fitting.ALL_RIPPED, 3, 3, 3, 2.5, "end-board-ripped");
        assertFit(BoardLayout.fit(in(8), close), Fitting.ALL_RIPPED, 2, 2, 2.8, 2.4, "end-board-ripped");
    }

    /** A nanometre over the 19 in above: both laps together are an odd number, and the two behind do not overlap. */
    @Test
    void twoBoardsBehindOneOverlapByNoNanometre() {
        BoardLayout layout = BoardLayout.fit(in(19).plus(Length.ofNanometres(1)), SHADOWBOX);
        assertThat(layout.ripped())
                .singleElement()
                .satisfies(board -> assertThat(board.width()).isEqualTo(in(3).minus(Length.ofNanometres(1))));
        List<BoardPlacement> behind = layout.row(Face.INSIDE).boards();
        assertThat(behind.get(1).left().minus(behind.get(0).right())).isEqualTo(Length.ofNanometres(1));
    }

    private static void assertFit(
            BoardLayout layout,
            Fitting choice,
            int count,
            int ripped,
            double rippedWidth,
            double gap,
            String findings) {
        assertThat(layout.choice()).as(layout::reason).isEqualTo(choice);
        assertThat(layout.row(Face.OUTSIDE).count()).isEqualTo(count);
        assertThat(layout.ripped()).hasSize(ripped).allSatisfy(board -> {
            assertThat(board.width().inches()).isCloseTo(rippedWidth, within(1e-7));
            assertThat(board.isFull()).isFalse();
        });
        assertThat(layout.row(Face.OUTSIDE).gap()).isEqualTo(in(gap));
        assertThat(String.join(
                        " ", layout.findings().stream().map(Finding::code).toList()))
                .isEqualTo(findings);
    }

    @Test
    void withoutRippingAShortSectionBreaksTheRules() {
        BoardPattern whole = TIGHT.withSmallestPart(Ratio.of(1));

        // 2 boards leave 2 1/2 in, 3 are 3 in too long.
        BoardLayout layout = BoardLayout.fit(in(13.5), whole);
        assertThat(layout.choice()).isEqualTo(Fitting.RULES_BROKEN);
        assertThat(layout.count()).isEqualTo(2);
        assertThat(layout.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.BLOCKER);
            assertThat(finding.code()).isEqualTo("gap-out-of-range");
            assertThat(finding.message()).isEqualTo("the gap is 2 1/2\", not from 0\" to 1/8\"");
        });
        assertThat(layout.reason())
                .isEqualTo("no count of full boards keeps the gap from 0\" to 1/8\": 2 leave a gap of 2 1/2\" and 3"
                        + " are 3\" too long; so as no board may be ripped under 5 1/2\", the nearest is 2 boards with a"
                        + " gap of 2 1/2\"");

        // Between one board and two nothing is left but to halve the length.
        assertThat(BoardLayout.fit(in(8), whole).findings())
                .extracting(Finding::code)
                .containsExactly("board-too-narrow", "end-board-ripped");
    }

    @Test
    void fullBoardsThatMissTheRangeByLessAreTaken() {
        BoardPattern pattern = BoardPattern.spaced(in(4), in(1))
                .withGaps(in(0.75), in(1), in(1))
                .withSmallestPart(Ratio.of(1));

        // 3 boards leave (14.5 - 12) / 2 = 1.25, a quarter over; 4 are too long.
        assertThat(BoardLayout.fit(in(14.5), pattern).row(Face.OUTSIDE).gap()).isEqualTo(in(1.25));
        // 4 boards leave 2/3, a twelfth under; 3 leave 3.
        BoardLayout tight = BoardLayout.fit(in(18), pattern);
        assertThat(tight.row(Face.OUTSIDE).count()).isEqualTo(4);
        assertThat(tight.choice()).isEqualTo(Fitting.RULES_BROKEN);
        // 4 boards touch in 16, 3/4 under; 3 leave 2, 1 over.
        assertThat(BoardLayout.fit(in(16), pattern).count()).isEqualTo(4);
        assertThat(BoardLayout.fit(in(16), pattern).reason()).contains("3 leave a gap of 2\" and 4 leave a gap of 0\"");
        // In 40 in 9 boards leave 1/2, 1/4 under, and 8 leave 8/7, 1/7 over.
        assertThat(BoardLayout.fit(in(40), pattern).count()).isEqualTo(8);
        // In 40.4 in 9 leave 0.55 and 8 leave 1.2, either 0.2 out: the fewer are taken.
        assertThat(BoardLayout.fit(in(40.4), pattern).count()).isEqualTo(8);
        // In 40.9 in 9 leave 0.6125, 0.1375 under, and 8 leave 1.271, 0.271 over.
        assertThat(BoardLayout.fit(in(40.9), pattern).count()).isEqualTo(9);
    }

    @Test
    void whatIsWrongIsToldOfTheGapAndTheLap() {
        BoardLayout none = BoardLayout.fit(in(7.5), SHADOWBOX);
        assertThat(none.findings().get(0).message())
                .isEqualTo("the gap is 0\", a lap of 2 3/4\", not from 2 1/2\" to 4\"");
        // 13 1/2 in on 11 in of boards, rounded so that 2 1/2 and a hair is no 2 1/2; and two of 4 in more than 2
        // apart.
        BoardLayout wide = BoardLayout.fit(
                in(13.52), SHADOWBOX.withLaps(in(1.5), in(1.5), in(1.5)).withSmallestPart(Ratio.of(1)));
        assertThat(wide.findings().get(0).message())
                .isEqualTo("the gap is 2 9/16\", a lap of 1 7/16\", not from 2 1/2\" to 2 1/2\"");
        assertThat(BoardLayout.fit(in(8), TIGHT).reason()).contains("1 leaves 2 1/2\" open and 2 are 3\" too long");
    }

    @Test
    void ofTwoCountsAsNearTheSmallerIsTaken() {
        // 2 boards leave 4 in and 3 leave none, either 2 in off the preferred.
        BoardPattern pattern = BoardPattern.spaced(in(4), in(2)).withGaps(in(0), in(2), in(4));

        assertThat(BoardLayout.fit(in(12), pattern).count()).isEqualTo(2);
    }

    /*
     * By hand: side by side, 5 1/2 in, up to 1/8 in between. In 96 in, 17 boards reach 17 x 5.5 + 16 / 8 = 95.5 at most,
     * and 18 take 99 at least.
     */
    @Test
    void nearestLengthsWithoutARip() {
        BoardLayout layout = BoardLayout.fit(in(96), TIGHT);
        assertThat(layout.flushShorter()).isEqualTo(in(95.5));
        assertThat(layout.flushLonger()).isEqualTo(in(99));
        assertThat(BoardLayout.fit(in(95.5), TIGHT).flushShorter()).isEqualTo(in(95.5));
        assertThat(BoardLayout.fit(in(99), TIGHT).flushLonger()).isEqualTo(in(99));
        // Between one board and two.
        assertThat(BoardLayout.fit(in(8), TIGHT).flushShorter()).isEqualTo(in(5.5));
        assertThat(BoardLayout.fit(in(8), TIGHT).flushLonger()).isEqualTo(in(11));
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
