package org.fencecore.strength;

import org.fencecore.units.Ratio;

/**
 * How long the heaviest part of a load lasts: wood carries more for a short time.
 *
 * <p>A table of steps, not read in between. Source: NDS 2018, table 2.3.2.
 */
public enum LoadDuration {
    /** For good: the weight of the fence and of a gate. */
    PERMANENT(0.9, "permanent"),
    /** Ten years in all, such as people. */
    TEN_YEARS(1.0, "ten years"),
    /** Two months: snow. */
    SNOW(1.15, "snow"),
    /** Seven days: while it is built. */
    CONSTRUCTION(1.25, "construction"),
    /** Ten minutes: wind. */
    WIND(1.6, "wind"),
    /** A blow. */
    IMPACT(2.0, "impact");

    private final double factor;
    private final String words;

    LoadDuration(double factor, String words) {
        this.factor = factor;
        this.words = words;
    }

    /**
     * Returns the load duration factor.
     *
     * @return CD
     */
    public Ratio factor() {
        return Ratio.of(factor);
    }

    /**
     * Returns the duration in words.
     *
     * @return such as {@code wind}
     */
    @Override
    public String toString() {
        return words;
    }
}
