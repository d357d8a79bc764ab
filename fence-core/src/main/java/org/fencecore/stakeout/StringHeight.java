package org.fencecore.stakeout;

import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * How high the strings are tied: level, or at one height over the ground at both ends.
 *
 * <p>Example: {@code StringHeight.level(Length.ofInches(12))} is a level string 12 in over the higher end of its run.
 */
public final class StringHeight {

    private static final Length MOST = Length.ofFeet(100);

    private final boolean level;
    private final Length above;

    private StringHeight(boolean level, Length above) {
        if (above.isNegative() || above.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("above was " + above
                    + "; it must be from 0 to 100 ft: give the height of the string over the ground at its end");
        }
        this.level = level;
        this.above = above;
    }

    /**
     * Returns level strings, each tied so far above the ground at the higher end of its run.
     *
     * @param above the height over the ground there, from 0 to 100 ft
     * @return the heights
     * @throws IllegalArgumentException if {@code above} is out of its range
     */
    public static StringHeight level(Length above) {
        return new StringHeight(true, above);
    }

    /**
     * Returns strings that slope with the ground, tied as far above it at one end of a run as at the other.
     *
     * @param above the height over the ground at both ends, from 0 to 100 ft
     * @return the heights
     * @throws IllegalArgumentException if {@code above} is out of its range
     */
    public static StringHeight alongGround(Length above) {
        return new StringHeight(false, above);
    }

    /**
     * Tells whether strings are level.
     *
     * @return false if they slope with the ground
     */
    public boolean isLevel() {
        return level;
    }

    /**
     * Returns how far above the ground a string is tied at the higher end, or at both ends.
     *
     * @return the height, zero or more
     */
    public Length above() {
        return above;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof StringHeight that && level == that.level && above.equals(that.above);
    }

    @Override
    public int hashCode() {
        return 31 * above.hashCode() + Boolean.hashCode(level);
    }

    @Override
    public String toString() {
        return above + (level ? " over the higher end, level" : " over the ground at both ends");
    }
}
