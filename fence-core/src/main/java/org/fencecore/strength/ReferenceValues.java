package org.fencecore.strength;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The strength and stiffness of a wood, grade and size before any factor, as the design values of the wood industry list
 * them.
 *
 * <p>Dimension lumber (2 to 4 in nominal thick) is in table 4A, Southern Pine in table 4B, whose values have the size in
 * them already; posts and timbers (5 in nominal and more) in table 4D. A 6x6 is a post: taking a 4x4's value for it is a
 * common error.
 *
 * <p>Example: No.2 Southern Pine is 1,100 psi in bending as a 4x4 and 850 psi as a 6x6.
 *
 * <pre>{@code
 * ReferenceValues.find(SpeciesGroup.SOUTHERN_PINE, WoodGrade.NO_2, WoodSection.FOUR_BY_FOUR)
 *         .orElseThrow().bending();      // 1100 psi
 * }</pre>
 *
 * <p>Source: NDS Supplement 2018, tables 4A, 4B and 4D. Redwood has had other values in older editions.
 */
public final class ReferenceValues {

    /** Fb and Fv in psi, E in millions of psi. */
    private static final double[][] NO_TABLE = {};

    private static final int NO_1 = 0;
    private static final int NO_2 = 1;

    private static final double[] NONE = {};

    private static final Pressure LEAST_BENDING = Pressure.ofPsi(10);
    private static final Pressure MOST_BENDING = Pressure.ofPsi(100_000);
    private static final Pressure MOST_ELASTICITY = Pressure.ofPsi(10_000_000);

    private static final double[][] SOUTHERN_PINE_4 = {{1500, 175, 1.6}, {1100, 175, 1.4}};
    private static final double[][] SOUTHERN_PINE_6 = {{1350, 175, 1.6}, {1000, 175, 1.4}};
    private static final double[][] SOUTHERN_PINE_8 = {NONE, {925, 175, 1.4}};
    private static final double[][] SOUTHERN_PINE_POST = {{1350, 165, 1.5}, {850, 165, 1.2}};
    private static final double[][] DOUGLAS_FIR = {{1000, 180, 1.7}, {900, 180, 1.6}};
    private static final double[][] DOUGLAS_FIR_POST = {{1200, 170, 1.6}, {750, 170, 1.3}};
    private static final double[][] HEM_FIR = {NONE, {850, 150, 1.3}};
    private static final double[][] HEM_FIR_POST = {NONE, {575, 140, 1.1}};
    private static final double[][] SPRUCE = {{875, 135, 1.4}, {875, 135, 1.4}};
    private static final double[][] SPRUCE_POST = {NONE, {500, 125, 1.0}};
    private static final double[][] CEDAR = {{725, 155, 1.0}, {700, 155, 1.0}};
    private static final double[][] CEDAR_POST = {{875, 140, 1.0}, {550, 140, 0.8}};
    private static final double[][] REDWOOD = {NONE, {725, 160, 1.0}};
    private static final double[][] REDWOOD_POST = {NONE, {750, 145, 0.9}};

    private final Pressure bending;
    private final Pressure shear;
    private final Pressure elasticity;
    private final boolean withSize;
    private final Citation source;

    private ReferenceValues(Pressure bending, Pressure shear, Pressure elasticity, boolean withSize, Citation source) {
        this.bending = bending;
        this.shear = shear;
        this.elasticity = elasticity;
        this.withSize = withSize;
        this.source = source;
    }

    /**
     * Takes the values of a wood or grade that is not held here, such as a yard's own grading, for the very size it is used
     * in; no size factor is put to them.
     *
     * <p>Example: machine-graded lumber of 1,650 psi and 1.5 million psi, with 175 psi in shear; a wet 2x4 of it on edge may
     * be bent with {@code 1650 x 1.6 x 0.85} = 2,244 psi in the wind.
     *
     * @param source where they are listed, told wherever they are used
     * @param bending Fb, from 10 to 100,000 psi
     * @param shear Fv, over 0, to Fb
     * @param elasticity E, 100 times Fb or more, to 10,000,000 psi
     * @return the values
     * @throws IllegalArgumentException if any of them is out of its range
     */
    public static ReferenceValues given(Citation source, Pressure bending, Pressure shear, Pressure elasticity) {
        Objects.requireNonNull(source, "source");
        require("bending", bending, LEAST_BENDING, MOST_BENDING);
        require("shear", shear, Pressure.ofPascals(Double.MIN_NORMAL), bending);
        require("elasticity", elasticity, bending.times(100), MOST_ELASTICITY);
        return new ReferenceValues(bending, shear, elasticity, true, source);
    }

    private static void require(String name, Pressure value, Pressure least, Pressure most) {
        Objects.requireNonNull(value, name);
        if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
            throw new IllegalArgumentException(name + " was " + Written.stress(value) + "; it must be from "
                    + Written.stress(least) + " to " + Written.stress(most)
                    + ": give bending, shear and elasticity in this order, and check their units");
        }
    }

    /**
     * Looks up a wood, grade and size.
     *
     * @param species the wood
     * @param grade the grade
     * @param section the dressed size
     * @return the values; empty where none are held, such as for boards under 2 in nominal
     */
    public static Optional<ReferenceValues> find(SpeciesGroup species, WoodGrade grade, WoodSection section) {
        Objects.requireNonNull(species, "species");
        Objects.requireNonNull(grade, "grade");
        double[][] rows =
                section.isPost() ? posts(species) : section.isDimension() ? dimension(species, section) : NO_TABLE;
        if (rows.length == 0 || rows[row(grade)].length == 0) {
            return Optional.empty();
        }
        String table = section.isPost() ? "4D" : species == SpeciesGroup.SOUTHERN_PINE ? "4B" : "4A";
        double[] row = rows[row(grade)];
        return Optional.of(new ReferenceValues(
                Pressure.ofPsi(row[0]),
                Pressure.ofPsi(row[1]),
                Pressure.ofPsi(row[2] * 1_000_000),
                section.isPost() || species == SpeciesGroup.SOUTHERN_PINE,
                Citation.of("NDS Supplement", "table " + table + ", " + species + " " + grade, "2018")));
    }

    private static int row(WoodGrade grade) {
        return grade == WoodGrade.NO_1 ? NO_1 : NO_2;
    }

    private static double[][] posts(SpeciesGroup species) {
        return switch (species) {
            case SOUTHERN_PINE -> SOUTHERN_PINE_POST;
            case DOUGLAS_FIR_LARCH -> DOUGLAS_FIR_POST;
            case HEM_FIR -> HEM_FIR_POST;
            case SPRUCE_PINE_FIR -> SPRUCE_POST;
            case WESTERN_CEDARS -> CEDAR_POST;
            case REDWOOD -> REDWOOD_POST;
        };
    }

    private static double[][] dimension(SpeciesGroup species, WoodSection section) {
        return switch (species) {
            case SOUTHERN_PINE -> southernPine(section.nominalWidth());
            case DOUGLAS_FIR_LARCH -> DOUGLAS_FIR;
            case HEM_FIR -> HEM_FIR;
            case SPRUCE_PINE_FIR -> SPRUCE;
            case WESTERN_CEDARS -> CEDAR;
            case REDWOOD -> REDWOOD;
        };
    }

    private static double[][] southernPine(int width) {
        return switch (width) {
            case 4 -> SOUTHERN_PINE_4;
            case 5, 6 -> SOUTHERN_PINE_6;
            case 8 -> SOUTHERN_PINE_8;
            default -> NO_TABLE;
        };
    }

    /**
     * Returns the bending strength.
     *
     * @return Fb
     */
    public Pressure bending() {
        return bending;
    }

    /**
     * Returns the shear strength along the grain.
     *
     * @return Fv
     */
    public Pressure shear() {
        return shear;
    }

    /**
     * Returns the modulus of elasticity.
     *
     * @return E
     */
    public Pressure elasticity() {
        return elasticity;
    }

    /**
     * Returns where the values are listed.
     *
     * @return the table, wood and grade
     */
    public Citation source() {
        return source;
    }

    /** Tells whether the size is in the values, so that no size factor is to be put to them. */
    boolean isWithSize() {
        return withSize;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ReferenceValues that
                && bending.equals(that.bending)
                && shear.equals(that.shear)
                && elasticity.equals(that.elasticity)
                && withSize == that.withSize
                && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(bending, shear, elasticity, withSize, source);
    }

    @Override
    public String toString() {
        return source.toString();
    }
}
