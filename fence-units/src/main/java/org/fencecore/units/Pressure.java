package org.fencecore.units;

import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** A pressure or stress. */
public final class Pressure extends Measure<Pressure> {

    private static final double PSF = 4.4482216152605 / (0.3048 * 0.3048);
    private static final double PSI = 4.4482216152605 / (0.0254 * 0.0254);

    /** None at all. */
    public static final Pressure ZERO = new Pressure(0);

    private Pressure(double si) {
        super(si);
    }

    @Override
    Pressure with(double newSi) {
        return new Pressure(newSi);
    }

    /**
     * Returns a pressure given in pascals.
     *
     * @param pascals the pressure in pascals, finite
     * @return the pressure
     * @throws IllegalArgumentException if not finite
     */
    public static Pressure ofPascals(double pascals) {
        return new Pressure(pascals);
    }

    /**
     * Returns a pressure given in pounds-force per square foot.
     *
     * @param psf the pressure in pounds-force per square foot, finite
     * @return the pressure
     * @throws IllegalArgumentException if not finite
     */
    public static Pressure ofPsf(double psf) {
        return new Pressure(psf * PSF);
    }

    /**
     * Returns a pressure given in pounds-force per square inch.
     *
     * @param psi the pressure in pounds-force per square inch, finite
     * @return the pressure
     * @throws IllegalArgumentException if not finite
     */
    public static Pressure ofPsi(double psi) {
        return new Pressure(psi * PSI);
    }

    /**
     * Returns the pressure of any JSR-385 quantity.
     *
     * @param quantity a pressure in any unit
     * @return the pressure
     */
    public static Pressure from(Quantity<javax.measure.quantity.Pressure> quantity) {
        return new Pressure(siOf(quantity, Units.PASCAL));
    }

    /**
     * Returns this pressure as a JSR-385 quantity in its SI unit.
     *
     * @return the quantity
     */
    public Quantity<javax.measure.quantity.Pressure> toQuantity() {
        return Quantities.getQuantity(si(), Units.PASCAL);
    }

    /**
     * Returns the pressure in pascals.
     *
     * @return pascals
     */
    public double pascals() {
        return si();
    }

    /**
     * Returns the pressure in pounds-force per square foot.
     *
     * @return pounds-force per square foot
     */
    public double psf() {
        return si() / PSF;
    }

    /**
     * Returns the pressure in pounds-force per square inch.
     *
     * @return pounds-force per square inch
     */
    public double psi() {
        return si() / PSI;
    }

    /**
     * Returns the force of this pressure on an area.
     *
     * @param area the area it acts on
     * @return the force
     */
    public Force times(Area area) {
        return Force.ofNewtons(si() * area.squareMetres());
    }

    @Override
    public String toString() {
        return rounded(psf()) + " psf";
    }
}
