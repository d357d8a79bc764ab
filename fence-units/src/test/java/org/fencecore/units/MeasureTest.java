package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The amounts held as a number in their SI unit: their common arithmetic, their products and their exchange. */
class MeasureTest {

    private static final Offset<Double> EXACT_TO_A_DOUBLE = within(1e-12);

    @Test
    void addsScalesAndCompares() {
        Force ten = Force.ofNewtons(10);
        assertThat(ten.plus(Force.ofNewtons(2))).isEqualTo(Force.ofNewtons(12));
        assertThat(ten.minus(Force.ofNewtons(12))).isEqualTo(Force.ofNewtons(-2));
        assertThat(ten.times(1.5)).isEqualTo(Force.ofNewtons(15));
        assertThat(ten.times(Ratio.ofPercent(50))).isEqualTo(Force.ofNewtons(5));
        assertThat(ten.dividedBy(4)).isEqualTo(Force.ofNewtons(2.5));
        assertThat(ten.ratioTo(Force.ofNewtons(40))).isEqualTo(Ratio.of(0.25));
        assertThat(ten.negated()).isEqualTo(Force.ofNewtons(-10));
        assertThat(ten.negated().abs()).isEqualTo(ten);
        assertThat(ten).isGreaterThan(Force.ofNewtons(9.999)).isLessThan(Force.ofNewtons(10.001));
    }

    @Test
    void knowsItsSignAndItsEquals() {
        Force push = Force.ofNewtons(-3);
        assertThat(push.isNegative()).isTrue();
        assertThat(push.isPositive()).isFalse();
        assertThat(push.negated().isPositive()).isTrue();
        assertThat(push.isZero()).isFalse();
        assertThat(Force.ZERO.isPositive()).isFalse();
        assertThat(Force.ZERO.isNegative()).isFalse();
        assertThat(push.minus(push).isZero()).isTrue();
        assertThat(Force.ofNewtons(-0.0)).isEqualTo(Force.ZERO).hasSameHashCodeAs(Force.ZERO);
        assertThat((Object) Force.ofNewtons(1)).isNotEqualTo(Mass.ofKilograms(1));
        assertThat(Force.ofNewtons(1)).hasSameHashCodeAs(Force.ofNewtons(1)).isNotEqualTo(Force.ofNewtons(1.1));
        assertThat(Force.ofNewtons(1)).doesNotHaveSameHashCodeAs(Force.ofNewtons(1.1));
    }

    @Test
    void refusesWhatIsNotFinite() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Pressure.ofPsf(Double.NaN))
                .withMessage("Pressure was NaN; it must be a finite number");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Angle.ofDegrees(Double.POSITIVE_INFINITY))
                .withMessage("Angle was Infinity; it must be a finite number");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Force.ofNewtons(1).dividedBy(0))
                .withMessage("Force was Infinity; it must be a finite number");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Force.ofNewtons(1).ratioTo(Force.ZERO))
                .withMessage("Ratio was Infinity; it must be a finite number");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Volume.ofCubicMetres(1e308).times(10))
                .withMessageContaining("Infinity");
    }

    @Test
    void givesBackWhatWasPutIn() {
        assertThat(Area.ofSquareInches(144).squareFeet()).isCloseTo(1, EXACT_TO_A_DOUBLE);
        assertThat(Area.ofSquareFeet(3).squareInches()).isCloseTo(432, EXACT_TO_A_DOUBLE);
        assertThat(Area.ofSquareMetres(2).squareMetres()).isEqualTo(2);
        assertThat(Volume.ofCubicYards(1).cubicFeet()).isCloseTo(27, EXACT_TO_A_DOUBLE);
        assertThat(Volume.ofCubicFeet(54).cubicYards()).isCloseTo(2, EXACT_TO_A_DOUBLE);
        assertThat(Mass.ofPounds(80).pounds()).isCloseTo(80, EXACT_TO_A_DOUBLE);
        assertThat(Speed.ofMilesPerHour(115).milesPerHour()).isCloseTo(115, EXACT_TO_A_DOUBLE);
        assertThat(Speed.ofMetresPerSecond(30).metresPerSecond()).isEqualTo(30);
        assertThat(Pressure.ofPsi(1).psf()).isCloseTo(144, EXACT_TO_A_DOUBLE);
        assertThat(Pressure.ofPsf(288).psi()).isCloseTo(2, EXACT_TO_A_DOUBLE);
        assertThat(Pressure.ofPascals(7).pascals()).isEqualTo(7);
        assertThat(Moment.ofPoundFeet(1).poundInches()).isCloseTo(12, EXACT_TO_A_DOUBLE);
        assertThat(Moment.ofPoundInches(24).poundFeet()).isCloseTo(2, EXACT_TO_A_DOUBLE);
        assertThat(Moment.ofNewtonMetres(5).newtonMetres()).isEqualTo(5);
        assertThat(DegreeDays.ofFahrenheit(9).celsius()).isCloseTo(5, EXACT_TO_A_DOUBLE);
        assertThat(DegreeDays.ofCelsius(5).fahrenheit()).isCloseTo(9, EXACT_TO_A_DOUBLE);
        // 1.730735 W/(m K) in a BTU/(h ft degF), as handbooks of heating print it (from memory).
        assertThat(Conductivity.ofBtuPerHourFoot(1).wattsPerMetre()).isCloseTo(1.730735, within(5e-7));
        assertThat(Conductivity.ofWattsPerMetre(2).btuPerHourFoot()).isCloseTo(2 / 1.730735, within(5e-7));
        assertThat(UnitWeight.ofPcf(150).pcf()).isCloseTo(150, EXACT_TO_A_DOUBLE);
        assertThat(UnitWeight.ofNewtonsPerCubicMetre(9).newtonsPerCubicMetre()).isEqualTo(9);
        assertThat(Ratio.ofPercent(25).value()).isEqualTo(0.25);
        assertThat(Ratio.of(0.25).percent()).isEqualTo(25);
        assertThat(Angle.ofDegrees(180).radians()).isEqualTo(Math.PI);
    }

    // A 6 ft panel of 8 ft under 15 psf: 48 sq ft, 720 lbf, half way up 2,160 lbf-ft. Worked by hand.
    @Test
    void windOnAPanel() {
        Force wind = Pressure.ofPsf(15).times(Length.ofFeet(6).times(Length.ofFeet(8)));
        assertThat(wind.poundsForce()).isCloseTo(720, EXACT_TO_A_DOUBLE);
        assertThat(wind.times(Length.ofFeet(3)).poundFeet()).isCloseTo(2160, EXACT_TO_A_DOUBLE);
    }

    // A hole of 1 sq ft, 3 ft deep, of concrete of 150 pcf: 3 cu ft, 450 lbf; a soil that gains 150 psf for each foot
    // of
    // depth bears 450 psf there. Worked by hand.
    @Test
    void concreteInAHole() {
        Volume hole = Area.ofSquareFeet(1).times(Length.ofFeet(3));
        assertThat(hole.cubicFeet()).isCloseTo(3, EXACT_TO_A_DOUBLE);
        assertThat(UnitWeight.ofPcf(150).times(hole).poundsForce()).isCloseTo(450, EXACT_TO_A_DOUBLE);
        assertThat(UnitWeight.ofPcf(150).times(Length.ofFeet(3)).psf()).isCloseTo(450, EXACT_TO_A_DOUBLE);
    }

    @Test
    void writesTenDigitsForAReader() {
        assertThat(Ratio.of(0.1).plus(Ratio.of(0.2))).hasToString("0.3");
        assertThat(Area.ofSquareFeet(48)).hasToString("48 sq ft");
        assertThat(Volume.ofCubicFeet(1.5)).hasToString("1.5 cu ft");
        assertThat(Force.ofPoundsForce(-720)).hasToString("-720 lbf");
        assertThat(Moment.ofPoundFeet(2160)).hasToString("2160 lbf-ft");
        assertThat(DegreeDays.ofFahrenheit(2500)).hasToString("2500 degF d");
        assertThat(Conductivity.ofWattsPerMetre(1.35)).hasToString("1.35 W/(m K)");
        assertThat(Pressure.ofPsf(20.1)).hasToString("20.1 psf");
        assertThat(Mass.ofPounds(80)).hasToString("80 lb");
        assertThat(UnitWeight.ofPcf(150)).hasToString("150 pcf");
        assertThat(Speed.ofMilesPerHour(115)).hasToString("115 mph");
        assertThat(Force.ZERO).hasToString("0 lbf");
        assertThat(Ratio.of(1 / 3.0)).hasToString("0.3333333333");
        assertThat(Ratio.of(12_345_678_901.5)).hasToString("12345678900");
        // No exponents, so that twenty decimals are the end.
        assertThat(Ratio.of(1.23456e-18)).hasToString("0.00000000000000000123");
        assertThat(Ratio.of(1e-300)).hasToString("0");
    }

    @Test
    void takesQuantitiesOfOtherCode() {
        assertThat(Area.from(Quantities.getQuantity(2, Units.SQUARE_METRE))).isEqualTo(Area.ofSquareMetres(2));
        assertThat(Volume.from(Quantities.getQuantity(2, Units.LITRE)).cubicMetres())
                .isEqualTo(0.002);
        assertThat(Mass.from(Quantities.getQuantity(80, TradeUnits.POUND)).pounds())
                .isCloseTo(80, EXACT_TO_A_DOUBLE);
        assertThat(Force.from(Quantities.getQuantity(10L, TradeUnits.POUND_FORCE))
                        .poundsForce())
                .isCloseTo(10, EXACT_TO_A_DOUBLE);
        assertThat(Pressure.from(Quantities.getQuantity(RationalNumber.of(1, 2), TradeUnits.PSI))
                        .psf())
                .isCloseTo(72, EXACT_TO_A_DOUBLE);
        assertThat(Pressure.from(Quantities.getQuantity(20, TradeUnits.PSF)).psf())
                .isCloseTo(20, EXACT_TO_A_DOUBLE);
        assertThat(Speed.from(Quantities.getQuantity(115, TradeUnits.MILE_PER_HOUR)))
                .isEqualTo(Speed.ofMilesPerHour(115));
        assertThat(Speed.from(Quantities.getQuantity(36, Units.KILOMETRE_PER_HOUR))
                        .metresPerSecond())
                .isEqualTo(10);
        assertThat(Ratio.from(Quantities.getQuantity(25, Units.PERCENT))).isEqualTo(Ratio.of(0.25));
        assertThat(Angle.from(Quantities.getQuantity(1.5, Units.RADIAN))).isEqualTo(Angle.ofRadians(1.5));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Force.from(Quantities.getQuantity(Double.NaN, Units.NEWTON)));
    }

    @Test
    void goesOutAndComesBackTheSame() {
        assertThat(Area.from(Area.ofSquareFeet(0.7).toQuantity())).isEqualTo(Area.ofSquareFeet(0.7));
        assertThat(Volume.from(Volume.ofCubicYards(0.7).toQuantity())).isEqualTo(Volume.ofCubicYards(0.7));
        assertThat(Mass.from(Mass.ofPounds(0.7).toQuantity())).isEqualTo(Mass.ofPounds(0.7));
        assertThat(Force.from(Force.ofPoundsForce(0.7).toQuantity())).isEqualTo(Force.ofPoundsForce(0.7));
        assertThat(Pressure.from(Pressure.ofPsf(0.7).toQuantity())).isEqualTo(Pressure.ofPsf(0.7));
        assertThat(Speed.from(Speed.ofMilesPerHour(0.7).toQuantity())).isEqualTo(Speed.ofMilesPerHour(0.7));
        assertThat(Ratio.from(Ratio.of(0.7).toQuantity())).isEqualTo(Ratio.of(0.7));
        assertThat(Angle.from(Angle.ofDegrees(0.7).toQuantity())).isEqualTo(Angle.ofDegrees(0.7));
    }

    @Test
    void quantitiesAreInTheUnitAsked() {
        assertThat(valueIn(Pressure.ofPsi(3).toQuantity(), TradeUnits.PSI)).isCloseTo(3, EXACT_TO_A_DOUBLE);
        assertThat(valueIn(Mass.ofPounds(3).toQuantity(), TradeUnits.POUND)).isCloseTo(3, EXACT_TO_A_DOUBLE);
        assertThat(valueIn(Force.ofPoundsForce(3).toQuantity(), TradeUnits.POUND_FORCE))
                .isCloseTo(3, EXACT_TO_A_DOUBLE);
        assertThat(valueIn(Speed.ofMilesPerHour(3).toQuantity(), TradeUnits.MILE_PER_HOUR))
                .isCloseTo(3, EXACT_TO_A_DOUBLE);
    }

    private static <Q extends Quantity<Q>> double valueIn(Quantity<Q> quantity, Unit<Q> unit) {
        return quantity.to(unit).getValue().doubleValue();
    }
}
