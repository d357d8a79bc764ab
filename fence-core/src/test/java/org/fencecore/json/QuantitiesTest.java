package org.fencecore.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.fencecore.geometry.Bearing;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.units.Speed;
import org.fencecore.units.UnitWeight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuantitiesTest {

    private static <T> T read(Form<T> form, String text) {
        return form.read(Place.root(new Node(Node.Kind.TEXT, text, 1, 1)));
    }

    @Test
    void quantitiesAreWrittenInTheirUsualUnits() {
        assertThat(Quantities.LENGTH.write(Length.ofInches(5.5))).isEqualTo("5 1/2 in");
        assertThat(Quantities.PRESSURE.write(Pressure.ofPsf(10))).isEqualTo("10 psf");
        assertThat(Quantities.PRESSURE.write(Pressure.ofPsi(900))).isEqualTo("129600 psf");
        assertThat(Quantities.PRESSURE.write(Pressure.ofPascals(500))).isEqualTo("500 Pa");
        assertThat(Quantities.RATIO.write(Ratio.of(0.19))).isEqualTo("19 %");
        assertThat(Quantities.UNIT_WEIGHT.write(UnitWeight.ofPcf(150))).isEqualTo("150 psf/ft");
        assertThat(Quantities.SPEED.write(Speed.ofMetresPerSecond(25))).isEqualTo("25 m/s");
        assertThat(Quantities.BEARING.write(Bearing.parse("S 1°30' W"))).isEqualTo("S 1°30' W");
        assertThat(Quantities.SLOPE.write(Slope.ofPercent(12))).isEqualTo("12 %");
    }

    @Test
    void quantitiesAreReadInAnyOfTheirUnits() {
        assertThat(read(Quantities.BEARING, "azimuth from north 90°")).isEqualTo(Bearing.EAST);
        assertThat(read(Quantities.BEARING, "azimuth from south 90 deg")).isEqualTo(Bearing.WEST);
        assertThat(read(Quantities.ANGLE, "0.5 rad")).isEqualTo(Angle.ofRadians(0.5));
        assertThat(read(Quantities.SLOPE, "0.25 rise/run")).isEqualTo(Slope.ofPercent(25));
        assertThat(read(Quantities.FORCE, "1.5e3 N")).isEqualTo(Force.ofNewtons(1500));
        assertThat(read(Quantities.RATIO, "0.5")).isEqualTo(Ratio.ofPercent(50));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "psf", "10", "10 psfx", "ten psf", "10,5 psf", "NaN psf", "10 psf psf", "0x10 Pa"})
    void whatIsNoPressureIsRefused(String text) {
        assertThatExceptionOfType(UnreadableJsonException.class)
                .isThrownBy(() -> read(Quantities.PRESSURE, text))
                .withMessageContaining(text);
    }
}
