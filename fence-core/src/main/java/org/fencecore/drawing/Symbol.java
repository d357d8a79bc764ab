package org.fencecore.drawing;

/** A mark of fixed size on paper, for what is too small to be drawn to scale. */
public enum Symbol {
    /** A square, filled. */
    FILLED_SQUARE,
    /** A square, left open. */
    OPEN_SQUARE,
    /** A square on its corner, left open. */
    DIAMOND,
    /** A circle, filled. */
    DOT
}
