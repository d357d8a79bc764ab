package org.fencecore.units.tape;

import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * What a tape shows for a length: the mark it is brought to, how that is written, and what the rounding left over.
 *
 * <p>Example: 5.51 in on a tape of sixteenths is {@code 5 1/2"}, not exact, with 0.01 in (0.254 mm) left over.
 */
public final class TapeReading {

    private final Length length;
    private final Length remainder;
    private final String text;

    TapeReading(Length length, Length remainder, String text) {
        this.length = length;
        this.remainder = remainder;
        this.text = text;
    }

    /**
     * Returns the length at the mark.
     *
     * @return the rounded length
     */
    public Length length() {
        return length;
    }

    /**
     * Returns the reading as it is written.
     *
     * @return the text, such as {@code 6' 2 3/4"}
     */
    public String text() {
        return text;
    }

    /**
     * Returns the true length less the length at the mark: over zero if the tape shows less than there is.
     *
     * @return what the rounding left over, zero if the reading is exact
     */
    public Length remainder() {
        return remainder;
    }

    /**
     * Tells whether the length falls on a mark, so that nothing was lost.
     *
     * @return true if the reading is exact
     */
    public boolean isExact() {
        return remainder.isZero();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TapeReading reading
                && reading.length.equals(length)
                && reading.remainder.equals(remainder)
                && reading.text.equals(text);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * length.hashCode() + remainder.hashCode()) + text.hashCode();
    }

    /**
     * Returns the reading as it is written.
     *
     * @return {@link #text}
     */
    @Override
    public String toString() {
        return text;
    }
}
