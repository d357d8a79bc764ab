package org.fencecore.geometry.exact;

import java.math.BigInteger;
import org.fencecore.units.Length;

/** Arithmetic on whole nanometres that does not lose any: products of two lengths do not fit a {@code long}. */
public final class Exact {

    /** Coordinates up to here leave room for differences and sums of differences in a {@code long}. */
    public static final long LIMIT = 1_000_000_000_000_000_000L;

    /** A quotient up to here is known by its {@code double} to within a unit or two. */
    private static final double SURE_QUOTIENT = 1L << 50;

    private Exact() {}

    /** Refuses coordinates whose differences could overflow. */
    public static void requireInRange(String name, Length value) {
        if (value.nanometres() > LIMIT || value.nanometres() < -LIMIT) {
            throw new IllegalArgumentException(name + " was " + value
                    + "; it must be within 1,000,000 km of zero, so check its unit or move the origin nearer");
        }
    }

    /**
     * Returns {@code a * b / c} rounded once, half a unit going up. Up rather than away from zero, so that reading a
     * line from its other end gives the same answer.
     *
     * @param c over zero, and no longer than the straight line between two points within {@link #LIMIT}
     */
    public static long timesOver(long a, long b, long c) {
        double estimate = (double) a * b / c;
        if (Math.abs(estimate) > SURE_QUOTIENT) {
            return divide(BigInteger.valueOf(a).multiply(BigInteger.valueOf(b)), BigInteger.valueOf(c))
                    .longValueExact();
        }
        // Five roundings put the estimate off by less than 0.7 units, and its own rounding by half a unit more, so the
        // true rest of the division is under 1.2c and fits a long: wrapped products still give exactly that rest.
        long quotient = Math.round(estimate);
        long rest = a * b - quotient * c;
        quotient += Math.floorDiv(rest, c);
        rest = Math.floorMod(rest, c);
        return rest >= c - rest ? quotient + 1 : quotient;
    }

    /**
     * Returns a quotient rounded once, half a unit going up.
     *
     * @param divisor not zero
     */
    public static BigInteger divide(BigInteger dividend, BigInteger divisor) {
        if (divisor.signum() < 0) {
            return divide(dividend.negate(), divisor.negate());
        }
        BigInteger[] parts = dividend.shiftLeft(1).add(divisor).divideAndRemainder(divisor.shiftLeft(1));
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    /** Returns {@code ax * by - ay * bx}: twice the area between two directions, over zero if b is left of a. */
    public static BigInteger cross(long ax, long ay, long bx, long by) {
        return BigInteger.valueOf(ax)
                .multiply(BigInteger.valueOf(by))
                .subtract(BigInteger.valueOf(ay).multiply(BigInteger.valueOf(bx)));
    }

    /** Returns the sign of {@link #cross} without making big numbers: 1 if b is left of a, -1 right, 0 in line. */
    public static int crossSign(long ax, long ay, long bx, long by) {
        int high = Long.compare(Math.multiplyHigh(ax, by), Math.multiplyHigh(ay, bx));
        return Integer.signum(high != 0 ? high : Long.compareUnsigned(ax * by, ay * bx));
    }

    /** Returns the length of the straight line over two distances square to each other, to the nearest nanometre. */
    public static long hypotenuse(long a, long b) {
        return Math.round(Math.sqrt((double) a * a + (double) b * b));
    }
}
