package org.fencecore.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fencecore.layout.PostSpacing;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** The programs that are timed against each other find the same posts, but for what whole inches cannot show. */
class PostSpacingBenchmarkTest {

    @Test
    void bothFindTheSamePostsAsFarAsInchesShow() {
        PostSpacingBenchmark programs = new PostSpacingBenchmark();
        PostSpacing exact = programs.spacing();
        int[] inches = programs.onInches();

        List<Length> stations = exact.stations();
        assertThat(exact.findings()).extracting("code").containsExactly("posts-moved");
        assertThat(stations).hasSize(inches.length);
        double squaresExact = 0;
        double squaresInches = 0;
        for (int post = 0; post < inches.length; post++) {
            assertThat(Math.abs(stations.get(post).inches() - inches[post])).isLessThan(2);
            if (post > 0) {
                squaresExact += Math.pow(
                        stations.get(post).inches() - stations.get(post - 1).inches(), 2);
                squaresInches += Math.pow(inches[post] - inches[post - 1], 2);
            }
        }
        // Posts that may stand between inches can only be more even.
        assertThat(squaresExact).isLessThanOrEqualTo(squaresInches).isGreaterThan(squaresInches - inches.length);
    }

    @Test
    void withNothingInTheWayBaysAreEqual() {
        PostSpacing free = new PostSpacingBenchmark().unhindered();
        assertThat(free.bayCount()).isEqualTo(38);
        assertThat(free.isEven()).isTrue();
    }
}
