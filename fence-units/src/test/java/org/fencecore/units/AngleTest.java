package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AngleTest {

    @Test
    void degreesMinutesAndSecondsOfThePlat() {
        assertThat(Angle.ofDms(45, 30, 15).degrees()).isCloseTo(45.5041666667, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "45°30'15\"",
                "45° 30' 15\"",
                "45°30′15″",
                "45°30’15”",
                "45º30‘15“",
                "45-30-15",
                "45–30–15",
                "45°-30'-15\"",
                "45 deg 30 min 15 sec",
                "45 DEG. 30 MIN. 15 SEC.",
                "45 degrees 30 minutes 15 seconds",
                " +45°30'15.0\" ",
            })
    void readsTheSpellingsOfOneAngle(String text) {
        assertThat(Angle.parse(text)).isEqualTo(Angle.ofDms(45, 30, 15));
    }

    @Test
    void readsOnlyDegreesOrMinutesToo() {
        assertThat(Angle.parse("45°")).isEqualTo(Angle.ofDegrees(45));
        assertThat(Angle.parse("45°30'")).isEqualTo(Angle.ofDms(45, 30, 0));
        assertThat(Angle.parse("45°30'15.5\"")).isEqualTo(Angle.ofDms(45, 30, 15.5));
        assertThat(Angle.parse("45°30.25'")).isEqualTo(Angle.ofDms(45, 30, 15));
        assertThat(Angle.parse("45-00-00")).isEqualTo(Angle.ofDegrees(45));
        assertThat(Angle.parse("11.3 deg")).isEqualTo(Angle.ofDegrees(11.3));
        assertThat(Angle.parse(".5°")).isEqualTo(Angle.ofDegrees(0.5));
        assertThat(Angle.parse("-45°30'")).isEqualTo(Angle.ofDms(45, 30, 0).negated());
        assertThat(Angle.parse("−0-30-00")).isEqualTo(Angle.ofDegrees(-0.5));
        assertThat(Angle.parse("372°")).isEqualTo(Angle.ofDegrees(372));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "45            | 3  | a degree sign or \"deg\"",
                "45.5          | 5  | a degree sign or \"deg\"",
                "45 30 15      | 4  | a degree sign or \"deg\"",
                "45-30         | 6  | a hyphen and seconds, as in 45-30-15",
                "45-30.5-15    | 8  | a hyphen and seconds, as in 45-30-15",
                "45-60-00      | 4  | whole minutes from 0 to 59",
                "45-30-60      | 7  | seconds from 0 to under 60",
                "45-30-15\"    | 9  | the end of the angle",
                "45°60'        | 4  | minutes from 0 to under 60",
                "45°30'60\"    | 7  | seconds from 0 to under 60",
                "45°30         | 6  | a minute mark (') or \"min\"",
                "45°30\"       | 6  | a minute mark (') or \"min\"",
                "45°30'15      | 9  | a second mark (\") or \"sec\"",
                "45°30'15'     | 9  | a second mark (\") or \"sec\"",
                "45.5°30'      | 6  | the end of the angle",
                "45°30.5'15\"  | 9  | the end of the angle",
                "45° -30'      | 5  | the end of the angle",
                "45,5°         | 3  | a decimal point, and no commas",
                "45.°          | 4  | a digit after the decimal point",
                "--45°         | 2  | degrees such as 45°30'15\", 45-30-15, 45.5° or 45.5 deg",
                "N 45°         | 1  | degrees such as 45°30'15\", 45-30-15, 45.5° or 45.5 deg",
                "45°x          | 4  | the end of the angle",
            })
    void refusesWithTextColumnAndWhatWasExpected(String text, int column, String expected) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Angle.parse(text))
                .withMessageContaining("angle \"" + text + "\" cannot be read: at column " + column + " ")
                .withMessageEndingWith("; expected " + expected);
    }

    @Test
    void refusesEmptyAndOverlongTexts() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Angle.parse(""))
                .withMessageContaining("at column 1 the text ends");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Angle.parse("1".repeat(64) + "°"))
                .withMessageContaining("has 65 characters; it must have 64 or fewer");
    }

    @Test
    void writesAsAPlatWhereThatIsExact() {
        assertThat(Angle.ofDms(45, 30, 15)).hasToString("45°30'15\"");
        assertThat(Angle.ofDms(45, 3, 5.25)).hasToString("45°03'05.25\"");
        assertThat(Angle.ofDms(45, 0, 15)).hasToString("45°00'15\"");
        assertThat(Angle.ofDms(45, 0, 10)).hasToString("45°00'10\"");
        assertThat(Angle.ofDms(45, 30, 0)).hasToString("45°30'");
        assertThat(Angle.RIGHT).hasToString("90°");
        assertThat(Angle.ZERO).hasToString("0°");
        assertThat(Angle.ofDegrees(-0.5)).hasToString("-0°30'");
        assertThat(Angle.ofTangent(Length.ofFeet(1), Length.ofFeet(5))).hasToString("11.309932474020215°");
    }

    @Test
    void sinesOfTheKnownTriangles() {
        assertThat(Angle.ofDegrees(30).sin()).isCloseTo(0.5, within(1e-15));
        assertThat(Angle.ofDegrees(60).cos()).isCloseTo(0.5, within(1e-15));
        assertThat(Angle.ofDegrees(45).tan()).isCloseTo(1, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "360, 0", "-90, 270", "450, 90", "-720, 0", "-1e-18, 0"})
    void oneTurnHoldsEveryDirection(double degrees, double normalized) {
        assertThat(Angle.ofDegrees(degrees).normalized().degrees()).isCloseTo(normalized, within(1e-12));
    }

    @Test
    void takesMinutesAndSecondsUnderSixty() {
        assertThat(Angle.ofDms(0, 59, 59.5).degrees()).isCloseTo(1 - 0.5 / 3600, within(1e-15));
        assertThat(Angle.ofDms(0, 0, 0)).isEqualTo(Angle.ZERO);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Angle.ofDms(5, 60, 0))
                .withMessageStartingWith("angle was 5 deg 60 min 0.0 sec; use degrees of 0 or more, minutes 0 to 59");
        assertThatIllegalArgumentException().isThrownBy(() -> Angle.ofDms(5, 0, 60));
        assertThatIllegalArgumentException().isThrownBy(() -> Angle.ofDms(5, -1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Angle.ofDms(-1, 0, 0));
    }
}
