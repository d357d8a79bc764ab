package org.fencecore.gate;

/** A part a piece plays in the frame of a gate. */
public enum FrameMember {
    /** The upright that carries the hinges. */
    HINGE_STILE("hinge stile"),
    /** The upright that carries the latch. */
    LATCH_STILE("latch stile"),
    /** The lowest level piece. */
    BOTTOM_RAIL("bottom rail"),
    /** The level piece at half height. */
    MIDDLE_RAIL("middle rail"),
    /** The highest level piece. */
    TOP_RAIL("top rail");

    private final String words;

    FrameMember(String words) {
        this.words = words;
    }

    /**
     * Tells whether it is an upright, which runs the full height of the frame.
     *
     * @return true for a stile, false for a rail
     */
    public boolean isStile() {
        return this == HINGE_STILE || this == LATCH_STILE;
    }

    /**
     * Returns its name in the trade's words, such as {@code hinge stile}.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return words;
    }
}
