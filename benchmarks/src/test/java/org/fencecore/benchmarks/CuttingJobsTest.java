package org.fencecore.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import org.fencecore.cutting.CutPiece;
import org.fencecore.cutting.CuttingPlan;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** The jobs that are timed are what they are said to be, and are worked out to the end. */
class CuttingJobsTest {

    @Test
    void twoHundredRailsAreProvenOrWithinATenthOfAPercent() {
        int proven = 0;
        for (int job = 1; job <= 10; job++) {
            assertThat(CuttingBenchmark.rails(job).stream()
                            .mapToInt(CutPiece::count)
                            .sum())
                    .isEqualTo(200);
            CuttingPlan plan = CuttingPlan.of(CuttingBenchmark.rails(job), CuttingBenchmark.stock(job % 2 == 0));
            Length rails = CuttingBenchmark.rails(job).stream()
                    .map(piece -> piece.length().times(piece.count()))
                    .reduce(Length.ZERO, Length::plus);
            assertThat(plan.length()).isGreaterThan(rails);
            assertThat(plan.gap().value()).isLessThan(0.001);
            proven += plan.isProvenBest() ? 1 : 0;
        }
        assertThat(proven).isGreaterThanOrEqualTo(9);
    }
}
