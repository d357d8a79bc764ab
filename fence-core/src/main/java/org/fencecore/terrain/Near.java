package org.fencecore.terrain;

import org.fencecore.units.Length;

/** What counts as being at a place: the tapes and rods of a yard do no better. */
final class Near {

    /** A sixteenth of an inch. */
    static final Length SIXTEENTH = Length.ofInches(1.0 / 16);

    /** A tenth of a millimetre: breaks of the ground closer together than this are one. */
    static final long SAME_BREAK = 100_000;

    private Near() {}

    /** Returns the distance from a place to the straight line between two others, in the unit of the coordinates. */
    static double toLine(long px, long py, long ax, long ay, long bx, long by) {
        double dx = (double) (bx - ax);
        double dy = (double) (by - ay);
        double ex = (double) (px - ax);
        double ey = (double) (py - ay);
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, (ex * dx + ey * dy) / square));
        return Math.hypot(ex - t * dx, ey - t * dy);
    }
}
