package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Spliterator;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fencecore.EqualValues;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.WorkLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoardLayoutTest {

    private static final Length WIDTH = in(5.5);
    private static final BoardPattern SHADOWBOX = BoardPattern.shadowbox(WIDTH);
    private static final BoardPattern TIGHT = BoardPattern.sideBySide(WIDTH);

    /*
     * Worked by hand: a shadowbox of 5 1/2 in boards, lap 1 in (3/4 to 1 1/2), in 7 ft 10 1/2 in = 94.5 in.
     *
     * Gap in front: preferred 5.5 - 2 = 3.5, from 5.5 - 3 = 2.5 to 5.5 - 1.5 = 4.
     * Full boards n fill n x 5.5 + (n - 1) g, so n = (94.5 + g) / (5.5 + g):
     *     g = 4:    98.5 / 9.5 = 10.37, so 11 or more
     *     g = 2.5:  97.0 / 8.0 = 12.13, so 12 or fewer
     *     11 boards: (94.5 - 60.5) / 10 = 3.4      off the preferred by 0.1
     *     12 boards: (94.5 - 66.0) / 11 = 2.5909   off the preferred by 0.9
     * 11 in front, 3.4 apart, every 8.9; the last begins at 10 x 8.9 = 89 and ends at 94.5.
     * 10 behind, lap (5.5 - 3.4) / 2 = 1.05: the first begins at 5.5 - 1.05 = 4.45 and ends at 9.95,
     * which is 1.05 past 8.9, where the second front board begins. 21 boards in all.
     */
    @Test
    void aShadowboxWorkedByHand() {
        BoardPattern pattern = BoardPattern.shadowbox(Length.ofInches(5.5)).withLap(Length.ofInches(1));
        BoardLayout layout = BoardLayout.fit(Length.parse("7 ft 10 1/2 in"), pattern);

        assertThat(layout.choice()).isEqualTo(Fitting.FULL_BOARDS);
        assertThat(layout.count()).isEqualTo(21);
        assertThat(layout.fullCount()).isEqualTo(21);
        assertThat(layout.ripped()).isEmpty();
        assertThat(layout.findings()).isEmpty();

        BoardRow front = layout.row(Face.OUTSIDE);
        assertThat(front.count()).isEqualTo(11);
        assertThat(front.gap()).isEqualTo(in(3.4));
        assertThat(front.pitch()).isEqualTo(in(8.9));
        assertThat(front.marks().get(10)).isEqualTo(in(89));
        assertThat(front.boards().get(10).right()).isEqualTo(in(94.5));

        BoardRow back = layout.row(Face.INSIDE);
        assertThat(back.count()).isEqualTo(10);
        assertThat(back.gap()).isEqualTo(in(3.4));
        assertThat(back.pitch()).isEqualTo(in(8.9));
        assertThat(back).hasToString("10 boards INSIDE, 3 3/8\" apart");
        assertThat(back.boards().get(0).left()).isEqualTo(in(4.45));
        assertThat(back.boards().get(0).right()).isEqualTo(in(9.95));
        assertThat(layout.lap()).contains(in(1.05));

        BoardPlacement last = layout.boards().get(20);
        assertThat(last.face()).isEqualTo(Face.INSIDE);
        assertThat(last.index()).isEqualTo(9);
        assertThat(layout.marks().get(20)).isEqualTo(last.left()).isEqualTo(in(4.45 + 9 * 8.9));
        assertThat(layout.reason())
                .isEqualTo("11 full boards: of the counts that keep the gap from 2 1/2\" to 4\""
                        + " it has the gap nearest the preferred 3 1/2\"");
    }

    /*
     * Board on board: the same sum as the shadowbox above, with the second row over the gaps on the outside.
     *
     * Board and batten by hand: 5 1/2 in boards, battens 2 1/2 in, gap 1/4 to 3/4 in, 1/2 preferred, in 5 ft = 60 in.
     *     10 boards: (60 - 55) / 9 = 0.5556;  11 boards are 60.5 in, too long. So 10 boards and 9 battens.
     *     lap (2.5 - 0.5556) / 2 = 0.9722; the first batten begins at 5.5 - 0.9722 = 4.5278.
     */
    @Test
    void secondLayersWorkedByHand() {
        BoardLayout onBoard = BoardLayout.fit(in(94.5), BoardPattern.boardOnBoard(WIDTH));
        assertThat(onBoard.count()).isEqualTo(21);
        assertThat(onBoard.row(Face.INSIDE).count()).isZero();
        assertThat(onBoard.row(Face.COVER).boards().get(0).left()).isEqualTo(in(4.45));
        assertThat(onBoard.boards().get(20).face()).isEqualTo(Face.COVER);

        BoardLayout battens = BoardLayout.fit(Length.ofFeet(5), BoardPattern.boardAndBatten(WIDTH, in(2.5)));
        assertThat(battens.choice()).isEqualTo(Fitting.FULL_BOARDS);
        assertThat(battens.row(Face.OUTSIDE).count()).isEqualTo(10);
        assertThat(battens.row(Face.COVER).count()).isEqualTo(9);
        assertThat(battens.lap().orElseThrow().inches()).isCloseTo((2.5 - 5 / 9.0) / 2, within(1e-7));
        BoardPlacement first = battens.row(Face.COVER).boards().get(0);
        assertThat(first.left().inches()).isCloseTo(5.5 - (2.5 - 5 / 9.0) / 2, within(1e-7));
        assertThat(first.width()).isEqualTo(in(2.5));
        assertThat(battens.worksheet().toText())
                .contains(
                        "batten width = 2 1/2\"", "lap = (batten width - ", "(2.5 in - (60 in - 55 in) / 9) / 2 = 1\"");
        assertThat(battens.pattern())
                .hasToString("boards 5 1/2\" wide, board and batten with battens 2 1/2\", gaps 1/4\" to 3/4\","
                        + " 1/2\" preferred");
    }

    @Test
    void theExampleOfThePackage() {
        BoardPattern pattern = BoardPattern.sideBySide(Length.ofInches(5.5));
        BoardLayout layout = BoardLayout.fit(Length.ofFeet(8), pattern);

        // 17 leave 2.5 in over 16 gaps, 5/32 in; 18 are 99 in.
        assertThat(layout.choice()).isEqualTo(Fitting.MIDDLE_RIPPED);
        assertThat(layout.count()).isEqualTo(18);
        assertThat(layout.fullCount()).isEqualTo(16);
        assertThat(layout.ripped()).hasSize(2);
        assertThat(layout.ripped().get(0).index()).isEqualTo(8);
        assertThat(layout.ripped().get(0).width()).isEqualTo(in(4));
        assertThat(layout.ripped().get(1).isFull()).isFalse();
        assertThat(layout.marks().get(17)).isEqualTo(Length.parse("7 ft 6 1/2 in"));
        assertThat(layout.boards().get(17).right()).isEqualTo(Length.ofFeet(8));
        assertThat(layout.findings()).isEmpty();
        assertThat(layout.row(Face.INSIDE).count()).isZero();
        assertThat(layout.lap()).isEmpty();
        assertThat(layout).hasToString("18 boards in 8' 0\", 2 of them ripped");
        assertThat(layout.reason())
                .isEqualTo("no count of full boards keeps the gap from 0\" to 1/8\": 17 leave a gap of 3/16\" and 18"
                        + " are 3\" too long; so 2 in the middle of 18 are ripped to 4\" at the preferred gap of"
                        + " 0\"");

        Interval post = Interval.of(Length.ofInches(46.25), Length.ofInches(49.75));
        assertThat(layout.row(Face.OUTSIDE).boardsMeeting(post)).isEqualTo(layout.ripped());
    }

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

    @Test
    void aStoryPoleIsRoundedOnce() {
        BoardRow row = BoardLayout.fit(in(94.5), SHADOWBOX).row(Face.OUTSIDE);

        assertThat(row.storyPole(in(0.0625)))
                .startsWith(in(0), in(8.875), in(17.8125), in(26.6875))
                .hasSize(11)
                .endsWith(in(89));
        // Stepping off 8 7/8 would end at 88 3/4.
        assertThat(in(8.875).times(10)).isEqualTo(in(88.75));
        assertRefused(() -> row.storyPole(Length.ZERO), "increment was 0 in", "over 0");
    }

    @Test
    void aRowWithoutGapsHasNone() {
        assertThat(BoardLayout.fit(WIDTH, SHADOWBOX).row(Face.OUTSIDE).gap()).isEqualTo(Length.ZERO);
        assertThat(BoardLayout.fit(WIDTH, SHADOWBOX).row(Face.INSIDE).boards()).isEmpty();
        assertThat(BoardLayout.fit(WIDTH, SHADOWBOX).lap()).isEmpty();
        // Three outside, 3 1/2 apart, and two behind them, as far apart.
        BoardRow pair = BoardLayout.fit(in(23.5), SHADOWBOX).row(Face.INSIDE);
        assertThat(pair.count()).isEqualTo(2);
        assertThat(pair.gap()).isEqualTo(in(3.5));
        assertThat(pair.pitch()).isEqualTo(in(9));
        // Two outside and one behind their gap.
        BoardRow single = BoardLayout.fit(in(14), SHADOWBOX).row(Face.INSIDE);
        assertThat(single.count()).isEqualTo(1);
        assertThat(single.gap()).isEqualTo(Length.ZERO);
        assertThat(single.pitch()).isEqualTo(WIDTH);
    }

    @Test
    void aGapUnderTheRangeByAPartOfANanometreIsFound() {
        // 4 boards with 3 gaps of 1 in, and a nanometre short.
        BoardPattern pattern =
                BoardPattern.spaced(in(4), in(1)).withGaps(in(1), in(1), in(1)).withSmallestPart(Ratio.of(1));
        BoardLayout layout = BoardLayout.fit(in(19).minus(Length.ofNanometres(1)), pattern);

        assertThat(layout.row(Face.OUTSIDE).gap()).isEqualTo(in(1));
        assertThat(layout.choice()).isEqualTo(Fitting.RULES_BROKEN);
        assertThat(layout.findings()).extracting(Finding::code).containsExactly("gap-out-of-range");
    }

    @Test
    void gapsAtTheEndsEqualThoseBetween() {
        BoardLayout layout =
                BoardLayout.fit(in(20), BoardPattern.spaced(in(3.5), in(2)).withGapAtEnds());

        // 3 boards: (20 - 10.5) / 4 = 2.375; 4 boards: (20 - 14) / 5 = 1.2.
        assertThat(layout.marks()).containsExactly(in(2.375), in(8.25), in(14.125));
        assertThat(layout.row(Face.OUTSIDE).gap()).isEqualTo(in(2.375));
        assertThat(layout.boards().get(2).right().plus(in(2.375))).isEqualTo(in(20));
    }

    @Test
    void boardsThatMeetAStretch() {
        // Boards at 0, 8, 16 ... 5.5 wide.
        BoardRow row = BoardLayout.fit(in(8 * 11 + 5.5), BoardPattern.spaced(WIDTH, in(2.5)))
                .row(Face.OUTSIDE);

        assertThat(indexes(row, 46.25, 49.75)).containsExactly(6);
        assertThat(indexes(row, 45, 48.5)).containsExactly(5, 6);
        // Touching is not meeting.
        assertThat(indexes(row, 45.5, 48)).isEmpty();
        assertThat(indexes(row, 13.5, 24)).containsExactly(2);
        assertThat(indexes(row, 0, 8 * 11 + 5.5)).hasSize(12);
        assertThat(indexes(row, -20, -1)).isEmpty();
        assertThat(indexes(row, 100, 120)).isEmpty();
        assertThat(indexes(row, 17, 17)).containsExactly(2);
        assertThat(indexes(row, 16, 16)).isEmpty();
    }

    private static List<Integer> indexes(BoardRow row, double from, double to) {
        return row.boardsMeeting(Interval.of(in(from), in(to))).stream()
                .map(BoardPlacement::index)
                .toList();
    }

    @Test
    void tenMillionBoardsCostNoMoreThanTen() {
        Length length = WIDTH.times(10_000_000);
        BoardLayout layout = BoardLayout.fit(length, TIGHT);

        assertThat(layout.count()).isEqualTo(10_000_000);
        assertThat(layout.boards().get(9_999_999).right()).isEqualTo(length);
        assertThat(layout.row(Face.OUTSIDE).boardsMeeting(Interval.of(WIDTH.times(4_999_999), WIDTH.times(5_000_001))))
                .extracting(BoardPlacement::index)
                .containsExactly(4_999_999, 5_000_000);
        assertRefused(
                () -> BoardLayout.fit(length.plus(in(1)), TIGHT),
                "clearLength",
                "over 10,000,000 boards 5 1/2 in wide",
                "check the units");
        assertRefused(() -> BoardLayout.fit(Length.ofNanometres(Long.MAX_VALUE), SHADOWBOX), "10,000,000");
    }

    @Test
    void theLargestSectionDoesNotOverflow() {
        Length widest = Length.ofMetres(100);
        BoardPattern pattern = BoardPattern.sideBySide(widest).withGaps(Length.ZERO, widest, widest);
        Length length = widest.times(2 * 10_000_000 - 1);
        BoardRow row = BoardLayout.fit(length, pattern).row(Face.OUTSIDE);

        assertThat(row.count()).isEqualTo(10_000_000);
        assertThat(row.gap()).isEqualTo(widest);
        assertThat(row.boards().get(9_999_999).right()).isEqualTo(length);
        assertThat(row.marks().get(5_000_000)).isEqualTo(widest.times(10_000_000));

        // At the other end of the scale the gap may be far wider than the board.
        BoardPattern wires = BoardPattern.sideBySide(Length.ofNanometres(1)).withGaps(Length.ZERO, widest, widest);
        Length shorter = widest.times(9_999_999);
        BoardRow wire = BoardLayout.fit(shorter, wires).row(Face.OUTSIDE);
        assertThat(wire.boards().get(wire.count() - 1).right()).isEqualTo(shorter);
    }

    @ParameterizedTest
    @CsvSource({"94.5, SHADOWBOX", "19, SHADOWBOX", "7.5, SHADOWBOX", "96, TIGHT", "5.5, TIGHT", "72, GAP_AT_ENDS"})
    void theWorksheetEndsWithTheGapAndItsLinesAddUp(double length, String name) {
        BoardPattern pattern = pattern(name);
        BoardLayout layout = BoardLayout.fit(in(length), pattern);
        List<WorkLine> lines = layout.worksheet().lines();
        long together = ((Length) result(lines, "width of all boards")).nanometres();
        int spaces = (Integer) result(lines, "spaces");

        assertThat(layout.worksheet().result())
                .isEqualTo(layout.row(Face.OUTSIDE).gap());
        assertThat(result(lines, "boards")).isEqualTo(layout.row(Face.OUTSIDE).count());
        if (spaces > 0) {
            Length left = in(length).minus(Length.ofNanometres(together));
            assertThat(layout.worksheet().result()).isEqualTo(left.dividedBy(spaces));
        }
        long widths = layout.row(Face.OUTSIDE).boards().stream()
                .mapToLong(board -> board.width().nanometres())
                .sum();
        assertThat(widths).isEqualTo(together);
        layout.lap().ifPresent(lap -> assertThat(result(lines, "lap")).isEqualTo(lap));
    }

    private static BoardPattern pattern(String name) {
        return switch (name) {
            case "SHADOWBOX" -> SHADOWBOX;
            case "TIGHT" -> TIGHT;
            default -> BoardPattern.spaced(in(1.5), in(4)).withGapAtEnds();
        };
    }

    private static Object result(List<WorkLine> lines, String name) {
        return lines.stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow()
                .result();
    }

    @Test
    void theWorksheetAsPrinted() {
        assertThat(BoardLayout.fit(in(19), SHADOWBOX).worksheet().toText()).isEqualTo("""
                        Boards, outside row
                          clear length = 1' 7"   [given]
                          board width = 5 1/2"   [given]
                          least gap = 2 1/2"   [given]
                          preferred gap = 3 1/2"   [given]
                          most gap = 4"   [given]
                          fewest full boards = (clear length + most gap) / (board width + most gap), rounded up, at least 1\
                         = (19 in + 4 in) / (5.5 in + 4 in) = 3
                          most full boards = (clear length + least gap) / (board width + least gap), rounded down\
                         = (19 in + 2.5 in) / (5.5 in + 2.5 in) = 2
                          boards = no count from fewest to most, so some are ripped of\
                         (clear length + preferred gap) / (board width + preferred gap), rounded up\
                         = (19 in + 3.5 in) / (5.5 in + 3.5 in) = 3   [common practice, no source]
                          spaces = boards - 1 = 3 - 1 = 2
                          gap aimed at = the preferred gap, or what comes nearest it and leaves ripped boards their least width\
                         = 3.5 in preferred = 2 1/2"   [common practice, no source]
                          ripped boards = the fewest in the middle that keep the least width, odd as the boards\
                         = least width 3 in = 1   [common practice, no source]
                          ripped boards together = clear length - full boards x board width - spaces x gap aimed at\
                         = 19 in - 2 x 5.5 in - 2 x 2.5 in = 3 in
                          width of a ripped board = ripped boards together / ripped boards = 3 in / 1 = 3"
                          width of all boards = full boards x board width + ripped boards together = 2 x 5.5 in + 3 in = 14 in
                          lap = (board width - (clear length - width of all boards) / spaces) / 2\
                         = (5.5 in - (19 in - 14 in) / 2) / 2 = 1 1/2"
                          gap = (clear length - width of all boards) / spaces = (19 in - 14 in) / 2 = 2 1/2"
                        """);
    }

    @Test
    void theSheetTellsOfRippedBoardsOnlyIfThereAreAny() {
        assertThat(BoardLayout.fit(in(94.5), SHADOWBOX).worksheet().toText())
                .doesNotContain("ripped")
                .contains("width of all boards = full boards x board width = 11 x 5.5 in = 60.5 in")
                .contains("lap = (board width - (clear length - width of all boards) / spaces) / 2 =");
        assertThat(BoardLayout.fit(in(94.5), SHADOWBOX)
                        .withSecondRowMoved(in(0.25))
                        .worksheet()
                        .toText())
                .contains("lap = (board width - (clear length - width of all boards) / spaces) / 2 - moved =")
                .contains("/ 10) / 2 - 0.25 in = 13/16\"");
        assertThat(BoardLayout.fit(in(96), TIGHT).worksheet().toText())
                .contains("the fewest in the middle that keep the least width, even as the boards");
    }

    /** Eight inches shadowboxed end to end: 5 front boards and 4 behind, gone through in every way there is. */
    @Test
    void boardsAreGoneThroughOneByOneOrInParts() {
        List<BoardPlacement> boards = BoardLayout.fit(in(41.5), SHADOWBOX).boards();
        assertThat(boards).hasSize(9);

        Iterator<BoardPlacement> each = boards.iterator();
        List<BoardPlacement> stepped = new ArrayList<>();
        while (each.hasNext()) {
            stepped.add(each.next());
        }
        assertThat(stepped).isEqualTo(boards);
        assertThatThrownBy(each::next).isInstanceOf(NoSuchElementException.class);

        Spliterator<BoardPlacement> rest = boards.spliterator();
        assertThat(rest.hasCharacteristics(Spliterator.ORDERED | Spliterator.SIZED | Spliterator.SUBSIZED))
                .isTrue();
        List<BoardPlacement> taken = new ArrayList<>();
        assertThat(rest.tryAdvance(taken::add)).isTrue();
        assertThat(rest.estimateSize()).isEqualTo(8);
        Spliterator<BoardPlacement> before = rest.trySplit();
        before.forEachRemaining(taken::add);
        assertThat(taken).hasSize(5);
        while (rest.tryAdvance(taken::add)) {
            assertThat(taken).hasSizeGreaterThan(5);
        }
        assertThat(taken).isEqualTo(boards);
        assertThat(rest.tryAdvance(taken::add)).isFalse();
        assertThat(boards.subList(3, 4).spliterator().trySplit()).isNull();
    }

    @Test
    void equalPatternsAndLayoutsAreEqual() {
        EqualValues.assertDistinct(
                () -> TIGHT,
                () -> SHADOWBOX,
                () -> BoardPattern.boardOnBoard(WIDTH),
                () -> BoardPattern.sideBySide(in(3.5)),
                () -> BoardPattern.boardAndBatten(WIDTH, in(2.5)),
                () -> BoardPattern.boardAndBatten(WIDTH, in(3)),
                () -> TIGHT.withGaps(in(0.01), in(0.1), in(0.125)),
                () -> TIGHT.withGaps(in(0), in(0.1), in(0.125)),
                () -> TIGHT.withGaps(in(0), in(0), in(0.25)),
                () -> TIGHT.withSmallestPart(Ratio.of(0.75)),
                () -> TIGHT.withGapAtEnds(),
                () -> TIGHT.withRipping(Ripping.ONE));
        EqualValues.assertDistinct(
                () -> BoardLayout.fit(in(94.5), SHADOWBOX),
                () -> BoardLayout.fit(in(94), SHADOWBOX),
                () -> BoardLayout.fit(in(94.5), TIGHT),
                () -> BoardLayout.fit(in(94.5), SHADOWBOX).withSecondRowMoved(in(0.25)));
        EqualValues.assertDistinct(
                () -> BoardLayout.fit(in(94.5), SHADOWBOX).boards().get(0),
                () -> BoardLayout.fit(in(94.5), SHADOWBOX).boards().get(1),
                () -> BoardLayout.fit(in(94), SHADOWBOX).boards().get(1),
                () -> BoardLayout.fit(in(94.5), SHADOWBOX).boards().get(11),
                () -> BoardLayout.fit(in(94.5), BoardPattern.boardOnBoard(WIDTH))
                        .boards()
                        .get(11),
                () -> BoardLayout.fit(in(8), TIGHT).boards().get(0));
        assertThat(SHADOWBOX.isShadowbox()).isTrue();
        assertThat(BoardPattern.boardOnBoard(WIDTH).isShadowbox()).isFalse();
    }

    @Test
    void viewsCannotBeChanged() {
        BoardLayout layout = BoardLayout.fit(in(94.5), SHADOWBOX);

        assertThatThrownBy(() -> layout.boards().remove(0)).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> layout.marks().set(0, in(1))).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> layout.boards().get(21)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThat(layout)
                .isEqualTo(BoardLayout.fit(in(94.5), SHADOWBOX))
                .isNotEqualTo(BoardLayout.fit(in(95), SHADOWBOX));
        assertThat(layout.boards().get(3))
                .isEqualTo(layout.row(Face.OUTSIDE).boards().get(3))
                .hasToString("OUTSIDE board 3 from 2' 2 11/16\" to 2' 8 3/16\"");
    }

    @Test
    void patternsHaveTheUsualFigures() {
        assertThat(SHADOWBOX.preferredGap()).isEqualTo(in(3.5));
        assertThat(SHADOWBOX.leastGap()).isEqualTo(in(2.5));
        assertThat(SHADOWBOX.mostGap()).isEqualTo(in(4));
        assertThat(SHADOWBOX.minimumLength()).isEqualTo(in(13.5));
        assertThat(SHADOWBOX.smallestPart()).isEqualTo(Ratio.of(0.5));
        assertThat(SHADOWBOX.withLap(in(2)).leastGap()).isEqualTo(in(5.5 - 2 * 2.375));
        assertThat(BoardPattern.shadowbox(in(3.5)).preferredGap()).isEqualTo(in(1.75));
        assertThat(BoardPattern.boardOnBoard(WIDTH).preferredLap()).contains(in(1));
        assertThat(BoardPattern.boardOnBoard(WIDTH).secondFace()).contains(Face.COVER);
        assertThat(TIGHT.preferredLap()).isEmpty();
        assertThat(TIGHT.coverWidth()).isEmpty();
        assertThat(BoardPattern.boardAndBatten(WIDTH, in(2.5)).preferredLap()).contains(in(1));
        assertThat(BoardPattern.boardAndBatten(WIDTH, in(1.25)).mostGap()).isEqualTo(in(0.25));
        assertThat(TIGHT.mostGap()).isEqualTo(in(0.125));
        assertThat(TIGHT.minimumLength()).isEqualTo(in(11));
        assertThat(BoardPattern.spaced(in(3.5), in(2)).mostGap()).isEqualTo(in(3));
        assertThat(BoardPattern.spaced(in(3.5), in(2)).withGapAtEnds().minimumLength())
                .isEqualTo(in(5.5));
        assertThat(SHADOWBOX)
                .isEqualTo(BoardPattern.shadowbox(in(5.5)).withLap(in(1)))
                .isNotEqualTo(SHADOWBOX.withLap(in(1.25)));
        assertThat(SHADOWBOX).hasToString("boards 5 1/2\" wide, shadowbox, gaps 2 1/2\" to 4\", 3 1/2\" preferred");
    }

    @Test
    void badInputIsRefusedWithTheWayOut() {
        assertRefused(
                () -> BoardLayout.fit(in(5), TIGHT), "clearLength was 5 in", "5 1/2 in or more", "narrower boards");
        assertRefused(
                () -> BoardLayout.fit(in(4), BoardPattern.spaced(in(1.5), in(4)).withGapAtEnds()),
                "clearLength was 4 in",
                "5 1/2 in or more");
        assertRefused(() -> BoardPattern.sideBySide(Length.ZERO), "width was 0 in", "over 0 and up to 100 m");
        assertRefused(() -> BoardPattern.shadowbox(in(-5.5)), "width was -5 1/2 in");
        assertRefused(() -> BoardPattern.spaced(in(-5.5), in(1)), "width was -5 1/2 in");
        assertRefused(() -> BoardPattern.boardOnBoard(in(-5.5)), "width was -5 1/2 in");
        assertRefused(() -> BoardPattern.boardAndBatten(in(-5.5), in(2)), "width was -5 1/2 in");
        assertRefused(() -> SHADOWBOX.withLaps(in(-1), in(1), in(2)), "least lap was -1 in");
        assertRefused(() -> BoardPattern.sideBySide(Length.ofMetres(101)), "width was", "100 m");
        assertRefused(() -> BoardPattern.spaced(WIDTH, Length.ZERO), "preferredGap was 0 in", "sideBySide");
        assertRefused(() -> BoardPattern.spaced(WIDTH, Length.ofMetres(90)), "135000 mm", "0 to 100 m");
        assertRefused(() -> SHADOWBOX.withLap(in(2.75)), "lap was 2 3/4 in", "5 1/2 in wide", "under half a board");
        assertRefused(() -> SHADOWBOX.withLap(in(-1)), "lap was -1 in");
        assertRefused(() -> SHADOWBOX.withLaps(in(0.5), in(1), in(3)), "most lap was 3 in");
        assertRefused(
                () -> SHADOWBOX.withLaps(in(1.5), in(1), in(2)), "lap were 1 1/2 in, 1 in and 2 in", "rising order");
        assertRefused(() -> TIGHT.withLap(in(1)), "lap was 1 in", "side by side", "use withGaps");
        assertRefused(
                () -> TIGHT.withGaps(in(1), in(0.5), in(0.25)), "gap were 1 in, 1/2 in and 1/4 in", "rising order");
        assertRefused(() -> TIGHT.withGaps(in(-1), in(0), in(1)), "-1 in to 1 in", "0 to 100 m");
        assertRefused(() -> SHADOWBOX.withGaps(in(1), in(2), in(3)), "shadowbox", "use withLaps");
        assertRefused(
                () -> BoardPattern.boardAndBatten(WIDTH, in(1)), "battenWidth was 1 in", "from 1 1/4 in to the width");
        assertRefused(() -> BoardPattern.boardAndBatten(WIDTH, in(6)), "battenWidth was 6 in");
        assertRefused(
                () -> BoardPattern.boardAndBatten(WIDTH, in(2)).withLap(in(1)), "battens 2 in wide", "half a batten");
        assertRefused(SHADOWBOX::withGapAtEnds, "shadowbox", "use spaced or sideBySide");
        assertRefused(() -> TIGHT.withSmallestPart(Ratio.ZERO), "part was 0", "over 0 and up to 1");
        assertRefused(() -> TIGHT.withSmallestPart(Ratio.of(1.01)), "part was 1.01");
    }

    private static void assertRefused(ThrowingCallable call, String... parts) {
        assertThatIllegalArgumentException()
                .isThrownBy(call)
                .satisfies(refusal -> assertThat(refusal.getMessage()).contains(parts));
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
