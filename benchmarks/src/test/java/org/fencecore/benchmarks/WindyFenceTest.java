package org.fencecore.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The modules and the plain arithmetic they are timed against give the same posts. */
class WindyFenceTest {

    /** Fences of 20 and of 32 heights, between the columns of 13 and 45 of the wind's table. */
    @ParameterizedTest
    @ValueSource(ints = {16, 25, 30})
    void modulesAndPlainArithmeticAgree(int count) {
        WindyFence fence = new WindyFence(count);
        List<WindyFence.Post> posts = fence.check();
        double[][] plain = fence.plain();

        assertThat(posts).hasSize(count);
        for (int i = 0; i < count; i++) {
            assertThat(posts.get(i).footing().criteria().get(0).depth().metres())
                    .isCloseTo(plain[0][i], within(2e-6));
            assertThat(posts.get(i).strength().used().value()).isCloseTo(plain[1][i], within(1e-6));
        }
    }
}
