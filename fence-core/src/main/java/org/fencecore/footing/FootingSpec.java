package org.fencecore.footing;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.internal.Limits;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Rounding;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How a fence post is set: the post, the ground it stands in, and the hole it is set in.
 *
 * <p>The post is square and stands in a hole as its {@link PostSetting} has it. What is not said is taken as follows; the
 * fence's height above grade has to be said.
 *
 * <table>
 * <caption>What is taken if not said</caption>
 * <tr><th scope="col">option</th><th scope="col">taken</th><th scope="col">source</th></tr>
 * <tr><td>post width</td><td>3 1/2 in, a dressed 4x4</td><td>common practice, no source</td></tr>
 * <tr><td>soil</td><td>{@link SoilClass#CLAY}, the softest class of the table</td><td>IBC 2012, table 1806.2</td></tr>
 * <tr><td>doubled bearing</td><td>no</td><td>IBC 2018, section 1806.3.4</td></tr>
 * <tr><td>frost depth</td><td>not known; a finding says so</td><td></td></tr>
 * <tr><td>setting</td><td>the usual {@link PostSetting}</td><td>listed there</td></tr>
 * <tr><td>frost grip</td><td>65 kPa in class 5</td><td>Canadian Foundation Engineering Manual, from memory</td></tr>
 * </table>
 *
 * <p>Example: a 4x4 post of a fence 6 ft 2 in high, in sand with 24 in of frost.
 *
 * <pre>{@code
 * FootingSpec spec = FootingSpec.builder()
 *         .exposedHeight(Length.ofFeetAndInches(6, 2))
 *         .soil(SoilClass.SAND)
 *         .frostDepth(Length.ofInches(24))
 *         .build();
 * spec.holeDiameter();   // 10 1/2 in
 * }</pre>
 */
public final class FootingSpec {

    /** Canadian Foundation Engineering Manual, fine soil frozen to wood or concrete; from memory. */
    private static final Pressure FINE_SOIL_GRIP = Pressure.ofPascals(65_000);

    private final Length postWidth;
    private final Length exposedHeight;
    private final SoilClass soil;
    private final boolean doubledBearing;
    private final @Nullable Length frostDepth;
    private final PostSetting setting;
    private final HoleShape hole;
    private final @Nullable Pressure frostGrip;

    private FootingSpec(Builder from, Length exposedHeight) {
        this.postWidth = from.postWidth;
        this.exposedHeight = exposedHeight;
        this.soil = from.soil;
        this.doubledBearing = from.doubledBearing;
        this.frostDepth = from.frostDepth;
        this.setting = from.setting;
        this.hole = setting.holeFor(postWidth);
        this.frostGrip = from.frostGrip;
        Length concrete = setting.concreteTop().plus(setting.crown());
        if (concrete.compareTo(exposedHeight) >= 0) {
            throw new IllegalArgumentException("concreteTop was " + setting.concreteTop()
                    + " above grade; with its crown it must be below the top of the post, " + exposedHeight
                    + ", so check its sign");
        }
    }

    /**
     * Starts from the usual post.
     *
     * @return a builder with the values named above
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns these options for a post that stands out of the ground by another height, such as the next one on a slope.
     *
     * @param height the height of the post above grade, over 0, to 100 ft
     * @return the options with that height
     * @throws IllegalArgumentException if out of that range, or not above the concrete
     */
    public FootingSpec withExposedHeight(Length height) {
        return new Builder(this).exposedHeight(height).build();
    }

    /**
     * Returns how wide the square post is.
     *
     * @return the width of a side
     */
    public Length postWidth() {
        return postWidth;
    }

    /**
     * Returns how far the post stands out of the ground.
     *
     * @return the height above grade
     */
    public Length exposedHeight() {
        return exposedHeight;
    }

    /**
     * Returns the soil the post is set in.
     *
     * @return the soil
     */
    public SoilClass soil() {
        return soil;
    }

    /**
     * Tells whether twice the soil's lateral bearing is counted on.
     *
     * @return true if doubled
     */
    public boolean hasDoubledBearing() {
        return doubledBearing;
    }

    /**
     * Returns how deep the ground freezes.
     *
     * @return the depth below grade, or empty if it is not known
     */
    public Optional<Length> frostDepth() {
        return Optional.ofNullable(frostDepth);
    }

    /**
     * Returns how the post is set.
     *
     * @return the hole, its filling and the rules for its depth
     */
    public PostSetting setting() {
        return setting;
    }

    /**
     * Returns the shape of the hole.
     *
     * @return the shape
     */
    public HoleShape hole() {
        return hole;
    }

    /**
     * Returns how wide the hole is at grade.
     *
     * @return the diameter, or the side of a square hole
     */
    public Length holeDiameter() {
        return hole.width();
    }

    /**
     * Returns how hard freezing ground may grip the side of the concrete.
     *
     * @return the stress if given, or in soil of class 5 the 65 kPa of fine soil on concrete; empty for other soils
     */
    public Optional<Pressure> frostGrip() {
        if (frostGrip == null && soil.equals(SoilClass.CLAY)) {
            return Optional.of(FINE_SOIL_GRIP);
        }
        return Optional.ofNullable(frostGrip);
    }

    /** The greatest width of the square post, which is what a round hole has to take. */
    Length postDiagonal() {
        return Length.ofMetres(postWidth.metres() * Math.sqrt(2));
    }

    /** How much of the ground, from grade down, has no concrete in it to bear on; zero if the concrete reaches grade. */
    Length groundNotCounted() {
        Length top = setting.concreteTop();
        return top.isNegative() ? top.negated() : Length.ZERO;
    }

    /** The lateral bearing that is counted on. */
    UnitWeight bearing() {
        return doubledBearing ? soil.lateralBearing().times(2) : soil.lateralBearing();
    }

    /** Brings a depth up to the increment. */
    Length roundUp(Length depth) {
        return depth.roundedTo(setting.increment(), Rounding.UP);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FootingSpec that
                && postWidth.equals(that.postWidth)
                && exposedHeight.equals(that.exposedHeight)
                && soil.equals(that.soil)
                && doubledBearing == that.doubledBearing
                && Objects.equals(frostDepth, that.frostDepth)
                && setting.equals(that.setting)
                && Objects.equals(frostGrip, that.frostGrip);
    }

    @Override
    public int hashCode() {
        return Objects.hash(postWidth, exposedHeight, soil, doubledBearing, frostDepth, setting, frostGrip);
    }

    @Override
    public String toString() {
        return "post " + Written.tape(postWidth) + " wide standing " + Written.tape(exposedHeight)
                + " out of the ground, in " + soil + (doubledBearing ? " doubled" : "") + ", frost "
                + (frostDepth == null ? "not known" : Written.tape(frostDepth)) + ", " + setting;
    }

    /** Collects the post and its ground, starting from the usual. */
    public static final class Builder {

        private static final Length LEAST_POST = Length.ofInches(1);
        private static final Length WIDEST_POST = Length.ofInches(24);
        private static final Length HIGHEST = Length.ofFeet(100);
        private static final Length DEEPEST = Length.ofFeet(20);
        private static final PostSetting USUAL_SETTING = PostSetting.builder().build();

        private Length postWidth = Length.ofInches(3.5);
        private @Nullable Length exposedHeight;
        private SoilClass soil = SoilClass.CLAY;
        private boolean doubledBearing;
        private @Nullable Length frostDepth;
        private PostSetting setting = USUAL_SETTING;
        private @Nullable Pressure frostGrip;

        private Builder() {}

        private Builder(FootingSpec from) {
            this.postWidth = from.postWidth;
            this.exposedHeight = from.exposedHeight;
            this.soil = from.soil;
            this.doubledBearing = from.doubledBearing;
            this.frostDepth = from.frostDepth;
            this.setting = from.setting;
            this.frostGrip = from.frostGrip;
        }

        /**
         * Sets how wide the square post is; 3 1/2 in if not set.
         *
         * @param width the width of a side, 1 to 24 in
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder postWidth(Length width) {
            this.postWidth = Limits.within("postWidth", width, LEAST_POST, WIDEST_POST);
            return this;
        }

        /**
         * Sets how far the post stands out of the ground; it has to be set.
         *
         * @param height the height above grade, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder exposedHeight(Length height) {
            this.exposedHeight = Limits.overZero("exposedHeight", height, HIGHEST);
            return this;
        }

        /**
         * Sets the soil the post is set in; {@link SoilClass#CLAY}, the softest of the table, if not set.
         *
         * @param newSoil the soil
         * @return this builder
         */
        public Builder soil(SoilClass newSoil) {
            this.soil = Objects.requireNonNull(newSoil, "newSoil");
            return this;
        }

        /**
         * Sets whether to count on twice the soil's lateral bearing; not if not set. The building code has this for
         * isolated poles that 1/2 in of motion at grade under a short-term load does not harm. Whether a fence post is
         * one is for the building official or an engineer to say, so it comes with a warning.
         *
         * @param doubled true to double it
         * @return this builder
         */
        public Builder doubledBearing(boolean doubled) {
            this.doubledBearing = doubled;
            return this;
        }

        /**
         * Sets how deep the ground freezes, as the local building department has it; not known if not set.
         *
         * @param depth the depth below grade, 0 where it does not freeze, to 20 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder frostDepth(Length depth) {
            this.frostDepth = Limits.within("frostDepth", depth, Length.ZERO, DEEPEST);
            return this;
        }

        /**
         * Sets how the post is set: its hole, what fills it, and how deep it stands at least; as usual if not set.
         *
         * @param newSetting the options of the crew
         * @return this builder
         */
        public Builder setting(PostSetting newSetting) {
            this.setting = Objects.requireNonNull(newSetting, "newSetting");
            return this;
        }

        /**
         * Sets how hard freezing ground may grip the side of the concrete; if not set, 65 kPa in soil of class 5, and
         * not reckoned in others, which drain.
         *
         * @param stress the stress, from 0 to 1,000 kPa
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder frostGrip(Pressure stress) {
            Objects.requireNonNull(stress, "stress");
            if (stress.isNegative() || stress.pascals() > 1_000_000) {
                throw new IllegalArgumentException("stress was " + Written.pressure(stress)
                        + "; it must be from 0 to 1,000 kPa, so check its unit");
            }
            this.frostGrip = stress;
            return this;
        }

        /**
         * Returns the options.
         *
         * @return the options
         * @throws IllegalArgumentException if the height above grade was not set, the post does not fit in its hole, or
         *     the concrete ends above the post
         */
        public FootingSpec build() {
            if (exposedHeight == null) {
                throw new IllegalArgumentException(
                        "exposedHeight was not set; say how far the post stands out of the ground");
            }
            return new FootingSpec(this, exposedHeight);
        }
    }
}
