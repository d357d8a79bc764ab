package org.fencecore.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.PostSpacing;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.units.Length;
import org.openjdk.jmh.annotations.Benchmark;

/**
 * What it costs to place the posts of 300 ft with 20 forbidden stretches, exactly, against a plain dynamic programme over
 * whole inches that looks for the fewest posts and then the least sum of the squares of the bays.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar PostSpacing}
 */
public class PostSpacingBenchmark extends SteadyBenchmark {

    private static final int LENGTH = 3600;
    private static final int MAXIMUM = 96;
    private static final int MINIMUM = 48;

    private final boolean[] blocked = new boolean[LENGTH + 1];
    private final List<Interval> forbidden = new ArrayList<>();
    private final Length length = Length.ofInches(LENGTH);
    private final PostSpacingSpec spec = PostSpacingSpec.builder()
            .maximum(Length.ofInches(MAXIMUM))
            .minimum(Length.ofInches(MINIMUM))
            .build();

    /** Places and widths without a pattern, always the same. */
    public PostSpacingBenchmark() {
        for (int i = 0; i < 20; i++) {
            int from = 60 + 175 * i + 37 * i * i % 90;
            int to = from + 14 + 23 * i % 31;
            forbidden.add(Interval.of(Length.ofInches(from), Length.ofInches(to)));
            Arrays.fill(blocked, from + 1, to, true);
        }
    }

    /** The library's posts. */
    @Benchmark
    public PostSpacing spacing() {
        return PostSpacing.fit(length, spec, forbidden);
    }

    /** The library's posts with nothing in the way, which need no search. */
    @Benchmark
    public PostSpacing unhindered() {
        return PostSpacing.fit(length, spec);
    }

    /** The baseline: the best posts on whole inches. */
    @Benchmark
    public int[] onInches() {
        int[] bays = new int[LENGTH + 1];
        long[] squares = new long[LENGTH + 1];
        int[] before = new int[LENGTH + 1];
        Arrays.fill(bays, Integer.MAX_VALUE);
        bays[0] = 0;
        for (int to = MINIMUM; to <= LENGTH; to++) {
            if (blocked[to]) {
                continue;
            }
            for (int from = Math.max(0, to - MAXIMUM); from <= to - MINIMUM; from++) {
                if (bays[from] == Integer.MAX_VALUE) {
                    continue;
                }
                int count = bays[from] + 1;
                long sum = squares[from] + (long) (to - from) * (to - from);
                if (count < bays[to] || (count == bays[to] && sum < squares[to])) {
                    bays[to] = count;
                    squares[to] = sum;
                    before[to] = from;
                }
            }
        }
        int[] posts = new int[bays[LENGTH] + 1];
        for (int post = posts.length - 1, at = LENGTH; post >= 0; post--, at = before[at]) {
            posts[post] = at;
        }
        return posts;
    }
}
