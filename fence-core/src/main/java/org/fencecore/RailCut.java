package org.fencecore;

import org.fencecore.slope.RailMarks;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * One rail of a bay, ready to cut and to set: its length, its end cuts and the marks on the two posts.
 */
public final class RailCut {

    private final int number;
    private final Length length;
    private final Angle endCut;
    private final RailMarks from;
    private final RailMarks to;

    RailCut(int number, Length length, Angle endCut, RailMarks from, RailMarks to) {
        this.number = number;
        this.length = length;
        this.endCut = endCut;
        this.from = from;
        this.to = to;
    }

    /**
     * Returns its number from the bottom, from 1.
     *
     * @return its number from the bottom, from 1
     */
    public int number() {
        return number;
    }

    /**
     * Returns the length along the slope, to the long points.
     *
     * @return the length along the slope, to the long points
     */
    public Length length() {
        return length;
    }

    /**
     * Returns how far off square both ends are cut, so that they stand plumb.
     *
     * @return how far off square both ends are cut, so that they stand plumb
     */
    public Angle endCut() {
        return endCut;
    }

    /**
     * Returns the marks above the ground at the post where the bay begins.
     *
     * @return the marks above the ground at the post where the bay begins
     */
    public RailMarks from() {
        return from;
    }

    /**
     * Returns the marks above the ground at the post where the bay ends.
     *
     * @return the marks above the ground at the post where the bay ends
     */
    public RailMarks to() {
        return to;
    }
}
