package org.fencecore.layout;

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
        return new EqualParts(gapTotal, spaces).part();
    }

    long rippedWidth() {
        return new EqualParts(rippedTotal, ripped).part();
    }
}
