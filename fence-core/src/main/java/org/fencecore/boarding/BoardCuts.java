package org.fencecore.boarding;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Clearance;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.slope.BayTop;
import org.fencecore.slope.FittedBay;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopLine;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * The cut of every upright board of a layout, from the line its top ends on to the line its bottom ends on.
 *
 * <pre>
 * square end       height of the line at the middle of the board
 * sloped end       height of the line at each edge of the board, straight between
 * length to cut    highest corner of the top - lowest corner of the bottom
 * </pre>
 *
 * <p>Lines are profiles over the clear length, zero at its left end, such as the line a clearance over the ground and one
 * a board's length over that. A break of a line within a board's width is cut straight past. Boards whose width does not
 * hold two dog-ears are left without, with a finding.
 *
 * <p>Cuts are worked out when asked for, and take no memory before.
 *
 * <p>Sources: geometry.
 *
 * <p>Example: a level top 6 ft up, over ground that rises 1 ft in 10: a board of 5 1/2 in from 0 to 5 1/2 in, with its
 * bottom cut along the ground, is 6 ft long on the left and 0.55 in shorter on the right.
 *
 * <pre>{@code
 * Profile top = Profile.builder().point(Length.ZERO, Length.ofFeet(6)).point(Length.ofFeet(10), Length.ofFeet(6)).build();
 * Profile bottom = Profile.builder().point(Length.ZERO, Length.ZERO).point(Length.ofFeet(10), Length.ofFeet(1)).build();
 * BoardLayout layout = BoardLayout.fit(Length.ofFeet(10), BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2)));
 * BoardCuts cuts = BoardCuts.of(layout, top, bottom, BoardEnds.square().withSlopedBottom());
 * cuts.cuts().get(0).leftEdge();     // 6 ft
 * cuts.cuts().get(0).rightEdge();    // 5 ft 11.45 in
 * }</pre>
 */
public final class BoardCuts {

    private final BoardLayout layout;
    private final Function<Interval, BoardEdge> lower;
    private final Function<Interval, BoardEdge> upper;
    private final BoardEnds ends;
    private final boolean allSquare;

    private BoardCuts(
            BoardLayout layout,
            Function<Interval, BoardEdge> lower,
            Function<Interval, BoardEdge> upper,
            BoardEnds ends,
            boolean allSquare) {
        this.layout = layout;
        this.allSquare = allSquare;
        this.lower = lower;
        this.upper = upper;
        this.ends = ends;
    }

    /**
     * Returns the cuts of a layout's boards.
     *
     * @param layout the boards
     * @param top the line their tops end on
     * @param bottom the line their bottoms end on
     * @param ends how their ends are cut
     * @return the cuts
     * @throws IllegalArgumentException if a line does not cover the clear length, or the top is not over the bottom all
     *     along, or two dog-ears take a full board's width or more
     */
    public static BoardCuts of(BoardLayout layout, Profile top, Profile bottom, BoardEnds ends) {
        Objects.requireNonNull(ends, "ends");
        Interval needed = Interval.of(Length.ZERO, layout.clearLength());
        requireCovering("top", top, needed);
        requireCovering("bottom", bottom, needed);
        Clearance between = bottom.between(needed.start(), needed.end()).clearanceUnder(top);
        if (!between.min().isPositive()) {
            throw new IllegalArgumentException("top was " + between.min() + " over bottom at " + between.minStation()
                    + "; it must be over it all along, so check which line is which and their datum");
        }
        requireDogEars(layout, ends);
        return new BoardCuts(
                layout,
                board -> along(bottom, board, ends.hasSlopedBottom()),
                board -> along(top, board, ends.hasSlopedTop()),
                ends,
                ends.equals(BoardEnds.square()) && between.min().equals(between.max()));
    }

    private static BoardEdge along(Profile line, Interval board, boolean sloped) {
        Length middle = board.middle();
        return BoardEdge.straight(
                board,
                line.elevationAt(sloped ? board.start() : middle),
                line.elevationAt(sloped ? board.end() : middle));
    }

    /**
     * Returns the cuts of boards that stand along a run, under the line of its tops. A board goes by the bay that its
     * middle is in. Under a straight line its ends are cut as told; under any other its top is marked along the line, and
     * where boards are to be cut to the ground its bottom along that.
     *
     * @param layout the boards
     * @param top the line of the tops, with that of the bottoms
     * @param start the station of the run at which the layout begins
     * @param ends how ends that are not marked in place are cut
     * @return the cuts
     * @throws IllegalArgumentException if two dog-ears take a full board's width or more
     */
    public static BoardCuts under(BoardLayout layout, TopLine top, Length start, BoardEnds ends) {
        Objects.requireNonNull(top, "top");
        Objects.requireNonNull(start, "start");
        requireDogEars(layout, ends);
        return new BoardCuts(
                layout,
                board -> lower(top, start, board, ends.hasSlopedBottom()),
                board -> upper(top, start, board, ends.hasSlopedTop()),
                ends,
                ends.equals(BoardEnds.square())
                        && top.shape().isStraight()
                        && top.fit().spec().underBoards() != SlopeSpec.UnderBoards.BOARDS_TO_GROUND);
    }

    /**
     * Returns the cuts of boards that stand over one straight line of bottoms, such as those of a gate's leaf. Under a
     * straight line of tops their ends are cut as told; under any other their tops are marked along the line.
     *
     * @param layout the boards
     * @param top the tops, with the line of the bottoms
     * @param start the station at which the layout begins
     * @param ends how ends that are not marked in place are cut
     * @return the cuts
     * @throws IllegalArgumentException if two dog-ears take a full board's width or more
     */
    public static BoardCuts under(BoardLayout layout, BayTop top, Length start, BoardEnds ends) {
        Objects.requireNonNull(top, "top");
        Objects.requireNonNull(start, "start");
        requireDogEars(layout, ends);
        boolean straight = top.shape().isStraight();
        return new BoardCuts(
                layout,
                board -> straight(board, start, ends.hasSlopedBottom(), top::bottomAt),
                board -> straight
                        ? straight(board, start, ends.hasSlopedTop(), top::topAt)
                        : marked(top.upperEdge(board.shiftedBy(start)), start),
                ends,
                ends.equals(BoardEnds.square()) && straight);
    }

    private static BoardEdge straight(Interval board, Length start, boolean sloped, UnaryOperator<Length> line) {
        Interval stations = board.shiftedBy(start);
        Length middle = stations.middle();
        return BoardEdge.straight(
                board, line.apply(sloped ? stations.start() : middle), line.apply(sloped ? stations.end() : middle));
    }

    private static BoardEdge lower(TopLine top, Length start, Interval board, boolean sloped) {
        Interval stations = board.shiftedBy(start);
        if (top.isCutToGround(stations)) {
            return marked(top.lowerEdge(stations, stations), start);
        }
        FittedBay bay = top.fit().bayAt(stations.middle());
        return BoardEdge.straight(
                board,
                bay.bottomAt(sloped ? stations.start() : stations.middle()),
                bay.bottomAt(sloped ? stations.end() : stations.middle()));
    }

    private static BoardEdge upper(TopLine top, Length start, Interval board, boolean sloped) {
        Interval stations = board.shiftedBy(start);
        if (!top.shape().isStraight()) {
            return marked(top.upperEdge(stations, stations), start);
        }
        FittedBay bay = top.fit().bayAt(stations.middle());
        return BoardEdge.straight(
                board,
                top.topIn(bay, sloped ? stations.start() : stations.middle()),
                top.topIn(bay, sloped ? stations.end() : stations.middle()));
    }

    private static BoardEdge marked(List<ProfilePoint> edge, Length start) {
        return new BoardEdge(
                edge.stream()
                        .map(corner -> new ProfilePoint(corner.station().minus(start), corner.elevation()))
                        .toList(),
                true);
    }

    private static void requireDogEars(BoardLayout layout, BoardEnds ends) {
        if (ends.dogEar().times(2).compareTo(layout.pattern().width()) >= 0) {
            throw new IllegalArgumentException("dog-ears were " + ends.dogEar() + " on boards "
                    + layout.pattern().width() + " wide; they must be under half of that");
        }
    }

    private static void requireCovering(String name, Profile line, Interval needed) {
        if (!line.covers(needed)) {
            throw new IllegalArgumentException(name + " ran from "
                    + line.extent().start() + " to "
                    + line.extent().end() + "; it must cover the boards from " + needed.start() + " to " + needed.end()
                    + ", so shift it to their left end or carry it on");
        }
    }

    /**
     * Returns the boards that are cut.
     *
     * @return the layout
     */
    public BoardLayout layout() {
        return layout;
    }

    /**
     * Tells, without going through the boards, whether all are cut square and to one length.
     *
     * @return true if no end is sloped or marked and there are no dog-ears, and the lines are as far apart all along
     */
    public boolean areAllSquare() {
        return allSquare;
    }

    /**
     * Returns the cut of each board, in the order of the layout's boards.
     *
     * @return an unmodifiable view that works out a cut when it is asked for
     */
    public List<BoardCut> cuts() {
        return new View(this);
    }

    private BoardCut cut(BoardPlacement board) {
        Interval reach = Interval.of(board.left(), board.right());
        return new BoardCut(
                board,
                lower.apply(reach),
                upper.apply(reach),
                takesDogEars(board.width()) ? ends.dogEar() : Length.ZERO);
    }

    private boolean takesDogEars(Length width) {
        return ends.dogEar().times(2).compareTo(width) < 0;
    }

    /**
     * Returns how many boards come from which stock. Each board is cut from the length of stick of which it takes the
     * smallest part, the shorter if two are alike, and sticks are shared by boards that come so many to a stick. Ripped
     * boards are cut from sticks of full width, battens from sticks of theirs.
     *
     * <p>It is a count for a first order; what a mix of lengths on one stick would save is left to a cutting plan.
     *
     * @param stock the lengths of stick to be had, over zero
     * @param kerf what a saw cut takes, 0 or more
     * @return the uses, by width and then length of stick
     * @throws IllegalArgumentException if there is no stock, a length is out of its range, or a board is longer than the
     *     longest stick
     */
    public List<StockUse> stock(List<Length> stock, Length kerf) {
        long[] sticks = new long[stock.size()];
        for (int i = 0; i < sticks.length; i++) {
            sticks[i] = stock.get(i).nanometres();
            if (sticks[i] <= 0) {
                throw new IllegalArgumentException("stock was " + stock + "; every length must be over 0");
            }
        }
        if (kerf.isNegative() || kerf.compareTo(Length.ofInches(1)) > 0) {
            throw new IllegalArgumentException("kerf was " + kerf + "; it must be from 0 to 1 in");
        }
        TreeMap<Use, Integer> boards = new TreeMap<>();
        Length coverWidth =
                layout.pattern().coverWidth().orElse(layout.pattern().width());
        for (BoardCut cut : cuts()) {
            Length width = cut.board().face() == Face.OUTSIDE ? layout.pattern().width() : coverWidth;
            boards.merge(use(width, cut.length(), sticks, kerf.nanometres()), 1, Integer::sum);
        }
        List<StockUse> uses = new ArrayList<>();
        boards.forEach((use, count) -> uses.add(new StockUse(
                Length.ofNanometres(use.width()),
                Length.ofNanometres(use.stick()),
                use.each(),
                count,
                (count + use.each() - 1) / use.each())));
        return List.copyOf(uses);
    }

    private static Use use(Length width, Length length, long[] sticks, long kerf) {
        long best = 0;
        long each = 0;
        for (long stick : sticks) {
            // A kerf between two boards: n length + (n - 1) kerf up to the stick.
            long whole = (stick + kerf) / (length.nanometres() + kerf);
            // stick / whole under best / each, or as much of a shorter stick; as doubles, for the products do not fit.
            double part = (double) stick / whole;
            double bestPart = (double) best / each;
            if (whole > 0 && (each == 0 || part < bestPart || (part == bestPart && stick < best))) {
                best = stick;
                each = whole;
            }
        }
        if (each == 0) {
            throw new IllegalArgumentException("a board was " + length
                    + " long, which none of the stock holds; add longer stock, or lower the top line");
        }
        return new Use(width.nanometres(), best, (int) Math.min(each, Integer.MAX_VALUE));
    }

    /** Sticks of one width and length that give so many boards each. */
    private record Use(long width, long stick, int each) implements Comparable<Use> {
        @Override
        public int compareTo(Use other) {
            int byWidth = Long.compare(other.width, width);
            int byStick = byWidth != 0 ? byWidth : Long.compare(stick, other.stick);
            return byStick != 0 ? byStick : Integer.compare(each, other.each);
        }
    }

    /**
     * Returns what is wrong: a warning {@code no-room-for-dog-ears} where ripped boards or battens are too narrow for
     * them.
     *
     * @return all findings, empty if there are none
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (!layout.ripped().isEmpty()) {
            narrow(findings, "ripped boards", layout.ripped().get(0).width());
        }
        if (layout.count() > layout.row(Face.OUTSIDE).count()) {
            layout.pattern().coverWidth().ifPresent(width -> narrow(findings, "second row", width));
        }
        return List.copyOf(findings);
    }

    private void narrow(List<Finding> findings, String place, Length width) {
        if (!takesDogEars(width)) {
            findings.add(Finding.warning(
                            "no-room-for-dog-ears",
                            place,
                            "boards " + Written.tape(width) + " wide do not hold two dog-ears of "
                                    + Written.tape(ends.dogEar()) + ", and are left square")
                    .withRemedy("make the dog-ears smaller")
                    .withSource(Citation.GEOMETRY));
        }
    }

    /** All cuts, each from its board. */
    private static final class View extends AbstractList<BoardCut> implements RandomAccess {

        private final BoardCuts cuts;
        private final List<BoardPlacement> boards;

        View(BoardCuts cuts) {
            this.cuts = cuts;
            this.boards = cuts.layout.boards();
        }

        @Override
        public BoardCut get(int index) {
            return cuts.cut(boards.get(index));
        }

        @Override
        public int size() {
            return boards.size();
        }

        @Override
        public Iterator<BoardCut> iterator() {
            Iterator<BoardPlacement> each = boards.iterator();
            return new Iterator<>() {
                @Override
                public boolean hasNext() {
                    return each.hasNext();
                }

                @Override
                public BoardCut next() {
                    return cuts.cut(each.next());
                }
            };
        }
    }
}
