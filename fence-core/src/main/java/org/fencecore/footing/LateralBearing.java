package org.fencecore.footing;

import org.fencecore.internal.Root;

/**
 * How deep a post free at grade must stand for the soil beside it to hold it up: IBC equation 18-1 in SI units.
 *
 * <p>The equation gives the depth d from A = 2.34 P / (S1 b), and S1, the bearing pressure at a third of the depth, from
 * d again. Its right side falls as d grows, so there is one depth that fits. With K = 7.02 P / (S b) the equation is the
 * same as d^3 = K d + 1.09 K h. Its root is at least m, the larger of sqrt(K) and cbrt(1.09 K h), as each of the two
 * terms alone asks that much; and at most their sum, so no more than 2 m.
 */
final class LateralBearing {

    /** Metres; what a post hole can be dug to is a hundred times coarser. */
    private static final double TOLERANCE = 0.0001;

    private LateralBearing() {}

    /** Returns A in metres from the force, the pressure at a third of the depth and the width bearing on the soil. */
    static double a(double force, double bearingAtThird, double width) {
        return 2.34 * force / (bearingAtThird * width);
    }

    /** Returns the depth in metres that A and the height of the force ask for. */
    static double depth(double a, double height) {
        return 0.5 * a * (1 + Math.sqrt(1 + 4.36 * height / a));
    }

    /** Returns the depth in metres that fits its own bearing pressure, not less than it and over by 0.1 mm at most. */
    static double fittingDepth(double force, double height, double bearingPerDepth, double width) {
        double k = 3 * a(force, bearingPerDepth, width);
        double m = Math.max(Math.sqrt(k), Math.cbrt(1.09 * k * height));
        return Root.fromAbove(
                d -> d - depth(a(force, bearingPerDepth * d / 3, width), height), m / 2, 2 * m, TOLERANCE);
    }
}
