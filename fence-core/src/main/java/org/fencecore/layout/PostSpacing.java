package org.fencecore.layout;

import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Posts at equal distances along a stretch, with a post at each end.
 *
 * <p>The stretch is divided into the fewest bays that are not over the longest that rails allow, so that no short bay is
 * left at the end:
 *
 * <pre>
 * bays    = length / maximum spacing, rounded up
 * spacing = length / bays
 * </pre>
 *
 * <p>Lengths are from centre to centre if the stretch is, and clear of posts if the stretch is. Stations are exact to
 * the nanometre, the same from both ends, and do not add up rounding.
 *
 * <p>Sources: geometry; equal bays are common practice, no source.
 *
 * <p>Example: 50 ft with bays of 8 ft at most takes 7 bays of 50 / 7 = 7.143 ft, with 8 posts.
 *
 * <pre>{@code
 * PostSpacing spacing = PostSpacing.equalBays(Length.ofFeet(50), Length.ofFeet(8), Length.ofFeet(4));
 * spacing.bayCount();           // 7
 * spacing.spacing();            // 7 ft 1 5/7 in, to the nanometre
 * spacing.stations().size();    // 8, from 0 to 50 ft
 * }</pre>
 */
public final class PostSpacing {

    private static final int MOST_BAYS = 10_000_000;

    private final Length length;
    private final Length maximum;
    private final Length minimum;
    private final int bays;

    private PostSpacing(Length length, Length maximum, Length minimum, int bays) {
        this.length = length;
        this.maximum = maximum;
        this.minimum = minimum;
        this.bays = bays;
    }

    /**
     * Divides a stretch into the fewest equal bays that are not over the maximum.
     *
     * @param length the length of the stretch, between its end posts
     * @param maximumSpacing the longest bay that rails allow
     * @param minimumSpacing the shortest bay wanted, zero if any will do
     * @return the spacing, with {@link #findings} if its bays are under the minimum
     * @throws IllegalArgumentException if {@code length} or {@code maximumSpacing} is not over zero, if
     *     {@code minimumSpacing} is not from zero to the maximum, or if it takes over 10,000,000 bays
     */
    public static PostSpacing equalBays(Length length, Length maximumSpacing, Length minimumSpacing) {
        if (!length.isPositive()) {
            throw new IllegalArgumentException(
                    "length was " + length + "; it must be over 0: leave out a stretch without length");
        }
        if (!maximumSpacing.isPositive()) {
            throw new IllegalArgumentException("maximumSpacing was " + maximumSpacing
                    + "; it must be over 0: give the longest bay that the rails allow");
        }
        if (minimumSpacing.isNegative() || minimumSpacing.compareTo(maximumSpacing) > 0) {
            throw new IllegalArgumentException("minimumSpacing was " + minimumSpacing
                    + "; it must be from 0 to the maximumSpacing of " + maximumSpacing + ": are they swapped?");
        }
        long bays = -Math.floorDiv(-length.nanometres(), maximumSpacing.nanometres());
        if (bays > MOST_BAYS) {
            throw new IllegalArgumentException("length was " + length + " with bays of " + maximumSpacing
                    + " at most, which takes over 10,000,000 bays; check the units, or lay out a shorter stretch");
        }
        return new PostSpacing(length, maximumSpacing, minimumSpacing, (int) bays);
    }

    /**
     * Returns how many bays there are, one fewer than posts.
     *
     * @return the count, at least 1
     */
    public int bayCount() {
        return bays;
    }

    /**
     * Returns the length of a bay, from post to post.
     *
     * @return the spacing to the nearest nanometre
     */
    public Length spacing() {
        return length.dividedBy(bays);
    }

    /**
     * Returns where the posts stand, each measured from the start so that nothing adds up.
     *
     * @return an unmodifiable view of the stations from zero to the length of the stretch, one more than bays
     */
    public List<Length> stations() {
        return new IndexedView<>(bays + 1, post -> length.portion(post, bays));
    }

    /**
     * Returns what is wrong with the spacing: a note if the bays are under the minimum.
     *
     * @return all findings, empty if the bays are within both limits
     */
    public List<Finding> findings() {
        // Rounded down, a bay is under a whole number of nanometres exactly when the true one is.
        if (length.nanometres() / bays >= minimum.nanometres()) {
            return List.of();
        }
        String fewer = bays == 1
                ? "the stretch itself is no longer than that"
                : (bays - 1) + " would be " + Written.tape(length.dividedBy(bays - 1L), Rounding.UP)
                        + ", over the maximum of " + Written.tape(maximum);
        return List.of(Finding.note(
                        "bay-short",
                        "posts",
                        bays + (bays == 1 ? " bay of " : " bays are ") + Written.tape(spacing())
                                + ", under the minimum of "
                                + Written.tape(minimum)
                                + "; " + fewer)
                .withRemedy("lengthen the stretch by moving an end post, or accept other limits")
                .withSource(Citation.GEOMETRY));
    }

    /**
     * Returns the calculation line by line, ending with the spacing.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        return Worksheet.titled("Post spacing")
                .given("length", length, Written.tape(length))
                .given("maximum spacing", maximum, Written.tape(maximum))
                .given("minimum spacing", minimum, Written.tape(minimum))
                .line(
                        "bays",
                        "length / maximum spacing, rounded up",
                        Written.feet(length) + " / " + Written.feet(maximum),
                        bays,
                        Integer.toString(bays),
                        Citation.COMMON_PRACTICE)
                .line(
                        "spacing",
                        "length / bays",
                        Written.feet(length) + " / " + bays,
                        spacing(),
                        Written.tape(spacing()),
                        Citation.GEOMETRY)
                .build();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PostSpacing that
                && length.equals(that.length)
                && maximum.equals(that.maximum)
                && minimum.equals(that.minimum);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * length.hashCode() + maximum.hashCode()) + minimum.hashCode();
    }

    /**
     * Describes the spacing.
     *
     * @return such as {@code 6 bays of 8' 0" in 48' 0"}
     */
    @Override
    public String toString() {
        return bays + (bays == 1 ? " bay of " : " bays of ") + Written.tape(spacing()) + " in " + Written.tape(length);
    }
}
