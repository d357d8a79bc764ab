package org.fencecore.slope;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/** How the findings and worksheets of this package write amounts: decimals of the unit the trade uses for each. */
final class Notation {

    private static final long INCH = 25_400_000;

    private Notation() {}

    /** Stations, elevations and what is measured along the fence. */
    static String feet(Length length) {
        return decimal(length, 12 * INCH) + " ft";
    }

    /** Heights over the ground and depths of parts. */
    static String inches(Length length) {
        return decimal(length, INCH) + " in";
    }

    static String percent(Slope grade) {
        return plain(BigDecimal.valueOf(grade.percent()).setScale(2, RoundingMode.HALF_UP)) + " %";
    }

    static String degrees(Angle angle) {
        return plain(BigDecimal.valueOf(angle.degrees()).setScale(4, RoundingMode.HALF_UP)) + " deg";
    }

    private static String decimal(Length length, long unit) {
        return plain(BigDecimal.valueOf(length.nanometres()).divide(BigDecimal.valueOf(unit), 4, RoundingMode.HALF_UP));
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
