package org.fencecore.strength;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Pressure;
import org.jspecify.annotations.Nullable;

/**
 * A piece of wood and how it is used: its kind, grade and size, and what changes its strength.
 *
 * <p>Not said, the grade is No.2, the load is wind, the wood is wet in service (over 19 % moisture, as a post is where it
 * matters), it stays below 100 degrees Fahrenheit, and it was not incised for treatment.
 *
 * <p>Example: a 4x4 of Southern Pine.
 *
 * <pre>{@code
 * WoodMember post = WoodMember.builder(SpeciesGroup.SOUTHERN_PINE, WoodSection.FOUR_BY_FOUR).build();
 * post.adjusted().bending();     // 1100 x 1.6 = 1760 psi
 * }</pre>
 *
 * <p>Source: NDS 2018, sections 2.3 and 4.3.
 */
public final class WoodMember {

    private final @Nullable SpeciesGroup species;
    private final WoodGrade grade;
    private final WoodSection section;
    private final ReferenceValues reference;
    private final LoadDuration duration;
    private final boolean wet;
    private final ServiceTemperature temperature;
    private final boolean incised;

    private WoodMember(Builder from, ReferenceValues reference) {
        this.species = from.species;
        this.grade = from.grade;
        this.section = from.section;
        this.reference = reference;
        this.duration = from.duration;
        this.wet = from.wet;
        this.temperature = from.temperature;
        this.incised = from.incised;
    }

    /**
     * Starts from a No.2 piece in the wind, wet.
     *
     * @param species the wood
     * @param section the dressed size
     * @return a builder
     */
    public static Builder builder(SpeciesGroup species, WoodSection section) {
        return new Builder(species, section);
    }

    /**
     * Starts from a piece in the wind, wet, of a wood or grade that is not in the tables.
     *
     * @param reference its values in this very size
     * @param section the dressed size
     * @return a builder, on which a grade has no effect
     */
    public static Builder builder(ReferenceValues reference, WoodSection section) {
        return new Builder(reference, section);
    }

    /**
     * Returns the same piece under a load of another duration.
     *
     * @param newDuration how long the load lasts
     * @return the member
     */
    public WoodMember lasting(LoadDuration newDuration) {
        return new Builder(this).duration(newDuration).build();
    }

    /**
     * Returns the same wood in another size.
     *
     * @param newSection the dressed size
     * @return the member; empty if no values are held for that size, as where they were given for this one
     */
    public Optional<WoodMember> withSection(WoodSection newSection) {
        return Optional.ofNullable(species)
                .filter(known -> ReferenceValues.find(known, grade, newSection).isPresent())
                .map(known -> new Builder(this).section(newSection).build());
    }

    /**
     * Returns the kind of wood.
     *
     * @return the species; empty where values were given instead
     */
    public Optional<SpeciesGroup> species() {
        return Optional.ofNullable(species);
    }

    /**
     * Returns the size.
     *
     * @return the dressed section
     */
    public WoodSection section() {
        return section;
    }

    /**
     * Returns the values before any factor.
     *
     * @return the reference values
     */
    public ReferenceValues reference() {
        return reference;
    }

    /**
     * Returns how long the load lasts.
     *
     * @return the duration
     */
    public LoadDuration duration() {
        return duration;
    }

    /**
     * Tells whether the wood is wet in service.
     *
     * @return true over 19 % moisture
     */
    public boolean isWet() {
        return wet;
    }

    /**
     * Returns how hot the wood gets.
     *
     * @return the temperature
     */
    public ServiceTemperature temperature() {
        return temperature;
    }

    /**
     * Tells whether the wood was incised for treatment.
     *
     * @return true if so
     */
    public boolean isIncised() {
        return incised;
    }

    /**
     * Returns what the piece may be loaded with, bent across its width: a post in the wind, a rail on edge under weight.
     *
     * @return the adjusted values
     */
    public AdjustedValues adjusted() {
        return new AdjustedValues(this, false);
    }

    /**
     * Returns what the piece may be loaded with, bent across its thickness: a rail on edge in the wind.
     *
     * @return the adjusted values, with the flat use factor
     */
    public AdjustedValues adjustedFlat() {
        return new AdjustedValues(this, true);
    }

    double elasticity() {
        return adjusted().elasticity().pascals();
    }

    double bending(LoadDuration of, boolean flat) {
        Pressure now = flat ? adjustedFlat().bending() : adjusted().bending();
        return now.pascals() * of.factor().value() / duration.factor().value();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WoodMember that
                && species == that.species
                && reference.equals(that.reference)
                && section.equals(that.section)
                && duration == that.duration
                && wet == that.wet
                && temperature == that.temperature
                && incised == that.incised;
    }

    @Override
    public int hashCode() {
        return Objects.hash(species, reference, section, duration, wet, temperature, incised);
    }

    @Override
    public String toString() {
        return (species == null ? reference.toString() : species + " " + grade) + ", " + section;
    }

    /** Collects how a piece is used. */
    public static final class Builder {

        private final @Nullable SpeciesGroup species;
        private final @Nullable ReferenceValues given;
        private WoodSection section;
        private WoodGrade grade = WoodGrade.NO_2;
        private LoadDuration duration = LoadDuration.WIND;
        private boolean wet = true;
        private ServiceTemperature temperature = ServiceTemperature.USUAL;
        private boolean incised;

        private Builder(SpeciesGroup species, WoodSection section) {
            this.species = Objects.requireNonNull(species, "species");
            this.given = null;
            this.section = Objects.requireNonNull(section, "section");
        }

        private Builder(ReferenceValues given, WoodSection section) {
            this.species = null;
            this.given = Objects.requireNonNull(given, "given");
            this.section = Objects.requireNonNull(section, "section");
        }

        private Builder(WoodMember from) {
            this.species = from.species;
            this.given = from.species == null ? from.reference : null;
            this.section = from.section;
            this.grade = from.grade;
            this.duration = from.duration;
            this.wet = from.wet;
            this.temperature = from.temperature;
            this.incised = from.incised;
        }

        private Builder section(WoodSection newSection) {
            this.section = Objects.requireNonNull(newSection, "newSection");
            return this;
        }

        /**
         * Sets the grade; No.2 if not set.
         *
         * @param newGrade the grade
         * @return this builder
         */
        public Builder grade(WoodGrade newGrade) {
            this.grade = Objects.requireNonNull(newGrade, "newGrade");
            return this;
        }

        /**
         * Sets how long the load lasts; wind if not set.
         *
         * @param newDuration the duration
         * @return this builder
         */
        public Builder duration(LoadDuration newDuration) {
            this.duration = Objects.requireNonNull(newDuration, "newDuration");
            return this;
        }

        /**
         * Sets whether the wood is wet in service, over 19 % moisture; so if not set.
         *
         * @param isWet false for wood that stays dry
         * @return this builder
         */
        public Builder wet(boolean isWet) {
            this.wet = isWet;
            return this;
        }

        /**
         * Sets how hot the wood gets; {@link ServiceTemperature#USUAL} if not set.
         *
         * @param newTemperature the temperature
         * @return this builder
         */
        public Builder temperature(ServiceTemperature newTemperature) {
            this.temperature = Objects.requireNonNull(newTemperature, "newTemperature");
            return this;
        }

        /**
         * Sets whether dimension lumber was incised for treatment, as Douglas Fir and Hem-Fir often are; not if not set.
         *
         * @param isIncised true if it shows rows of small slits
         * @return this builder
         */
        public Builder incised(boolean isIncised) {
            this.incised = isIncised;
            return this;
        }

        /**
         * Returns the member.
         *
         * @return the member
         * @throws IllegalArgumentException if no values are held for that wood, grade and size
         */
        public WoodMember build() {
            ReferenceValues reference = Optional.ofNullable(given)
                    .or(() ->
                            Optional.ofNullable(species).flatMap(known -> ReferenceValues.find(known, grade, section)))
                    .orElseThrow(() -> new IllegalArgumentException("no reference values are held for " + species + " "
                            + grade + " of " + section
                            + "; use No.2, and lumber of 2 to 4 in nominal or posts of 5 in and more, or give values"
                            + " of your own"));
            return new WoodMember(this, reference);
        }
    }
}
