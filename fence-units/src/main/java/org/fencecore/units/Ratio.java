package org.fencecore.units;

import javax.measure.Quantity;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;

/** A share or factor without a unit, such as the solid part of a fence or a factor of a design rule. */
public final class Ratio extends Measure<Ratio> {

    private static final double PERCENT = 0.01;

    /** None at all. */
    public static final Ratio ZERO = new Ratio(0);

    private Ratio(double si) {
        super(si);
    }

    @Override
    Ratio with(double newSi) {
        return new Ratio(newSi);
    }

    /**
     * Returns a ratio from a plain number.
     *
     * @param value the ratio, 1 being the whole, finite
     * @return the ratio
     * @throws IllegalArgumentException if not finite
     */
    public static Ratio of(double value) {
        return new Ratio(value);
    }

    /**
     * Returns a ratio given in percent.
     *
     * @param percent the ratio in percent, finite
     * @return the ratio
     * @throws IllegalArgumentException if not finite
     */
    public static Ratio ofPercent(double percent) {
        return new Ratio(percent * PERCENT);
    }

    /**
     * Returns the ratio of any JSR-385 quantity.
     *
     * @param quantity a ratio in any unit
     * @return the ratio
     */
    public static Ratio from(Quantity<javax.measure.quantity.Dimensionless> quantity) {
        return new Ratio(siOf(quantity, AbstractUnit.ONE));
    }

    /**
     * Returns this ratio as a JSR-385 quantity in its SI unit.
     *
     * @return the quantity
     */
    public Quantity<javax.measure.quantity.Dimensionless> toQuantity() {
        return Quantities.getQuantity(si(), AbstractUnit.ONE);
    }

    /**
     * Returns the ratio as a plain number, 1 being the whole.
     *
     * @return the number
     */
    public double value() {
        return si();
    }

    /**
     * Returns the ratio in percent.
     *
     * @return percent
     */
    public double percent() {
        return si() / PERCENT;
    }

    @Override
    public String toString() {
        return rounded(value());
    }
}
