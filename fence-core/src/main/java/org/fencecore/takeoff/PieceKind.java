package org.fencecore.takeoff;

/** What a piece of lumber becomes. */
public enum PieceKind {
    /** A post, from its foot in the ground to its top. */
    POST("post"),
    /** A piece of a rail of the fence, over one or more bays. */
    RAIL("rail"),
    /** An upright that ties horizontal boards together between posts. */
    NAILER("nailer"),
    /** A board of the fence or of a gate. */
    BOARD("board"),
    /** A board laid lengthwise under a bay to close the gap there. */
    KICK_BOARD("kick board"),
    /** A batten over a gap between boards. */
    BATTEN("batten"),
    /** An upright of a gate's frame. */
    GATE_STILE("gate stile"),
    /** A level piece of a gate's frame. */
    GATE_RAIL("gate rail"),
    /** A brace across a gate's frame. */
    GATE_BRACE("gate brace"),
    /** A block in a gate's frame that hinges are screwed to. */
    GATE_BLOCK("gate block");

    private final String words;

    PieceKind(String words) {
        this.words = words;
    }

    /** Tells whether it is of the boarding, which comes by the rule and not piece by piece. */
    boolean isBoarding() {
        return this == BOARD || this == BATTEN;
    }

    /** Writes a number of them, such as {@code 6 rails}. */
    String counted(int count) {
        return count + " " + words + (count == 1 ? "" : "s");
    }

    /**
     * Returns its name in the trade's words, such as {@code gate stile}.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return words;
    }
}
