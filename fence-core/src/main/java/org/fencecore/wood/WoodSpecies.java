package org.fencecore.wood;

import org.fencecore.units.Ratio;

/**
 * A kind of wood that fences are built of, with how far it shrinks across the grain.
 *
 * <p>Two figures each, across the rings (radial) and along them (tangential): the shrinkage from green to ovendry, as a
 * share of the green size, and the change coefficient, the share of its size by which wood changes for each percent of
 * moisture between 6 % and 14 %.
 *
 * <p>Sources: USDA Wood Handbook (FPL-GTR-190, 2010), table 4-3 for shrinkage and table 13-5 for coefficients. The
 * coefficients, and the shrinkage of redwood, loblolly, longleaf, shortleaf and slash pine, are from memory; each
 * coefficient agrees with its shrinkage by {@code C = (S/f) / (1 - S (f - 10)/f)}, with f = 30, or 22 for redcedar and
 * redwood.
 */
public enum WoodSpecies {
    /** Western redcedar. */
    WESTERN_REDCEDAR(2.4, 5.0, 0.00111, 0.00234),
    /** Redwood, old growth. */
    REDWOOD_OLD_GROWTH(2.6, 4.4, 0.00120, 0.00205),
    /** Redwood, young growth. */
    REDWOOD_YOUNG_GROWTH(2.2, 4.9, 0.00101, 0.00229),
    /** Douglas-fir from the coast. */
    DOUGLAS_FIR_COAST(4.8, 7.6, 0.00165, 0.00267),
    /** Douglas-fir from the interior north. */
    DOUGLAS_FIR_INTERIOR_NORTH(3.8, 6.9, 0.00130, 0.00241),
    /** Douglas-fir from the interior west. */
    DOUGLAS_FIR_INTERIOR_WEST(4.8, 7.5, 0.00165, 0.00263),
    /** Loblolly pine, a southern pine. */
    LOBLOLLY_PINE(4.8, 7.4, 0.00165, 0.00259),
    /** Longleaf pine, a southern pine. */
    LONGLEAF_PINE(5.1, 7.5, 0.00176, 0.00263),
    /** Shortleaf pine, a southern pine. */
    SHORTLEAF_PINE(4.6, 7.7, 0.00158, 0.00271),
    /** Slash pine, a southern pine. */
    SLASH_PINE(5.4, 7.6, 0.00187, 0.00267),
    /** White fir, sold with hemlock as hem-fir. */
    WHITE_FIR(3.3, 7.0, 0.00112, 0.00245);

    private final double radialPercent;
    private final double tangentialPercent;
    private final double radialChange;
    private final double tangentialChange;

    WoodSpecies(double radialPercent, double tangentialPercent, double radialChange, double tangentialChange) {
        this.radialPercent = radialPercent;
        this.tangentialPercent = tangentialPercent;
        this.radialChange = radialChange;
        this.tangentialChange = tangentialChange;
    }

    /**
     * Returns how much a width shrinks from green to ovendry.
     *
     * @param grain how the board is sawn
     * @return the share of the green width
     */
    public Ratio shrinkage(Grain grain) {
        return Ratio.ofPercent(grain == Grain.FLAT ? tangentialPercent : radialPercent);
    }

    /**
     * Returns how much a width changes for each percent of moisture between 6 % and 14 %.
     *
     * @param grain how the board is sawn
     * @return the share of the width
     */
    public Ratio changeForEachPercent(Grain grain) {
        return Ratio.of(grain == Grain.FLAT ? tangentialChange : radialChange);
    }
}
