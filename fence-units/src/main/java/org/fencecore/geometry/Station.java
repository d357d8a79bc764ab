package org.fencecore.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.jspecify.annotations.Nullable;

/**
 * A distance along a line in surveyor's notation: full stations of 100, a plus sign and the rest, so that 153.25 ft
 * from the start is written 1+53.25.
 *
 * <p>A full station is 100 ft, or 100 m on a metric job; the notation itself does not say which.
 *
 * <p>Example:
 *
 * <pre>{@code
 * Station.of(Length.ofFeet(1234.5)).toString();          // 12+34.50
 * Station.parse("1+53.25").distance();                   // 153.25 ft
 * Station.ofMetric(Length.ofMetres(30.5)).toString();    // 0+30.50
 * }</pre>
 *
 * <p>Sources: NPTEL surveying course, module 4, lecture on profile levelling: the line starts at 0+00, full stations
 * each 100, and 153.25 is 1+53.25.
 */
public final class Station {

    private static final Length FOOT = Length.ofFeet(1);
    private static final Length METRE = Length.ofMetres(1);
    private static final int HUNDREDTHS = 100;
    private static final int LONGEST_TEXT = 32;
    private static final Pattern NOTATION = Pattern.compile("(-?)([0-9]{1,7})\\+([0-9]{2}(?:\\.[0-9]+)?)");

    private final Length distance;
    private final Length unit;

    private Station(Length distance, Length unit) {
        Exact.requireInRange("distance", distance);
        this.distance = distance;
        this.unit = unit;
    }

    /**
     * Returns the station at a distance along a line that is stationed in feet.
     *
     * @param distance the distance from station 0+00, negative before it
     * @return the station
     * @throws IllegalArgumentException if it is over 1,000,000 km from zero
     */
    public static Station of(Length distance) {
        return new Station(distance, FOOT);
    }

    /**
     * Returns the station at a distance along a line that is stationed in metres.
     *
     * @param distance the distance from station 0+00, negative before it
     * @return the station
     * @throws IllegalArgumentException if it is over 1,000,000 km from zero
     */
    public static Station ofMetric(Length distance) {
        return new Station(distance, METRE);
    }

    /**
     * Reads a station of a line that is stationed in feet, such as {@code 1+53.25}.
     *
     * <p>The plus is followed by two digits, with or without decimals; 1+5 is refused, for it could mean 1+05 or 1+50.
     *
     * @param text the station, with a minus sign in front if it is before 0+00
     * @return the station, to the nearest nanometre
     * @throws IllegalArgumentException if the text is not a station; the message has the text and the column
     */
    public static Station parse(CharSequence text) {
        return of(read(text, FOOT));
    }

    /**
     * Reads a station of a line that is stationed in metres, such as {@code 0+30.50}; the same notation as
     * {@link #parse}.
     *
     * @param text the station, with a minus sign in front if it is before 0+00
     * @return the station, to the nearest nanometre
     * @throws IllegalArgumentException if the text is not a station; the message has the text and the column
     */
    public static Station parseMetric(CharSequence text) {
        return ofMetric(read(text, METRE));
    }

    private static Length read(CharSequence text, Length unit) {
        if (text.length() > LONGEST_TEXT) {
            throw new IllegalArgumentException("station \"" + text.subSequence(0, LONGEST_TEXT) + "...\" has "
                    + text.length() + " characters; it must have " + LONGEST_TEXT + " or fewer");
        }
        Matcher notation = NOTATION.matcher(text);
        if (!notation.matches()) {
            throw new IllegalArgumentException("station \"" + text + "\" cannot be read at column "
                    + (goodUpTo(text) + 1) + "; expected full stations, a plus and two digits, as in 1+53.25 or 0+05");
        }
        BigDecimal size = new BigDecimal(notation.group(2) + notation.group(3));
        long nanometres = size.multiply(BigDecimal.valueOf(unit.nanometres()))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
        return Length.ofNanometres(notation.group(1).isEmpty() ? nanometres : -nanometres);
    }

    /** Returns how many characters could still be the beginning of a station. */
    private static int goodUpTo(CharSequence text) {
        Matcher begun = NOTATION.matcher(text);
        int end = text.length();
        while (!begun.region(0, end).matches() && !begun.hitEnd()) {
            end--;
        }
        return end;
    }

    /**
     * Returns how far along the line it is.
     *
     * @return the distance from station 0+00
     */
    public Length distance() {
        return distance;
    }

    /**
     * Tells whether a full station is 100 m and not 100 ft.
     *
     * @return true for a line stationed in metres
     */
    public boolean isMetric() {
        return unit.equals(METRE);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Station station && station.distance.equals(distance) && station.unit.equals(unit);
    }

    @Override
    public int hashCode() {
        return Objects.hash(distance, unit);
    }

    /**
     * Returns the station to the nearest hundredth of a foot or metre, half a hundredth going away from zero. It is
     * rounded first and split after, so that 99.995 is 1+00.00.
     *
     * @return the text, which {@link #parse} or {@link #parseMetric} reads back
     */
    @Override
    public String toString() {
        Length hundredth = unit.dividedBy(HUNDREDTHS);
        long hundredths = distance.roundedTo(hundredth, Rounding.NEAREST).nanometres() / hundredth.nanometres();
        long size = Math.abs(hundredths);
        String rest = BigDecimal.valueOf(size % (100 * HUNDREDTHS), 2).toPlainString();
        return (hundredths < 0 ? "-" : "") + size / (100 * HUNDREDTHS) + "+" + (rest.length() < 5 ? "0" : "") + rest;
    }
}
