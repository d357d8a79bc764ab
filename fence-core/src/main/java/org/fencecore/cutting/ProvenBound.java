package org.fencecore.cutting;

import java.math.BigInteger;

/**
 * A cost that no set of sticks for a job can go below, proven in whole numbers.
 *
 * <p>Give every size i a price y(i), any price, and let Z(k) be at least what the pieces of any one stick of kind k are
 * worth at these prices. Each piece is cut once, so the pieces together are worth Y = sum of demand(i) y(i), and a stick of
 * kind k that costs c(k) brings no more than Z(k) of that. If Z(k) is over c(k) for a kind without limit, all prices are
 * scaled by the least of c(k) / Z(k) (Farley's bound); where only a number n(k) of the kind may be used, n(k) times what
 * is over is taken off instead. Where at least m(k) of a kind are to be used, m(k) times any v(k) is added and Z(k) grows
 * by v(k). What is left is the bound: linear programming's weak duality, which holds for whatever prices it is given.
 *
 * <p>The prices come from a linear program in {@code double}, and are rounded to whole numbers of 1 / 2^shift first. From
 * there on everything is exact, and so is the knapsack that gives Z(k); the result is rounded up, since costs are whole.
 *
 * <p>Source: A. A. Farley, A note on bounding a class of linear programming problems, including cutting stock problems,
 * Operations Research 38 (1990), pages 922-923 (from memory); the derivation stands above.
 */
final class ProvenBound {

    private ProvenBound() {}

    /**
     * @param pieces what all pieces are worth, in scaled units
     * @param worth for each kind, no less than what the pieces of one stick are worth, v(k) included, in scaled units
     * @param forced the sum of m(k) v(k), in scaled units
     * @param cost for each kind, in scaled units
     * @param high for each kind, how many may be used, or {@link Job#NO_LIMIT}
     * @param shift a scaled unit is 1 / 2^shift of a unit of cost; 0 or more
     */
    static long of(BigInteger pieces, long[] worth, BigInteger forced, long[] cost, int[] high, int shift) {
        long over = 1;
        long under = 1;
        for (int kind = 0; kind < worth.length; kind++) {
            if (high[kind] == Job.NO_LIMIT
                    && worth[kind] > cost[kind]
                    && isLess(cost[kind], worth[kind], over, under)) {
                over = cost[kind];
                under = worth[kind];
            }
        }
        BigInteger scale = BigInteger.valueOf(over);
        BigInteger whole = BigInteger.valueOf(under);
        BigInteger bound = scale.multiply(pieces.add(forced));
        for (int kind = 0; kind < worth.length; kind++) {
            if (high[kind] != Job.NO_LIMIT) {
                BigInteger excess = scale.multiply(BigInteger.valueOf(worth[kind]))
                        .subtract(whole.multiply(BigInteger.valueOf(cost[kind])));
                bound = bound.subtract(excess.max(BigInteger.ZERO).multiply(BigInteger.valueOf(high[kind])));
            }
        }
        BigInteger[] parts = bound.max(BigInteger.ZERO).divideAndRemainder(whole.shiftLeft(shift));
        return parts[0].longValueExact() + parts[1].signum();
    }

    private static boolean isLess(long a, long b, long c, long d) {
        return BigInteger.valueOf(a)
                        .multiply(BigInteger.valueOf(d))
                        .compareTo(BigInteger.valueOf(c).multiply(BigInteger.valueOf(b)))
                < 0;
    }
}
