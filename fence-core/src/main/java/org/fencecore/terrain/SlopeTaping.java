package org.fencecore.terrain;

import java.util.List;
import org.fencecore.geometry.RightTriangle;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * A distance taped along sloping ground and the level distance that it comes to.
 *
 * <pre>
 * level distance          = sqrt(s^2 - h^2), s along the slope, h the difference in height of its ends
 * correction              = s - level distance
 * gentle-slope correction = h^2 / 2 s, near enough up to 5 %
 * closer correction       = h^2 / 2 s + h^4 / 8 s^3
 * </pre>
 *
 * <p>The level distance is worked out exactly; the two approximations are what a builder works out by hand. It assumes
 * an even slope and leaves out the tape's sag, pull and temperature.
 *
 * <p>Sources: NAVEDTRA, Engineering Aid Basics, fig. 12-15, for h^2 / 2 s and its limit of 5 %; the second term from
 * memory.
 *
 * <p>Example: a 30 m tape with its ends 0.70 m apart in height reaches 29.99183 m level.
 *
 * <pre>{@code
 * SlopeTaping tape = SlopeTaping.ofRise(Length.ofMetres(30), Length.ofMetres(0.70));
 * tape.levelDistance();            // 29.99183 m
 * tape.correction();               // 8.17 mm
 * tape.gentleSlopeCorrection();    // 8.17 mm
 * }</pre>
 */
public final class SlopeTaping {

    private static final Citation TAPING = Citation.of("NAVEDTRA, Engineering Aid Basics", "fig. 12-15", "");
    private static final Length LONGEST = Length.ofMetres(100_000);
    private static final Slope GENTLE = Slope.ofPercent(5);

    private final Length slopeDistance;
    private final Length rise;
    private final Length levelDistance;

    private SlopeTaping(Length slopeDistance, Length rise, Length levelDistance) {
        requireTaped("slopeDistance", slopeDistance);
        requireTaped("levelDistance", levelDistance);
        this.slopeDistance = slopeDistance;
        this.rise = rise;
        this.levelDistance = levelDistance;
    }

    private static void requireTaped(String name, Length distance) {
        if (!distance.isPositive() || distance.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(
                    name + " was " + distance + "; it must be over 0 and at most " + LONGEST + ": check its unit");
        }
    }

    /**
     * Reduces a distance taped along a slope by the difference in height of its ends.
     *
     * @param slopeDistance the distance along the slope, over 0 and at most 100 km
     * @param rise how much higher the far end is, negative if lower, smaller than the distance
     * @return the taping
     * @throws IllegalArgumentException if a value is out of its range
     */
    public static SlopeTaping ofRise(Length slopeDistance, Length rise) {
        requireTaped("slopeDistance", slopeDistance);
        if (rise.abs().compareTo(slopeDistance) >= 0) {
            throw new IllegalArgumentException("rise was " + rise + " over a slope distance of " + slopeDistance
                    + "; it must be smaller, so see whether the two are swapped");
        }
        Length level = rise.isZero()
                ? slopeDistance
                : RightTriangle.ofLegAndHypotenuse(rise.abs(), slopeDistance).legB();
        return new SlopeTaping(slopeDistance, rise, level);
    }

    /**
     * Reduces a distance taped along a slope by its angle.
     *
     * @param slopeDistance the distance along the slope, over 0 and at most 100 km
     * @param angle the angle to the level, negative downhill, between -90 and 90 degrees
     * @return the taping
     * @throws IllegalArgumentException if a value is out of its range
     */
    public static SlopeTaping ofAngle(Length slopeDistance, Angle angle) {
        requireTaped("slopeDistance", slopeDistance);
        Slope.ofAngle(angle); // refuses an angle that is plumb or past it
        double nanometres = slopeDistance.nanometres();
        return new SlopeTaping(
                slopeDistance,
                Length.ofNanometres(Math.round(nanometres * angle.sin())),
                Length.ofNanometres(Math.round(nanometres * angle.cos())));
    }

    /**
     * Works out how far to tape along a slope to lay off a level distance.
     *
     * @param levelDistance the level distance wanted, over 0 and at most 100 km
     * @param grade the grade of the ground, rising positive
     * @return the taping
     * @throws IllegalArgumentException if a distance is out of its range
     */
    public static SlopeTaping ofLevel(Length levelDistance, Slope grade) {
        requireTaped("levelDistance", levelDistance);
        return new SlopeTaping(grade.lengthOver(levelDistance), grade.riseOver(levelDistance), levelDistance);
    }

    /**
     * Returns the distance along the slope.
     *
     * @return what the tape reads
     */
    public Length slopeDistance() {
        return slopeDistance;
    }

    /**
     * Returns how much higher the far end is.
     *
     * @return the difference in height, negative downhill
     */
    public Length rise() {
        return rise;
    }

    /**
     * Returns the level distance.
     *
     * @return the distance in plan, to the nearest nanometre
     */
    public Length levelDistance() {
        return levelDistance;
    }

    /**
     * Returns what to take off the slope distance.
     *
     * @return the slope distance less the level distance, zero or more
     */
    public Length correction() {
        return slopeDistance.minus(levelDistance);
    }

    /**
     * Returns the correction for gentle slopes, h^2 / 2 s.
     *
     * @return the approximate correction; on a slope over 5 % it is noticeably too small
     */
    public Length gentleSlopeCorrection() {
        return Length.ofNanometres(Math.round(gentle()));
    }

    /**
     * Returns the correction with the next term, h^2 / 2 s + h^4 / 8 s^3.
     *
     * @return the approximate correction for steeper slopes
     */
    public Length closerCorrection() {
        double h = rise.nanometres();
        double s = slopeDistance.nanometres();
        return Length.ofNanometres(Math.round(gentle() + h * h * h * h / (8 * s * s * s)));
    }

    private double gentle() {
        double h = rise.nanometres();
        return h * h / (2.0 * slopeDistance.nanometres());
    }

    private Slope grade() {
        return Slope.of(rise.abs(), levelDistance);
    }

    /**
     * Returns what to mind when working it out by hand: {@code steep-for-short-formula} if the slope is over 5 %, with
     * what h^2 / 2 s is short by.
     *
     * @return all findings, empty on a gentle slope
     */
    public List<Finding> findings() {
        if (grade().compareTo(GENTLE) <= 0) {
            return List.of();
        }
        return List.of(Finding.note(
                        "steep-for-short-formula",
                        "slope of " + Written.percent(grade()),
                        "h^2 / 2 s is " + Written.inches(correction().minus(gentleSlopeCorrection()))
                                + " short of the correction of " + Written.inches(correction()))
                .withRemedy("take sqrt(s^2 - h^2), or add h^4 / 8 s^3")
                .withSource(TAPING));
    }

    /**
     * Returns the calculation line by line, ending with the level distance.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        String s = Written.feet(slopeDistance);
        String h = Written.feet(rise);
        return Worksheet.titled("Slope taping")
                .given("slope distance s", slopeDistance, s)
                .given("difference in height h", rise, h)
                .line(
                        "gentle-slope correction",
                        "h^2 / 2 s",
                        "(" + h + ")^2 / (2 x " + s + ")",
                        gentleSlopeCorrection(),
                        Written.feet(gentleSlopeCorrection()),
                        TAPING)
                .line(
                        "closer correction",
                        "h^2 / 2 s + h^4 / 8 s^3",
                        Written.feet(gentleSlopeCorrection()) + " + (" + h + ")^4 / (8 x (" + s + ")^3)",
                        closerCorrection(),
                        Written.feet(closerCorrection()),
                        Citation.of("from memory", "", ""))
                .line(
                        "level distance",
                        "sqrt(s^2 - h^2)",
                        "sqrt((" + s + ")^2 - (" + h + ")^2)",
                        levelDistance,
                        Written.feet(levelDistance),
                        Citation.GEOMETRY)
                .build();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SlopeTaping that
                && slopeDistance.equals(that.slopeDistance)
                && rise.equals(that.rise)
                && levelDistance.equals(that.levelDistance);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * slopeDistance.hashCode() + rise.hashCode()) + levelDistance.hashCode();
    }

    /**
     * Describes the taping.
     *
     * @return such as {@code 100.00 ft along the slope is 99.50 ft level}
     */
    @Override
    public String toString() {
        return Written.station(slopeDistance) + " along the slope is " + Written.station(levelDistance) + " level";
    }
}
