package org.fencecore;

/** What a post does in the fence. */
public enum PostKind {
    /** Stands where two fenced sides meet. */
    CORNER,
    /** Stands where the fence begins or ends. */
    END,
    /** Carries a gate's hinges or its latch. */
    GATE,
    /** Stands between the others and carries rails on both sides. */
    LINE
}
