package org.fencecore.geometry;

import java.math.BigInteger;
import org.fencecore.units.Length;

/** Arithmetic on whole nanometres that does not lose any: products of two lengths do not fit a {@code long}. */
final class Exact {

    /** Coordinates up to here leave room for differences and sums of differences in a {@code long}. */
    private static final long LIMIT = 1_000_000_000_000_000_000L;

    /** A quotient up to here is known by its {@code double} to within a unit or two. */
    private static final double SURE_QUOTIENT = 1L << 50;

    private static final long SURE_DIVISOR = 1L << 58;

    private Exact() {}

    /** Refuses coordinates whose differences could overflow. */
    static void requireInRange(String name, Length value) {
        if (Math.abs(value.nanometres()) > LIMIT || value.nanometres() == Long.MIN_VALUE) {
            throw new IllegalArgumentException(name + " was " + value
                    + "; it must be within 1,000,000 km of zero, so check its unit or move the origin nearer");
        }
    }

    /**
     * Returns {@code a * b / c} rounded once, half a unit going up. Up rather than away from zero, so that reading a
     * line from its other end gives the same answer.
     *
     * @param c over zero
     */
    static long timesOver(long a, long b, long c) {
        double estimate = (double) a * b / c;
        if (Math.abs(estimate) > SURE_QUOTIENT || c > SURE_DIVISOR) {
            BigInteger twice =
                    BigInteger.valueOf(a).multiply(BigInteger.valueOf(b)).shiftLeft(1);
            BigInteger divisor = BigInteger.valueOf(c).shiftLeft(1);
            return floorDivide(twice.add(BigInteger.valueOf(c)), divisor).longValueExact();
        }
        // The estimate is off by less than 3 units, so the true rest of the division is under 3c and fits a long:
        // computing it with wrapped products still gives exactly that rest.
        long quotient = Math.round(estimate);
        long rest = a * b - quotient * c;
        quotient += Math.floorDiv(rest, c);
        rest = Math.floorMod(rest, c);
        return rest >= c - rest ? quotient + 1 : quotient;
    }

    private static BigInteger floorDivide(BigInteger dividend, BigInteger divisor) {
        BigInteger[] parts = dividend.divideAndRemainder(divisor);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }
}
