package org.fencecore.layout;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * How posts are to be spaced: the longest and the shortest bay, which bays are wanted, and the stock that rails are cut
 * from.
 *
 * <p>Where nothing is said, bays are equal, not over 8 ft from centre to centre and not under half the full bay (common
 * practice, no source).
 *
 * <p>With rail stock, rails are joined on posts only. A full bay is then the longest equal part of the stock that is not
 * over the maximum, so that each stick spans one whole bay, or two, or three, and full bays leave nothing over:
 *
 * <pre>
 * bays to a stick = stock / maximum, rounded up
 * full bay        = stock / bays to a stick
 * </pre>
 *
 * <p>Sources: joints of rails on posts, common practice, no source; the rest is arithmetic.
 *
 * <p>Example: rails from 16 ft stock with bays of 7 ft at most give full bays of 16 / 3 = 5 ft 4 in.
 *
 * <pre>{@code
 * PostSpacingSpec spec = PostSpacingSpec.builder()
 *         .maximum(Length.ofFeet(7))
 *         .railStock(Length.ofFeet(16))
 *         .rule(BayRule.REMAINDER_AT_END)
 *         .build();
 * spec.fullBay();     // 5 ft 4 in
 * spec.minimum();     // 2 ft 8 in, as it was not said
 * }</pre>
 */
public final class PostSpacingSpec {

    private final Length maximum;
    private final Length minimum;
    private final BayRule rule;
    private final @Nullable Length railStock;
    private final Length fullBay;

    private PostSpacingSpec(Builder builder) {
        maximum = builder.maximum;
        rule = builder.rule;
        railStock = builder.railStock;
        // Rounded down, so that as many bays never need more than the stick has.
        fullBay = railStock == null
                ? maximum
                : Length.ofNanometres(
                        railStock.nanometres() / -Math.floorDiv(-railStock.nanometres(), maximum.nanometres()));
        minimum = Objects.requireNonNullElse(builder.minimum, fullBay.dividedBy(2));
        if (minimum.compareTo(fullBay) > 0) {
            throw new IllegalArgumentException("minimumSpacing was " + minimum + "; it must be from 0 to the "
                    + (fullBay.equals(maximum)
                            ? "maximumSpacing of " + maximum + ": are they swapped?"
                            : "full bay of " + fullBay + ", which is what suits rail stock of " + railStock
                                    + " under the maximumSpacing of " + maximum + ": lower it, or take other stock"));
        }
    }

    /**
     * Starts a spec with the usual values.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns the longest bay that is allowed.
     *
     * @return the distance from post to post
     */
    public Length maximum() {
        return maximum;
    }

    /**
     * Returns the shortest bay that is wanted.
     *
     * @return the distance from post to post, from zero to the full bay
     */
    public Length minimum() {
        return minimum;
    }

    /**
     * Returns which bays are wanted.
     *
     * @return the rule
     */
    public BayRule rule() {
        return rule;
    }

    /**
     * Returns the length of the sticks that rails are cut from.
     *
     * @return the stock, if rails have to suit one
     */
    public Optional<Length> railStock() {
        return Optional.ofNullable(railStock);
    }

    /**
     * Returns the longest bay that is laid out: the longest equal part of the rail stock that is not over the maximum, or
     * the maximum itself if no stock is given.
     *
     * @return the full bay, rounded down to the nanometre
     */
    public Length fullBay() {
        return fullBay;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PostSpacingSpec that
                && maximum.equals(that.maximum)
                && minimum.equals(that.minimum)
                && rule == that.rule
                && Objects.equals(railStock, that.railStock);
    }

    @Override
    public int hashCode() {
        return Objects.hash(maximum, minimum, rule, railStock);
    }

    @Override
    public String toString() {
        return rule + ", bays from " + minimum + " to " + maximum
                + (railStock == null ? "" : ", rails from " + railStock);
    }

    /** Takes the choices of a spec. */
    public static final class Builder {

        private Length maximum = Length.ofFeet(8);
        private @Nullable Length minimum;
        private BayRule rule = BayRule.EQUAL;
        private @Nullable Length railStock;

        private Builder() {}

        /**
         * Sets the longest bay that rails allow, 8 ft if not set.
         *
         * @param spacing the distance from post to post, over zero
         * @return this builder
         * @throws IllegalArgumentException if it is not over zero
         */
        public Builder maximum(Length spacing) {
            if (!spacing.isPositive()) {
                throw new IllegalArgumentException("maximumSpacing was " + spacing
                        + "; it must be over 0: give the longest bay that the rails allow");
            }
            maximum = spacing;
            return this;
        }

        /**
         * Sets the shortest bay wanted, half the full bay if not set. It gives way where nothing else is possible, and a
         * finding tells so.
         *
         * @param spacing the distance from post to post, from zero, which allows any, to the full bay
         * @return this builder
         * @throws IllegalArgumentException if it is negative
         */
        public Builder minimum(Length spacing) {
            if (spacing.isNegative()) {
                throw new IllegalArgumentException("minimumSpacing was " + spacing
                        + "; it must be from 0 to the maximumSpacing: give 0 if any bay will do");
            }
            minimum = spacing;
            return this;
        }

        /**
         * Sets which bays are wanted, equal ones if not set.
         *
         * @param wanted the rule
         * @return this builder
         */
        public Builder rule(BayRule wanted) {
            rule = Objects.requireNonNull(wanted, "wanted");
            return this;
        }

        /**
         * Sets the length of the sticks that rails are cut from, which are joined on posts only.
         *
         * @param stock the length of a stick, over zero
         * @return this builder
         * @throws IllegalArgumentException if it is not over zero
         */
        public Builder railStock(Length stock) {
            if (!stock.isPositive()) {
                throw new IllegalArgumentException(
                        "railStock was " + stock + "; it must be over 0: leave it out if rails may be of any length");
            }
            railStock = stock;
            return this;
        }

        /**
         * Returns the spec.
         *
         * @return the spec
         * @throws IllegalArgumentException if the minimum is over the full bay
         */
        public PostSpacingSpec build() {
            return new PostSpacingSpec(this);
        }
    }
}
