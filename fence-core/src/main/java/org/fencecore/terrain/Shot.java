package org.fencecore.terrain;

import java.util.Objects;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;

/**
 * One spot shot: how high the ground is at a place.
 *
 * @param place where the rod stood, in plan
 * @param elevation the height of the ground there over the chosen datum
 */
public record Shot(Point place, Length elevation) {

    /**
     * Checks that both are there.
     *
     * @param place where the rod stood, in plan
     * @param elevation the height of the ground there over the chosen datum
     */
    public Shot {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(elevation, "elevation");
    }

    /**
     * Returns a shot from its coordinates. East comes first, as x does; surveyors' files often give north first.
     *
     * @param east the distance east of the origin
     * @param north the distance north of the origin
     * @param elevation the height of the ground there
     * @return the shot
     * @throws IllegalArgumentException if a coordinate is over 1,000,000 km from zero
     */
    public static Shot of(Length east, Length north, Length elevation) {
        return new Shot(Point.of(east, north), elevation);
    }
}
