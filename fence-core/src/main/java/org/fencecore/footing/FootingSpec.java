package org.fencecore.footing;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How a fence post is set: the post, the ground it stands in, and the hole it is set in.
 *
 * <p>The post is square and stands on a gravel base in a round hole, with concrete around it from the gravel up. What is
 * not said is taken as follows; the fence's height above grade has to be said.
 *
 * <table>
 * <caption>What is taken if not said</caption>
 * <tr><th scope="col">option</th><th scope="col">taken</th><th scope="col">source</th></tr>
 * <tr><td>post width</td><td>3 1/2 in, a dressed 4x4</td><td>common practice, no source</td></tr>
 * <tr><td>soil</td><td>{@link SoilClass#CLAY}, the softest class of the table</td><td>IBC 2012, table 1806.2</td></tr>
 * <tr><td>doubled bearing</td><td>no</td><td>IBC 2018, section 1806.3.4</td></tr>
 * <tr><td>frost depth</td><td>not known; a finding says so</td><td></td></tr>
 * <tr><td>least embedment</td><td>24 in</td><td>USDA NRCS Conservation Practice Standard 382, Kentucky 2007</td></tr>
 * <tr><td>third of the post in the ground</td><td>yes</td><td>common practice, no source</td></tr>
 * <tr><td>embedment rounded up to</td><td>1 in</td><td>common practice, no source</td></tr>
 * <tr><td>hole diameter</td><td>three posts wide</td><td>common practice, no source</td></tr>
 * <tr><td>gravel base</td><td>6 in</td><td>common practice, no source</td></tr>
 * <tr><td>top of the concrete</td><td>flush with grade</td><td>common practice, no source</td></tr>
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

    static final Length USUAL_MINIMUM = Length.ofInches(24);

    private final Length postWidth;
    private final Length exposedHeight;
    private final SoilClass soil;
    private final boolean doubledBearing;
    private final @Nullable Length frostDepth;
    private final Length minimumEmbedment;
    private final boolean thirdOfPostInGround;
    private final Length increment;
    private final Length holeDiameter;
    private final Length gravelBase;
    private final Length concreteTop;

    private FootingSpec(Builder from, Length exposedHeight) {
        this.postWidth = from.postWidth;
        this.exposedHeight = exposedHeight;
        this.soil = from.soil;
        this.doubledBearing = from.doubledBearing;
        this.frostDepth = from.frostDepth;
        this.minimumEmbedment = from.minimumEmbedment;
        this.thirdOfPostInGround = from.thirdOfPostInGround;
        this.increment = from.increment;
        this.holeDiameter = from.holeDiameter == null ? postWidth.times(3) : from.holeDiameter;
        this.gravelBase = from.gravelBase;
        this.concreteTop = from.concreteTop;
        if (postDiagonal().compareTo(holeDiameter) >= 0) {
            throw new IllegalArgumentException("holeDiameter was " + holeDiameter
                    + " for a post with a diagonal of " + postDiagonal()
                    + "; the post must fit in its hole, so use a wider hole or check the unit of either");
        }
        if (concreteTop.compareTo(exposedHeight) >= 0
                || concreteTop.plus(minimumEmbedment).isNegative()
                || concreteTop.plus(minimumEmbedment).isZero()) {
            throw new IllegalArgumentException("concreteTop was " + concreteTop
                    + " above grade; it must be below the top of the post, " + exposedHeight
                    + ", and above the least embedment, " + minimumEmbedment.negated()
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
    public boolean doubledBearing() {
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
     * Returns the least embedment of any post.
     *
     * @return the depth below grade
     */
    public Length minimumEmbedment() {
        return minimumEmbedment;
    }

    /**
     * Tells whether a third of the post has to be in the ground.
     *
     * @return true if that rule is followed
     */
    public boolean thirdOfPostInGround() {
        return thirdOfPostInGround;
    }

    /**
     * Returns the step that embedments are rounded up to.
     *
     * @return the increment
     */
    public Length increment() {
        return increment;
    }

    /**
     * Returns how wide the round hole is.
     *
     * @return the diameter
     */
    public Length holeDiameter() {
        return holeDiameter;
    }

    /**
     * Returns how thick the gravel under the post is.
     *
     * @return the thickness, zero for none
     */
    public Length gravelBase() {
        return gravelBase;
    }

    /**
     * Returns how far above grade the concrete ends.
     *
     * @return the height, zero if flush, negative if it ends below grade
     */
    public Length concreteTop() {
        return concreteTop;
    }

    /** The greatest width of the square post, which is what a round hole has to take. */
    Length postDiagonal() {
        return Length.ofMetres(postWidth.metres() * Math.sqrt(2));
    }

    /** How much of the ground, from grade down, has no concrete in it to bear on; zero if the concrete reaches grade. */
    Length groundNotCounted() {
        return concreteTop.isNegative() ? concreteTop.negated() : Length.ZERO;
    }

    /** Brings a depth up to the increment. */
    Length roundUp(Length depth) {
        return depth.roundedTo(increment, Rounding.UP);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FootingSpec that
                && postWidth.equals(that.postWidth)
                && exposedHeight.equals(that.exposedHeight)
                && soil.equals(that.soil)
                && doubledBearing == that.doubledBearing
                && Objects.equals(frostDepth, that.frostDepth)
                && minimumEmbedment.equals(that.minimumEmbedment)
                && thirdOfPostInGround == that.thirdOfPostInGround
                && increment.equals(that.increment)
                && holeDiameter.equals(that.holeDiameter)
                && gravelBase.equals(that.gravelBase)
                && concreteTop.equals(that.concreteTop);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                postWidth,
                exposedHeight,
                soil,
                doubledBearing,
                frostDepth,
                minimumEmbedment,
                thirdOfPostInGround,
                increment,
                holeDiameter,
                gravelBase,
                concreteTop);
    }

    @Override
    public String toString() {
        return "post " + Written.tape(postWidth) + " wide standing " + Written.tape(exposedHeight)
                + " out of the ground, in " + soil + (doubledBearing ? " doubled" : "") + ", frost "
                + (frostDepth == null ? "not known" : Written.tape(frostDepth)) + ", hole "
                + Written.tape(holeDiameter) + " wide, gravel " + Written.tape(gravelBase) + ", concrete to "
                + Written.tape(concreteTop) + " above grade";
    }

    /** Collects how a post is set, starting from the usual. */
    public static final class Builder {

        private static final Length LEAST_POST = Length.ofInches(1);
        private static final Length WIDEST_POST = Length.ofInches(24);
        private static final Length HIGHEST = Length.ofFeet(100);
        private static final Length DEEPEST = Length.ofFeet(20);
        private static final Length WIDEST_HOLE = Length.ofFeet(10);
        private static final Length THICKEST_GRAVEL = Length.ofFeet(4);
        private static final Length FARTHEST_TOP = Length.ofFeet(2);
        private static final Length COARSEST = Length.ofInches(12);

        private Length postWidth = Length.ofInches(3.5);
        private @Nullable Length exposedHeight;
        private SoilClass soil = SoilClass.CLAY;
        private boolean doubledBearing;
        private @Nullable Length frostDepth;
        private Length minimumEmbedment = USUAL_MINIMUM;
        private boolean thirdOfPostInGround = true;
        private Length increment = Length.ofInches(1);
        private @Nullable Length holeDiameter;
        private Length gravelBase = Length.ofInches(6);
        private Length concreteTop = Length.ZERO;

        private Builder() {}

        private Builder(FootingSpec from) {
            this.postWidth = from.postWidth;
            this.exposedHeight = from.exposedHeight;
            this.soil = from.soil;
            this.doubledBearing = from.doubledBearing;
            this.frostDepth = from.frostDepth;
            this.minimumEmbedment = from.minimumEmbedment;
            this.thirdOfPostInGround = from.thirdOfPostInGround;
            this.increment = from.increment;
            this.holeDiameter = from.holeDiameter;
            this.gravelBase = from.gravelBase;
            this.concreteTop = from.concreteTop;
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
         * Sets the least embedment of any post, such as a local rule; 24 in if not set.
         *
         * @param depth the depth below grade, over 0, to 20 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder minimumEmbedment(Length depth) {
            this.minimumEmbedment = Limits.overZero("minimumEmbedment", depth, DEEPEST);
            return this;
        }

        /**
         * Sets whether a third of the post has to be in the ground, which is half of what stands out of it; so if not
         * set.
         *
         * @param wanted true to follow that rule
         * @return this builder
         */
        public Builder thirdOfPostInGround(boolean wanted) {
            this.thirdOfPostInGround = wanted;
            return this;
        }

        /**
         * Sets the step that embedments are rounded up to; 1 in if not set.
         *
         * @param newIncrement the increment, over 0, to 12 in
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder roundUpTo(Length newIncrement) {
            this.increment = Limits.overZero("newIncrement", newIncrement, COARSEST);
            return this;
        }

        /**
         * Sets how wide the round hole is; three posts wide if not set.
         *
         * @param diameter the diameter, over the post's diagonal, to 10 ft
         * @return this builder
         * @throws IllegalArgumentException if not over 0 or over 10 ft
         */
        public Builder holeDiameter(Length diameter) {
            this.holeDiameter = Limits.overZero("holeDiameter", diameter, WIDEST_HOLE);
            return this;
        }

        /**
         * Sets how thick the gravel under the post is; 6 in if not set.
         *
         * @param thickness the thickness, 0 for none, to 4 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder gravelBase(Length thickness) {
            this.gravelBase = Limits.within("gravelBase", thickness, Length.ZERO, THICKEST_GRAVEL);
            return this;
        }

        /**
         * Sets how far above grade the concrete ends; flush if not set.
         *
         * @param aboveGrade the height: over 0 for concrete crowned to shed water, under 0 for concrete stopped below
         *     grade, within 2 ft of grade
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder concreteTop(Length aboveGrade) {
            this.concreteTop = Limits.within("concreteTop", aboveGrade, FARTHEST_TOP.negated(), FARTHEST_TOP);
            return this;
        }

        /**
         * Returns the options.
         *
         * @return the options
         * @throws IllegalArgumentException if the height above grade was not set, the post does not fit in its hole, or
         *     the concrete ends above the post or below the least embedment
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
