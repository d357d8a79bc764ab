package org.fencecore.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Best fit decreasing: the longest piece first, each on the started stick that has the least room left for it, else on a
 * new one.
 *
 * <p>It is tried with each kind of stick for the new ones, and once with the cheapest that takes the piece. Where a piece
 * does not fit, or the kind has run out, it is the cheapest that is left. At the end each stick is changed for the
 * cheapest that holds what is on it.
 */
final class BestFit {

    private final Job job;
    private final int[] demand;
    private final int[] high;

    private BestFit(Job job, int[] demand, int[] high) {
        this.job = job;
        this.demand = demand;
        this.high = high;
    }

    /** Returns the best of the attempts; {@code high} is how many there are of each kind. */
    static Cuts of(Job job, int[] demand, int[] high) {
        BestFit fit = new BestFit(job, demand, high);
        Cuts best = fit.attempt(-1);
        for (int kind = 0; kind < job.missing(); kind++) {
            Cuts cuts = fit.attempt(kind);
            best = cuts.betterThan(best) ? cuts : best;
        }
        return best;
    }

    /** About how much work one call is. */
    static long work(Job job, int[] demand) {
        long pieces = 0;
        for (int count : demand) {
            pieces += count;
        }
        return 100L * job.kinds() * (pieces + job.sizes());
    }

    private static final class Started {
        private int kind;
        private long left;
        private final List<Integer> sizes = new ArrayList<>();
    }

    private Cuts attempt(int preferred) {
        int[] onHand = high.clone();
        List<Started> sticks = new ArrayList<>();
        TreeMap<Long, Deque<Started>> byRoom = new TreeMap<>();
        for (int size : job.longestFirst) {
            for (int i = 0; i < demand[size]; i++) {
                Map.@Nullable Entry<Long, Deque<Started>> tightest = byRoom.ceilingEntry(job.take[size]);
                Started stick;
                if (tightest == null) {
                    stick = new Started();
                    stick.kind = kindFor(size, preferred, onHand);
                    stick.left = job.room[stick.kind];
                    use(stick.kind, onHand, 1);
                    sticks.add(stick);
                } else {
                    stick = tightest.getValue().remove();
                    if (tightest.getValue().isEmpty()) {
                        byRoom.remove(tightest.getKey());
                    }
                }
                stick.left -= job.take(size, stick.kind);
                stick.sizes.add(size);
                byRoom.computeIfAbsent(stick.left, left -> new ArrayDeque<>()).add(stick);
            }
        }
        Cuts cuts = new Cuts(job);
        for (Started stick : sticks) {
            int[] perSize = new int[job.sizes()];
            stick.sizes.forEach(size -> perSize[size]++);
            Pattern pattern = Pattern.of(stick.kind, perSize);
            use(stick.kind, onHand, -1);
            for (int kind : job.cheapestFirst) {
                if (onHand[kind] > 0 && pattern.take(job, kind) <= job.room[kind]) {
                    use(kind, onHand, 1);
                    cuts.add(pattern.of(kind), 1);
                    break;
                }
            }
        }
        return cuts;
    }

    private static void use(int kind, int[] onHand, int count) {
        if (onHand[kind] != Job.NO_LIMIT) {
            onHand[kind] -= count;
        }
    }

    private int kindFor(int size, int preferred, int[] onHand) {
        if (preferred >= 0 && onHand[preferred] > 0 && job.fits(size, preferred)) {
            return preferred;
        }
        for (int kind : job.cheapestFirst) {
            if (onHand[kind] > 0 && job.fits(size, kind)) {
                return kind;
            }
        }
        return job.missing();
    }
}
