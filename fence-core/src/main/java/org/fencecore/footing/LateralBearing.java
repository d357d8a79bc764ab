package org.fencecore.footing;

import org.fencecore.internal.Root;

/**
 * How deep a post must stand for the soil beside it to hold it up, in SI units.
 *
 * <p>Free at grade, IBC equation 18-1 gives the depth d from A = 2.34 P / (S1 b), and S1, the bearing pressure at a third
 * of the depth, from d again. With K = 7.02 P / (S b) that is the cubic d^3 = K d + 1.09 K h, and K h = 7.02 M / (S b) with
 * the moment M at grade, so that a moment without a force has a depth too. The cubic has one root over zero. It is no less
 * than sqrt(K) or cbrt(1.09 K h), which each term alone asks for, and no more than the sum of the two; between them the
 * cubic rises, and the root is closed in on from both sides.
 *
 * <p>Held at grade, equations 18-2 and 18-3 with the bearing pressure S3 at d are d^3 = 4.25 M / (S b).
 */
final class LateralBearing {

    /** Metres; what a post hole can be dug to is a thousand times coarser. */
    private static final double TOLERANCE = 1e-6;

    private LateralBearing() {}

    /** Returns A in metres from the force, the pressure at a third of the depth and the width bearing on the soil. */
    static double a(double force, double bearingAtThird, double width) {
        return 2.34 * force / (bearingAtThird * width);
    }

    /** Returns the depth in metres that A and the height of the force ask for. */
    static double depth(double a, double height) {
        return 0.5 * a * (1 + Math.sqrt(1 + 4.36 * height / a));
    }

    /** Returns the depth in metres of a post free at grade, not under the root and over by a micrometre at most. */
    static double free(double force, double moment, double bearingPerDepth, double width) {
        double k = 7.02 * force / (bearingPerDepth * width);
        double c = 1.09 * 7.02 * moment / (bearingPerDepth * width);
        if (k == 0 || c == 0) {
            return Math.max(Math.sqrt(k), Math.cbrt(c));
        }
        double low = Math.max(Math.sqrt(k), Math.cbrt(c));
        // A little more than the sum, for where one term is nothing beside the other.
        double high = (Math.sqrt(k) + Math.cbrt(c)) * (1 + 1e-9) + TOLERANCE;
        return Root.fromAbove(d -> d * (d * d - k) - c, low * (1 - 1e-9), high, TOLERANCE);
    }

    /** Returns the depth in metres of a post held at grade. */
    static double held(double moment, double bearingPerDepth, double width) {
        return Math.cbrt(4.25 * moment / (bearingPerDepth * width));
    }
}
