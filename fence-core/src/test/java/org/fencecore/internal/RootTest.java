package org.fencecore.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;

class RootTest {

    @Test
    void theRootIsFoundFromAbove() {
        double root = Root.fromAbove(x -> x * x * x - 2, 1, 2, 1e-4);

        assertThat(root).isBetween(Math.cbrt(2), Math.cbrt(2) + 1e-4);
    }

    @Test
    void aRootAtTheEndOfTheBracketIsFound() {
        assertThat(Root.fromAbove(x -> x - 1, 1, 2, 1e-4)).isEqualTo(1);
        assertThat(Root.fromAbove(x -> x - 2, 1, 2, 1e-4)).isEqualTo(2);
    }

    @Test
    void aBracketWithoutRootIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Root.fromAbove(x -> x + 1, 0, 2, 1e-4))
                .withMessage("the function does not rise through zero from low = 0.0 to high = 2.0;"
                        + " use a bracket that holds the root")
                .satisfies(thrown -> assertThat(thrown.getClass()).isEqualTo(IllegalArgumentException.class));
    }

    @Test
    void theSearchEnds() {
        assertThatIllegalStateException()
                .isThrownBy(() -> Root.fromAbove(x -> x < 1 / 3.0 ? -1 : 1, -1e300, 1e300, 1e-300))
                .withMessageContaining("was not found within 1.0E-300 in 100 evaluations")
                .satisfies(thrown -> assertThat(thrown.getClass()).isEqualTo(IllegalStateException.class));
    }
}
