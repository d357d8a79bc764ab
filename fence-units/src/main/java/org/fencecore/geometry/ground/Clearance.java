package org.fencecore.geometry.ground;

import org.fencecore.units.Length;

/**
 * The narrowest and the widest gap between the ground and a line over it, and where they are.
 *
 * <p>A gap is the height of the line less the height of the ground: negative where the line cuts into the ground. Where
 * the same gap occurs at several breaks, the first station is given.
 *
 * @param min the narrowest gap
 * @param minStation where the gap is narrowest
 * @param max the widest gap
 * @param maxStation where the gap is widest
 */
public record Clearance(Length min, Length minStation, Length max, Length maxStation) {

    /**
     * Checks that the gaps are in order.
     *
     * @param min the narrowest gap
     * @param minStation where the gap is narrowest
     * @param max the widest gap
     * @param maxStation where the gap is widest
     * @throws IllegalArgumentException if {@code min} is over {@code max}
     */
    public Clearance {
        if (min.compareTo(max) > 0) {
            throw new IllegalArgumentException(
                    "min was " + min + ", over max " + max + "; give the narrowest gap first");
        }
    }
}
