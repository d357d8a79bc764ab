package org.fencecore.examples;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.units.Speed;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Finding;
import org.jspecify.annotations.Nullable;

/**
 * Compares a value with the comment that states it.
 *
 * <p>The comment begins with the value, or ends with it after an equals sign; what follows the value is a remark. A figure
 * agrees where the value rounds to it, but a length without a decimal point is exact. A list is its elements or {@code none},
 * an empty optional {@code empty}, a finding its code, and anything else what it prints or the beginning of that.
 */
final class Shown {

    private static final Pattern FIGURE = Pattern.compile("(-?[\\d,]*\\.?\\d+) ?(.*)");

    private static final Pattern DMS = Pattern.compile("(-?)(?=.)(?:(\\d+)°)?(?:(\\d+)')?(?:(\\d+)\")?");

    /** How a value reads in a unit that comments use. */
    private record Unit<T>(String name, Class<T> type, ToDoubleFunction<T> reading) {
        double read(Object value) {
            return reading.applyAsDouble(type.cast(value));
        }
    }

    private static final List<Unit<?>> UNITS = List.of(
            new Unit<>("sq ft", Area.class, Area::squareFeet),
            new Unit<>("sq in", Area.class, Area::squareInches),
            new Unit<>("cu ft", Volume.class, Volume::cubicFeet),
            new Unit<>("psf", Pressure.class, Pressure::psf),
            new Unit<>("psi", Pressure.class, Pressure::psi),
            new Unit<>("Pa", Pressure.class, Pressure::pascals),
            new Unit<>("lbf", Force.class, Force::poundsForce),
            new Unit<>("lb", Mass.class, Mass::pounds),
            new Unit<>("m/s", Speed.class, Speed::metresPerSecond),
            new Unit<>("ft", Length.class, Length::feet),
            new Unit<>("in", Length.class, Length::inches),
            new Unit<>("mm", Length.class, Length::millimetres),
            new Unit<>("m", Length.class, Length::metres),
            new Unit<>("deg", Angle.class, Angle::degrees),
            new Unit<>("degrees", Angle.class, Angle::degrees),
            new Unit<>("%", Ratio.class, Ratio::percent),
            new Unit<>("%", Slope.class, Slope::percent));

    private Shown() {}

    /** Whether the comment states the value. */
    static boolean agree(@Nullable Object value, String comment) {
        int equals = comment.lastIndexOf(" = ");
        return states(equals < 0 ? comment : comment.substring(equals + 3), value);
    }

    private static boolean states(String comment, @Nullable Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(held -> states(comment, held)).orElse(begins(comment, "empty"));
        }
        if (value instanceof Collection<?> collection) {
            return collection.isEmpty() ? begins(comment, "none") : statesEach(comment, List.copyOf(collection));
        }
        if (value instanceof Finding finding && begins(comment, finding.code())) {
            return true;
        }
        if (value instanceof Interval interval && comment.contains(" to ")) {
            String[] ends = comment.replaceFirst("^from ", "").split(" to ", 2);
            return states(ends[0], interval.start()) && states(ends[1], interval.end());
        }
        if (value instanceof Point point && comment.matches("E .*, N .*")) {
            String[] parts = comment.substring(2).split(", N ", 2);
            return states(parts[0], point.east()) && states(parts[1], point.north());
        }
        if (value instanceof Enum<?> constant && begins(comment, constant.name())) {
            return true;
        }
        String printed = String.valueOf(value);
        return begins(comment, printed)
                || begins(printed, comment)
                || statesFigure(comment, value)
                || (value instanceof Length length && statesTape(comment, length))
                || (value instanceof Angle angle && statesDms(comment, angle));
    }

    private static boolean statesEach(String comment, List<?> values) {
        String[] parts = comment.split(", ", -1);
        if (parts.length < values.size()) {
            return false;
        }
        for (int i = 0; i < values.size(); i++) {
            if (!states(parts[i], values.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean begins(String text, String start) {
        return text.startsWith(start)
                && (text.length() == start.length() || !Character.isLetterOrDigit(text.charAt(start.length())));
    }

    /** A plain figure with at most one unit, such as {@code 3.915 cu ft} or {@code -0.244 in}. */
    private static boolean statesFigure(String comment, @Nullable Object value) {
        Matcher figure = FIGURE.matcher(comment);
        if (!figure.matches()) {
            return false;
        }
        String digits = figure.group(1).replace(",", "");
        double stated = Double.parseDouble(digits);
        double last = digits.contains(".") ? Math.pow(10, digits.indexOf('.') + 1 - digits.length()) : 1;
        double apart = Math.abs(figureOf(value, figure.group(2)) - stated);
        boolean whole = value instanceof Length && !digits.contains(".");
        return whole ? apart < 1e-6 : apart <= last / 2 * (1 + 1e-9);
    }

    private static double figureOf(@Nullable Object value, String unit) {
        if (value instanceof Double number) {
            return number;
        }
        if (value instanceof Ratio ratio && !begins(unit, "%")) {
            return ratio.value();
        }
        for (Unit<?> known : UNITS) {
            if (known.type().isInstance(value) && begins(unit, known.name())) {
                return known.read(value);
            }
        }
        return Double.NaN;
    }

    /** A length as it is read off a tape, such as {@code 7 ft 1 5/7 in} or {@code 5 ft 10.45 in}. */
    private static boolean statesTape(String comment, Length value) {
        for (int end = comment.length(); end > 0; end = comment.lastIndexOf(' ', end - 1)) {
            String text = comment.substring(0, end).replaceFirst("[,:;]$", "");
            try {
                long gap = Math.abs(Length.parse(text).minus(value).nanometres());
                int point = text.lastIndexOf('.');
                if (point < 0) {
                    return gap == 0;
                }
                String digits = text.substring(point + 1).replaceFirst("\\D.*", "");
                Length unit = Length.parse("1 " + text.substring(point + 1).replaceFirst("\\d+ ?", ""));
                return gap <= Math.ceil(0.5 * unit.nanometres() / Math.pow(10, digits.length()));
            } catch (IllegalArgumentException e) {
                // Not a length yet: the last word is a remark.
            }
        }
        return false;
    }

    /** An angle in degrees, minutes and seconds, to the last of them that is told. */
    private static boolean statesDms(String comment, Angle value) {
        Matcher dms = DMS.matcher(comment.replaceFirst("[,: ].*", ""));
        if (!dms.matches()) {
            return false;
        }
        double stated = 0;
        double unit = 1;
        double last = 1;
        for (int part = 2; part <= 4; part++, unit /= 60) {
            if (dms.group(part) != null) {
                stated += Integer.parseInt(dms.group(part)) * unit;
                last = unit;
            }
        }
        return Math.abs((dms.group(1).isEmpty() ? stated : -stated) - value.degrees()) <= last / 2;
    }
}
