package org.fencecore.geometry.ground;

import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Length;

/**
 * One shot of a profile: how high the ground or a rail is at a station.
 *
 * @param station the distance along the line, level
 * @param elevation the height there over the chosen datum
 */
public record ProfilePoint(Length station, Length elevation) {

    /**
     * Checks that both are of a size a profile can work with.
     *
     * @param station the distance along the line, level
     * @param elevation the height there over the chosen datum
     * @throws IllegalArgumentException if either is over 1,000,000 km from zero
     */
    public ProfilePoint {
        Exact.requireInRange("station", station);
        Exact.requireInRange("elevation", elevation);
    }
}
