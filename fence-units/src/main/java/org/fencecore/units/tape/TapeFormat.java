package org.fencecore.units.tape;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.jspecify.annotations.Nullable;

/**
 * A way of writing lengths, down to the marks of a tape.
 *
 * <p>A length is brought to a mark first, to the nearest one unless {@link #withRounding} says otherwise, and split into
 * feet, inches and fraction after that; so 5 ft 11.99 in to a sixteenth is {@code 6' 0"} and never 5 ft 12 in. A fraction
 * is reduced, {@code 3/4} and not {@code 12/16}. Zero inches after feet are written, as drawings do, so
 * that nobody wonders whether they were forgotten; zero feet are not. A negative length has one minus, in front.
 *
 * <table>
 * <caption>6 ft 2 3/4 in, or 1898.65 mm</caption>
 * <tr><th scope="col">format</th><th scope="col">writes</th></tr>
 * <tr><td>{@code feetAndInches(16)}</td><td>{@code 6' 2 3/4"}</td></tr>
 * <tr><td>{@code feetAndInches(16).withUnitNames()}</td><td>{@code 6 ft 2 3/4 in}</td></tr>
 * <tr><td>{@code inches(16)}</td><td>{@code 74 3/4"}</td></tr>
 * <tr><td>{@code decimalFeet(2)}</td><td>{@code 6.23 ft}</td></tr>
 * <tr><td>{@code millimetres(0)}</td><td>{@code 1899 mm}</td></tr>
 * <tr><td>{@code metres(3)}</td><td>{@code 1.899 m}</td></tr>
 * </table>
 *
 * <p>{@link Length#parse} reads back what this writes, to the rounded length exactly. Formats are immutable, and equal
 * if they write all lengths alike.
 */
public final class TapeFormat {

    private static final Length INCH = Length.ofInches(1);

    private enum Style {
        FEET_AND_INCHES,
        INCHES,
        DECIMALS
    }

    private final Style style;
    /** The distance between marks; always a whole number of nanometres. */
    private final Length increment;
    /** The decimals and the name of their unit; 0 and "in" for fractions. */
    private final int places;

    private final String unit;
    private final boolean names;
    private final Rounding rounding;

    private TapeFormat(Style style, Length increment, int places, String unit, boolean names, Rounding rounding) {
        this.style = style;
        this.increment = increment;
        this.places = places;
        this.unit = unit;
        this.names = names;
        this.rounding = rounding;
    }

    /**
     * Returns the way carpenters write: feet, inches and a fraction, such as {@code 6' 2 3/4"}.
     *
     * @param denominator the marks to the inch: 1, 2, 4, 8, 16, 32 or 64
     * @return the format, to the nearest mark
     * @throws IllegalArgumentException if no tape has such marks
     */
    public static TapeFormat feetAndInches(int denominator) {
        return fractions(Style.FEET_AND_INCHES, denominator);
    }

    /**
     * Returns the way of a cut list: inches and a fraction, such as {@code 74 3/4"}.
     *
     * @param denominator the marks to the inch: 1, 2, 4, 8, 16, 32 or 64
     * @return the format, to the nearest mark
     * @throws IllegalArgumentException if no tape has such marks
     */
    public static TapeFormat inches(int denominator) {
        return fractions(Style.INCHES, denominator);
    }

    /**
     * Returns the way of a plat: feet with decimals, such as {@code 76.85 ft}.
     *
     * @param places how many decimals, 0 to 5
     * @return the format, to the nearest mark
     * @throws IllegalArgumentException if {@code places} is out of its range
     */
    public static TapeFormat decimalFeet(int places) {
        return decimals(Length.ofFeet(1), "ft", places, 5);
    }

    /**
     * Returns the way of a metric plat: metres with decimals, such as {@code 23.42 m}.
     *
     * @param places how many decimals, 0 to 9
     * @return the format, to the nearest mark
     * @throws IllegalArgumentException if {@code places} is out of its range
     */
    public static TapeFormat metres(int places) {
        return decimals(Length.ofMetres(1), "m", places, 9);
    }

    /**
     * Returns the way of a metric drawing: millimetres, such as {@code 1829 mm}.
     *
     * @param places how many decimals, 0 to 6
     * @return the format, to the nearest mark
     * @throws IllegalArgumentException if {@code places} is out of its range
     */
    public static TapeFormat millimetres(int places) {
        return decimals(Length.ofMillimetres(1), "mm", places, 6);
    }

    private static TapeFormat fractions(Style style, int denominator) {
        if (denominator < 1 || denominator > 64 || Integer.bitCount(denominator) != 1) {
            throw new IllegalArgumentException(
                    "denominator was " + denominator + "; use the marks of a tape: 1, 2, 4, 8, 16, 32 or 64");
        }
        return new TapeFormat(style, INCH.dividedBy(denominator), 0, "in", false, Rounding.NEAREST);
    }

    // As many decimals as leave a whole number of nanometres between marks.
    private static TapeFormat decimals(Length one, String unit, int places, int most) {
        if (places < 0 || places > most) {
            throw new IllegalArgumentException("places was " + places + "; use 0 to " + most + " decimals of " + unit);
        }
        Length increment =
                Length.ofNanometres(BigDecimal.valueOf(one.nanometres(), places).longValueExact());
        return new TapeFormat(Style.DECIMALS, increment, places, unit, true, Rounding.NEAREST);
    }

    /**
     * Returns this way of writing with another rule for what falls between two marks, such as
     * {@link Rounding#DOWN} for a part that must fit.
     *
     * @param rule the rule
     * @return the format with that rule
     */
    public TapeFormat withRounding(Rounding rule) {
        return new TapeFormat(style, increment, places, unit, names, Objects.requireNonNull(rule, "rule"));
    }

    /**
     * Returns this way of writing with {@code ft} and {@code in} for the marks ' and ", which get lost on some labels
     * and in some spreadsheets. Decimal formats have names anyway.
     *
     * @return the format with names
     */
    public TapeFormat withUnitNames() {
        return new TapeFormat(style, increment, places, unit, true, rounding);
    }

    /**
     * Returns the format of the surveyed distances and heights that go with this tape: decimal feet to the hundredth where
     * the tape is in feet or inches, metres to the millimetre where it is metric, as levelling rods are divided (common
     * practice, no source).
     *
     * @return the format
     */
    public TapeFormat surveyed() {
        return unit.equals("m") || unit.equals("mm") ? metres(3) : decimalFeet(2);
    }

    /**
     * Returns the distance between two marks of this format, such as 1/16 in.
     *
     * @return the increment that lengths are brought to
     */
    public Length increment() {
        return increment;
    }

    /**
     * Writes a length.
     *
     * @param length the length
     * @return the length at the mark, written
     * @throws ArithmeticException if the mark is beyond what a length holds
     */
    public String format(Length length) {
        return read(length).text();
    }

    /**
     * Reads a length off this tape.
     *
     * @param length the length
     * @return the mark, how it is written, and what is left over
     * @throws ArithmeticException if the mark is beyond what a length holds
     */
    public TapeReading read(Length length) {
        Length rounded = length.roundedTo(increment, rounding);
        return new TapeReading(rounded, length.minus(rounded), text(rounded));
    }

    private String text(Length rounded) {
        long marks = rounded.nanometres() / increment.nanometres();
        if (style == Style.DECIMALS) {
            return BigDecimal.valueOf(marks, places).toPlainString() + " " + unit;
        }
        String sign = marks < 0 ? "-" : "";
        long denominator = INCH.wholePieces(increment);
        long inches = Math.abs(marks) / denominator;
        String fraction = fraction(Math.abs(marks) % denominator, denominator);
        if (style == Style.INCHES || inches < 12) {
            String whole = inches == 0 && !fraction.isEmpty() ? fraction.substring(1) : inches + fraction;
            return sign + whole + (names ? " in" : "\"");
        }
        return sign + inches / 12 + (names ? " ft " : "' ") + inches % 12 + fraction + (names ? " in" : "\"");
    }

    private static String fraction(long over, long under) {
        if (over == 0) {
            return "";
        }
        // What is under is a power of two, so the lowest bit of what is over is all that they have in common.
        long common = Long.lowestOneBit(over);
        return " " + over / common + "/" + under / common;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TapeFormat format
                && format.style == style
                && format.increment.equals(increment)
                && format.unit.equals(unit)
                && format.names == names
                && format.rounding == rounding;
    }

    @Override
    public int hashCode() {
        return Objects.hash(style, increment, unit, names, rounding);
    }

    /**
     * Describes the format.
     *
     * @return such as {@code feet and inches to 1/16", nearest}
     */
    @Override
    public String toString() {
        return style.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " to " + text(increment) + ", "
                + rounding.name().toLowerCase(Locale.ROOT);
    }
}
