package org.fencecore.cutting;

import java.util.LinkedHashMap;
import java.util.Map;

/** A set of sticks and how each is cut: patterns, and how often each. */
final class Cuts {

    private final Job job;
    private final Map<Pattern, Integer> times = new LinkedHashMap<>();
    private final int[] perKind;
    private long cost;
    private int sticks;

    Cuts(Job job) {
        this.job = job;
        perKind = new int[job.kinds()];
    }

    Cuts copy() {
        Cuts copy = new Cuts(job);
        times.forEach(copy::add);
        return copy;
    }

    void add(Pattern pattern, int count) {
        if (count > 0) {
            times.merge(pattern, count, Integer::sum);
            perKind[pattern.kind] += count;
            cost += count * job.cost[pattern.kind];
            sticks += count;
        }
    }

    void remove(Pattern pattern, int count) {
        times.computeIfPresent(pattern, (same, before) -> before > count ? before - count : null);
        perKind[pattern.kind] -= count;
        cost -= count * job.cost[pattern.kind];
        sticks -= count;
    }

    void addAll(Cuts other) {
        other.times.forEach(this::add);
    }

    Map<Pattern, Integer> times() {
        return times;
    }

    long cost() {
        return cost;
    }

    int sticks() {
        return sticks;
    }

    int ofKind(int kind) {
        return perKind[kind];
    }

    /** Cheaper, or as cheap with fewer sticks, or with as many sticks cut in fewer ways. */
    boolean betterThan(Cuts other) {
        if (cost != other.cost) {
            return cost < other.cost;
        }
        return sticks != other.sticks ? sticks < other.sticks : times.size() < other.times.size();
    }
}
