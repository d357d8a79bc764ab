package org.fencecore.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fencecore.internal.CoveringSimplex;
import org.fencecore.internal.GridKnapsack;
import org.fencecore.internal.Knapsack;

/**
 * A cutting job in which patterns may be used in fractions: the linear program of Gilmore and Gomory, solved by column
 * generation. Patterns are made as they turn out to be worthwhile: each time the one whose pieces are worth most at the
 * present prices, for each kind of stick.
 */
final class Relaxation {

    private static final int SHIFTED_BITS = 46;
    private static final int MOST_STEPS = 20_000;
    private static final int MOST_ROUNDS = 5_000;
    private static final long ENOUGH_STEPS = 500;
    private static final long MOST_SEARCH_STEPS = 5_000;
    private static final long MOST_GRID_STEPS = 100_000;
    private static final int CELLS = 2_048;
    private static final double NEGLIGIBLE = 1e-9;

    private final Job job;
    private final int[] demand;
    private final int[] low;
    private final int[] high;
    private final Effort effort;

    /** The sizes that are wanted, in the order of the rows. */
    private final int[] active;

    private final int[] rowOf;
    private final int[] lowRow;
    private final int[] highRow;
    private final CoveringSimplex simplex;
    private final List<Pattern> patterns = new ArrayList<>();
    private final Set<Pattern> known = new HashSet<>();
    private final int shift;
    /** What the dearest stick costs; the program reckons in it, so that its numbers are near 1. */
    private final double unit;

    private long bound;

    /** The scaled prices that gave the bound, and what a stick of each kind is worth at most at them. */
    private long[] pricesOfBound = {};

    private long[] mostOfBound = {};

    /**
     * @param demand how many of each size
     * @param low how many at least of each kind of stick
     * @param high how many at most of each kind of stick
     */
    Relaxation(Job job, int[] demand, int[] low, int[] high, Effort effort) {
        this.job = job;
        this.demand = demand;
        this.low = low;
        this.high = high;
        this.effort = effort;
        rowOf = new int[job.sizes()];
        int rows = 0;
        for (int size = 0; size < job.sizes(); size++) {
            rowOf[size] = demand[size] > 0 ? rows++ : -1;
        }
        active = new int[rows];
        for (int size = 0; size < job.sizes(); size++) {
            if (rowOf[size] >= 0) {
                active[rowOf[size]] = size;
            }
        }
        lowRow = new int[job.kinds()];
        highRow = new int[job.kinds()];
        for (int kind = 0; kind < job.kinds(); kind++) {
            lowRow[kind] = low[kind] > 0 ? rows++ : -1;
            highRow[kind] = high[kind] != Job.NO_LIMIT ? rows++ : -1;
        }
        double[] right = new double[rows];
        boolean[] atLeast = new boolean[rows];
        for (int row = 0; row < active.length; row++) {
            right[row] = demand[active[row]];
            atLeast[row] = true;
        }
        for (int kind = 0; kind < job.kinds(); kind++) {
            if (lowRow[kind] >= 0) {
                right[lowRow[kind]] = low[kind];
                atLeast[lowRow[kind]] = true;
            }
            if (highRow[kind] >= 0) {
                right[highRow[kind]] = high[kind];
            }
        }
        simplex = new CoveringSimplex(right, atLeast);
        unit = job.dearest();
        // Not below 0: see the limits of prices and lengths in SoldLength.
        shift = SHIFTED_BITS - (Long.SIZE - Long.numberOfLeadingZeros(job.cost[job.missing()]));
        start(rows);
    }

    private void start(int rows) {
        int[] start = new int[rows];
        for (int row = 0; row < active.length; row++) {
            start[row] = add(cheapest(active[row]));
        }
        for (int kind = 0; kind < job.kinds(); kind++) {
            if (highRow[kind] >= 0) {
                start[highRow[kind]] = -1 - highRow[kind];
            }
            if (lowRow[kind] >= 0) {
                // A stick that is bought and not cut.
                start[lowRow[kind]] = add(Pattern.of(kind, new int[job.sizes()]));
            }
        }
        simplex.startFrom(start);
    }

    /** As many as go of one size, on the stick without limit that is cheapest for it. */
    private Pattern cheapest(int size) {
        Pattern best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int kind = 0; kind < job.kinds(); kind++) {
            if (high[kind] == Job.NO_LIMIT && low[kind] == 0 && job.fits(size, kind)) {
                int each = (int) Math.min(demand[size], job.room[kind] / job.take(size, kind));
                double cost = (double) job.cost[kind] / each;
                if (best == null || cost < least) {
                    best = Pattern.ofOneSize(kind, size, each);
                    least = cost;
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("the missing stick takes every size");
        }
        return best;
    }

    /** Adds patterns known from elsewhere, so far as they cut no more than is wanted. */
    void addAll(Collection<Pattern> others) {
        for (Pattern pattern : others) {
            if (pattern.timesWithin(demand) > 0 && high[pattern.kind] > 0) {
                add(pattern);
            }
        }
        effort.spend(others.size() * 4L);
    }

    private int add(Pattern pattern) {
        if (!known.add(pattern)) {
            return -1;
        }
        int length = pattern.sizes.length;
        int extra = (lowRow[pattern.kind] >= 0 ? 1 : 0) + (highRow[pattern.kind] >= 0 ? 1 : 0);
        int[] rows = new int[length + extra];
        double[] entries = new double[length + extra];
        for (int i = 0; i < length; i++) {
            rows[i] = rowOf[pattern.sizes[i]];
            entries[i] = pattern.counts[i];
        }
        int next = length;
        for (int row : new int[] {lowRow[pattern.kind], highRow[pattern.kind]}) {
            if (row >= 0) {
                rows[next] = row;
                entries[next++] = 1;
            }
        }
        patterns.add(pattern);
        return simplex.add(job.cost[pattern.kind] / unit, rows, entries);
    }

    /**
     * Solves it until the bound, rounded up, cannot get better, or is no less than {@code enough}. When the effort is spent
     * before that, the last prices still give a bound.
     */
    void solve(long enough) {
        for (int round = 0; round < MOST_ROUNDS && !effort.isSpent(); round++) {
            long before = simplex.work();
            simplex.minimise(MOST_STEPS);
            effort.spend(simplex.work() - before);
            boolean improved = makePatterns(effort.isSpent());
            if (!improved || bound >= enough || bound >= Math.ceil(simplex.total() * unit - 1e-6)) {
                return;
            }
        }
    }

    private boolean makePatterns(boolean isLast) {
        double[] prices = simplex.prices();
        long[] worth = new long[active.length];
        BigInteger pieces = BigInteger.ZERO;
        for (int row = 0; row < active.length; row++) {
            worth[row] = scaled(prices[row]);
            pieces = pieces.add(BigInteger.valueOf(worth[row]).multiply(BigInteger.valueOf(demand[active[row]])));
        }
        BigInteger forced = BigInteger.ZERO;
        long[] most = new long[job.kinds()];
        long[] cost = new long[job.kinds()];
        Pricing pricing = new Pricing(worth);
        long[] floor = new long[job.kinds()];
        for (int kind = 0; kind < job.kinds(); kind++) {
            long price = lowRow[kind] < 0 ? 0 : scaled(prices[lowRow[kind]]);
            long penalty = highRow[kind] < 0 ? 0 : scaled(-prices[highRow[kind]]);
            forced = forced.add(BigInteger.valueOf(price).multiply(BigInteger.valueOf(low[kind])));
            cost[kind] = job.cost[kind] << shift;
            floor[kind] = Math.max(0, cost[kind] + penalty - price);
            floor[kind] += (long) (floor[kind] * NEGLIGIBLE) + 1;
            most[kind] = price;
        }
        boolean improved = pricing.search(floor);
        if ((!improved || isLast || effort.isSpent()) && !pricing.isComplete()) {
            improved |= pricing.searchOnGrid(floor);
        }
        if (pricing.isComplete()) {
            for (int kind = 0; kind < job.kinds(); kind++) {
                most[kind] += pricing.most[kind];
            }
            long proven = ProvenBound.of(pieces, most, forced, cost, high, shift);
            if (proven > bound) {
                bound = proven;
                pricesOfBound = worth;
                mostOfBound = most;
            }
        }
        return improved;
    }

    /** The search for the pattern of each kind of stick whose pieces are worth most. */
    private final class Pricing {

        private final long[] worth;
        private final long[] take = new long[active.length];
        private final int[] limits = new int[active.length];
        private final Knapsack knapsack;
        /** For each kind, what no pattern is worth more than, and whether that is sure. */
        private final long[] most = new long[job.kinds()];

        private final boolean[] complete = new boolean[job.kinds()];

        Pricing(long[] worth) {
            this.worth = worth;
            for (int row = 0; row < active.length; row++) {
                take[row] = job.take[active[row]];
                limits[row] = demand[active[row]];
            }
            knapsack = new Knapsack(take, worth, limits);
            effort.spend(100L * active.length);
        }

        boolean isComplete() {
            for (boolean each : complete) {
                if (!each) {
                    return false;
                }
            }
            return true;
        }

        /** Looks for a pattern worth more than the floor, for each kind of stick, and tells whether there was one. */
        boolean search(long[] floor) {
            boolean improved = false;
            for (int kind = 0; kind < job.kinds(); kind++) {
                if (high[kind] == 0) {
                    complete[kind] = true;
                }
                if (complete[kind]) {
                    continue;
                }
                boolean found = knapsack.fill(job.room[kind], floor[kind], ENOUGH_STEPS, MOST_SEARCH_STEPS);
                effort.spend(10 * knapsack.steps());
                complete[kind] = knapsack.isComplete();
                most[kind] = knapsack.most();
                int alone = alone(kind);
                if (alone >= 0 && worth[alone] > most[kind]) {
                    most[kind] = worth[alone];
                    improved |= Relaxation.this.add(Pattern.ofOneSize(kind, active[alone], 1)) >= 0;
                } else if (found) {
                    improved |= add(kind, knapsack.counts());
                }
            }
            return improved;
        }

        /** Settles the kinds for which the search was cut short. */
        boolean searchOnGrid(long[] floor) {
            GridKnapsack grid = new GridKnapsack(take, worth, limits, job.room[job.missing()], CELLS);
            boolean improved = false;
            for (int kind = 0; kind < job.kinds(); kind++) {
                if (!complete[kind]) {
                    complete[kind] = true;
                    if (grid.fill(job.room[kind], Math.max(floor[kind], most[kind]), MOST_GRID_STEPS)) {
                        improved |= add(kind, grid.counts());
                    }
                    most[kind] = grid.most();
                }
            }
            effort.spend(grid.work());
            return improved;
        }

        /** The most valuable piece that fits by itself only, its saw cut running off the end; -1 if there is none. */
        private int alone(int kind) {
            int best = -1;
            for (int row = 0; row < active.length; row++) {
                if (take[row] > job.room[kind]
                        && job.fits(active[row], kind)
                        && (best < 0 || worth[row] > worth[best])) {
                    best = row;
                }
            }
            return best;
        }

        private boolean add(int kind, int[] counts) {
            return Relaxation.this.add(Pattern.of(kind, perSize(counts))) >= 0;
        }
    }

    private long scaled(double price) {
        return (long) Math.min(1L << (SHIFTED_BITS + 2), Math.max(0, Math.scalb(price * unit, shift)));
    }

    /** A cost that no set of sticks goes below, proven. */
    long bound() {
        return bound;
    }

    /**
     * Finds all patterns that a set of sticks of no more than a cost can have, if they are not too many.
     *
     * <p>At the prices of the bound, let r(p) be the cost of pattern p less what its pieces are worth, and u(k) what the
     * pieces of a stick of kind k are worth at most over its cost. Sticks that cost no more than t have the sum of
     * r(p) + u(k) no more than t less the worth of all pieces plus the sum of the numbers on hand times u(k), and each
     * r(p) + u(k) is 0 or more. So one pattern has no more than that.
     */
    boolean patternsWithin(long cost, int most, Collection<Pattern> to) {
        if (pricesOfBound.length == 0) {
            return false;
        }
        BigInteger spare = scaledCost(cost);
        long[] take = new long[active.length];
        int[] limits = new int[active.length];
        int pieces = 0;
        for (int row = 0; row < active.length; row++) {
            take[row] = job.take[active[row]];
            limits[row] = demand[active[row]];
            pieces += limits[row];
            spare = spare.subtract(BigInteger.valueOf(pricesOfBound[row]).multiply(BigInteger.valueOf(limits[row])));
        }
        for (int kind = 0; kind < job.kinds(); kind++) {
            BigInteger over = BigInteger.valueOf(mostOfBound[kind])
                    .subtract(scaledCost(job.cost[kind]))
                    .max(BigInteger.ZERO);
            // There are no more sticks than pieces.
            spare = spare.add(over.multiply(BigInteger.valueOf(Math.min(high[kind], pieces))));
        }
        Knapsack knapsack = new Knapsack(take, pricesOfBound, limits);
        for (int kind = 0; kind < job.missing(); kind++) {
            int each = kind;
            long atLeast = BigInteger.valueOf(mostOfBound[kind])
                    .max(scaledCost(job.cost[kind]))
                    .subtract(spare)
                    .max(BigInteger.ONE)
                    .longValueExact();
            boolean all = high[kind] == 0
                    || knapsack.each(
                            job.room[kind], atLeast, most, counts -> to.add(Pattern.of(each, perSize(counts))));
            effort.spend(10 * knapsack.steps());
            if (!all || to.size() > most) {
                return false;
            }
            for (int size : active) {
                if (job.fits(size, kind)) {
                    to.add(Pattern.ofOneSize(kind, size, 1));
                }
            }
        }
        return true;
    }

    private BigInteger scaledCost(long cost) {
        return BigInteger.valueOf(cost).shiftLeft(shift);
    }

    private int[] perSize(int[] counts) {
        int[] perSize = new int[job.sizes()];
        for (int row = 0; row < active.length; row++) {
            perSize[active[row]] = counts[row];
        }
        return perSize;
    }

    List<Pattern> patterns() {
        return patterns;
    }

    /** How often each pattern is used, in the order of {@link #patterns}. */
    double[] solution() {
        return simplex.solution();
    }
}
