package org.fencecore.layout;

/**
 * Which boards are to be ripped where full ones alone do not fill a length. The ends stay full, and what would be too
 * narrow is not done: then the fewest are ripped.
 *
 * <p>With {@code over} for what full boards at the preferred gap are too long by:
 *
 * <pre>
 * ONE      one board to width - over
 * TWO      two boards to width - over / 2
 * SPLIT    one board to width - over / 2, and gaps closer by over / 2 together
 * </pre>
 */
public enum Ripping {
    /** As few as keep the least width: an even number of an even count, an odd number of an odd one, in the middle. */
    FEWEST,
    /** One in the middle; of an even count the one left of it. */
    ONE,
    /** Two alike side by side in the middle; of an odd count the middle one and the one left of it. */
    TWO,
    /** One in the middle, which takes half of the difference; equal gaps within their range take the other half. */
    SPLIT
}
