package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;

/** What holds for every layout, over boards of 1 to 12 in, sections of up to 60 boards and all kinds of pattern. */
class BoardLayoutProperties {

    private static final long SIXTEENTH = Length.ofInches(1.0 / 16).nanometres();

    /** A section to fill. */
    record Section(long length, BoardPattern pattern) {

        BoardLayout fit() {
            return BoardLayout.fit(Length.ofNanometres(length), pattern);
        }
    }

    @Property(tries = 5000)
    @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
    void widthsAndGapsAreTheClearLength(@ForAll("sections") Section section) {
        BoardLayout layout = section.fit();
        List<BoardPlacement> boards = layout.row(Face.OUTSIDE).boards();
        boolean gapAtEnds = section.pattern().hasGapAtEnds();
        long place = 0;
        for (BoardPlacement board : boards) {
            long gap = nm(board.left()) - place;
            if (gapAtEnds || board.index() > 0) {
                assertGap(layout, gap);
            } else {
                assertThat(gap).isZero();
            }
            assertThat(nm(board.width())).isPositive();
            place = nm(board.right());
        }
        long end = section.length() - place;
        if (gapAtEnds) {
            assertGap(layout, end);
        } else {
            assertThat(end).isZero();
        }
        Statistics.collect(layout.choice());
        Statistics.coverage(met -> {
            // Splitting must be asked for: see RippingTest.
            for (Fitting choice : EnumSet.complementOf(EnumSet.of(Fitting.MIDDLE_SPLIT))) {
                met.check(choice).count(count -> count >= 5);
            }
        });
    }

    /** A gap is the one returned to the nanometre, never under zero, and in the range unless a finding says so. */
    private static void assertGap(BoardLayout layout, long gap) {
        assertThat(gap).isNotNegative();
        assertThat(Math.abs(gap - nm(layout.row(Face.OUTSIDE).gap()))).isLessThanOrEqualTo(1);
        if (layout.findings().stream().noneMatch(finding -> finding.code().equals("gap-out-of-range"))) {
            assertThat(gap)
                    .isBetween(
                            nm(layout.pattern().leastGap()), nm(layout.pattern().mostGap()));
        }
    }

    /** Whoever goes through the boards, in one go or split, meets the very boards that are found one by one. */
    @Property
    void goingThroughTheBoardsMeetsTheOnesLookedUp(
            @ForAll("sections") Section section, @ForAll("shares") double from, @ForAll("shares") double to) {
        List<BoardPlacement> boards = section.fit().boards();
        List<BoardPlacement> lookedUp = new ArrayList<>();
        for (int i = 0; i < boards.size(); i++) {
            lookedUp.add(boards.get(i));
        }
        assertThat(new ArrayList<>(List.of(boards.toArray()))).isEqualTo(lookedUp);
        assertThat(boards.stream().toList()).isEqualTo(lookedUp);
        assertThat(boards.parallelStream().toList()).isEqualTo(lookedUp);
        assertThat(section.fit().marks())
                .containsExactlyElementsOf(
                        lookedUp.stream().map(BoardPlacement::left).toList());
        int start = (int) Math.round(Math.min(from, to) * boards.size());
        int end = (int) Math.round(Math.max(from, to) * boards.size());
        List<BoardPlacement> part = new ArrayList<>();
        boards.subList(start, end).forEach(part::add);
        assertThat(part).isEqualTo(lookedUp.subList(start, end));
    }

    @Property
    void endsAreFullUnlessAFindingSaysSo(@ForAll("sections") Section section) {
        BoardLayout layout = section.fit();
        List<BoardPlacement> boards = layout.row(Face.OUTSIDE).boards();
        boolean endsFull =
                boards.get(0).isFull() && boards.get(boards.size() - 1).isFull();

        assertThat(endsFull).isEqualTo(!codes(layout).contains("end-board-ripped"));
        assertThat(layout.fullCount()).isEqualTo((int)
                layout.boards().stream().filter(BoardPlacement::isFull).count());
        assertThat(layout.ripped())
                .isEqualTo(boards.stream().filter(board -> !board.isFull()).toList());
        for (BoardPlacement board : boards) {
            if (board.isFull()) {
                assertThat(board.width()).isEqualTo(section.pattern().width());
            } else if (!codes(layout).contains("board-too-narrow")) {
                assertThat(nm(board.width()))
                        .isBetween(smallest(section), nm(section.pattern().width()));
            }
        }
    }

    @Property
    void theSectionIsTheSameFromBothEnds(@ForAll("sections") Section section) {
        for (Face face : Face.values()) {
            List<BoardPlacement> boards = section.fit().row(face).boards();
            int last = boards.size() - 1;
            for (int i = 0; i <= last; i++) {
                long mirrored = section.length() - nm(boards.get(last - i).right());
                // What stands in the very middle of an odd number of nanometres is half a nanometre off.
                int allowed = Math.abs(2 * i - last) <= 1 ? 1 : 0;
                assertThat(Math.abs(nm(boards.get(i).left()) - mirrored)).isLessThanOrEqualTo(allowed);
                assertThat(boards.get(i).isFull())
                        .isEqualTo(boards.get(last - i).isFull());
            }
        }
    }

    @Property
    void boardsOfTheSecondRowLapBothNeighbours(@ForAll("lapped") Section section) {
        BoardLayout layout = section.fit();
        List<BoardPlacement> front = layout.row(Face.OUTSIDE).boards();
        List<BoardPlacement> back =
                layout.row(section.pattern().secondFace().orElseThrow()).boards();
        Length cover = section.pattern().coverWidth().orElseThrow();
        assertThat(back).hasSize(front.size() - 1);
        boolean kept = layout.findings().stream().noneMatch(finding -> finding.severity() == Severity.BLOCKER);
        long leastLap = nm(cover.minus(section.pattern().mostGap())) / 2;
        long mostLap = nm(cover.minus(section.pattern().leastGap()).plus(Length.ofNanometres(1))) / 2;
        long place = 0;
        for (BoardPlacement board : back) {
            long lapLeft = nm(front.get(board.index()).right().minus(board.left()));
            long lapRight = nm(board.right().minus(front.get(board.index() + 1).left()));
            assertThat(Math.abs(lapLeft - lapRight)).isLessThanOrEqualTo(1);
            assertThat(Math.abs(lapLeft - nm(layout.lap().orElseThrow()))).isLessThanOrEqualTo(1);
            if (kept) {
                assertThat(lapLeft).isBetween(leastLap, mostLap);
                assertThat(lapRight).isBetween(leastLap, mostLap);
            }
            assertThat(board.isFull()).isTrue();
            assertThat(board.width()).isEqualTo(cover);
            assertThat(nm(board.left())).isGreaterThanOrEqualTo(place);
            place = nm(board.right());
        }
        assertThat(place).isLessThanOrEqualTo(section.length());
    }

    /** The choice among full boards is the one that trying every count finds. */
    @Property
    void fullBoardsAreTakenWheneverSomeCountOfThemDoes(@ForAll("sections") Section section) {
        BoardPattern pattern = section.pattern();
        int ends = pattern.hasGapAtEnds() ? 1 : -1;
        BigDecimal best = null;
        for (int count = 1; count * nm(pattern.width()) <= section.length(); count++) {
            long left = section.length() - count * nm(pattern.width());
            int spaces = count + ends;
            if (left >= spaces * nm(pattern.leastGap()) && left <= spaces * nm(pattern.mostGap())) {
                BigDecimal off = spaces == 0
                        ? BigDecimal.ZERO
                        : BigDecimal.valueOf(left)
                                .divide(BigDecimal.valueOf(spaces), MathContext.DECIMAL64)
                                .subtract(BigDecimal.valueOf(nm(pattern.preferredGap())))
                                .abs();
                best = best == null ? off : best.min(off);
            }
        }
        BoardLayout layout = section.fit();
        assertThat(layout.choice() == Fitting.FULL_BOARDS).isEqualTo(best != null);
        if (best != null && layout.count() > 1) {
            long off = Math.abs(nm(layout.row(Face.OUTSIDE).gap()) - nm(pattern.preferredGap()));
            assertThat(BigDecimal.valueOf(off).subtract(best).abs()).isLessThanOrEqualTo(BigDecimal.ONE);
        }
    }

    /** The nearest lengths that take full boards do, and a nanometre nearer does not. */
    @Property
    void nearestFlushLengthsAreFlushAndNearest(@ForAll("sections") Section section) {
        BoardLayout layout = section.fit();
        long shorter = nm(layout.flushShorter());
        long longer = nm(layout.flushLonger());
        assertThat(section.length()).isBetween(shorter, longer);
        assertThat(isFlush(new Section(shorter, section.pattern()))).isTrue();
        assertThat(isFlush(new Section(longer, section.pattern()))).isTrue();
        if (layout.choice() != Fitting.FULL_BOARDS) {
            assertThat(isFlush(new Section(shorter + 1, section.pattern()))).isFalse();
            assertThat(isFlush(new Section(longer - 1, section.pattern()))).isFalse();
        }
    }

    private static boolean isFlush(Section section) {
        return section.fit().choice() == Fitting.FULL_BOARDS;
    }

    @Property
    void aStoryPoleIsNeverMoreThanHalfAMarkOff(@ForAll("sections") Section section) {
        for (Face face : Face.values()) {
            BoardRow row = section.fit().row(face);
            List<Length> pole = row.storyPole(Length.ofNanometres(SIXTEENTH));
            assertThat(pole).hasSize(row.count());
            int i = 0;
            for (Length mark : pole) {
                assertThat(nm(mark) % SIXTEENTH).isZero();
                assertThat(Math.abs(nm(mark.minus(row.marks().get(i)))) * 2).isLessThanOrEqualTo(SIXTEENTH);
                assertThat(mark).isEqualTo(pole.get(i));
                i++;
            }
        }
    }

    /** No fewer boards ripped would do, and the preferred gap is kept if any number of them in the middle does. */
    @Property
    void asFewAreRippedAsWillDo(@ForAll("sections") Section section) {
        BoardLayout layout = section.fit();
        int count = layout.row(Face.OUTSIDE).count();
        int spaces = count + (section.pattern().hasGapAtEnds() ? 1 : -1);
        long gap = nm(layout.row(Face.OUTSIDE).gap());
        int ripped = layout.ripped().size();
        if (layout.choice() == Fitting.MIDDLE_RIPPED) {
            assertThat(gap).isEqualTo(nm(section.pattern().preferredGap()));
        }
        if (layout.choice() == Fitting.MIDDLE_RIPPED || layout.choice() == Fitting.MIDDLE_RIPPED_CLOSER) {
            assertThat((count - ripped) % 2).isZero();
            for (int fewer = ripped - 2; fewer > 0; fewer -= 2) {
                long width = nm(section.pattern().width());
                long left = section.length() - spaces * gap - (count - fewer) * width;
                assertThat(left).isLessThan(fewer * leastWidth(section, gap));
            }
        }
        if (layout.choice() == Fitting.MIDDLE_RIPPED_CLOSER) {
            // A nanometre more in each gap would not leave the boards between the ends wide enough.
            long left = section.length()
                    - spaces * (gap + 1)
                    - 2 * nm(section.pattern().width());
            assertThat(left).isLessThan((count - 2) * leastWidth(section, gap + 1));
        }
    }

    @Property
    void aPostMeetsTheBoardsThatOverlapIt(
            @ForAll("sections") Section section, @ForAll("shares") double from, @ForAll("shares") double to) {
        long start = Math.round(Math.min(from, to) * section.length());
        long end = Math.max(start + 1, Math.round(Math.max(from, to) * section.length()));
        Interval post = Interval.of(Length.ofNanometres(start), Length.ofNanometres(end));
        for (Face face : Face.values()) {
            BoardRow row = section.fit().row(face);
            List<BoardPlacement> scanned = new ArrayList<>();
            for (BoardPlacement board : row.boards()) {
                if (Interval.of(board.left(), board.right()).overlaps(post)) {
                    scanned.add(board);
                }
            }
            assertThat(row.boardsMeeting(post)).isEqualTo(scanned);
        }
    }

    @Property
    void theWorksheetEndsWithTheGapAndWordsAreFound(@ForAll("sections") Section section) {
        BoardLayout layout = section.fit();

        assertThat(layout.worksheet().result())
                .isEqualTo(layout.row(Face.OUTSIDE).gap());
        assertThat(layout.reason()).isNotBlank();
        assertThat(layout.choice() == Fitting.RULES_BROKEN)
                .isEqualTo(layout.findings().stream().anyMatch(finding -> finding.severity() == Severity.BLOCKER));
    }

    private static List<String> codes(BoardLayout layout) {
        return layout.findings().stream().map(Finding::code).toList();
    }

    private static long smallest(Section section) {
        return nm(section.pattern().width().times(section.pattern().smallestPart()));
    }

    private static long leastWidth(Section section, long gap) {
        return section.pattern()
                .coverWidth()
                .map(cover -> Math.max(smallest(section), nm(cover) - gap))
                .orElse(smallest(section));
    }

    private static long nm(Length length) {
        return length.nanometres();
    }

    @Provide
    static Arbitrary<Double> shares() {
        return Arbitraries.doubles().between(0, 1).withDistribution(RandomDistribution.uniform());
    }

    @Provide
    static Arbitrary<Section> sections() {
        return Arbitraries.oneOf(
                inSections(sideBySide()),
                inSections(spaced()),
                inSections(spaced().map(BoardPattern::withGapAtEnds)),
                lapped());
    }

    @Provide
    static Arbitrary<Section> lapped() {
        Arbitrary<BoardPattern> kinds = Combinators.combine(widths(), shares(), Arbitraries.of(0, 1, 2))
                .as((width, share, kind) -> kind(kind, Length.ofNanometres(width), share));
        return inSections(Combinators.combine(kinds, shares(), shares(), shares(), parts())
                .as((kind, a, b, c, part) -> {
                    double[] laps = sorted(a, b, c);
                    long cover = nm(kind.coverWidth().orElseThrow());
                    // Laps of up to 0.49 of a board or batten.
                    return kind.withLaps(
                                    share(cover, 0.49 * laps[0]),
                                    share(cover, 0.49 * laps[1]),
                                    share(cover, 0.49 * laps[2]))
                            .withSmallestPart(part);
                }));
    }

    private static BoardPattern kind(int kind, Length width, double share) {
        Length narrowest = Length.ofInches(1.25);
        if (kind == 0 || width.compareTo(narrowest) < 0) {
            return BoardPattern.shadowbox(width);
        }
        return kind == 1
                ? BoardPattern.boardOnBoard(width)
                : BoardPattern.boardAndBatten(width, narrowest.plus(share(nm(width.minus(narrowest)), share)));
    }

    private static Arbitrary<BoardPattern> sideBySide() {
        return Combinators.combine(widths(), parts())
                .as((width, part) ->
                        BoardPattern.sideBySide(Length.ofNanometres(width)).withSmallestPart(part));
    }

    private static Arbitrary<BoardPattern> spaced() {
        return Combinators.combine(widths(), shares(), shares(), shares(), parts())
                .as((width, a, b, c, part) -> {
                    double[] gaps = sorted(a, b, c);
                    return BoardPattern.sideBySide(Length.ofNanometres(width))
                            .withGaps(
                                    share(width, 1.5 * gaps[0]),
                                    share(width, 1.5 * gaps[1]),
                                    share(width, 1.5 * gaps[2]))
                            .withSmallestPart(part);
                });
    }

    private static double[] sorted(double... values) {
        Arrays.sort(values);
        return values;
    }

    private static Length share(long width, double share) {
        return Length.ofNanometres(Math.round(width * share));
    }

    /** On the tape and off it. */
    private static Arbitrary<Long> widths() {
        return Arbitraries.oneOf(
                Arbitraries.longs().between(16, 192).map(sixteenths -> sixteenths * SIXTEENTH),
                Arbitraries.longs().between(16 * SIXTEENTH, 192 * SIXTEENTH));
    }

    private static Arbitrary<Ratio> parts() {
        return Arbitraries.of(0.5, 0.5, 0.25, 0.75, 0.9, 1.0).map(Ratio::of);
    }

    /** Short sections half of the time, as those are the hard ones. */
    private static Arbitrary<Section> inSections(Arbitrary<BoardPattern> patterns) {
        Arbitrary<Double> boards = Arbitraries.oneOf(
                Arbitraries.doubles().between(0, 6), Arbitraries.doubles().between(0, 60));
        return Combinators.combine(patterns, boards, Arbitraries.of(true, false))
                .as((pattern, count, onTape) -> section(pattern, count, onTape))
                // So many values are combined that their edge cases would leave no try for anything else.
                .withoutEdgeCases();
    }

    private static Section section(BoardPattern pattern, double boards, boolean onTape) {
        long shortest = nm(pattern.hasGapAtEnds() ? pattern.minimumLength() : pattern.width());
        long length = shortest + Math.round(boards * nm(pattern.width().plus(pattern.preferredGap())));
        return new Section(onTape ? (length + SIXTEENTH - 1) / SIXTEENTH * SIXTEENTH : length, pattern);
    }
}
