package org.fencecore.wind;

import org.fencecore.units.Length;
import org.fencecore.units.Pressure;

/**
 * The wind a place is designed for, by the standard that is in force there: {@link AsceWind} in the United States,
 * {@link EnWind} in Europe.
 */
public sealed interface Wind permits AsceWind, EnWind {

    /**
     * Returns the pressure the wind would have if it were stopped, at a height; coefficients and factors of the force are
     * not in it. In Europe it is the peak velocity pressure.
     *
     * @param height the height above grade, over 0, to 100 ft
     * @return the velocity pressure, as the standard has it: at strength level by ASCE 7, characteristic by EN 1991
     * @throws IllegalArgumentException if the height is out of that range
     */
    Pressure velocityPressure(Length height);

    /**
     * Returns how hard the wind pushes on a run of fence, zone by zone.
     *
     * @param face what the run shows the wind
     * @return the pressures
     */
    FenceWind on(FenceFace face);
}
