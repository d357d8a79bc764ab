package org.fencecore.benchmarks;

import java.util.concurrent.TimeUnit;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How many fences of 200 ft are planned in a second on one thread and on two, and the same of the plain program, which
 * shows what the machine itself has to give: two cores that are one core's two threads do not do twice the work.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar Threads}
 */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 10, time = 1)
public class ThreadsBenchmark extends SteadyBenchmark {

    private final FenceJob job = FenceJob.ofFeet(200);
    private final Site site = job.site();
    private final FenceStyle style = FenceJob.style();

    /** Plans on one thread. */
    @Benchmark
    @Threads(1)
    public FencePlan planOnOne() {
        return FencePlanner.plan(site, style);
    }

    /** Plans on two threads. */
    @Benchmark
    @Threads(2)
    public FencePlan planOnTwo() {
        return FencePlanner.plan(site, style);
    }

    /** The plain program on one thread. */
    @Benchmark
    @Threads(1)
    public Object doublesOnOne() {
        return PlainFence.plan(job);
    }

    /** The plain program on two threads. */
    @Benchmark
    @Threads(2)
    public Object doublesOnTwo() {
        return PlainFence.plan(job);
    }
}
