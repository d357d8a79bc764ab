package org.fencecore.units;

import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** A mass. */
public final class Mass extends Measure<Mass> {

    private static final double POUND = 0.45359237;

    /** None at all. */
    public static final Mass ZERO = new Mass(0);

    private Mass(double si) {
        super(si);
    }

    @Override
    Mass with(double newSi) {
        return new Mass(newSi);
    }

    /**
     * Returns a mass given in kilograms.
     *
     * @param kilograms the mass in kilograms, finite
     * @return the mass
     * @throws IllegalArgumentException if not finite
     */
    public static Mass ofKilograms(double kilograms) {
        return new Mass(kilograms);
    }

    /**
     * Returns a mass given in pounds of 0.45359237 kg.
     *
     * @param pounds the mass in pounds of 0.45359237 kg, finite
     * @return the mass
     * @throws IllegalArgumentException if not finite
     */
    public static Mass ofPounds(double pounds) {
        return new Mass(pounds * POUND);
    }

    /**
     * Returns the mass of any JSR-385 quantity.
     *
     * @param quantity a mass in any unit
     * @return the mass
     */
    public static Mass from(Quantity<javax.measure.quantity.Mass> quantity) {
        return new Mass(siOf(quantity, Units.KILOGRAM));
    }

    /**
     * Returns this mass as a JSR-385 quantity in its SI unit.
     *
     * @return the quantity
     */
    public Quantity<javax.measure.quantity.Mass> toQuantity() {
        return Quantities.getQuantity(si(), Units.KILOGRAM);
    }

    /**
     * Returns the mass in kilograms.
     *
     * @return kilograms
     */
    public double kilograms() {
        return si();
    }

    /**
     * Returns the mass in pounds of 0.45359237 kg.
     *
     * @return pounds of 0.45359237 kg
     */
    public double pounds() {
        return si() / POUND;
    }

    /**
     * Returns the weight of this mass under standard gravity, 9.80665 m/s2.
     *
     * @return the weight
     */
    public Force weight() {
        return Force.ofNewtons(si() * 9.80665);
    }

    @Override
    public String toString() {
        return rounded(pounds()) + " lb";
    }
}
