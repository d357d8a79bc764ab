package org.fencecore.layout;

/**
 * Which bays a stretch is divided into when nothing is in the way of its posts.
 *
 * <p>All rules take the fewest posts that keep the longest bay allowed. Where full bays are wanted and what remains is
 * under the minimum, it is shared with as many full bays as it takes to keep the minimum, so that no sliver is left.
 */
public enum BayRule {
    /** All bays alike. */
    EQUAL,
    /** Full bays, and what remains at the start. */
    REMAINDER_AT_START,
    /** Full bays, and what remains at the end. */
    REMAINDER_AT_END,
    /**
     * As many full bays on the left as on the right, and what remains in the middle: one bay, or, where that would leave an
     * odd full bay, two bays that share it.
     */
    REMAINDER_IN_MIDDLE,
    /**
     * Full bays in the middle, and what remains split between both ends. It is shared with one full bay, so that it takes
     * no more posts than the other rules and no end bay is under half a full one.
     */
    REMAINDER_SPLIT
}
