package org.fencecore.estimate;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.takeoff.MaterialGroup;
import org.fencecore.takeoff.TakeoffSpec;
import org.fencecore.units.Ratio;
import org.fencecore.units.UnitWeight;
import org.jspecify.annotations.Nullable;

/**
 * How a fence is priced and weighed: the price book, the crew, what is bought over for waste, the tax, and how wet the
 * lumber is.
 *
 * <p>What is not said is no crew, so that labour is left out; no waste, no tax; and lumber as wet as that of the gates in
 * the style, with what treatment adds left out.
 *
 * <pre>{@code
 * EstimateSpec spec = EstimateSpec.builder(book)
 *         .crew(crew)
 *         .waste(MaterialGroup.FASTENERS, new BigDecimal(10))
 *         .salesTax(new BigDecimal("8.25"))
 *         .build();
 * }</pre>
 */
public final class EstimateSpec {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int MOST_DECIMALS = 6;
    private static final Ratio WETTEST = Ratio.ofPercent(30);

    private final PriceBook prices;
    private final TakeoffSpec takeoff;
    private final Map<MaterialGroup, BigDecimal> waste;
    private final Map<String, UnitWeight> lumberWeights;
    private final BigDecimal salesTax;
    private final boolean isLabourTaxed;
    private final @Nullable CrewRates crew;
    private final @Nullable Ratio moisture;

    private EstimateSpec(Builder from) {
        prices = from.prices;
        takeoff = from.takeoff;
        waste = new EnumMap<>(from.waste);
        lumberWeights = Map.copyOf(from.lumberWeights);
        salesTax = from.salesTax;
        isLabourTaxed = from.isLabourTaxed;
        crew = from.crew;
        moisture = from.moisture;
    }

    /**
     * Starts a spec.
     *
     * @param prices what things cost and weigh
     * @return a builder with the values named above
     */
    public static Builder builder(PriceBook prices) {
        return new Builder(Objects.requireNonNull(prices, "prices"));
    }

    /**
     * Returns what things cost and weigh.
     *
     * @return the price book
     */
    public PriceBook prices() {
        return prices;
    }

    /**
     * Returns how the takeoff counts, with the prices of sticks.
     *
     * @return the spec
     */
    public TakeoffSpec takeoff() {
        return takeoff.withStickPrices(prices.sticks());
    }

    /**
     * Returns how the crew works.
     *
     * @return the rates; empty if labour is left out
     */
    public Optional<CrewRates> crew() {
        return Optional.ofNullable(crew);
    }

    /**
     * Returns what is bought over of a group.
     *
     * @param group the group
     * @return the percent, 0 if it was not said
     */
    public BigDecimal waste(MaterialGroup group) {
        return waste.getOrDefault(group, BigDecimal.ZERO);
    }

    /**
     * Returns the tax.
     *
     * @return the percent
     */
    public BigDecimal salesTax() {
        return salesTax;
    }

    /**
     * Tells whether labour is taxed as materials are.
     *
     * @return true if it is
     */
    public boolean isLabourTaxed() {
        return isLabourTaxed;
    }

    /**
     * Returns how wet the lumber is.
     *
     * @return the share of the oven-dry weight; empty if it is as wet as that of the gates in the style
     */
    public Optional<Ratio> moisture() {
        return Optional.ofNullable(moisture);
    }

    /**
     * Returns what a lumber weighs, if that was said.
     *
     * @param lumber the name of the lumber
     * @return its unit weight; empty if it follows from species and moisture
     */
    public Optional<UnitWeight> lumberWeight(String lumber) {
        return Optional.ofNullable(lumberWeights.get(lumber));
    }

    /** Collects how a fence is priced and weighed. */
    public static final class Builder {

        private final PriceBook prices;
        private final Map<MaterialGroup, BigDecimal> waste = new EnumMap<>(MaterialGroup.class);
        private final Map<String, UnitWeight> lumberWeights = new HashMap<>();
        private TakeoffSpec takeoff = TakeoffSpec.builder().build();
        private BigDecimal salesTax = BigDecimal.ZERO;
        private boolean isLabourTaxed;
        private @Nullable CrewRates crew;
        private @Nullable Ratio moisture;

        private Builder(PriceBook prices) {
            this.prices = prices;
        }

        /**
         * Sets how the takeoff counts; its prices of sticks are those of the price book.
         *
         * @param spec the kerf, the bag and the like
         * @return this builder
         */
        public Builder takeoff(TakeoffSpec spec) {
            takeoff = Objects.requireNonNull(spec, "spec");
            return this;
        }

        /**
         * Sets how the crew works.
         *
         * @param rates the rates
         * @return this builder
         */
        public Builder crew(CrewRates rates) {
            crew = Objects.requireNonNull(rates, "rates");
            return this;
        }

        /**
         * Sets what is bought over of a group, for what is spoilt; rounded up to whole things line by line.
         *
         * @param group the group
         * @param percent of what is needed, from 0 to 100, with up to 6 decimals
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder waste(MaterialGroup group, BigDecimal percent) {
            waste.put(Objects.requireNonNull(group, "group"), requirePercent("waste of " + group, percent));
            return this;
        }

        /**
         * Sets the tax on materials; rounded once, half up, to the smallest coin.
         *
         * @param percent from 0 to 100, with up to 6 decimals
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder salesTax(BigDecimal percent) {
            salesTax = requirePercent("salesTax", percent);
            return this;
        }

        /**
         * Taxes labour as materials are.
         *
         * @return this builder
         */
        public Builder taxLabour() {
            isLabourTaxed = true;
            return this;
        }

        /**
         * Sets how wet the lumber is.
         *
         * @param share of the oven-dry weight, from 0 to 30 %
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder moisture(Ratio share) {
            if (share.isNegative() || share.compareTo(WETTEST) > 0) {
                throw new IllegalArgumentException("moisture was " + share
                        + "; it must be from 0 to 0.3: for wetter lumber give its weight with lumberWeighs");
            }
            moisture = share;
            return this;
        }

        /**
         * Sets what a lumber weighs, such as lumber wet from treatment, in place of what its species and moisture give.
         *
         * @param lumber the name of the lumber, such as {@code 4x4}
         * @param unitWeight over 0
         * @return this builder
         * @throws IllegalArgumentException if it is not over 0
         */
        public Builder lumberWeighs(String lumber, UnitWeight unitWeight) {
            if (!unitWeight.isPositive()) {
                throw new IllegalArgumentException("unitWeight of " + lumber + " was " + unitWeight
                        + "; it must be over 0: what a cubic foot weighs, or leave it out to go by the wood");
            }
            lumberWeights.put(lumber, unitWeight);
            return this;
        }

        private static BigDecimal requirePercent(String name, BigDecimal percent) {
            if (percent.signum() < 0
                    || percent.compareTo(HUNDRED) > 0
                    || percent.stripTrailingZeros().scale() > MOST_DECIMALS) {
                throw new IllegalArgumentException(name + " was " + percent.toPlainString()
                        + " %; it must be from 0 to 100 % with up to 6 decimals: give 8.25 for 8.25 %");
            }
            return percent;
        }

        /**
         * Returns the spec.
         *
         * @return the spec
         * @throws IllegalArgumentException if wage and prices are in different currencies
         */
        public EstimateSpec build() {
            if (crew != null && crew.currency().isPresent()) {
                Currency wage = crew.currency().get();
                if (!wage.equals(prices.currency())) {
                    throw new IllegalArgumentException("the wage was in " + wage + " and the prices in "
                            + prices.currency() + "; give all in one currency");
                }
            }
            return new EstimateSpec(this);
        }
    }
}
