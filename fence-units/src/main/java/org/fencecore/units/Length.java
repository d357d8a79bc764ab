package org.fencecore.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;

/**
 * A length, exact to the nanometre.
 *
 * <p>One inch is 25,400,000 nanometres and 1/64 in is 396,875, so both tapes, inch and metric, are whole numbers here:
 * adding, comparing and hashing is integer arithmetic, sums of any number of boards do not drift, and a result too
 * large to hold is an {@link ArithmeticException}, never a wrong number. A foot is exactly 0.3048 m; the US survey foot
 * exists by its own name only.
 *
 * <p>A {@code Length} is also a {@link javax.measure.quantity.Length}: it can be handed to any code that takes such a
 * quantity, and {@link #from} takes one in. In that role its unit is the nanometre and its value a whole number.
 *
 * <p>Example: {@code Length.ofInches(47.5).minus(Length.ofInches(0.75))} is 46 3/4 in.
 */
public final class Length implements javax.measure.quantity.Length, Comparable<Length> {

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    static final long NANOMETRES_PER_MILLIMETRE = 1_000_000L;
    static final long NANOMETRES_PER_METRE = 1_000_000_000L;
    static final long NANOMETRES_PER_INCH = 25_400_000L;
    private static final long NANOMETRES_PER_SURVEY_FOOT_OR_MORE = 304_800_610L;
    static final long NANOMETRES_PER_FOOT = 12 * NANOMETRES_PER_INCH;

    /** Whose square a long holds. */
    private static final long MOST_PARTS = 3_000_000_000L;

    private final long nanometres;

    private Length(long nanometres) {
        this.nanometres = nanometres;
    }

    /**
     * Returns a length of whole nanometres.
     *
     * @param nanometres the length in nanometres
     * @return the length
     */
    public static Length ofNanometres(long nanometres) {
        // Always a new one: with a choice here, loops over boards could not be compiled to leave their lengths unmade.
        return new Length(nanometres);
    }

    /**
     * Returns a length given in millimetres, to the nearest nanometre.
     *
     * @param millimetres the length in millimetres, finite
     * @return the length
     * @throws IllegalArgumentException if not finite or beyond what a length holds
     */
    public static Length ofMillimetres(double millimetres) {
        return scaled(millimetres, NANOMETRES_PER_MILLIMETRE, "mm");
    }

    /**
     * Returns a length given in metres, to the nearest nanometre.
     *
     * @param metres the length in metres, finite
     * @return the length
     * @throws IllegalArgumentException if not finite or beyond what a length holds
     */
    public static Length ofMetres(double metres) {
        return scaled(metres, NANOMETRES_PER_METRE, "m");
    }

    /**
     * Returns a length given in inches of 25.4 mm, to the nearest nanometre.
     *
     * @param inches the length in inches, finite; any whole number of 64ths is exact
     * @return the length
     * @throws IllegalArgumentException if not finite or beyond what a length holds
     */
    public static Length ofInches(double inches) {
        return scaled(inches, NANOMETRES_PER_INCH, "in");
    }

    /**
     * Returns a length given in feet of 0.3048 m, to the nearest nanometre; decimal feet of a plat such as 76.85 come
     * out exact.
     *
     * @param feet the length in feet, finite
     * @return the length
     * @throws IllegalArgumentException if not finite or beyond what a length holds
     */
    public static Length ofFeet(double feet) {
        return scaled(feet, NANOMETRES_PER_FOOT, "ft");
    }

    /**
     * Returns a length given in feet and inches, such as 6 ft 2 3/4 in.
     *
     * @param feet whole feet
     * @param inches inches on top of the feet, finite
     * @return the length
     * @throws IllegalArgumentException if not finite or beyond what a length holds
     */
    public static Length ofFeetAndInches(int feet, double inches) {
        return ofFeet(feet).plus(ofInches(inches));
    }

    /**
     * Returns a length given in US survey feet of 1200/3937 m, to the nearest nanometre. For old deeds that say so; new
     * work uses the foot of {@link #ofFeet}.
     *
     * @param surveyFeet the length in US survey feet, finite
     * @return the length
     * @throws IllegalArgumentException if not finite or beyond what a length holds
     */
    public static Length ofSurveyFeet(double surveyFeet) {
        if (!isHeld(surveyFeet * NANOMETRES_PER_SURVEY_FOOT_OR_MORE)) {
            return scaled(surveyFeet, NANOMETRES_PER_SURVEY_FOOT_OR_MORE, "US survey ft");
        }
        // A survey foot is no whole number of nanometres, so that the nearest one is found in decimals, as when read.
        return ofNanometres(BigDecimal.valueOf(surveyFeet)
                .multiply(BigDecimal.valueOf(1_200_000_000_000L))
                .divide(BigDecimal.valueOf(3937), 0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    /**
     * Returns the length of any JSR-385 quantity, to the nearest nanometre.
     *
     * @param quantity a length in any unit
     * @return the length
     * @throws IllegalArgumentException if its value is not a finite number
     * @throws ArithmeticException if it is beyond what a length holds
     */
    public static Length from(Quantity<javax.measure.quantity.Length> quantity) {
        return quantity instanceof Length length
                ? length
                : ofNanometres(nearest(quantity.to(TradeUnits.NANOMETRE).getValue()));
    }

    /**
     * Reads a length as trades write it, exactly, and rounded once to the nearest nanometre.
     *
     * <p>The number may be whole, a decimal, or have a fraction: {@code 5}, {@code 5.5}, {@code .5}, {@code 5 1/2},
     * {@code 5-1/2}, {@code 5½}, {@code 1/2}. It must have a unit, by its mark or its name: inches, feet, yards, mm, cm,
     * m, links, rods and chains, and {@code US survey ft}, links, rods and chains with these words in full. A link, rod
     * or chain is 0.66, 16.5 or 66 ft: of the foot of 0.3048 m, and with {@code US survey} of the survey foot, which is
     * 2 parts in a million longer. Feet and inches go together, and chains and links: {@code 6' 2 3/4"},
     * {@code 6'-2 3/4"}, {@code 6 ft 2-3/4 in}. Typeset marks and dashes, capitals, the stop of an abbreviation and a
     * sign in front of the whole are fine.
     *
     * <p>Anything else is refused, above all what could mean two things: a number without its unit, as in {@code 10'6};
     * 12 inches or more after feet; a fraction of 1 or more; a decimal with a fraction; a comma.
     *
     * @param text the length, at most 64 characters
     * @return the length
     * @throws IllegalArgumentException if the text is not such a length; the message has the text, the column and what
     *     was expected there
     */
    public static Length parse(CharSequence text) {
        return ofNanometres(LengthText.nanometres(text));
    }

    private static Length scaled(double value, double nanometresPerUnit, String unit) {
        double nanometres = Math.rint(value * nanometresPerUnit);
        if (!isHeld(nanometres)) {
            throw new IllegalArgumentException(
                    "length was " + value + " " + unit + "; it must be a finite number within 9,000,000 km of zero");
        }
        return ofNanometres((long) nanometres);
    }

    private static boolean isHeld(double nanometres) {
        return Math.abs(nanometres) < Long.MAX_VALUE;
    }

    private static long nearest(Number value) {
        if (value instanceof Long || value instanceof Integer) {
            return value.longValue();
        }
        BigDecimal exact = value instanceof RationalNumber rational
                ? new BigDecimal(rational.getDividend())
                        .divide(new BigDecimal(rational.getDivisor()), 0, RoundingMode.HALF_UP)
                : new BigDecimal(value.toString());
        return exact.setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    /**
     * Returns the shorter of two lengths.
     *
     * @param a one length
     * @param b another
     * @return the smaller
     */
    public static Length min(Length a, Length b) {
        return a.nanometres <= b.nanometres ? a : b;
    }

    /**
     * Returns the longer of two lengths.
     *
     * @param a one length
     * @param b another
     * @return the larger
     */
    public static Length max(Length a, Length b) {
        return a.nanometres >= b.nanometres ? a : b;
    }

    /**
     * Returns the length in whole nanometres, exact.
     *
     * @return nanometres
     */
    public long nanometres() {
        return nanometres;
    }

    /**
     * Returns the length in millimetres.
     *
     * @return millimetres, to the nearest {@code double}
     */
    public double millimetres() {
        return (double) nanometres / NANOMETRES_PER_MILLIMETRE;
    }

    /**
     * Returns the length in metres.
     *
     * @return metres, to the nearest {@code double}
     */
    public double metres() {
        return (double) nanometres / NANOMETRES_PER_METRE;
    }

    /**
     * Returns the length in inches.
     *
     * @return inches, to the nearest {@code double}
     */
    public double inches() {
        return (double) nanometres / NANOMETRES_PER_INCH;
    }

    /**
     * Returns the length in feet.
     *
     * @return feet, to the nearest {@code double}
     */
    public double feet() {
        return (double) nanometres / NANOMETRES_PER_FOOT;
    }

    /**
     * Returns the length in US survey feet.
     *
     * @return US survey feet
     */
    public double surveyFeet() {
        return nanometres / (1200e9 / 3937);
    }

    /**
     * Returns the sum, exact.
     *
     * @param other the length to add
     * @return this plus {@code other}
     * @throws ArithmeticException if the sum is beyond what a length holds
     */
    public Length plus(Length other) {
        return ofNanometres(Math.addExact(nanometres, other.nanometres));
    }

    /**
     * Returns the difference, exact.
     *
     * @param other the length to take away
     * @return this minus {@code other}
     * @throws ArithmeticException if the difference is beyond what a length holds
     */
    public Length minus(Length other) {
        return ofNanometres(Math.subtractExact(nanometres, other.nanometres));
    }

    /**
     * Returns a whole number of these lengths end to end, exact.
     *
     * @param count how many
     * @return this times {@code count}
     * @throws ArithmeticException if the product is beyond what a length holds
     */
    public Length times(long count) {
        return ofNanometres(Math.multiplyExact(nanometres, count));
    }

    /**
     * Returns this length scaled, to the nearest nanometre.
     *
     * @param factor the factor
     * @return this times {@code factor}
     * @throws IllegalArgumentException if the product is beyond what a length holds
     */
    public Length times(Ratio factor) {
        double product = Math.rint(nanometres * factor.value());
        if (!isHeld(product)) {
            throw new IllegalArgumentException(
                    "length was " + this + " times " + factor + "; it must be within 9,000,000 km of zero");
        }
        return ofNanometres((long) product);
    }

    /**
     * Returns the area of a rectangle of this length by another.
     *
     * @param other the other side
     * @return the area
     */
    public Area times(Length other) {
        return Area.ofSquareMetres(metres() * other.metres());
    }

    /**
     * Returns this length cut into equal parts, to the nearest nanometre. To mark off all the parts use
     * {@link #portion}, which does not add up the rounding.
     *
     * @param parts how many parts, not zero
     * @return one part
     * @throws ArithmeticException if {@code parts} is zero, or one part is beyond what a length holds
     */
    public Length dividedBy(long parts) {
        if (parts < 0) {
            return dividedBy(Math.negateExact(parts)).negated();
        }
        return ofNanometres(Rounding.NEAREST.divide(nanometres, parts));
    }

    /**
     * Returns the distance to mark {@code k} when this length is cut into {@code n} equal parts, rounded once, so that
     * mark {@code n} is this length exactly and errors do not add up.
     *
     * <p>Marks are at the nearest nanometre, half way going to the end they are counted from, and those past the middle
     * are measured from the far end. So the marks are the same from either end, and parts differ by a nanometre at most.
     * Only the mark in the very middle of an odd number of nanometres is half a nanometre nearer to the start.
     *
     * <p>Example: 100 nm in 7 parts has marks at 0, 14, 29, 43, 57, 71, 86 and 100.
     *
     * @param k which mark, from 0 to {@code n}
     * @param n how many parts, from 1 to 3,000,000,000
     * @return the distance from the start to mark {@code k}
     * @throws IllegalArgumentException if {@code n} or {@code k} is out of its range
     */
    public Length portion(long k, long n) {
        if (n < 1 || n > MOST_PARTS || k < 0 || k > n) {
            throw new IllegalArgumentException(
                    "mark k was " + k + " of n = " + n + " parts; use n from 1 to 3,000,000,000 and k from 0 to n");
        }
        return ofNanometres(k > n - k ? nanometres - mark(n - k, n) : mark(k, n));
    }

    /** The mark {@code k} of the first half; k times the rest, twice, is under n squared and does not overflow. */
    private long mark(long k, long n) {
        long share = nanometres / n;
        long rest = nanometres % n;
        return k * share + (2 * k * Math.abs(rest) + n - 1) / (2 * n) * Long.signum(rest);
    }

    /**
     * Returns how many whole pieces of a given length come out of this one.
     *
     * @param piece the length of a piece, over zero
     * @return the number of whole pieces, rounded down
     * @throws IllegalArgumentException if {@code piece} is not over zero
     */
    public long wholePieces(Length piece) {
        if (piece.nanometres <= 0) {
            throw new IllegalArgumentException("piece was " + piece + "; it must be over 0");
        }
        return Math.floorDiv(nanometres, piece.nanometres);
    }

    /**
     * Returns this length as a share of another.
     *
     * @param whole the whole, not zero
     * @return this over {@code whole}
     * @throws IllegalArgumentException if {@code whole} is zero
     */
    public Ratio ratioTo(Length whole) {
        return Ratio.of((double) nanometres / whole.nanometres);
    }

    /**
     * Returns this length brought to a whole number of increments of the tape.
     *
     * @param increment the distance between marks, such as 1/16 in, over zero
     * @param rounding to which mark
     * @return the nearest mark by that rule
     * @throws IllegalArgumentException if {@code increment} is not over zero
     */
    public Length roundedTo(Length increment, Rounding rounding) {
        if (increment.nanometres <= 0) {
            throw new IllegalArgumentException("increment was " + increment + "; it must be over 0");
        }
        return increment.times(rounding.divide(nanometres, increment.nanometres));
    }

    /**
     * Returns this length measured the other way.
     *
     * @return zero minus this
     */
    public Length negated() {
        return ofNanometres(Math.negateExact(nanometres));
    }

    /**
     * Returns this length without its sign.
     *
     * @return the absolute length
     */
    public Length abs() {
        return nanometres < 0 ? negated() : this;
    }

    /**
     * Tells whether this length is over zero.
     *
     * @return true if greater than zero
     */
    public boolean isPositive() {
        return nanometres > 0;
    }

    /**
     * Tells whether this length is zero.
     *
     * @return true if zero
     */
    public boolean isZero() {
        return nanometres == 0;
    }

    /**
     * Tells whether this length is under zero.
     *
     * @return true if less than zero
     */
    public boolean isNegative() {
        return nanometres < 0;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Length length && length.nanometres == nanometres;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(nanometres);
    }

    /**
     * Returns the length as text that {@link #parse} reads back to the very same length.
     *
     * <p>A whole number of 64ths of an inch is written in feet, inches and a fraction, parts of zero left out, such as
     * {@code 6 ft 2 3/4 in}, {@code 3 ft} and {@code -1/2 in}; anything else in millimetres with up to six decimals,
     * such as {@code 1829 mm}. No length at all is {@code 0 in}.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return LengthText.write(nanometres);
    }

    // ---- javax.measure.Quantity ----

    @Override
    public Long getValue() {
        return nanometres;
    }

    @Override
    public Unit<javax.measure.quantity.Length> getUnit() {
        return TradeUnits.NANOMETRE;
    }

    @Override
    public Scale getScale() {
        return Scale.ABSOLUTE;
    }

    @Override
    public Length add(Quantity<javax.measure.quantity.Length> addend) {
        return plus(from(addend));
    }

    @Override
    public Length subtract(Quantity<javax.measure.quantity.Length> subtrahend) {
        return minus(from(subtrahend));
    }

    @Override
    public Length negate() {
        return negated();
    }

    @Override
    public Length multiply(Number multiplier) {
        return from(asIndriya().multiply(multiplier));
    }

    @Override
    public Length divide(Number divisor) {
        return from(asIndriya().divide(divisor));
    }

    @Override
    public Quantity<?> multiply(Quantity<?> multiplicand) {
        return asIndriya().multiply(multiplicand);
    }

    @Override
    public Quantity<?> divide(Quantity<?> divisor) {
        return asIndriya().divide(divisor);
    }

    @Override
    public Quantity<?> inverse() {
        return asIndriya().inverse();
    }

    @Override
    public Quantity<javax.measure.quantity.Length> to(Unit<javax.measure.quantity.Length> unit) {
        return asIndriya().to(unit);
    }

    @Override
    public <T extends Quantity<T>> Quantity<T> asType(Class<T> type) {
        return asIndriya().asType(type);
    }

    @Override
    public boolean isEquivalentTo(Quantity<javax.measure.quantity.Length> that) {
        return asIndriya().isEquivalentTo(that);
    }

    private Quantity<javax.measure.quantity.Length> asIndriya() {
        return Quantities.getQuantity(nanometres, TradeUnits.NANOMETRE);
    }
}
