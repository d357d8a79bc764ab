package org.fencecore.geometry;

import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Length;

/**
 * A point in plan, by how far east and how far north it is of the origin of the job.
 *
 * <p>Any level grid will do: the north of a plat, or a yard's own with its origin at a corner stake.
 *
 * <p>Example: a course of S 61°25' E 520.16 ft goes 248.86 ft south and 456.76 ft east.
 *
 * <pre>{@code
 * Point end = Point.ORIGIN.plus(Bearing.parse("S61°25'E"), Length.ofFeet(520.16));
 * end.north();    // -248.86 ft
 * end.east();     // 456.76 ft
 * }</pre>
 *
 * @param east the distance east of the origin, negative for west
 * @param north the distance north of the origin, negative for south
 */
public record Point(Length east, Length north) {

    /** The point that coordinates are counted from. */
    public static final Point ORIGIN = new Point(Length.ZERO, Length.ZERO);

    /**
     * Checks that the coordinates are of a size that can be worked with.
     *
     * @param east the distance east of the origin, negative for west
     * @param north the distance north of the origin, negative for south
     * @throws IllegalArgumentException if one is over 1,000,000 km from zero
     */
    public Point {
        Exact.requireInRange("east", east);
        Exact.requireInRange("north", north);
    }

    /**
     * Returns the point at the given coordinates. East comes first, as x does; plats and surveyors' files often give
     * north first.
     *
     * @param east the distance east of the origin, negative for west
     * @param north the distance north of the origin, negative for south
     * @return the point
     * @throws IllegalArgumentException if a coordinate is over 1,000,000 km from zero
     */
    public static Point of(Length east, Length north) {
        return new Point(east, north);
    }

    /** Returns the point at nanometres east and north. */
    static Point at(long x, long y) {
        return new Point(Length.ofNanometres(x), Length.ofNanometres(y));
    }

    /** Returns nanometres east. */
    long x() {
        return east.nanometres();
    }

    /** Returns nanometres north. */
    long y() {
        return north.nanometres();
    }

    /**
     * Returns the level distance to another point: the square root of the squares of both differences.
     *
     * @param other the other point
     * @return the distance, to the nearest nanometre
     */
    public Length distanceTo(Point other) {
        return Length.ofNanometres(Exact.hypotenuse(other.x() - x(), other.y() - y()));
    }

    /**
     * Returns the direction to another point.
     *
     * @param other the other point, at some distance
     * @return the bearing from here
     * @throws IllegalArgumentException if both are the same point
     */
    public Bearing bearingTo(Point other) {
        if (equals(other)) {
            throw new IllegalArgumentException(
                    "other was " + other + ", the same point, so it lies in no direction; give two different points");
        }
        return Bearing.ofParts(other.x() - x(), other.y() - y());
    }

    /**
     * Returns the point reached from here by one course.
     *
     * @param bearing the direction to go
     * @param distance how far, level; negative to go the opposite way
     * @return the point {@link Bearing#latitude} north and {@link Bearing#departure} east of here
     * @throws IllegalArgumentException if the distance or the point is over 1,000,000 km from zero
     */
    public Point plus(Bearing bearing, Length distance) {
        Exact.requireInRange("distance", distance);
        return new Point(east.plus(bearing.departure(distance)), north.plus(bearing.latitude(distance)));
    }

    /**
     * Returns the point half way to another, rounded down to the nanometre.
     *
     * @param other the other point
     * @return the point in the middle
     */
    public Point midpoint(Point other) {
        return at(Math.floorDiv(x() + other.x(), 2), Math.floorDiv(y() + other.y(), 2));
    }

    /**
     * Returns the coordinates as text.
     *
     * @return such as {@code (E 3 ft, N -4 ft 6 in)}
     */
    @Override
    public String toString() {
        return "(E " + east + ", N " + north + ")";
    }
}
