package org.fencecore.takeoff;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.fencecore.cutting.CuttingSpec;
import org.fencecore.cutting.SoldLength;
import org.fencecore.footing.BagSize;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;

/**
 * How a takeoff counts: the width of the saw cut, what is trimmed off a stick and how many are no good, the bag the
 * concrete comes in, and what sticks cost.
 *
 * <p>What is not said is a kerf of 1/8 in, that of a usual circular saw blade, and bags of 60 lb (both common practice,
 * no source), no trim and no culls. Without prices the sticks have the least length in all; where every length that a lumber is sold in has a
 * price, they are the cheapest.
 *
 * <pre>{@code
 * TakeoffSpec spec = TakeoffSpec.builder().bag(BagSize.POUNDS_80).build();
 * }</pre>
 */
public final class TakeoffSpec {

    private static final Length WIDEST_KERF = Length.ofInches(1);
    private static final Length LONGEST_TRIM = Length.ofInches(12);

    private final CuttingSpec cutting;
    private final BagSize bag;
    private final Map<String, List<SoldLength>> stickPrices;

    private TakeoffSpec(Builder from) {
        cutting = from.cutting.build();
        bag = from.bag;
        stickPrices = Collections.unmodifiableMap(new TreeMap<>(from.stickPrices));
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
        return cutting.kerf();
    }

    /**
     * Returns how sticks are cut: the kerf, what is trimmed off each, and the share that is no good.
     *
     * @return the spec
     */
    public CuttingSpec cutting() {
        return cutting;
    }

    /**
     * Returns the bag the concrete mix comes in.
     *
     * @return the bag
     */
    public BagSize bag() {
        return bag;
    }

    /**
     * Returns what sticks cost.
     *
     * @return the priced lengths by the name of the lumber, unmodifiable; empty if none have prices
     */
    public Map<String, List<SoldLength>> stickPrices() {
        return stickPrices;
    }

    /**
     * Returns this spec with other prices of sticks.
     *
     * @param newPrices the lengths of each lumber by its name, such as {@code 2x4}, each with a price
     * @return the spec
     * @throws IllegalArgumentException if a length has no price
     */
    public TakeoffSpec withStickPrices(Map<String, List<SoldLength>> newPrices) {
        return builder()
                .kerf(cutting.kerf())
                .endTrim(cutting.endTrim())
                .culls(cutting.culls())
                .bag(bag)
                .stickPrices(newPrices)
                .build();
    }

    /** Collects how a takeoff counts, starting from the usual. */
    public static final class Builder {

        private final CuttingSpec.Builder cutting = CuttingSpec.builder();
        private BagSize bag = BagSize.POUNDS_60;
        private final Map<String, List<SoldLength>> stickPrices = new TreeMap<>();

        private Builder() {}

        /**
         * Sets how wide a square saw cut is; 1/8 in if not set.
         *
         * @param newKerf the kerf, from 0 to 1 in
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder kerf(Length newKerf) {
            if (newKerf.isNegative() || newKerf.compareTo(WIDEST_KERF) > 0) {
                throw new IllegalArgumentException("kerf was " + newKerf
                        + "; it must be from 0 to 1 in: give the width of the cut that the saw blade leaves");
            }
            cutting.kerf(newKerf);
            return this;
        }

        /**
         * Sets what is lost of each stick before the first piece is cut; nothing if not set.
         *
         * @param trim the trim with its saw cut, from 0 to 12 in
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder endTrim(Length trim) {
            if (trim.isNegative() || trim.compareTo(LONGEST_TRIM) > 0) {
                throw new IllegalArgumentException("trim was " + trim
                        + "; it must be from 0 to 12 in: give what is cut off the end of a stick to begin with");
            }
            cutting.endTrim(trim);
            return this;
        }

        /**
         * Sets the share of the sticks bought that turn out warped, split or otherwise no good; none if not set. So many
         * more are bought, line by line.
         *
         * @param share from 0 to 0.5
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder culls(Ratio share) {
            cutting.culls(share);
            return this;
        }

        /**
         * Sets the bag the concrete mix comes in; 60 lb if not set.
         *
         * @param newBag the bag
         * @return this builder
         */
        public Builder bag(BagSize newBag) {
            bag = Objects.requireNonNull(newBag, "newBag");
            return this;
        }

        /**
         * Sets what sticks cost, so that the cheapest are bought; the least length is bought if not set.
         *
         * <p>They count for a lumber of which every length sold has a price; of the others the least length is bought. All
         * prices of one lumber must be in one currency.
         *
         * @param newPrices the lengths of each lumber by its name, such as {@code 2x4}, each with a price
         * @return this builder
         * @throws IllegalArgumentException if a length has no price
         */
        public Builder stickPrices(Map<String, List<SoldLength>> newPrices) {
            stickPrices.clear();
            newPrices.forEach((lumber, lengths) -> {
                for (SoldLength sold : lengths) {
                    if (sold.price().isEmpty()) {
                        throw new IllegalArgumentException("newPrices had " + lumber + " of " + sold
                                + " without a price; leave out what has none, for it is not free");
                    }
                }
                stickPrices.put(lumber, List.copyOf(lengths));
            });
            return this;
        }

        /**
         * Returns the spec.
         *
         * @return the spec
         */
        public TakeoffSpec build() {
            return new TakeoffSpec(this);
        }
    }
}
