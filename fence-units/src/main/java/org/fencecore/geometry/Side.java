package org.fencecore.geometry;

/** A side of a line, looking along it from its start to its end. */
public enum Side {
    /** On the left hand: north of a line that runs east. */
    LEFT,
    /** On the right hand: south of a line that runs east. */
    RIGHT;

    /**
     * Returns the other side.
     *
     * @return right for left, left for right
     */
    public Side opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }

    /** Returns 1 for the right, the positive side of an offset or a turn, and -1 for the left. */
    int sign() {
        return this == RIGHT ? 1 : -1;
    }
}
