package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class IntervalTest {

    private static Interval feet(double start, double end) {
        return Interval.of(Length.ofFeet(start), Length.ofFeet(end));
    }

    @Test
    void neighbouringBaysTouchAndDoNotOverlap() {
        Interval first = Interval.of(Length.ZERO, Length.ofFeet(8));
        Interval second = first.shiftedBy(Length.ofFeet(8));

        assertThat(first.contains(Length.ofFeet(8))).isTrue();
        assertThat(first.overlaps(second)).isFalse();
        assertThat(first.intersection(second)).contains(feet(8, 8));
        assertThat(second.middle()).isEqualTo(Length.ofFeet(12));
        assertThat(second.length()).isEqualTo(Length.ofFeet(8));
    }

    @Test
    void overlapIsTheCommonStretch() {
        assertThat(feet(0, 5).overlaps(feet(4, 9))).isTrue();
        assertThat(feet(0, 5).intersection(feet(4, 9))).contains(feet(4, 5));
        assertThat(feet(0, 5).intersection(feet(6, 9))).isEmpty();
        assertThat(feet(0, 9).contains(feet(4, 9))).isTrue();
        assertThat(feet(0, 9).contains(feet(4, 10))).isFalse();
    }

    @Test
    void oneStationIsAnIntervalThatOverlapsNothing() {
        Interval post = feet(3, 3);

        assertThat(post.length()).isEqualTo(Length.ZERO);
        assertThat(feet(0, 5).contains(post)).isTrue();
        assertThat(feet(0, 5).overlaps(post)).isFalse();
    }

    @Test
    void middleDoesNotOverflowAndRoundsDown() {
        long large = Long.MAX_VALUE - 1;

        assertThat(Interval.of(Length.ofNanometres(large - 2), Length.ofNanometres(large))
                        .middle())
                .isEqualTo(Length.ofNanometres(large - 1));
        assertThat(Interval.of(Length.ofNanometres(-2), Length.ofNanometres(1)).middle())
                .isEqualTo(Length.ofNanometres(-1));
    }

    @Test
    void refusesEndsOutOfOrder() {
        assertThatThrownBy(() -> Interval.of(Length.ofMillimetres(2), Length.ofMillimetres(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("start was 2")
                .hasMessageContaining("smaller station first");
    }
}
