package org.fencecore.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published cutting and packing problems: the answer has the published optimum, and is proven.
 *
 * <p>Where a source gives no optimum, it was worked out apart from this library: the linear program of all patterns,
 * rounded up, meets a solution that was found.
 */
class CuttingReferenceTest {

    static List<Instances.Instance> instances() {
        return Instances.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("instances")
    void thePublishedOptimumIsFoundAndProven(Instances.Instance instance) {
        CuttingPlan plan = instance.plan();

        assertThat(plan.length()).isEqualTo(instance.stick().times(instance.optimum()));
        assertThat(plan.leastLength()).contains(instance.stick().times(instance.optimum()));
        assertThat(plan.isProvenBest()).isTrue();
        assertThat(plan.findings()).isEmpty();
    }

    /** Both need more sticks by best fit decreasing: 82 and 485 by the same independent work. */
    @Test
    void bestFitDecreasingAsWorkedOutElsewhere() {
        assertThat(bestFit(Instances.paper())).isEqualTo(82);
        assertThat(bestFit(Instances.gams())).isEqualTo(485);
        assertThat(bestFit(Instances.triplets())).isEqualTo(45);
    }

    private static int bestFit(Instances.Instance instance) {
        List<SoldLength> stock = List.of(SoldLength.of(instance.stick()));
        CuttingSpec spec = CuttingSpec.builder().kerf(Length.ZERO).build();
        Job job = Sizes.of(instance.pieces(), spec).job(stock, Money.of(stock));
        return BestFit.of(job, job.demand, job.limit).sticks();
    }

    /**
     * The triplets of Falkenauer (1996), set t120, problem 0: sizes made so that 40 sticks of 1000 are filled by three each
     * without any rest, which the published optimum of 40 says can be done. The bound is the sum of the sizes, 40,000.
     */
    @Test
    void tripletsWithoutAnyWaste() {
        CuttingPlan plan = Instances.triplets().plan();

        assertThat(plan.leastLength()).contains(Length.ofMetres(40));
        assertThat(plan.purchases().get(0).needed()).isBetween(40, 41);
    }

    /**
     * Gilmore and Gomory's multipliers: on the paper rolls the linear program alone comes to 72.9167 rolls, 452.25 on the
     * other, as worked out apart from this library; the bound is that rounded up.
     */
    @Test
    void theBoundIsTheLinearProgramRoundedUp() {
        for (Map.Entry<Instances.Instance, Integer> expected :
                Map.of(Instances.paper(), 73, Instances.gams(), 453).entrySet()) {
            List<SoldLength> stock = List.of(SoldLength.of(expected.getKey().stick()));
            CuttingSpec spec = CuttingSpec.builder().kerf(Length.ZERO).build();
            Job job = Sizes.of(expected.getKey().pieces(), spec).job(stock, Money.of(stock));
            Relaxation relaxation =
                    new Relaxation(job, job.demand, new int[job.kinds()], job.limit, new Effort(Long.MAX_VALUE));
            relaxation.solve(Long.MAX_VALUE);
            assertThat(relaxation.bound()).isEqualTo(expected.getValue().longValue());
        }
    }
}
