package org.fencecore.units;

import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** A force, such as a weight or the push of the wind. */
public final class Force extends Measure<Force> {

    private static final double POUND_FORCE = 4.4482216152605;

    /** None at all. */
    public static final Force ZERO = new Force(0);

    private Force(double si) {
        super(si);
    }

    @Override
    Force with(double newSi) {
        return new Force(newSi);
    }

    /**
     * Returns a force given in newtons.
     *
     * @param newtons the force in newtons, finite
     * @return the force
     * @throws IllegalArgumentException if not finite
     */
    public static Force ofNewtons(double newtons) {
        return new Force(newtons);
    }

    /**
     * Returns a force given in pounds-force.
     *
     * @param poundsForce the force in pounds-force, finite
     * @return the force
     * @throws IllegalArgumentException if not finite
     */
    public static Force ofPoundsForce(double poundsForce) {
        return new Force(poundsForce * POUND_FORCE);
    }

    /**
     * Returns the force of any JSR-385 quantity.
     *
     * @param quantity a force in any unit
     * @return the force
     */
    public static Force from(Quantity<javax.measure.quantity.Force> quantity) {
        return new Force(siOf(quantity, Units.NEWTON));
    }

    /**
     * Returns this force as a JSR-385 quantity in its SI unit.
     *
     * @return the quantity
     */
    public Quantity<javax.measure.quantity.Force> toQuantity() {
        return Quantities.getQuantity(si(), Units.NEWTON);
    }

    /**
     * Returns the force in newtons.
     *
     * @return newtons
     */
    public double newtons() {
        return si();
    }

    /**
     * Returns the force in pounds-force.
     *
     * @return pounds-force
     */
    public double poundsForce() {
        return si() / POUND_FORCE;
    }

    /**
     * Returns the moment of this force about a point.
     *
     * @param arm the distance from the point, square to the force
     * @return the moment
     */
    public Moment times(Length arm) {
        return Moment.ofNewtonMetres(si() * arm.metres());
    }

    @Override
    public String toString() {
        return rounded(poundsForce()) + " lbf";
    }
}
