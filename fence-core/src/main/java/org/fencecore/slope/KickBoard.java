package org.fencecore.slope;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * One board laid lengthwise under the boards of a bay to close the gap there, its upper edge along their bottoms or along
 * the kick board above it.
 *
 * <p>A bay whose widest gap is over the maximum clearance is closed from where its gap grows over the usual clearance. The
 * next board under the first begins where the gap is wider than that by the first one's width, and so on. The lowest is
 * scribed to the ground, and stays the minimum clearance off it; a board that need not be so wide is ripped.
 *
 * <p>Example: a stepped bay of 8 ft on 20 %, 2 in up at its higher post and 21.2 in at the other, closed with boards
 * 5 1/2 in wide: four of them, the first from post to post, the second from 96 x 5.5 / 19.2 = 27 1/2 in from the higher
 * post on, and so on.
 */
public final class KickBoard {

    /** A gap deeper than this, 4 ft, is not closed with boards: what is needed there is a wall. */
    public static final Length DEEPEST = Length.ofFeet(4);

    private final int course;
    private final Interval reach;
    private final Slope grade;
    private final Length topAtStart;
    private final Length width;
    /** What is left to close under its upper edge where the gap is widest, down to the minimum clearance. */
    private final Length left;

    private KickBoard(int course, Interval reach, Slope grade, Length topAtStart, Length width, Length left) {
        this.course = course;
        this.reach = reach;
        this.grade = grade;
        this.topAtStart = topAtStart;
        this.width = width;
        this.left = left;
    }

    /**
     * Returns the boards that close a bay.
     *
     * @param bay the bay
     * @param spec its clearances
     * @param width the width of the boards, 1 in or more
     * @return the boards from the uppermost down; none where the gap is within the maximum clearance or over 4 ft
     * @throws IllegalArgumentException if the width is under 1 in
     */
    public static List<KickBoard> under(FittedBay bay, SlopeSpec spec, Length width) {
        if (width.compareTo(Length.ofInches(1)) < 0) {
            throw new IllegalArgumentException("width of a kick board was " + width + "; it must be 1 in or more");
        }
        Length widest = bay.clearance().max();
        if (spec.underBoards() == SlopeSpec.UnderBoards.BOARDS_TO_GROUND || !spec.closes(widest)) {
            return List.of();
        }
        List<KickBoard> boards = new ArrayList<>();
        Length above = Length.ZERO;
        while (spec.clearance().plus(above).compareTo(widest) < 0) {
            List<Interval> open = bay.widerThan(spec.clearance().plus(above));
            if (open.isEmpty()) {
                break;
            }
            Interval reach =
                    Interval.of(open.get(0).start(), open.get(open.size() - 1).end());
            boards.add(new KickBoard(
                    boards.size() + 1,
                    reach,
                    bay.grade(),
                    bay.bottomAt(reach.start()).minus(above),
                    width,
                    widest.minus(spec.minimumClearance()).minus(above)));
            above = above.plus(width);
        }
        return List.copyOf(boards);
    }

    /**
     * Returns its place under the bay.
     *
     * @return its number from the top, from 1
     */
    public int course() {
        return course;
    }

    /**
     * Returns from where to where it runs.
     *
     * @return the stations of its ends
     */
    public Interval reach() {
        return reach;
    }

    /**
     * Returns the grade it lies on, that of the bay.
     *
     * @return the grade, level under a stepped bay
     */
    public Slope grade() {
        return grade;
    }

    /**
     * Returns the height of its upper edge where it begins.
     *
     * @return the elevation, in the datum of the ground
     */
    public Length topAtStart() {
        return topAtStart;
    }

    /**
     * Returns how deep it is before it is scribed to the ground.
     *
     * @return the width to rip it to, its lumber's or less
     */
    public Length depth() {
        return Length.min(width, left);
    }

    /**
     * Returns how long it is: the level distance times the square root of 1 plus the grade squared.
     *
     * @return the length along its upper edge
     */
    public Length length() {
        return grade.lengthOver(reach.length());
    }

    /**
     * Returns how deep and how long the board is cut.
     *
     * @return the calculation; its last line is the length
     */
    public Worksheet worksheet() {
        return Worksheet.titled("Kick board " + course)
                .given("width of the stock", width, Written.tape(width))
                .given("left to close at the widest gap, down to the minimum clearance", left, Written.inches(left))
                .line(
                        "depth",
                        "the lesser of both, then scribed to the ground",
                        "min(" + Written.inches(width) + ", " + Written.inches(left) + ")",
                        depth(),
                        Written.tape(depth()),
                        Citation.COMMON_PRACTICE)
                .line(
                        "level reach",
                        "where the gap is open under the board above",
                        Written.feet(reach.end()) + " - " + Written.feet(reach.start()),
                        reach.length(),
                        Written.feet(reach.length()),
                        Citation.GEOMETRY)
                .line(
                        "length",
                        "level reach * sqrt(1 + grade^2)",
                        Written.feet(reach.length()) + " * sqrt(1 + (" + Written.percent(grade) + ")^2)",
                        length(),
                        Written.tape(length()),
                        Citation.GEOMETRY)
                .build();
    }

    @Override
    public String toString() {
        return "kick board " + course;
    }
}
