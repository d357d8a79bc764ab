package org.fencecore.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fencecore.GateBay;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.HingeSide;
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
    private final GateDesign design;
    private final Drawing.Builder drawing;

    private GateView(GateBay gate) {
        this.gate = gate;
        this.design = gate.design();
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
        Notes.blockers(design.findings()).ifPresent(drawing::caution);
        posts();
        design.pieces().forEach(this::piece);
        design.braces().forEach(this::brace);
        dimensions();
        cutList();
        return drawing.build();
    }

    private boolean hingesLeft() {
        return design.hingeSide() == HingeSide.LEFT;
    }

    private Length leftGap() {
        return hingesLeft() ? design.spec().hingeGap() : design.spec().latchGap();
    }

    private Length rightGap() {
        return hingesLeft() ? design.spec().latchGap() : design.spec().hingeGap();
    }

    private Length leftPost() {
        return leftGap().negated();
    }

    private Length rightPost() {
        return design.leafWidth().plus(rightGap());
    }

    private Length postWidth() {
        return gate.from().footing().spec().postWidth();
    }

    private void posts() {
        Length top = design.frameHeight().plus(POST_BEYOND);
        Length bottom = POST_BEYOND.negated();
        drawing.add(Outline.rectangle(Layer.POSTS, leftPost().minus(postWidth()), bottom, leftPost(), top));
        drawing.add(
                Outline.rectangle(Layer.POSTS, rightPost(), bottom, rightPost().plus(postWidth()), top));
        Length half = postWidth().dividedBy(2);
        Length middle = design.frameHeight().dividedBy(2);
        drawing.add(Label.on(Spot.of(leftPost().minus(half), middle), hingesLeft() ? "hinge post" : "latch post")
                .withTurn(Angle.RIGHT));
        drawing.add(Label.on(Spot.of(rightPost().plus(half), middle), hingesLeft() ? "latch post" : "hinge post")
                .withTurn(Angle.RIGHT));
    }

    private void piece(FramePiece piece) {
        drawing.add(Outline.rectangle(
                Layer.GATE_FRAME,
                piece.across().start(),
                piece.up().start(),
                piece.across().end(),
                piece.up().end()));
        Spot middle = Spot.of(piece.across().middle(), piece.up().middle());
        drawing.add(Label.on(middle, piece.member() + " " + Notes.TAPE.format(piece.length()))
                .withTurn(piece.member().isStile() ? Angle.RIGHT : Angle.ZERO));
    }

    private void brace(GateBrace brace) {
        BraceOutline outline = BraceOutline.of(brace, design.hingeSide());
        drawing.add(new Outline(Layer.GATE_BRACE, outline.corners()));
        drawing.add(Label.on(
                        outline.middle(),
                        "brace " + Notes.TAPE.format(brace.length()) + ", off square " + degrees(brace.railCut())
                                + " rail, " + degrees(brace.stileCut()) + " stile")
                .withTurn(outline.direction()));
    }

    private static String degrees(Angle angle) {
        return Math.round(angle.degrees() * 10) / 10.0 + "°";
    }

    private void dimensions() {
        Length width = design.leafWidth();
        Length height = design.frameHeight();
        Length member = design.spec().memberWidth();
        Length postTop = height.plus(POST_BEYOND);
        across(Length.ZERO, width, Length.ZERO, ROW.negated(), "leaf ");
        across(
                member,
                member.plus(design.clearWidth()),
                Length.ZERO,
                ROW.times(2).negated(),
                "between stiles ");
        across(leftPost(), rightPost(), postTop, ROW.times(2), "clear opening ");
        across(leftPost(), Length.ZERO, postTop, ROW, "");
        across(width, rightPost(), postTop, ROW, "");
        up(Length.ZERO, height, rightPost().plus(postWidth()), ROW.negated(), "frame ");
        Length bottom = member;
        for (Length clear : design.clearHeights()) {
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
        List<FramePiece> pieces = design.pieces();
        if (pieces.isEmpty()) {
            return;
        }
        FramePiece first = pieces.get(0);
        drawing.note("Of " + size(first.thickness(), first.width()) + ": "
                + pieces.stream()
                        .map(piece -> piece.member() + " " + Notes.figure(piece.length()))
                        .collect(Collectors.joining(", "))
                + ", cut square.");
        Map<String, Integer> braces = new LinkedHashMap<>();
        design.braces().forEach(brace -> braces.merge(braceNote(brace), 1, Integer::sum));
        braces.forEach((note, number) -> drawing.note(Notes.count(number, "brace") + note));
        drawing.note("Square when both diagonals are " + Notes.figure(design.diagonal()) + ".");
    }

    private static String braceNote(GateBrace brace) {
        return " of " + size(brace.thickness(), brace.width()) + ", " + Notes.figure(brace.length())
                + " point to point, from the " + brace.foot().stile() + " up to the "
                + brace.head().stile() + ". Cut each end to a point: " + degrees(brace.railCut())
                + " off square against the rail, " + degrees(brace.stileCut()) + " against the stile. It bears "
                + Notes.figure(brace.railBearing()) + " on the rail and " + Notes.figure(brace.stileBearing())
                + " on the stile.";
    }

    private static String size(Length thickness, Length width) {
        return Notes.figure(thickness) + " x " + Notes.figure(width);
    }
}
