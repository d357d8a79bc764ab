package org.fencecore.cutting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Turns the fractions of a {@link Relaxation} into whole sticks: takes every pattern as often as it is used in full, else
 * the one that is used most, and solves the relaxation of what is left, until nothing is. After each step best fit
 * decreasing finishes the rest as well, in case that is better.
 */
final class Dive {

    private static final double NEARLY = 1e-6;
    private static final double LIKELY = 0.75;
    private static final int SIZES_A_STEP = 25;

    private final Job job;
    private final Effort effort;

    Dive(Job job, Effort effort) {
        this.job = job;
        this.effort = effort;
    }

    /**
     * Cuts the pieces wanted from the sticks allowed.
     *
     * @param known patterns to start from
     * @param most what it may cost at most
     * @param turn 0 to take the pattern that is used most each time, 1 to take the second at the first step, and so on
     * @return the sticks, or nothing if it did not come to so little
     */
    @Nullable
    Cuts cut(int[] wanted, int[] low, int[] high, Collection<Pattern> known, long most, int turn) {
        int[] demand = wanted.clone();
        int[] atLeast = low.clone();
        int[] atMost = high.clone();
        Cuts cuts = new Cuts(job);
        Cuts best = null;
        Collection<Pattern> patterns = known;
        for (int step = 0; !effort.isSpent(); step++) {
            Cuts finished = cuts.copy();
            finished.addAll(BestFit.of(job, demand, atMost));
            effort.spend(BestFit.work(job, demand));
            if (finished.cost() <= most && (best == null || finished.betterThan(best))) {
                best = finished;
            }
            long target = (best == null ? most : best.cost() - 1) - cuts.cost();
            if (isNone(demand)) {
                return best;
            }
            Relaxation relaxation = new Relaxation(job, demand, atLeast, atMost, effort);
            relaxation.addAll(patterns);
            relaxation.solve(target + 1);
            if (relaxation.bound() > target) {
                return best;
            }
            patterns = relaxation.patterns();
            take(relaxation, step == 0 ? turn : 0, cuts, demand, atLeast, atMost);
        }
        return best;
    }

    private static boolean isNone(int[] demand) {
        for (int count : demand) {
            if (count > 0) {
                return false;
            }
        }
        return true;
    }

    private record Use(Pattern pattern, double times) {}

    private void take(Relaxation relaxation, int skip, Cuts cuts, int[] demand, int[] low, int[] high) {
        double[] solution = relaxation.solution();
        List<Use> uses = new ArrayList<>();
        for (int j = 0; j < solution.length; j++) {
            Pattern pattern = relaxation.patterns().get(j);
            if (solution[j] > NEARLY && pattern.sizes.length > 0) {
                uses.add(new Use(pattern, solution[j]));
            }
        }
        uses.sort(Comparator.comparingDouble(Use::times).reversed());
        boolean any = false;
        if (skip == 0) {
            for (Use use : uses) {
                any |= take(use.pattern, (int) Math.floor(use.times + NEARLY), cuts, demand, low, high) > 0;
            }
        }
        int sizes = 0;
        for (int count : demand) {
            sizes += count > 0 ? 1 : 0;
        }
        int single = any ? 0 : 1 + sizes / SIZES_A_STEP;
        for (int i = 0; i < uses.size() && single > 0; i++) {
            Use use = uses.get((i + skip) % uses.size());
            if (take(use.pattern, 1, cuts, demand, low, high) > 0) {
                any = true;
                single = use.times >= LIKELY || sizes > 2 * SIZES_A_STEP ? single - 1 : 0;
            }
        }
        if (!any) {
            // Nothing of it fits what is left any more; the cheapest for one size always does.
            Cuts rest = BestFit.of(job, demand, high);
            Pattern first = rest.times().keySet().iterator().next();
            take(first, 1, cuts, demand, low, high);
        }
    }

    private static int take(Pattern pattern, int times, Cuts cuts, int[] demand, int[] low, int[] high) {
        int taken = Math.min(times, Math.min(pattern.timesWithin(demand), high[pattern.kind]));
        if (taken > 0) {
            pattern.addTo(demand, -taken);
            cuts.add(pattern, taken);
            low[pattern.kind] = Math.max(0, low[pattern.kind] - taken);
            if (high[pattern.kind] != Job.NO_LIMIT) {
                high[pattern.kind] -= taken;
            }
        }
        return taken;
    }
}
