package org.fencecore.wind;

import java.util.Objects;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Written;

/**
 * A stretch of a run that the wind pushes on evenly.
 *
 * @param along where along the run, from its start
 * @param coefficient the net coefficient on the gross area of the face, with all its reductions
 * @param pressure the pressure on the gross area of the face, at allowable stress level
 */
public record WindZone(Interval along, Ratio coefficient, Pressure pressure) {

    /**
     * Checks the parts.
     *
     * @param along where along the run, from its start
     * @param coefficient the net coefficient on the gross area of the face, with all its reductions
     * @param pressure the pressure on the gross area of the face, at allowable stress level
     */
    public WindZone {
        Objects.requireNonNull(along, "along");
        Objects.requireNonNull(coefficient, "coefficient");
        Objects.requireNonNull(pressure, "pressure");
    }

    /** Returns how much of this zone a part of the run takes in. */
    Length within(Interval part) {
        return Length.max(
                Length.ZERO, Length.min(part.end(), along.end()).minus(Length.max(part.start(), along.start())));
    }

    @Override
    public String toString() {
        return Written.station(along.start()) + " to " + Written.station(along.end()) + ": "
                + Written.pressure(pressure);
    }
}
