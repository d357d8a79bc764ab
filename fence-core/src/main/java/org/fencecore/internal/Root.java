package org.fencecore.internal;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.PegasusSolver;
import org.apache.commons.math3.exception.NoBracketingException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/** Finds where a function crosses zero. */
public final class Root {

    private static final int MOST_EVALUATIONS = 100;

    private Root() {}

    /**
     * Returns where a rising function crosses zero, or a place above that by no more than the tolerance; so what must be
     * at least the root never falls short of it.
     *
     * @param rising the function, continuous and rising from {@code low} to {@code high}
     * @param low where the function is not over zero
     * @param high where the function is not under zero, greater than {@code low}
     * @param tolerance how far above the root the answer may be, over zero
     * @return the root from above
     * @throws IllegalArgumentException if the function has no root from {@code low} to {@code high}
     * @throws IllegalStateException if the root is not found within 100 evaluations
     */
    public static double fromAbove(DoubleUnaryOperator rising, double low, double high, double tolerance) {
        PegasusSolver solver = new PegasusSolver(0, tolerance, 0);
        try {
            return solver.solve(MOST_EVALUATIONS, rising::applyAsDouble, low, high, AllowedSolution.RIGHT_SIDE);
        } catch (NoBracketingException e) {
            throw new IllegalArgumentException(
                    "the function does not rise through zero from low = " + low + " to high = " + high
                            + "; use a bracket that holds the root",
                    e);
        } catch (TooManyEvaluationsException e) {
            throw new IllegalStateException(
                    "the root from " + low + " to " + high + " was not found within " + tolerance + " in "
                            + MOST_EVALUATIONS + " evaluations; use a tighter bracket or a wider tolerance",
                    e);
        }
    }
}
