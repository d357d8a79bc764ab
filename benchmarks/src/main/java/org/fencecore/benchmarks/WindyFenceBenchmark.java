package org.fencecore.benchmarks;

import java.util.List;
import org.fencecore.footing.FootingDesign;
import org.fencecore.footing.LateralLoad;
import org.fencecore.wind.FenceWind;
import org.openjdk.jmh.annotations.Benchmark;

/**
 * What posts cost: the wind on a run, the depth of one post, and the whole check of a fence of 30 posts, every one for
 * itself, against plain arithmetic on {@code double}.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar WindyFence}
 */
public class WindyFenceBenchmark extends SteadyBenchmark {

    private WindyFence fence = new WindyFence(30);
    private FenceWind push = fence.wind();
    private LateralLoad load = fence.load(push, 1);

    /** The zones of a run. */
    @Benchmark
    public FenceWind wind() {
        return fence.wind();
    }

    /** The embedment of one post under a known load, with all the other rules. */
    @Benchmark
    public FootingDesign embedment() {
        return fence.footing(load);
    }

    /** One post from the wind on its run to the concrete in its hole. */
    @Benchmark
    public Object onePost() {
        return fence.footing(fence.load(push, 1)).concrete();
    }

    /** Thirty posts: wind, loads, depths and what of the wood's strength is used. */
    @Benchmark
    public double thirtyPosts() {
        return worst(fence.check());
    }

    /** The same with every finding of every post written out. */
    @Benchmark
    public int thirtyPostsWithFindings() {
        int findings = 0;
        for (WindyFence.Post post : fence.check()) {
            findings += post.footing().findings().size()
                    + post.strength().findings().size();
        }
        return findings;
    }

    /** The baseline: depths and used strength in plain arrays. */
    @Benchmark
    public double[][] doubles() {
        return fence.plain();
    }

    private static double worst(List<WindyFence.Post> posts) {
        double worst = 0;
        for (WindyFence.Post post : posts) {
            worst = Math.max(worst, post.strength().used().value());
        }
        return worst;
    }
}
