package org.fencecore.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * A cutting job in whole numbers: how much room each kind of stick has, how much of it each size takes, what a stick
 * costs.
 *
 * <p>The last kind is the missing stick: as long as the longest, without limit, and so dear that it is taken only where
 * the sticks on hand do not do. With it every job has a solution.
 */
final class Job {

    /** What a pattern takes of a kind of stick that is too short for one of its sizes. */
    static final long DOES_NOT_FIT = Long.MAX_VALUE;

    static final int NO_LIMIT = Integer.MAX_VALUE;

    private static final long DEARER = 1000;

    /** How long each size is, and how much room it takes with its saw cut. */
    final long[] length;

    final long[] take;

    /** How many are wanted of each size. */
    final int[] demand;

    /** How long a piece each kind of stick gives, and how much room it has for several with their saw cuts. */
    final long[] usable;

    final long[] room;
    final long[] cost;
    final int[] limit;

    /** The sizes by what they take, most first, and the kinds by what they cost, least first. */
    final int[] longestFirst;

    final int[] cheapestFirst;

    Job(long[] length, long[] take, int[] demand, long[] usable, long[] room, long[] cost, int[] limit) {
        int missing = room.length;
        int longest = 0;
        long dearest = 1;
        for (int kind = 0; kind < missing; kind++) {
            longest = room[kind] > room[longest] ? kind : longest;
            dearest = Math.max(dearest, cost[kind]);
        }
        this.length = length;
        this.take = take;
        this.demand = demand;
        this.usable = Arrays.copyOf(usable, missing + 1);
        this.room = Arrays.copyOf(room, missing + 1);
        this.cost = Arrays.copyOf(cost, missing + 1);
        this.limit = Arrays.copyOf(limit, missing + 1);
        this.usable[missing] = usable[longest];
        this.room[missing] = room[longest];
        this.cost[missing] = Math.multiplyExact(DEARER, dearest);
        this.limit[missing] = NO_LIMIT;
        longestFirst = sorted(length.length, size -> -take[size]);
        cheapestFirst = sorted(missing + 1, kind -> this.cost[kind]);
    }

    private static int[] sorted(int count, IntToLongFunction by) {
        return IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingLong(by::applyAsLong))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** What the dearest stick costs that can be had, at least 1. */
    long dearest() {
        return cost[missing()] / DEARER;
    }

    /** More than any answer costs that has no missing stick and no stick without a piece. */
    long mostWithoutMissing() {
        long pieces = Arrays.stream(demand).asLongStream().sum();
        long most = 0;
        for (int kind = 0; kind < missing(); kind++) {
            most += Math.min(limit[kind], pieces) * cost[kind];
        }
        return most;
    }

    int sizes() {
        return demand.length;
    }

    int kinds() {
        return room.length;
    }

    int missing() {
        return room.length - 1;
    }

    boolean fits(int size, int kind) {
        return length[size] <= usable[kind];
    }

    /** What a size takes of a kind of stick it fits on; all of it where its saw cut runs off the end. */
    long take(int size, int kind) {
        return Math.min(take[size], room[kind]);
    }
}
