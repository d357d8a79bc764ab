package org.fencecore.layout;

/**
 * The ways to fill a clear length with boards, in the order in which they are tried; the first that works is taken.
 *
 * <p>Full boards come first because a cut along the grain takes time and shows. Where some must be ripped they stand in
 * the middle, the same from both ends, with a full board beside either post (common practice, no source).
 */
public enum Fitting {
    /** All boards are full, and equal gaps within the range take up the rest. */
    FULL_BOARDS,
    /** As {@link Ripping#SPLIT} asks: a board in the middle is ripped by half of the difference, and gaps take the rest. */
    MIDDLE_SPLIT,
    /** The gap is the preferred one, and some boards in the middle are ripped. */
    MIDDLE_RIPPED,
    /** As before, but with a smaller gap of the range, because the section has too few boards to rip. */
    MIDDLE_RIPPED_CLOSER,
    /** A short section: all boards, those at the ends too, are ripped to the same width. */
    ALL_RIPPED,
    /** Nothing keeps the rules of the pattern; what comes nearest is laid out, with a finding that says what is wrong. */
    RULES_BROKEN
}
