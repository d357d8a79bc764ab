package org.fencecore.internal;

import java.util.Objects;
import org.fencecore.units.Length;

/** Refuses lengths outside a range, most often for a wrong unit or sign. */
public final class Limits {

    private Limits() {}

    /**
     * Returns a length that is over zero and not over the most.
     *
     * @param name what the caller calls it
     * @param value the length
     * @param most the longest that is taken
     * @return the length
     * @throws IllegalArgumentException if out of range
     */
    public static Length overZero(String name, Length value, Length most) {
        Objects.requireNonNull(value, name);
        if (!value.isPositive() || value.compareTo(most) > 0) {
            throw outside(name, value, "over 0 and no more than " + most);
        }
        return value;
    }

    /**
     * Returns a length from the least to the most.
     *
     * @param name what the caller calls it
     * @param value the length
     * @param least the shortest that is taken
     * @param most the longest that is taken
     * @return the length
     * @throws IllegalArgumentException if out of range
     */
    public static Length within(String name, Length value, Length least, Length most) {
        Objects.requireNonNull(value, name);
        if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
            throw outside(name, value, "from " + least + " to " + most);
        }
        return value;
    }

    private static IllegalArgumentException outside(String name, Length value, String range) {
        return new IllegalArgumentException(
                name + " was " + value + "; it must be " + range + ", so check its unit and sign");
    }
}
