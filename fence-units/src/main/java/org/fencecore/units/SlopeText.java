package org.fencecore.units;

import java.math.BigDecimal;

/** Reads and writes grades in the ways the trades have for them. */
final class SlopeText {

    private static final String NUMBER = "a number, as in 20 %, 11.3 deg, 2.4 in/ft or 1:5";
    private static final String MARKS = "%:" + AngleText.MARKS;

    private SlopeText() {}

    /** Reads a whole text. */
    static Slope read(CharSequence text) {
        TextCursor in = new TextCursor("slope", text);
        Slope slope = slope(in);
        in.takeEnd("the end of the slope");
        return slope;
    }

    private static Slope slope(TextCursor in) {
        int start = in.position();
        boolean minus = in.takeMinus();
        int first = in.position();
        if (in.nextIsVulgarFraction()) {
            in.backTo(start);
            return risePerUnit(in);
        }
        BigDecimal number = in.takeDecimal(NUMBER);
        in.takeBlanks();
        int name = in.position();
        String unit = in.takeUnit(MARKS);
        if (unit.equals("%") || unit.equals("percent")) {
            return Slope.ofPercent(minus ? -number.doubleValue() : number.doubleValue());
        }
        // An "in." with its stop is always the inch.
        if (unit.equals(":") || (unit.equals("in") && in.position() == name + 2 && in.takeJoint(false))) {
            if (number.compareTo(BigDecimal.ONE) != 0) {
                throw in.refusal(first, "1, as in 1:5, since a grade such as 2:1 is read both ways");
            }
            double run = run(in);
            return Slope.ofOneIn(minus ? -run : run);
        }
        in.backTo(start);
        return AngleText.DEGREE.contains(unit) ? ofAngle(in) : risePerUnit(in);
    }

    private static double run(TextCursor in) {
        in.takeBlanks();
        int start = in.position();
        BigDecimal run = in.takeDecimal("the run for a rise of 1");
        if (run.signum() == 0) {
            throw in.refusal(start, "a run over 0");
        }
        return run.doubleValue();
    }

    private static Slope ofAngle(TextCursor in) {
        int start = in.position();
        double degrees = AngleText.degrees(in);
        if (Math.abs(degrees) >= 90) {
            throw in.refusal(start, "an angle between -90 and 90 degrees");
        }
        return Slope.ofAngle(Angle.ofDegrees(degrees));
    }

    private static Slope risePerUnit(TextCursor in) {
        Length rise = Length.ofNanometres(LengthText.nanometres(in));
        in.takeBlanks();
        int start = in.position();
        if (!in.take("/") && !in.takeUnit("").equals("per")) {
            throw in.refusal(start, "\"/ft\" or \"per ft\" after a rise");
        }
        in.takeBlanks();
        int unit = in.position();
        return switch (LengthUnit.take(in, "\"ft\" or \"m\"")) {
            case FOOT -> Slope.ofRisePerFoot(rise);
            case METRE -> Slope.of(rise, Length.ofMetres(1));
            default -> throw in.refusal(unit, "\"ft\" or \"m\"");
        };
    }

    /** Writes a grade in percent. */
    static String write(double risePerRun) {
        return Measure.plain(BigDecimal.valueOf(risePerRun).movePointRight(2)) + " %";
    }
}
