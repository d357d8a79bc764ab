package org.fencecore.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fencecore.GateBay;
import org.fencecore.gate.BraceEnds;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.ProfilePoint;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * The frame of a gate seen from outside with its boards left off: stiles, rails and braces with their lengths and cuts,
 * and the opening it hangs in with both gaps.
 *
 * <p>Zero is the lower left corner of the leaf. The posts are drawn as high as the frame and a little more, whatever
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
    private final GateLeaf leaf;
    private final Drawing.Builder drawing;

    private GateView(GateBay gate) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.drawing = Drawing.titled("Gate: " + gate.name());
    }

    /**
     * Draws the frame of a gate.
     *
     * @param gate the gate
     * @return the drawing, its zero at the lower left corner of the leaf
     */
    public static Drawing of(GateBay gate) {
        return new GateView(gate).draw();
    }

    private Drawing draw() {
        drawing.description("Frame seen from outside, boards left off. Hangs between post "
                + gate.from().number() + " and post " + gate.to().number() + ", hinges on the "
                + (hingesLeft() ? "left" : "right") + ".");
        Notes.blockers(leaf.findings()).ifPresent(drawing::caution);
        posts();
        leaf.pieces().forEach(this::piece);
        leaf.braces().forEach(this::brace);
        dimensions();
        cutList();
        return drawing.build();
    }

    private boolean hingesLeft() {
        return leaf.hingeSide() == HingeSide.LEFT;
    }

    private Length leftGap() {
        return leaf.place().start();
    }

    private Length rightGap() {
        return leaf.clearOpening().minus(leaf.place().end());
    }

    private Length leftPost() {
        return leftGap().negated();
    }

    private Length rightPost() {
        return leaf.width().plus(rightGap());
    }

    private Length postWidth() {
        return gate.from().footing().spec().postWidth();
    }

    private void posts() {
        Length top = leaf.frameHeight().plus(POST_BEYOND);
        Length bottom = POST_BEYOND.negated();
        drawing.add(Outline.rectangle(Layer.POSTS, leftPost().minus(postWidth()), bottom, leftPost(), top));
        drawing.add(
                Outline.rectangle(Layer.POSTS, rightPost(), bottom, rightPost().plus(postWidth()), top));
        Length half = postWidth().dividedBy(2);
        Length middle = leaf.frameHeight().dividedBy(2);
        drawing.add(Label.on(Spot.of(leftPost().minus(half), middle), hingesLeft() ? "hinge post" : "latch post")
                .withTurn(Angle.RIGHT));
        drawing.add(Label.on(Spot.of(rightPost().plus(half), middle), hingesLeft() ? "latch post" : "hinge post")
                .withTurn(Angle.RIGHT));
    }

    private void piece(FramePiece piece) {
        drawing.add(new Outline(Layer.GATE_FRAME, spots(piece.outline())));
        Spot middle = Spot.of(piece.across().middle(), piece.up().middle());
        drawing.add(Label.on(middle, piece.member() + " " + Notes.TAPE.format(piece.length()))
                .withTurn(piece.member().isStile() ? Angle.RIGHT : Angle.ZERO));
    }

    private void brace(GateBrace brace) {
        List<Spot> corners = spots(brace.outline());
        boolean cable = brace.kind() == BraceKind.CABLE;
        drawing.add(cable ? new Line(Layer.GATE_BRACE, corners) : new Outline(Layer.GATE_BRACE, corners));
        Spot foot = spot(brace.footPoint());
        Spot head = spot(brace.headPoint());
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

    private static List<Spot> spots(List<ProfilePoint> corners) {
        return corners.stream().map(GateView::spot).toList();
    }

    private static Spot spot(ProfilePoint point) {
        return Spot.of(point.station(), point.elevation());
    }

    private static String degrees(Angle angle) {
        return Math.round(angle.degrees() * 10) / 10.0 + "°";
    }

    private void dimensions() {
        Length width = leaf.width();
        Length height = leaf.frameHeight();
        Length member = leaf.spec().memberWidth();
        Length postTop = height.plus(POST_BEYOND);
        across(Length.ZERO, width, Length.ZERO, ROW.negated(), "leaf ");
        across(member, member.plus(leaf.clearWidth()), Length.ZERO, ROW.times(2).negated(), "between stiles ");
        across(leftPost(), rightPost(), postTop, ROW.times(2), "clear opening ");
        across(leftPost(), Length.ZERO, postTop, ROW, "");
        across(width, rightPost(), postTop, ROW, "");
        up(Length.ZERO, height, rightPost().plus(postWidth()), ROW.negated(), "frame ");
        Length bottom = member;
        for (Length clear : leaf.clearHeights()) {
            up(bottom, bottom.plus(clear), leftPost().minus(postWidth()), ROW, "between rails ");
            bottom = bottom.plus(clear).plus(member);
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

    private void cutList() {
        List<FramePiece> pieces = leaf.pieces();
        if (pieces.isEmpty()) {
            return;
        }
        FramePiece first = pieces.get(0);
        drawing.note("Of " + size(first.thickness(), first.width()) + ": "
                + pieces.stream()
                        .map(piece -> piece.member() + " " + Notes.figure(piece.length()) + cuts(piece))
                        .collect(Collectors.joining(", "))
                + (pieces.stream().allMatch(piece -> cuts(piece).isEmpty()) ? ", cut square." : "."));
        Map<String, Integer> braces = new LinkedHashMap<>();
        leaf.braces().forEach(brace -> braces.merge(braceNote(brace), 1, Integer::sum));
        braces.forEach((note, number) ->
                drawing.note(Notes.count(number, leaf.spec().braceKind().toString()) + note));
        drawing.note(
                leaf.rake().isZero()
                        ? "Square when both diagonals are " + Notes.figure(leaf.diagonal()) + "."
                        : "True when the diagonal rising to the right is " + Notes.figure(leaf.risingDiagonal())
                                + " and the other " + Notes.figure(leaf.fallingDiagonal()) + ".");
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

    private static String braceNote(GateBrace brace) {
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
        return " of " + size(brace.thickness(), brace.width()) + ", " + Notes.figure(brace.length())
                + " point to point" + run + " Cut each end" + (pointed ? " to a point: " : " ") + rail
                + (pointed ? ", " : "") + stile + ". It bears " + onRail + (pointed ? " and " : "") + onStile + ".";
    }

    private static String size(Length thickness, Length width) {
        return Notes.figure(thickness) + " x " + Notes.figure(width);
    }
}
