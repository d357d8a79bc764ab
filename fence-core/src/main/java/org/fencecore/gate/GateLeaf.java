package org.fencecore.gate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.internal.Once;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * One leaf of a gate: its size, every piece of its frame with its place and cuts, and its braces.
 *
 * <pre>
 * plumb depth of a rail = member width, or member width / cos rake
 * clear width           = leaf width - 2 x member width
 * middle rail centre    = frame height / 2
 * clear height          = frame height - 2 x depth, or (frame height - 3 x depth) / 2 in each half
 * diagonal              = sqrt(leaf width^2 + frame height^2)
 *
 * joint                 stile length        rail length      middle rail length
 * rails between stiles  frame height        clear width      clear width
 * stiles between rails  height - 2 x depth  leaf width       clear width
 * half-lapped           frame height        leaf width       leaf width
 * mitred                frame height        leaf width       clear width, both to the long points
 * </pre>
 *
 * <p>Lengths are those of a level leaf; in a raked one the rails grow by the slope, and the ends of both are cut at the
 * rake off square. Without a middle rail one brace crosses the whole frame; with one, each half has a brace, unless it is
 * a cable, which runs over the whole height.
 *
 * <p>Sources: the rules are common practice without a source, except for the direction of the brace (see
 * {@link GateBrace}) and its least rise of 45 degrees (Manual of Purpose-Made Woodworking Joinery, p. 85).
 *
 * <p>Example: a level leaf 46 3/4 in wide with a frame height of 56 in, of 3 1/2 in lumber, has rails of 39 3/4 in between
 * the stiles, its middle rail at 28 in, and a diagonal of 72.949 in.
 */
public final class GateLeaf {

    private static final Length HIGH_FRAME = Length.ofFeet(5);

    private final Length clearOpening;
    private final boolean paired;
    private final Interval place;
    private final Length frameHeight;
    private final HingeSide hingeSide;
    private final Slope rake;
    private final GateSpec spec;
    private final Once<List<FramePiece>> pieces =
            Once.of(() -> hasRoom() ? List.copyOf(FrameLayout.pieces(this)) : List.of());
    private final Once<List<GateBrace>> braces = Once.of(this::bracesThatFit);

    GateLeaf(
            Length clearOpening,
            boolean paired,
            Interval place,
            Length frameHeight,
            HingeSide hingeSide,
            Slope rake,
            GateSpec spec) {
        this.clearOpening = clearOpening;
        this.paired = paired;
        this.place = place;
        this.frameHeight = frameHeight;
        this.hingeSide = hingeSide;
        this.rake = rake;
        this.spec = spec;
    }

    /**
     * Returns the opening it hangs in.
     *
     * @return the level distance between the posts
     */
    public Length clearOpening() {
        return clearOpening;
    }

    /** Tells whether it is one of two. */
    boolean isPaired() {
        return paired;
    }

    /**
     * Returns where it hangs in the opening.
     *
     * @return the stretch from the face of the left post, seen from outside
     */
    public Interval place() {
        return place;
    }

    /**
     * Returns its width over the stiles, which is what boards cover.
     *
     * @return the level width, over zero
     */
    public Length width() {
        return place.length();
    }

    /**
     * Returns the plumb height of the frame.
     *
     * @return the height
     */
    public Length frameHeight() {
        return frameHeight;
    }

    /**
     * Returns the side it hangs on, seen from outside.
     *
     * @return the side
     */
    public HingeSide hingeSide() {
        return hingeSide;
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
     * Returns the clear width between the stiles.
     *
     * @return the leaf width less both stiles; zero or less if they leave no room, which is a blocker
     */
    public Length clearWidth() {
        return width().minus(spec.stiles());
    }

    /**
     * Returns the clear height between rail and rail, plumb, the lowest first; both halves of a frame with a middle rail
     * are the same but for an odd nanometre.
     *
     * @return one height, or two with a middle rail; zero or less where the rails leave no room, which is a blocker
     */
    public List<Length> clearHeights() {
        List<Length> heights = new ArrayList<>();
        List<Length> bottoms = railBottoms();
        for (int i = 1; i < bottoms.size(); i++) {
            heights.add(bottoms.get(i).minus(bottoms.get(i - 1)).minus(railDepth()));
        }
        return List.copyOf(heights);
    }

    /**
     * Returns how high the centre of the middle rail is above the bottom of the frame: half the frame height.
     *
     * @return the height, plumb, rounded down to the nanometre; empty if there is no middle rail
     */
    public Optional<Length> middleRailCentre() {
        return spec.hasMiddleRail() ? Optional.of(frameHeight.portion(1, 2)) : Optional.empty();
    }

    /**
     * Returns the distance from corner to corner of a level frame: when both diagonals measure this, it is square.
     *
     * @return the diagonal, to the nearest nanometre; of a raked frame the one that {@link #risingDiagonal} has when both
     *     stiles stand on the level
     */
    public Length diagonal() {
        return diagonal(Length.ZERO);
    }

    /**
     * Returns the distance from the lower left to the upper right corner of the frame.
     *
     * @return the diagonal, to the nearest nanometre; in a level frame the same as {@link #fallingDiagonal}
     */
    public Length risingDiagonal() {
        return diagonal(rake.riseOver(width()));
    }

    /**
     * Returns the distance from the upper left to the lower right corner of the frame.
     *
     * @return the diagonal, to the nearest nanometre; in a level frame the same as {@link #risingDiagonal}
     */
    public Length fallingDiagonal() {
        return diagonal(rake.riseOver(width()).negated());
    }

    private Length diagonal(Length rise) {
        return Outlines.nearest(Math.hypot(
                (double) width().nanometres(), (double) frameHeight.plus(rise).nanometres()));
    }

    /**
     * Returns the lower edge of the frame, from its left to its right corner.
     *
     * @return the line by distance from the left edge and height over the lower left corner
     */
    public Profile bottomLine() {
        return line(Length.ZERO);
    }

    /**
     * Returns the upper edge of the frame, from its left to its right corner; boards that stand above it by as much
     * everywhere carry the top line of the fence through.
     *
     * @return the line by distance from the left edge and height over the lower left corner
     */
    public Profile topLine() {
        return line(frameHeight);
    }

    private Profile line(Length up) {
        return Profile.of(List.of(at(Length.ZERO, up), at(width(), up)));
    }

    /**
     * Returns the pieces of the frame: both stiles, the one with the hinges first, then the rails from the bottom up.
     *
     * @return the pieces, unmodifiable; none if there is no room for the rails, which is a blocker
     */
    public List<FramePiece> pieces() {
        return pieces.get();
    }

    /**
     * Returns the braces, the lowest first: one in each clear space between the rails, or one cable over all of them.
     *
     * @return the braces, unmodifiable; none if a brace does not fit, which is a blocker
     */
    public List<GateBrace> braces() {
        return braces.get();
    }

    private List<GateBrace> bracesThatFit() {
        if (!hasRoom()) {
            return List.of();
        }
        List<GateBrace> braces = bracesThatMayNotFit();
        return braces.stream().allMatch(GateBrace::fits) ? braces : List.of();
    }

    List<GateBrace> bracesThatMayNotFit() {
        List<FrameMember> rails = rails();
        if (spec.braceKind() == BraceKind.CABLE) {
            return List.of(brace(0, rails.size() - 1));
        }
        List<GateBrace> braces = new ArrayList<>();
        for (int i = 1; i < rails.size(); i++) {
            braces.add(brace(i - 1, i));
        }
        return List.copyOf(braces);
    }

    private GateBrace brace(int lower, int upper) {
        boolean footAtHinges = (spec.braceKind() == BraceKind.WOOD) != spec.isBraceReversed();
        FrameMember footStile = footAtHinges ? FrameMember.HINGE_STILE : FrameMember.LATCH_STILE;
        FrameMember headStile = footAtHinges ? FrameMember.LATCH_STILE : FrameMember.HINGE_STILE;
        boolean footLeft = footAtHinges == (hingeSide == HingeSide.LEFT);
        Length left = spec.memberWidth();
        Length right = width().minus(spec.memberWidth());
        Length bottom = railBottoms().get(lower).plus(railDepth());
        Length top = railBottoms().get(upper);
        return new GateBrace(
                spec.braceKind(),
                spec.braceEnds(),
                new FrameCorner(rails().get(lower), footStile),
                new FrameCorner(rails().get(upper), headStile),
                at(footLeft ? left : right, bottom),
                at(footLeft ? right : left, top),
                top.minus(bottom),
                footLeft ? rake : rake.negated(),
                spec.braceWidth(),
                spec.memberThickness());
    }

    /** A place so far across, and so far up from the lower edge of the frame there. */
    ProfilePoint at(Length across, Length up) {
        return new ProfilePoint(across, up.plus(rake.riseOver(across)));
    }

    /** How deep a rail is, plumb. */
    Length railDepth() {
        return rake.lengthOver(spec.memberWidth());
    }

    List<FrameMember> rails() {
        return spec.hasMiddleRail()
                ? List.of(FrameMember.BOTTOM_RAIL, FrameMember.MIDDLE_RAIL, FrameMember.TOP_RAIL)
                : List.of(FrameMember.BOTTOM_RAIL, FrameMember.TOP_RAIL);
    }

    /** How high the lower edge of each rail is over the lower edge of the frame, from the bottom up. */
    List<Length> railBottoms() {
        Length top = frameHeight.minus(railDepth());
        return middleRailCentre()
                .map(centre -> List.of(Length.ZERO, centre.minus(railDepth().portion(1, 2)), top))
                .orElse(List.of(Length.ZERO, top));
    }

    Length lowestClearHeight() {
        return Collections.min(clearHeights());
    }

    /** Tells whether the rails have a length and a clear height between them. */
    boolean hasRoom() {
        return clearWidth().isPositive() && lowestClearHeight().isPositive();
    }

    /**
     * Returns how many hinges such a leaf usually gets: two, or three when it is over 5 ft high or wider than reasonable
     * (common practice, no source).
     *
     * @return 2 or 3
     */
    public int usualHinges() {
        boolean high = frameHeight.compareTo(HIGH_FRAME) > 0;
        return high || width().compareTo(spec.reasonableLeafWidth()) > 0 ? 3 : 2;
    }

    /**
     * Returns everything a builder should know about this leaf: blockers {@code gate-leaf-narrow},
     * {@code gate-frame-low}, {@code gate-brace-wide} and {@code gate-brace-falls}, warnings {@code gate-leaf-wide},
     * {@code gate-brace-flat} and {@code gate-brace-wrong-way}.
     *
     * @return the findings, unmodifiable; none if all is well
     */
    public List<Finding> findings() {
        return GateFindings.of(this);
    }

    /**
     * Returns the leaf and its frame worked out line by line, from the clear opening to the diagonal, which is the shop
     * check for square. Each brace has a worksheet of its own.
     *
     * @return the worksheet; its last line is {@link #diagonal}, of a raked leaf {@link #risingDiagonal}
     */
    public Worksheet worksheet() {
        return LeafSheet.of(this);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GateLeaf that
                && clearOpening.equals(that.clearOpening)
                && paired == that.paired
                && place.equals(that.place)
                && frameHeight.equals(that.frameHeight)
                && hingeSide == that.hingeSide
                && rake.equals(that.rake)
                && spec.equals(that.spec);
    }

    @Override
    public int hashCode() {
        return Objects.hash(clearOpening, paired, place, frameHeight, hingeSide, rake, spec);
    }

    @Override
    public String toString() {
        return "gate leaf " + Written.tape(width()) + " wide and " + Written.tape(frameHeight) + " high, hinged "
                + (hingeSide == HingeSide.LEFT ? "left" : "right");
    }
}
