package org.fencecore.units;

/** A turning moment, such as the wind on a fence has about the ground line of a post. */
public final class Moment extends Measure<Moment> {

    private static final double POUND_FOOT = 4.4482216152605 * 0.3048;
    private static final double POUND_INCH = 4.4482216152605 * 0.0254;

    /** None at all. */
    public static final Moment ZERO = new Moment(0);

    private Moment(double si) {
        super(si);
    }

    @Override
    Moment with(double newSi) {
        return new Moment(newSi);
    }

    /**
     * Returns a moment given in newton-metres.
     *
     * @param newtonMetres the moment in newton-metres, finite
     * @return the moment
     * @throws IllegalArgumentException if not finite
     */
    public static Moment ofNewtonMetres(double newtonMetres) {
        return new Moment(newtonMetres);
    }

    /**
     * Returns a moment given in pound-feet.
     *
     * @param poundFeet the moment in pound-feet, finite
     * @return the moment
     * @throws IllegalArgumentException if not finite
     */
    public static Moment ofPoundFeet(double poundFeet) {
        return new Moment(poundFeet * POUND_FOOT);
    }

    /**
     * Returns a moment given in pound-inches.
     *
     * @param poundInches the moment in pound-inches, finite
     * @return the moment
     * @throws IllegalArgumentException if not finite
     */
    public static Moment ofPoundInches(double poundInches) {
        return new Moment(poundInches * POUND_INCH);
    }

    /**
     * Returns the moment in newton-metres.
     *
     * @return newton-metres
     */
    public double newtonMetres() {
        return si();
    }

    /**
     * Returns the moment in pound-feet.
     *
     * @return pound-feet
     */
    public double poundFeet() {
        return si() / POUND_FOOT;
    }

    /**
     * Returns the moment in pound-inches.
     *
     * @return pound-inches
     */
    public double poundInches() {
        return si() / POUND_INCH;
    }

    @Override
    public String toString() {
        return rounded(poundFeet()) + " lbf-ft";
    }
}
