package org.fencecore.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Looks for the cheapest sticks for a job, and for a cost that none can go below, until the two meet or the work allowed
 * is done.
 *
 * <p>In turn: best fit decreasing; the {@link Relaxation}, whose bound is proven; a dive, which takes whole patterns out of
 * the relaxation's fractions and solves it again for what is left; a few more dives that turn off elsewhere; taking some
 * sticks out of the best answer and cutting their pieces anew; and last branching on how many sticks of a kind are used,
 * which raises the bound.
 */
final class Search {

    /** With more sizes than this the relaxation takes too long, and best fit decreasing and the plain bound must do. */
    static final int MOST_SIZES = 800;

    private static final int MOST_FINISHED_SIZES = 80;
    private static final int MOST_FINISHED_PATTERNS = 2_000;
    private static final int FIRST_DIVES = 4;
    private static final int MOST_TAKEN_OUT = 14;
    private static final long SEED = 20;

    private final Job job;
    private final Effort effort;
    private final int[] none;
    private final Set<Pattern> pool = new LinkedHashSet<>();
    private Cuts best;
    private long bound;

    Search(Job job, Effort effort) {
        this.job = job;
        this.effort = effort;
        none = new int[job.kinds()];
        best = BestFit.of(job, job.demand, job.limit);
    }

    Cuts best() {
        return best;
    }

    /** A cost that no set of sticks goes below. */
    long bound() {
        return Math.min(bound, best.cost());
    }

    /** Every piece at the cheapest cost for its size: that of the best filling of any kind that takes it. */
    private long plainBound() {
        // In units of 1 / 2^20, rounded down piece by piece.
        BigInteger sum = BigInteger.ZERO;
        for (int size = 0; size < job.sizes(); size++) {
            BigInteger least = null;
            for (int kind = 0; kind < job.kinds(); kind++) {
                if (job.limit[kind] > 0 && job.fits(size, kind)) {
                    BigInteger share = BigInteger.valueOf(job.cost[kind])
                            .shiftLeft(20)
                            .multiply(BigInteger.valueOf(job.take(size, kind)))
                            .divide(BigInteger.valueOf(job.room[kind]));
                    least = least == null ? share : least.min(share);
                }
            }
            if (least != null) {
                sum = sum.add(least.multiply(BigInteger.valueOf(job.demand[size])));
            }
        }
        return sum.add(BigInteger.valueOf((1 << 20) - 1)).shiftRight(20).longValueExact();
    }

    private boolean isDone() {
        return best.cost() <= bound || effort.isSpent();
    }

    void run() {
        if (job.sizes() > MOST_SIZES) {
            bound = plainBound();
            offer(Joining.of(job, best));
            return;
        }
        pool.addAll(best.times().keySet());
        Relaxation root = relaxation(job.demand, none, job.limit, pool, effort.forFirstRelaxation());
        bound = root.bound() > 0 ? root.bound() : plainBound();
        pool.addAll(root.patterns());
        for (int turn = 0; turn < FIRST_DIVES && !isDone(); turn++) {
            dive(none, job.limit, turn);
        }
        improve(effort.share(0.2));
        finish(root, effort.share(0.6));
        branch(root);
        improve(effort);
        offer(Joining.of(job, best));
    }

    /** Settles the rest over all patterns that a cheaper answer can have, where they are not too many. */
    private void finish(Relaxation root, Effort share) {
        Set<Pattern> all = new LinkedHashSet<>();
        if (!isDone()
                && job.sizes() <= MOST_FINISHED_SIZES
                && root.patternsWithin(best.cost() - 1, MOST_FINISHED_PATTERNS, all)) {
            Finish finish = new Finish(job, List.copyOf(all), share);
            finish.run(best.cost() - 1, bound);
            Cuts better = finish.better();
            if (better != null) {
                offer(better);
            }
            bound = Math.max(bound, finish.bound());
        }
    }

    private Relaxation relaxation(int[] demand, int[] low, int[] high, Collection<Pattern> known, Effort work) {
        Relaxation relaxation = new Relaxation(job, demand, low, high, work);
        relaxation.addAll(known);
        relaxation.solve(Long.MAX_VALUE);
        return relaxation;
    }

    private void offer(Cuts cuts) {
        if (cuts.betterThan(best)) {
            best = cuts;
        }
    }

    private void dive(int[] low, int[] high, int turn) {
        Cuts cuts = new Dive(job, effort).cut(job.demand, low, high, pool, best.cost() - 1, turn);
        if (cuts != null) {
            offer(cuts);
        }
    }

    /** Takes some sticks out of the best answer, the same ones each time the program runs, and cuts their pieces anew. */
    private void improve(Effort share) {
        SplittableRandom random = new SplittableRandom(SEED);
        while (!isDone() && !share.isSpent()) {
            List<Pattern> sticks = new ArrayList<>();
            best.times().forEach((pattern, times) -> {
                for (int i = 0; i < times; i++) {
                    sticks.add(pattern);
                }
            });
            int out = Math.min(sticks.size(), 4 + random.nextInt(MOST_TAKEN_OUT - 3));
            int[] demand = new int[job.sizes()];
            int[] high = job.limit.clone();
            Cuts kept = best.copy();
            Cuts taken = new Cuts(job);
            for (int i = 0; i < out; i++) {
                int which = i + random.nextInt(sticks.size() - i);
                Pattern pattern = sticks.get(which);
                sticks.set(which, sticks.get(i));
                pattern.addTo(demand, 1);
                taken.add(pattern, 1);
                kept.remove(pattern, 1);
            }
            for (int kind = 0; kind < job.kinds(); kind++) {
                if (high[kind] != Job.NO_LIMIT) {
                    high[kind] -= kept.ofKind(kind);
                }
            }
            share.spend(20L * sticks.size());
            Cuts again = new Dive(job, share).cut(demand, none, high, List.of(), taken.cost(), 0);
            if (again != null) {
                kept.addAll(again);
                if (kept.cost() <= best.cost()) {
                    best = kept.cost() < best.cost() || kept.sticks() <= best.sticks() ? kept : best;
                }
            }
        }
    }

    /** What is left of the job's solutions when the numbers of sticks are kept within limits. */
    private static final class Branch {

        private final int[] low;
        private final int[] high;
        private final double[] sticks;
        private final long bound;
        private final int number;

        Branch(int[] low, int[] high, double[] sticks, long bound, int number) {
            this.low = low;
            this.high = high;
            this.sticks = sticks;
            this.bound = bound;
            this.number = number;
        }
    }

    private double[] sticks(Relaxation relaxation) {
        double[] sticks = new double[job.kinds()];
        double[] solution = relaxation.solution();
        for (int j = 0; j < solution.length; j++) {
            sticks[relaxation.patterns().get(j).kind] += solution[j];
        }
        return sticks;
    }

    private void branch(Relaxation root) {
        PriorityQueue<Branch> open = new PriorityQueue<>(
                Comparator.comparingLong((Branch branch) -> branch.bound).thenComparingInt(branch -> -branch.number));
        int number = 0;
        open.add(new Branch(none, job.limit, sticks(root), root.bound(), number++));
        long unsolved = Long.MAX_VALUE;
        while (!isDone() && !open.isEmpty()) {
            Branch branch = open.remove();
            if (branch.bound >= unsolved) {
                break;
            }
            int kind = mostFractional(branch.sticks);
            if (kind < 0) {
                dive(branch.low, branch.high, 0);
                if (best.cost() > branch.bound) {
                    unsolved = branch.bound;
                }
            } else {
                int below = (int) Math.floor(branch.sticks[kind]);
                int[] high = branch.high.clone();
                high[kind] = below;
                int[] low = branch.low.clone();
                low[kind] = below + 1;
                for (Branch half : List.of(
                        new Branch(branch.low, high, branch.sticks, branch.bound, 0),
                        new Branch(low, branch.high, branch.sticks, branch.bound, 0))) {
                    Relaxation relaxation = relaxation(job.demand, half.low, half.high, pool, effort);
                    pool.addAll(relaxation.patterns());
                    long atLeast = Math.max(branch.bound, relaxation.bound());
                    open.add(new Branch(half.low, half.high, sticks(relaxation), atLeast, number++));
                    if (atLeast < best.cost()) {
                        dive(half.low, half.high, 0);
                    }
                }
            }
            long lowest = open.isEmpty() ? unsolved : Math.min(unsolved, open.peek().bound);
            bound = Math.max(bound, Math.min(lowest, best.cost()));
        }
    }

    private int mostFractional(double[] sticks) {
        int kind = -1;
        double most = 1e-5;
        for (int k = 0; k < job.missing(); k++) {
            double off = Math.abs(sticks[k] - Math.rint(sticks[k]));
            if (off > most) {
                most = off;
                kind = k;
            }
        }
        return kind;
    }
}
