package org.fencecore.units;

/**
 * A grade: how much the ground or a rail rises for its level run. Rising is positive, falling negative.
 *
 * <p>One grade is written in many ways, and this type converts between them: 20 % is 11.31 degrees, 2.4 in to the foot,
 * and 1 in 5.
 */
public final class Slope extends Measure<Slope> {

    /** Level. */
    public static final Slope LEVEL = new Slope(0);

    private Slope(double risePerRun) {
        super(risePerRun);
    }

    @Override
    Slope with(double newSi) {
        return new Slope(newSi);
    }

    /**
     * Returns the grade of a rise over a level run.
     *
     * @param rise the rise, negative for a fall
     * @param run the level distance, over zero
     * @return the grade
     * @throws IllegalArgumentException if {@code run} is not over zero
     */
    public static Slope of(Length rise, Length run) {
        if (!run.isPositive()) {
            throw new IllegalArgumentException(
                    "run was " + run + "; it must be over 0, since a plumb line has no grade");
        }
        return new Slope((double) rise.nanometres() / run.nanometres());
    }

    /**
     * Returns a grade given in percent: the rise in a run of a hundred.
     *
     * @param percent the grade in percent, finite
     * @return the grade
     * @throws IllegalArgumentException if not finite
     */
    public static Slope ofPercent(double percent) {
        return new Slope(percent / 100);
    }

    /**
     * Returns the grade of a line at an angle to the level.
     *
     * @param angle the angle, between -90 and 90 degrees
     * @return the grade
     * @throws IllegalArgumentException if the angle is plumb or past it
     */
    public static Slope ofAngle(Angle angle) {
        if (!(Math.abs(angle.radians()) < Math.PI / 2)) {
            throw new IllegalArgumentException("angle was " + angle + "; it must be between -90 and 90 deg");
        }
        return new Slope(angle.tan());
    }

    /**
     * Returns the grade of a rise in each foot of level run.
     *
     * @param rise the rise in one foot
     * @return the grade
     */
    public static Slope ofRisePerFoot(Length rise) {
        return of(rise, Length.ofFeet(1));
    }

    /**
     * Returns a grade of 1 in {@code run}.
     *
     * @param run the run for a rise of one; not zero, negative for a fall
     * @return the grade
     * @throws IllegalArgumentException if {@code run} is zero or not finite
     */
    public static Slope ofOneIn(double run) {
        if (run == 0 || !Double.isFinite(run)) {
            throw new IllegalArgumentException("run was " + run + "; it must be a finite number other than 0");
        }
        return new Slope(1 / run);
    }

    /**
     * Reads a grade as the trades write it: {@code 20 %} or {@code 20 percent}; an angle to the level such as
     * {@code 11.3 deg} or {@code 11°18'}; a rise for each foot or metre of level run such as {@code 2.4 in/ft},
     * {@code 2 3/8" per ft} or {@code 20 mm/m}; or {@code 1:5} and {@code 1 in 5}, the rise first.
     *
     * <p>A fall has a minus in front. A number alone is refused, and so is {@code 2:1}, which some read as rise to run
     * and others as run to rise.
     *
     * @param text the grade, at most 64 characters
     * @return the grade
     * @throws IllegalArgumentException if the text is not such a grade; the message has the text, the column and what
     *     was expected there
     */
    public static Slope parse(CharSequence text) {
        return SlopeText.read(text);
    }

    /**
     * Returns the grade as rise over run.
     *
     * @return the ratio
     */
    public Ratio ratio() {
        return Ratio.of(si());
    }

    /**
     * Returns the grade in percent.
     *
     * @return percent
     */
    public double percent() {
        return si() * 100;
    }

    /**
     * Returns the angle of the grade to the level.
     *
     * @return the angle, between -90 and 90 degrees
     */
    public Angle angle() {
        return Angle.ofRadians(Math.atan(si()));
    }

    /**
     * Returns the rise in each foot of level run.
     *
     * @return the rise, to the nearest nanometre
     */
    public Length risePerFoot() {
        return riseOver(Length.ofFeet(1));
    }

    /**
     * Returns the run for a rise of one, the n of 1:n.
     *
     * @return the run; infinite when level
     */
    public double runPerRise() {
        return 1 / si();
    }

    /**
     * Returns the rise over a level run.
     *
     * @param run the level distance
     * @return the rise, to the nearest nanometre
     */
    public Length riseOver(Length run) {
        return run.times(ratio());
    }

    /**
     * Returns the distance along the grade over a level run: run times the square root of 1 plus the grade squared.
     *
     * @param run the level distance
     * @return the distance along the slope, to the nearest nanometre
     */
    public Length lengthOver(Length run) {
        return run.times(stretch());
    }

    /**
     * Returns the distance along the grade for each unit of level run, also the plumb depth of a sloped rail for each
     * unit of its square depth: the square root of 1 plus the grade squared.
     *
     * @return the ratio, 1 or more
     */
    public Ratio stretch() {
        return Ratio.of(Math.sqrt(1 + si() * si()));
    }

    /**
     * Returns the grade in percent, such as {@code 20 %}, as {@link #parse} reads it. Read back, it is the same grade to
     * about 1 part in 10^15.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return SlopeText.write(si());
    }
}
