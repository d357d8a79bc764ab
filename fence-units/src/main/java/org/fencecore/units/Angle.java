package org.fencecore.units;

import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * An angle, which may be of any size and either sign.
 *
 * <p>Example: {@code Angle.ofDms(45, 30, 15)} is 45.504166... degrees.
 */
public final class Angle extends Measure<Angle> {

    /** No angle at all. */
    public static final Angle ZERO = new Angle(0);

    /** A square corner, 90 degrees. */
    public static final Angle RIGHT = new Angle(Math.PI / 2);

    /** A straight line, 180 degrees. */
    public static final Angle STRAIGHT = new Angle(Math.PI);

    private Angle(double radians) {
        super(radians);
    }

    @Override
    Angle with(double newSi) {
        return new Angle(newSi);
    }

    /**
     * Returns an angle given in radians.
     *
     * @param radians the angle in radians, finite
     * @return the angle
     * @throws IllegalArgumentException if not finite
     */
    public static Angle ofRadians(double radians) {
        return new Angle(radians);
    }

    /**
     * Returns an angle given in degrees.
     *
     * @param degrees the angle in degrees, finite
     * @return the angle
     * @throws IllegalArgumentException if not finite
     */
    public static Angle ofDegrees(double degrees) {
        return new Angle(Math.toRadians(degrees));
    }

    /**
     * Returns an angle given in degrees, minutes and seconds, not negative; use {@link #negated} for the other way.
     *
     * @param degrees whole degrees, 0 or more
     * @param minutes whole minutes, 0 to 59
     * @param seconds seconds, from 0 to under 60
     * @return the angle
     * @throws IllegalArgumentException if a part is out of its range
     */
    public static Angle ofDms(int degrees, int minutes, double seconds) {
        if (degrees < 0 || minutes < 0 || minutes > 59 || !(seconds >= 0 && seconds < 60)) {
            throw new IllegalArgumentException("angle was " + degrees + " deg " + minutes + " min " + seconds
                    + " sec; use degrees of 0 or more, minutes 0 to 59 and seconds from 0 to under 60");
        }
        return ofDegrees(degrees + minutes / 60.0 + seconds / 3600.0);
    }

    /**
     * Returns the angle between the two sides of a right triangle: the one whose tangent is opposite over adjacent.
     *
     * @param opposite the side facing the angle
     * @param adjacent the side along the angle
     * @return the angle, from -180 to 180 degrees
     */
    public static Angle ofTangent(Length opposite, Length adjacent) {
        return new Angle(Math.atan2((double) opposite.nanometres(), (double) adjacent.nanometres()));
    }

    /**
     * Returns the angle of any JSR-385 quantity.
     *
     * @param quantity an angle in any unit
     * @return the angle
     */
    public static Angle from(Quantity<javax.measure.quantity.Angle> quantity) {
        return new Angle(siOf(quantity, Units.RADIAN));
    }

    /**
     * Returns this angle as a JSR-385 quantity in radians.
     *
     * @return the quantity
     */
    public Quantity<javax.measure.quantity.Angle> toQuantity() {
        return Quantities.getQuantity(si(), Units.RADIAN);
    }

    /**
     * Reads an angle as a plat or an instrument gives it.
     *
     * <p>These are read: degrees, minutes and seconds with their marks or names, as in {@code 45°30'15"},
     * {@code 45° 30'} and {@code 45 deg 30 min 15.5 sec}; the three with hyphens, as in {@code 45-30-15}; and decimal
     * degrees, as in {@code 45.5°} and {@code 45.5 deg}. Only the last part may have decimals. Typeset marks, blanks
     * between the parts, capitals and a sign in front are fine.
     *
     * <p>Anything else is refused, above all what could mean two things: a number without its mark, minutes or seconds
     * of 60 or more, two parts with hyphens.
     *
     * @param text the angle, at most 64 characters
     * @return the angle, the same as {@link #ofDms} or {@link #ofDegrees} gives of those numbers
     * @throws IllegalArgumentException if the text is not such an angle; the message has the text, the column and what
     *     was expected there
     */
    public static Angle parse(CharSequence text) {
        return ofDegrees(AngleText.degrees(text));
    }

    /**
     * Returns the angle in radians.
     *
     * @return radians
     */
    public double radians() {
        return si();
    }

    /**
     * Returns the angle in degrees.
     *
     * @return degrees
     */
    public double degrees() {
        return Math.toDegrees(si());
    }

    /**
     * Returns the sine of this angle.
     *
     * @return the sine
     */
    public double sin() {
        return Math.sin(si());
    }

    /**
     * Returns the cosine of this angle.
     *
     * @return the cosine
     */
    public double cos() {
        return Math.cos(si());
    }

    /**
     * Returns the tangent of this angle.
     *
     * @return the tangent
     */
    public double tan() {
        return Math.tan(si());
    }

    /**
     * Returns the angle that makes this one square: 90 degrees less this.
     *
     * @return the complement
     */
    public Angle complement() {
        return RIGHT.minus(this);
    }

    /**
     * Returns the same direction as an angle of one turn.
     *
     * @return the angle from 0 to under 360 degrees
     */
    public Angle normalized() {
        double turn = 2 * Math.PI;
        double rest = si() % turn;
        double positive = rest < 0 ? rest + turn : rest;
        // A tiny negative angle plus a turn can round to the full turn itself.
        return new Angle(positive >= turn ? 0 : positive);
    }

    /**
     * Returns the angle as text that {@link #parse} reads: {@code 45°30'15"} with zero parts at the end left out if
     * seconds to three decimals say it exactly, else decimal degrees such as {@code 11.309932474020215°}.
     *
     * <p>Read back, it is the same angle to about 1 part in 10^15; from degrees, minutes and seconds, exactly.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return AngleText.write(this);
    }
}
