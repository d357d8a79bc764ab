package org.fencecore.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import org.fencecore.internal.CoveringSimplex;
import org.jspecify.annotations.Nullable;

/**
 * Settles whether there is a cheaper answer, given all patterns that one could have: branch and bound over how often each
 * pattern is used.
 *
 * <p>The linear program of these patterns is tightened first: where the pieces of one, two or three sizes are an odd
 * number, half of them rounded up is still reached when every pattern's half is rounded up (Chvatal and Gomory's
 * rounding). Then the number of sticks of a kind, or else of a pattern, that is most of a fraction is bounded from above in one
 * branch and from below in the other, the branch with the least bound first. All bounds are reckoned in whole numbers from
 * rounded prices, as in {@link ProvenBound}.
 */
final class Finish {

    private static final int SHIFT = 36;
    private static final double ARTIFICIAL = 50;
    private static final double FRACTION = 1e-6;
    private static final double LEAST_CUT_OFF = 0.01;
    private static final int CUTS_A_ROUND = 15;
    private static final int ROUNDS = 8;
    private static final int MOST_STEPS = 2_000;

    private final Job job;
    private final List<Pattern> patterns;
    private final Effort effort;
    private final double unit;
    private final int pieces;
    private final List<Row> first = new ArrayList<>();
    private @Nullable Cuts better;
    private long most;
    private long bound;

    /** A row of the program: how much each pattern counts in it, and what must be reached or not exceeded. */
    private static final class Row {

        private final int[] counts;
        private final int right;
        private final boolean atLeast;

        Row(int[] counts, int right, boolean atLeast) {
            this.counts = counts;
            this.right = right;
            this.atLeast = atLeast;
        }
    }

    /** A program of rows with its solution. */
    private static final class Node {

        private final List<Row> rows;
        private final int[] basis;
        private final double[] solution;
        private final long bound;
        private final int number;

        Node(List<Row> rows, int[] basis, double[] solution, long bound, int number) {
            this.rows = rows;
            this.basis = basis;
            this.solution = solution;
            this.bound = bound;
            this.number = number;
        }
    }

    Finish(Job job, List<Pattern> patterns, Effort effort) {
        this.job = job;
        this.patterns = patterns;
        this.effort = effort;
        unit = job.dearest();
        pieces = Arrays.stream(job.demand).sum();
        for (int size = 0; size < job.sizes(); size++) {
            int[] counts = new int[patterns.size()];
            for (int p = 0; p < counts.length; p++) {
                counts[p] = patterns.get(p).count(size);
            }
            first.add(new Row(counts, job.demand[size], true));
        }
        for (int kind = 0; kind < job.missing(); kind++) {
            if (job.limit[kind] != Job.NO_LIMIT) {
                first.add(new Row(ofKind(kind), job.limit[kind], false));
            }
        }
    }

    private int[] ofKind(int kind) {
        return patterns.stream()
                .mapToInt(pattern -> pattern.kind == kind ? 1 : 0)
                .toArray();
    }

    /** Looks for answers that cost no more than {@code mostCost}; {@code known} is a bound already proven. */
    void run(long mostCost, long known) {
        most = mostCost;
        bound = known;
        PriorityQueue<Node> open = new PriorityQueue<>(
                Comparator.comparingLong((Node node) -> node.bound).thenComparingInt(node -> -node.number));
        Node root = tightened();
        open.add(root);
        int number = 1;
        long unsettled = Long.MAX_VALUE;
        while (!effort.isSpent()) {
            Node node = open.poll();
            long least = Math.min(unsettled, node == null ? Long.MAX_VALUE : node.bound);
            bound = Math.max(bound, Math.min(most + 1, least));
            if (node == null || bound > most || unsettled == least) {
                return;
            }
            int[] counts = branchOn(node.solution);
            if (counts.length == 0) {
                // In whole numbers, but it may fall short or not be the least, if its steps were cut short.
                unsettled = accept(node.solution) <= node.bound ? unsettled : Math.min(unsettled, node.bound);
            } else {
                double amount = amount(counts, node.solution);
                for (boolean up : new boolean[] {false, true}) {
                    int right = (int) Math.floor(amount) + (up ? 1 : 0);
                    Node half = solve(with(node.rows, List.of(new Row(counts, right, up))), node, number++);
                    if (half.bound <= most) {
                        open.add(half);
                    }
                }
            }
        }
    }

    /** The answer found, if there is one. */
    @Nullable
    Cuts better() {
        return better;
    }

    /** A cost that no answer goes below. */
    long bound() {
        return bound;
    }

    private Node tightened() {
        Node node = solve(first, null, 0);
        for (int round = 0; round < ROUNDS && node.bound <= most && !effort.isSpent(); round++) {
            List<Row> cuts = cuts(node.solution);
            if (cuts.isEmpty()) {
                break;
            }
            node = solve(with(node.rows, cuts), node, 0);
        }
        return node;
    }

    private static List<Row> with(List<Row> rows, List<Row> more) {
        List<Row> all = new ArrayList<>(rows);
        all.addAll(more);
        return all;
    }

    private static double amount(int[] counts, double[] solution) {
        double sum = 0;
        for (int p = 0; p < counts.length; p++) {
            sum += counts[p] * solution[p];
        }
        return sum;
    }

    /** What is most of a fraction: the number of sticks of a kind, or else of a pattern; nothing if all are whole. */
    private int[] branchOn(double[] solution) {
        int[] best = {};
        double off = 0.01;
        for (int kind = 0; kind < job.missing(); kind++) {
            int[] counts = ofKind(kind);
            double amount = amount(counts, solution);
            if (Math.abs(amount - Math.rint(amount)) > off) {
                off = Math.abs(amount - Math.rint(amount));
                best = counts;
            }
        }
        int pattern = -1;
        if (best.length == 0) {
            off = FRACTION;
            for (int p = 0; p < patterns.size(); p++) {
                if (Math.abs(solution[p] - Math.rint(solution[p])) > off) {
                    off = Math.abs(solution[p] - Math.rint(solution[p]));
                    pattern = p;
                }
            }
        }
        if (pattern >= 0) {
            best = new int[patterns.size()];
            best[pattern] = 1;
        }
        return best;
    }

    /**
     * Makes sticks of a solution in whole numbers, so that no size is cut more often than it is wanted, and returns what
     * they cost; more than anything if they do not give all pieces or are more than there are.
     */
    private long accept(double[] solution) {
        int[] left = job.demand.clone();
        Cuts cuts = new Cuts(job);
        for (int p = 0; p < patterns.size(); p++) {
            for (int times = (int) Math.rint(solution[p]); times > 0; times--) {
                Pattern pattern = patterns.get(p).within(left);
                if (pattern.sizes.length > 0) {
                    pattern.addTo(left, -1);
                    cuts.add(pattern, 1);
                }
            }
        }
        boolean isShort = Arrays.stream(left).anyMatch(count -> count > 0);
        if (isShort || IntStream.range(0, job.kinds()).anyMatch(kind -> cuts.ofKind(kind) > job.limit[kind])) {
            return Long.MAX_VALUE;
        }
        if (cuts.cost() <= most) {
            better = cuts;
            most = cuts.cost() - 1;
        }
        return cuts.cost();
    }

    /** Sizes whose half, rounded up, a solution falls short of, and by how much. */
    private static final class Cut {

        private final int[] of;
        private final double by;

        Cut(int[] of, double by) {
            this.of = of;
            this.by = by;
        }
    }

    private List<Row> cuts(double[] solution) {
        int sizes = job.sizes();
        List<Integer> used = new ArrayList<>();
        for (int p = 0; p < solution.length; p++) {
            if (solution[p] > FRACTION) {
                used.add(p);
            }
        }
        List<Cut> found = new ArrayList<>();
        for (int i = 0; i < sizes; i++) {
            for (int j = i; j < sizes; j++) {
                for (int k = j; k < sizes; k++) {
                    if (i == j && j != k) {
                        continue;
                    }
                    int[] of = i == k ? new int[] {i} : j == k ? new int[] {i, j} : new int[] {i, j, k};
                    int wanted = 0;
                    for (int size : of) {
                        wanted += job.demand[size];
                    }
                    if (wanted % 2 != 0) {
                        double reached = 0;
                        for (int p : used) {
                            reached += solution[p] * half(of, p);
                        }
                        int least = (wanted + 1) / 2;
                        double by = least - reached;
                        if (by > LEAST_CUT_OFF) {
                            found.add(new Cut(of, by));
                        }
                    }
                }
            }
        }
        effort.spend((long) sizes * sizes * sizes / 6 * used.size() * 4);
        found.sort(Comparator.comparingDouble(cut -> -cut.by));
        List<Row> rows = new ArrayList<>();
        for (Cut cut : found.subList(0, Math.min(CUTS_A_ROUND, found.size()))) {
            int[] counts = new int[patterns.size()];
            int wanted = 0;
            for (int p = 0; p < counts.length; p++) {
                counts[p] = half(cut.of, p);
            }
            for (int size : cut.of) {
                wanted += job.demand[size];
            }
            rows.add(new Row(counts, (wanted + 1) / 2, true));
        }
        return rows;
    }

    private int half(int[] of, int pattern) {
        int sum = 1;
        for (int size : of) {
            sum += first.get(size).counts[pattern];
        }
        return sum / 2;
    }

    /** Solves a program, from the solution of one with fewer rows if there is one. */
    private Node solve(List<Row> rows, @Nullable Node from, int number) {
        int count = rows.size();
        double[] right = new double[count];
        boolean[] atLeast = new boolean[count];
        for (int i = 0; i < count; i++) {
            right[i] = rows.get(i).right;
            atLeast[i] = rows.get(i).atLeast;
        }
        CoveringSimplex simplex = new CoveringSimplex(right, atLeast);
        for (int p = 0; p < patterns.size(); p++) {
            int[] in = new int[count];
            double[] entries = new double[count];
            int next = 0;
            for (int i = 0; i < count; i++) {
                if (rows.get(i).counts[p] != 0) {
                    in[next] = i;
                    entries[next++] = rows.get(i).counts[p];
                }
            }
            simplex.add(job.cost[patterns.get(p).kind] / unit, Arrays.copyOf(in, next), Arrays.copyOf(entries, next));
        }
        // What a row falls short of, or is over, at a price that is not worth it.
        int[] start = new int[count];
        int before = from == null ? 0 : from.rows.size();
        for (int i = 0; i < count; i++) {
            int artificial = simplex.add(ARTIFICIAL, new int[] {i}, new double[] {atLeast[i] ? 1 : -1});
            double reached = from == null ? 0 : amount(rows.get(i).counts, from.solution);
            boolean isKept = atLeast[i] ? reached >= right[i] : reached <= right[i];
            start[i] = i < before && from != null ? from.basis[i] : isKept ? -1 - i : artificial;
        }
        simplex.startFrom(start);
        simplex.minimise(MOST_STEPS);
        effort.spend(simplex.work() + (long) count * patterns.size());
        long proven = proven(rows, simplex.prices());
        return new Node(
                rows,
                simplex.basis(),
                Arrays.copyOf(simplex.solution(), patterns.size()),
                from == null ? proven : Math.max(from.bound, proven),
                number);
    }

    /**
     * The rows' right sides at rounded prices are a bound, once what a pattern is worth over its cost at most is taken off
     * for each stick there can be.
     */
    private long proven(List<Row> rows, double[] prices) {
        long[] price = new long[rows.size()];
        BigInteger sum = BigInteger.ZERO;
        for (int i = 0; i < price.length; i++) {
            double scaled = Math.scalb(prices[i], SHIFT);
            price[i] = rows.get(i).atLeast ? (long) Math.max(0, scaled) : (long) Math.floor(Math.min(0, scaled));
            sum = sum.add(BigInteger.valueOf(price[i]).multiply(BigInteger.valueOf(rows.get(i).right)));
        }
        // A cost is whole, and the unit is not a power of 2: reckoned in 1 / (2^SHIFT unit) of a unit of cost.
        BigInteger over = BigInteger.ZERO;
        BigInteger dearest = BigInteger.valueOf(job.dearest());
        for (int p = 0; p < patterns.size(); p++) {
            long worth = 0;
            for (int i = 0; i < price.length; i++) {
                worth += price[i] * rows.get(i).counts[p];
            }
            BigInteger excess = BigInteger.valueOf(worth)
                    .multiply(dearest)
                    .subtract(BigInteger.valueOf(job.cost[patterns.get(p).kind]).shiftLeft(SHIFT));
            over = over.max(excess);
        }
        BigInteger least = sum.multiply(dearest)
                .subtract(over.multiply(BigInteger.valueOf(pieces)))
                .max(BigInteger.ZERO);
        BigInteger[] parts = least.divideAndRemainder(BigInteger.ONE.shiftLeft(SHIFT));
        return parts[0].longValueExact() + parts[1].signum();
    }
}
