package org.fencecore.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How all steady-state benchmarks are measured: average times of compiled code, in many short iterations so that the
 * quickest ones are free of other work on the machine.
 *
 * <p>The heap is of fixed size and touched beforehand, and what is new in it fits the cache. Otherwise it grows while
 * measuring, or goes round through memory that a virtual machine's host has taken back meanwhile, and programs that make
 * objects are charged for getting it again, which here took many times as long as making the object.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 3,
        jvmArgsAppend = {"-Xms1g", "-Xmx1g", "-Xmn16m", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
@Warmup(iterations = 5, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 20, time = 200, timeUnit = TimeUnit.MILLISECONDS)
public abstract class SteadyBenchmark {}
