package org.fencecore.cutting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;

/**
 * How sticks are cut: the width of the saw cut, what is trimmed off first, whether the last cut must lie within the
 * stick, and how many sticks turn out no good.
 *
 * <p>What is not said is a kerf of 1/8 in, that of a usual circular saw blade (common practice, no source), no trim, a last
 * cut that may run off the end, no culls, and the usual effort.
 *
 * <p>The rule, in nanometres and exact: pieces of lengths l(1) to l(n) come out of a stick of length S if
 *
 * <pre>
 * l(1) + ... + l(n) + (n - 1) kerf &lt;= S - end trim     LastCut.MAY_RUN_OFF_THE_END
 * l(1) + ... + l(n) +    n    kerf &lt;= S - end trim     LastCut.WITHIN_THE_STICK
 * </pre>
 *
 * <p>A piece with a saw cut of its own has that in place of the kerf, and the last cut saves one kerf as before; a piece
 * that is alone on its stick must only be no longer than S - end trim.
 *
 * <pre>{@code
 * CuttingSpec spec = CuttingSpec.builder().endTrim(Length.ofInches(1)).culls(Ratio.ofPercent(5)).build();
 * }</pre>
 */
public final class CuttingSpec {

    private static final double MOST_CULLS = 0.5;
    private static final int MOST_EFFORT = 1000;

    private final Length kerf;
    private final Length endTrim;
    private final LastCut lastCut;
    private final Ratio culls;
    private final int effort;

    private CuttingSpec(Builder from) {
        kerf = from.kerf;
        endTrim = from.endTrim;
        lastCut = from.lastCut;
        culls = from.culls;
        effort = from.effort;
    }

    /**
     * Starts from the usual.
     *
     * @return a builder with the values named above
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns how wide a square saw cut is.
     *
     * @return the kerf
     */
    public Length kerf() {
        return kerf;
    }

    /**
     * Returns what is lost of each stick before the first piece is cut.
     *
     * @return the trim, with its saw cut
     */
    public Length endTrim() {
        return endTrim;
    }

    /**
     * Returns whether the last cut must lie within the stick.
     *
     * @return the rule
     */
    public LastCut lastCut() {
        return lastCut;
    }

    /**
     * Returns the share of the sticks bought that are no good.
     *
     * @return the share
     */
    public Ratio culls() {
        return culls;
    }

    /**
     * Returns how many more sticks to buy than are needed, so that enough are good.
     *
     * <p>Example: with 5 % of culls 20 sticks take 2 more, for 95 % of 21 are 19.95.
     *
     * @param needed how many good ones it takes, 0 or more
     * @return needed / (1 - culls), rounded up, less the needed
     */
    public int spares(int needed) {
        return BigDecimal.valueOf(needed)
                        .divide(goodShare(), 0, RoundingMode.CEILING)
                        .intValueExact()
                - needed;
    }

    /** How many of a number of sticks are good, rounded down. */
    int good(int sticks) {
        return goodShare()
                .multiply(BigDecimal.valueOf(sticks))
                .setScale(0, RoundingMode.FLOOR)
                .intValueExact();
    }

    /** To a billionth, since a share such as 7 % is not quite that as a {@code double}. */
    private BigDecimal goodShare() {
        return BigDecimal.ONE.subtract(BigDecimal.valueOf(culls.value()).setScale(9, RoundingMode.HALF_EVEN));
    }

    /**
     * Returns how many times the usual work the search may do.
     *
     * @return the factor, 1 for the usual
     */
    public int effort() {
        return effort;
    }

    /** Collects how sticks are cut, starting from the usual. */
    public static final class Builder {

        private Length kerf = Length.ofInches(0.125);
        private Length endTrim = Length.ZERO;
        private LastCut lastCut = LastCut.MAY_RUN_OFF_THE_END;
        private Ratio culls = Ratio.ZERO;
        private int effort = 1;

        private Builder() {}

        /**
         * Sets how wide a square saw cut is; 1/8 in if not set.
         *
         * @param newKerf the kerf, 0 or more, and less than the shortest stick
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder kerf(Length newKerf) {
            kerf = notNegative("kerf", newKerf);
            return this;
        }

        /**
         * Sets what is lost of each stick, at both ends together, before the first piece is cut; nothing if not set.
         *
         * @param newEndTrim the trim with its saw cuts, 0 or more, and less than the shortest stick
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder endTrim(Length newEndTrim) {
            endTrim = notNegative("endTrim", newEndTrim);
            return this;
        }

        private static Length notNegative(String name, Length length) {
            if (length.isNegative()) {
                throw new IllegalArgumentException(
                        name + " was " + length + "; it must be 0 or more, and less than the shortest stick");
            }
            return length;
        }

        /**
         * Sets whether the last cut must lie within the stick; it may run off the end if not set.
         *
         * @param newLastCut the rule
         * @return this builder
         */
        public Builder lastCut(LastCut newLastCut) {
            lastCut = Objects.requireNonNull(newLastCut, "newLastCut");
            return this;
        }

        /**
         * Sets the share of the sticks bought that turn out warped, split or otherwise no good; none if not set.
         *
         * @param newCulls the share, from 0 to 0.5
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder culls(Ratio newCulls) {
            if (newCulls.value() < 0 || newCulls.value() > MOST_CULLS) {
                throw new IllegalArgumentException("culls was " + newCulls
                        + "; it must be from 0 to 0.5 of the sticks bought: find a better yard above that");
            }
            culls = newCulls;
            return this;
        }

        /**
         * Sets how much work the search may do before it gives the best it has, with the gap that is left.
         *
         * @param newEffort how many times the usual, from 1 to 1000
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder effort(int newEffort) {
            if (newEffort < 1 || newEffort > MOST_EFFORT) {
                throw new IllegalArgumentException(
                        "effort was " + newEffort + "; it must be from 1, the usual, to 1000 times that");
            }
            effort = newEffort;
            return this;
        }

        /**
         * Returns the spec.
         *
         * @return the spec
         */
        public CuttingSpec build() {
            return new CuttingSpec(this);
        }
    }
}
