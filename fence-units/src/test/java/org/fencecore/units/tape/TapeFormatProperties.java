package org.fencecore.units.tape;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;

class TapeFormatProperties {

    @Provide
    Arbitrary<TapeFormat> formats() {
        Arbitrary<TapeFormat> fractions = Arbitraries.of(1, 2, 4, 8, 16, 32, 64)
                .flatMap(marks -> Arbitraries.of(
                        TapeFormat.feetAndInches(marks),
                        TapeFormat.inches(marks),
                        TapeFormat.feetAndInches(marks).withUnitNames(),
                        TapeFormat.inches(marks).withUnitNames()));
        Arbitrary<TapeFormat> decimals = Arbitraries.integers()
                .between(0, 5)
                .flatMap(places -> Arbitraries.of(
                        TapeFormat.decimalFeet(places), TapeFormat.metres(places), TapeFormat.millimetres(places)));
        return Arbitraries.oneOf(fractions, decimals)
                .flatMap(format -> Arbitraries.of(Rounding.class).map(format::withRounding));
    }

    @Property
    void whatIsWrittenReadsBackAsTheLengthRounded(
            @ForAll("formats") TapeFormat format,
            @ForAll Rounding rounding,
            @ForAll @LongRange(min = -1L << 50, max = 1L << 50) long nanometres) {
        Length length = Length.ofNanometres(nanometres);
        TapeFormat rounded = format.withRounding(rounding);
        assertThat(Length.parse(rounded.format(length))).isEqualTo(length.roundedTo(format.increment(), rounding));
    }

    @Property
    void theReadingAndWhatIsLeftAreTheLength(
            @ForAll("formats") TapeFormat format, @ForAll @LongRange(min = -1L << 50, max = 1L << 50) long nanometres) {
        Length length = Length.ofNanometres(nanometres);
        TapeReading reading = format.read(length);
        assertThat(reading.length().plus(reading.remainder())).isEqualTo(length);
        assertThat(reading.remainder().abs()).isLessThan(format.increment());
        assertThat(reading.isExact()).isEqualTo(reading.length().equals(length));
        assertThat(format.read(reading.length()).isExact()).isTrue();
        assertThat(format.format(reading.length())).isEqualTo(reading.text());
    }

    @Property
    void fractionsAreReducedAndInchesUnderTwelve(@ForAll @LongRange(min = -1L << 50, max = 1L << 50) long nanometres) {
        String text = TapeFormat.feetAndInches(64).format(Length.ofNanometres(nanometres));
        assertThat(text)
                .matches("-?(\\d+' )?(\\d|1[01])?( ?\\d?[13579]/(2|4|8|16|32|64))?\"")
                .doesNotStartWith("-0\"");
    }
}
