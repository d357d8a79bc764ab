package org.fencecore.units.tape;

import static org.assertj.core.api.Assertions.assertThat;

import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Writing lengths against published values; the source stands beside each check. */
class TapeReferenceTest {

    @ParameterizedTest
    @CsvFileSource(
            files = "src/test/resources/reference/units/inches-to-decimal-feet.csv",
            useHeadersInDisplayName = true)
    void inchesAsDecimalFeet(String inches, String feet) {
        assertThat(TapeFormat.decimalFeet(2).format(Length.parse(inches + " in")))
                .isEqualTo(feet + " ft");
    }

    // NAVEDTRA 14044, figure 2-17 and the text beside it: to make sixteenths of the decimals of an inch, multiply
    // by 16; half a sixteenth or more counts as one. 13.89 in to the foot by 8 ft is 111.12 in, which is 111 1/8 in,
    // or 9 ft 3 1/8 in.
    @Test
    void sixteenthsOfACommonRafter() {
        Length rafter = Length.parse("13.89 in").times(8);
        assertThat(rafter).isEqualTo(Length.parse("111.12 in"));
        assertThat(TapeFormat.inches(16).format(rafter)).isEqualTo("111 1/8\"");
        assertThat(TapeFormat.feetAndInches(16).format(rafter)).isEqualTo("9' 3 1/8\"");
    }

    // The same rule at its edge: .5 of a sixteenth goes up, less goes down.
    @Test
    void halfASixteenthGoesUp() {
        TapeFormat sixteenths = TapeFormat.inches(16);
        assertThat(sixteenths.format(Length.parse("4 1/32 in"))).isEqualTo("4 1/16\"");
        assertThat(sixteenths.format(Length.parse("4.03124 in"))).isEqualTo("4\"");
    }

    // simetric.co.uk, metres to feet (read in a copy): 4.382 in is a bit over 4 3/8 in.
    @Test
    void decimalInchesToEighths() {
        TapeReading reading = TapeFormat.inches(8).read(Length.parse("4.382 in"));
        assertThat(reading.text()).isEqualTo("4 3/8\"");
        assertThat(reading.remainder()).isEqualTo(Length.parse("0.007 in"));
    }

    // A pole-building construction manual (read in quotation): the diagonal of 50 by 84 ft is 97.754795 ft, and that is
    // 97 ft 9 1/16 in.
    @Test
    void diagonalOfALargeBuilding() {
        assertThat(TapeFormat.feetAndInches(16).format(Length.parse("97.754795 ft")))
                .isEqualTo("97' 9 1/16\"");
    }
}
