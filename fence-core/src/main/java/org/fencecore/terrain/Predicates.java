package org.fencecore.terrain;

import java.math.BigInteger;

/**
 * The two questions that a triangulation asks, answered exactly for whole coordinates within 2^52 of each other.
 * Answers that are off by a rounding make triangulations of evenly spaced shots fail or fold.
 */
final class Predicates {

    /** Differences under this have products of four, and sums of a dozen such, in 128 bits. */
    private static final long SMALL = 1L << 29;

    /** A determinant of doubles this far from zero, against the sum of its terms' sizes, has the right sign. */
    private static final double SURE = 1.2e-15;

    private Predicates() {}

    /** Returns 1 if c is left of the line from a to b, -1 if right, 0 if on it. */
    static int turn(long ax, long ay, long bx, long by, long cx, long cy) {
        long p = bx - ax;
        long q = cy - ay;
        long r = by - ay;
        long s = cx - ax;
        int high = Long.compare(Math.multiplyHigh(p, q), Math.multiplyHigh(r, s));
        return high != 0 ? high : Long.compareUnsigned(p * q, r * s);
    }

    /** Tells whether d is inside, and not on, the circle through a, b and c, which turn left. */
    static boolean inCircle(long ax, long ay, long bx, long by, long cx, long cy, long dx, long dy) {
        long px = ax - dx;
        long py = ay - dy;
        long qx = bx - dx;
        long qy = by - dy;
        long rx = cx - dx;
        long ry = cy - dy;
        if (isSmall(px, py) && isSmall(qx, qy) && isSmall(rx, ry)) {
            return inCircleOfSmall(px, py, qx, qy, rx, ry);
        }
        double p = (double) px * px + (double) py * py;
        double q = (double) qx * qx + (double) qy * qy;
        double r = (double) rx * rx + (double) ry * ry;
        double qxry = (double) qx * ry;
        double rxqy = (double) rx * qy;
        double rxpy = (double) rx * py;
        double pxry = (double) px * ry;
        double pxqy = (double) px * qy;
        double qxpy = (double) qx * py;
        double determinant = p * (qxry - rxqy) + q * (rxpy - pxry) + r * (pxqy - qxpy);
        double size = p * (Math.abs(qxry) + Math.abs(rxqy))
                + q * (Math.abs(rxpy) + Math.abs(pxry))
                + r * (Math.abs(pxqy) + Math.abs(qxpy));
        if (Math.abs(determinant) > SURE * size) {
            return determinant > 0;
        }
        return lifted(px, py, qx, qy, rx, ry)
                        .add(lifted(qx, qy, rx, ry, px, py))
                        .add(lifted(rx, ry, px, py, qx, qy))
                        .signum()
                > 0;
    }

    private static boolean isSmall(long x, long y) {
        return Math.abs(x) < SMALL && Math.abs(y) < SMALL;
    }

    /** Sums three products of 128 bits, high and low words apart. */
    private static boolean inCircleOfSmall(long px, long py, long qx, long qy, long rx, long ry) {
        long p = px * px + py * py;
        long q = qx * qx + qy * qy;
        long r = rx * rx + ry * ry;
        long qr = qx * ry - rx * qy;
        long rp = rx * py - px * ry;
        long pq = px * qy - qx * py;
        long first = p * qr;
        long second = q * rp;
        long third = r * pq;
        long two = first + second;
        long low = two + third;
        long high = Math.multiplyHigh(p, qr)
                + Math.multiplyHigh(q, rp)
                + Math.multiplyHigh(r, pq)
                + (Long.compareUnsigned(two, first) < 0 ? 1 : 0)
                + (Long.compareUnsigned(low, two) < 0 ? 1 : 0);
        return high > 0 || (high == 0 && low != 0);
    }

    /** Returns (p squared) times (q cross r). */
    private static BigInteger lifted(long px, long py, long qx, long qy, long rx, long ry) {
        BigInteger square = product(px, px).add(product(py, py));
        return square.multiply(product(qx, ry).subtract(product(rx, qy)));
    }

    private static BigInteger product(long a, long b) {
        return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
    }
}
