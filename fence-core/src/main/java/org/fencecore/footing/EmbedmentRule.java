package org.fencecore.footing;

/** A rule that asks a post to stand so deep. */
public enum EmbedmentRule {
    /** The soil beside the post must hold it up against the wind. */
    LATERAL_BEARING("lateral soil bearing"),
    /** The bottom of the concrete must be below the frost line, or freezing ground lifts it. */
    FROST("frost"),
    /** No post is set shallower than this, whatever else is known. */
    MINIMUM("the least embedment"),
    /** A third of the post in the ground, two thirds above. */
    THIRD_OF_POST("a third of the post in the ground"),
    /** What the standard for setting chain-link fence posts has for a fence of that height. */
    FENCE_STANDARD("the standard for chain-link posts");

    private final String words;

    EmbedmentRule(String words) {
        this.words = words;
    }

    /**
     * Returns the rule in words.
     *
     * @return such as {@code lateral soil bearing}
     */
    @Override
    public String toString() {
        return words;
    }
}
