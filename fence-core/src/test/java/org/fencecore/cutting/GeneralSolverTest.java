package org.fencecore.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.fencecore.units.Length;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The same jobs given to a general integer solver, with every pattern as a variable: wherever both prove an optimum, it is
 * the same, and nothing is ever better than the bound.
 */
class GeneralSolverTest {

    private static final double SECONDS = 2;

    @BeforeAll
    static void requireTheSolver() {
        GeneralSolver.requireNative();
    }

    /** What both came to. */
    private record Answers(Cuts found, long bound, OptionalLong least) {

        boolean areBothProven() {
            return least.isPresent() && found.cost() == bound;
        }

        void check() {
            assertThat(bound).isLessThanOrEqualTo(found.cost());
            if (least.isPresent()) {
                assertThat(bound).isLessThanOrEqualTo(least.getAsLong());
                assertThat(found.cost()).isGreaterThanOrEqualTo(least.getAsLong());
            }
        }
    }

    private static Answers answers(Job job) {
        Search search = new Search(job, Effort.usual(job, 1));
        search.run();
        int kinds = job.missing();
        OptionalLong least = GeneralSolver.least(
                job.take, job.demand, Arrays.copyOf(job.room, kinds), Arrays.copyOf(job.cost, kinds), SECONDS);
        Answers answers = new Answers(search.best(), search.bound(), least);
        answers.check();
        return answers;
    }

    @Test
    void publishedProblemsWithFewSizes() {
        int both = 0;
        List<Instances.Instance> few = Instances.all().stream()
                .filter(instance -> instance.numberOfSizes() <= 30)
                .toList();
        for (Instances.Instance instance : few) {
            Job job = RailJobs.job(instance.pieces(), List.of(SoldLength.of(instance.stick())), Length.ZERO);
            both += answers(job).areBothProven() ? 1 : 0;
        }
        assertThat(few).hasSize(6);
        assertThat(both).isEqualTo(6);
    }

    @Test
    void smallJobsFromSeveralLengthsWithAndWithoutPrices() {
        int both = 0;
        for (int seed = 0; seed < 20; seed++) {
            both += answers(RailJobs.job(seed, 12, 40, 30, seed % 2 == 0)).areBothProven() ? 1 : 0;
        }
        assertThat(both).isGreaterThanOrEqualTo(19);
    }

    @Test
    void twoHundredRailsInFortyLengths() {
        int both = 0;
        for (int seed = 0; seed < 10; seed++) {
            both += answers(RailJobs.job(seed, 40, 200, 48, seed % 2 == 0)).areBothProven() ? 1 : 0;
        }
        assertThat(both).isGreaterThanOrEqualTo(9);
    }
}
