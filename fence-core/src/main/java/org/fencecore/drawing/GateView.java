package org.fencecore.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fencecore.GateBay;
import org.fencecore.gate.BraceEnds;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.ProfilePoint;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/**
 * The frames of a gate seen from outside with the boards left off: stiles, rails and braces with their lengths and cuts,
 * and the opening they hang in with all gaps.
 *
 * <p>Zero is the lower left corner of the left leaf. The posts are drawn as high as the frame and a little more, whatever
 * their real length. A design without room for its pieces gives the opening alone, and says why.
 *
 * <pre>{@code
 * Drawing drawing = GateView.of(plan.gates().get(0));
 * }</pre>
 */
public final class GateView {

    private static final Length ROW = Length.ofMillimetres(7);
    private static final Length POST_BEYOND = Length.ofInches(3);

    private final GateBay gate;
    private final GateDesign design;
    private final Drawing.Builder drawing;

    private GateView(GateBay gate) {
        this.gate = gate;
        this.design = gate.design();
        this.drawing = Drawing.titled("Gate: " + gate.name());
    }

    /**
     * Draws the frames of a gate.
     *
     * @param gate the gate
     * @return the drawing, its zero at the lower left corner of its left leaf
     */
    public static Drawing of(GateBay gate) {
        return new GateView(gate).draw();
    }

    private Drawing draw() {
        List<GateLeaf> leaves = design.leaves();
        String hinges = design.isPair()
                ? "two leaves, the one on the " + side(design.activeLeaf()) + " opens first"
                : "hinges on the " + side(design.activeLeaf());
        drawing.description("Frame seen from outside, boards left off. Hangs between post "
                + gate.from().number() + " and post " + gate.to().number() + ", " + hinges + ".");
        Notes.blockers(design.findings()).ifPresent(drawing::caution);
        posts();
        for (GateLeaf leaf : leaves) {
            leaf.pieces().forEach(piece -> piece(leaf, piece));
            leaf.braces().forEach(brace -> brace(leaf, brace));
        }
        dimensions();
        notes();
        return drawing.build();
    }

    private static String side(GateLeaf leaf) {
        return leaf.hingeSide() == HingeSide.LEFT ? "left" : "right";
    }

    private GateLeaf first() {
        return design.leaves().get(0);
    }

    private GateLeaf last() {
        return design.leaves().get(design.leaves().size() - 1);
    }

    /** How far the left edge of a leaf is from zero. */
    private Length left(GateLeaf leaf) {
        return leaf.place().start().minus(first().place().start());
    }

    private Length right(GateLeaf leaf) {
        return left(leaf).plus(leaf.width());
    }

    /** How much the rake has risen at a place of the drawing. */
    private Length risen(Length across) {
        return design.rake().riseOver(across);
    }

    private Length leftPost() {
        return first().place().start().negated();
    }

    private Length rightPost() {
        return leftPost().plus(design.clearOpening());
    }

    private Length postWidth() {
        return gate.from().footing().spec().postWidth();
    }

    private void posts() {
        Length half = postWidth().dividedBy(2);
        for (Length face : List.of(leftPost(), rightPost())) {
            boolean isLeft = face.equals(leftPost());
            Length start = isLeft ? face.minus(postWidth()) : face;
            Length bottom = risen(face).minus(POST_BEYOND);
            Length top = risen(face).plus(design.frameHeight()).plus(POST_BEYOND);
            drawing.add(Outline.rectangle(Layer.POSTS, start, bottom, start.plus(postWidth()), top));
            boolean hinged = design.isPair() || (design.activeLeaf().hingeSide() == HingeSide.LEFT) == isLeft;
            Length middle = risen(face).plus(design.frameHeight().dividedBy(2));
            drawing.add(Label.on(Spot.of(start.plus(half), middle), hinged ? "hinge post" : "latch post")
                    .withTurn(Angle.RIGHT));
        }
    }

    private void piece(GateLeaf leaf, FramePiece piece) {
        drawing.add(new Outline(Layer.GATE_FRAME, spots(leaf, piece.outline())));
        Spot middle =
                spot(leaf, new ProfilePoint(piece.across().middle(), piece.up().middle()));
        Angle along = piece.member().isStile() ? Angle.RIGHT : angle(design.rake());
        drawing.add(Label.on(middle, piece.member() + " " + Notes.TAPE.format(piece.length()))
                .withTurn(along));
    }

    private static Angle angle(Slope rake) {
        return Angle.ofRadians(StrictMath.atan(rake.ratio().value()));
    }

    private void brace(GateLeaf leaf, GateBrace brace) {
        List<Spot> corners = spots(leaf, brace.outline());
        boolean cable = brace.kind() == BraceKind.CABLE;
        drawing.add(cable ? new Line(Layer.GATE_BRACE, corners) : new Outline(Layer.GATE_BRACE, corners));
        Spot foot = spot(leaf, brace.footPoint());
        Spot head = spot(leaf, brace.headPoint());
        boolean rightwards = foot.across().compareTo(head.across()) < 0;
        drawing.add(Label.on(foot.middle(head), braceLabel(brace))
                .withTurn(rightwards ? brace.rise() : Angle.STRAIGHT.minus(brace.rise())));
    }

    private static String braceLabel(GateBrace brace) {
        String rail = brace.railCut()
                .map(cut -> ", off square " + degrees(cut) + " rail")
                .orElse("");
        String stile = brace.stileCut()
                .map(cut -> (rail.isEmpty() ? ", off square " : ", ") + degrees(cut) + " stile")
                .orElse("");
        return brace.kind() + " " + Notes.TAPE.format(brace.length()) + rail + stile;
    }

    private List<Spot> spots(GateLeaf leaf, List<ProfilePoint> corners) {
        return corners.stream().map(corner -> spot(leaf, corner)).toList();
    }

    private Spot spot(GateLeaf leaf, ProfilePoint point) {
        return Spot.of(left(leaf).plus(point.station()), risen(left(leaf)).plus(point.elevation()));
    }

    private static String degrees(Angle angle) {
        return Math.round(angle.degrees() * 10) / 10.0 + "°";
    }

    private void dimensions() {
        Length member = design.spec().memberWidth();
        Length low = Length.min(Length.ZERO, risen(rightPost()));
        Length high = Length.max(risen(leftPost()), risen(rightPost()))
                .plus(design.frameHeight())
                .plus(POST_BEYOND);
        across(leftPost(), rightPost(), high, ROW.times(2), "clear opening ");
        Length free = leftPost();
        for (GateLeaf leaf : design.leaves()) {
            Length left = left(leaf);
            across(left, right(leaf), low, ROW.negated(), "leaf ");
            across(
                    left.plus(member),
                    left.plus(member).plus(leaf.clearWidth()),
                    low,
                    ROW.times(2).negated(),
                    "between stiles ");
            across(free, left, high, ROW, "");
            free = right(leaf);
        }
        across(free, rightPost(), high, ROW, "");
        Length right = risen(right(last()));
        up(right, right.plus(design.frameHeight()), rightPost().plus(postWidth()), ROW.negated(), "frame ");
        Length bottom = first().rake().lengthOver(member);
        for (Length clear : first().clearHeights()) {
            up(bottom, bottom.plus(clear), leftPost().minus(postWidth()), ROW, "between rails ");
            bottom = bottom.plus(clear).plus(first().rake().lengthOver(member));
        }
    }

    private void across(Length from, Length to, Length up, Length offset, String what) {
        if (from.compareTo(to) < 0) {
            String figure = what + Notes.TAPE.format(to.minus(from));
            drawing.add(new Dimension(Spot.of(from, up), Spot.of(to, up), offset, figure));
        }
    }

    private void up(Length from, Length to, Length across, Length offset, String what) {
        if (from.compareTo(to) < 0) {
            String figure = what + Notes.TAPE.format(to.minus(from));
            drawing.add(new Dimension(Spot.of(across, from), Spot.of(across, to), offset, figure));
        }
    }

    /** What is the same on both leaves is told once. */
    private void notes() {
        List<String> first = notes(first());
        List<String> last = notes(last());
        for (int i = 0; i < first.size(); i++) {
            if (!design.isPair()) {
                drawing.note(first.get(i));
            } else if (i < last.size() && first.get(i).equals(last.get(i))) {
                drawing.note("Each leaf: " + first.get(i));
            } else {
                drawing.note(capitalised(side(first())) + " leaf: " + first.get(i));
            }
        }
        for (int i = 0; i < last.size(); i++) {
            if (i >= first.size() || !last.get(i).equals(first.get(i))) {
                drawing.note(capitalised(side(last())) + " leaf: " + last.get(i));
            }
        }
    }

    private List<String> notes(GateLeaf leaf) {
        List<FramePiece> pieces = leaf.pieces();
        if (pieces.isEmpty()) {
            return List.of();
        }
        List<String> notes = new ArrayList<>();
        FramePiece first = pieces.get(0);
        notes.add((design.isPair() ? "of " : "Of ") + size(first.thickness(), first.width()) + ": "
                + pieces.stream()
                        .map(piece -> piece.member() + " " + Notes.figure(piece.length()) + cuts(piece))
                        .collect(Collectors.joining(", "))
                + (pieces.stream().allMatch(piece -> cuts(piece).isEmpty()) ? ", cut square." : "."));
        Map<String, Integer> braces = new LinkedHashMap<>();
        leaf.braces().forEach(brace -> braces.merge(braceNote(brace), 1, Integer::sum));
        braces.forEach((note, number) ->
                notes.add(Notes.count(number, leaf.spec().braceKind().toString()) + note));
        notes.add(
                leaf.rake().isZero()
                        ? "Square when both diagonals are " + Notes.figure(leaf.diagonal()) + "."
                        : "True when the diagonal rising to the right is " + Notes.figure(leaf.risingDiagonal())
                                + " and the other " + Notes.figure(leaf.fallingDiagonal()) + ".");
        return notes;
    }

    private static String capitalised(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private static String cuts(FramePiece piece) {
        String first = degrees(piece.firstCut());
        String other = degrees(piece.otherCut());
        String square = degrees(Angle.ZERO);
        String slanted = first.equals(other) ? first : first + " and " + other;
        String ends = first.equals(square) && other.equals(square) ? "" : slanted + " off square";
        String laps = piece.laps() == 0 ? "" : piece.laps() + " half-laps";
        String both = ends + (ends.isEmpty() || laps.isEmpty() ? "" : ", ") + laps;
        return both.isEmpty() ? "" : " (" + both + ")";
    }

    /** The braces of two leaves have room for their sizes alone; how they are cut is written on them. */
    private String braceNote(GateBrace brace) {
        String run = ", from the " + brace.foot().stile() + " up to the "
                + brace.head().stile() + ".";
        if (brace.kind() == BraceKind.CABLE) {
            return " of " + Notes.figure(brace.length()) + " corner to corner, less eyes and turnbuckle" + run;
        }
        String rail = brace.railCut()
                .map(cut -> degrees(cut) + " off square against the rail")
                .orElse("");
        String stile = brace.stileCut()
                .map(cut -> degrees(cut) + (rail.isEmpty() ? " off square" : "") + " against the stile")
                .orElse("");
        boolean pointed = brace.ends() == BraceEnds.POINTS;
        String onRail = rail.isEmpty() ? "" : Notes.figure(brace.railBearing()) + " on the rail";
        String onStile = stile.isEmpty() ? "" : Notes.figure(brace.stileBearing()) + " on the stile";
        String bears = onRail + (pointed ? " and " : "") + onStile + ".";
        if (design.isPair()) {
            return " of " + Notes.figure(brace.length()) + " point to point, bearing " + bears;
        }
        return " of " + size(brace.thickness(), brace.width()) + ", " + Notes.figure(brace.length())
                + " point to point" + run + " Cut each end" + (pointed ? " to a point: " : " ") + rail
                + (pointed ? ", " : "") + stile + ". It bears " + bears;
    }

    private static String size(Length thickness, Length width) {
        return Notes.figure(thickness) + " x " + Notes.figure(width);
    }
}
