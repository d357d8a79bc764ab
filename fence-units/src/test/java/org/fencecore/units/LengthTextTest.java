package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading and writing of lengths. */
class LengthTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "5 1/2\"",
                "5-1/2 in",
                "5½ in",
                "5½\"",
                "5 ½ in",
                "5-½″",
                "5.5 in",
                "5.50\"",
                "5 1/2 inches",
                "5 1/2 IN.",
                "5 2/4 inch",
                "5 1⁄2”",
                "5 1/2“",
                " +5 1/2\" ",
                "5\u00a01/2\u2009in",
                "5‑1/2 in",
                "0' 5 1/2\"",
                "139.7 mm",
                "13.97 cm",
                "0.1397 m",
                "0.1397 metres",
                "139.7 millimeters"
            })
    void readsFiveAndAHalfInches(String text) {
        assertThat(Length.parse(text)).isEqualTo(Length.ofInches(5.5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "6' 2 3/4\"", "6'2 3/4\"", "6'-2 3/4\"", "6' - 2 3/4\"", "6'-2-3/4\"", "6' 2¾\"", "6' 2.75\"",
                "6′ 2 3/4″", "6’ 2 3/4”", "6‘ 2 3/4“", "6′–2¾″", "6 ft 2-3/4 in", "6 ft. 2-3/4 in.", "6ft2¾in",
                "6 ft-2 3/4 in", "6 feet 2 3/4 inches", "6 foot 2 3/4 inch", "6 FT 2 3/4 IN", "74 3/4\"", "74.75 in"
            })
    void readsSixFeetTwoAndThreeQuarterInches(String text) {
        assertThat(Length.parse(text)).isEqualTo(Length.ofFeetAndInches(6, 2.75));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "6'                  | 1828800000",
                "6' 0\"              | 1828800000",
                "6' 1/2\"            | 1841500000",
                "6 1/2 ft            | 1981200000",
                "6' .5\"             | 1841500000",
                "1/2\"               | 12700000",
                "⅞ in                | 22225000",
                "1/64 in             | 396875",
                "-6' 2 3/4\"         | -1898650000",
                "−1/16\"             | -1587500",
                "0 in                | 0",
                "-0\"                | 0",
                "12.55 ft            | 3825240000",
                "76.85 feet          | 23423880000",
                "1829 mm             | 1829000000",
                "0.30 m              | 300000000",
                "30 cm               | 300000000",
                "2 yd                | 1828800000",
                "1 rod               | 5029200000",
                "1.5 chains          | 30175200000",
                "1 chain 50 links    | 30175200000",
                "1 ch. 50 lks.       | 30175200000",
                "50 links            | 10058400000",
                "3937 US survey ft   | 1200000000000",
                "12.5 U.S. survey ft | 3810007620",
                "1 us survey foot    | 304800610",
                "1 1/2 US Survey Feet| 457200914",
                // 66, 16.5 and 0.66 survey feet of 1200/3937 m.
                "3937 US survey chains | 79200000000000",
                "1 US survey chain   | 20116840234",
                "1 US survey rod     | 5029210058",
                "12.5 US survey lks. | 2514605029",
                // One third of an inch is 8,466,666.67 nm, one sixth of a foot and two thirds of an inch 67,733,333.33.
                "1/3 in              | 8466667",
                "2 2/3\"             | 67733333",
                "-1/3 in             | -8466667",
                // A half nanometre goes away from zero.
                "0.0000005 mm        | 1",
                "-0.0000005 mm       | -1",
                "0.00000049999999 mm | 0",
                "9223372036854.775807 mm  | 9223372036854775807",
                "-9223372036854.775808 mm | -9223372036854775808",
            })
    void readsExactly(String text, long nanometres) {
        assertThat(Length.parse(text).nanometres()).isEqualTo(nanometres);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                // A number needs its unit.
                "10'6           | 5  | an inch mark (\") or \"in\"",
                "10' 6 ft       | 7  | an inch mark (\") or \"in\"",
                "6' 2'          | 5  | an inch mark (\") or \"in\"",
                "10 chains 5 ft | 13 | \"links\"",
                "46             | 3  | a unit such as ', \", ft, in, mm or m",
                "46 3/4         | 7  | a unit such as ', \", ft, in, mm or m",
                "6 2            | 3  | a unit such as ', \", ft, in, mm or m",
                "6 pigs         | 3  | a unit such as ', \", ft, in, mm or m",
                "6 survey ft    | 3  | a unit such as ', \", ft, in, mm or m",
                "6 US ft        | 6  | \"survey ft\" after US",
                "6 US survey in | 13 | \"ft\", \"rods\", \"chains\" or \"links\" after US survey",
                "6 US survey '  | 13 | \"ft\", \"rods\", \"chains\" or \"links\" after US survey",
                // Inches of a foot or more.
                "6' 14\"        | 4  | a number under 12, as the second of feet and inches",
                "6' 12\"        | 4  | a number under 12, as the second of feet and inches",
                "6 ft 12.0 in   | 6  | a number under 12, as the second of feet and inches",
                "1 ch 100 lks   | 6  | a number under 100, as the second of chains and links",
                "6.5' 3\"       | 1  | a whole number, as the first of feet and inches",
                "6 1/2' 3\"     | 1  | a whole number, as the first of feet and inches",
                // Fractions.
                "5 6/4\"        | 3  | a fraction under 1, its top smaller than its bottom",
                "51/2\"         | 1  | a fraction under 1, its top smaller than its bottom",
                "4/4\"          | 1  | a fraction under 1, its top smaller than its bottom",
                "5 1/0\"        | 3  | a fraction under 1, its top smaller than its bottom",
                "0/0\"          | 1  | a fraction under 1, its top smaller than its bottom",
                "5 1/\"         | 5  | the bottom of a fraction",
                "5 1/-2\"       | 5  | the bottom of a fraction",
                "5.5 1/2\"      | 5  | a unit such as ', \", ft, in, mm or m",
                "5 1.5/2\"      | 3  | a unit such as ', \", ft, in, mm or m",
                "5 1/2.5\"      | 6  | a unit such as ', \", ft, in, mm or m",
                "5 1/2/4\"      | 6  | a unit such as ', \", ft, in, mm or m",
                "5½ 1/2\"       | 4  | a unit such as ', \", ft, in, mm or m",
                "½½\"           | 2  | a unit such as ', \", ft, in, mm or m",
                "5 - 1/2\"      | 3  | a unit such as ', \", ft, in, mm or m",
                "5 -1/2\"       | 3  | a unit such as ', \", ft, in, mm or m",
                "5-3\"          | 2  | a unit such as ', \", ft, in, mm or m",
                // Decimals.
                "5,5 m          | 2  | a decimal point, and no commas",
                "1,829 mm       | 2  | a decimal point, and no commas",
                "5. in          | 3  | a digit after the decimal point",
                "1.2.3 m        | 4  | a unit such as ', \", ft, in, mm or m",
                "1e3 mm         | 2  | a unit such as ', \", ft, in, mm or m",
                "5 ft.5 in      | 6  | a blank between the unit and the number",
                // Signs.
                "- 5 in         | 2  | a number such as 5, 5.5, 5 1/2 or 1/2",
                "--5 in         | 2  | a number such as 5, 5.5, 5 1/2 or 1/2",
                "+-5 in         | 2  | a number such as 5, 5.5, 5 1/2 or 1/2",
                "6' -2\"        | 4  | the end of the length",
                "6'- 2\"        | 3  | the end of the length",
                "6 ft - 2 in    | 6  | the end of the length",
                "6' --2\"       | 4  | the end of the length",
                // More than one length.
                "5\" 6'         | 4  | the end of the length",
                "5\" 6\"        | 4  | the end of the length",
                "5''            | 3  | the end of the length",
                "5 in x         | 6  | the end of the length",
                "1 m 20 cm      | 5  | the end of the length",
                "6' 2\" 3/4     | 7  | the end of the length",
                // Not a number at all.
                "in             | 1  | a number such as 5, 5.5, 5 1/2 or 1/2",
                "\"             | 1  | a number such as 5, 5.5, 5 1/2 or 1/2",
                "٣ in           | 1  | a number such as 5, 5.5, 5 1/2 or 1/2",
                "9223372036854.775808 mm | 1 | a length within 9,000,000 km of zero",
                "-9223372036854775809 m  | 2 | a length within 9,000,000 km of zero",
            })
    void refusesWithTextColumnAndWhatWasExpected(String text, int column, String expected) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(text))
                .withMessageContaining("length \"" + text + "\" cannot be read: at column " + column + " ")
                .withMessageEndingWith("; expected " + expected);
    }

    @Test
    void refusalShowsWhatStandsThere() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("10'6"))
                .withMessage("length \"10'6\" cannot be read: at column 5 the text ends;"
                        + " expected an inch mark (\") or \"in\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("5\u200bin"))
                .withMessageContaining("at column 2 stands U+200B; expected a unit");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("5\nin"))
                .withMessageContaining("length \"5?in\" cannot be read: at column 2 stands U+000A");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(" "))
                .withMessageContaining("at column 2 the text ends; expected a number");
    }

    @Test
    void refusesOverlongTexts() {
        String longest = "0".repeat(61) + "5in";
        assertThat(Length.parse(longest)).isEqualTo(Length.ofInches(5));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse("0" + longest))
                .withMessage("length \"00000000000000000000...\" has 65 characters; it must have 64 or fewer");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "1898650000  | 6 ft 2 3/4 in",
                "1187450000  | 3 ft 10 3/4 in",
                "1828800000  | 6 ft",
                "1841500000  | 6 ft 1/2 in",
                "139700000   | 5 1/2 in",
                "396875      | 1/64 in",
                "-396875     | -1/64 in",
                "-1898650000 | -6 ft 2 3/4 in",
                "0           | 0 in",
                "1829000000  | 1829 mm",
                "100000000000| 100000 mm",
                "-1          | -0.000001 mm",
                "25400001    | 25.400001 mm",
                "-9223372036854775808 | -9223372036854.775808 mm",
            })
    void writesInInchesWhereExactAndElseInMillimetres(long nanometres, String text) {
        assertThat(Length.ofNanometres(nanometres)).hasToString(text);
    }
}
