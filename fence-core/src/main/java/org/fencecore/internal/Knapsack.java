package org.fencecore.internal;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.Consumer;
import java.util.function.LongUnaryOperator;

/**
 * The bounded knapsack: which items, each up to so many times, fill a room to the greatest value, in whole numbers.
 *
 * <p>Items are tried in order of value for their size, as many as go in first, and a branch is left when even filling the
 * rest of the room with the best value for size that is still to come would not beat what is known. That comparison is
 * made in {@code double}, rounded so that it can only keep a branch too many; everything else is whole numbers, so that
 * the answer is exact. The search stops after a given number of steps.
 */
public final class Knapsack {

    /** Values are held exactly by a {@code double} up to here, and the safety of the comparison rests on it. */
    public static final long GREATEST_VALUE = 1L << 50;

    private static final long STOP = -1;
    private static final double SAFETY = 1 + 1e-13;

    private final int items;
    private final int[] item;
    private final long[] size;
    private final long[] value;
    private final int[] limit;
    private final double[] density;
    private final long[] smallestFrom;

    /** What is taken of each item, in the order they are tried. */
    private final int[] taken;

    private final int[] best;
    private long bestValue;
    private boolean complete;
    private long steps;

    /**
     * Sorts the items; those of no value are left out.
     *
     * @param sizes the size of each item, over zero
     * @param values the value of each item, 0 or more
     * @param limits how many there are of each
     */
    public Knapsack(long[] sizes, long[] values, int[] limits) {
        Integer[] order = new Integer[sizes.length];
        int kept = 0;
        for (int i = 0; i < sizes.length; i++) {
            if (values[i] > 0 && limits[i] > 0) {
                order[kept++] = i;
            }
        }
        Arrays.sort(
                order,
                0,
                kept,
                Comparator.comparingDouble((Integer i) -> -(double) values[i] / sizes[i])
                        .thenComparing(i -> -sizes[i]));
        items = kept;
        item = new int[kept];
        size = new long[kept];
        value = new long[kept];
        limit = new int[kept];
        density = new double[kept + 1];
        smallestFrom = new long[kept + 1];
        smallestFrom[kept] = Long.MAX_VALUE;
        for (int j = kept - 1; j >= 0; j--) {
            item[j] = order[j];
            size[j] = sizes[item[j]];
            value[j] = values[item[j]];
            limit[j] = limits[item[j]];
            density[j] = (double) value[j] / size[j] * SAFETY;
            smallestFrom[j] = Math.min(size[j], smallestFrom[j + 1]);
        }
        taken = new int[kept];
        best = new int[sizes.length];
    }

    /**
     * Looks for the most valuable filling that is worth more than a floor.
     *
     * @param room the room; no filling of it may be worth more than {@link #GREATEST_VALUE}
     * @param floor the value to beat, 0 or more
     * @param enough how many steps to take once there is one
     * @param mostSteps how many steps to take at most
     * @return true if there is one; then {@link #counts} has it
     */
    public boolean fill(long room, long floor, long enough, long mostSteps) {
        Arrays.fill(best, 0);
        search(room, floor, mostSteps, worth -> {
            bestValue = worth;
            write(best);
            return enough;
        });
        return bestValue > floor;
    }

    /**
     * Goes through all fillings that are worth at least so much.
     *
     * @param room the room
     * @param atLeast the least value, over 0
     * @param most how many fillings and how many thousand steps at most
     * @param to takes each filling: how many of each item, in the order they were given
     * @return true if all were gone through
     */
    public boolean each(long room, long atLeast, int most, Consumer<int[]> to) {
        long mostSteps = 1000L * most;
        int[] filled = new int[1];
        search(room, atLeast - 1, mostSteps, worth -> {
            if (++filled[0] > most) {
                return STOP;
            }
            int[] counts = new int[best.length];
            write(counts);
            to.accept(counts);
            return mostSteps;
        });
        return complete;
    }

    private void write(int[] counts) {
        for (int j = 0; j < items; j++) {
            counts[item[j]] = taken[j];
        }
    }

    /**
     * Goes through the fillings that are worth more than {@link #bestValue}, which may be raised on the way.
     *
     * @param found takes the value of a filling, which is in {@link #taken}, and says how many steps to take in all
     */
    private void search(long room, long floor, long mostSteps, LongUnaryOperator found) {
        bestValue = floor;
        int[] taking = taken;
        Arrays.fill(taking, 0);
        long limitOfSteps = mostSteps;
        long left = room;
        long worth = 0;
        int j = 0;
        steps = 0;
        while (true) {
            while (j < items && left >= smallestFrom[j] && worth + left * density[j] >= bestValue + 1) {
                if (size[j] <= left) {
                    int take = (int) Math.min(limit[j], left / size[j]);
                    taking[j] = take;
                    left -= take * size[j];
                    worth += take * value[j];
                }
                j++;
                steps++;
            }
            if (worth > bestValue) {
                limitOfSteps = found.applyAsLong(worth);
            }
            j--;
            while (j >= 0 && taking[j] == 0) {
                j--;
            }
            complete = j < 0;
            if (complete || steps > limitOfSteps) {
                complete &= limitOfSteps != STOP;
                return;
            }
            taking[j]--;
            left += size[j];
            worth -= value[j];
            steps++;
            j++;
        }
    }

    /**
     * Tells whether the last search came to its end, so that no filling is worth more than {@link #most}.
     *
     * @return false if it was cut short
     */
    public boolean isComplete() {
        return complete;
    }

    /**
     * Returns the filling found.
     *
     * @return how many of each item, in the order they were given
     */
    public int[] counts() {
        return best.clone();
    }

    /**
     * Returns the value of the best filling found, or the floor if there is none over it.
     *
     * @return the value, which no filling exceeds if the search {@link #isComplete}
     */
    public long most() {
        return bestValue;
    }

    /**
     * Returns how much work the last search took.
     *
     * @return its steps
     */
    public long steps() {
        return steps;
    }
}
