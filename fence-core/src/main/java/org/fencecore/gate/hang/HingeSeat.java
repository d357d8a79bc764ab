package org.fencecore.gate.hang;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * The wood behind one hinge of a leaf: whether its screws find a rail or stile, need an infill block, or would go into
 * the end of a rail.
 *
 * <p>A strap lies level on the face of the leaf, square to its pin, for the pins of all hinges stand plumb in one line,
 * whatever the rake. On a level leaf a rail may be behind it all along. On a raked leaf the rail leaves a level strap: it
 * is on the rail only if the rail is behind it from the stile to its end,
 *
 * <pre>
 * rail at x from the hinge edge   bottom + g x  to  bottom + g x + member width / cos rake,  g the grade from the hinges
 * </pre>
 *
 * <p>Where it reaches past the stile over an open space, a block of frame lumber fills the space behind it, laid level; on
 * a raked leaf its edge is cut to the rake where it meets a rail. A butt hinge, which has no reach, is screwed to the
 * edge of the leaf; at the height of a rail that runs through to that edge, its screws would go into end grain.
 *
 * <p>Left out: a brace in the same place, against which the block is cut.
 *
 * <p>Source: common practice, no source; the rake is geometry. Example: on a leaf of 56 in with 3 1/2 in members, a strap 2 in wide that
 * reaches 12 in is on the bottom rail at 1 3/4 in up; at 10 in up it needs a block 8 1/2 in long. On the same leaf raked 10 %
 * up from its hinges, the bottom rail is 0.35 to 3.867 in up at the stile's inner edge and 1.2 to 4.717 in at the end of the
 * strap: at 1 3/4 in up the strap runs out of the frame, and from 2.2 to 2.867 in up it is on the rail.
 */
public final class HingeSeat {

    private final GateLeaf leaf;
    private final Interval strap;
    private final Length reach;

    private HingeSeat(GateLeaf leaf, Interval strap, Length reach) {
        this.leaf = leaf;
        this.strap = strap;
        this.reach = reach;
    }

    /**
     * Looks behind a strap hinge.
     *
     * @param leaf the leaf, with room for its pieces
     * @param height how high the middle of the strap is over the lower edge of the frame
     * @param strapWidth how wide the strap is, up and down, over 0, to 100 ft
     * @param reach how far it reaches from the hinge edge over the leaf, over 0, no more than the leaf is wide
     * @return what is behind it
     * @throws IllegalArgumentException if a size is out of range, or the strap is not on the leaf
     */
    public static HingeSeat ofStrap(GateLeaf leaf, Length height, Length strapWidth, Length reach) {
        Sizes.require("reach", reach);
        if (reach.compareTo(leaf.width()) > 0) {
            throw new IllegalArgumentException("reach was " + reach + "; it must be no more than the leaf of "
                    + leaf.width() + ", so take a shorter strap");
        }
        return on(leaf, height, strapWidth, reach);
    }

    /**
     * Looks behind a butt hinge on the edge of the leaf.
     *
     * @param leaf the leaf, with room for its pieces
     * @param height how high the middle of the hinge is over the lower edge of the frame
     * @param hingeHeight how high the hinge itself is, over 0, to 100 ft
     * @return what is behind it
     * @throws IllegalArgumentException if a size is out of range, or the hinge is not on the leaf
     */
    public static HingeSeat ofButt(GateLeaf leaf, Length height, Length hingeHeight) {
        return on(leaf, height, hingeHeight, Length.ZERO);
    }

    private static HingeSeat on(GateLeaf leaf, Length height, Length size, Length reach) {
        Sizes.require("size of the hinge, up and down,", size);
        Interval strap = Interval.of(
                height.minus(size.dividedBy(2)), height.minus(size.dividedBy(2)).plus(size));
        if (strap.start().isNegative() || strap.end().compareTo(leaf.frameHeight()) > 0) {
            throw new IllegalArgumentException("height was " + height + "; a hinge " + size
                    + " high must lie on the frame, from 0 to " + leaf.frameHeight() + ", so move it");
        }
        if (leaf.pieces().isEmpty()) {
            throw new IllegalArgumentException("leaf was " + leaf
                    + ", which has no room for the pieces of its frame; see its findings for the way out");
        }
        return new HingeSeat(leaf, strap, reach);
    }

    /**
     * Returns what the hinge takes up on the leaf, up and down.
     *
     * @return the stretch over the lower edge of the frame at the hinge edge
     */
    public Interval strap() {
        return strap;
    }

    /**
     * Returns how far it reaches over the leaf.
     *
     * @return the reach of a strap from the hinge edge; zero for a butt hinge
     */
    public Length reach() {
        return reach;
    }

    private boolean isButt() {
        return reach.isZero();
    }

    /** How far what rises with the rails has risen at a distance from the hinge edge. */
    private Length risen(Length fromHinges) {
        Slope rake =
                leaf.hingeSide() == HingeSide.LEFT ? leaf.rake() : leaf.rake().negated();
        return rake.riseOver(fromHinges);
    }

    /** Tells whether the strap is within what is between two lines that rise with the rails, from one place to its end. */
    private boolean isWithin(Interval atHinges, Length from) {
        return atHinges.shiftedBy(risen(from)).contains(strap)
                && atHinges.shiftedBy(risen(reach)).contains(strap);
    }

    /** The rails by what they take up at the hinge edge. */
    private List<Interval> rails() {
        List<Interval> rails = new ArrayList<>();
        Length bottom = Length.ZERO;
        Length depth = leaf.rake().lengthOver(leaf.spec().memberWidth());
        for (Length clear : leaf.clearHeights()) {
            rails.add(Interval.of(bottom, bottom.plus(depth)));
            bottom = bottom.plus(depth).plus(clear);
        }
        rails.add(Interval.of(bottom, bottom.plus(depth)));
        return rails;
    }

    /**
     * Tells whether its screws would go into the end of a rail.
     *
     * @return true for a butt hinge at the height of a rail that shows its end at the edge
     */
    public boolean isOnEndGrain() {
        if (!isButt()) {
            return false;
        }
        List<Interval> rails = rails();
        // The pieces are both stiles, then the rails from the bottom up.
        return IntStream.range(0, rails.size())
                .filter(rail -> showsItsEnd(leaf.pieces().get(2 + rail)))
                .anyMatch(rail -> rails.get(rail).overlaps(strap));
    }

    private static boolean showsItsEnd(FramePiece rail) {
        return rail.joint() == FrameJoint.STILES_BETWEEN_RAILS || rail.joint() == FrameJoint.HALF_LAP;
    }

    /**
     * Returns the infill block that a strap needs behind it: frame lumber laid level in the open space, from the hinge
     * stile to the end of the strap.
     *
     * @return its length; empty if a rail is behind the strap, if the strap ends on the stile, or for a butt hinge
     */
    public Optional<Length> blockLength() {
        Length beyond = reach.minus(leaf.spec().memberWidth());
        return isButt() || !beyond.isPositive() || isOnRail()
                ? Optional.empty()
                : Optional.of(Length.min(beyond, leaf.clearWidth()));
    }

    private boolean isOnRail() {
        return rails().stream().anyMatch(rail -> isWithin(rail, leaf.spec().memberWidth()));
    }

    /**
     * Tells whether it lies on the frame all along; on a raked leaf a level strap may run out over its edge.
     *
     * @return true if no part of it is above or below the frame
     */
    public boolean isOnFrame() {
        return isWithin(Interval.of(Length.ZERO, leaf.frameHeight()), Length.ZERO);
    }

    /**
     * Returns what a builder should know: warnings {@code hinge-end-grain} for screws into end grain and
     * {@code hinge-off-frame} for a strap that runs out of a raked frame, note {@code hinge-block} for an infill block.
     *
     * @return the findings, unmodifiable; none if the hinge is on solid wood
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        String place = "hinge from " + Written.tape(strap.start()) + " to " + Written.tape(strap.end()) + " up";
        if (isOnEndGrain()) {
            findings.add(Finding.warning(
                            "hinge-end-grain",
                            place,
                            "its screws would go into the end of a rail, which holds them badly")
                    .withRemedy("move it onto the stile between the rails, or use a strap hinge on the face")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        if (!isOnFrame()) {
            findings.add(Finding.warning(
                            "hinge-off-frame",
                            place,
                            "it lies level, square to its plumb pin, and runs out over the edge of the raked frame")
                    .withRemedy("move it further from the rail that comes towards it, or take a shorter strap")
                    .withSource(Citation.GEOMETRY));
        }
        blockLength()
                .ifPresent(length -> findings.add(Finding.note(
                                "hinge-block",
                                place,
                                "its strap reaches " + Written.tape(length) + " past the stile with no rail behind it")
                        .withRemedy("set a block of frame lumber " + Written.tape(length)
                                + " long behind it, its grain level, or "
                                + (leaf.rake().isZero() ? "move the strap onto a rail" : "take a shorter strap"))
                        .withSource(Citation.COMMON_PRACTICE)));
        return List.copyOf(findings);
    }

    @Override
    public String toString() {
        return (isButt() ? "butt hinge from " : "strap from ") + Written.tape(strap.start()) + " to "
                + Written.tape(strap.end()) + " up";
    }
}
