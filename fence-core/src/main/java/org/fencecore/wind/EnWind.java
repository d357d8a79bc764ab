package org.fencecore.wind;

import java.util.Objects;
import org.fencecore.internal.Limits;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Speed;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The design wind of a place in Europe by EN 1991-1-4: its basic speed and how rough the ground is.
 *
 * <p>With {@code kr = 0.19 (z0 / 0.05)^0.07}, {@code cr = kr ln(z / z0)} and {@code Iv = 1 / (co ln(z / z0))} the peak
 * velocity pressure is {@code qp = (1 + 7 Iv) x 1/2 x 1.25 kg/m3 x (cr co vb)^2}. Not said, the terrain is
 * {@link EnTerrain#CATEGORY_II} and level (co = 1).
 *
 * <p>A run of fence is a free-standing wall by 7.4.1 with the recommended net coefficients of table 7.9: zone A to 0.3 h
 * from the end, B to 2 h, C to 4 h and D beyond, h being the height of the face; a return corner at least as long as h
 * has coefficients of its own, a shorter one comes in proportion. Down to 0.8 solid the coefficients fall in proportion to
 * 1.2; a more open fence is a lattice by 7.11, for which 1.2 on the gross area is kept here, with a warning. National
 * annexes differ, and no shelter by other fences (7.4.2) is counted on.
 *
 * <p>Example: a wall 2 m high on a base of 8 m in terrain III, in the wind of five years.
 *
 * <pre>{@code
 * Speed basic = EnWind.inYears(Speed.ofMetresPerSecond(26), 5);    // 22.217 m/s
 * EnWind wind = EnWind.builder().basicSpeed(basic).terrain(EnTerrain.CATEGORY_III).build();
 * wind.velocityPressure(Length.ofMetres(10));                      // 527.28 Pa
 * }</pre>
 *
 * <p>Source: EN 1991-1-4:2005, sections 4.2 to 4.5 and 7.4.1.
 */
public final class EnWind implements Wind {

    private static final double AIR = 1.25;

    private final Speed basicSpeed;
    private final EnTerrain terrain;
    private final Ratio orography;

    private EnWind(Builder from, Speed basicSpeed) {
        this.basicSpeed = basicSpeed;
        this.terrain = from.terrain;
        this.orography = from.orography;
    }

    /**
     * Starts from level terrain of category II.
     *
     * @return a builder; the basic speed has to be set
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns the wind that comes once in so many years from that of fifty: times {@code ((1 - 0.2 ln(-ln(1 - 1/T))) /
     * (1 - 0.2 ln(-ln 0.98)))^0.5}.
     *
     * @param fiftyYears the basic speed of the national map, over 0, to 250 mph
     * @param years how many years T, 2 to 1,000
     * @return the basic speed of that many years
     * @throws IllegalArgumentException if either is out of its range
     */
    public static Speed inYears(Speed fiftyYears, int years) {
        WindLimits.windSpeed("fiftyYears", fiftyYears);
        if (years < 2 || years > 1000) {
            throw new IllegalArgumentException(
                    "years was " + years + "; it must be from 2 to 1,000, such as the 50 of the map");
        }
        return fiftyYears.times(Math.sqrt(rarity(1.0 / years) / rarity(0.02)));
    }

    private static double rarity(double chance) {
        return 1 - 0.2 * Math.log(-Math.log(1 - chance));
    }

    /**
     * Returns the basic speed of the wind.
     *
     * @return vb, the ten-minute mean 10 m above fields
     */
    public Speed basicSpeed() {
        return basicSpeed;
    }

    /**
     * Returns how rough the ground is.
     *
     * @return the terrain category
     */
    public EnTerrain terrain() {
        return terrain;
    }

    /**
     * Returns how much a hill speeds up the wind.
     *
     * @return the factor co on the speed
     */
    public Ratio orography() {
        return orography;
    }

    @Override
    public Pressure velocityPressure(Length height) {
        Limits.overZero("height", height, WindLimits.HIGHEST);
        double mean = roughness(height) * orography.value() * basicSpeed.metresPerSecond();
        return Pressure.ofPascals((1 + 7 * turbulence(height)) * 0.5 * AIR * mean * mean);
    }

    /** The roughness factor cr. */
    double roughness(Length height) {
        return terrain.factor() * logHeight(height);
    }

    /** The intensity Iv of the turbulence. */
    double turbulence(Length height) {
        return 1 / (orography.value() * logHeight(height));
    }

    private double logHeight(Length height) {
        return Math.log(terrain.effective(height.metres()) / terrain.roughness());
    }

    @Override
    public FenceWind on(FenceFace face) {
        return new FenceWind(this, face, EnReckoning.of(this, face));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof EnWind that
                && basicSpeed.equals(that.basicSpeed)
                && terrain == that.terrain
                && orography.equals(that.orography);
    }

    @Override
    public int hashCode() {
        return Objects.hash(basicSpeed, terrain, orography);
    }

    @Override
    public String toString() {
        return Written.speed(basicSpeed) + " by EN 1991-1-4, terrain " + terrain;
    }

    /** Collects what is known of the wind at a place. */
    public static final class Builder {

        private @Nullable Speed basicSpeed;
        private EnTerrain terrain = EnTerrain.CATEGORY_II;
        private Ratio orography = Ratio.of(1);

        private Builder() {}

        /**
         * Sets the basic wind speed vb, with its factors for direction, season and return period; it has to be set.
         *
         * @param mean the ten-minute mean, over 0, to 250 mph
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder basicSpeed(Speed mean) {
            this.basicSpeed = WindLimits.windSpeed("mean", mean);
            return this;
        }

        /**
         * Sets how rough the ground is; category II if not set.
         *
         * @param category the terrain category
         * @return this builder
         */
        public Builder terrain(EnTerrain category) {
            this.terrain = Objects.requireNonNull(category, "category");
            return this;
        }

        /**
         * Sets how much a hill speeds up the wind; not at all if not set.
         *
         * @param co the factor on the speed, 1 to 2
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder orography(Ratio co) {
            this.orography = WindLimits.within("co", co, 1, 2, "where 1 is level ground");
            return this;
        }

        /**
         * Returns the wind.
         *
         * @return the wind
         * @throws IllegalArgumentException if the basic speed was not set
         */
        public EnWind build() {
            if (basicSpeed == null) {
                throw new IllegalArgumentException(
                        "basicSpeed was not set; take it from the map of the national annex");
            }
            return new EnWind(this, basicSpeed);
        }
    }
}
