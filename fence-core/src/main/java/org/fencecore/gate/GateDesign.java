package org.fencecore.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.jspecify.annotations.Nullable;

/**
 * A gate worked out for an opening: one leaf, or two of the same width that meet in the middle.
 *
 * <pre>
 * one leaf    width = clear opening - hinge build-out - hinge gap - latch gap - latch build-out
 * two leaves  width = (clear opening - 2 x (hinge build-out + hinge gap) - centre gap) / 2
 * </pre>
 *
 * <p>Of two leaves one is active, which is the one that people open; the other is fixed by a rod into the ground and
 * carries the strike of the latch. An odd nanometre goes to the active leaf. A raked gate follows sloping ground: its
 * stiles stand plumb and its rails rise like the fence beside it.
 *
 * <p>What does not work is told by {@link #findings}. The design is complete as far as it goes; pieces and braces that
 * cannot be made are left out.
 *
 * <p>Left out here: weight, hinges and the ground under the swing, which have a package of their own, and boards or
 * pickets, which are laid out over {@link GateLeaf#width} like any other opening.
 *
 * <p>Source: common practice, no source. Example: an opening of 47 1/2 in with the usual gaps takes a leaf of 46 3/4 in;
 * one of 96 in takes two of 47 1/4 in. See the package for the calls.
 */
public final class GateDesign {

    /** The steepest grade a gate is raked to: 1 in 1. */
    public static final Slope STEEPEST_RAKE = Slope.ofPercent(100);

    private final Length clearOpening;
    private final Length frameHeight;
    private final HingeSide active;
    private final boolean paired;
    private final Slope rake;
    private final GateSpec spec;

    private GateDesign(
            Length clearOpening, Length frameHeight, HingeSide active, boolean paired, Slope rake, GateSpec spec) {
        this.clearOpening = clearOpening;
        this.frameHeight = frameHeight;
        this.active = active;
        this.paired = paired;
        this.rake = rake;
        this.spec = spec;
    }

    /**
     * Works out one leaf for an opening.
     *
     * <p>Openings of at least {@link GateSpec#minimumOpening} and heights of at least {@link GateSpec#minimumHeight}, no
     * more than 100 ft, are never refused and never blocked.
     *
     * @param clearOpening the level distance between the faces of the hinge post and the latch post, wider than both
     *     gaps and build-outs together, to 100 ft
     * @param frameHeight the height of the frame, plumb: its top less its bottom, over 0, to 100 ft
     * @param hingeSide the side it hangs on, seen from outside
     * @param spec how it is made
     * @return the design, with its findings
     * @throws IllegalArgumentException if {@code clearOpening} or {@code frameHeight} is out of its range
     */
    public static GateDesign forOpening(Length clearOpening, Length frameHeight, HingeSide hingeSide, GateSpec spec) {
        Objects.requireNonNull(hingeSide, "hingeSide");
        requireRoom(
                clearOpening,
                frameHeight,
                spec.gaps(),
                "the hinge gap and the latch gap together, ",
                spec.minimumOpening());
        return new GateDesign(clearOpening, frameHeight, hingeSide, false, Slope.LEVEL, spec);
    }

    /**
     * Works out two leaves for an opening, each hung on its own post.
     *
     * <p>Openings of at least {@link GateSpec#minimumPairOpening} and heights of at least
     * {@link GateSpec#minimumHeight}, no more than 100 ft, are never refused and never blocked.
     *
     * @param clearOpening the level distance between the faces of the two hinge posts, wider than the gaps together, to
     *     100 ft
     * @param frameHeight the height of the frames, plumb: their top less their bottom, over 0, to 100 ft
     * @param active the side the active leaf hangs on, seen from outside
     * @param spec how they are made
     * @return the design, with its findings
     * @throws IllegalArgumentException if {@code clearOpening} or {@code frameHeight} is out of its range
     */
    public static GateDesign pairForOpening(Length clearOpening, Length frameHeight, HingeSide active, GateSpec spec) {
        Objects.requireNonNull(active, "active");
        // Each leaf needs a nanometre.
        Length least = spec.pairGaps().plus(Length.ofNanometres(1));
        requireRoom(
                clearOpening,
                frameHeight,
                least,
                "the gaps beside and between two leaves together, ",
                spec.minimumPairOpening());
        return new GateDesign(clearOpening, frameHeight, active, true, Slope.LEVEL, spec);
    }

    private static void requireRoom(Length clearOpening, Length frameHeight, Length gaps, String what, Length sure) {
        GateSpec.requireSize("clearOpening", clearOpening);
        GateSpec.requireSize("frameHeight", frameHeight);
        if (clearOpening.compareTo(gaps) <= 0) {
            throw new IllegalArgumentException("clearOpening was " + clearOpening + "; it must be over " + what + gaps
                    + ", to leave room for a leaf, and is sure to do from " + sure
                    + "; check its unit, or set smaller gaps");
        }
    }

    /**
     * Returns this gate raked to sloping ground, so that the fence's top and bottom lines run through it.
     *
     * @param risingRight the grade of its rails, from left to right seen from outside, 100 % at most either way
     * @return the gate with that rake
     * @throws IllegalArgumentException if steeper than that
     */
    public GateDesign withRake(Slope risingRight) {
        if (risingRight.abs().compareTo(STEEPEST_RAKE) > 0) {
            throw new IllegalArgumentException("risingRight was " + risingRight
                    + "; it must be from -100 % to 100 %, so hang the gate level or move it to flatter ground");
        }
        return new GateDesign(clearOpening, frameHeight, active, paired, risingRight, spec);
    }

    /**
     * Returns the opening.
     *
     * @return the level distance between the posts
     */
    public Length clearOpening() {
        return clearOpening;
    }

    /**
     * Returns the plumb height of each frame.
     *
     * @return the height
     */
    public Length frameHeight() {
        return frameHeight;
    }

    /**
     * Returns how its rails rise, from left to right seen from outside.
     *
     * @return the grade, level unless raked
     */
    public Slope rake() {
        return rake;
    }

    /**
     * Returns how it is made.
     *
     * @return the spec
     */
    public GateSpec spec() {
        return spec;
    }

    /**
     * Tells whether there are two leaves.
     *
     * @return true for two
     */
    public boolean isPair() {
        return paired;
    }

    /**
     * Returns the leaves from left to right, seen from outside.
     *
     * @return one or two leaves, unmodifiable
     */
    public List<GateLeaf> leaves() {
        if (!paired) {
            Length left = active == HingeSide.LEFT
                    ? spec.besideHinges()
                    : spec.latchBuildOut().plus(spec.latchGap());
            return List.of(leaf(active, left, clearOpening.minus(spec.gaps())));
        }
        Length both = clearOpening.minus(spec.pairGaps());
        Length smaller = both.portion(1, 2);
        Length leftWidth = active == HingeSide.LEFT ? both.minus(smaller) : smaller;
        Length rightStart = spec.besideHinges().plus(leftWidth).plus(spec.centreGap());
        return List.of(
                leaf(HingeSide.LEFT, spec.besideHinges(), leftWidth),
                leaf(HingeSide.RIGHT, rightStart, both.minus(leftWidth)));
    }

    private GateLeaf leaf(HingeSide hinges, Length left, Length width) {
        return new GateLeaf(clearOpening, paired, Interval.of(left, left.plus(width)), frameHeight, hinges, rake, spec);
    }

    /**
     * Returns the leaf that people open: the only one, or the active one of two.
     *
     * @return the leaf
     */
    public GateLeaf activeLeaf() {
        return leaves().get(paired && active == HingeSide.RIGHT ? 1 : 0);
    }

    /**
     * Returns the leaf that is held by a rod into the ground.
     *
     * @return the other one of two; empty if there is one
     */
    public Optional<GateLeaf> fixedLeaf() {
        return paired ? Optional.of(leaves().get(active == HingeSide.RIGHT ? 0 : 1)) : Optional.empty();
    }

    /**
     * Returns everything a builder should know about this design: blockers {@code gate-leaf-narrow},
     * {@code gate-frame-low}, {@code gate-brace-wide} and {@code gate-brace-falls}, warnings {@code gate-leaf-wide},
     * {@code gate-brace-flat} and {@code gate-brace-wrong-way}. Of two leaves alike, each is told once.
     *
     * @return the findings, unmodifiable; none if all is well
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (GateLeaf leaf : leaves()) {
            for (Finding finding : leaf.findings()) {
                if (!paired) {
                    findings.add(finding);
                } else if (!findings.contains(finding.within("each leaf"))) {
                    findings.add(finding.within("each leaf"));
                }
            }
        }
        return List.copyOf(findings);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GateDesign that
                && clearOpening.equals(that.clearOpening)
                && frameHeight.equals(that.frameHeight)
                && active == that.active
                && paired == that.paired
                && rake.equals(that.rake)
                && spec.equals(that.spec);
    }

    @Override
    public int hashCode() {
        return Objects.hash(clearOpening, frameHeight, active, paired, rake, spec);
    }

    @Override
    public String toString() {
        return paired
                ? "two leaves: " + leaves().get(0) + "; " + leaves().get(1)
                : activeLeaf().toString();
    }
}
