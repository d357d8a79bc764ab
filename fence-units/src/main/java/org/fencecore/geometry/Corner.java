package org.fencecore.geometry;

import java.util.Objects;
import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * A corner where one line arrives and the next leaves, and which side of it is the inside.
 *
 * <p>Example: at the square corner of a yard that lies on the right, a string 2 ft inside both lines turns 2 ft before
 * and 2 ft off the corner; stakes 6 ft and 8 ft along the legs are 10 ft apart.
 *
 * <pre>{@code
 * Corner corner = Corner.of(
 *         Point.ORIGIN,
 *         Point.of(Length.ZERO, Length.ofFeet(50)),
 *         Point.of(Length.ofFeet(30), Length.ofFeet(50)),
 *         Side.RIGHT);
 * corner.interiorAngle();                                       // 90 degrees
 * corner.mitrePoint(Length.ofFeet(2));                          // E 2 ft, N 48 ft
 * corner.diagonal(Length.ofFeet(6), Length.ofFeet(8));          // 10 ft
 * }</pre>
 *
 * <p>Sources: squaring a corner by its diagonal as in NAVEDTRA 14043, fig. 5-16; the mitre is plane geometry.
 */
public final class Corner {

    private final Point vertex;
    private final Bearing arriving;
    private final Bearing leaving;
    private final Side inside;

    private Corner(Point vertex, Bearing arriving, Bearing leaving, Side inside) {
        this.vertex = vertex;
        this.arriving = arriving;
        this.leaving = leaving;
        this.inside = inside;
    }

    /**
     * Returns the corner at a point of a line.
     *
     * @param before a point on the leg that arrives
     * @param vertex the corner itself
     * @param after a point on the leg that leaves
     * @param inside which side of the line is the inside
     * @return the corner
     * @throws IllegalArgumentException if {@code vertex} is the same point as one of the others
     */
    public static Corner of(Point before, Point vertex, Point after, Side inside) {
        return new Corner(vertex, before.bearingTo(vertex), vertex.bearingTo(after), inside);
    }

    /**
     * Returns the corner between two directions.
     *
     * @param vertex the corner itself
     * @param arriving the direction of the leg that arrives, towards the corner
     * @param leaving the direction of the leg that leaves, away from the corner
     * @param inside which side of the line is the inside
     * @return the corner
     */
    public static Corner of(Point vertex, Bearing arriving, Bearing leaving, Side inside) {
        return new Corner(vertex, arriving, leaving, inside);
    }

    /**
     * Returns where the corner is.
     *
     * @return the point
     */
    public Point vertex() {
        return vertex;
    }

    /**
     * Returns the direction in which the line arrives.
     *
     * @return the bearing towards the corner
     */
    public Bearing arriving() {
        return arriving;
    }

    /**
     * Returns the direction in which the line goes on.
     *
     * @return the bearing away from the corner
     */
    public Bearing leaving() {
        return leaving;
    }

    /**
     * Returns which side of the line is the inside.
     *
     * @return the side, looking along the line
     */
    public Side inside() {
        return inside;
    }

    /**
     * Returns the turn of the line at the corner.
     *
     * @return the deflection angle, to the right if positive, over -180 up to 180 degrees
     */
    public Angle turn() {
        return arriving.turnTo(leaving);
    }

    /**
     * Returns the angle between the two legs, measured on the inside: 180 degrees less the turn towards the inside.
     *
     * @return the interior angle, 180 degrees where the line goes straight on, 0 or 360 where it doubles back
     */
    public Angle interiorAngle() {
        return Angle.STRAIGHT.minus(turnInwards());
    }

    /**
     * Tells whether the corner points into the inside, as the inner corner of an L does.
     *
     * @return true if the interior angle is over 180 degrees
     */
    public boolean isReflex() {
        return turnInwards().isNegative();
    }

    /**
     * Returns how much shorter each leg is when both are moved inwards: the offset times the tangent of half the turn.
     *
     * @param offset how far the legs move, square to themselves; negative to the outside
     * @return the run, to the nearest nanometre; negative at a reflex corner, where the legs become longer
     * @throws IllegalArgumentException if the offset is over 1,000,000 km, or the line doubles back on itself, so that the
     *     moved legs do not meet within that distance
     */
    public Length mitreRun(Length offset) {
        return Length.ofNanometres(Math.round(mitreRunNanometres(offset)));
    }

    /**
     * Returns how far the corner moves when both legs move: the offset over the sine of half the interior angle. It is
     * also the length of the cut when boards of that width are mitred around the corner.
     *
     * @param offset how far the legs move, square to themselves
     * @return the distance from this corner to the moved one, to the nearest nanometre
     * @throws IllegalArgumentException if the offset is over 1,000,000 km, or the line doubles back on itself, so that the
     *     moved legs do not meet within that distance
     */
    public Length mitreLength(Length offset) {
        return vertex.distanceTo(mitrePoint(offset));
    }

    /**
     * Returns where the legs meet when both are moved inwards by the same distance.
     *
     * @param offset how far the legs move, square to themselves; negative to the outside
     * @return the moved corner, to the nearest nanometre each way
     * @throws IllegalArgumentException if the offset is over 1,000,000 km, or the line doubles back on itself, so that the
     *     moved legs do not meet within that distance
     */
    public Point mitrePoint(Length offset) {
        double in = inside.sign() * (double) offset.nanometres();
        double back = mitreRunNanometres(offset);
        double sin = arriving.azimuth().sin();
        double cos = arriving.azimuth().cos();
        // Square off the arriving leg to the inside, then back along it. Unlike the crossing of two lines this does
        // not lose precision where the line turns by little or nothing.
        return Point.at(
                vertex.x() + Math.round(in * cos - back * sin), vertex.y() + Math.round(-in * sin - back * cos));
    }

    /**
     * Returns the distance between a mark on one leg and a mark on the other, by the law of cosines with the interior
     * angle: the square root of a² + b² - 2ab cos C. A crew sets the corner by moving a leg until the tape reads this.
     *
     * @param onArriving the distance from the corner to the mark on the arriving leg, over zero
     * @param onLeaving the distance from the corner to the mark on the leaving leg, over zero
     * @return the distance between the marks, to the nearest nanometre
     * @throws IllegalArgumentException if a distance is not over zero
     */
    public Length diagonal(Length onArriving, Length onLeaving) {
        Triangle.requirePositive("onArriving", onArriving);
        Triangle.requirePositive("onLeaving", onLeaving);
        return Triangle.thirdSide(onArriving, onLeaving, interiorAngle());
    }

    /**
     * Returns the interior angle that a measured diagonal tells, by the law of cosines: what the corner is when the tape
     * does not read {@link #diagonal}. A corner that points inwards is measured on its outside, and 360 degrees less that
     * angle is told.
     *
     * <p>Example: where 6 ft and 8 ft on the legs are 10 ft 1/8 in apart, a corner meant to be square stands open by an
     * eighth of a degree, at 90.1244 degrees.
     *
     * @param onArriving the distance from the corner to the mark on the arriving leg, over zero
     * @param onLeaving the distance from the corner to the mark on the leaving leg, over zero
     * @param measured the distance between the marks, over zero
     * @return the angle between the legs on the inside
     * @throws IllegalArgumentException if a distance is not over zero, or the three do not make a triangle
     */
    public Angle interiorAngleAt(Length onArriving, Length onLeaving, Length measured) {
        Angle told = Triangle.ofSides(onArriving, onLeaving, measured).angleC();
        return isReflex() ? Angle.STRAIGHT.times(2).minus(told) : told;
    }

    private double mitreRunNanometres(Length offset) {
        Exact.requireInRange("offset", offset);
        double run = offset.nanometres() * turnInwards().times(0.5).tan();
        if (Math.abs(run) > Exact.LIMIT) {
            throw new IllegalArgumentException("the line turns by " + turn() + " at " + vertex
                    + " and so doubles back on itself: legs moved by " + offset
                    + " would meet over 1,000,000 km away; leave out the corner or move it");
        }
        return run;
    }

    private Angle turnInwards() {
        return turn().times(inside.sign());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Corner corner
                && corner.vertex.equals(vertex)
                && corner.arriving.equals(arriving)
                && corner.leaving.equals(leaving)
                && corner.inside == inside;
    }

    @Override
    public int hashCode() {
        return Objects.hash(vertex, arriving, leaving, inside);
    }

    /**
     * Returns the corner as text.
     *
     * @return the place, the two bearings and the interior angle
     */
    @Override
    public String toString() {
        return "corner at " + vertex + ", " + arriving + " to " + leaving + ", interior angle " + interiorAngle();
    }
}
