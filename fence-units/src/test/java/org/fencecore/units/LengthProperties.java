package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Supplier;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

/** The arithmetic of lengths against that of whole numbers without a limit. */
class LengthProperties {

    private static final BigInteger LEAST = BigInteger.valueOf(Long.MIN_VALUE);
    private static final BigInteger MOST = BigInteger.valueOf(Long.MAX_VALUE);

    @Property
    void textReadsBackAsTheVerySame(@ForAll long nanometres) {
        Length length = Length.ofNanometres(nanometres);
        assertThat(Length.parse(length.toString())).isEqualTo(length);
    }

    @Property
    void textOf64thsReadsBackAsTheVerySame(@ForAll @IntRange(min = -10_000_000, max = 10_000_000) int sixtyFourths) {
        Length length = Length.ofInches(1 / 64.0).times(sixtyFourths);
        assertThat(length.toString()).doesNotContain("mm");
        assertThat(Length.parse(length.toString())).isEqualTo(length);
    }

    @Property
    void sumsAreThoseOfWholeNumbersOrAnError(@ForAll long a, @ForAll long b) {
        holdsOrThrows(
                BigInteger.valueOf(a).add(BigInteger.valueOf(b)),
                () -> Length.ofNanometres(a).plus(Length.ofNanometres(b)));
        holdsOrThrows(
                BigInteger.valueOf(a).subtract(BigInteger.valueOf(b)),
                () -> Length.ofNanometres(a).minus(Length.ofNanometres(b)));
        holdsOrThrows(
                BigInteger.valueOf(a).multiply(BigInteger.valueOf(b)),
                () -> Length.ofNanometres(a).times(b));
    }

    private static void holdsOrThrows(BigInteger exact, Supplier<Length> computed) {
        if (exact.compareTo(LEAST) < 0 || exact.compareTo(MOST) > 0) {
            assertThatExceptionOfType(ArithmeticException.class).isThrownBy(computed::get);
        } else {
            assertThat(computed.get().nanometres()).isEqualTo(exact.longValueExact());
        }
    }

    @Property
    void theOrderOfAddingDoesNotMatter(
            @ForAll @Size(max = 50) List<@LongRange(min = -1L << 50, max = 1L << 50) Long> parts) {
        Length forward = Length.ZERO;
        Length backward = Length.ZERO;
        for (int i = 0; i < parts.size(); i++) {
            forward = forward.plus(Length.ofNanometres(parts.get(i)));
            backward = Length.ofNanometres(parts.get(parts.size() - 1 - i)).plus(backward);
        }
        BigInteger exact = parts.stream().map(BigInteger::valueOf).reduce(BigInteger.ZERO, BigInteger::add);
        assertThat(forward).isEqualTo(backward);
        assertThat(forward.nanometres()).isEqualTo(exact.longValueExact());
    }

    @Property
    void portionsAreTheExactMarksToTheNearestFromTheNearerEnd(
            @ForAll long nanometres,
            @ForAll @LongRange(min = 1, max = 3_000_000_000L) long n,
            @ForAll @LongRange(max = 3_000_000_000L) long seed) {
        long k = seed % (n + 1);
        long near = Math.min(k, n - k);
        BigDecimal fromNearEnd = new BigDecimal(BigInteger.valueOf(nanometres).multiply(BigInteger.valueOf(near)))
                .divide(BigDecimal.valueOf(n), 0, RoundingMode.HALF_DOWN);
        BigDecimal exact =
                k == near ? fromNearEnd : BigDecimal.valueOf(nanometres).subtract(fromNearEnd);
        assertThat(Length.ofNanometres(nanometres).portion(k, n).nanometres()).isEqualTo(exact.longValueExact());
    }

    @Property
    void marksAreTheSameFromEitherEndAndInEitherDirection(
            @ForAll @LongRange(min = -1L << 60, max = 1L << 60) long nanometres,
            @ForAll @IntRange(min = 1, max = 100_000) int n,
            @ForAll @IntRange(max = 100_000) int seed) {
        int k = seed % (n + 1);
        Length run = Length.ofNanometres(nanometres);
        long oddMiddle = 2 * k == n ? nanometres % 2 : 0;
        assertThat(run.portion(k, n).plus(run.portion(n - k, n))).isEqualTo(run.minus(Length.ofNanometres(oddMiddle)));
        assertThat(run.negated().portion(k, n)).isEqualTo(run.portion(k, n).negated());
    }

    @Property
    void partsOfARunAddUpToItAndDifferByANanometre(
            @ForAll @LongRange(max = 1L << 50) long nanometres, @ForAll @IntRange(min = 1, max = 300) int n) {
        Length run = Length.ofNanometres(nanometres);
        Length sum = Length.ZERO;
        long part = nanometres / n;
        for (int k = 0; k < n; k++) {
            Length step = run.portion(k + 1, n).minus(run.portion(k, n));
            assertThat(step.nanometres()).isBetween(part, part + 1);
            sum = sum.plus(step);
        }
        assertThat(sum).isEqualTo(run);
    }

    @Property
    void roundingFindsTheMarkOfItsRule(
            @ForAll @LongRange(min = -1L << 60, max = 1L << 60) long nanometres,
            @ForAll @LongRange(min = 1, max = 1L << 40) long increment,
            @ForAll Rounding rounding) {
        RoundingMode mode = switch (rounding) {
            case NEAREST -> RoundingMode.HALF_UP;
            case DOWN -> RoundingMode.FLOOR;
            case UP -> RoundingMode.CEILING;
        };
        BigDecimal marks = BigDecimal.valueOf(nanometres).divide(BigDecimal.valueOf(increment), 0, mode);
        assertThat(Length.ofNanometres(nanometres)
                        .roundedTo(Length.ofNanometres(increment), rounding)
                        .nanometres())
                .isEqualTo(marks.multiply(BigDecimal.valueOf(increment)).longValueExact());
    }

    @Property
    void aQuotientIsTheNearestNanometre(@ForAll long nanometres, @ForAll @IntRange(min = 2) int parts) {
        BigDecimal exact = BigDecimal.valueOf(nanometres).divide(BigDecimal.valueOf(parts), 0, RoundingMode.HALF_UP);
        assertThat(Length.ofNanometres(nanometres).dividedBy(parts).nanometres())
                .isEqualTo(exact.longValueExact());
        assertThat(Length.ofNanometres(nanometres).dividedBy(-parts).nanometres())
                .isEqualTo(-exact.longValueExact());
    }

    @Property
    void anyMixtureOfFeetInchesAndFractionReadsExactly(
            @ForAll @IntRange(max = 10_000) int feet,
            @ForAll @IntRange(max = 11) int inches,
            @ForAll @IntRange(min = 1, max = 1000) int bottom,
            @ForAll @IntRange(max = 999) int seed) {
        int top = seed % bottom;
        BigDecimal exact = BigDecimal.valueOf((feet * 12L + inches) * bottom + top)
                .multiply(BigDecimal.valueOf(25_400_000))
                .divide(BigDecimal.valueOf(bottom), 0, RoundingMode.HALF_UP);
        String text = feet + "' " + inches + " " + top + "/" + bottom + "\"";
        assertThat(Length.parse(text).nanometres()).isEqualTo(exact.longValueExact());
        assertThat(Length.parse("-" + text).nanometres()).isEqualTo(-exact.longValueExact());
    }
}
