package org.fencecore.survey;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.fencecore.geometry.Bearing;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;

/** Angles and areas as deeds write them. */
final class Dms {

    static final Angle SECOND = Angle.ofDms(0, 0, 1);
    static final Angle MINUTE = Angle.ofDms(0, 1, 0);

    private static final long THOUSANDTHS_PER_DEGREE = 3_600_000;

    private Dms() {}

    /**
     * Writes an angle in degrees, minutes and seconds to the thousandth of a second. It is rounded first and split
     * after, so that the last bits of a sum of angles do not show.
     */
    static String text(Angle angle) {
        long thousandths = Math.round(Math.abs(angle.degrees()) * THOUSANDTHS_PER_DEGREE);
        String size = ofThousandths(thousandths).toString();
        return angle.isNegative() && thousandths > 0 ? "-" + size : size;
    }

    /** Writes the azimuth of a bearing the same way, 0 for what rounds to a full turn. */
    static String azimuth(Bearing bearing) {
        long thousandths = Math.round(bearing.azimuth().degrees() * THOUSANDTHS_PER_DEGREE);
        return ofThousandths(thousandths % (360 * THOUSANDTHS_PER_DEGREE)).toString();
    }

    private static Angle ofThousandths(long thousandths) {
        return Angle.ofDms(
                (int) (thousandths / THOUSANDTHS_PER_DEGREE),
                (int) (thousandths / 60_000 % 60),
                thousandths % 60_000 / 1000.0);
    }

    /** Half of the last unit an angle is written to: half a minute for whole minutes, else half a second. */
    static Angle halfUnit(Angle angle) {
        double minutes = angle.degrees() * 60;
        return Math.abs(minutes - Math.rint(minutes)) < 1e-6 ? MINUTE.dividedBy(2) : SECOND.dividedBy(2);
    }

    static String squareFeet(Area area) {
        return BigDecimal.valueOf(area.squareFeet())
                        .setScale(2, RoundingMode.HALF_UP)
                        .toPlainString() + " sq ft";
    }
}
