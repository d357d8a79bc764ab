package org.fencecore.footing;

import java.util.Objects;
import org.fencecore.units.Length;

/** Refuses lengths outside the range a footing is reckoned for, most often a wrong unit or sign. */
final class Limits {

    private Limits() {}

    /** Returns a length that is over zero and not over the most. */
    static Length overZero(String name, Length value, Length most) {
        Objects.requireNonNull(value, name);
        if (!value.isPositive() || value.compareTo(most) > 0) {
            throw outside(name, value, "over 0 and no more than " + most);
        }
        return value;
    }

    /** Returns a length from the least to the most. */
    static Length within(String name, Length value, Length least, Length most) {
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
