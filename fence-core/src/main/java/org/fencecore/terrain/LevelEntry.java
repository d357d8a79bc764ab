package org.fencecore.terrain;

import java.util.Optional;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/** One line of a level book: a point, the readings taken on it, and what they come to. */
public final class LevelEntry {

    private final String point;
    private final @Nullable Length backsight;
    private final @Nullable Length intermediateSight;
    private final @Nullable Length foresight;
    private final @Nullable Length heightOfInstrument;
    private final Length observed;
    private final Length correction;
    private final @Nullable Length station;

    LevelEntry(
            String point,
            @Nullable Length backsight,
            @Nullable Length intermediateSight,
            @Nullable Length foresight,
            @Nullable Length heightOfInstrument,
            Length observed,
            Length correction,
            @Nullable Length station) {
        this.point = point;
        this.backsight = backsight;
        this.intermediateSight = intermediateSight;
        this.foresight = foresight;
        this.heightOfInstrument = heightOfInstrument;
        this.observed = observed;
        this.correction = correction;
        this.station = station;
    }

    /**
     * Returns the name of the point.
     *
     * @return the name
     */
    public String point() {
        return point;
    }

    /**
     * Returns the reading back to this point, from the set-up after it.
     *
     * @return the backsight, empty unless the level was set up again from here
     */
    public Optional<Length> backsight() {
        return Optional.ofNullable(backsight);
    }

    /**
     * Returns the reading on this point if the line was not carried on from it.
     *
     * @return the intermediate sight, empty at benchmarks and turning points
     */
    public Optional<Length> intermediateSight() {
        return Optional.ofNullable(intermediateSight);
    }

    /**
     * Returns the reading forward to this point.
     *
     * @return the foresight, at turning points and the last point
     */
    public Optional<Length> foresight() {
        return Optional.ofNullable(foresight);
    }

    /**
     * Returns how high the level stands after the backsight on this point.
     *
     * @return the observed elevation plus the backsight; empty without a backsight
     */
    public Optional<Length> heightOfInstrument() {
        return Optional.ofNullable(heightOfInstrument);
    }

    /**
     * Returns the elevation as read.
     *
     * @return the height of instrument less the sight on this point; for the first point, its known elevation
     */
    public Length observed() {
        return observed;
    }

    /**
     * Returns this point's part of the misclosure, with the sign turned.
     *
     * @return what is added to the observed elevation, zero if nothing is spread
     */
    public Length correction() {
        return correction;
    }

    /**
     * Returns the elevation.
     *
     * @return the observed elevation plus the correction
     */
    public Length elevation() {
        return observed.plus(correction);
    }

    /**
     * Returns where the point is along the fence line.
     *
     * @return the level distance from station 0+00; empty for a point that is not on the line
     */
    public Optional<Length> station() {
        return Optional.ofNullable(station);
    }

    /**
     * Returns the point and its elevation as text.
     *
     * @return such as {@code TP1 100 ft}
     */
    @Override
    public String toString() {
        return point + " " + elevation();
    }
}
