package org.fencecore.footing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Pressure;
import org.fencecore.units.UnitWeight;
import org.fencecore.units.Volume;

/** Values as the sheets, findings and messages of a footing write them: rounded for the reader, never computed with. */
final class Shown {

    private Shown() {}

    /** Writes a number to so many decimals at most, such as 37.5. */
    static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Writes a length in inches to a hundredth without the unit, for a formula with the numbers put in. */
    static String inchNumber(Length length) {
        return number(length.inches(), 2);
    }

    static String inches(Length length) {
        return inchNumber(length) + " in";
    }

    /** Writes a length in feet to a ten-thousandth without the unit, for a formula with the numbers put in. */
    static String footNumber(Length length) {
        return number(length.feet(), 4);
    }

    static String feet(Length length) {
        return footNumber(length) + " ft";
    }

    /** Writes a length for both tapes, as misuse may come from either. */
    static String bothTapes(Length length) {
        return number(length.inches(), 4) + " in (" + number(length.millimetres(), 3) + " mm)";
    }

    static String force(Force force) {
        return number(force.poundsForce(), 2) + " lbf";
    }

    static String pressure(Pressure pressure) {
        return number(pressure.psf(), 2) + " psf";
    }

    static String bearing(UnitWeight bearing) {
        return number(bearing.pcf(), 2) + " psf/ft";
    }

    static String volume(Volume volume) {
        return number(volume.cubicFeet(), 3) + " cu ft";
    }

    static String mass(Mass mass) {
        return number(mass.pounds(), 2) + " lb";
    }
}
