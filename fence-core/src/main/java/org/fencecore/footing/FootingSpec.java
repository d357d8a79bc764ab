package org.fencecore.footing;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Rounding;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How a fence post is set: the post, the ground it stands in, and the hole it is set in.
 *
 * <p>The post is square and stands on a base of gravel in a round hole, with concrete around it from the base up; a square,
 * tapered or belled {@link HoleShape} and a base of dry mix can be asked for. What is
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
 * <tr><td>below the frost line</td><td>0 in</td><td>common practice, no source</td></tr>
 * <tr><td>ASTM F567 minimum</td><td>no</td><td>ASTM F567-07</td></tr>
 * <tr><td>held at grade</td><td>no</td><td>IBC 2018, section 1807.3.2.2</td></tr>
 * <tr><td>crown</td><td>level</td><td>common practice, no source</td></tr>
 * <tr><td>frost grip</td><td>65 kPa in class 5</td><td>Canadian Foundation Engineering Manual, from memory</td></tr>
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

    /** Canadian Foundation Engineering Manual, fine soil frozen to wood or concrete; from memory. */
    private static final Pressure FINE_SOIL_GRIP = Pressure.ofPascals(65_000);

    private final Length postWidth;
    private final Length exposedHeight;
    private final SoilClass soil;
    private final boolean doubledBearing;
    private final @Nullable Length frostDepth;
    private final Length minimumEmbedment;
    private final boolean thirdOfPostInGround;
    private final Length increment;
    private final Length belowFrostLine;
    private final boolean fenceStandardMinimum;
    private final boolean heldAtGrade;
    private final HoleShape hole;
    private final Length base;
    private final boolean dryMixBase;
    private final Length concreteTop;
    private final Length crown;
    private final @Nullable Pressure frostGrip;

    private FootingSpec(Builder from, Length exposedHeight) {
        this.postWidth = from.postWidth;
        this.exposedHeight = exposedHeight;
        this.soil = from.soil;
        this.doubledBearing = from.doubledBearing;
        this.frostDepth = from.frostDepth;
        this.minimumEmbedment = from.minimumEmbedment;
        this.thirdOfPostInGround = from.thirdOfPostInGround;
        this.increment = from.increment;
        this.belowFrostLine = from.belowFrostLine;
        this.fenceStandardMinimum = from.fenceStandardMinimum;
        this.heldAtGrade = from.heldAtGrade;
        this.hole = from.hole == null ? HoleShape.round(postWidth.times(3)) : from.hole;
        this.base = from.base;
        this.dryMixBase = from.dryMixBase;
        this.concreteTop = from.concreteTop;
        this.crown = from.crown;
        this.frostGrip = from.frostGrip;
        if (!hole.takes(postWidth)) {
            throw new IllegalArgumentException("holeDiameter was " + hole.width()
                    + " for a post with a diagonal of " + postDiagonal()
                    + "; the post must fit in its hole, so use a wider hole or check the unit of either");
        }
        if (concreteTop.plus(crown).compareTo(exposedHeight) >= 0
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
     * Returns how far below the frost line the bottom of the concrete has to be.
     *
     * @return the depth below it, zero to end at it
     */
    public Length belowFrostLine() {
        return belowFrostLine;
    }

    /**
     * Tells whether the least depth of the standard for chain-link fences is followed.
     *
     * @return true if so
     */
    public boolean fenceStandardMinimum() {
        return fenceStandardMinimum;
    }

    /**
     * Tells whether a slab or paving holds the post at grade.
     *
     * @return true if held
     */
    public boolean heldAtGrade() {
        return heldAtGrade;
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
     * Returns how thick the base under the post is.
     *
     * @return the thickness, zero for none
     */
    public Length base() {
        return base;
    }

    /**
     * Tells whether the base is dry concrete mix rather than gravel.
     *
     * @return true for dry mix
     */
    public boolean isDryMixBase() {
        return dryMixBase;
    }

    /**
     * Returns how thick the gravel under the post is.
     *
     * @return the thickness, zero for none
     */
    public Length gravelBase() {
        return dryMixBase ? Length.ZERO : base;
    }

    /**
     * Returns how far the concrete rises from the edge of the hole to the post, to shed water.
     *
     * @return the rise, zero if level
     */
    public Length crown() {
        return crown;
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

    /** The lateral bearing that is counted on. */
    UnitWeight bearing() {
        return doubledBearing ? soil.lateralBearing().times(2) : soil.lateralBearing();
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
                && belowFrostLine.equals(that.belowFrostLine)
                && fenceStandardMinimum == that.fenceStandardMinimum
                && heldAtGrade == that.heldAtGrade
                && hole.equals(that.hole)
                && base.equals(that.base)
                && dryMixBase == that.dryMixBase
                && concreteTop.equals(that.concreteTop)
                && crown.equals(that.crown)
                && Objects.equals(frostGrip, that.frostGrip);
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
                belowFrostLine,
                fenceStandardMinimum,
                heldAtGrade,
                hole,
                base,
                dryMixBase,
                concreteTop,
                crown,
                frostGrip);
    }

    @Override
    public String toString() {
        return "post " + Written.tape(postWidth) + " wide standing " + Written.tape(exposedHeight)
                + " out of the ground, in " + soil + (doubledBearing ? " doubled" : "") + ", frost "
                + (frostDepth == null ? "not known" : Written.tape(frostDepth)) + ", hole " + hole
                + (dryMixBase ? ", dry mix " : ", gravel ") + Written.tape(base) + ", concrete to "
                + Written.tape(concreteTop) + " above grade"
                + (crown.isZero() ? "" : " and crowned by " + Written.tape(crown));
    }

    /** Collects how a post is set, starting from the usual. */
    public static final class Builder {

        private static final Length LEAST_POST = Length.ofInches(1);
        private static final Length WIDEST_POST = Length.ofInches(24);
        private static final Length HIGHEST = Length.ofFeet(100);
        private static final Length DEEPEST = Length.ofFeet(20);
        private static final Length THICKEST_BASE = Length.ofFeet(4);
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
        private Length belowFrostLine = Length.ZERO;
        private boolean fenceStandardMinimum;
        private boolean heldAtGrade;
        private @Nullable HoleShape hole;
        private Length base = Length.ofInches(6);
        private boolean dryMixBase;
        private Length concreteTop = Length.ZERO;
        private Length crown = Length.ZERO;
        private @Nullable Pressure frostGrip;

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
            this.belowFrostLine = from.belowFrostLine;
            this.fenceStandardMinimum = from.fenceStandardMinimum;
            this.heldAtGrade = from.heldAtGrade;
            this.hole = from.hole;
            this.base = from.base;
            this.dryMixBase = from.dryMixBase;
            this.concreteTop = from.concreteTop;
            this.crown = from.crown;
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
         * Sets how far below the frost line the bottom of the concrete has to be, as holes are often dug to just below
         * it; at the line if not set.
         *
         * @param depth the depth below the frost line, from 0 to 20 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder belowFrostLine(Length depth) {
            this.belowFrostLine = Limits.within("depth", depth, Length.ZERO, DEEPEST);
            return this;
        }

        /**
         * Sets whether to follow the least depth that ASTM F567 has for chain-link posts: 24 in, and 3 in more for each
         * foot of fence over 4 ft; not if not set.
         *
         * @param wanted true to follow it
         * @return this builder
         */
        public Builder fenceStandardMinimum(boolean wanted) {
            this.fenceStandardMinimum = wanted;
            return this;
        }

        /**
         * Sets whether a slab or paving around it holds the post at grade, so that it needs less depth; not if not set.
         *
         * @param held true if held, by something that stays
         * @return this builder
         */
        public Builder heldAtGrade(boolean held) {
            this.heldAtGrade = held;
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
            return hole(HoleShape.round(diameter));
        }

        /**
         * Sets the shape of the hole; round and three posts wide if not set.
         *
         * @param shape the shape, which must take the post
         * @return this builder
         */
        public Builder hole(HoleShape shape) {
            this.hole = Objects.requireNonNull(shape, "shape");
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
            this.base = Limits.within("gravelBase", thickness, Length.ZERO, THICKEST_BASE);
            this.dryMixBase = false;
            return this;
        }

        /**
         * Sets a base of dry concrete mix under the post in place of gravel.
         *
         * @param thickness the thickness, over 0, to 4 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder dryMixBase(Length thickness) {
            this.base = Limits.overZero("thickness", thickness, THICKEST_BASE);
            this.dryMixBase = true;
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
         * Sets how far the concrete rises from the edge of the hole to the post, so that water runs off; level if not
         * set. With {@link #concreteTop} below grade it is sloped away under the soil, with it at grade or above it is
         * crowned.
         *
         * @param rise the rise, from 0 to 12 in
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder crown(Length rise) {
            this.crown = Limits.within("rise", rise, Length.ZERO, COARSEST);
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
