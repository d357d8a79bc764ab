package org.fencecore.benchmarks;

import org.fencecore.Bay;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Stretch;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a whole plan costs, from a garden to a hundred miles: posts, racked bays, boards, two gates and footings of a
 * shadowbox fence on rolling ground, against the same figures by plain arithmetic on {@code double}.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar WholePlan}
 */
@Warmup(iterations = 10, time = 1)
public class WholePlanBenchmark extends SteadyBenchmark {

    /** How much fence there is, in feet along the lot line; the last are 5 and 100 miles. */
    @Param({"50", "200", "500", "5000", "26400", "528000"})
    int feet;

    private FenceJob job = FenceJob.ofFeet(200);
    private Site site = job.site();
    private final FenceStyle style = FenceJob.style();

    /** Takes the job of that size. */
    @Setup
    public void takeJob() {
        job = FenceJob.ofFeet(feet);
        site = job.site();
    }

    /** The library's plan. */
    @Benchmark
    public FencePlan plan() {
        return FencePlanner.plan(site, style);
    }

    /** The plan, and of what it puts off until it is asked the figures that the plain program has too. */
    @Benchmark
    public int planAndFigures() {
        return figures(FencePlanner.plan(site, style));
    }

    /** The plan with all that it puts off, its findings in words among it. */
    @Benchmark
    public int planAndAsk() {
        return ask(FencePlanner.plan(site, style));
    }

    /** Asks a plan for boards at posts and rail marks, and counts them. */
    static int figures(FencePlan plan) {
        int told = 0;
        for (Stretch stretch : plan.stretches()) {
            told += stretch.boardsAtPosts().size();
            for (Bay bay : stretch.bays()) {
                told += bay.rails().size();
            }
        }
        return told;
    }

    /** Asks a plan for all that it puts off, and counts that. */
    static int ask(FencePlan plan) {
        int told = figures(plan) + plan.findings().size();
        for (Stretch stretch : plan.stretches()) {
            told += stretch.railPieces().orElseThrow().pieces().size();
        }
        return told;
    }

    /** The baseline: the figures of the plan in plain arrays. */
    @Benchmark
    public Object doubles() {
        return PlainFence.plan(job);
    }
}
