package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Conversions against published values; the source stands beside each check. */
class UnitsReferenceTest {

    // International yard and pound agreement (1959), in NIST Handbook 44-2024, appendix C (read in quotation).
    @Test
    void internationalYardAndPound() {
        assertThat(Length.parse("1 yd")).isEqualTo(Length.parse("0.9144 m"));
        assertThat(Length.parse("1 ft")).isEqualTo(Length.parse("0.3048 m"));
        assertThat(Length.parse("1 in")).isEqualTo(Length.parse("25.4 mm"));
        assertThat(Mass.ofPounds(1).kilograms()).isEqualTo(0.45359237);
    }

    // NIST Handbook 44-2024, appendix C (read in quotation): the US survey foot is 1200/3937 m, 2 parts per million
    // longer than the foot, which makes 3.2 mm in a mile.
    @Test
    void usSurveyFoot() {
        assertThat(Length.parse("1 US survey ft").metres()).isCloseTo(0.304800609601, within(1e-9));
        Length miles = Length.parse("5280 US survey ft").minus(Length.ofFeet(5280));
        assertThat(miles.millimetres()).isCloseTo(3.2187, within(5e-5));
        assertThat(Length.ofSurveyFeet(3937)).isEqualTo(Length.ofMetres(1200));
    }

    // Surveyors' measures, nraao.org/math_surveyor.htm (read in a copy): a rod is 25 links or 16.5 ft, a chain is
    // 4 rods, 100 links or 66 ft, a link is 7.92 in. Metres: NIST Handbook 44-2024, appendix C, relations on the foot.
    @Test
    void surveyorsMeasures() {
        assertThat(Length.parse("1 rod")).isEqualTo(Length.parse("25 links")).isEqualTo(Length.parse("16.5 ft"));
        assertThat(Length.parse("1 chain"))
                .isEqualTo(Length.parse("4 rods"))
                .isEqualTo(Length.parse("100 links"))
                .isEqualTo(Length.parse("66 ft"))
                .isEqualTo(Length.parse("20.1168 m"));
        assertThat(Length.parse("1 link")).isEqualTo(Length.parse("7.92 in"));
    }

    // engineersedge.com, rod calculator page (read in a copy): an acre is 43,560 sq ft, 10 square chains, or 40 by 4
    // rods.
    @Test
    void acre() {
        assertThat(Area.ofAcres(1).squareFeet()).isCloseTo(43_560, within(1e-8));
        assertThat(Length.parse("40 rods").times(Length.parse("4 rods")).acres())
                .isCloseTo(1, within(1e-14));
    }

    // Civil Engineering Formulas (2002), table 1.2, typical conversions (read in a copy, title from memory): 7 digits.
    @Test
    void handbookConversions() {
        assertThat(Force.ofPoundsForce(1).newtons()).isCloseTo(4.448222, within(5e-7));
        assertThat(Pressure.ofPsi(1).pascals()).isCloseTo(6894.757, within(5e-4));
        assertThat(Pressure.ofPsf(1000).pascals()).isCloseTo(4.788026e4, within(5e-3));
        assertThat(Area.ofSquareFeet(1).squareMetres()).isCloseTo(9.290304e-2, within(1e-15));
        assertThat(Volume.ofCubicFeet(1).cubicMetres()).isCloseTo(2.831685e-2, within(5e-9));
        // 2.767990E+04 kg/m3 in a pound per cubic inch, under standard gravity.
        assertThat(UnitWeight.ofPcf(1728).newtonsPerCubicMetre() / 9.80665).isCloseTo(2.767990e4, within(5e-3));
    }

    // Computed independently from the pound of 0.45359237 kg, the foot of 0.3048 m and 9.80665 m/s2; standard gravity
    // from memory.
    @Test
    void poundForceAndWhatFollowsFromIt() {
        assertThat(Force.ofPoundsForce(1).newtons()).isEqualTo(4.4482216152605);
        assertThat(Mass.ofPounds(1).weight().poundsForce()).isCloseTo(1, within(1e-15));
        assertThat(Pressure.ofPsi(1).pascals()).isCloseTo(6894.757293168, within(5e-10));
        assertThat(Pressure.ofPsf(1).pascals()).isCloseTo(47.88025898, within(5e-9));
        assertThat(Moment.ofPoundFeet(1).newtonMetres()).isCloseTo(1.355817948, within(5e-10));
        assertThat(UnitWeight.ofPcf(1).newtonsPerCubicMetre()).isCloseTo(157.0874638, within(5e-8));
        assertThat(Speed.ofMilesPerHour(1).metresPerSecond()).isCloseTo(5280 * 0.3048 / 3600, within(1e-15));
    }

    // A published worked example, Math Forum 58323 (read in a copy): 16 ft 10 5/8 in is 16.88541667 ft.
    @Test
    void feetInchesAndFractionToDecimalFeet() {
        assertThat(Length.parse("16 ft 10 5/8 in").feet()).isCloseTo(16.88541667, within(5e-9));
    }

    // A published worked example, simetric.co.uk, metres to feet (read in a copy): 6.37 ft is 6 ft 4.44 in.
    @Test
    void decimalFeetToFeetAndInches() {
        assertThat(Length.parse("6.37 ft")).isEqualTo(Length.parse("6 ft 4.44 in"));
    }

    @ParameterizedTest
    @CsvFileSource(files = "src/test/resources/reference/units/grades.csv", useHeadersInDisplayName = true)
    void grades(double percent, double degrees, double stretch) {
        // The rows of thirds are those of 1/12 and 1/3 themselves, printed with three decimals.
        Slope slope = Slope.ofPercent(percent == 8.333 ? 100 / 12.0 : percent == 33.333 ? 100 / 3.0 : percent);
        assertThat(slope.angle().degrees()).isCloseTo(degrees, within(5.1e-5));
        assertThat(slope.stretch().value()).isCloseTo(stretch, within(5.1e-6));
        assertThat(Slope.ofAngle(Angle.ofDegrees(degrees)).percent()).isCloseTo(slope.percent(), within(2e-4));
    }

    @ParameterizedTest
    @CsvFileSource(files = "src/test/resources/reference/units/rise-per-foot.csv", useHeadersInDisplayName = true)
    void risePerFoot(double inches, double degrees, double percent) {
        Slope slope = Slope.ofRisePerFoot(Length.ofInches(inches));
        assertThat(slope.angle().degrees()).isCloseTo(degrees, within(5.1e-3));
        assertThat(slope.percent()).isCloseTo(percent, within(5.1e-4));
        assertThat(slope.risePerFoot()).isEqualTo(Length.ofInches(inches));
        assertThat(Slope.parse(inches + " in/ft")).isEqualTo(slope);
    }

    // Published worked examples on the page of that table: 25 degrees is 46.63 %, 6 1/2 in to the foot is 28.44 degrees
    // and 3/8 in to the foot is 3.125 %.
    @Test
    void workedSlopes() {
        assertThat(Slope.parse("25 deg").percent()).isCloseTo(46.63, within(5e-3));
        assertThat(Slope.parse("6 1/2 in/ft").angle().degrees()).isCloseTo(28.44, within(5e-3));
        assertThat(Slope.parse("3/8\" per ft").percent()).isEqualTo(3.125);
    }
}
