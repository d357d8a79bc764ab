package org.fencecore.terrain;

import java.util.OptionalLong;

/** Ground that covers a convex part of the plan, asked in nanometres about one place or one straight piece at a time. */
interface Piecewise {

    /** Returns the height at a place, or empty where it is not covered. */
    OptionalLong heightAt(long x, long y);

    /** Adds the breaks under the piece from a to b, both covered, by their distance from a. */
    void addBreaks(long ax, long ay, long bx, long by, Breaks breaks);

    /**
     * Returns the part of the straight line from a to b that lies within the covered ground without any allowance.
     *
     * @return where it begins and ends, as parts of the length from a; both the same if no part does
     */
    double[] clip(long ax, long ay, long bx, long by);
}
