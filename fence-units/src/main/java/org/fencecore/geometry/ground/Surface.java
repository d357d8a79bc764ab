package org.fencecore.geometry.ground;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.units.Length;

/**
 * The ground as a surface: a height at every place that it covers, and straight between its breaks.
 *
 * <p>Implementations are immutable and answer the same on any thread.
 */
public interface Surface {

    /**
     * Returns the height of the ground at a place.
     *
     * @param place the place in plan
     * @return the height, or empty where the surface does not reach
     */
    Optional<Length> elevationAt(Point place);

    /**
     * Returns the ground under a line, with a point wherever the surface breaks.
     *
     * @param line the line in plan
     * @return heights by level distance from the start of the line, or empty if the surface does not cover all of it
     */
    Optional<Profile> under(Polyline line);

    /**
     * Returns where a line leaves the surface, so that a message can name the stations.
     *
     * @param line the line in plan
     * @return the stretches of the line that the surface does not cover, in order and apart from each other; none exactly
     *     when {@link #under} has an answer
     */
    List<Interval> uncovered(Polyline line);
}
