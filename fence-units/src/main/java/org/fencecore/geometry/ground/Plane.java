package org.fencecore.geometry.ground;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.jspecify.annotations.Nullable;

/**
 * Ground that is flat or falls evenly, without end: a lot graded to one cross slope.
 *
 * <pre>
 * height = height at the known place + eastward grade x distance east + northward grade x distance north
 * </pre>
 *
 * <p>Source: geometry. Example: a yard at 100 ft that falls 2 % to the east and rises 5 % to the north is at
 * 100 - 0.02 x 40 + 0.05 x 10 = 99.7 ft at 40 ft east, 10 ft north.
 */
public final class Plane implements Surface {

    private final Point place;
    private final Length elevation;
    private final Slope eastward;
    private final Slope northward;

    private Plane(Point place, Length elevation, Slope eastward, Slope northward) {
        this.place = Objects.requireNonNull(place, "place");
        this.elevation = Objects.requireNonNull(elevation, "elevation");
        this.eastward = Objects.requireNonNull(eastward, "eastward");
        this.northward = Objects.requireNonNull(northward, "northward");
    }

    /**
     * Describes the ground by one height and its two grades.
     *
     * @param place a place of known height
     * @param elevation its height
     * @param eastward the grade going east, rising positive
     * @param northward the grade going north, rising positive
     * @return the ground
     */
    public static Plane of(Point place, Length elevation, Slope eastward, Slope northward) {
        return new Plane(place, elevation, eastward, northward);
    }

    /**
     * Describes level ground.
     *
     * @param elevation its height
     * @return the ground
     */
    public static Plane level(Length elevation) {
        return new Plane(Point.ORIGIN, elevation, Slope.LEVEL, Slope.LEVEL);
    }

    /**
     * Returns the place at which the height was given.
     *
     * @return the place
     */
    public Point place() {
        return place;
    }

    /**
     * Returns how high the ground is there.
     *
     * @return the height
     */
    public Length elevation() {
        return elevation;
    }

    /**
     * Returns how the ground rises eastward.
     *
     * @return the grade
     */
    public Slope eastward() {
        return eastward;
    }

    /**
     * Returns how the ground rises northward.
     *
     * @return the grade
     */
    public Slope northward() {
        return northward;
    }

    /**
     * Returns the height of the ground at a place.
     *
     * @param there the place in plan
     * @return the height, never empty
     */
    @Override
    public Optional<Length> elevationAt(Point there) {
        return Optional.of(height(there));
    }

    /**
     * Returns the ground under a line.
     *
     * @param line the line in plan
     * @return its heights at every point of the line, never empty
     */
    @Override
    public Optional<Profile> under(Polyline line) {
        Profile.Builder profile = Profile.builder();
        for (int i = 0; i < line.points().size(); i++) {
            profile.point(line.stationOfPoint(i), height(line.points().get(i)));
        }
        return Optional.of(profile.build());
    }

    /**
     * Returns where a line leaves the surface: nowhere, since it has no end.
     *
     * @param line the line in plan
     * @return no stretches
     */
    @Override
    public List<Interval> uncovered(Polyline line) {
        return List.of();
    }

    private Length height(Point there) {
        return elevation
                .plus(eastward.riseOver(there.east().minus(place.east())))
                .plus(northward.riseOver(there.north().minus(place.north())));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Plane that
                && place.equals(that.place)
                && elevation.equals(that.elevation)
                && eastward.equals(that.eastward)
                && northward.equals(that.northward);
    }

    @Override
    public int hashCode() {
        return Objects.hash(place, elevation, eastward, northward);
    }

    @Override
    public String toString() {
        return elevation + " at " + place + ", " + eastward + " east, " + northward + " north";
    }
}
