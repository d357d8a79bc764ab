package org.fencecore.wind;

import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Speed;
import org.fencecore.worksheet.Written;

/** Refuses what lies outside the range wind is reckoned for, most often a wrong unit or sign. */
final class WindLimits {

    static final Length HIGHEST = Length.ofFeet(100);

    private static final double FASTEST = 250;

    private WindLimits() {}

    static Ratio within(String name, Ratio value, double least, double most, String advice) {
        Objects.requireNonNull(value, name);
        if (!(value.value() >= least && value.value() <= most)) {
            throw new IllegalArgumentException(name + " was " + value + "; it must be from " + Ratio.of(least) + " to "
                    + Ratio.of(most) + ", " + advice);
        }
        return value;
    }

    static Ratio overZero(String name, Ratio value, String advice) {
        Objects.requireNonNull(value, name);
        if (value.value() <= 0) {
            throw new IllegalArgumentException(name + " was " + value + "; it must be over 0, " + advice);
        }
        return value;
    }

    static Ratio atLeast(String name, Ratio value, double least, String advice) {
        Objects.requireNonNull(value, name);
        if (value.value() < least) {
            throw new IllegalArgumentException(
                    name + " was " + value + "; it must be " + Ratio.of(least) + " or more, " + advice);
        }
        return value;
    }

    static Speed windSpeed(String name, Speed value) {
        Objects.requireNonNull(value, name);
        // A hair above 250, so that 250 mph given in metres is taken.
        if (!value.isPositive() || value.milesPerHour() > FASTEST * (1 + 1e-9)) {
            throw new IllegalArgumentException(name + " was " + Written.speed(value)
                    + "; it must be over 0 and no more than 250 mph, so check its unit, or ask the local building"
                    + " department for the design wind speed");
        }
        return value;
    }
}
