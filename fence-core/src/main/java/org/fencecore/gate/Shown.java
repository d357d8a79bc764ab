package org.fencecore.gate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/** Values as the sheets and findings of a gate write them: rounded for the reader, never computed with. */
final class Shown {

    private static final BigDecimal NANOMETRES_PER_INCH = BigDecimal.valueOf(25_400_000);

    private Shown() {}

    /** Writes inches to a thousandth, such as 46.75, for a formula with the numbers put in. */
    static String inches(Length length) {
        return plain(BigDecimal.valueOf(length.nanometres()).divide(NANOMETRES_PER_INCH, 3, RoundingMode.HALF_UP));
    }

    /** Writes a length for both tapes, such as 46.75 in (1187.45 mm). */
    static String length(Length length) {
        BigDecimal millimetres = BigDecimal.valueOf(length.nanometres(), 6).setScale(2, RoundingMode.HALF_UP);
        return inches(length) + " in (" + plain(millimetres) + " mm)";
    }

    /** Writes degrees to a hundredth, such as 29.78, for a formula with the numbers put in. */
    static String degrees(Angle angle) {
        return plain(BigDecimal.valueOf(angle.degrees()).setScale(2, RoundingMode.HALF_UP));
    }

    /** Writes an angle, such as 29.78 deg. */
    static String angle(Angle angle) {
        return degrees(angle) + " deg";
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }
}
