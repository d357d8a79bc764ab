package org.fencecore.units;

/** How cold for how long: degrees below freezing added up day by day, such as the freezing index of a winter. */
public final class DegreeDays extends Measure<DegreeDays> {

    private static final double FAHRENHEIT = 5 / 9.0;

    /** None at all. */
    public static final DegreeDays ZERO = new DegreeDays(0);

    private DegreeDays(double si) {
        super(si);
    }

    @Override
    DegreeDays with(double newSi) {
        return new DegreeDays(newSi);
    }

    /**
     * Returns degree-days given in degrees Celsius.
     *
     * @param celsius the sum in degrees Celsius times days, finite
     * @return the degree-days
     * @throws IllegalArgumentException if not finite
     */
    public static DegreeDays ofCelsius(double celsius) {
        return new DegreeDays(celsius);
    }

    /**
     * Returns degree-days given in degrees Fahrenheit.
     *
     * @param fahrenheit the sum in degrees Fahrenheit times days, finite
     * @return the degree-days
     * @throws IllegalArgumentException if not finite
     */
    public static DegreeDays ofFahrenheit(double fahrenheit) {
        return new DegreeDays(fahrenheit * FAHRENHEIT);
    }

    /**
     * Returns the degree-days in degrees Celsius.
     *
     * @return degrees Celsius times days
     */
    public double celsius() {
        return si();
    }

    /**
     * Returns the degree-days in degrees Fahrenheit.
     *
     * @return degrees Fahrenheit times days
     */
    public double fahrenheit() {
        return si() / FAHRENHEIT;
    }

    @Override
    public String toString() {
        return rounded(fahrenheit()) + " degF d";
    }
}
