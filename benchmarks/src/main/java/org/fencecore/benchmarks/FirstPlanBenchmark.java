package org.fencecore.benchmarks;

import java.util.concurrent.TimeUnit;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the first plan costs in a program that has just started: loading the library's classes, reading in the lot and
 * planning 200 ft of fence, all of it interpreted. Each measurement is a Java machine of its own.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar FirstPlan}
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(20)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class FirstPlanBenchmark {

    /** The library's plan. */
    @Benchmark
    public FencePlan plan() {
        return FencePlanner.plan(FenceJob.ofFeet(200).site(), FenceJob.style());
    }

    /** The baseline: the figures of the plan in plain arrays. */
    @Benchmark
    public Object doubles() {
        return PlainFence.plan(FenceJob.ofFeet(200));
    }
}
