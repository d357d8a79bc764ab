package org.fencecore.cutting;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Assumptions;

/**
 * A cutting job given to a general integer solver, OR-Tools with SCIP: every pattern that leaves no room for another piece
 * is a variable. Nothing of the package's search is used.
 */
final class GeneralSolver {

    private static final int MOST_PATTERNS = 20_000;

    private final long[] take;
    private final int[] demand;
    private final long[] room;
    private final long[] cost;
    private final MPSolver solver = MPSolver.createSolver("SCIP");
    private final List<MPConstraint> cut = new ArrayList<>();
    private int patterns;

    private GeneralSolver(long[] take, int[] demand, long[] room, long[] cost) {
        this.take = take;
        this.demand = demand;
        this.room = room;
        this.cost = cost;
    }

    /** Skips the test that asks, by name, where the native library cannot be loaded. */
    static void requireNative() {
        try {
            Loader.loadNativeLibraries();
        } catch (RuntimeException | LinkageError e) {
            Assumptions.abort("OR-Tools' native library cannot be loaded here: " + e);
        }
    }

    /**
     * Returns the least cost, if it is proven in time.
     *
     * @param take what a piece of each size takes of a stick
     * @param demand how many of each size
     * @param room how much room each kind of stick has
     * @param cost what it costs
     * @param seconds how long it may take
     */
    static OptionalLong least(long[] take, int[] demand, long[] room, long[] cost, double seconds) {
        return new GeneralSolver(take, demand, room, cost).solve(seconds);
    }

    private OptionalLong solve(double seconds) {
        for (int i = 0; i < take.length; i++) {
            cut.add(solver.makeConstraint(demand[i], Double.POSITIVE_INFINITY));
        }
        for (int kind = 0; kind < room.length; kind++) {
            patterns(kind, 0, room[kind], new int[take.length]);
        }
        if (patterns > MOST_PATTERNS) {
            return OptionalLong.empty();
        }
        solver.objective().setMinimization();
        solver.setTimeLimit((long) (1000 * seconds));
        return solver.solve() == MPSolver.ResultStatus.OPTIMAL
                ? OptionalLong.of(Math.round(solver.objective().value()))
                : OptionalLong.empty();
    }

    private void patterns(int kind, int size, long left, int[] counts) {
        if (patterns > MOST_PATTERNS) {
            return;
        }
        if (size == take.length) {
            for (int i = 0; i < take.length; i++) {
                if (counts[i] < demand[i] && take[i] <= left) {
                    return;
                }
            }
            add(kind, counts);
            return;
        }
        for (int n = (int) Math.min(demand[size], left / take[size]); n >= 0; n--) {
            counts[size] = n;
            patterns(kind, size + 1, left - n * take[size], counts);
        }
        counts[size] = 0;
    }

    private void add(int kind, int[] counts) {
        int most = 0;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                most = Math.max(most, (demand[i] + counts[i] - 1) / counts[i]);
            }
        }
        MPVariable times = solver.makeIntVar(0, most, "pattern " + patterns++);
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                cut.get(i).setCoefficient(times, counts[i]);
            }
        }
        solver.objective().setCoefficient(times, (double) cost[kind]);
    }
}
