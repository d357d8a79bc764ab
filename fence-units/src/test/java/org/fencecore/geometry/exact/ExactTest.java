package org.fencecore.geometry.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExactTest {

    @ParameterizedTest
    @CsvSource({"1, 2, 1", "-1, 2, 0", "3, 2, 2", "-3, 2, -1", "5, 3, 2", "-5, 3, -2", "4, 3, 1", "-6, 3, -2", "0, 7, 0"
    })
    void halfAUnitGoesUp(long dividend, long divisor, long rounded) {
        assertThat(Exact.timesOver(dividend, 1, divisor)).isEqualTo(rounded);
        assertThat(Exact.divide(BigInteger.valueOf(dividend), BigInteger.valueOf(divisor)))
                .isEqualTo(rounded);
        assertThat(Exact.divide(BigInteger.valueOf(-dividend), BigInteger.valueOf(-divisor)))
                .isEqualTo(rounded);
    }

    @Test
    void theLargestQuotientsAreExact() {
        // a * b / b is a, whatever a double can tell of it: the line across the whole range, asked at its very end.
        long a = 2_000_000_000_000_000_000L - 1;
        long b = 2_828_427_124_746_190_097L;

        assertThat(Exact.timesOver(a, b, b)).isEqualTo(a);
        assertThat(Exact.timesOver(-a, b - 1, b)).isEqualTo(-a + 1);
        assertThat(Exact.timesOver(a, 100_000_000_000_000_003L, 100_000_000_000_000_003L))
                .isEqualTo(a);
        // The largest divisors with quotients of the size of a job: 3 * (b - 1) / b is 3 less a little.
        assertThat(Exact.timesOver(3, b - 1, b)).isEqualTo(3);
        assertThat(Exact.timesOver(3_000_000_001L, b / 2, b)).isEqualTo(1_500_000_000L);
    }

    @Test
    void aMillionKilometresIsWithinReachAndANanometreMoreIsNot() {
        Length limit = Length.ofNanometres(Exact.LIMIT);

        assertThatCode(() -> Exact.requireInRange("east", limit)).doesNotThrowAnyException();
        assertThatCode(() -> Exact.requireInRange("east", limit.negated())).doesNotThrowAnyException();
        for (Length beyond : new Length[] {
            limit.plus(Length.ofNanometres(1)),
            limit.plus(Length.ofNanometres(1)).negated()
        }) {
            assertThatThrownBy(() -> Exact.requireInRange("east", beyond))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("east was " + beyond)
                    .hasMessageContaining("within 1,000,000 km of zero");
        }
    }
}
