package org.fencecore.strength;

import java.util.Objects;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Written;

/** Refuses what lies outside the range posts and rails are checked for, most often a wrong unit or sign. */
final class Limits {

    static final Length LONGEST = Length.ofFeet(100);

    /** A fence is not named in it; the row taken is that of walls that give without harm. */
    static final Citation DEFLECTION =
            Citation.of("IBC", "table 1604.3, exterior walls with flexible finishes, from memory", "2018");

    private static final Force MOST_FORCE = Force.ofPoundsForce(1_000_000);
    private static final Moment MOST_MOMENT = Moment.ofPoundFeet(1_000_000);

    private Limits() {}

    static Length length(String name, Length value) {
        Objects.requireNonNull(value, name);
        if (!value.isPositive() || value.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(
                    name + " was " + value + "; it must be over 0 and no more than " + LONGEST + ", so check its unit");
        }
        return value;
    }

    static Force force(String name, Force value) {
        Objects.requireNonNull(value, name);
        if (value.isNegative() || value.compareTo(MOST_FORCE) > 0) {
            throw new IllegalArgumentException(name + " was " + Written.force(value)
                    + "; it must be from 0 to 1,000,000 lbf, so check its unit and sign");
        }
        return value;
    }

    static Moment moment(String name, Moment value) {
        Objects.requireNonNull(value, name);
        if (value.isNegative() || value.compareTo(MOST_MOMENT) > 0) {
            throw new IllegalArgumentException(name + " was " + Written.moment(value)
                    + "; it must be from 0 to 1,000,000 lbf-ft, so check its unit and sign");
        }
        return value;
    }
}
