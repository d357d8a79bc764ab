package org.fencecore.geometry.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grades and lengths along them against published figures. */
class ProfileReferenceTest {

    private static Length ft(double feet) {
        return Length.ofFeet(feet);
    }

    /** civilnoteppt.com: a 30 m tape with its ends 0.70 m apart in height reaches 29.99183 m level. */
    @Test
    void slopeOfATape() {
        Profile ground = Profile.builder()
                .point(Length.ZERO, Length.ZERO)
                .point(Length.ofMetres(29.99183), Length.ofMetres(0.70))
                .build();

        assertThat(ground.lengthAlong(Length.ZERO, ground.extent().end()).metres())
                .isCloseTo(30, within(5e-6));
    }

    /** Grade in percent against degrees, from published tables of slopes, and slope length over level, computed. */
    @ParameterizedTest
    @CsvSource({"10, 5.71, 1.00499", "15, 8.53, 1.01119", "20, 11.31, 1.01980", "43, 23.27, 1.08853", "100, 45, 1.41421"
    })
    void grades(double percent, double degrees, double alongOverLevel) {
        Profile ground = Profile.builder()
                .point(Length.ZERO, Length.ZERO)
                .point(ft(100), ft(percent))
                .build();

        assertThat(ground.slopeAt(ft(50)).angle().degrees()).isCloseTo(degrees, within(0.005));
        assertThat(ground.lengthAlong(ft(0), ft(100)).feet()).isCloseTo(100 * alongOverLevel, within(5e-4));
    }
}
