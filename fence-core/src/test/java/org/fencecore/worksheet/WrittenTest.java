package org.fencecore.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Pressure;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.units.UnitWeight;
import org.fencecore.units.Volume;
import org.junit.jupiter.api.Test;

class WrittenTest {

    @Test
    void theExampleOfTheClass() {
        Length depth = Length.ofInches(50.07);

        assertThat(Written.tape(depth)).isEqualTo("4' 2 1/16\"");
        assertThat(Written.tape(depth, Rounding.UP)).isEqualTo("4' 2 1/8\"");
        assertThat(Written.inches(depth)).isEqualTo("50.07 in");
        assertThat(Written.feet(depth)).isEqualTo("4.1725 ft");
    }

    @Test
    void theTableOfTheClass() {
        Length leaf = Length.parse("46 3/4 in");

        assertThat(Written.tape(leaf)).isEqualTo("3' 10 3/4\"");
        assertThat(Written.inches(leaf)).isEqualTo("46.75 in");
        assertThat(Written.feet(leaf)).isEqualTo("3.8958 ft");
        assertThat(Written.station(leaf)).isEqualTo("3.90 ft");
        assertThat(Written.stock(Length.ofFeet(8))).isEqualTo("8 ft");
    }

    @Test
    void roundsAwayAndDownToTheSixteenth() {
        // 5 1/2 in and 1/3 of a sixteenth.
        Length odd = Length.ofNanometres(139_700_000 + 529_167);

        assertThat(Written.tape(odd)).isEqualTo("5 1/2\"");
        assertThat(Written.tape(odd, Rounding.DOWN)).isEqualTo("5 1/2\"");
        assertThat(Written.tape(odd, Rounding.UP)).isEqualTo("5 9/16\"");
    }

    @Test
    void decimalsAreRoundedHalfAwayFromZeroAndHaveNoZerosAtTheEnd() {
        // 1/20,000 in is 1,270 nm.
        assertThat(Written.inches(Length.ofNanometres(1_270))).isEqualTo("0.0001 in");
        assertThat(Written.inches(Length.ofNanometres(-1_270))).isEqualTo("-0.0001 in");
        assertThat(Written.inches(Length.ofNanometres(1_269))).isEqualTo("0 in");
        assertThat(Written.inches(Length.ofNanometres(-1_269))).isEqualTo("0 in");
        assertThat(Written.inches(Length.ofFeet(100))).isEqualTo("1200 in");
        assertThat(Written.feet(Length.ofFeet(1_000_000))).isEqualTo("1000000 ft");
    }

    @Test
    void lumberIsCalledByTheFootOrByTheMetre() {
        assertThat(Written.stock(Length.ofFeet(10))).isEqualTo("10 ft");
        assertThat(Written.stock(Length.ofMillimetres(2400))).isEqualTo("2.40 m");
        assertThat(Written.stock(Length.ofInches(92.625))).isEqualTo("7' 8 5/8\"");
    }

    @Test
    void anglesAndGrades() {
        // atan(22.75 / 39.75) = 29.7835...
        Angle rise = Angle.ofTangent(Length.ofInches(22.75), Length.ofInches(39.75));
        assertThat(Written.degrees(rise)).isEqualTo("29.78 deg");
        assertThat(Written.degrees(Angle.RIGHT)).isEqualTo("90 deg");
        // atan(1 / 5) = 11.3099...
        assertThat(Written.saw(Angle.ofTangent(Length.ofFeet(1), Length.ofFeet(5))))
                .isEqualTo("11.3 deg");
        assertThat(Written.saw(Angle.ZERO)).isEqualTo("0 deg");
        assertThat(Written.percent(Slope.ofPercent(-24))).isEqualTo("-24 %");
        assertThat(Written.percent(Slope.parse("1:12"))).isEqualTo("8.33 %");
    }

    @Test
    void loadsAndSoil() {
        assertThat(Written.force(Force.ofPoundsForce(720))).isEqualTo("720 lbf");
        assertThat(Written.pressure(Pressure.ofPsf(378.5333))).isEqualTo("378.53 psf");
        assertThat(Written.bearing(UnitWeight.ofPcf(150))).isEqualTo("150 psf/ft");
    }

    @Test
    void whatIsBoughtByTheBag() {
        assertThat(Written.volume(Volume.ofCubicFeet(0.375))).isEqualTo("0.375 cu ft");
        assertThat(Written.bag(Mass.ofPounds(80))).isEqualTo("80 lb");
        assertThat(Written.bag(Mass.ofKilograms(25))).isEqualTo("25 kg");
    }

    @Test
    void lists() {
        assertThat(Written.list(List.of())).isEmpty();
        assertThat(Written.list(List.of("a"))).isEqualTo("a");
        assertThat(Written.list(List.of("a", "b"))).isEqualTo("a and b");
        assertThat(Written.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
        assertThat(Written.numbers(List.of())).isEmpty();
        assertThat(Written.numbers(List.of(1, 2, 3, 4, 7, 9, 10))).isEqualTo("1 to 4, 7, 9 and 10");
        assertThat(Written.numbers(List.of(300, 301, 302))).isEqualTo("300 to 302");
    }

    @Test
    void theLocaleDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            for (Locale locale : List.of(Locale.GERMANY, Locale.forLanguageTag("ar-EG-u-nu-arab"))) {
                Locale.setDefault(locale);
                assertThat(Written.inches(Length.ofInches(1.5))).isEqualTo("1.5 in");
                assertThat(Written.tape(Length.ofInches(1.5))).isEqualTo("1 1/2\"");
                assertThat(Written.station(Length.ofFeet(1234.5))).isEqualTo("1234.50 ft");
                assertThat(Written.percent(Slope.ofPercent(12.5))).isEqualTo("12.5 %");
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
