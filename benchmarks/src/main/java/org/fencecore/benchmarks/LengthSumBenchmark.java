package org.fencecore.benchmarks;

import java.util.concurrent.TimeUnit;
import org.fencecore.units.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What it costs to add up the pitches of a row of pickets with {@link Length}, against plain {@code long} nanometres.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar LengthSumBenchmark}
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class LengthSumBenchmark {
    /** How many pickets stand in the row. */
    @Param("10000")
    int pickets;

    private Length pitch = Length.ofInches(5.25);

    /** The sum as a {@link Length}. */
    @Benchmark
    public Length length() {
        Length sum = Length.ZERO;
        for (int i = 0; i < pickets; i++) {
            sum = sum.plus(pitch);
        }
        return sum;
    }

    /** The same sum in {@code long} nanometres, checked for overflow as {@link Length} is. */
    @Benchmark
    public long nanometres() {
        long sum = 0;
        for (int i = 0; i < pickets; i++) {
            sum = Math.addExact(sum, pitch.nanometres());
        }
        return sum;
    }
}
