package org.fencecore.layout;

import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * One board of a layout: which it is, where its edges are and whether it is a full board.
 *
 * <p>Edges are measured from the left end of the clear length, seen from the outside.
 */
public final class BoardPlacement {

    private final Face face;
    private final int index;
    private final long left;
    private final long right;
    private final boolean full;

    BoardPlacement(Face face, int index, long left, long right, boolean full) {
        this.face = face;
        this.index = index;
        this.left = left;
        this.right = right;
        this.full = full;
    }

    /**
     * Returns the face it is fixed to.
     *
     * @return the face
     */
    public Face face() {
        return face;
    }

    /**
     * Returns its place in the row of its face.
     *
     * @return the index, 0 for the leftmost board
     */
    public int index() {
        return index;
    }

    /**
     * Returns where its left edge is: the mark on the rail.
     *
     * @return the distance from the left end of the clear length
     */
    public Length left() {
        return Length.ofNanometres(left);
    }

    /**
     * Returns where its right edge is.
     *
     * @return the distance from the left end of the clear length
     */
    public Length right() {
        return Length.ofNanometres(right);
    }

    /**
     * Returns how wide it is.
     *
     * @return right less left, over zero
     */
    public Length width() {
        return Length.ofNanometres(right - left);
    }

    /**
     * Tells whether it has the full width of the pattern.
     *
     * @return false if it is ripped
     */
    public boolean isFull() {
        return full;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BoardPlacement that
                && face == that.face
                && index == that.index
                && left == that.left
                && right == that.right
                && full == that.full;
    }

    @Override
    public int hashCode() {
        return Objects.hash(face, index, left, right, full);
    }

    /**
     * Describes the board.
     *
     * @return such as {@code OUTSIDE board 3 from 2' 0" to 2' 5 1/2"}
     */
    @Override
    public String toString() {
        return face + " board " + index + " from " + Written.tape(left()) + " to " + Written.tape(right())
                + (full ? "" : ", ripped");
    }
}
