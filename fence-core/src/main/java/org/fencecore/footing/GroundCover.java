package org.fencecore.footing;

import org.fencecore.units.Ratio;

/**
 * What lies on the ground in winter, by how much of the air's cold it lets through.
 *
 * <p>Source: UFC 3-130-04, factors n for freezing.
 */
public enum GroundCover {
    /** Snow that lies on. */
    SNOW(1.0),
    /** Concrete kept clear of snow. */
    CONCRETE(0.75),
    /** Bare soil or asphalt kept clear of snow. */
    BARE(0.7),
    /** Ground in the shade. */
    SHADED(0.9),
    /** Grass. */
    TURF(0.5),
    /** Woods. */
    TREES(0.3);

    private final double factor;

    GroundCover(double factor) {
        this.factor = factor;
    }

    /**
     * Returns the part of the air's freezing index that the ground gets.
     *
     * @return n
     */
    public Ratio factor() {
        return Ratio.of(factor);
    }
}
