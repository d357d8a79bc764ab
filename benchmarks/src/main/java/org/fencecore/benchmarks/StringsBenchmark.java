package org.fencecore.benchmarks;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.slope.SlopeFit;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.units.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the fewest strings cost over gently rolling ground with one or three shots a bay, against the racked line, which looks
 * at each bay by itself.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar Strings}
 */
@Warmup(iterations = 10, time = 1)
public class StringsBenchmark extends SteadyBenchmark {

    private static final double BAY_FEET = 8;

    /** How many bays there are. */
    @Param({"100", "1000", "10000"})
    int bays = 100;

    /** How many shots there are from post to post. */
    @Param({"1", "3"})
    int shots = 1;

    private Profile ground = ground(bays, shots);
    private List<Length> posts = posts(bays);
    private final SlopeSpec spec = SlopeSpec.builder()
            .clearance(Length.ofInches(1.5))
            .minimumClearance(Length.ofInches(1))
            .maximumClearance(Length.ofInches(2))
            .build();

    /** Makes ground of that size. */
    @Setup
    public void takeGround() {
        ground = ground(bays, shots);
        posts = posts(bays);
    }

    private static List<Length> posts(int bays) {
        return IntStream.rangeClosed(0, bays)
                .mapToObj(post -> Length.ofFeet(BAY_FEET * post))
                .toList();
    }

    /** Waves of 40 in over 750 ft, and up to a quarter of an inch of roughness. */
    private static Profile ground(int bays, int shots) {
        Random random = new Random(1);
        Profile.Builder ground = Profile.builder();
        for (int shot = 0; shot <= bays * shots; shot++) {
            double feet = BAY_FEET * shot / shots;
            double inches = 40 * Math.sin(feet / 120) + random.nextDouble() / 2 - 0.25;
            ground.point(Length.ofFeet(feet), Length.ofInches(inches));
        }
        return ground.build();
    }

    /** The fewest strings, gaps as even as can be. */
    @Benchmark
    public SlopeFit strings() {
        return SlopeFit.strings(ground, posts, spec);
    }

    /** The baseline: each bay racked. */
    @Benchmark
    public SlopeFit racked() {
        return SlopeFit.rack(ground, posts, spec);
    }
}
