package org.fencecore.units;

/** How well something conducts heat, such as frozen soil. */
public final class Conductivity extends Measure<Conductivity> {

    /** A British thermal unit (international table) in an hour through a foot for each degree Fahrenheit. */
    private static final double BTU_PER_HOUR_FOOT = 1055.05585262 / (3600 * 0.3048) * 9 / 5;

    private Conductivity(double si) {
        super(si);
    }

    @Override
    Conductivity with(double newSi) {
        return new Conductivity(newSi);
    }

    /**
     * Returns a conductivity given in watts per metre and kelvin.
     *
     * @param wattsPerMetre the conductivity in W/(m K), finite
     * @return the conductivity
     * @throws IllegalArgumentException if not finite
     */
    public static Conductivity ofWattsPerMetre(double wattsPerMetre) {
        return new Conductivity(wattsPerMetre);
    }

    /**
     * Returns a conductivity given in British thermal units per hour, foot and degree Fahrenheit.
     *
     * @param btuPerHourFoot the conductivity in BTU/(h ft degF), finite
     * @return the conductivity
     * @throws IllegalArgumentException if not finite
     */
    public static Conductivity ofBtuPerHourFoot(double btuPerHourFoot) {
        return new Conductivity(btuPerHourFoot * BTU_PER_HOUR_FOOT);
    }

    /**
     * Returns the conductivity in watts per metre and kelvin.
     *
     * @return W/(m K)
     */
    public double wattsPerMetre() {
        return si();
    }

    /**
     * Returns the conductivity in British thermal units per hour, foot and degree Fahrenheit.
     *
     * @return BTU/(h ft degF)
     */
    public double btuPerHourFoot() {
        return si() / BTU_PER_HOUR_FOOT;
    }

    @Override
    public String toString() {
        return rounded(wattsPerMetre()) + " W/(m K)";
    }
}
