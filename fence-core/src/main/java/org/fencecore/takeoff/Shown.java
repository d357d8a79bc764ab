package org.fencecore.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Rounding;
import org.fencecore.units.Volume;
import org.fencecore.units.tape.TapeFormat;

/** How a takeoff writes amounts: pieces to the sixteenth, lumber in the lengths a yard calls it by. */
final class Shown {

    private static final TapeFormat TAPE = TapeFormat.feetAndInches(16).withUnitNames();
    private static final TapeFormat INCHES = TapeFormat.inches(16).withUnitNames();
    private static final Length FOOT = Length.ofFeet(1);
    private static final Length CENTIMETRE = Length.ofMillimetres(10);

    private Shown() {}

    static String tape(Length length) {
        return TAPE.format(length);
    }

    static String tapeRoundedUp(Length length) {
        return TAPE.withRounding(Rounding.UP).format(length);
    }

    static String inches(Length length) {
        return INCHES.format(length);
    }

    /** Writes a length on the shelf: 10 ft, 2.40 m, or what a tape reads. */
    static String shelf(Length length) {
        if (isWhole(length, FOOT)) {
            return length.wholePieces(FOOT) + " ft";
        }
        return isWhole(length, CENTIMETRE) ? TapeFormat.metres(2).format(length) : tape(length);
    }

    private static boolean isWhole(Length length, Length step) {
        return length.roundedTo(step, Rounding.DOWN).equals(length);
    }

    /** Writes an angle as a mitre saw is set, to a tenth of a degree. */
    static String angle(Angle angle) {
        return number(angle.degrees(), 1) + " deg";
    }

    static String volume(Volume volume) {
        return number(volume.cubicFeet(), 2) + " cu ft";
    }

    /** Writes the weight on a bag, in kilograms if it is not a whole number of pounds. */
    static String mass(Mass mass) {
        double pounds = mass.pounds();
        return Math.abs(pounds - Math.rint(pounds)) < 1e-6
                ? number(pounds, 0) + " lb"
                : number(mass.kilograms(), 2) + " kg";
    }

    private static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Joins the parts of a note as one says them: a, b and c. */
    static String list(List<String> parts) {
        int last = parts.size() - 1;
        return last < 1
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }
}
