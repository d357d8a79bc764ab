package org.fencecore.strength;

import java.util.List;
import java.util.Objects;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The dressed cross-section of a post or a rail, and what its size makes of it: dimension lumber of 2 to 4 in nominal, or
 * a post of 5 in and more.
 *
 * <p>Example: a 4x6 is 3 1/2 by 5 1/2 in, 19.25 sq in.
 *
 * <pre>{@code
 * WoodSection.of(Length.ofInches(3.5), Length.ofInches(5.5)).area();   // 19.25 sq in
 * }</pre>
 *
 * <p>Dressed sizes: American Softwood Lumber Standard PS 20, dry.
 */
public final class WoodSection {

    private static final Length LEAST = Length.ofInches(0.25);
    private static final Length MOST = Length.ofInches(24);

    /** A 2x4, 1 1/2 by 3 1/2 in. */
    public static final WoodSection TWO_BY_FOUR = ofInches(1.5, 3.5);

    /** A 2x6, 1 1/2 by 5 1/2 in. */
    public static final WoodSection TWO_BY_SIX = ofInches(1.5, 5.5);

    /** A 4x4, 3 1/2 in square. */
    public static final WoodSection FOUR_BY_FOUR = ofInches(3.5, 3.5);

    /** A 4x6, 3 1/2 by 5 1/2 in. */
    public static final WoodSection FOUR_BY_SIX = ofInches(3.5, 5.5);

    /** A 6x6, 5 1/2 in square. */
    public static final WoodSection SIX_BY_SIX = ofInches(5.5, 5.5);

    /** An 8x8, 7 1/4 in square. */
    public static final WoodSection EIGHT_BY_EIGHT = ofInches(7.25, 7.25);

    /** The usual posts, the smallest first. */
    public static final List<WoodSection> POSTS = List.of(FOUR_BY_FOUR, FOUR_BY_SIX, SIX_BY_SIX, EIGHT_BY_EIGHT);

    private final Length thickness;
    private final Length width;

    private WoodSection(Length thickness, Length width) {
        this.thickness = thickness;
        this.width = width;
    }

    private static WoodSection ofInches(double thickness, double width) {
        return new WoodSection(Length.ofInches(thickness), Length.ofInches(width));
    }

    /**
     * Returns a section of those dressed sizes.
     *
     * @param thickness the smaller size, from 1/4 in
     * @param width the larger size, at least the thickness, to 24 in
     * @return the section
     * @throws IllegalArgumentException if either is out of its range
     */
    public static WoodSection of(Length thickness, Length width) {
        Objects.requireNonNull(thickness, "thickness");
        Objects.requireNonNull(width, "width");
        if (!isReckoned(thickness, width)) {
            throw new IllegalArgumentException("thickness was " + thickness + " and width " + width
                    + "; the thickness must be from " + LEAST + ", the width at least that and no more than " + MOST
                    + ", so check their units and order");
        }
        return new WoodSection(thickness, width);
    }

    /**
     * Tells whether sections of those dressed sizes are reckoned with.
     *
     * @param thickness the smaller size
     * @param width the larger size
     * @return true if {@link #of} takes them
     */
    public static boolean isReckoned(Length thickness, Length width) {
        return thickness.compareTo(LEAST) >= 0 && thickness.compareTo(width) <= 0 && width.compareTo(MOST) <= 0;
    }

    /**
     * Returns the smaller size.
     *
     * @return the dressed thickness
     */
    public Length thickness() {
        return thickness;
    }

    /**
     * Returns the larger size.
     *
     * @return the dressed width
     */
    public Length width() {
        return width;
    }

    /**
     * Returns the area of the section.
     *
     * @return thickness times width
     */
    public Area area() {
        return thickness.times(width);
    }

    /** The section modulus in cubic metres, bent across its width or, lying flat, across its thickness. */
    double modulus(boolean flat) {
        double depth = depth(flat);
        return area().squareMetres() * depth / 6;
    }

    /** The moment of inertia in metres to the fourth. */
    double inertia(boolean flat) {
        double depth = depth(flat);
        return area().squareMetres() * depth * depth / 12;
    }

    private double depth(boolean flat) {
        return (flat ? thickness : width).metres();
    }

    /** Tells whether it is 5 in nominal or more both ways, and not 2 in more one way than the other. */
    boolean isPost() {
        return thickness.inches() >= 4.5 && width.inches() - thickness.inches() < 2.01;
    }

    /** Tells whether it is 2 to 4 in nominal thick, dry or green, and to 12 in nominal wide. */
    boolean isDimension() {
        return thickness.inches() > 1.4 && thickness.inches() < 3.6 && width.inches() < 11.6;
    }

    boolean isFourThick() {
        return thickness.inches() > 3.4;
    }

    /** The nominal width in inches of dimension lumber: 4 for all up to it, then 5, 6, 8, 10 and 12. */
    int nominalWidth() {
        double inches = width.inches();
        return inches < 3.6 ? 4 : inches < 4.7 ? 5 : inches < 5.7 ? 6 : inches < 7.6 ? 8 : inches < 9.6 ? 10 : 12;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WoodSection that && thickness.equals(that.thickness) && width.equals(that.width);
    }

    @Override
    public int hashCode() {
        return 31 * thickness.hashCode() + width.hashCode();
    }

    @Override
    public String toString() {
        return Written.tape(thickness) + " x " + Written.tape(width);
    }
}
