package org.fencecore.gate;

import java.util.Objects;
import org.fencecore.internal.Limits;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How gates are made: the gaps beside the leaf, how its frame is joined and of what lumber, and how it is braced.
 *
 * <p>What is not said is made as usual: a hinge gap of 1/2 in, a latch gap of 1/4 in and 1/2 in between two leaves, no
 * build-out on the posts, rails butted between stiles, stiles, rails and braces of 3 1/2 by 1 1/2 in (a dressed 2x4), no
 * middle rail, a wood brace pointed at both ends, and a leaf up to 4 ft wide and boards up to 1 ft above its frame held
 * reasonable. All of these are common
 * practice without a source; the hinges and the latch that are bought decide their gaps.
 *
 * <p>Every size is over 0 and no more than 100 ft; build-outs may be 0. All frame pieces are of one size.
 *
 * <p>Example: a frame of 5 1/2 in lumber with a middle rail and the usual gaps.
 *
 * <pre>{@code
 * GateSpec spec = GateSpec.builder().memberWidth(Length.ofInches(5.5)).middleRail(true).build();
 * spec.minimumOpening();   // 15 1/4 in
 * spec.minimumHeight();    // 23 1/2 in
 * }</pre>
 */
public final class GateSpec {

    static final Length LARGEST = Length.ofFeet(100);

    private final Length hingeGap;
    private final Length latchGap;
    private final Length centreGap;
    private final Length hingeBuildOut;
    private final Length latchBuildOut;
    private final FrameJoint joint;
    private final Length memberWidth;
    private final Length memberThickness;
    private final boolean middleRail;
    private final BraceKind braceKind;
    private final BraceEnds braceEnds;
    private final boolean braceReversed;
    private final Length braceWidth;
    private final Length reasonableLeafWidth;
    private final Length reasonableOverhang;

    private GateSpec(Builder from) {
        this.hingeGap = from.hingeGap;
        this.latchGap = from.latchGap;
        this.centreGap = from.centreGap;
        this.hingeBuildOut = from.hingeBuildOut;
        this.latchBuildOut = from.latchBuildOut;
        this.joint = from.joint;
        this.memberWidth = from.memberWidth;
        this.memberThickness = from.memberThickness;
        this.middleRail = from.middleRail;
        this.braceKind = from.braceKind;
        this.braceEnds = from.braceEnds;
        this.braceReversed = from.braceReversed;
        this.braceWidth = from.braceWidth;
        this.reasonableLeafWidth = from.reasonableLeafWidth;
        this.reasonableOverhang = from.reasonableOverhang;
    }

    /**
     * Starts from the usual gate.
     *
     * @return a builder with the sizes named above
     */
    public static Builder builder() {
        return new Builder();
    }

    static Length requireSize(String name, Length value) {
        return Limits.overZero(name, value, LARGEST);
    }

    private static Length requireSizeOrZero(String name, Length value) {
        return Objects.requireNonNull(value, name).isZero() ? value : requireSize(name, value);
    }

    /**
     * Returns the gap between the hinge post, or what is built out from it, and the leaf.
     *
     * @return the gap
     */
    public Length hingeGap() {
        return hingeGap;
    }

    /**
     * Returns the gap between the leaf and the latch post, or what is built out from it.
     *
     * @return the gap
     */
    public Length latchGap() {
        return latchGap;
    }

    /**
     * Returns the gap between two leaves.
     *
     * @return the gap
     */
    public Length centreGap() {
        return centreGap;
    }

    /**
     * Returns how far lumber fixed to the hinge post for the hinges narrows the opening.
     *
     * @return its thickness, zero for none; at both posts when there are two leaves
     */
    public Length hingeBuildOut() {
        return hingeBuildOut;
    }

    /**
     * Returns how far lumber fixed to the latch post as a stop or for the latch narrows the opening.
     *
     * @return its thickness, zero for none
     */
    public Length latchBuildOut() {
        return latchBuildOut;
    }

    /**
     * Returns how stiles and rails meet at the corners.
     *
     * @return the joint
     */
    public FrameJoint joint() {
        return joint;
    }

    /**
     * Returns how wide stiles and rails are, seen from outside.
     *
     * @return the width of the lumber
     */
    public Length memberWidth() {
        return memberWidth;
    }

    /**
     * Returns how thick stiles, rails and braces are, from front to back.
     *
     * @return the thickness of the lumber
     */
    public Length memberThickness() {
        return memberThickness;
    }

    /**
     * Tells whether a rail at half height divides the frame; each half then has its own brace, if that is of wood.
     *
     * @return true if there is a middle rail
     */
    public boolean hasMiddleRail() {
        return middleRail;
    }

    /**
     * Returns what holds up the latch side.
     *
     * @return a wood brace or a cable
     */
    public BraceKind braceKind() {
        return braceKind;
    }

    /**
     * Returns how the ends of a wood brace are cut.
     *
     * @return the cuts
     */
    public BraceEnds braceEnds() {
        return braceEnds;
    }

    /**
     * Tells whether the brace is wanted the wrong way round, which is a finding.
     *
     * @return true if wood rises to the hinges, or a cable to the latch
     */
    public boolean isBraceReversed() {
        return braceReversed;
    }

    /**
     * Returns how wide the brace is, seen from outside.
     *
     * @return the width of the lumber
     */
    public Length braceWidth() {
        return braceWidth;
    }

    /**
     * Returns the widest leaf that gets no warning.
     *
     * @return the width
     */
    public Length reasonableLeafWidth() {
        return reasonableLeafWidth;
    }

    /**
     * Returns how far boards stand above the frame without a warning.
     *
     * @return the height over the top of the top rail
     */
    public Length reasonableOverhang() {
        return reasonableOverhang;
    }

    /**
     * Returns the clear opening from which on there is room for rails and brace in one leaf: both gaps and build-outs,
     * two stiles and the width of a brace.
     *
     * <p>A level gate at least this wide in an opening, and at least {@link #minimumHeight} high, never has a blocker: in a
     * clear space with both sides no less than the brace's width the brace always fits. Smaller gates may still do;
     * their findings tell.
     *
     * @return the smallest opening that is sure to take a gate
     */
    public Length minimumOpening() {
        return gaps().plus(stiles()).plus(braceWidth);
    }

    /**
     * Returns the clear opening from which on there is room for two leaves: the gaps, and twice two stiles and the width
     * of a brace.
     *
     * @return the smallest opening that is sure to take two leaves
     * @see #minimumOpening
     */
    public Length minimumPairOpening() {
        return pairGaps().plus(stiles().plus(braceWidth).times(2));
    }

    /**
     * Returns the frame height from which on there is room for rails and braces: two rails and the width of a brace, or
     * three rails and two widths of a brace.
     *
     * @return the smallest frame height that is sure to take a gate
     * @see #minimumOpening
     */
    public Length minimumHeight() {
        return rails().plus(braceWidth.times(middleRail ? 2 : 1));
    }

    /**
     * Returns how far the hinge edge of a leaf is from the face of its post.
     *
     * @return hinge build-out and hinge gap
     */
    public Length besideHinges() {
        return hingeBuildOut.plus(hingeGap);
    }

    /**
     * Returns what gaps and build-outs take of an opening with one leaf, which must be wider.
     *
     * @return hinge and latch gap and both build-outs
     */
    public Length gaps() {
        return besideHinges().plus(latchGap).plus(latchBuildOut);
    }

    /**
     * Returns how much of an opening is taken up by what is beside and between two leaves.
     *
     * @return the hinge gap and hinge build-out twice, and the centre gap
     */
    public Length pairGaps() {
        return besideHinges().times(2).plus(centreGap);
    }

    /** What the stiles take of the width of the leaf. */
    Length stiles() {
        return memberWidth.times(2);
    }

    /** What the rails take of the height of the frame. */
    Length rails() {
        return memberWidth.times(middleRail ? 3 : 2);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GateSpec that
                && hingeGap.equals(that.hingeGap)
                && latchGap.equals(that.latchGap)
                && centreGap.equals(that.centreGap)
                && hingeBuildOut.equals(that.hingeBuildOut)
                && latchBuildOut.equals(that.latchBuildOut)
                && joint == that.joint
                && memberWidth.equals(that.memberWidth)
                && memberThickness.equals(that.memberThickness)
                && middleRail == that.middleRail
                && braceKind == that.braceKind
                && braceEnds == that.braceEnds
                && braceReversed == that.braceReversed
                && braceWidth.equals(that.braceWidth)
                && reasonableLeafWidth.equals(that.reasonableLeafWidth)
                && reasonableOverhang.equals(that.reasonableOverhang);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                hingeGap,
                latchGap,
                centreGap,
                hingeBuildOut,
                latchBuildOut,
                joint,
                memberWidth,
                memberThickness,
                middleRail,
                braceKind,
                braceEnds,
                braceReversed,
                braceWidth,
                reasonableLeafWidth,
                reasonableOverhang);
    }

    @Override
    public String toString() {
        return "gate with gaps of " + Written.tape(hingeGap) + " at the hinges and " + Written.tape(latchGap)
                + " at the latch, frame of " + Written.tape(memberWidth) + " x " + Written.tape(memberThickness)
                + " " + joint + ", " + (middleRail ? "a" : "no") + " middle rail, "
                + (braceKind == BraceKind.CABLE
                        ? "a cable"
                        : "brace " + Written.tape(braceWidth) + " wide and " + braceEnds)
                + ", leaf reasonable to " + Written.tape(reasonableLeafWidth);
    }

    /** Collects how gates are made, starting from the usual. */
    public static final class Builder {

        private Length hingeGap = Length.ofInches(0.5);
        private Length latchGap = Length.ofInches(0.25);
        private Length centreGap = Length.ofInches(0.5);
        private Length hingeBuildOut = Length.ZERO;
        private Length latchBuildOut = Length.ZERO;
        private FrameJoint joint = FrameJoint.RAILS_BETWEEN_STILES;
        private Length memberWidth = Length.ofInches(3.5);
        private Length memberThickness = Length.ofInches(1.5);
        private boolean middleRail = false;
        private BraceKind braceKind = BraceKind.WOOD;
        private BraceEnds braceEnds = BraceEnds.POINTS;
        private boolean braceReversed = false;
        private Length braceWidth = Length.ofInches(3.5);
        private Length reasonableLeafWidth = Length.ofFeet(4);
        private Length reasonableOverhang = Length.ofFeet(1);

        private Builder() {}

        /**
         * Sets the gap between the hinge post and the leaf; 1/2 in if not set.
         *
         * @param gap the gap, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder hingeGap(Length gap) {
            this.hingeGap = requireSize("hingeGap", gap);
            return this;
        }

        /**
         * Sets the gap between the leaf and the latch post; 1/4 in if not set.
         *
         * @param gap the gap, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder latchGap(Length gap) {
            this.latchGap = requireSize("latchGap", gap);
            return this;
        }

        /**
         * Sets the gap between two leaves; 1/2 in if not set.
         *
         * @param gap the gap, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder centreGap(Length gap) {
            this.centreGap = requireSize("centreGap", gap);
            return this;
        }

        /**
         * Sets how far lumber fixed to the hinge post narrows the opening; nothing if not set.
         *
         * @param thickness its thickness, 0 to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder hingeBuildOut(Length thickness) {
            this.hingeBuildOut = requireSizeOrZero("hingeBuildOut", thickness);
            return this;
        }

        /**
         * Sets how far lumber fixed to the latch post narrows the opening; nothing if not set.
         *
         * @param thickness its thickness, 0 to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder latchBuildOut(Length thickness) {
            this.latchBuildOut = requireSizeOrZero("latchBuildOut", thickness);
            return this;
        }

        /**
         * Sets how stiles and rails meet; rails butt between stiles if not set.
         *
         * @param newJoint the joint
         * @return this builder
         */
        public Builder joint(FrameJoint newJoint) {
            this.joint = Objects.requireNonNull(newJoint, "newJoint");
            return this;
        }

        /**
         * Sets how wide stiles and rails are, seen from outside; 3 1/2 in if not set.
         *
         * @param width the width of the lumber, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder memberWidth(Length width) {
            this.memberWidth = requireSize("memberWidth", width);
            return this;
        }

        /**
         * Sets how thick stiles, rails and braces are, from front to back; 1 1/2 in if not set.
         *
         * @param thickness the thickness of the lumber, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder memberThickness(Length thickness) {
            this.memberThickness = requireSize("memberThickness", thickness);
            return this;
        }

        /**
         * Sets whether a rail at half height divides the frame; there is none if not set.
         *
         * @param present true for a middle rail
         * @return this builder
         */
        public Builder middleRail(boolean present) {
            this.middleRail = present;
            return this;
        }

        /**
         * Sets what holds up the latch side; a wood brace if not set.
         *
         * @param kind a wood brace or a cable
         * @return this builder
         */
        public Builder braceKind(BraceKind kind) {
            this.braceKind = Objects.requireNonNull(kind, "kind");
            return this;
        }

        /**
         * Sets how the ends of a wood brace are cut; pointed if not set.
         *
         * @param ends the cuts
         * @return this builder
         */
        public Builder braceEnds(BraceEnds ends) {
            this.braceEnds = Objects.requireNonNull(ends, "ends");
            return this;
        }

        /**
         * Sets that the brace runs the wrong way round, as in a gate that stands so and is to be judged.
         *
         * @param reversed true for wood that rises to the hinges or a cable that rises to the latch
         * @return this builder
         */
        public Builder braceReversed(boolean reversed) {
            this.braceReversed = reversed;
            return this;
        }

        /**
         * Sets how wide the brace is, seen from outside; 3 1/2 in if not set.
         *
         * @param width the width of the lumber, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder braceWidth(Length width) {
            this.braceWidth = requireSize("braceWidth", width);
            return this;
        }

        /**
         * Sets the widest leaf that gets no warning; 4 ft if not set.
         *
         * @param width the width, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder reasonableLeafWidth(Length width) {
            this.reasonableLeafWidth = requireSize("reasonableLeafWidth", width);
            return this;
        }

        /**
         * Sets how far boards stand above the frame without a warning; 1 ft if not set.
         *
         * @param height the height over the top of the top rail, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder reasonableOverhang(Length height) {
            this.reasonableOverhang = requireSize("reasonableOverhang", height);
            return this;
        }

        /**
         * Returns the spec.
         *
         * @return the spec
         */
        public GateSpec build() {
            return new GateSpec(this);
        }
    }
}
