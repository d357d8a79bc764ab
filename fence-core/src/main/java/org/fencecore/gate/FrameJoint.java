package org.fencecore.gate;

/** How stiles and rails meet at the corners of a gate's frame. */
public enum FrameJoint {
    /** Rails butt between stiles that run the full height; no end grain shows on the edges of the leaf. */
    RAILS_BETWEEN_STILES("rails butted between stiles"),
    /** Stiles butt between a bottom and a top rail that run the full width; a middle rail butts between the stiles. */
    STILES_BETWEEN_RAILS("stiles butted between rails"),
    /** Both run through and are halved where they cross, the middle rail too. */
    HALF_LAP("half-lapped"),
    /** The corners are mitred from the outer to the inner corner; a middle rail butts between the stiles. */
    MITRE("mitred");

    private final String words;

    FrameJoint(String words) {
        this.words = words;
    }

    /**
     * Returns its name in the trade's words, such as {@code half-lapped}.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return words;
    }
}
