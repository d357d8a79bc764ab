package org.fencecore.footing;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.internal.Limits;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How posts are set, whatever ground they stand in: the hole, what fills it, and the rules for how deep they go at least.
 *
 * <p>Posts stand on a base of gravel in a round hole, with concrete around them from the base up. What is not said is
 * taken as follows.
 *
 * <table>
 * <caption>What is taken if not said</caption>
 * <tr><th scope="col">option</th><th scope="col">taken</th><th scope="col">source</th></tr>
 * <tr><td>least embedment</td><td>24 in</td><td>USDA NRCS Conservation Practice Standard 382, Kentucky 2007</td></tr>
 * <tr><td>third of the post in the ground</td><td>yes</td><td>common practice, no source</td></tr>
 * <tr><td>ASTM F567 minimum</td><td>no</td><td>ASTM F567-07</td></tr>
 * <tr><td>below the frost line</td><td>0 in</td><td>common practice, no source</td></tr>
 * <tr><td>embedment rounded up to</td><td>1 in</td><td>common practice, no source</td></tr>
 * <tr><td>held at grade</td><td>no</td><td>IBC 2018, section 1807.3.2.2</td></tr>
 * <tr><td>hole</td><td>round, three posts wide</td><td>common practice, no source</td></tr>
 * <tr><td>base</td><td>6 in of gravel</td><td>common practice, no source</td></tr>
 * <tr><td>top of the concrete</td><td>flush with grade</td><td>common practice, no source</td></tr>
 * <tr><td>crown</td><td>level</td><td>common practice, no source</td></tr>
 * </table>
 *
 * <p>Example: holes 12 in wide, dug 2 in below the frost line, the concrete sloped away under 2 in of soil.
 *
 * <pre>{@code
 * PostSetting setting = PostSetting.builder()
 *         .holeDiameter(Length.ofInches(12))
 *         .belowFrostLine(Length.ofInches(2))
 *         .concreteTop(Length.ofInches(-2))
 *         .crown(Length.ofInches(1))
 *         .build();
 * setting.holeFor(Length.ofInches(3.5));   // 1' 0" wide
 * }</pre>
 */
public final class PostSetting {

    static final Length USUAL_MINIMUM = Length.ofInches(24);

    private final Length minimumEmbedment;
    private final boolean thirdOfPostInGround;
    private final Length increment;
    private final Length belowFrostLine;
    private final boolean fenceStandardMinimum;
    private final boolean heldAtGrade;
    private final @Nullable HoleShape hole;
    private final Length base;
    private final boolean dryMixBase;
    private final Length concreteTop;
    private final Length crown;

    private PostSetting(Builder from) {
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
    }

    /**
     * Starts from the usual setting.
     *
     * @return a builder with the values named above
     */
    public static Builder builder() {
        return new Builder();
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
    public boolean hasThirdOfPostInGround() {
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
    public boolean hasFenceStandardMinimum() {
        return fenceStandardMinimum;
    }

    /**
     * Tells whether a slab or paving holds the post at grade.
     *
     * @return true if held
     */
    public boolean isHeldAtGrade() {
        return heldAtGrade;
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
     * Returns how far the concrete rises from the edge of the hole to the post, to shed water.
     *
     * @return the rise, zero if level
     */
    public Length crown() {
        return crown;
    }

    /**
     * Returns how far above grade the concrete ends.
     *
     * @return the height, zero if flush, negative if it ends below grade
     */
    public Length concreteTop() {
        return concreteTop;
    }

    /**
     * Returns the shape of the hole.
     *
     * @return the shape; empty for a round one three posts wide
     */
    public Optional<HoleShape> hole() {
        return Optional.ofNullable(hole);
    }

    /**
     * Returns the hole that a post is set in.
     *
     * @param postWidth the width of the square post
     * @return the shape that was set, else a round one three posts wide
     * @throws IllegalArgumentException if the post does not fit in it
     */
    public HoleShape holeFor(Length postWidth) {
        HoleShape shape = hole == null ? HoleShape.round(postWidth.times(3)) : hole;
        if (!shape.takes(postWidth)) {
            throw new IllegalArgumentException("postWidth was " + postWidth
                    + (shape.isSquare()
                            ? ""
                            : ", " + Written.tape(Length.ofMetres(postWidth.metres() * Math.sqrt(2)), Rounding.UP)
                                    + " across its corners")
                    + "; the post must fit in its hole, " + Length.min(shape.width(), shape.bottomWidth())
                    + " wide, so use a wider hole or check the unit of either");
        }
        return shape;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PostSetting that
                && minimumEmbedment.equals(that.minimumEmbedment)
                && thirdOfPostInGround == that.thirdOfPostInGround
                && increment.equals(that.increment)
                && belowFrostLine.equals(that.belowFrostLine)
                && fenceStandardMinimum == that.fenceStandardMinimum
                && heldAtGrade == that.heldAtGrade
                && Objects.equals(hole, that.hole)
                && base.equals(that.base)
                && dryMixBase == that.dryMixBase
                && concreteTop.equals(that.concreteTop)
                && crown.equals(that.crown);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
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
                crown);
    }

    @Override
    public String toString() {
        return (hole == null ? "hole three posts wide" : "hole " + hole) + (dryMixBase ? ", dry mix " : ", gravel ")
                + Written.tape(base) + ", concrete to " + Written.tape(concreteTop) + " above grade"
                + (crown.isZero() ? "" : " and crowned by " + Written.tape(crown));
    }

    /** Collects how posts are set, starting from the usual. */
    public static final class Builder {

        private static final Length DEEPEST = Length.ofFeet(20);
        private static final Length THICKEST_BASE = Length.ofFeet(4);
        private static final Length FARTHEST_TOP = Length.ofFeet(2);
        private static final Length COARSEST = Length.ofInches(12);

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

        private Builder() {}

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
         * @param diameter the diameter, over 0, to 10 ft, and over the post's diagonal
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
         * Returns the setting.
         *
         * @return the setting
         * @throws IllegalArgumentException if the concrete would end below the least embedment
         */
        public PostSetting build() {
            if (!concreteTop.plus(minimumEmbedment).isPositive()) {
                throw new IllegalArgumentException("concreteTop was " + concreteTop
                        + " above grade; it must be above the least embedment, " + minimumEmbedment.negated()
                        + ", so check its sign");
            }
            return new PostSetting(this);
        }
    }
}
