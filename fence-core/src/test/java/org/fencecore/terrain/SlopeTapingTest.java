package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.terrain.Feet.ft;
import static org.fencecore.terrain.Feet.m;

import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlopeTapingTest {

    /** civilnoteppt.com, worked example: 30 m tape, 0.70 m, correction 0.00817 m, 29.99183 m level (published). */
    @Test
    void publishedTapeOnASlope() {
        SlopeTaping tape = SlopeTaping.ofRise(m(30), m(0.70));
        assertThat(tape.levelDistance().metres()).isCloseTo(29.99183, within(5e-6));
        assertThat(tape.correction().metres()).isCloseTo(0.00817, within(5e-6));
        assertThat(tape.gentleSlopeCorrection().metres()).isCloseTo(0.00817, within(5e-6));
        assertThat(tape.findings()).isEmpty();
        assertThat(tape.worksheet().result()).isEqualTo(tape.levelDistance());
    }

    /** assignmentexpert.com question 259114: 756.52 m at 15°25' is 729.30 m (published), 729.2990 computed. */
    @Test
    void publishedAngle() {
        SlopeTaping tape = SlopeTaping.ofAngle(m(756.52), Angle.ofDms(15, 25, 0));
        assertThat(tape.levelDistance().metres()).isCloseTo(729.2990, within(5e-5));
        assertThat(SlopeTaping.ofAngle(m(756.52), Angle.ofDms(15, 25, 0).negated())
                        .rise())
                .isEqualTo(tape.rise().negated());
    }

    /** Computed independently for 100 along the slope: s - sqrt(s^2 - h^2), h^2/2s, and h^2/2s + h^4/8s^3. */
    @ParameterizedTest
    @CsvSource({
        "5, 0.12508, 0.12500, 0.12508",
        "10, 0.50126, 0.50000, 0.50125",
        "15, 1.13140, 1.12500, 1.13133",
        "20, 2.02041, 2.00000, 2.02000",
        "30, 4.60608, 4.50000, 4.60125"
    })
    void corrections(double rise, double exact, double gentle, double closer) {
        SlopeTaping tape = SlopeTaping.ofRise(ft(100), ft(-rise));
        assertThat(tape.correction().feet()).isCloseTo(exact, within(5.1e-6));
        assertThat(tape.gentleSlopeCorrection().feet()).isCloseTo(gentle, within(1e-9));
        assertThat(tape.closerCorrection().feet()).isCloseTo(closer, within(5.1e-6));
        assertThat(tape.findings()).extracting(Finding::code).containsExactly("steep-for-short-formula");
    }

    /** Grade tables: level distance to slope distance, 15 % 1.01119 and 75 % 1.25 (computed, exact). */
    @Test
    void laysOffALevelDistance() {
        assertThat(SlopeTaping.ofLevel(ft(100), Slope.ofPercent(75)).slopeDistance())
                .isEqualTo(ft(125));
        assertThat(SlopeTaping.ofLevel(ft(8), Slope.ofPercent(-15))
                        .slopeDistance()
                        .feet())
                .isCloseTo(8 * 1.01119, within(5e-5));
        SlopeTaping level = SlopeTaping.ofLevel(ft(8), Slope.LEVEL);
        assertThat(level)
                .isEqualTo(SlopeTaping.ofRise(ft(8), Length.ZERO))
                .hasSameHashCodeAs(SlopeTaping.ofRise(ft(8), Length.ZERO));
        assertThat(level.correction()).isEqualTo(Length.ZERO);
        assertThat(SlopeTaping.ofRise(ft(5), ft(3))).hasToString("5.00 ft along the slope is 4.00 ft level");
    }

    @Test
    void refusesWhatNoTapeReads() {
        assertThatThrownBy(() -> SlopeTaping.ofRise(ft(3), ft(-3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rise was -3 ft over a slope distance of 3 ft");
        assertThatThrownBy(() -> SlopeTaping.ofRise(ft(0), ft(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("slopeDistance was 0 in");
        assertThatThrownBy(() -> SlopeTaping.ofAngle(ft(10), Angle.RIGHT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("between -90 and 90");
    }
}
