package org.fencecore.units;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Set;

/** Reads and writes angles in degrees, minutes and seconds, as a plat has them, and in decimal degrees. */
final class AngleText {

    // The ring above and the raised o are what some keyboards give for the degree sign.
    static final Set<String> DEGREE = Set.of("°", "º", "˚", "deg", "degree", "degrees");
    private static final Set<String> MINUTE = Set.of("'", "′", "’", "‘", "min", "minute", "minutes");
    private static final Set<String> SECOND = Set.of("\"", "″", "”", "“", "sec", "second", "seconds");
    static final String MARKS = "°º˚'′’‘\"″”“";

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private AngleText() {}

    /** Reads a whole text. */
    static double degrees(CharSequence text) {
        TextCursor in = new TextCursor("angle", text);
        double degrees = degrees(in);
        in.takeEnd("the end of the angle");
        return degrees;
    }

    /** Reads an angle from the cursor on. */
    static double degrees(TextCursor in) {
        boolean negative = in.takeMinus();
        double size = size(in);
        return negative ? -size : size;
    }

    private static double size(TextCursor in) {
        BigDecimal degrees = in.takeDecimal("degrees such as 45°30'15\", 45-30-15, 45.5° or 45.5 deg");
        if (degrees.scale() == 0 && in.takeDash()) {
            BigDecimal minutes = underSixty(in, "whole minutes from 0 to 59");
            if (minutes.scale() > 0 || !in.takeDash()) {
                throw in.refusal("a hyphen and seconds, as in 45-30-15");
            }
            return sum(degrees, minutes, underSixty(in, "seconds from 0 to under 60"));
        }
        takeMark(in, DEGREE, "a degree sign or \"deg\"");
        if (degrees.scale() > 0 || !in.takeJoint(false)) {
            return degrees.doubleValue();
        }
        BigDecimal minutes = underSixty(in, "minutes from 0 to under 60");
        takeMark(in, MINUTE, "a minute mark (') or \"min\"");
        if (minutes.scale() > 0 || !in.takeJoint(false)) {
            return sum(degrees, minutes, BigDecimal.ZERO);
        }
        BigDecimal seconds = underSixty(in, "seconds from 0 to under 60");
        takeMark(in, SECOND, "a second mark (\") or \"sec\"");
        return sum(degrees, minutes, seconds);
    }

    private static BigDecimal underSixty(TextCursor in, String expected) {
        int start = in.position();
        BigDecimal part = in.takeDecimal(expected);
        if (part.compareTo(SIXTY) >= 0) {
            throw in.refusal(start, expected);
        }
        return part;
    }

    private static void takeMark(TextCursor in, Set<String> spellings, String expected) {
        in.takeBlanks();
        int start = in.position();
        if (!spellings.contains(in.takeUnit(MARKS))) {
            throw in.refusal(start, expected);
        }
    }

    // The very sum that Angle.ofDms makes, so that both give the same angle to the last bit.
    private static double sum(BigDecimal degrees, BigDecimal minutes, BigDecimal seconds) {
        return degrees.doubleValue() + minutes.doubleValue() / 60.0 + seconds.doubleValue() / 3600.0;
    }

    /** Writes an angle. */
    static String write(Angle angle) {
        String plat = degreesMinutesSeconds(angle.abs());
        String text = Angle.parse(plat).equals(angle.abs())
                ? plat
                : Measure.plain(BigDecimal.valueOf(angle.abs().degrees())) + "°";
        return angle.isNegative() ? "-" + text : text;
    }

    private static String degreesMinutesSeconds(Angle size) {
        // Rounded first and split after, so that no 60" is left to carry.
        long thousandths = Math.round(size.degrees() * 3_600_000);
        BigDecimal seconds = BigDecimal.valueOf(thousandths % 60_000, 3).stripTrailingZeros();
        long minutes = thousandths / 60_000 % 60;
        String whole = thousandths / 3_600_000 + "°";
        if (seconds.signum() == 0) {
            return minutes == 0 ? whole : whole + String.format(Locale.ROOT, "%02d'", minutes);
        }
        String lead = seconds.compareTo(BigDecimal.TEN) < 0 ? "0" : "";
        return whole + String.format(Locale.ROOT, "%02d'", minutes) + lead + seconds.toPlainString() + "\"";
    }
}
