package org.fencecore.internal;

/**
 * The bounded knapsack guided by dynamic programming over a grid of the room, for items so alike in value for size that
 * {@link Knapsack} would take too long.
 *
 * <p>First, for the last item, the last two and so on, and for every room in whole cells of the grid, it works out a value
 * that no filling is worth more than, sizes rounded down to whole cells. Then it searches with the true sizes, and leaves
 * a branch when those values say that it cannot beat what is known. So the answer is exact; where all sizes are whole
 * cells the search goes straight to it.
 */
public final class GridKnapsack {

    private final long[] sizes;
    private final long[] values;
    private final int[] limits;
    private final long cell;
    /** For each item and room, the bound for a filling with that item and those after it. */
    private final long[][] bound;

    private final int[] taken;
    private final int[] best;
    private long bestValue;
    private long steps;
    private long mostSteps;
    private long work;

    /**
     * Works out the bounds.
     *
     * @param sizes the size of each item, over zero
     * @param values the value of each item, 0 or more
     * @param limits how many there are of each
     * @param room the largest room to be asked for
     * @param cells how fine the grid is, unless three times as many make all sizes whole cells
     */
    public GridKnapsack(long[] sizes, long[] values, int[] limits, long room, int cells) {
        this.sizes = sizes;
        this.values = values;
        this.limits = limits;
        long divisor = 0;
        for (long size : sizes) {
            divisor = gcd(size, divisor);
        }
        cell = divisor > room / (3L * cells) ? divisor : room / cells + 1;
        int width = (int) (room / cell) + 1;
        bound = new long[sizes.length + 1][];
        bound[sizes.length] = new long[width];
        for (int i = sizes.length - 1; i >= 0; i--) {
            int most = values[i] > 0 ? (int) Math.min(limits[i], room / sizes[i]) : 0;
            bound[i] = most == 0 ? bound[i + 1] : with(i, most, bound[i + 1]);
        }
        taken = new int[sizes.length];
        best = new int[sizes.length];
    }

    private long[] with(int item, int most, long[] without) {
        long[] with = without.clone();
        int wide = (int) Math.min(with.length, sizes[item] / cell);
        for (int n = 1; n <= most && n * wide < with.length; n++) {
            long worth = n * values[item];
            int from = n * wide;
            for (int at = from; at < with.length; at++) {
                with[at] = Math.max(with[at], without[at - from] + worth);
            }
        }
        work += (long) (most + 1) * with.length;
        return with;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /**
     * Looks for the most valuable filling that is worth more than a floor.
     *
     * @param room the room, up to the largest
     * @param floor the value to beat, 0 or more
     * @param limit how many steps to take at most
     * @return true if there is one; then {@link #counts} has it
     */
    public boolean fill(long room, long floor, long limit) {
        bestValue = floor;
        steps = 0;
        mostSteps = limit;
        search(0, room, 0);
        work += 4 * steps;
        boolean found = bestValue > floor;
        if (steps > mostSteps) {
            bestValue = Math.max(bestValue, bound[0][(int) (room / cell)]);
        }
        return found;
    }

    private void search(int item, long left, long worth) {
        if (++steps > mostSteps) {
            return;
        }
        if (item == sizes.length) {
            if (worth > bestValue) {
                bestValue = worth;
                System.arraycopy(taken, 0, best, 0, best.length);
            }
            return;
        }
        int most = values[item] > 0 ? (int) Math.min(limits[item], left / sizes[item]) : 0;
        for (int n = most; n >= 0; n--) {
            long rest = left - n * sizes[item];
            long with = worth + n * values[item];
            if (with + bound[item + 1][(int) (rest / cell)] > bestValue) {
                taken[item] = n;
                search(item + 1, rest, with);
            }
        }
        taken[item] = 0;
    }

    /**
     * Returns the filling found last.
     *
     * @return how many of each item
     */
    public int[] counts() {
        return best.clone();
    }

    /**
     * Returns a value that no filling is worth more than: that of the best, or the floor if it is more, or a weaker bound if
     * the search was cut short.
     *
     * @return the bound
     */
    public long most() {
        return bestValue;
    }

    /**
     * Returns how much work it was so far.
     *
     * @return about the number of additions
     */
    public long work() {
        return work;
    }
}
