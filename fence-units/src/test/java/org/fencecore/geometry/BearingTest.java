package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BearingTest {

    @Test
    void turnsFromOneSideOfALotToTheNext() {
        Bearing side = Bearing.parse("S89°18'W");
        Bearing next = Bearing.parse("N0°40'W");

        assertThat(side.azimuth().degrees()).isCloseTo(269.3, within(1e-12));
        assertThat(side.turnTo(next).degrees()).isCloseTo(90 + 2 / 60.0, within(1e-12));
        assertThat(next.turnTo(side).degrees()).isCloseTo(-90 - 2 / 60.0, within(1e-12));
        assertThat(side.reversed()).hasToString("N 89°18' E");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            N 45°30'15" E             | N 45°30'15" E
            S89°18'W                  | S 89°18' W
            N26°10'E                  | N 26°10' E
            N45-30-15E                | N 45°30'15" E
            n 45-30-15 w              | N 45°30'15" W
            N. 45.5° W.               | N 45°30' W
            North 45 deg 30 min East  | N 45°30' E
            SOUTH 1° 42' 07.5" WEST   | S 1°42'07.5" W
            Due North                 | N 0° E
            due  west                 | N 90° W
            East                      | N 90° E
            South                     | S 0° E
            S 90° W                   | N 90° W
            S 0° W                    | S 0° E
            """)
    void readsWhatPlatsAndDeedsWrite(String written, String shown) {
        assertThat(Bearing.parse(written)).hasToString(shown);
        assertThat(Bearing.parse(shown)).hasToString(shown);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', ignoreLeadingAndTrailingWhitespace = true, textBlock = """
            135°30'           | column 1 expected N or S
            X 45° E           | column 1 expected N or S
            NE                | column 1 expected N or S
            N 45°             | column 6 expected E or W
            N                 | column 2 expected E or W
            N 45° S           | column 8 expected E or W
            N -45° E          | column 2 expected degrees without a sign
            N E               | column 2 expected degrees without a sign
            N 90°00'01" E     | column 2 expected an angle from 0 to 90
            N 45 E            | column 6
            N 45°61' E        | column 6
            N 45-30 E         | column 8
            """)
    void refusesTheRestAndSaysWhere(String written, String complaint) {
        assertThatThrownBy(() -> Bearing.parse(written))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bearing")
                .hasMessageContaining(complaint);
    }

    @Test
    void refusesLongTexts() {
        assertThatThrownBy(() -> Bearing.parse("N 45°" + " ".repeat(100_000) + "E"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("64 or fewer");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 360, -360, 720, -1e-18})
    void northIsNorthAfterAnyNumberOfTurns(double degrees) {
        assertThat(Bearing.ofAzimuth(Angle.ofDegrees(degrees))).isEqualTo(Bearing.NORTH);
    }

    @Test
    void countsFromSouth() {
        Bearing course = Bearing.ofAzimuthFromSouth(Angle.ofDms(162, 16, 0));

        assertThat(course).hasToString("N 17°44' W");
        assertThat(course.azimuthFromSouth().degrees()).isCloseTo(162 + 16 / 60.0, within(1e-12));
    }

    @Test
    void turnsBackExactlyHalfATurnToTheRight() {
        assertThat(Bearing.NORTH.turnTo(Bearing.SOUTH)).isEqualTo(Angle.STRAIGHT);
        assertThat(Bearing.SOUTH.turnTo(Bearing.NORTH)).isEqualTo(Angle.STRAIGHT);
        assertThat(Bearing.EAST.plus(Angle.RIGHT.negated())).isEqualTo(Bearing.NORTH);
    }

    @Test
    void roundsBeforeItSplits() {
        Bearing almostNorth = Bearing.ofAzimuth(Angle.ofDms(359, 59, 59.9999));

        assertThat(almostNorth).hasToString("N 0° E");
        assertThat(Bearing.ofAzimuth(Angle.ofDms(29, 59, 59.6)).roundedTo(Angle.ofDms(0, 0, 1)))
                .hasToString("N 30° E");
        assertThat(Bearing.ofAzimuth(Angle.ofDms(29, 59, 59.6))).hasToString("N 29°59'59.6\" E");
        assertThatThrownBy(() -> almostNorth.roundedTo(Angle.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("increment");
    }

    @Test
    void readsSixtyFourCharactersAndShowsControlsAsQuestionMarks() {
        assertThat(Bearing.parse("N 45°" + " ".repeat(58) + "E")).hasToString("N 45° E");
        assertThatThrownBy(() -> Bearing.parse("N\t45\n S"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bearing \"N?45? S\" cannot be read");
    }
}
