package org.fencecore.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.units.UnitWeight;
import org.fencecore.units.Volume;

/** What is written reads back as what was meant, within the rounding that is promised. */
class WrittenProperties {

    private static final long SIXTEENTH = 1_587_500;

    private static long error(Length length, String written) {
        return Length.parse(written).minus(length).nanometres();
    }

    /** The number before a unit. */
    private static double number(String written, String unit) {
        assertThat(written).endsWith(" " + unit).doesNotContain("E");
        return Double.parseDouble(written.substring(0, written.length() - unit.length() - 1));
    }

    @Property
    void tapesReadBackToTheNearestSixteenthOrTheOneAskedFor(
            @ForAll @LongRange(min = -1_000_000_000_000L, max = 1_000_000_000_000L) long nanometres) {
        Length length = Length.ofNanometres(nanometres);
        assertThat(error(length, Written.tape(length))).isBetween(-SIXTEENTH / 2, SIXTEENTH / 2);
        assertThat(error(length, Written.tape(length, Rounding.UP))).isBetween(0L, SIXTEENTH - 1);
        assertThat(error(length, Written.tape(length, Rounding.DOWN))).isBetween(1 - SIXTEENTH, 0L);
    }

    @Property
    void decimalsReadBackWithinHalfTheirLastPlace(
            @ForAll @LongRange(min = -1_000_000_000_000L, max = 1_000_000_000_000L) long nanometres) {
        Length length = Length.ofNanometres(nanometres);
        // Half of 1/10,000 in, of 1/10,000 ft and of 1/100 ft.
        assertThat(error(length, Written.inches(length))).isBetween(-1270L, 1270L);
        assertThat(error(length, Written.feet(length))).isBetween(-15_240L, 15_240L);
        assertThat(error(length, Written.station(length))).isBetween(-1_524_000L, 1_524_000L);
    }

    /** A yard's words for a length: never another length where these are whole. */
    @Property
    void stockInWholeFeetOrCentimetresReadsBackExactly(@ForAll @IntRange(min = 1, max = 100_000) int count) {
        for (Length length : List.of(Length.ofFeet(count), Length.ofMillimetres(10.0 * count))) {
            assertThat(error(length, Written.stock(length))).isZero();
        }
    }

    @Property
    void amountsReadBackWithinHalfTheirLastPlace(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        double hundredth = 0.005 + 1e-9;
        double tenth = 0.05 + 1e-9;
        assertThat(number(Written.degrees(Angle.ofDegrees(value)), "deg")).isEqualTo(value, within(hundredth));
        assertThat(number(Written.saw(Angle.ofDegrees(value)), "deg")).isEqualTo(value, within(tenth));
        assertThat(number(Written.percent(Slope.ofPercent(value)), "%")).isEqualTo(value, within(hundredth));
        assertThat(number(Written.force(Force.ofPoundsForce(value)), "lbf")).isEqualTo(value, within(hundredth));
        assertThat(number(Written.moment(Moment.ofPoundFeet(value)), "lbf-ft")).isEqualTo(value, within(tenth));
        assertThat(number(Written.pressure(Pressure.ofPsf(value)), "psf")).isEqualTo(value, within(hundredth));
        double some = Math.abs(value);
        assertThat(number(Written.unitWeight(UnitWeight.ofPcf(some)), "pcf")).isEqualTo(some, within(hundredth));
        assertThat(number(Written.volume(Volume.ofCubicFeet(some)), "cu ft")).isEqualTo(some, within(0.0005 + 1e-9));
        assertThat(number(Written.mass(Mass.ofPounds(some)), "lb")).isEqualTo(some, within(tenth));
    }

    @Property
    void hoursReadBackWithinHalfAHundredth(@ForAll @LongRange(min = 0, max = 10_000_000) long seconds) {
        assertThat(number(Written.hours(Duration.ofSeconds(seconds)), "h"))
                .isEqualTo(seconds / 3600.0, within(0.005 + 1e-9));
    }

    /** No coin is lost, also where an amount has more decimals than the currency, or the currency none. */
    @Property
    void moneyReadsBackExactly(@ForAll @BigRange(min = "-1000000000", max = "1000000000") @Scale(6) BigDecimal amount) {
        for (String code : List.of("USD", "JPY", "KWD")) {
            String written = Written.money(amount, Currency.getInstance(code));
            assertThat(written).endsWith(" " + code).doesNotContain("E");
            assertThat(new BigDecimal(written.substring(0, written.length() - 4)))
                    .isEqualByComparingTo(amount);
        }
    }

    @Property
    void numbersSayEachOnce(@ForAll @Size(max = 40) Set<@IntRange(min = 1, max = 60) Integer> numbers) {
        List<Integer> sorted = List.copyOf(new TreeSet<>(numbers));
        List<Integer> read = new ArrayList<>();
        for (String part : Written.numbers(sorted).split(", | and ", -1)) {
            if (!part.isEmpty()) {
                String[] ends = part.split(" to ", -1);
                for (int i = Integer.parseInt(ends[0]); i <= Integer.parseInt(ends[ends.length - 1]); i++) {
                    read.add(i);
                }
            }
        }
        assertThat(read).isEqualTo(sorted);
    }

    /** Letters stay, line breaks go, and what has been made printable is so for good. */
    @Property
    void printableTextIsOneLineAndStaysAsItIs(@ForAll String text) {
        String printable = Written.printable(text);
        assertThat(printable.codePointCount(0, printable.length())).isEqualTo(text.codePointCount(0, text.length()));
        assertThat(printable.lines().count()).isLessThanOrEqualTo(1);
        assertThat(Written.printable(printable)).isEqualTo(printable);
        assertThat(text.codePoints().filter(Character::isLetter).toArray())
                .isEqualTo(printable.codePoints().filter(Character::isLetter).toArray());
    }
}
