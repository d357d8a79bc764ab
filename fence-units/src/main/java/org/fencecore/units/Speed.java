package org.fencecore.units;

import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** A speed, such as that of the wind. */
public final class Speed extends Measure<Speed> {

    private static final double MILE_PER_HOUR = 0.44704;

    /** None at all. */
    public static final Speed ZERO = new Speed(0);

    private Speed(double si) {
        super(si);
    }

    @Override
    Speed with(double newSi) {
        return new Speed(newSi);
    }

    /**
     * Returns a speed given in metres per second.
     *
     * @param metresPerSecond the speed in metres per second, finite
     * @return the speed
     * @throws IllegalArgumentException if not finite
     */
    public static Speed ofMetresPerSecond(double metresPerSecond) {
        return new Speed(metresPerSecond);
    }

    /**
     * Returns a speed given in miles per hour.
     *
     * @param milesPerHour the speed in miles per hour, finite
     * @return the speed
     * @throws IllegalArgumentException if not finite
     */
    public static Speed ofMilesPerHour(double milesPerHour) {
        return new Speed(milesPerHour * MILE_PER_HOUR);
    }

    /**
     * Returns the speed of any JSR-385 quantity.
     *
     * @param quantity a speed in any unit
     * @return the speed
     */
    public static Speed from(Quantity<javax.measure.quantity.Speed> quantity) {
        return new Speed(siOf(quantity, Units.METRE_PER_SECOND));
    }

    /**
     * Returns this speed as a JSR-385 quantity in its SI unit.
     *
     * @return the quantity
     */
    public Quantity<javax.measure.quantity.Speed> toQuantity() {
        return Quantities.getQuantity(si(), Units.METRE_PER_SECOND);
    }

    /**
     * Returns the speed in metres per second.
     *
     * @return metres per second
     */
    public double metresPerSecond() {
        return si();
    }

    /**
     * Returns the speed in miles per hour.
     *
     * @return miles per hour
     */
    public double milesPerHour() {
        return si() / MILE_PER_HOUR;
    }

    @Override
    public String toString() {
        return rounded(milesPerHour()) + " mph";
    }
}
