package org.fencecore.gate.hang;

import java.util.Objects;
import org.fencecore.internal.Limits;
import org.fencecore.units.Length;

/** The range of sizes that mean something on a gate. */
final class Sizes {

    private static final Length LARGEST = Length.ofFeet(100);

    private Sizes() {}

    static Length require(String name, Length value) {
        return Limits.overZero(name, value, LARGEST);
    }

    static Length requireOrZero(String name, Length value) {
        return Objects.requireNonNull(value, name).isZero() ? value : require(name, value);
    }

    static Length requireWithin(String name, Length value) {
        if (value.abs().compareTo(LARGEST) > 0) {
            throw new IllegalArgumentException(
                    name + " was " + value + "; it must be within 100 ft of zero, so check its unit");
        }
        return value;
    }
}
