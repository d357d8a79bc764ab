package org.fencecore.cutting;

import java.util.ArrayList;
import java.util.List;

/** Puts what two sticks are cut into on one that costs no more than both: the same cost, and less to carry. */
final class Joining {

    private static final int MOST_PATTERNS = 400;

    private final Job job;
    private final Cuts cuts;

    private Joining(Job job, Cuts cuts) {
        this.job = job;
        this.cuts = cuts;
    }

    static Cuts of(Job job, Cuts cuts) {
        Joining joining = new Joining(job, cuts.copy());
        if (cuts.times().size() <= MOST_PATTERNS) {
            joining.join();
        }
        return joining.cuts;
    }

    private void join() {
        List<Pattern> patterns = new ArrayList<>(cuts.times().keySet());
        for (int i = 0; i < patterns.size(); i++) {
            for (int j = i; j < patterns.size(); j++) {
                join(patterns.get(i), patterns.get(j));
            }
        }
    }

    private void join(Pattern one, Pattern other) {
        long price = job.cost[one.kind] + job.cost[other.kind];
        for (int kind : job.cheapestFirst) {
            if (job.cost[kind] <= price && fits(one, other, kind)) {
                int times = times(one, other);
                if (job.limit[kind] != Job.NO_LIMIT) {
                    times = Math.min(times, job.limit[kind] - cuts.ofKind(kind));
                }
                if (times > 0) {
                    int[] perSize = new int[job.sizes()];
                    one.addTo(perSize, 1);
                    other.addTo(perSize, 1);
                    cuts.remove(one, times);
                    cuts.remove(other, times);
                    cuts.add(Pattern.of(kind, perSize), times);
                }
            }
        }
    }

    private int times(Pattern one, Pattern other) {
        int some = cuts.times().getOrDefault(one, 0);
        return one.equals(other) ? some / 2 : Math.min(some, cuts.times().getOrDefault(other, 0));
    }

    private boolean fits(Pattern one, Pattern other, int kind) {
        long a = one.take(job, kind);
        long b = other.take(job, kind);
        return a < job.room[kind] && b < job.room[kind] && a + b <= job.room[kind];
    }
}
