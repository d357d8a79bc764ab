package org.fencecore.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.units.Conductivity;
import org.fencecore.units.DegreeDays;
import org.fencecore.units.Ratio;
import org.fencecore.units.UnitWeight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * No published example with its answer was found. The chain of UFC 3-130-06 and Aldrich and Paynter 1953 was worked out
 * apart from this code for silt of 100 pcf, 15 % of water, 2,500 degF days in 160 days, a year of 37.2 degF on average, k
 * 0.78: L 2160, C 28.25, 15.625 degF below freezing on average, a .3328, m .20435, part left .92443, 6.5828 and 6.0853 ft;
 * and in SI with k 1.34997 W/(m K), 1388.89 degC days and L 8.0479e7 J/m3: 2.00644 m.
 */
class FrostEstimateTest {

    private static FrostEstimate.Builder silt() {
        return FrostEstimate.builder()
                .freezingIndex(DegreeDays.ofFahrenheit(2500))
                .freezingDays(160)
                .warmth(DegreeDays.ofFahrenheit((37.2 - 32) * 160))
                .soil(UnitWeight.ofPcf(100), Ratio.ofPercent(15), Conductivity.ofBtuPerHourFoot(0.78));
    }

    @Test
    void theChainStepByStep() {
        FrostEstimate frost = silt().build();

        assertThat(frost.heatOfFreezing()).isCloseTo(2160, within(1e-6));
        assertThat(frost.heatCapacity()).isCloseTo(28.25, within(1e-6));
        assertThat(frost.lambda()).isCloseTo(0.92443, within(0.000005));
        assertThat(frost.stefan().feet()).isCloseTo(6.5828, within(0.00005));
        assertThat(frost.berggren().feet()).isCloseTo(6.0853, within(0.00005));
        assertThat(frost.worksheet().result()).isEqualTo(frost.berggren());
        assertThat(frost.finding().code()).isEqualTo("frost-estimated");
        // 6.0853 ft are 6 ft 1.024 in.
        assertThat(frost).hasToString("frost estimated at 6' 1 1/16\"");
    }

    /** The same in SI: X = sqrt(2 k FI 86400 / L). */
    @Test
    void theSameInMetricUnits() {
        FrostEstimate frost = silt().freezingIndex(DegreeDays.ofCelsius(1388.8889))
                .soil(UnitWeight.ofPcf(100), Ratio.ofPercent(15), Conductivity.ofWattsPerMetre(1.34997))
                .build();

        assertThat(frost.stefan().metres())
                .isCloseTo(Math.sqrt(2 * 1.34997 * 1388.8889 * 86400 / 8.0479e7), within(2e-5));
        assertThat(frost.stefan().metres()).isCloseTo(2.00644, within(0.00001));
    }

    /** The heat of freezing of water, UFC 3-130-05: 144 x 62.4 = 8986 BTU per cubic foot. */
    @Test
    void waterAlone() {
        FrostEstimate frost = silt().soil(UnitWeight.ofPcf(62.4), Ratio.of(1), Conductivity.ofWattsPerMetre(2.2))
                .build();

        assertThat(frost.heatOfFreezing()).isCloseTo(8986, within(0.5));
    }

    /** UFC 3-130-04: n for freezing. */
    @ParameterizedTest
    @CsvSource({"SNOW, 1.0", "CONCRETE, 0.75", "BARE, 0.7", "SHADED, 0.9", "TURF, 0.5", "TREES, 0.3"})
    void covers(GroundCover cover, double n) {
        assertThat(cover.factor().value()).isEqualTo(n);
        assertThat(silt().cover(cover).build().stefan().feet()).isCloseTo(6.5828 * Math.sqrt(n), within(0.0001));
    }

    @Test
    void misuse() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FrostEstimate.builder().build())
                .withMessageContaining("freezingIndex was not set");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> silt().freezingIndex(DegreeDays.ZERO))
                .withMessageContaining("index was 0 degF d");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> silt().freezingDays(0))
                .withMessageContaining("days was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> silt().warmth(DegreeDays.ofCelsius(-1)))
                .withMessageContaining("degreeDays was");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> silt().soil(UnitWeight.ofPcf(100), Ratio.ZERO, Conductivity.ofWattsPerMetre(1)))
                .withMessageContaining("newWater was");
    }

    @Test
    void theEndsOfTheRangesAreWithin() {
        FrostEstimate.Builder silt = silt();

        assertThat(silt.freezingIndex(DegreeDays.ofFahrenheit(20_000))
                        .freezingDays(1)
                        .freezingDays(365)
                        .warmth(DegreeDays.ZERO)
                        .warmth(DegreeDays.ofFahrenheit(20_000))
                        .soil(UnitWeight.ofPcf(10), Ratio.of(0.001), Conductivity.ofWattsPerMetre(0.1))
                        .soil(UnitWeight.ofPcf(200), Ratio.of(5), Conductivity.ofWattsPerMetre(5))
                        .build()
                        .heatOfFreezing())
                .isCloseTo(144 * 200 * 5, within(1e-6));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> silt.freezingDays(366))
                .withMessage("days was 366; it must be from 1 to 365");
    }
}
