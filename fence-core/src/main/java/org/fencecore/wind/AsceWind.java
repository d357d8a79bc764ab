package org.fencecore.wind;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.internal.Limits;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Speed;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The design wind of a place in the United States by ASCE 7: its speed, how open the ground is, and the edition in force.
 *
 * <p>Velocity pressure is {@code q = 0.00256 Kz Kzt Kd Ke V^2} in psf and mph, with Kd = 0.85 up to the edition of 2016;
 * in that of 2022 Kd goes with the force. Not said, the edition is ASCE 7-16, the exposure {@link Exposure#C}, the ground
 * has no hill that speeds up the wind (Kzt = 1), and its elevation is not counted on (Ke = 1, always allowed; from
 * memory).
 *
 * <p>A run of fence is a solid freestanding wall by figure 29.3-1, cases A, B and C, or if less than 0.7 solid an open
 * sign by figure 29.4-2, with the gust factor 0.85 of rigid structures. No pressure is under 16 psf on the solid area
 * (from memory). What is given back is 0.6 of that strength load, to go with allowable stresses.
 *
 * <p>Example: 115 mph in exposure C.
 *
 * <pre>{@code
 * AsceWind wind = AsceWind.builder().speed(Speed.ofMilesPerHour(115)).build();
 * wind.velocityPressure(Length.ofFeet(6));    // 24.43 psf
 * }</pre>
 *
 * <p>Sources: ASCE 7-10, 7-16 and 7-22, chapters 26 and 29; 0.6 W: ASCE 7-10, section 2.4.1.
 */
public final class AsceWind implements Wind {

    /** Directionality of solid signs and walls; of open ones the same, from memory. */
    static final double KD = 0.85;

    /** The gust factor G of a rigid structure, ASCE 7-16, section 26.11.1, from memory. */
    static final double GUST = 0.85;

    /** What of the strength load goes with allowable stresses. */
    static final double ALLOWABLE = 0.6;

    private static final double PSF = Pressure.ofPsf(1).pascals();
    private static final double MPH = Speed.ofMilesPerHour(1).metresPerSecond();

    private final Speed speed;
    private final AsceEdition edition;
    private final Exposure exposure;
    private final Ratio topographicFactor;
    private final @Nullable Length groundElevation;
    private final boolean tabulatedKz;
    private final boolean metricConstants;

    private AsceWind(Builder from, Speed speed) {
        this.speed = speed;
        this.edition = from.edition;
        this.exposure = from.exposure;
        this.topographicFactor = from.topographicFactor;
        this.groundElevation = from.groundElevation;
        this.tabulatedKz = from.tabulatedKz;
        this.metricConstants = from.metricConstants;
        if (tabulatedKz) {
            edition.requireTable();
        }
        if (groundElevation != null && !edition.knowsElevation()) {
            throw new IllegalArgumentException("groundElevation was " + groundElevation + " for " + edition
                    + ", which has no factor for it; leave it out or take a later edition");
        }
    }

    /**
     * Starts from a wind in exposure C by ASCE 7-16.
     *
     * @return a builder; the speed has to be set
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns the speed of the wind.
     *
     * @return the ultimate three-second gust, 33 ft above open ground
     */
    public Speed speed() {
        return speed;
    }

    /**
     * Returns the edition that is followed.
     *
     * @return the edition
     */
    public AsceEdition edition() {
        return edition;
    }

    /**
     * Returns how open the ground is.
     *
     * @return the exposure
     */
    public Exposure exposure() {
        return exposure;
    }

    /**
     * Returns how much a hill speeds up the wind's pressure.
     *
     * @return Kzt
     */
    public Ratio topographicFactor() {
        return topographicFactor;
    }

    /**
     * Returns how high above the sea the ground is.
     *
     * @return the elevation; empty if the thinner air is not counted on
     */
    public Optional<Length> groundElevation() {
        return Optional.ofNullable(groundElevation);
    }

    /**
     * Tells whether Kz is read from the table of the edition.
     *
     * @return true if so, false if it is worked out by the formula
     */
    public boolean hasTabulatedKz() {
        return tabulatedKz;
    }

    /**
     * Tells whether the constants are those of the metric formulas.
     *
     * @return true if so, false for those in psf, mph and feet
     */
    public boolean hasMetricConstants() {
        return metricConstants;
    }

    /**
     * Returns the velocity pressure exposure coefficient, by formula or table as asked for.
     *
     * @param height the height above grade, from 0 to 100 ft; to 30 ft from the table
     * @return Kz
     * @throws IllegalArgumentException if the height is out of that range
     */
    public Ratio kz(Length height) {
        return tabulatedKz ? edition.tabulatedKz(exposure, height) : edition.kz(exposure, height);
    }

    /**
     * Returns the ground elevation factor for thinner air.
     *
     * @return Ke, 1 if the elevation is not counted on
     */
    public Ratio ke() {
        if (groundElevation == null) {
            return Ratio.of(1);
        }
        return Ratio.of(
                Math.exp(metricConstants ? -0.000119 * groundElevation.metres() : -0.0000362 * groundElevation.feet()));
    }

    @Override
    public Pressure velocityPressure(Length height) {
        Limits.overZero("height", height, WindLimits.HIGHEST);
        double kd = edition.hasKdInVelocityPressure() ? KD : 1;
        double bySpeed = metricConstants
                ? 0.613 * speed.metresPerSecond() * speed.metresPerSecond()
                : 0.00256 * speed.metresPerSecond() * speed.metresPerSecond() / (MPH * MPH) * PSF;
        return Pressure.ofPascals(bySpeed * kz(height).value() * topographicFactor.value() * kd * ke().value());
    }

    /** The directionality factor that the force has; 1 where the velocity pressure has it. */
    double kdOfForce() {
        return edition.hasKdInVelocityPressure() ? 1 : KD;
    }

    String velocityConstant() {
        return metricConstants ? "0.613 Pa/(m/s)^2" : "0.00256 psf/mph^2";
    }

    @Override
    public FenceWind on(FenceFace face) {
        return new FenceWind(this, face, AsceReckoning.of(this, face));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AsceWind that
                && speed.equals(that.speed)
                && edition == that.edition
                && exposure == that.exposure
                && topographicFactor.equals(that.topographicFactor)
                && Objects.equals(groundElevation, that.groundElevation)
                && tabulatedKz == that.tabulatedKz
                && metricConstants == that.metricConstants;
    }

    @Override
    public int hashCode() {
        return Objects.hash(speed, edition, exposure, topographicFactor, groundElevation, tabulatedKz, metricConstants);
    }

    @Override
    public String toString() {
        return Written.speed(speed) + " by " + edition + ", exposure " + exposure;
    }

    /** Collects what is known of the wind at a place. */
    public static final class Builder {

        private static final Length LOWEST_GROUND = Length.ofFeet(-1500);
        private static final Length HIGHEST_GROUND = Length.ofFeet(15_000);

        private @Nullable Speed speed;
        private AsceEdition edition = AsceEdition.ASCE_7_16;
        private Exposure exposure = Exposure.C;
        private Ratio topographicFactor = Ratio.of(1);
        private @Nullable Length groundElevation;
        private boolean tabulatedKz;
        private boolean metricConstants;

        private Builder() {}

        /**
         * Sets the basic wind speed, as the local building department has it; it has to be set.
         *
         * @param ultimate the ultimate three-second gust, over 0, to 250 mph
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder speed(Speed ultimate) {
            this.speed = WindLimits.windSpeed("speed", ultimate);
            return this;
        }

        /**
         * Sets the edition in force; ASCE 7-16 if not set.
         *
         * @param newEdition the edition
         * @return this builder
         */
        public Builder edition(AsceEdition newEdition) {
            this.edition = Objects.requireNonNull(newEdition, "newEdition");
            return this;
        }

        /**
         * Sets how open the ground is; C if not set.
         *
         * @param newExposure the exposure
         * @return this builder
         */
        public Builder exposure(Exposure newExposure) {
            this.exposure = Objects.requireNonNull(newExposure, "newExposure");
            return this;
        }

        /**
         * Sets how much a hill or an escarpment speeds up the wind; not at all if not set.
         *
         * @param kzt the factor on the pressure, 1 to 5
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder topographicFactor(Ratio kzt) {
            this.topographicFactor = WindLimits.within("kzt", kzt, 1, 5, "where 1 is level ground");
            return this;
        }

        /**
         * Counts on the thinner air of higher ground, from ASCE 7-16 on; not counted on if not set.
         *
         * @param elevation the height of the ground above the sea, -1,500 to 15,000 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder groundElevation(Length elevation) {
            this.groundElevation = Limits.within("elevation", elevation, LOWEST_GROUND, HIGHEST_GROUND);
            return this;
        }

        /**
         * Sets whether Kz is read from the printed table, to 30 ft, rather than worked out by its formula; not if not
         * set.
         *
         * @param fromTable true for the table, which ASCE 7-22 has not here
         * @return this builder
         */
        public Builder tabulatedKz(boolean fromTable) {
            this.tabulatedKz = fromTable;
            return this;
        }

        /**
         * Sets whether the constants are those of the standard's metric formulas, 0.613 and 0.000119, which give 0.06 %
         * less than the customary 0.00256 and 0.0000362; not if not set.
         *
         * @param metric true for the metric ones
         * @return this builder
         */
        public Builder metricConstants(boolean metric) {
            this.metricConstants = metric;
            return this;
        }

        /**
         * Returns the wind.
         *
         * @return the wind
         * @throws IllegalArgumentException if the speed was not set, or the edition has no table of Kz or no factor for
         *     the elevation that was asked for
         */
        public AsceWind build() {
            if (speed == null) {
                throw new IllegalArgumentException(
                        "speed was not set; ask the local building department for the design wind speed");
            }
            return new AsceWind(this, speed);
        }
    }
}
