package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** A length among the quantities of a JSR-385 implementation. */
class LengthQuantityTest {

    private static final Length FIVE_AND_A_HALF = Length.ofInches(5.5);
    private static final Unit<javax.measure.quantity.Length> MILLIMETRE = MetricPrefix.MILLI(Units.METRE);
    private static final Unit<javax.measure.quantity.Length> MILE = TradeUnits.FOOT.multiply(5280);

    private static ComparableQuantity<javax.measure.quantity.Length> inches(Number value) {
        return Quantities.getQuantity(value, TradeUnits.INCH);
    }

    static Stream<Arguments> lengthsOfOtherCode() {
        List<Number> elevenHalves =
                List.of(5.5, 5.5f, new BigDecimal("5.5"), new BigDecimal("5.500"), RationalNumber.of(11, 2));
        List<Number> sevens = List.of(7, 7L, (short) 7, (byte) 7, BigInteger.valueOf(7), 7.0, new BigDecimal("7"));
        return Stream.concat(
                elevenHalves.stream()
                        .flatMap(value -> Stream.of(
                                Arguments.of(value, TradeUnits.INCH, "5.5 in"),
                                Arguments.of(value, TradeUnits.FOOT, "5.5 ft"),
                                Arguments.of(value, MILE, "29040 ft"),
                                Arguments.of(value, MILLIMETRE, "5.5 mm"),
                                Arguments.of(value, TradeUnits.US_SURVEY_FOOT, "5.5 US survey ft"))),
                sevens.stream()
                        .flatMap(value -> Stream.of(
                                Arguments.of(value, TradeUnits.INCH, "7 in"),
                                Arguments.of(value, TradeUnits.YARD, "7 yd"),
                                Arguments.of(value, TradeUnits.ROD, "7 rods"),
                                Arguments.of(value, TradeUnits.LINK, "7 links"),
                                Arguments.of(value, TradeUnits.CHAIN, "7 chains"),
                                Arguments.of(value, MILE, "36960 ft"),
                                Arguments.of(value, Units.METRE, "7 m"),
                                Arguments.of(value, TradeUnits.NANOMETRE, "0.000007 mm"))));
    }

    @ParameterizedTest
    @MethodSource("lengthsOfOtherCode")
    void takesALengthInAnyUnitAndKindOfNumber(Number value, Unit<javax.measure.quantity.Length> unit, String expected) {
        assertThat(Length.from(Quantities.getQuantity(value, unit))).isEqualTo(Length.parse(expected));
    }

    @Test
    void roundsToTheNearestNanometreOnTheWayIn() {
        assertThat(Length.from(inches(RationalNumber.of(1, 3)))).isEqualTo(Length.parse("1/3 in"));
        assertThat(Length.from(inches(RationalNumber.of(-1, 3)))).isEqualTo(Length.parse("-1/3 in"));
        assertThat(Length.from(Quantities.getQuantity(0.5, TradeUnits.NANOMETRE))
                        .nanometres())
                .isEqualTo(1);
        assertThat(Length.from(Quantities.getQuantity(-0.5, TradeUnits.NANOMETRE))
                        .nanometres())
                .isEqualTo(-1);
        assertThat(Length.from(Quantities.getQuantity(499, MetricPrefix.PICO(Units.METRE)))
                        .nanometres())
                .isZero();
    }

    @Test
    void aLengthComesInAsItself() {
        assertThat(Length.from(FIVE_AND_A_HALF)).isSameAs(FIVE_AND_A_HALF);
    }

    @Test
    void refusesWhatIsNoNumberOrTooLarge() {
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Length.from(Quantities.getQuantity(1e20, Units.METRE)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.from(Quantities.getQuantity(Double.NaN, TradeUnits.NANOMETRE)))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.from(inches(Double.POSITIVE_INFINITY)))
                .withMessageContaining("Infinity");
    }

    @Test
    void convertsExactly() {
        assertThat(FIVE_AND_A_HALF.to(TradeUnits.INCH).getUnit()).isEqualTo(TradeUnits.INCH);
        assertThat(FIVE_AND_A_HALF.to(TradeUnits.INCH).getValue().doubleValue()).isEqualTo(5.5);
        assertThat(FIVE_AND_A_HALF.to(TradeUnits.INCH).getValue()).isEqualTo(RationalNumber.of(11, 2));
        assertThat(FIVE_AND_A_HALF.to(TradeUnits.FOOT).getValue()).isEqualTo(RationalNumber.of(11, 24));
        assertThat(FIVE_AND_A_HALF.to(MILLIMETRE).getValue().doubleValue()).isEqualTo(139.7);
        assertThat(Length.ofMetres(1200)
                        .to(TradeUnits.US_SURVEY_FOOT)
                        .getValue()
                        .intValue())
                .isEqualTo(3937);
    }

    @Test
    void isALengthInOtherCodesArithmetic() {
        assertThat(Length.from(inches(1).add(FIVE_AND_A_HALF))).isEqualTo(Length.ofInches(6.5));
        assertThat(Length.from(inches(1.5).add(FIVE_AND_A_HALF))).isEqualTo(Length.ofInches(7));
        assertThat(Length.from(inches(10).subtract(FIVE_AND_A_HALF))).isEqualTo(Length.ofInches(4.5));
        assertThat(inches(5.5).compareTo(FIVE_AND_A_HALF)).isZero();
        assertThat(inches(5.6).compareTo(FIVE_AND_A_HALF)).isPositive();
        assertThat(inches(5.4).isLessThan(FIVE_AND_A_HALF)).isTrue();
        assertThat(inches(5.5).isEquivalentTo(FIVE_AND_A_HALF)).isTrue();
        assertThat(inches(5.6).isEquivalentTo(FIVE_AND_A_HALF)).isFalse();
        Area area = Area.from(inches(2).multiply(FIVE_AND_A_HALF).asType(javax.measure.quantity.Area.class));
        assertThat(area.squareInches()).isCloseTo(11, within(1e-13));
        Ratio ratio = Ratio.from(inches(11).divide(FIVE_AND_A_HALF).asType(javax.measure.quantity.Dimensionless.class));
        assertThat(ratio).isEqualTo(Ratio.of(2));
    }

    @Test
    void takesOtherQuantitiesInItsOwnArithmetic() {
        Quantity<javax.measure.quantity.Length> length = FIVE_AND_A_HALF;
        assertThat(length.add(inches(1))).isEqualTo(Length.ofInches(6.5));
        assertThat(length.subtract(inches(1))).isEqualTo(Length.ofInches(4.5));
        assertThat(length.negate()).isEqualTo(Length.ofInches(-5.5));
        assertThat(length.multiply(2)).isEqualTo(Length.ofInches(11));
        assertThat(length.multiply(0.5)).isEqualTo(Length.ofInches(2.75));
        assertThat(length.divide(RationalNumber.of(1, 2))).isEqualTo(Length.ofInches(11));
        assertThat(length.divide(3)).isEqualTo(FIVE_AND_A_HALF.dividedBy(3));
        assertThat(length.isEquivalentTo(inches(5.5))).isTrue();
        assertThat(length.isEquivalentTo(inches(5.6))).isFalse();
        assertThat(Ratio.from(length.divide(inches(2)).asType(javax.measure.quantity.Dimensionless.class)))
                .isEqualTo(Ratio.of(2.75));
        assertThat(Area.from(length.multiply(inches(2)).asType(javax.measure.quantity.Area.class))
                        .squareInches())
                .isCloseTo(11, within(1e-13));
        assertThat(length.inverse().multiply(length).getValue().intValue()).isEqualTo(1);
        assertThat(Length.from(length.asType(javax.measure.quantity.Length.class)))
                .isEqualTo(FIVE_AND_A_HALF);
        assertThatExceptionOfType(ClassCastException.class)
                .isThrownBy(() -> length.asType(javax.measure.quantity.Mass.class));
    }

    @Test
    void isANumberOfNanometres() {
        assertThat(FIVE_AND_A_HALF.getValue()).isEqualTo(139_700_000);
        assertThat(FIVE_AND_A_HALF.getUnit()).isEqualTo(TradeUnits.NANOMETRE);
        assertThat(FIVE_AND_A_HALF.getScale()).isEqualTo(Quantity.Scale.ABSOLUTE);
        assertThat(FIVE_AND_A_HALF.toSystemUnit().getValue().doubleValue()).isEqualTo(0.1397);
    }
}
