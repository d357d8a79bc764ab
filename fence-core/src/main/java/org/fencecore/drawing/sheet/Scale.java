package org.fencecore.drawing.sheet;

import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.jspecify.annotations.Nullable;

/**
 * How much smaller a drawing is than the real thing.
 *
 * <p>Example: at 1:48, which is 1/4 in on paper for 1 ft, a bay of 8 ft is 2 in long.
 */
public final class Scale {

    private static final TapeFormat INCHES = TapeFormat.inches(32);

    private final long denominator;

    private Scale(long denominator) {
        this.denominator = denominator;
    }

    /**
     * Returns a scale.
     *
     * @param denominator how many times smaller the drawing is, 1 or more
     * @return the scale 1 : denominator
     * @throws IllegalArgumentException if {@code denominator} is under 1
     */
    public static Scale oneTo(long denominator) {
        if (denominator < 1) {
            throw new IllegalArgumentException(
                    "denominator of the scale was " + denominator + "; it must be 1 or more, such as 48 for 1:48");
        }
        return new Scale(denominator);
    }

    /**
     * Returns how many times smaller the drawing is.
     *
     * @return the denominator
     */
    public long denominator() {
        return denominator;
    }

    /**
     * Returns how long something is on paper.
     *
     * @param real its real length
     * @return the length on paper, to the nearest nanometre
     */
    public Length onPaper(Length real) {
        return real.dividedBy(denominator);
    }

    /** Returns how long something is on paper in mm, for placing. */
    double millimetres(Length real) {
        return (double) real.nanometres() / 1_000_000 / denominator;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Scale scale && scale.denominator == denominator;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(denominator);
    }

    /**
     * Returns the scale as sheets name it.
     *
     * @return such as {@code 1:48 (1/4" = 1' 0")}, {@code 1:240 (1" = 20')} or {@code 1:50}
     */
    @Override
    public String toString() {
        String plain = "1:" + denominator;
        Length foot = Length.ofFeet(1);
        if (denominator <= 192 && INCHES.read(onPaper(foot)).isExact()) {
            return plain + " (" + INCHES.format(onPaper(foot)) + " = 1' 0\")";
        }
        return denominator % 120 == 0 ? plain + " (1\" = " + denominator / 12 + "')" : plain;
    }
}
