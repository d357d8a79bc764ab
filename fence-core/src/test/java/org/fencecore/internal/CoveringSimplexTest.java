package org.fencecore.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

class CoveringSimplexTest {

    private static final double NEAR = 1e-7;

    /** The linear programs of random covering problems against Commons Math's simplex, which shares no code with it. */
    @Test
    void randomProgramsAgainstCommonsMath() {
        SplittableRandom random = new SplittableRandom(7);
        for (int trial = 0; trial < 200; trial++) {
            int rows = 2 + random.nextInt(8);
            int columns = rows + 1 + random.nextInt(20);
            double[] right = new double[rows + 1];
            boolean[] atLeast = new boolean[rows + 1];
            for (int i = 0; i < rows; i++) {
                right[i] = 1 + random.nextInt(20);
                atLeast[i] = true;
            }
            // The last row limits the first columns, which it is possible to do without.
            right[rows] = random.nextInt(10);
            CoveringSimplex simplex = new CoveringSimplex(right, atLeast);
            double[] costs = new double[columns + rows];
            double[][] entries = new double[rows + 1][columns + rows];
            for (int j = 0; j < columns + rows; j++) {
                costs[j] = j < columns ? 1 + random.nextInt(9) : 100;
                int[] in = new int[rows + 1];
                double[] count = new double[rows + 1];
                for (int i = 0; i <= rows; i++) {
                    in[i] = i;
                    count[i] = i == rows
                            ? (j < columns / 2 ? 1 : 0)
                            : j < columns ? random.nextInt(4) : j == columns + i ? 1 : 0;
                    entries[i][j] = count[i];
                }
                simplex.add(costs[j], in, count);
            }
            int[] start = new int[rows + 1];
            for (int i = 0; i < rows; i++) {
                start[i] = columns + i;
            }
            start[rows] = -1 - rows;
            simplex.startFrom(start);
            simplex.minimise(1_000);

            List<LinearConstraint> constraints = new ArrayList<>();
            for (int i = 0; i <= rows; i++) {
                constraints.add(
                        new LinearConstraint(entries[i], i < rows ? Relationship.GEQ : Relationship.LEQ, right[i]));
            }
            double expected = new SimplexSolver()
                    .optimize(
                            new MaxIter(10_000),
                            new LinearObjectiveFunction(costs, 0),
                            new LinearConstraintSet(constraints),
                            new NonNegativeConstraint(true),
                            GoalType.MINIMIZE)
                    .getValue();
            assertThat(simplex.total()).as("trial %s", trial).isCloseTo(expected, within(NEAR));

            // Prices prove it: rows times prices come to the same, and no column is worth more than it costs.
            double[] prices = simplex.prices();
            double dual = 0;
            for (int i = 0; i <= rows; i++) {
                dual += prices[i] * right[i];
            }
            assertThat(dual).isCloseTo(expected, within(NEAR));
            for (int j = 0; j < costs.length; j++) {
                double worth = 0;
                for (int i = 0; i <= rows; i++) {
                    worth += prices[i] * entries[i][j];
                }
                assertThat(worth).isLessThanOrEqualTo(costs[j] + NEAR);
            }
        }
    }

    @Test
    void itGoesOnFromWhereItIsWhenAColumnIsAdded() {
        // Two rows of 3 and 4: by single columns of cost 2 it is 14; with one column that reaches both for 3 it is 3 x
        // 3 + 2.
        CoveringSimplex simplex = new CoveringSimplex(new double[] {3, 4}, new boolean[] {true, true});
        simplex.startFrom(new int[] {
            simplex.add(2, new int[] {0}, new double[] {1}), simplex.add(2, new int[] {1}, new double[] {1})
        });
        simplex.minimise(10);
        assertThat(simplex.total()).isEqualTo(14, within(NEAR));
        assertThat(simplex.prices()).containsExactly(new double[] {2, 2}, within(NEAR));

        int both = simplex.add(3, new int[] {0, 1}, new double[] {1, 1});
        simplex.minimise(10);
        assertThat(simplex.total()).isEqualTo(11, within(NEAR));
        assertThat(simplex.solution()[both]).isEqualTo(3, within(NEAR));
        assertThat(simplex.basis()).contains(both);
    }
}
