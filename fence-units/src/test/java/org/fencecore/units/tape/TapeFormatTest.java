package org.fencecore.units.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TapeFormatTest {

    @Test
    void exampleOfThePackage() {
        Length space = Length.parse("46 3/4\"").dividedBy(7);
        TapeFormat tape = TapeFormat.inches(16);
        assertThat(tape.format(space)).isEqualTo("6 11/16\"");
        assertThat(tape.withRounding(Rounding.DOWN).format(space)).isEqualTo("6 5/8\"");
        assertThat(tape.read(space).remainder()).hasToString("-0.226786 mm");
    }

    @Test
    void exampleOfTheReading() {
        TapeReading reading = TapeFormat.inches(16).read(Length.ofInches(5.51));
        assertThat(reading.text()).isEqualTo("5 1/2\"");
        assertThat(reading).hasToString("5 1/2\"");
        assertThat(reading.length()).isEqualTo(Length.ofInches(5.5));
        assertThat(reading.isExact()).isFalse();
        assertThat(reading.remainder()).isEqualTo(Length.ofMillimetres(0.254));
        assertThat(TapeFormat.inches(16).read(Length.ofInches(5.5)).isExact()).isTrue();
    }

    @Test
    void tableOfTheClass() {
        Length length = Length.parse("1898.65 mm");
        assertThat(TapeFormat.feetAndInches(16).format(length)).isEqualTo("6' 2 3/4\"");
        assertThat(TapeFormat.feetAndInches(16).withUnitNames().format(length)).isEqualTo("6 ft 2 3/4 in");
        assertThat(TapeFormat.inches(16).format(length)).isEqualTo("74 3/4\"");
        assertThat(TapeFormat.inches(16).withUnitNames().format(length)).isEqualTo("74 3/4 in");
        assertThat(TapeFormat.decimalFeet(2).format(length)).isEqualTo("6.23 ft");
        assertThat(TapeFormat.millimetres(0).format(length)).isEqualTo("1899 mm");
        assertThat(TapeFormat.metres(3).format(length)).isEqualTo("1.899 m");
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '~',
            delimiter = '|',
            value = {
                "0 in           | 0\"          | 0\"",
                "1/2 in         | 1/2\"        | 1/2\"",
                "5 1/2 in       | 5 1/2\"      | 5 1/2\"",
                "11 15/16 in    | 11 15/16\"   | 11 15/16\"",
                "12 in          | 1' 0\"       | 12\"",
                "6 ft           | 6' 0\"       | 72\"",
                "6 ft 1/2 in    | 6' 0 1/2\"   | 72 1/2\"",
                "6 ft 11 in     | 6' 11\"      | 83\"",
                // Carries: never 5 ft 12 in, never 16/16.
                "5 ft 11.99 in  | 6' 0\"       | 72\"",
                "11.99 in       | 1' 0\"       | 12\"",
                "2.97 in        | 3\"          | 3\"",
                // Reduced: 12/16, 8/16, 2/16.
                "2.75 in        | 2 3/4\"      | 2 3/4\"",
                "2.5 in         | 2 1/2\"      | 2 1/2\"",
                "2.126 in       | 2 1/8\"      | 2 1/8\"",
                // One minus, in front of the whole; and none in front of nothing.
                "-5 1/2 in      | -5 1/2\"     | -5 1/2\"",
                "-1/2 in        | -1/2\"       | -1/2\"",
                "-6 ft 2 3/4 in | -6' 2 3/4\"  | -74 3/4\"",
                "-5 ft 11.99 in | -6' 0\"      | -72\"",
                "-0.02 in       | 0\"          | 0\"",
            })
    void writesFeetAndInchesAndInchesAlone(String length, String feetAndInches, String inches) {
        assertThat(TapeFormat.feetAndInches(16).format(Length.parse(length))).isEqualTo(feetAndInches);
        assertThat(TapeFormat.inches(16).format(Length.parse(length))).isEqualTo(inches);
    }

    @ParameterizedTest
    @CsvSource({"1, 3", "2, 2 1/2", "4, 2 3/4", "8, 2 3/4", "16, 2 11/16", "32, 2 11/16", "64, 2 45/64"})
    void writesToTheMarksOfTheTape(int denominator, String inches) {
        assertThat(TapeFormat.inches(denominator).format(Length.ofInches(2.7))).isEqualTo(inches + "\"");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 77 ft, 23 m, 23424 mm",
        "1, 76.8 ft, 23.4 m, 23423.9 mm",
        "2, 76.85 ft, 23.42 m, 23423.88 mm",
        "5, 76.85000 ft, 23.42388 m, 23423.88000 mm"
    })
    void writesDecimals(int places, String feet, String metres, String millimetres) {
        Length length = Length.ofFeet(76.85);
        // 76.85 lies half way between tenths, so DOWN and UP differ there and NEAREST goes away from zero.
        assertThat(TapeFormat.decimalFeet(places)
                        .withRounding(places == 1 ? Rounding.DOWN : Rounding.NEAREST)
                        .format(length))
                .isEqualTo(feet);
        assertThat(TapeFormat.metres(places).format(length)).isEqualTo(metres);
        assertThat(TapeFormat.millimetres(places).format(length)).isEqualTo(millimetres);
    }

    @Test
    void decimalsKeepTheirZerosAndTheirSign() {
        assertThat(TapeFormat.decimalFeet(2).format(Length.ZERO)).isEqualTo("0.00 ft");
        assertThat(TapeFormat.decimalFeet(2).format(Length.ofFeet(-0.004))).isEqualTo("0.00 ft");
        assertThat(TapeFormat.decimalFeet(2).format(Length.ofFeet(-0.05))).isEqualTo("-0.05 ft");
        assertThat(TapeFormat.metres(9).format(Length.ofNanometres(-1))).isEqualTo("-0.000000001 m");
        assertThat(TapeFormat.millimetres(6).format(Length.ofNanometres(1))).isEqualTo("0.000001 mm");
    }

    @ParameterizedTest
    @CsvSource({
        "5.51, NEAREST, 5 1/2",
        "5.51, DOWN, 5 1/2",
        "5.51, UP, 5 9/16",
        "-5.51, NEAREST, -5 1/2",
        "-5.51, DOWN, -5 9/16",
        "-5.51, UP, -5 1/2"
    })
    void roundsByTheNamedRule(double inches, Rounding rounding, String text) {
        assertThat(TapeFormat.inches(16).withRounding(rounding).format(Length.ofInches(inches)))
                .isEqualTo(text + "\"");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -16, 3, 10, 12, 100, 128, Integer.MIN_VALUE})
    void refusesMarksThatNoTapeHas(int denominator) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TapeFormat.feetAndInches(denominator))
                .withMessage("denominator was " + denominator + "; use the marks of a tape: 1, 2, 4, 8, 16, 32 or 64");
        assertThatIllegalArgumentException().isThrownBy(() -> TapeFormat.inches(denominator));
    }

    @Test
    void refusesDecimalsFinerThanANanometre() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TapeFormat.decimalFeet(6))
                .withMessage("places was 6; use 0 to 5 decimals of ft");
        assertThatIllegalArgumentException().isThrownBy(() -> TapeFormat.metres(10));
        assertThatIllegalArgumentException().isThrownBy(() -> TapeFormat.millimetres(7));
        assertThatIllegalArgumentException().isThrownBy(() -> TapeFormat.millimetres(-1));
    }

    @Test
    void refusesAMarkBeyondTheLongestLength() {
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() ->
                        TapeFormat.metres(0).withRounding(Rounding.UP).format(Length.ofNanometres(Long.MAX_VALUE)));
    }

    @Test
    void tellsItsMarks() {
        assertThat(TapeFormat.inches(16).increment()).isEqualTo(Length.parse("1/16 in"));
        assertThat(TapeFormat.decimalFeet(2).increment()).isEqualTo(Length.parse("0.01 ft"));
        assertThat(TapeFormat.feetAndInches(16)).hasToString("feet and inches to 1/16\", nearest");
        assertThat(TapeFormat.metres(2).withRounding(Rounding.DOWN)).hasToString("decimals to 0.01 m, down");
    }

    @Test
    void equalFormatsWriteAlike() {
        TapeFormat tape = TapeFormat.inches(16);
        assertThat(tape).isEqualTo(TapeFormat.inches(16)).hasSameHashCodeAs(TapeFormat.inches(16));
        assertThat(tape.withRounding(Rounding.DOWN).withRounding(Rounding.NEAREST))
                .isEqualTo(tape);
        assertThat(tape)
                .isNotEqualTo(TapeFormat.inches(32))
                .isNotEqualTo(TapeFormat.feetAndInches(16))
                .isNotEqualTo(tape.withUnitNames())
                .isNotEqualTo(tape.withRounding(Rounding.UP));
        assertThat(TapeFormat.metres(3)).isNotEqualTo(TapeFormat.millimetres(0));
        assertThat(TapeFormat.metres(3)).isEqualTo(TapeFormat.metres(3).withUnitNames());
        Length length = Length.ofInches(5.51);
        assertThat(tape.read(length)).isEqualTo(tape.read(length)).hasSameHashCodeAs(tape.read(length));
        assertThat(tape.read(length)).isNotEqualTo(tape.read(Length.ofInches(5.5)));
    }
}
