package org.fencecore.wind;

/**
 * How open the ground around the place is to the wind, as ASCE 7 names it.
 *
 * <p>Sources: for the constants and the printed coefficients, see {@link AsceEdition}.
 */
public enum Exposure {
    /** Towns, suburbs and woods: closely spaced obstructions the size of houses or larger. */
    B("B, town, suburb or wood", 7.0, 1200, 7.5, 3280),
    /** Open ground with scattered obstructions; what is taken if nothing is known. */
    C("C, open ground", 9.5, 900, 9.8, 2460),
    /** Flat, unobstructed ground and water. */
    D("D, flat shore", 11.5, 700, 11.5, 1935);

    private static final double[] PRINTED_B = {0.57, 0.62, 0.66, 0.70};
    private static final double[] PRINTED_C = {0.85, 0.90, 0.94, 0.98};
    private static final double[] PRINTED_D = {1.03, 1.08, 1.12, 1.16};

    private final String words;
    private final double power;
    private final double gradientFeet;
    private final double laterPower;
    private final double laterGradientFeet;

    Exposure(String words, double power, double gradientFeet, double laterPower, double laterGradientFeet) {
        this.words = words;
        this.power = power;
        this.gradientFeet = gradientFeet;
        this.laterPower = laterPower;
        this.laterGradientFeet = laterGradientFeet;
    }

    /** The power a of the wind's profile, by ASCE 7-22 if later, else by 7-10 and 7-16. */
    double power(boolean later) {
        return later ? laterPower : power;
    }

    /** The height zg in metres above which the ground no longer slows the wind. */
    double gradientHeight(boolean later) {
        return (later ? laterGradientFeet : gradientFeet) * 0.3048;
    }

    /** Kz as printed at 15, 20, 25 and 30 ft; the entries at 20 and 25 ft are from memory. */
    double printed(int row) {
        double[] rows = switch (this) {
            case B -> PRINTED_B;
            case C -> PRINTED_C;
            case D -> PRINTED_D;
        };
        return rows[row];
    }

    /**
     * Returns the letter and what it stands for.
     *
     * @return such as {@code C, open ground}
     */
    @Override
    public String toString() {
        return words;
    }
}
