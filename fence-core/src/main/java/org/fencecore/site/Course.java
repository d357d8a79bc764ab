package org.fencecore.site;

import java.util.Objects;
import org.fencecore.geometry.Bearing;
import org.fencecore.units.Length;

/**
 * One straight call of a deed or plat: go that way, that far.
 *
 * @param bearing the direction
 * @param distance the level distance, over zero
 */
public record Course(Bearing bearing, Length distance) {

    /**
     * Checks the parts.
     *
     * @param bearing the direction
     * @param distance the level distance, over zero
     * @throws IllegalArgumentException if {@code distance} is not over zero
     */
    public Course {
        Objects.requireNonNull(bearing, "bearing");
        if (!distance.isPositive()) {
            throw new IllegalArgumentException("distance of the course " + bearing + " was " + distance
                    + "; it must be over 0: leave the course out or turn its bearing round");
        }
    }

    /**
     * Returns a course.
     *
     * @param bearing the direction
     * @param distance the level distance, over zero
     * @return the course
     * @throws IllegalArgumentException if {@code distance} is not over zero
     */
    public static Course of(Bearing bearing, Length distance) {
        return new Course(bearing, distance);
    }

    @Override
    public String toString() {
        return bearing + ", " + LotBoundary.DEED_FEET.format(distance);
    }
}
