package org.fencecore.slope;

/**
 * The ways a fence can meet sloping ground.
 *
 * <p>On level ground without bumps all of them come to the same fence.
 */
public enum Treatment {

    /** Boards and rails of each bay run straight from post to post along the ground, with a bend at every post. */
    RACKED("racked"),

    /** Rails level, with a step at each post as high as that post needs. */
    STEPPED("stepped"),

    /** Rails level, with the same step at every post. */
    EVENLY_STEPPED("evenly stepped"),

    /** Rails follow straight strings over one or more bays, as few strings as can be. */
    STRINGS("on strings"),

    /** Bays steeper than they can rack are stepped, the rest run on strings; where the two meet there is a step. */
    MIXED("mixed");

    private final String words;

    Treatment(String words) {
        this.words = words;
    }

    /**
     * Returns the treatment as one says it of a run.
     *
     * @return such as {@code racked} or {@code on strings}
     */
    @Override
    public String toString() {
        return words;
    }

    /** Tells whether the rails of such a bay are level. */
    boolean isLevel() {
        return this == STEPPED || this == EVENLY_STEPPED;
    }
}
