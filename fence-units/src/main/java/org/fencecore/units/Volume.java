package org.fencecore.units;

import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** A volume. */
public final class Volume extends Measure<Volume> {

    private static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;
    private static final double CUBIC_YARD = 0.9144 * 0.9144 * 0.9144;

    /** None at all. */
    public static final Volume ZERO = new Volume(0);

    private Volume(double si) {
        super(si);
    }

    @Override
    Volume with(double newSi) {
        return new Volume(newSi);
    }

    /**
     * Returns a volume given in cubic metres.
     *
     * @param cubicMetres the volume in cubic metres, finite
     * @return the volume
     * @throws IllegalArgumentException if not finite
     */
    public static Volume ofCubicMetres(double cubicMetres) {
        return new Volume(cubicMetres);
    }

    /**
     * Returns a volume given in cubic feet.
     *
     * @param cubicFeet the volume in cubic feet, finite
     * @return the volume
     * @throws IllegalArgumentException if not finite
     */
    public static Volume ofCubicFeet(double cubicFeet) {
        return new Volume(cubicFeet * CUBIC_FOOT);
    }

    /**
     * Returns a volume given in cubic yards.
     *
     * @param cubicYards the volume in cubic yards, finite
     * @return the volume
     * @throws IllegalArgumentException if not finite
     */
    public static Volume ofCubicYards(double cubicYards) {
        return new Volume(cubicYards * CUBIC_YARD);
    }

    /**
     * Returns the volume of any JSR-385 quantity.
     *
     * @param quantity a volume in any unit
     * @return the volume
     */
    public static Volume from(Quantity<javax.measure.quantity.Volume> quantity) {
        return new Volume(siOf(quantity, Units.CUBIC_METRE));
    }

    /**
     * Returns this volume as a JSR-385 quantity in its SI unit.
     *
     * @return the quantity
     */
    public Quantity<javax.measure.quantity.Volume> toQuantity() {
        return Quantities.getQuantity(si(), Units.CUBIC_METRE);
    }

    /**
     * Returns the volume in cubic metres.
     *
     * @return cubic metres
     */
    public double cubicMetres() {
        return si();
    }

    /**
     * Returns the volume in cubic feet.
     *
     * @return cubic feet
     */
    public double cubicFeet() {
        return si() / CUBIC_FOOT;
    }

    /**
     * Returns the volume in cubic yards.
     *
     * @return cubic yards
     */
    public double cubicYards() {
        return si() / CUBIC_YARD;
    }

    @Override
    public String toString() {
        return rounded(cubicFeet()) + " cu ft";
    }
}
