package org.fencecore.internal;

/**
 * The bounded knapsack by dynamic programming over a grid of the room: for every room at once, no matter how alike the
 * items are, which is where {@link Knapsack} may take too long.
 *
 * <p>Sizes are rounded down to whole cells of the grid. When all are whole cells the values are exact; otherwise no
 * filling is worth more than they say.
 */
public final class GridKnapsack {

    private final long cell;
    private final boolean exact;
    private final long[] value;

    /** Which item was put in, or put in again, in each step, how many cells it and its like take, and where it paid. */
    private final int[] item;

    private final int[] times;
    private final int[] cells;
    private final long[][] taken;
    private final int items;
    private final long work;

    /**
     * Fills all rooms.
     *
     * @param sizes the size of each item, over zero
     * @param values the value of each item, 0 or more
     * @param limits how many there are of each
     * @param room the largest room to be asked for
     * @param mostCells how fine the grid may be
     */
    public GridKnapsack(long[] sizes, long[] values, int[] limits, long room, int mostCells) {
        items = sizes.length;
        long divisor = divisor(sizes);
        long coarsest = room / mostCells + 1;
        exact = divisor >= coarsest;
        cell = exact ? divisor : coarsest;
        int width = (int) (room / cell) + 1;
        value = new long[width];
        int most = 0;
        for (int i = 0; i < items; i++) {
            int count = useful(sizes, values, limits, room, i);
            most += Integer.SIZE - Integer.numberOfLeadingZeros(count);
        }
        item = new int[most];
        times = new int[most];
        cells = new int[most];
        taken = new long[most][(width + 63) / 64];
        int step = 0;
        for (int i = 0; i < items; i++) {
            int left = useful(sizes, values, limits, room, i);
            for (int some = 1; left > 0; some = Math.min(2 * some, left)) {
                some = Math.min(some, left);
                item[step] = i;
                times[step] = some;
                cells[step] = (int) Math.min(width, some * (sizes[i] / cell));
                put(step++, some * values[i]);
                left -= some;
            }
        }
        work = (long) most * width;
    }

    /**
     * Tells whether a grid would be exact.
     *
     * @param sizes the size of each item, over zero
     * @param room the largest room to be asked for
     * @param mostCells how fine the grid may be
     * @return true if all sizes are whole cells of it
     */
    public static boolean isExact(long[] sizes, long room, int mostCells) {
        return divisor(sizes) > room / mostCells;
    }

    private static long divisor(long[] sizes) {
        long divisor = 0;
        for (long size : sizes) {
            divisor = gcd(size, divisor);
        }
        return divisor;
    }

    private static int useful(long[] sizes, long[] values, int[] limits, long room, int i) {
        return values[i] > 0 ? (int) Math.min(limits[i], room / sizes[i]) : 0;
    }

    private void put(int step, long worth) {
        int wide = cells[step];
        long[] marks = taken[step];
        for (int at = value.length - 1; at >= wide; at--) {
            long with = value[at - wide] + worth;
            if (with > value[at]) {
                value[at] = with;
                marks[at >> 6] |= 1L << at;
            }
        }
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /**
     * Tells whether all sizes are whole cells, so that values and fillings are exact.
     *
     * @return true if they are
     */
    public boolean isExact() {
        return exact;
    }

    /**
     * Returns a value that no filling of a room is worth more than; the value of the best one if {@link #isExact}.
     *
     * @param room the room, up to the largest
     * @return the bound
     */
    public long most(long room) {
        return value[(int) (room / cell)];
    }

    /**
     * Returns the best filling of a room. Unless {@link #isExact}, it may not fit.
     *
     * @param room the room, up to the largest
     * @return how many of each item
     */
    public int[] counts(long room) {
        int[] counts = new int[items];
        int at = (int) (room / cell);
        for (int step = item.length - 1; step >= 0; step--) {
            if ((taken[step][at >> 6] & (1L << at)) != 0) {
                counts[item[step]] += times[step];
                at -= cells[step];
            }
        }
        return counts;
    }

    /**
     * Returns how much work it was.
     *
     * @return about the number of additions
     */
    public long work() {
        return work;
    }
}
