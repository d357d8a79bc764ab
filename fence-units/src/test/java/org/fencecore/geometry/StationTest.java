package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StationTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0+00.00",
        "1234.5, 12+34.50",
        "75, 0+75.00",
        "5.5, 0+05.50",
        "99.994, 0+99.99",
        "99.995, 1+00.00",
        "199.999, 2+00.00",
        "-50, -0+50.00",
        "-99.995, -1+00.00",
        "-0.001, 0+00.00"
    })
    void roundsFirstAndSplitsAfter(double feet, String written) {
        assertThat(Station.of(Length.ofFeet(feet))).hasToString(written);
        assertThat(Station.ofMetric(Length.ofMetres(feet))).hasToString(written);
    }

    @Test
    void readsWhatItWrites() {
        assertThat(Station.parse("1+53.25").distance()).isEqualTo(Length.ofFeet(153.25));
        assertThat(Station.parse("12+00")).isEqualTo(Station.of(Length.ofFeet(1200)));
        assertThat(Station.parse("-0+50.00").distance()).isEqualTo(Length.ofFeet(-50));
        assertThat(Station.parseMetric("0+30.5")).isEqualTo(Station.ofMetric(Length.ofMetres(30.5)));
        assertThat(Station.parseMetric("0+30.5")).hasToString("0+30.50").matches(Station::isMetric);
        assertThat(Station.of(Length.ofFeet(1200)).isMetric()).isFalse();
        assertThat(Station.parseMetric("0+30.5")).isNotEqualTo(Station.of(Length.ofMetres(30.5)));
    }

    @ParameterizedTest
    @CsvSource({
        "'', column 1",
        "153.25, column 4",
        "1+5, column 4",
        "1+5.25, column 4",
        "0+100, column 5",
        "1+53., column 6",
        "1 + 53, column 2",
        "x, column 1"
    })
    void refusesTheRestAndSaysWhere(String text, String complaint) {
        assertThatThrownBy(() -> Station.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(complaint)
                .hasMessageContaining("as in 1+53.25");
    }

    @Test
    void refusesLongTexts() {
        assertThatThrownBy(() -> Station.parse("1+00." + "0".repeat(100_000)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("32 or fewer");
        assertThat(Station.parse("1+00." + "0".repeat(27))).isEqualTo(Station.of(Length.ofFeet(100)));
    }

    @Test
    void refusesStationsBeyondTheEarth() {
        assertThatThrownBy(() -> Station.ofMetric(Length.ofMetres(1.1e9)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("distance was " + Length.ofMetres(1.1e9) + "; it must be within 1,000,000 km");
    }
}
