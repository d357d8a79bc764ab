package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SlopeTest {

    private static final Slope ONE_IN_FIVE = Slope.of(Length.ofFeet(1), Length.ofFeet(5));

    @Test
    void oneGradeInEachWayOfWritingIt() {
        assertThat(ONE_IN_FIVE.percent()).isEqualTo(20);
        assertThat(ONE_IN_FIVE.ratio()).isEqualTo(Ratio.of(0.2));
        assertThat(ONE_IN_FIVE.angle().degrees()).isCloseTo(11.309932474, within(1e-9));
        assertThat(ONE_IN_FIVE.risePerFoot()).isEqualTo(Length.ofInches(2.4));
        assertThat(ONE_IN_FIVE.runPerRise()).isEqualTo(5);
    }

    @Test
    void oneGradeFromEachWayOfWritingIt() {
        assertThat(Slope.ofPercent(20)).isEqualTo(ONE_IN_FIVE);
        assertThat(Slope.ofRisePerFoot(Length.ofInches(2.4))).isEqualTo(ONE_IN_FIVE);
        assertThat(Slope.ofOneIn(5)).isEqualTo(ONE_IN_FIVE);
        assertThat(Slope.ofAngle(Angle.ofRadians(Math.atan(0.2))).percent()).isCloseTo(20, within(1e-13));
    }

    @Test
    void aSignStandsBeforeAVulgarFractionToo() {
        assertThat(Slope.parse("-½ in/ft")).isEqualTo(Slope.ofRisePerFoot(Length.ofInches(-0.5)));
        assertThat(Slope.parse("½ in/ft")).isEqualTo(Slope.ofRisePerFoot(Length.ofInches(0.5)));
    }

    @Test
    void riseAndLengthOverALevelRun() {
        Slope threeInFour = Slope.of(Length.ofFeet(3), Length.ofFeet(4));
        assertThat(threeInFour.riseOver(Length.ofFeet(8))).isEqualTo(Length.ofFeet(6));
        assertThat(threeInFour.lengthOver(Length.ofFeet(8))).isEqualTo(Length.ofFeet(10));
        assertThat(threeInFour.stretch()).isEqualTo(Ratio.of(1.25));
        assertThat(threeInFour.negated().riseOver(Length.ofFeet(8))).isEqualTo(Length.ofFeet(-6));
        assertThat(threeInFour.negated().lengthOver(Length.ofFeet(8))).isEqualTo(Length.ofFeet(10));
    }

    @Test
    void levelHasNoRise() {
        assertThat(Slope.LEVEL.riseOver(Length.ofFeet(100))).isEqualTo(Length.ZERO);
        assertThat(Slope.LEVEL.stretch()).isEqualTo(Ratio.of(1));
        assertThat(Slope.LEVEL.runPerRise()).isInfinite();
    }

    @Test
    void refusesAPlumbLine() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Slope.of(Length.ofFeet(1), Length.ZERO))
                .withMessage("run was 0 in; it must be over 0, since a plumb line has no grade");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Slope.of(Length.ofFeet(1), Length.ofInches(-1)))
                .withMessageContaining("run was -1 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Slope.ofAngle(Angle.RIGHT))
                .withMessage("angle was 90°; it must be between -90 and 90 deg");
        assertThatIllegalArgumentException().isThrownBy(() -> Slope.ofOneIn(0)).withMessageContaining("run was 0.0");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "20 %",
                "20%",
                "20.0 percent",
                "+20 %",
                "2.4 in/ft",
                "2.4\" / ft",
                "2.4 in per foot",
                "2 2/5 in/ft",
                "2⅖\"/'",
                "0.2 ft/ft",
                "200 mm/m",
                "20 cm per metre",
                "1:5",
                "1 : 5",
                "1 in 5",
                "1 IN 5",
                "1 in 5.0"
            })
    void readsOneInFive(String text) {
        assertThat(Slope.parse(text)).isEqualTo(ONE_IN_FIVE);
    }

    @Test
    void readsAnglesAndFalls() {
        assertThat(Slope.parse("11.3 deg")).isEqualTo(Slope.ofAngle(Angle.ofDegrees(11.3)));
        assertThat(Slope.parse("11°18'")).isEqualTo(Slope.ofAngle(Angle.ofDms(11, 18, 0)));
        assertThat(Slope.parse("-11.3°")).isEqualTo(Slope.ofAngle(Angle.ofDegrees(-11.3)));
        assertThat(Slope.parse("-20 %")).isEqualTo(ONE_IN_FIVE.negated());
        assertThat(Slope.parse("-1:5")).isEqualTo(ONE_IN_FIVE.negated());
        assertThat(Slope.parse("-2.4 in/ft")).isEqualTo(ONE_IN_FIVE.negated());
        assertThat(Slope.parse("½ in/ft")).isEqualTo(Slope.ofRisePerFoot(Length.ofInches(0.5)));
        assertThat(Slope.parse("0 %")).isEqualTo(Slope.LEVEL);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "20        | 3 | a unit such as ', \", ft, in, mm or m",
                "2.4 in    | 7 | \"/ft\" or \"per ft\" after a rise",
                "2.4 in ft | 8 | \"/ft\" or \"per ft\" after a rise",
                "2.4 in/yd | 8 | \"ft\" or \"m\"",
                "2.4 in/   | 8 | \"ft\" or \"m\"",
                "1 in. 5   | 7 | \"/ft\" or \"per ft\" after a rise",
                "2:1       | 1 | 1, as in 1:5, since a grade such as 2:1 is read both ways",
                "2 in 12   | 1 | 1, as in 1:5, since a grade such as 2:1 is read both ways",
                "1:0       | 3 | a run over 0",
                "1:-5      | 3 | the run for a rise of 1",
                "1 in 5 ft | 8 | the end of the slope",
                "20 % x    | 6 | the end of the slope",
                "90°       | 1 | an angle between -90 and 90 degrees",
                "-90°      | 1 | an angle between -90 and 90 degrees",
                "20,5 %    | 3 | a decimal point, and no commas",
                "steep     | 1 | a number, as in 20 %, 11.3 deg, 2.4 in/ft or 1:5",
            })
    void refusesWithTextColumnAndWhatWasExpected(String text, int column, String expected) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Slope.parse(text))
                .withMessageContaining("slope \"" + text + "\" cannot be read: at column " + column + " ")
                .withMessageEndingWith("; expected " + expected);
    }

    @Test
    void writesPercent() {
        assertThat(ONE_IN_FIVE).hasToString("20 %");
        assertThat(Slope.ofPercent(7)).hasToString("7 %");
        assertThat(Slope.ofPercent(-8.333)).hasToString("-8.333 %");
        assertThat(Slope.LEVEL).hasToString("0 %");
    }
}
