package org.fencecore.wind;

import java.util.List;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;

/** A standard's way from a wind and a face to pressures, for {@link FenceWind} to show. */
interface Reckoning {

    Pressure velocityPressure();

    List<WindZone> zones();

    /** Adds findings in any order, without the one that defers to local code. */
    void addFindings(List<Finding> findings);

    /** Adds the lines up to the greatest pressure, which is the last. */
    void explain(Worksheet.Builder sheet, WindZone worst);
}
