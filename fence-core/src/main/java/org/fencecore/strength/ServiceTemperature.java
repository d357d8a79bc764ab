package org.fencecore.strength;

/**
 * How hot the wood gets and stays; a fence in the open is {@link #USUAL}.
 *
 * <p>Source: NDS 2018, table 2.3.3.
 */
public enum ServiceTemperature {
    /** To 100 degrees Fahrenheit, 38 Celsius. */
    USUAL(1, 1, 1),
    /** To 125 degrees Fahrenheit, 52 Celsius. */
    TO_125_F(0.8, 0.7, 0.9),
    /** To 150 degrees Fahrenheit, 66 Celsius. */
    TO_150_F(0.7, 0.5, 0.9);

    private final double dry;
    private final double wet;
    private final double stiffness;

    ServiceTemperature(double dry, double wet, double stiffness) {
        this.dry = dry;
        this.wet = wet;
        this.stiffness = stiffness;
    }

    /** Ct of bending and shear. */
    double onStress(boolean isWet) {
        return isWet ? wet : dry;
    }

    /** Ct of the modulus of elasticity. */
    double onStiffness() {
        return stiffness;
    }
}
