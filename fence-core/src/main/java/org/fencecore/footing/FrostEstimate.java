package org.fencecore.footing;

import java.util.Objects;
import org.fencecore.units.Conductivity;
import org.fencecore.units.DegreeDays;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * An estimate of how deep the ground freezes, from how cold the winter is and what the soil is like. The frost depth of the
 * local building department is what counts; this only tells whether a depth is likely.
 *
 * <p>Stefan: {@code X = sqrt(48 k nFI / L)} in feet, with the conductivity k in BTU/(h ft degF), the freezing index at the
 * surface nFI in degF days, and the heat of freezing {@code L = 144 w gd} in BTU per cubic foot. It leaves out the warmth of
 * the ground, and so is too deep. The modified Berggren formula takes a part of it: {@code 1 / sqrt(1 + m (a + 0.5))}, with
 * {@code m = FI C / (t L)} of the surface index, {@code C = gd (0.17 + 0.75 w)} and a the year's warmth over freezing
 * against the winter's cold. That approximation is good where a is small and still too deep in mild climates.
 *
 * <p>Example: silt of 100 pcf with 15 % of water, 2,500 degF days in 160 days at the surface, where the year is 5.2 degF
 * over freezing on average.
 *
 * <pre>{@code
 * FrostEstimate frost = FrostEstimate.builder()
 *         .freezingIndex(DegreeDays.ofFahrenheit(2500))
 *         .freezingDays(160)
 *         .warmth(DegreeDays.ofFahrenheit(5.2 * 160))
 *         .soil(UnitWeight.ofPcf(100), Ratio.ofPercent(15), Conductivity.ofBtuPerHourFoot(0.78))
 *         .build();
 * frost.stefan();      // 6.583 ft
 * frost.berggren();    // 6.085 ft
 * }</pre>
 *
 * <p>Sources: UFC 3-130-06; Aldrich and Paynter, Analytical Studies of Freezing and Thawing of Soils, 1953, equation 2-33.
 */
public final class FrostEstimate {

    private static final Citation BERGGREN = Citation.of(
            "Aldrich and Paynter, Analytical Studies of Freezing and Thawing of Soils", "equation 2-33", "1953");

    private static final Citation STEFAN = Citation.of("UFC 3-130-06", "modified Berggren equation", "");

    private final DegreeDays freezingIndex;
    private final Ratio cover;
    private final int freezingDays;
    private final DegreeDays warmth;
    private final UnitWeight dryWeight;
    private final Ratio water;
    private final Conductivity conductivity;

    private FrostEstimate(Builder from, DegreeDays freezingIndex) {
        this.freezingIndex = freezingIndex;
        this.cover = from.cover;
        this.freezingDays = from.freezingDays;
        this.warmth = from.warmth;
        this.dryWeight = from.dryWeight;
        this.water = from.water;
        this.conductivity = from.conductivity;
    }

    /**
     * Starts from silt of 100 pcf with 15 % of water, 0.80 BTU/(h ft degF), frozen for 120 days.
     *
     * @return a builder; the freezing index has to be set
     */
    public static Builder builder() {
        return new Builder();
    }

    /** nFI in degF days. */
    private double atSurface() {
        return freezingIndex.fahrenheit() * cover.value();
    }

    /** L in BTU per cubic foot. */
    double heatOfFreezing() {
        return 144 * dryWeight.pcf() * water.value();
    }

    /** C in BTU per cubic foot and degF. */
    double heatCapacity() {
        return dryWeight.pcf() * (0.17 + 0.75 * water.value());
    }

    /** The part of Stefan's depth that is left. */
    double lambda() {
        double alpha = warmth.fahrenheit() / atSurface();
        double mu = atSurface() / freezingDays * heatCapacity() / heatOfFreezing();
        return 1 / Math.sqrt(1 + mu * (alpha + 0.5));
    }

    /**
     * Returns the estimate by Stefan's formula.
     *
     * @return the depth, on the deep side
     */
    public Length stefan() {
        return Length.ofFeet(Math.sqrt(48 * conductivity.btuPerHourFoot() * atSurface() / heatOfFreezing()));
    }

    /**
     * Returns the estimate by the modified Berggren formula.
     *
     * @return the depth, no more than {@link #stefan}
     */
    public Length berggren() {
        return stefan().times(Ratio.of(lambda()));
    }

    /**
     * Returns what to know about the estimate, to show with whatever is worked out from it: {@code frost-estimated}.
     *
     * @return the finding
     */
    public Finding finding() {
        return Finding.warning(
                        "frost-estimated",
                        "site",
                        "the frost depth of " + Written.tape(berggren(), Rounding.UP)
                                + " is an estimate from how cold the winter is")
                .withRemedy("ask the local building department for its frost depth")
                .withSource(BERGGREN);
    }

    /**
     * Returns the estimate worked out line by line.
     *
     * @return the worksheet, whose last line is {@link #berggren}
     */
    public Worksheet worksheet() {
        Ratio lambda = Ratio.of(lambda());
        return Worksheet.titled("Estimate of the frost depth")
                .given("freezing index FI of the air", freezingIndex, freezingIndex.toString())
                .given("factor n of the surface", cover, Written.factor(cover))
                .given("days t of frost", freezingDays, freezingDays + " d")
                .given("warmth of as many days of the average year", warmth, warmth.toString())
                .given("dry weight gd of the soil", dryWeight, dryWeight.toString())
                .given("water w in the soil", water, Written.factor(water))
                .given("conductivity k of the soil", conductivity, conductivity.toString())
                .line("depth by Stefan", "sqrt(48 k n FI / (144 w gd))", "", stefan(), Written.feet(stefan()), STEFAN)
                .line("part left", "1 / sqrt(1 + m (a + 0.5))", "", lambda, Written.factor(lambda), BERGGREN)
                .line(
                        "estimated frost depth",
                        "part left x Stefan",
                        Written.factor(lambda) + " x " + Written.feet(stefan()),
                        berggren(),
                        Written.feet(berggren()),
                        BERGGREN)
                .build();
    }

    @Override
    public String toString() {
        return "frost estimated at " + Written.tape(berggren(), Rounding.UP);
    }

    /** Collects what is known of winter and soil. */
    public static final class Builder {

        private static final DegreeDays MOST_DEGREE_DAYS = DegreeDays.ofFahrenheit(20_000);
        private static final UnitWeight LEAST_WEIGHT = UnitWeight.ofPcf(10);
        private static final UnitWeight MOST_WEIGHT = UnitWeight.ofPcf(200);

        private @Nullable DegreeDays freezingIndex;
        private Ratio cover = Ratio.of(1);
        private int freezingDays = 120;
        private DegreeDays warmth = DegreeDays.ZERO;
        private UnitWeight dryWeight = UnitWeight.ofPcf(100);
        private Ratio water = Ratio.ofPercent(15);
        private Conductivity conductivity = Conductivity.ofBtuPerHourFoot(0.80);

        private Builder() {}

        /**
         * Sets the freezing index of the air in a hard winter; it has to be set.
         *
         * @param index the index, over 0, to 20,000 degF days
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder freezingIndex(DegreeDays index) {
            Objects.requireNonNull(index, "index");
            if (!index.isPositive() || index.compareTo(MOST_DEGREE_DAYS) > 0) {
                throw new IllegalArgumentException("index was " + index
                        + "; it must be over 0 and no more than 20,000 degF d, so check its unit; where it does not"
                        + " freeze, give a frost depth of 0");
            }
            this.freezingIndex = index;
            return this;
        }

        /**
         * Sets what lies on the ground; if not set, the index is taken as that of the surface.
         *
         * @param newCover the cover
         * @return this builder
         */
        public Builder cover(GroundCover newCover) {
            this.cover = newCover.factor();
            return this;
        }

        /**
         * Sets how many days of frost there are; 120 if not set.
         *
         * @param days the days, 1 to 365
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder freezingDays(int days) {
            if (days < 1 || days > 365) {
                throw new IllegalArgumentException("days was " + days + "; it must be from 1 to 365");
            }
            this.freezingDays = days;
            return this;
        }

        /**
         * Sets how far the average temperature of the year is from freezing, times the days of frost; none if not set.
         *
         * @param degreeDays the warmth, from 0 to 20,000 degF days
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder warmth(DegreeDays degreeDays) {
            Objects.requireNonNull(degreeDays, "degreeDays");
            if (degreeDays.isNegative() || degreeDays.compareTo(MOST_DEGREE_DAYS) > 0) {
                throw new IllegalArgumentException(
                        "degreeDays was " + degreeDays + "; it must be from 0 to 20,000 degF d, so check its unit");
            }
            this.warmth = degreeDays;
            return this;
        }

        /**
         * Sets the soil; silt of 100 pcf with 15 % of water and 0.80 BTU/(h ft degF) if not set.
         *
         * @param newDryWeight the weight of the dry soil, 10 to 200 pcf
         * @param newWater the weight of the water in it over that, 0.1 % to 500 %
         * @param newConductivity the average of frozen and unfrozen, 0.1 to 5 W/(m K)
         * @return this builder
         * @throws IllegalArgumentException if any of them is out of its range
         */
        public Builder soil(UnitWeight newDryWeight, Ratio newWater, Conductivity newConductivity) {
            if (newDryWeight.compareTo(LEAST_WEIGHT) < 0 || newDryWeight.compareTo(MOST_WEIGHT) > 0) {
                throw new IllegalArgumentException(
                        "newDryWeight was " + newDryWeight + "; it must be from 10 to 200 pcf, so check its unit");
            }
            if (!(newWater.value() >= 0.001 && newWater.value() <= 5)) {
                throw new IllegalArgumentException("newWater was " + newWater
                        + "; it must be from 0.1 % to 500 % of the dry soil's weight, since dry soil does not freeze");
            }
            if (!(newConductivity.wattsPerMetre() >= 0.1 && newConductivity.wattsPerMetre() <= 5)) {
                throw new IllegalArgumentException("newConductivity was " + newConductivity
                        + "; it must be from 0.1 to 5 W/(m K), so check its unit");
            }
            this.dryWeight = newDryWeight;
            this.water = newWater;
            this.conductivity = newConductivity;
            return this;
        }

        /**
         * Returns the estimate.
         *
         * @return the estimate
         * @throws IllegalArgumentException if the freezing index was not set
         */
        public FrostEstimate build() {
            if (freezingIndex == null) {
                throw new IllegalArgumentException("freezingIndex was not set; take it from a climate record");
            }
            return new FrostEstimate(this, freezingIndex);
        }
    }
}
