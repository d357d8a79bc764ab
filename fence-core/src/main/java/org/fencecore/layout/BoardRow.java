package org.fencecore.layout;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;

/**
 * The boards on one face, from left to right.
 *
 * <p>A row is a rule and takes no more memory for a mile than for a bay: boards and marks are worked out when asked for.
 */
public final class BoardRow {

    private final Face face;
    private final BoardList boards;
    private final int count;
    private final BoardRule rule;
    private final Length gap;
    private final Length pitch;

    BoardRow(Face face, BoardList boards, BoardRule rule, long gap, long pitch) {
        this.face = face;
        this.boards = boards;
        this.count = boards.size();
        this.rule = rule;
        this.gap = Length.ofNanometres(gap);
        this.pitch = Length.ofNanometres(pitch);
    }

    /**
     * Returns the face these boards are fixed to.
     *
     * @return the face
     */
    public Face face() {
        return face;
    }

    /**
     * Returns how many boards the row has.
     *
     * @return the count, 0 for the inside of a fence with boards on one face only
     */
    public int count() {
        return count;
    }

    /**
     * Returns the gap between two boards: the width of the spacer to set between them, though marks are surer, as a
     * spacer's error adds up. Gaps are equal to within a nanometre; on the inside of a shadowbox they are
     * smaller behind a ripped board, by what was ripped off.
     *
     * @return the gap to the nearest nanometre, zero if the row has no gaps
     */
    public Length gap() {
        return gap;
    }

    /**
     * Returns the distance from the left edge of one board to the left edge of the next, between neighbours that are
     * not ripped or, if all are, between any two.
     *
     * @return board and gap together
     */
    public Length pitch() {
        return pitch;
    }

    /**
     * Returns the boards from left to right.
     *
     * @return an unmodifiable view that works out a board when it is asked for
     */
    public List<BoardPlacement> boards() {
        return boards;
    }

    /**
     * Returns the marks to set on the rails: the left edge of each board, each measured from the left end so that
     * nothing adds up.
     *
     * @return an unmodifiable view, exact to the nanometre; rounding to the tape is left to whoever writes it down
     */
    public List<Length> marks() {
        return boards.marks();
    }

    /**
     * Returns the marks as a story pole has them: each measured from the left end and rounded to the tape by itself, so
     * that the last is no farther off than the first.
     *
     * <p>Example: boards 8.9 in apart are marked, in sixteenths, at 0, 8 7/8, 17 13/16 and 26 11/16 in; a crew that
     * steps off 8 7/8 ten times is 1/4 in short.
     *
     * @param increment the distance between marks of the tape, such as 1/16 in, over zero
     * @return an unmodifiable view of the left edges, each to the nearest mark of the tape
     * @throws IllegalArgumentException if {@code increment} is not over zero
     */
    public List<Length> storyPole(Length increment) {
        if (!increment.isPositive()) {
            throw new IllegalArgumentException(
                    "increment was " + increment + "; it must be over 0: give the distance between marks of the tape");
        }
        return new BoardMarks(boards, increment);
    }

    /**
     * Returns the boards that cross a stretch, such as those that meet a post or a rail joint. A board that only touches
     * an end of the stretch does not meet it. A stretch of no length meets the board it is in. They are found by halving, not by
     * going through the row.
     *
     * @param stretch from where to where, measured from the left end of the clear length
     * @return the boards from left to right, as an unmodifiable view; empty if none
     */
    public List<BoardPlacement> boardsMeeting(Interval stretch) {
        int first = firstPast(stretch.start().nanometres());
        int end = firstFrom(stretch.end().nanometres(), first);
        return boards.subList(first, end);
    }

    /** Returns the first board whose right edge is past a place, by halving. */
    private int firstPast(long place) {
        int low = 0;
        int high = count;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (rule.right(middle) > place) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** Returns the first board, not before a given one, whose left edge is at a place or past it. */
    private int firstFrom(long place, int from) {
        int low = from;
        int high = count;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (rule.left(middle) >= place) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /**
     * Describes the row.
     *
     * @return such as {@code 11 boards OUTSIDE, 3 1/2" apart}
     */
    @Override
    public String toString() {
        return count + " boards " + face + ", " + Written.tape(gap) + " apart";
    }
}
