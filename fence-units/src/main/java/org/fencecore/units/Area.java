package org.fencecore.units;

import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** An area. */
public final class Area extends Measure<Area> {

    private static final double SQUARE_FOOT = 0.3048 * 0.3048;
    private static final double SQUARE_INCH = 0.0254 * 0.0254;
    private static final double ACRE = 4046.8564224;

    /** None at all. */
    public static final Area ZERO = new Area(0);

    private Area(double si) {
        super(si);
    }

    @Override
    Area with(double newSi) {
        return new Area(newSi);
    }

    /**
     * Returns an area given in square metres.
     *
     * @param squareMetres the area in square metres, finite
     * @return the area
     * @throws IllegalArgumentException if not finite
     */
    public static Area ofSquareMetres(double squareMetres) {
        return new Area(squareMetres);
    }

    /**
     * Returns an area given in square feet.
     *
     * @param squareFeet the area in square feet, finite
     * @return the area
     * @throws IllegalArgumentException if not finite
     */
    public static Area ofSquareFeet(double squareFeet) {
        return new Area(squareFeet * SQUARE_FOOT);
    }

    /**
     * Returns an area given in square inches.
     *
     * @param squareInches the area in square inches, finite
     * @return the area
     * @throws IllegalArgumentException if not finite
     */
    public static Area ofSquareInches(double squareInches) {
        return new Area(squareInches * SQUARE_INCH);
    }

    /**
     * Returns an area given in acres of 43,560 square feet.
     *
     * @param acres the area in acres of 43,560 square feet, finite
     * @return the area
     * @throws IllegalArgumentException if not finite
     */
    public static Area ofAcres(double acres) {
        return new Area(acres * ACRE);
    }

    /**
     * Returns the area of any JSR-385 quantity.
     *
     * @param quantity an area in any unit
     * @return the area
     */
    public static Area from(Quantity<javax.measure.quantity.Area> quantity) {
        return new Area(siOf(quantity, Units.SQUARE_METRE));
    }

    /**
     * Returns this area as a JSR-385 quantity in its SI unit.
     *
     * @return the quantity
     */
    public Quantity<javax.measure.quantity.Area> toQuantity() {
        return Quantities.getQuantity(si(), Units.SQUARE_METRE);
    }

    /**
     * Returns the area in square metres.
     *
     * @return square metres
     */
    public double squareMetres() {
        return si();
    }

    /**
     * Returns the area in square feet.
     *
     * @return square feet
     */
    public double squareFeet() {
        return si() / SQUARE_FOOT;
    }

    /**
     * Returns the area in square inches.
     *
     * @return square inches
     */
    public double squareInches() {
        return si() / SQUARE_INCH;
    }

    /**
     * Returns the area in acres of 43,560 square feet.
     *
     * @return acres of 43,560 square feet
     */
    public double acres() {
        return si() / ACRE;
    }

    /**
     * Returns the volume of a prism on this area.
     *
     * @param height the height of the prism
     * @return the volume
     */
    public Volume times(Length height) {
        return Volume.ofCubicMetres(si() * height.metres());
    }

    @Override
    public String toString() {
        return rounded(squareFeet()) + " sq ft";
    }
}
