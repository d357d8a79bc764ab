package org.fencecore.wood;

import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * What wood boards are of, how they are sawn, and how wet they are when built, at their driest and at their wettest.
 *
 * <p>Moisture contents are shares of the dry weight. How dry wood gets outdoors depends on the climate: the Wood Handbook
 * lists it by city and month (USDA Wood Handbook, chapter 13, FPL-GTR-190, 2010). Flat grain, which moves the most, and
 * gaps of up to 1/4 in (common practice, no source) are taken when not said.
 *
 * <pre>{@code
 * WoodInUse wood = WoodInUse.of(WoodSpecies.LOBLOLLY_PINE, Ratio.ofPercent(30))
 *         .between(Ratio.ofPercent(12), Ratio.ofPercent(30));
 * wood.grain();         // FLAT
 * }</pre>
 */
public final class WoodInUse {

    private final WoodSpecies species;
    private final Grain grain;
    private final Ratio asBuilt;
    private final Ratio driest;
    private final Ratio wettest;
    private final Length allowedGap;

    private WoodInUse(WoodSpecies species, Grain grain, Ratio asBuilt, Ratio driest, Ratio wettest, Length allowedGap) {
        this.species = species;
        this.grain = grain;
        this.asBuilt = asBuilt;
        this.driest = driest;
        this.wettest = wettest;
        this.allowedGap = allowedGap;
    }

    /**
     * Returns flat-sawn wood that stays as wet as it is built.
     *
     * @param species the wood
     * @param asBuilt its moisture content when built, from 0 to 200 %
     * @return the wood; say with {@link #between} how wet it gets
     * @throws IllegalArgumentException if the moisture content is out of its range
     */
    public static WoodInUse of(WoodSpecies species, Ratio asBuilt) {
        Objects.requireNonNull(species, "species");
        WoodMovement.requireMoisture("moisture asBuilt", asBuilt);
        return new WoodInUse(species, Grain.FLAT, asBuilt, asBuilt, asBuilt, Length.ofInches(0.25));
    }

    /**
     * Returns this wood sawn another way.
     *
     * @param newGrain how the boards are sawn
     * @return the wood
     */
    public WoodInUse sawn(Grain newGrain) {
        return new WoodInUse(
                species, Objects.requireNonNull(newGrain, "newGrain"), asBuilt, driest, wettest, allowedGap);
    }

    /**
     * Returns this wood with the driest and wettest that it gets.
     *
     * @param newDriest the least moisture content, from 0 % to that when built
     * @param newWettest the most moisture content, from that when built to 200 %
     * @return the wood
     * @throws IllegalArgumentException if one is out of its range
     */
    public WoodInUse between(Ratio newDriest, Ratio newWettest) {
        WoodMovement.requireMoisture("moisture newDriest", newDriest);
        WoodMovement.requireMoisture("moisture newWettest", newWettest);
        if (newDriest.compareTo(asBuilt) > 0 || asBuilt.compareTo(newWettest) > 0) {
            throw new IllegalArgumentException("moisture newDriest was " + newDriest.percent() + " % and newWettest "
                    + newWettest.percent() + " %; that when built, " + asBuilt.percent()
                    + " %, must be between them: call of with the moisture when built, or widen the two");
        }
        return new WoodInUse(species, grain, asBuilt, newDriest, newWettest, allowedGap);
    }

    /**
     * Returns this wood with another limit for gaps between boards of a single row when dry.
     *
     * @param gap the widest gap allowed, 0 or more
     * @return the wood
     * @throws IllegalArgumentException if {@code gap} is negative
     */
    public WoodInUse allowingGaps(Length gap) {
        if (gap.isNegative()) {
            throw new IllegalArgumentException(
                    "gap was " + gap + "; it must be 0 or more: 0 if the boards may not part at all");
        }
        return new WoodInUse(species, grain, asBuilt, driest, wettest, gap);
    }

    /**
     * Returns what wood it is.
     *
     * @return the species
     */
    public WoodSpecies species() {
        return species;
    }

    /**
     * Returns how it is sawn.
     *
     * @return the grain
     */
    public Grain grain() {
        return grain;
    }

    /**
     * Returns how wet it is when built.
     *
     * @return the moisture content
     */
    public Ratio asBuilt() {
        return asBuilt;
    }

    /**
     * Returns how dry it gets.
     *
     * @return the least moisture content
     */
    public Ratio driest() {
        return driest;
    }

    /**
     * Returns how wet it gets.
     *
     * @return the most moisture content
     */
    public Ratio wettest() {
        return wettest;
    }

    /**
     * Returns how wide gaps may open when dry.
     *
     * @return the limit for boards of a single row
     */
    public Length allowedGap() {
        return allowedGap;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WoodInUse that
                && species == that.species
                && grain == that.grain
                && asBuilt.equals(that.asBuilt)
                && driest.equals(that.driest)
                && wettest.equals(that.wettest)
                && allowedGap.equals(that.allowedGap);
    }

    @Override
    public int hashCode() {
        return Objects.hash(species, grain, asBuilt, driest, wettest, allowedGap);
    }

    /**
     * Describes the wood.
     *
     * @return such as {@code LOBLOLLY_PINE, FLAT, built at 30 %, from 12 % to 30 %}
     */
    @Override
    public String toString() {
        return species + ", " + grain + ", built at " + asBuilt.percent() + " %, from " + driest.percent() + " % to "
                + wettest.percent() + " %";
    }
}
