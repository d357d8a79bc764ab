package org.fencecore.gate;

/** The side of the opening a leaf hangs on, seen from outside. */
public enum HingeSide {
    /** Hinges on the left. */
    LEFT,
    /** Hinges on the right. */
    RIGHT;

    /**
     * Returns the other side.
     *
     * @return right for left, left for right
     */
    public HingeSide opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
