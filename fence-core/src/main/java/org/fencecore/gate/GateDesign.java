package org.fencecore.gate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * One gate leaf worked out for an opening: its size, every piece of its frame with its place, and its braces.
 *
 * <pre>
 * leaf width         = clear opening - hinge gap - latch gap
 * stile length       = frame height
 * rail length        = leaf width - 2 x member width
 * middle rail centre = frame height / 2
 * clear height       = frame height - 2 x member width, or (frame height - 3 x member width) / 2 in each half
 * diagonal           = sqrt(leaf width^2 + frame height^2)
 * </pre>
 *
 * <p>Without a middle rail one brace rises from the bottom hinge corner to the top latch corner; with one, each half
 * has a brace, and both rise away from the hinges.
 *
 * <p>What does not work is told by {@link #findings}: a leaf or frame too small for its members or for its brace cannot
 * be built, a leaf wider than is reasonable and a brace flatter than 45 degrees deserve a second look. The design is
 * complete as far as it goes; pieces and braces that cannot be made are left out.
 *
 * <p>Left out: double leaves, other joints, cables, boards or pickets on the frame, the weight of the leaf and its pull
 * on hinges and post, and the clearance over the ground.
 *
 * <p>Sources: the rules are common practice without a source, except for the direction of the brace (see
 * {@link GateBrace}) and its least rise of 45 degrees (Manual of Purpose-Made Woodworking Joinery, p. 85).
 *
 * <p>Example: for an opening of 47 1/2 in and a frame height of 56 in, with the usual gaps and 3 1/2 in lumber, the
 * leaf is 46 3/4 in wide, the rails are 39 3/4 in long, and the diagonal is 72.949 in. See the package for the calls.
 */
public final class GateDesign {

    private final Length clearOpening;
    private final Length frameHeight;
    private final HingeSide hingeSide;
    private final GateSpec spec;

    private GateDesign(Length clearOpening, Length frameHeight, HingeSide hingeSide, GateSpec spec) {
        this.clearOpening = clearOpening;
        this.frameHeight = frameHeight;
        this.hingeSide = hingeSide;
        this.spec = spec;
    }

    /**
     * Works out the leaf for an opening.
     *
     * <p>Openings of at least {@link GateSpec#minimumOpening} and heights of at least {@link GateSpec#minimumHeight}, no
     * more than 100 ft, are never refused and never blocked.
     *
     * @param clearOpening the level distance between the faces of the hinge post and the latch post, wider than both
     *     gaps together, to 100 ft
     * @param frameHeight the height of the frame, over 0, to 100 ft
     * @param hingeSide the side it hangs on, seen from outside
     * @param spec how it is made
     * @return the design, with its findings
     * @throws IllegalArgumentException if {@code clearOpening} or {@code frameHeight} is out of its range
     */
    public static GateDesign forOpening(Length clearOpening, Length frameHeight, HingeSide hingeSide, GateSpec spec) {
        Objects.requireNonNull(hingeSide, "hingeSide");
        GateSpec.requireSize("clearOpening", clearOpening);
        GateSpec.requireSize("frameHeight", frameHeight);
        if (clearOpening.compareTo(spec.gaps()) <= 0) {
            throw new IllegalArgumentException("clearOpening was " + clearOpening
                    + "; it must be over the hinge gap and the latch gap together, " + spec.gaps()
                    + ", to leave room for a leaf, and is sure to do from " + spec.minimumOpening()
                    + "; check its unit, or set smaller gaps");
        }
        return new GateDesign(clearOpening, frameHeight, hingeSide, spec);
    }

    /**
     * Returns the opening the leaf hangs in.
     *
     * @return the level distance between the posts
     */
    public Length clearOpening() {
        return clearOpening;
    }

    /**
     * Returns the height of the frame, which is the length of its stiles.
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
     * Returns how it is made.
     *
     * @return the spec
     */
    public GateSpec spec() {
        return spec;
    }

    /**
     * Returns the width of the leaf: the clear opening less both gaps.
     *
     * @return the width over the stiles, over zero
     */
    public Length leafWidth() {
        return clearOpening.minus(spec.gaps());
    }

    /**
     * Returns the clear width between the stiles, which is the length of the rails.
     *
     * @return the leaf width less both stiles; zero or less if they leave no room, which is a blocker
     */
    public Length clearWidth() {
        return leafWidth().minus(spec.stiles());
    }

    /**
     * Returns the clear height between rail and rail, the lowest first; both halves of a frame with a middle rail are
     * the same but for an odd nanometre.
     *
     * @return one height, or two with a middle rail; zero or less where the rails leave no room, which is a blocker
     */
    public List<Length> clearHeights() {
        List<Length> heights = new ArrayList<>();
        List<Length> bottoms = railBottoms();
        for (int i = 1; i < bottoms.size(); i++) {
            heights.add(bottoms.get(i).minus(bottoms.get(i - 1)).minus(spec.memberWidth()));
        }
        return List.copyOf(heights);
    }

    /**
     * Returns how high the centre of the middle rail is above the bottom of the frame: half the frame height.
     *
     * @return the height, rounded down to the nanometre; empty if there is no middle rail
     */
    public Optional<Length> middleRailCentre() {
        return spec.middleRail() ? Optional.of(frameHeight.portion(1, 2)) : Optional.empty();
    }

    /**
     * Returns the distance from corner to corner of the frame: when both diagonals measure this, the frame is square.
     *
     * @return the diagonal, to the nearest nanometre
     */
    public Length diagonal() {
        return GateBrace.diagonal(leafWidth(), frameHeight);
    }

    /**
     * Returns the pieces of the frame: both stiles, then the rails from the bottom up.
     *
     * @return the pieces, unmodifiable; none if there is no room for the rails, which is a blocker
     */
    public List<FramePiece> pieces() {
        if (!hasRoom()) {
            return List.of();
        }
        Interval between = betweenStiles();
        Interval left = Interval.of(Length.ZERO, between.start());
        Interval right = Interval.of(between.end(), leafWidth());
        Interval height = Interval.of(Length.ZERO, frameHeight);
        boolean onLeft = hingeSide == HingeSide.LEFT;
        List<FramePiece> pieces = new ArrayList<>();
        pieces.add(piece(FrameMember.HINGE_STILE, onLeft ? left : right, height));
        pieces.add(piece(FrameMember.LATCH_STILE, onLeft ? right : left, height));
        for (int i = 0; i < rails().size(); i++) {
            Length bottom = railBottoms().get(i);
            pieces.add(piece(rails().get(i), between, Interval.of(bottom, bottom.plus(spec.memberWidth()))));
        }
        return List.copyOf(pieces);
    }

    private FramePiece piece(FrameMember member, Interval across, Interval up) {
        return new FramePiece(member, across, up, spec.memberThickness());
    }

    /**
     * Returns the braces, the lowest first: one in each clear space between the rails.
     *
     * @return the braces, unmodifiable; none if a brace does not fit, which is a blocker
     */
    public List<GateBrace> braces() {
        if (!hasRoom() || !GateBrace.fits(spec.braceWidth(), clearWidth(), lowestClearHeight())) {
            return List.of();
        }
        Interval across = betweenStiles();
        List<GateBrace> braces = new ArrayList<>();
        for (int i = 1; i < rails().size(); i++) {
            FrameCorner foot = new FrameCorner(rails().get(i - 1), FrameMember.HINGE_STILE);
            FrameCorner head = new FrameCorner(rails().get(i), FrameMember.LATCH_STILE);
            Interval up = Interval.of(
                    railBottoms().get(i - 1).plus(spec.memberWidth()),
                    railBottoms().get(i));
            braces.add(new GateBrace(foot, head, across, up, spec.braceWidth(), spec.memberThickness()));
        }
        return List.copyOf(braces);
    }

    private Interval betweenStiles() {
        return Interval.of(spec.memberWidth(), spec.memberWidth().plus(clearWidth()));
    }

    private List<FrameMember> rails() {
        return spec.middleRail()
                ? List.of(FrameMember.BOTTOM_RAIL, FrameMember.MIDDLE_RAIL, FrameMember.TOP_RAIL)
                : List.of(FrameMember.BOTTOM_RAIL, FrameMember.TOP_RAIL);
    }

    /** How high the lower edge of each rail is, from the bottom up. */
    private List<Length> railBottoms() {
        Length top = frameHeight.minus(spec.memberWidth());
        return middleRailCentre()
                .map(centre ->
                        List.of(Length.ZERO, centre.minus(spec.memberWidth().portion(1, 2)), top))
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
     * Returns everything a builder should know about this design: blockers {@code gate-leaf-narrow},
     * {@code gate-frame-low} and {@code gate-brace-wide}, warnings {@code gate-leaf-wide} and {@code gate-brace-flat}.
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
     * @return the worksheet; its last line is {@link #diagonal}
     */
    public Worksheet worksheet() {
        String leaf = Written.inches(leafWidth());
        String height = Written.inches(frameHeight);
        String member = Written.inches(spec.memberWidth());
        Worksheet.Builder sheet = Worksheet.titled("Gate leaf and frame")
                .given("clear opening", clearOpening, Written.tape(clearOpening))
                .given("hinge gap", spec.hingeGap(), Written.tape(spec.hingeGap()))
                .given("latch gap", spec.latchGap(), Written.tape(spec.latchGap()))
                .given("frame height", frameHeight, Written.tape(frameHeight))
                .given("member width", spec.memberWidth(), Written.tape(spec.memberWidth()))
                .line(
                        "leaf width",
                        "clear opening - hinge gap - latch gap",
                        Written.inches(clearOpening) + " - " + Written.inches(spec.hingeGap()) + " - "
                                + Written.inches(spec.latchGap()),
                        leafWidth(),
                        Written.tape(leafWidth()),
                        Citation.COMMON_PRACTICE)
                .line(
                        "stile length",
                        "frame height",
                        "",
                        frameHeight,
                        Written.tape(frameHeight),
                        Citation.COMMON_PRACTICE)
                .line(
                        "rail length",
                        "leaf width - 2 x member width",
                        leaf + " - 2 x " + member,
                        clearWidth(),
                        Written.tape(clearWidth()),
                        Citation.COMMON_PRACTICE);
        middleRailCentre()
                .ifPresent(centre -> sheet.line(
                        "middle rail centre",
                        "frame height / 2",
                        height + " / 2",
                        centre,
                        Written.tape(centre),
                        Citation.COMMON_PRACTICE));
        return sheet.line(
                        spec.middleRail() ? "clear height of each half" : "clear height",
                        spec.middleRail() ? "(frame height - 3 x member width) / 2" : "frame height - 2 x member width",
                        spec.middleRail() ? "(" + height + " - 3 x " + member + ") / 2" : height + " - 2 x " + member,
                        lowestClearHeight(),
                        Written.tape(lowestClearHeight()),
                        Citation.GEOMETRY)
                .line(
                        "diagonal",
                        "sqrt(leaf width^2 + frame height^2)",
                        "sqrt((" + leaf + ")^2 + (" + height + ")^2)",
                        diagonal(),
                        Written.tape(diagonal()),
                        Citation.GEOMETRY)
                .build();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GateDesign that
                && clearOpening.equals(that.clearOpening)
                && frameHeight.equals(that.frameHeight)
                && hingeSide == that.hingeSide
                && spec.equals(that.spec);
    }

    @Override
    public int hashCode() {
        return Objects.hash(clearOpening, frameHeight, hingeSide, spec);
    }

    @Override
    public String toString() {
        return "gate leaf " + Written.tape(leafWidth()) + " wide and " + Written.tape(frameHeight) + " high, hinged "
                + (hingeSide == HingeSide.LEFT ? "left" : "right");
    }
}
