package org.fencecore.worksheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.units.Speed;
import org.fencecore.units.UnitWeight;
import org.fencecore.units.Volume;
import org.fencecore.units.tape.TapeFormat;

/**
 * How findings, worksheets and lists write amounts, the same way in every part of the library and in every locale.
 *
 * <p>What someone measures or cuts is written as a tape shows it; what someone puts into a calculator is a decimal with
 * its unit. Decimals are rounded to the nearest, half away from zero, and have no zeros at the end. What is written is
 * for reading: results keep their exact value beside it.
 *
 * <table>
 * <caption>Which one for what</caption>
 * <tr><th scope="col">method</th><th scope="col">for</th><th scope="col">writes</th></tr>
 * <tr><td>{@link #tape(Length)}</td><td>widths, gaps, marks, depths: what ends up on a tape</td>
 *     <td>{@code 3' 10 3/4"}</td></tr>
 * <tr><td>{@link #inches}, {@link #feet}</td><td>the numbers put into a formula</td>
 *     <td>{@code 46.75 in}, {@code 3.8958 ft}</td></tr>
 * <tr><td>{@link #station}</td><td>where along a side or a run, as a deed does</td><td>{@code 3.90 ft}</td></tr>
 * <tr><td>{@link #stock}</td><td>lumber as a yard calls it</td><td>{@code 8 ft}</td></tr>
 * </table>
 *
 * <p>Example: a post that needs 50.07 in of embedment.
 *
 * <pre>{@code
 * Length depth = Length.ofInches(50.07);
 * Written.tape(depth);                 // 4' 2 1/16"
 * Written.tape(depth, Rounding.UP);    // 4' 2 1/8", so that it is not told less than it needs
 * Written.inches(depth);               // 50.07 in
 * Written.feet(depth);                 // 4.1725 ft
 * }</pre>
 */
public final class Written {

    private static final TapeFormat TAPE = TapeFormat.feetAndInches(16);
    private static final TapeFormat STATION = TapeFormat.decimalFeet(2);
    private static final TapeFormat METRIC_STOCK = TapeFormat.metres(2);
    private static final Length INCH = Length.ofInches(1);
    private static final Length FOOT = Length.ofFeet(1);
    private static final Length CENTIMETRE = Length.ofMillimetres(10);

    private static final BigDecimal SECONDS_AN_HOUR = BigDecimal.valueOf(3600);
    private static final int REPLACEMENT = 0xFFFD;

    private Written() {}

    /**
     * Writes a text from outside, such as the name of a gate, so that any file may hold it on one line: line breaks and
     * tabs become spaces; halves of surrogate pairs, control characters and what else XML does not allow become U+FFFD.
     *
     * <p>Source: XML 1.0 (Fifth Edition), section 2.2.
     *
     * <p>Example: {@code printable("side\ngate")} is {@code side gate}.
     *
     * @param text any text
     * @return the same text on one line
     */
    public static String printable(String text) {
        StringBuilder printable = new StringBuilder(text.length());
        text.codePoints().map(Written::printable).forEach(printable::appendCodePoint);
        return printable.toString();
    }

    private static int printable(int letter) {
        if (letter == '\t' || letter == '\n' || letter == '\r' || letter == 0x2028 || letter == 0x2029) {
            return ' ';
        }
        boolean broken = Character.isISOControl(letter)
                || (letter >= Character.MIN_SURROGATE && letter <= Character.MAX_SURROGATE)
                || letter == 0xFFFE
                || letter == 0xFFFF;
        return broken ? REPLACEMENT : letter;
    }

    /**
     * Writes a length as a carpenter reads it off a tape, to the nearest sixteenth of an inch.
     *
     * @param length the length
     * @return feet, inches and a fraction, such as {@code 6' 2 3/4"} or {@code 5 1/2"}
     */
    public static String tape(Length length) {
        return TAPE.format(length);
    }

    /**
     * Writes a length as a carpenter reads it off a tape, with a rule for what falls between two sixteenths: up for what
     * is needed at least, down for what there is room for at most.
     *
     * @param length the length
     * @param rounding to which sixteenth
     * @return feet, inches and a fraction, such as {@code 6' 2 3/4"} or {@code 5 1/2"}
     */
    public static String tape(Length length, Rounding rounding) {
        return TAPE.withRounding(rounding).format(length);
    }

    /**
     * Writes a length in inches for a formula, to 4 decimals.
     *
     * @param length the length
     * @return such as {@code 46.75 in}
     */
    public static String inches(Length length) {
        return decimal(length, INCH) + " in";
    }

    /**
     * Writes a length in feet for a formula, to 4 decimals.
     *
     * @param length the length
     * @return such as {@code 3.3917 ft}
     */
    public static String feet(Length length) {
        return decimal(length, FOOT) + " ft";
    }

    /**
     * Writes where something is along a side of the lot or along a run, in feet with two decimals as a deed and a plat
     * have them; a hundredth of a foot is about 1/8 in.
     *
     * @param station the distance from the start
     * @return such as {@code 12.50 ft}
     */
    public static String station(Length station) {
        return STATION.format(station);
    }

    /**
     * Writes a length of lumber as the yard calls it.
     *
     * @param length the length of a stick on the shelf
     * @return whole feet such as {@code 10 ft}, else whole centimetres as metres such as {@code 2.40 m}, else what a tape
     *     shows
     */
    public static String stock(Length length) {
        if (isWhole(length, FOOT)) {
            return length.wholePieces(FOOT) + " ft";
        }
        return isWhole(length, CENTIMETRE) ? METRIC_STOCK.format(length) : tape(length);
    }

    /**
     * Writes an angle, to 2 decimals.
     *
     * @param angle the angle
     * @return such as {@code 29.78 deg}
     */
    public static String degrees(Angle angle) {
        return decimal(angle.degrees(), 2) + " deg";
    }

    /**
     * Writes an angle as a mitre saw is set, to a tenth of a degree.
     *
     * @param angle the angle off a square cut
     * @return such as {@code 11.3 deg}
     */
    public static String saw(Angle angle) {
        return decimal(angle.degrees(), 1) + " deg";
    }

    /**
     * Writes a grade in percent, to 2 decimals.
     *
     * @param grade the grade
     * @return such as {@code 24 %}, negative downhill
     */
    public static String percent(Slope grade) {
        return decimal(grade.percent(), 2) + " %";
    }

    /**
     * Writes a force in pounds-force, to 2 decimals.
     *
     * @param force the force
     * @return such as {@code 720 lbf}
     */
    public static String force(Force force) {
        return decimal(force.poundsForce(), 2) + " lbf";
    }

    /**
     * Writes a pressure in pounds per square foot, to 2 decimals.
     *
     * @param pressure the pressure
     * @return such as {@code 378.53 psf}
     */
    public static String pressure(Pressure pressure) {
        return decimal(pressure.psf(), 2) + " psf";
    }

    /**
     * Writes a stress in wood in pounds per square inch, to 1 decimal.
     *
     * @param stress the stress
     * @return such as {@code 1246.4 psi}
     */
    public static String stress(Pressure stress) {
        return decimal(stress.psi(), 1) + " psi";
    }

    /**
     * Writes a moment in pound-feet, to 1 decimal.
     *
     * @param moment the moment
     * @return such as {@code 2442 lbf-ft}
     */
    public static String moment(Moment moment) {
        return decimal(moment.poundFeet(), 1) + " lbf-ft";
    }

    /**
     * Writes a speed of the wind in miles per hour, to 1 decimal.
     *
     * @param speed the speed
     * @return such as {@code 115 mph}
     */
    public static String speed(Speed speed) {
        return decimal(speed.milesPerHour(), 1) + " mph";
    }

    /**
     * Writes a factor of a formula, to 4 decimals.
     *
     * @param factor the factor
     * @return such as {@code 0.85}
     */
    public static String factor(Ratio factor) {
        return decimal(factor.value(), 4);
    }

    /**
     * Writes what a cubic foot of a material weighs, to 2 decimals.
     *
     * @param unitWeight the unit weight
     * @return such as {@code 36.74 pcf}
     */
    public static String unitWeight(UnitWeight unitWeight) {
        return decimal(unitWeight.pcf(), 2) + " pcf";
    }

    /**
     * Writes the lateral bearing of a soil as the codes list it, in pounds per square foot for each foot below grade, to
     * 2 decimals.
     *
     * @param bearing the lateral bearing
     * @return such as {@code 150 psf/ft}
     */
    public static String bearing(UnitWeight bearing) {
        return decimal(bearing.pcf(), 2) + " psf/ft";
    }

    /**
     * Writes a volume in cubic feet, to 3 decimals.
     *
     * @param volume the volume
     * @return such as {@code 0.375 cu ft}
     */
    public static String volume(Volume volume) {
        return decimal(volume.cubicFeet(), 3) + " cu ft";
    }

    /**
     * Writes the weight on a bag: in pounds if it is a whole number of them, else in kilograms to 2 decimals.
     *
     * @param mass the weight
     * @return such as {@code 80 lb} or {@code 25 kg}
     */
    public static String bag(Mass mass) {
        double pounds = mass.pounds();
        return Math.abs(pounds - Math.rint(pounds)) < 1e-6
                ? decimal(pounds, 0) + " lb"
                : decimal(mass.kilograms(), 2) + " kg";
    }

    /**
     * Writes what something weighs in pounds, to 1 decimal.
     *
     * @param mass the weight
     * @return such as {@code 1246.5 lb}
     */
    public static String mass(Mass mass) {
        return decimal(mass.pounds(), 1) + " lb";
    }

    /**
     * Writes how long work takes in hours, to 2 decimals.
     *
     * @param time the time
     * @return such as {@code 6.75 h}
     */
    public static String hours(Duration time) {
        return plain(BigDecimal.valueOf(time.toSeconds()).divide(SECONDS_AN_HOUR, 2, RoundingMode.HALF_UP)) + " h";
    }

    /**
     * Writes an amount of money, with as many decimals as its currency has, or more where it needs them.
     *
     * @param amount the amount
     * @param currency its currency
     * @return such as {@code 12.90 USD}
     */
    public static String money(BigDecimal amount, Currency currency) {
        int digits = Math.max(
                currency.getDefaultFractionDigits(),
                Math.max(0, amount.stripTrailingZeros().scale()));
        return amount.setScale(digits).toPlainString() + " " + currency;
    }

    /**
     * Writes the parts of a list as one says them.
     *
     * @param parts the parts
     * @return such as {@code a, b and c}; empty if there are none
     */
    public static String list(List<String> parts) {
        int last = parts.size() - 1;
        return last < 1
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    /**
     * Writes numbers as one says them, three and more in a row joined.
     *
     * @param numbers the numbers, lowest first
     * @return such as {@code 1 to 4, 7, 9 and 10}; empty if there are none
     */
    public static String numbers(List<Integer> numbers) {
        List<String> parts = new ArrayList<>();
        int i = 0;
        while (i < numbers.size()) {
            int last = i;
            while (last + 1 < numbers.size() && numbers.get(last + 1) == numbers.get(last) + 1) {
                last++;
            }
            if (last - i >= 2) {
                parts.add(numbers.get(i) + " to " + numbers.get(last));
                i = last + 1;
            } else {
                parts.add(String.valueOf(numbers.get(i)));
                i++;
            }
        }
        return list(parts);
    }

    private static boolean isWhole(Length length, Length step) {
        return length.roundedTo(step, Rounding.DOWN).equals(length);
    }

    private static String decimal(Length length, Length unit) {
        return plain(BigDecimal.valueOf(length.nanometres())
                .divide(BigDecimal.valueOf(unit.nanometres()), 4, RoundingMode.HALF_UP));
    }

    private static String decimal(double value, int places) {
        return plain(BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP));
    }

    private static String plain(BigDecimal rounded) {
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
