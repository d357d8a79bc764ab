package org.fencecore.geometry;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * A direction in plan, as a plat gives it: N 45°30'15" E is 45°30'15" from north towards east.
 *
 * <p>It is kept as an azimuth, the angle clockwise from north, from 0 to under 360 degrees. Whether north is true,
 * magnetic or that of a grid is for the plat to say; all bearings of a job must mean the same north.
 *
 * <p>Example: the turn from one side of a lot to the next.
 *
 * <pre>{@code
 * Bearing side = Bearing.parse("S89°18'W");
 * Bearing next = Bearing.parse("N0°40'W");
 * side.azimuth();        // 269°18'
 * side.turnTo(next);     // 90°02', to the right
 * side.reversed();       // N 89°18' E
 * }</pre>
 *
 * <p>Sources: latitude and departure of a course as in NAVEDTRA 14071, Engineering Aid Advanced, p. 7-9; azimuths from
 * south as in old descriptions of land in Hawaii, such as Executive Order 7893.
 */
public final class Bearing {

    /** Due north. */
    public static final Bearing NORTH = new Bearing(Angle.ZERO);

    /** Due east. */
    public static final Bearing EAST = new Bearing(Angle.RIGHT);

    /** Due south. */
    public static final Bearing SOUTH = new Bearing(Angle.STRAIGHT);

    /** Due west. */
    public static final Bearing WEST = new Bearing(Angle.ofDegrees(270));

    private static final int LONGEST_TEXT = 64;
    private static final String BLANKS = "[\\s\\p{Zs}]*";
    private static final Pattern DUE =
            pattern("\\A" + BLANKS + "(?:due[\\s\\p{Zs}]+)?(north|east|south|west)" + BLANKS + "\\z");
    private static final Pattern HEAD = pattern("\\A" + BLANKS + "(north|south|n|s)(?!\\p{L})\\.?");
    private static final Pattern TAIL = pattern("(?<!\\p{L})(east|west|e|w)\\.?" + BLANKS + "\\z");
    private static final Pattern NUMBER_FIRST = pattern("\\A" + BLANKS + "[0-9.]");

    private static final long THOUSANDTHS_PER_SECOND = 1000;
    private static final long THOUSANDTHS_PER_MINUTE = 60 * THOUSANDTHS_PER_SECOND;
    private static final long THOUSANDTHS_PER_DEGREE = 60 * THOUSANDTHS_PER_MINUTE;
    private static final long QUADRANT = 90 * THOUSANDTHS_PER_DEGREE;

    private final Angle azimuth;

    private Bearing(Angle azimuth) {
        this.azimuth = azimuth.normalized();
    }

    /**
     * Returns the direction at an angle clockwise from north.
     *
     * @param fromNorth the azimuth; any size and sign, whole turns do not matter
     * @return the bearing
     */
    public static Bearing ofAzimuth(Angle fromNorth) {
        return new Bearing(fromNorth);
    }

    /**
     * Returns the direction at an angle clockwise from south, as some old descriptions give it.
     *
     * @param fromSouth the azimuth from south; any size and sign
     * @return the bearing
     */
    public static Bearing ofAzimuthFromSouth(Angle fromSouth) {
        return new Bearing(fromSouth.plus(Angle.STRAIGHT));
    }

    /** Returns the direction of a line that goes so far east and north, not both zero. */
    static Bearing ofParts(long east, long north) {
        return new Bearing(Angle.ofRadians(Math.atan2((double) east, (double) north)));
    }

    /**
     * Reads a bearing as plats and deeds write it.
     *
     * <p>These are read: {@code N 45°30'15" E}, {@code S89°18'W}, {@code N45-30-15E}, {@code N. 45.5° W.} and
     * {@code North 45 deg 30 min East}, with the angle in any form that {@link Angle#parse} takes, from 0 to 90 degrees
     * and without a sign; and the four directions written out, {@code North} or {@code Due North}. Capitals do not
     * matter. A bare azimuth is refused, for it does not say whether it counts from north or from south: use
     * {@link #ofAzimuth} or {@link #ofAzimuthFromSouth}.
     *
     * @param text the bearing, at most 64 characters
     * @return the bearing
     * @throws IllegalArgumentException if the text is not such a bearing; the message has the text, the column and what
     *     was expected there
     */
    public static Bearing parse(CharSequence text) {
        if (text.length() > LONGEST_TEXT) {
            throw new IllegalArgumentException("bearing \"" + text.subSequence(0, 20) + "...\" has " + text.length()
                    + " characters; it must have " + LONGEST_TEXT + " or fewer");
        }
        Matcher due = DUE.matcher(text);
        if (due.matches()) {
            return cardinal(lower(due.group(1)));
        }
        Matcher head = HEAD.matcher(text);
        if (!head.find()) {
            throw refusal(text, 0, "N or S, as in N 45°30'15\" E; for an azimuth say from which end it counts");
        }
        Matcher tail = TAIL.matcher(text);
        if (!tail.find(head.end())) {
            throw refusal(text, text.length(), "E or W after the angle, as in N 45°30'15\" E");
        }
        if (!NUMBER_FIRST.matcher(text.subSequence(head.end(), tail.start())).find()) {
            throw refusal(text, head.end(), "degrees without a sign, as in N 45°30'15\" E");
        }
        Angle quadrant = angle(text, head.end(), tail.start());
        if (quadrant.compareTo(Angle.RIGHT) > 0) {
            throw refusal(text, head.end(), "an angle from 0 to 90 degrees");
        }
        boolean north = lower(head.group(1)).startsWith("n");
        boolean east = lower(tail.group(1)).startsWith("e");
        Angle clockwise = east == north ? quadrant : quadrant.negated();
        return new Bearing(north ? clockwise : clockwise.plus(Angle.STRAIGHT));
    }

    private static Bearing cardinal(String word) {
        return switch (word) {
            case "north" -> NORTH;
            case "east" -> EAST;
            case "south" -> SOUTH;
            default -> WEST;
        };
    }

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    private static String lower(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    private static Angle angle(CharSequence text, int from, int until) {
        // With blanks in place of what stands before it, the column in the angle's own message is that of the bearing.
        String masked = " ".repeat(from) + text.subSequence(from, until);
        try {
            return Angle.parse(masked);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("bearing \"" + printable(text) + "\": " + e.getMessage(), e);
        }
    }

    private static String printable(CharSequence text) {
        return text.toString().replaceAll("\\p{Cntrl}", "?");
    }

    private static IllegalArgumentException refusal(CharSequence text, int position, String expected) {
        return new IllegalArgumentException("bearing \"" + printable(text) + "\" cannot be read: at column "
                + (position + 1) + " expected " + expected);
    }

    /**
     * Returns the angle clockwise from north.
     *
     * @return the azimuth, from 0 to under 360 degrees
     */
    public Angle azimuth() {
        return azimuth;
    }

    /**
     * Returns the angle clockwise from south.
     *
     * @return the azimuth from south, from 0 to under 360 degrees
     */
    public Angle azimuthFromSouth() {
        return azimuth.plus(Angle.STRAIGHT).normalized();
    }

    /**
     * Returns how far north a course of this direction goes: its length times the cosine of the azimuth.
     *
     * @param distance the level length of the course
     * @return the latitude, negative for south, to the nearest nanometre
     */
    public Length latitude(Length distance) {
        return Length.ofNanometres(Math.round(distance.nanometres() * azimuth.cos()));
    }

    /**
     * Returns how far east a course of this direction goes: its length times the sine of the azimuth.
     *
     * @param distance the level length of the course
     * @return the departure, negative for west, to the nearest nanometre
     */
    public Length departure(Length distance) {
        return Length.ofNanometres(Math.round(distance.nanometres() * azimuth.sin()));
    }

    /**
     * Returns the opposite direction, in which the same line is walked back.
     *
     * @return this bearing plus half a turn
     */
    public Bearing reversed() {
        return new Bearing(azimuth.plus(Angle.STRAIGHT));
    }

    /**
     * Returns the direction after a turn.
     *
     * @param turn the angle to turn, to the right if positive, to the left if negative
     * @return the new bearing
     */
    public Bearing plus(Angle turn) {
        return new Bearing(azimuth.plus(turn));
    }

    /**
     * Returns the turn from this direction to another: the deflection angle of a surveyor.
     *
     * @param next the direction to turn to
     * @return the turn, to the right if positive, over -180 up to 180 degrees
     */
    public Angle turnTo(Bearing next) {
        double turn = next.azimuth.radians() - azimuth.radians();
        if (turn > Math.PI) {
            return Angle.ofRadians(turn - 2 * Math.PI);
        }
        return Angle.ofRadians(turn <= -Math.PI ? turn + 2 * Math.PI : turn);
    }

    /**
     * Returns the nearest bearing that is a whole number of increments from north, such as to the second for a plat.
     *
     * @param increment the angle between marks, over zero
     * @return the rounded bearing
     * @throws IllegalArgumentException if {@code increment} is not over zero
     */
    public Bearing roundedTo(Angle increment) {
        if (!increment.isPositive()) {
            throw new IllegalArgumentException(
                    "increment was " + increment + "; it must be over 0, such as one second of arc");
        }
        return new Bearing(increment.times(Math.rint(azimuth.ratioTo(increment).value())));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Bearing bearing && bearing.azimuth.equals(azimuth);
    }

    @Override
    public int hashCode() {
        return azimuth.hashCode();
    }

    /**
     * Returns the bearing as text that {@link #parse} reads, to the nearest thousandth of a second.
     *
     * @return the quadrant bearing, such as {@code N 45°30'15" E} or {@code S 1°42' W}
     */
    @Override
    public String toString() {
        // Rounded first and split after, so that 359°59'59.9999" comes out as north and not as 60 seconds.
        long thousandths = Math.round(azimuth.degrees() * THOUSANDTHS_PER_DEGREE) % (4 * QUADRANT);
        boolean north = thousandths <= QUADRANT || thousandths >= 3 * QUADRANT;
        boolean east = thousandths <= 2 * QUADRANT;
        long fromNorth = east ? thousandths : 4 * QUADRANT - thousandths;
        long size = north ? fromNorth : 2 * QUADRANT - fromNorth;
        Angle quadrant = Angle.ofDms(
                (int) (size / THOUSANDTHS_PER_DEGREE),
                (int) (size % THOUSANDTHS_PER_DEGREE / THOUSANDTHS_PER_MINUTE),
                size % THOUSANDTHS_PER_MINUTE / (double) THOUSANDTHS_PER_SECOND);
        return (north ? "N " : "S ") + quadrant + (east ? " E" : " W");
    }
}
