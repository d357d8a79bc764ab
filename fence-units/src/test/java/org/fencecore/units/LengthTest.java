package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

    private static final Length LONGEST = Length.ofNanometres(Long.MAX_VALUE);

    @Test
    void exampleOfTheClass() {
        assertThat(Length.ofInches(47.5).minus(Length.ofInches(0.75))).isEqualTo(Length.parse("46 3/4 in"));
    }

    @Test
    void exampleOfThePackage() {
        Length clear = Length.parse("8 ft").minus(Length.parse("3 1/2 in"));
        assertThat(clear).hasToString("7 ft 8 1/2 in");
        Slope grade = Slope.parse("1:12");
        assertThat(grade.percent()).isCloseTo(8.333, within(1e-3));
        assertThat(grade.riseOver(Length.parse("8 ft"))).hasToString("8 in");
    }

    @Test
    void eachUnitIsItsSize() {
        assertThat(Length.ofMillimetres(25.4).nanometres()).isEqualTo(25_400_000);
        assertThat(Length.ofInches(1).nanometres()).isEqualTo(25_400_000);
        assertThat(Length.ofInches(1 / 64.0).nanometres()).isEqualTo(396_875);
        assertThat(Length.ofFeet(1).nanometres()).isEqualTo(304_800_000);
        assertThat(Length.ofFeet(76.85)).isEqualTo(Length.parse("76.85 ft"));
        assertThat(Length.ofMetres(0.1)).isEqualTo(Length.ofMillimetres(100));
        assertThat(Length.ofFeetAndInches(6, 2.75)).isEqualTo(Length.ofInches(74.75));
        assertThat(Length.ofSurveyFeet(1).nanometres()).isEqualTo(304_800_610);
    }

    @Test
    void givesBackWhatWasPutIn() {
        assertThat(Length.ofMillimetres(1829).millimetres()).isEqualTo(1829);
        assertThat(Length.ofMetres(23.42).metres()).isEqualTo(23.42);
        assertThat(Length.ofInches(5.5).inches()).isEqualTo(5.5);
        assertThat(Length.ofFeet(12.55).feet()).isEqualTo(12.55);
        assertThat(Length.ofSurveyFeet(12.55).surveyFeet()).isCloseTo(12.55, within(1e-8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 9.3e9, -9.3e9})
    void refusesWhatALengthCannotHold(double metres) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofMetres(metres))
                .withMessage("length was " + metres + " m; it must be a finite number within 9,000,000 km of zero");
    }

    @Test
    void smallestFiniteNumbersAreNoLength() {
        assertThat(Length.ofMetres(Double.MIN_VALUE)).isEqualTo(Length.ZERO);
        assertThat(Length.ofMetres(-0.0)).isEqualTo(Length.ZERO);
    }

    @Test
    void picketsAddUpWithoutDrift() {
        Length sum = Length.ZERO;
        for (int picket = 0; picket < 10_000; picket++) {
            sum = sum.plus(Length.ofInches(5.6));
        }
        assertThat(sum)
                .isEqualTo(Length.ofInches(56_000))
                .isEqualTo(Length.ofInches(5.6).times(10_000));
    }

    @Test
    void scalesToTheNearestNanometre() {
        assertThat(Length.ofFeet(8).times(Ratio.of(0.25))).isEqualTo(Length.ofFeet(2));
        assertThat(Length.ofNanometres(10).times(Ratio.of(-0.26))).isEqualTo(Length.ofNanometres(-3));
        assertThat(Length.ofNanometres(10).dividedBy(3)).isEqualTo(Length.ofNanometres(3));
        assertThat(Length.ofNanometres(5).dividedBy(2)).isEqualTo(Length.ofNanometres(3));
        assertThat(Length.ofNanometres(-5).dividedBy(2)).isEqualTo(Length.ofNanometres(-3));
        assertThat(Length.ofNanometres(5).dividedBy(-2)).isEqualTo(Length.ofNanometres(-3));
        assertThat(Length.ofFeet(6).times(Length.ofFeet(8)).squareFeet()).isCloseTo(48, within(1e-12));
    }

    @Test
    void overflowIsAnErrorAndNeverAWrongNumber() {
        Length nanometre = Length.ofNanometres(1);
        Length least = Length.ofNanometres(Long.MIN_VALUE);
        assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> LONGEST.plus(nanometre));
        assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> least.minus(nanometre));
        assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> LONGEST.times(2));
        assertThatExceptionOfType(ArithmeticException.class).isThrownBy(least::negated);
        assertThatExceptionOfType(ArithmeticException.class).isThrownBy(least::abs);
        assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> nanometre.dividedBy(0));
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> LONGEST.roundedTo(Length.ofInches(1), Rounding.UP));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofMetres(9e9).times(Ratio.of(2)))
                .withMessage("length was 9000000000000 mm times 2; it must be within 9,000,000 km of zero");
    }

    @Test
    void marksOffEqualPartsWithoutAddingUpTheRounding() {
        Length run = Length.ofNanometres(100);
        // 100 / 7 = 14.29: 14.29, 28.57, 42.86, and the same from the far end.
        assertThat(LongStream.rangeClosed(0, 7).map(k -> run.portion(k, 7).nanometres()))
                .containsExactly(0L, 14L, 29L, 43L, 57L, 71L, 86L, 100L);
        assertThat(run.negated().portion(2, 7).nanometres()).isEqualTo(-29);
        // Half a nanometre goes to the end the mark is counted from; in the very middle, to the start.
        Length two = Length.ofNanometres(2);
        assertThat(two.portion(1, 4)).isEqualTo(Length.ZERO);
        assertThat(two.portion(3, 4)).isEqualTo(two);
        assertThat(Length.ofNanometres(101).portion(1, 2).nanometres()).isEqualTo(50);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-1, 3", "4, 3", "1, -1", "1, 3000000001"})
    void refusesMarksOutsideTheRun(long k, long n) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofFeet(8).portion(k, n))
                .withMessage("mark k was " + k + " of n = " + n + " parts; use n from 1 to 3,000,000,000 and k from 0"
                        + " to n");
    }

    @Test
    void countsWholePieces() {
        Length board = Length.ofFeet(8);
        assertThat(board.wholePieces(Length.ofInches(24))).isEqualTo(4);
        assertThat(board.wholePieces(Length.ofInches(24.01))).isEqualTo(3);
        assertThat(board.wholePieces(Length.ofFeet(9))).isZero();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> board.wholePieces(Length.ZERO))
                .withMessage("piece was 0 in; it must be over 0");
    }

    @Test
    void shareOfAnother() {
        assertThat(Length.ofInches(3).ratioTo(Length.ofFeet(1))).isEqualTo(Ratio.of(0.25));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofInches(3).ratioTo(Length.ZERO))
                .withMessageContaining("Infinity");
    }

    @ParameterizedTest
    @CsvSource({
        // 1/32 in lies half way between sixteenths.
        "5 1/32, NEAREST, 5 1/16",
        "-5 1/32, NEAREST, -5 1/16",
        "5.03, NEAREST, 5",
        "5 1/32, DOWN, 5",
        "-5 1/32, DOWN, -5 1/16",
        "5 1/64, UP, 5 1/16",
        "-5 1/64, UP, -5",
        "5 1/16, UP, 5 1/16",
        "5 1/16, DOWN, 5 1/16",
        "-5 1/16, NEAREST, -5 1/16",
    })
    void roundsToTheTape(String inches, Rounding rounding, String rounded) {
        Length sixteenth = Length.parse("1/16 in");
        assertThat(Length.parse(inches + " in").roundedTo(sixteenth, rounding))
                .isEqualTo(Length.parse(rounded + " in"));
    }

    @Test
    void refusesATapeWithoutMarks() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofFeet(1).roundedTo(Length.ofInches(-1), Rounding.NEAREST))
                .withMessage("increment was -1 in; it must be over 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofFeet(1).roundedTo(Length.ZERO, Rounding.NEAREST))
                .withMessage("increment was 0 in; it must be over 0");
    }

    @Test
    void comparesBySize() {
        Length inch = Length.ofInches(1);
        Length foot = Length.ofFeet(1);
        assertThat(inch).isLessThan(foot).isEqualByComparingTo(Length.ofMillimetres(25.4));
        assertThat(Length.min(inch, foot)).isEqualTo(Length.min(foot, inch)).isEqualTo(inch);
        assertThat(Length.max(inch, foot)).isEqualTo(Length.max(foot, inch)).isEqualTo(foot);
        assertThat(inch).isEqualTo(Length.ofMillimetres(25.4)).hasSameHashCodeAs(Length.ofMillimetres(25.4));
        assertThat(inch).isNotEqualTo(foot).doesNotHaveSameHashCodeAs(foot).isNotEqualTo("1 in");
    }

    @Test
    void knowsItsSign() {
        Length fall = Length.ofInches(-2);
        assertThat(fall.isNegative()).isTrue();
        assertThat(fall.isPositive()).isFalse();
        assertThat(fall.isZero()).isFalse();
        assertThat(fall.negated().isPositive()).isTrue();
        assertThat(fall.abs())
                .isEqualTo(Length.ofInches(2))
                .isEqualTo(Length.ofInches(2).abs());
        assertThat(Length.ZERO.isZero()).isTrue();
        assertThat(Length.ZERO.isNegative()).isFalse();
        assertThat(Length.ZERO.isPositive()).isFalse();
    }
}
