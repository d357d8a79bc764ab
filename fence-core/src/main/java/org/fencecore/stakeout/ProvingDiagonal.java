package org.fencecore.stakeout;

import org.fencecore.geometry.Segment;
import org.fencecore.units.Length;

/**
 * A distance between two corners of the strings that proves the corner between them. The two of a rectangle read the same.
 *
 * @param from the corner or end it is measured from
 * @param to the corner or end it is measured to
 * @param line between the two in plan, from where strings cross to where strings cross
 */
public record ProvingDiagonal(String from, String to, Segment line) {

    /**
     * Returns what the tape must read.
     *
     * @return the level distance
     */
    public Length length() {
        return line.length();
    }

    @Override
    public String toString() {
        return from + " to " + to;
    }
}
