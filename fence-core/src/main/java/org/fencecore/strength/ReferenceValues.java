package org.fencecore.strength;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Citation;
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

    /** Fb, Ft, Fv, Fc across, Fc in psi, E in millions and Emin in thousands of psi. */
    private static final double[][] NO_TABLE = {};

    private static final int NO_1 = 0;
    private static final int NO_2 = 1;

    private static final double[] NONE = {};

    private static final double[][] SOUTHERN_PINE_4 = {
        {1500, 1000, 175, 565, 1650, 1.6, 580}, {1100, 675, 175, 565, 1450, 1.4, 510}
    };
    private static final double[][] SOUTHERN_PINE_6 = {
        {1350, 875, 175, 565, 1550, 1.6, 580}, {1000, 600, 175, 565, 1400, 1.4, 510}
    };
    private static final double[][] SOUTHERN_PINE_8 = {NONE, {925, 550, 175, 565, 1350, 1.4, 510}};
    private static final double[][] SOUTHERN_PINE_POST = {
        {1350, 900, 165, 375, 825, 1.5, 550}, {850, 550, 165, 375, 525, 1.2, 440}
    };
    private static final double[][] DOUGLAS_FIR = {
        {1000, 675, 180, 625, 1500, 1.7, 620}, {900, 575, 180, 625, 1350, 1.6, 580}
    };
    private static final double[][] DOUGLAS_FIR_POST = {
        {1200, 825, 170, 625, 1000, 1.6, 580}, {750, 475, 170, 625, 700, 1.3, 470}
    };
    private static final double[][] HEM_FIR = {NONE, {850, 525, 150, 405, 1300, 1.3, 470}};
    private static final double[][] HEM_FIR_POST = {NONE, {575, 375, 140, 405, 575, 1.1, 400}};
    private static final double[][] SPRUCE = {{875, 450, 135, 425, 1150, 1.4, 510}, {875, 450, 135, 425, 1150, 1.4, 510}
    };
    private static final double[][] SPRUCE_POST = {NONE, {500, 325, 125, 425, 500, 1.0, 370}};
    private static final double[][] CEDAR = {{725, 425, 155, 425, 825, 1.0, 370}, {700, 425, 155, 425, 650, 1.0, 370}};
    private static final double[][] CEDAR_POST = {
        {875, 600, 140, 425, 800, 1.0, 370}, {550, 350, 140, 425, 550, 0.8, 290}
    };
    private static final double[][] REDWOOD = {NONE, {725, 425, 160, 425, 700, 1.0, 370}};
    private static final double[][] REDWOOD_POST = {NONE, {750, 400, 145, 420, 650, 0.9, 330}};

    private final double[] row;
    private final Citation source;

    private ReferenceValues(double[] row, Citation source) {
        this.row = row;
        this.source = source;
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
        return Optional.of(new ReferenceValues(
                rows[row(grade)],
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
        return Pressure.ofPsi(row[0]);
    }

    /**
     * Returns the tension strength along the grain.
     *
     * @return Ft
     */
    public Pressure tension() {
        return Pressure.ofPsi(row[1]);
    }

    /**
     * Returns the shear strength along the grain.
     *
     * @return Fv
     */
    public Pressure shear() {
        return Pressure.ofPsi(row[2]);
    }

    /**
     * Returns the bearing strength across the grain.
     *
     * @return Fc across the grain
     */
    public Pressure bearingAcross() {
        return Pressure.ofPsi(row[3]);
    }

    /**
     * Returns the compression strength along the grain.
     *
     * @return Fc
     */
    public Pressure compression() {
        return Pressure.ofPsi(row[4]);
    }

    /**
     * Returns the modulus of elasticity.
     *
     * @return E
     */
    public Pressure elasticity() {
        return Pressure.ofPsi(row[5] * 1_000_000);
    }

    /**
     * Returns the modulus of elasticity for stability.
     *
     * @return Emin
     */
    public Pressure leastElasticity() {
        return Pressure.ofPsi(row[6] * 1000);
    }

    /**
     * Returns where the values are listed.
     *
     * @return the table, wood and grade
     */
    public Citation source() {
        return source;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ReferenceValues that && row == that.row && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        return source.hashCode();
    }

    @Override
    public String toString() {
        return source.toString();
    }
}
