package org.fencecore.layout;

import org.fencecore.units.Length;

/**
 * The numbers that a row of boards follows from.
 *
 * @param choice which way of fitting it is
 * @param count how many boards
 * @param ripped how many of them, in the middle, are ripped
 * @param rippedTotal the widths of the ripped boards together, in nanometres
 * @param spaces how many gaps
 * @param gapTotal the gaps together, in nanometres
 */
record BoardFit(Fitting choice, int count, int ripped, long rippedTotal, int spaces, long gapTotal) {

    long gap() {
        return part(gapTotal, spaces);
    }

    long rippedWidth() {
        return part(rippedTotal, ripped);
    }

    /** Returns one part to the nearest nanometre, or zero if there is none. */
    private static long part(long whole, int parts) {
        return parts == 0 ? 0 : Length.ofNanometres(whole).dividedBy(parts).nanometres();
    }
}
