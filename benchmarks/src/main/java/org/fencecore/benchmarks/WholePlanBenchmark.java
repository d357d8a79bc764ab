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
 * What a whole plan costs, from a garden to five miles: posts, racked bays, boards, two gates and footings of a
 * shadowbox fence on rolling ground, against the same figures by plain arithmetic on {@code double}.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar WholePlan}
 */
@Warmup(iterations = 10, time = 1)
public class WholePlanBenchmark extends SteadyBenchmark {

    /** How much fence there is, in feet along the lot line; the last is five miles. */
    @Param({"50", "200", "500", "5000", "26400"})
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

    /** The library's plan with all that it puts off until it is asked: rail marks and pieces, boards at posts, findings. */
    @Benchmark
    public int planAndAsk() {
        FencePlan plan = FencePlanner.plan(site, style);
        int told = plan.findings().size();
        for (Stretch stretch : plan.stretches()) {
            told += stretch.boardsAtPosts().size()
                    + stretch.railPieces().orElseThrow().pieces().size();
            for (Bay bay : stretch.bays()) {
                told += bay.rails().size();
            }
        }
        return told;
    }

    /** The baseline: the figures of the plan in plain arrays. */
    @Benchmark
    public Object doubles() {
        return PlainFence.plan(job);
    }
}
