package org.fencecore;

import org.fencecore.rail.RailMarks;

/**
 * One rail of a bay, ready to set: its marks on the two posts. Of what pieces it is made is in
 * {@link Stretch#railPieces}, since a piece may run over several bays.
 */
public final class BayRail {

    private final int number;
    private final RailMarks from;
    private final RailMarks to;

    BayRail(int number, RailMarks from, RailMarks to) {
        this.number = number;
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
