package org.fencecore.gate;

/** What holds up the latch side of a leaf. */
public enum BraceKind {
    /** A piece of lumber, pressed between the foot at the hinge side and the head at the latch side. */
    WOOD("brace"),
    /**
     * A cable or rod with a turnbuckle, pulled between the top at the hinge side and the bottom at the latch side, over
     * the whole height of the frame and past a middle rail on its face.
     */
    CABLE("cable");

    private final String words;

    BraceKind(String words) {
        this.words = words;
    }

    /**
     * Returns its name in the trade's words.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return words;
    }
}
