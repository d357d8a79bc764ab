package org.fencecore.drawing.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.boarding.BoardCut;
import org.fencecore.drawing.Dimension;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Spot;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FrameMember;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.HingeSeat;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.layout.Face;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.units.tape.TapeFormat;

/**
 * The frames of a gate seen from outside with the boards left off: stiles, rails and braces with their lengths and cuts,
 * hinges with the blocks behind them, the edge of the boards, and the opening they hang in with all gaps.
 *
 * <p>Zero is the lower left corner of the left leaf's frame. The posts are drawn a little past boards and frame, whatever
 * their real length. A design without room for its pieces gives the opening alone, and says why.
 *
 * <pre>{@code
 * Drawing drawing = GateView.of(plan.gates().get(0));
 * }</pre>
 */
public final class GateView {

    private static final Length ROW = Length.ofMillimetres(7);
    private static final int BEYOND_HINGES = 4;
    private static final Length ROOM_FOR_NAME = Length.ofInches(22);
    private static final Length NEAR = Length.ofMillimetres(1.2);
    private static final Length POST_BEYOND = Length.ofInches(3);

    private final GateBay gate;
    private final GateDesign design;
    private final Figures figures;
    private final Drawing.Builder drawing;

    private GateView(GateBay gate, Figures figures) {
        this.figures = figures;
        this.gate = gate;
        this.design = gate.design();
        this.drawing = Drawing.titled("Gate: " + gate.name());
    }

    /**
     * Draws the frames of a gate, dimensions in feet and inches.
     *
     * @param gate the gate
     * @return the drawing, its zero at the lower left corner of its left leaf
     */
    public static Drawing of(GateBay gate) {
        return of(gate, Figures.USUAL);
    }

    /**
     * Draws the frames of a gate with their dimensions written for some tape.
     *
     * @param gate the gate
     * @param tape how lengths are written, such as {@code TapeFormat.millimetres(0)}
     * @return the drawing, its zero at the lower left corner of its left leaf
     */
    public static Drawing of(GateBay gate, TapeFormat tape) {
        return new GateView(gate, new Figures(tape)).draw();
    }

    private Drawing draw() {
        String hinges = design.isPair()
                ? "two leaves, the one on the " + side(design.activeLeaf()) + " opens first"
                : "hinges on the " + side(design.activeLeaf());
        drawing.description("Frame seen from outside, boards left off but for their edge. Hangs between post "
                + gate.from().number() + " and post " + gate.to().number() + ", " + hinges + ".");
        Notes.blockers(design.findings()).ifPresent(drawing::caution);
        gate.leaves().forEach(this::boards);
        posts();
        for (HungLeaf hung : gate.leaves()) {
            hung.leaf().pieces().forEach(piece -> piece(hung, piece));
            hung.leaf().braces().forEach(brace -> brace(hung.leaf(), brace));
        }
        gate.leaves().forEach(this::hinges);
        dimensions();
        new GateNotes(gate, figures).lines().forEach(drawing::note);
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
            Length bottom = risen(face).plus(lowest()).minus(POST_BEYOND);
            Length top = risen(face).plus(highest()).plus(POST_BEYOND);
            drawing.add(Outline.rectangle(Layer.POSTS, start, bottom, start.plus(postWidth()), top));
            boolean hinged = design.isPair() || (design.activeLeaf().hingeSide() == HingeSide.LEFT) == isLeft;
            Length middle = risen(face).plus(design.frameHeight().dividedBy(2));
            drawing.add(Label.on(Spot.of(start.plus(half), middle), hinged ? "hinge post" : "latch post")
                    .withTurn(Angle.RIGHT));
        }
    }

    /** How far boards or frame reach down, from the lower edge of the frame. */
    private Length lowest() {
        HungLeaf first = gate.leaves().get(0);
        return Length.min(Length.ZERO, first.boardBottom().minus(first.frameBottom()));
    }

    /** How far boards or frame reach up, from the lower edge of the frame. */
    private Length highest() {
        HungLeaf first = gate.leaves().get(0);
        Length boards =
                first.boardBottom().minus(first.frameBottom()).plus(gate.top().longest());
        return Length.max(design.frameHeight(), boards);
    }

    /** The edge round all boards of the outside row, or round the courses. */
    private void boards(HungLeaf hung) {
        List<Spot> edge = new ArrayList<>();
        hung.cuts().ifPresent(cuts -> {
            List<Spot> top = new ArrayList<>();
            for (BoardCut cut :
                    cuts.cuts().subList(0, cuts.layout().row(Face.OUTSIDE).count())) {
                List<ProfilePoint> corners = cut.outline();
                edge.add(spot(hung, corners.get(0)));
                edge.add(spot(hung, corners.get(1)));
                for (int i = corners.size() - 1; i > 1; i--) {
                    top.add(spot(hung, corners.get(i)));
                }
            }
            Collections.reverse(top);
            edge.addAll(top);
        });
        hung.courses().ifPresent(courses -> {
            Interval reach = courses.stations();
            Length up = courses.grade().lengthOver(courses.layout().courses().clearLength());
            for (Length across : List.of(reach.start(), reach.end())) {
                edge.add(spot(hung, new ProfilePoint(across, courses.bottomAt(across))));
            }
            for (Length across : List.of(reach.end(), reach.start())) {
                edge.add(spot(
                        hung, new ProfilePoint(across, courses.bottomAt(across).plus(up))));
            }
        });
        if (!edge.isEmpty()) {
            edge.add(edge.get(0));
            drawing.add(new Line(Layer.OUTSIDE_BOARDS, edge));
        }
    }

    /** A place on a leaf, its height in the datum of the shots. */
    private Spot spot(HungLeaf hung, ProfilePoint point) {
        return Spot.of(
                left(hung.leaf()).plus(point.station()),
                point.elevation().minus(gate.leaves().get(0).frameBottom()));
    }

    /** Straps lie level, and the blocks behind them, which are fitted to a brace in place; their heights are written beside the post they hang on. */
    private void hinges(HungLeaf hung) {
        GateLeaf leaf = hung.leaf();
        boolean isLeft = leaf.hingeSide() == HingeSide.LEFT;
        Length edge = isLeft ? left(leaf) : right(leaf);
        Length outer = isLeft ? leftPost().minus(postWidth()) : rightPost().plus(postWidth());
        for (HingeSeat seat : hung.hingeSeats()) {
            Interval strap = seat.strap().shiftedBy(risen(edge));
            if (seat.reach().isPositive()) {
                Length end = isLeft ? edge.plus(seat.reach()) : edge.minus(seat.reach());
                drawing.add(Outline.rectangle(
                        Layer.HINGES, Length.min(edge, end), strap.start(), Length.max(edge, end), strap.end()));
            }
            seat.blockLength().ifPresent(length -> {
                Length width = leaf.spec().memberWidth();
                Length start = isLeft ? edge.plus(width) : edge.minus(width).minus(length);
                Length bottom = strap.middle().minus(width.dividedBy(2));
                drawing.add(Outline.rectangle(Layer.HINGES, start, bottom, start.plus(length), bottom.plus(width)));
            });
            drawing.add(Label.beside(
                    Spot.of(outer, strap.middle()),
                    isLeft ? Angle.STRAIGHT : Angle.ZERO,
                    NEAR,
                    "hinge " + figures.of(seat.strap().middle())));
        }
    }

    /** What the straps leave of a rail; all of it where they reach over its whole length. */
    private static Interval clearOfStraps(HungLeaf hung, FramePiece rail) {
        Interval whole = rail.across();
        Length reach = hung.hingeSeats().stream().map(HingeSeat::reach).reduce(Length.ZERO, Length::max);
        boolean isLeft = hung.leaf().hingeSide() == HingeSide.LEFT;
        Length end = isLeft ? reach : hung.leaf().width().minus(reach);
        Length start = isLeft ? Length.max(whole.start(), end) : whole.start();
        Length stop = isLeft ? whole.end() : Length.min(whole.end(), end);
        return start.compareTo(stop) < 0 ? Interval.of(start, stop) : whole;
    }

    private static Length betweenHinges(HungLeaf hung, FramePiece stile) {
        List<HingeSeat> seats = hung.hingeSeats();
        if (seats.size() < 2) {
            return stile.up().middle();
        }
        Length up = seats.get(0)
                .strap()
                .middle()
                .plus(seats.get(1).strap().middle())
                .dividedBy(2);
        return up.plus(hung.leaf().bottomLine().elevationAt(stile.across().middle()));
    }

    private void piece(HungLeaf hung, FramePiece piece) {
        GateLeaf leaf = hung.leaf();
        drawing.add(new Outline(Layer.GATE_FRAME, spots(leaf, piece.outline())));
        boolean stile = piece.member().isStile();
        Interval free = stile ? piece.across() : clearOfStraps(hung, piece);
        Length across = free.middle();
        Length up = piece.member() == FrameMember.HINGE_STILE
                ? betweenHinges(hung, piece)
                : piece.up()
                        .middle()
                        .plus(leaf.rake().riseOver(across.minus(piece.across().middle())));
        Spot middle = spot(leaf, new ProfilePoint(across, up));
        String name = stile || free.length().compareTo(ROOM_FOR_NAME) >= 0 ? piece.member() + " " : "";
        drawing.add(Label.on(middle, name + figures.of(piece.length()))
                .withTurn(stile ? Angle.RIGHT : angle(design.rake())));
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
        Angle along = rightwards ? brace.rise() : Angle.STRAIGHT.minus(brace.rise());
        String label = brace.kind() + " " + figures.of(brace.length());
        Spot middle = foot.middle(head);
        drawing.add((cable ? Label.beside(middle, along.plus(Angle.RIGHT), NEAR, label) : Label.on(middle, label))
                .withTurn(along));
    }

    private List<Spot> spots(GateLeaf leaf, List<ProfilePoint> corners) {
        return corners.stream().map(corner -> spot(leaf, corner)).toList();
    }

    private Spot spot(GateLeaf leaf, ProfilePoint point) {
        return Spot.of(left(leaf).plus(point.station()), risen(left(leaf)).plus(point.elevation()));
    }

    static String degrees(Angle angle) {
        return Math.round(angle.degrees() * 10) / 10.0 + "°";
    }

    private void dimensions() {
        Length member = design.spec().memberWidth();
        Length low = Length.min(Length.ZERO, risen(rightPost())).plus(lowest());
        Length high = Length.max(risen(leftPost()), risen(rightPost()))
                .plus(highest())
                .plus(POST_BEYOND);
        across(leftPost(), rightPost(), high, ROW, "clear opening ");
        Length free = leftPost();
        for (GateLeaf leaf : design.leaves()) {
            Length left = left(leaf);
            across(free, left, low, ROW.negated(), "");
            across(left, right(leaf), low, ROW.negated(), "leaf ");
            across(
                    left.plus(member),
                    left.plus(member).plus(leaf.clearWidth()),
                    low,
                    ROW.times(2).negated(),
                    "between stiles ");
            free = right(leaf);
        }
        across(free, rightPost(), low, ROW.negated(), "");
        heights();
    }

    /** On the side without hinges, or on the right of two leaves beyond the places of theirs. */
    private void heights() {
        boolean toRight = design.isPair() || design.activeLeaf().hingeSide() == HingeSide.LEFT;
        GateLeaf leaf = toRight ? last() : first();
        Length edge = toRight ? right(leaf) : left(leaf);
        Length beside = toRight ? rightPost().plus(postWidth()) : leftPost().minus(postWidth());
        Length row = toRight ? ROW.negated() : ROW;
        int first = design.isPair() ? BEYOND_HINGES : 1;
        Length rail = leaf.rake().lengthOver(design.spec().memberWidth());
        Length inner = toRight
                ? edge.minus(design.spec().memberWidth())
                : edge.plus(design.spec().memberWidth());
        Length bottom = risen(inner).plus(rail);
        for (Length clear : leaf.clearHeights()) {
            up(bottom, bottom.plus(clear), beside, row.times(first), "between rails ");
            bottom = bottom.plus(clear).plus(rail);
        }
        Length frame = risen(edge);
        up(frame, frame.plus(design.frameHeight()), beside, row.times(first + 1L), "frame ");
        Length boards = frame.plus(lowest());
        String what = gate.top().shape().isStraight() ? "boards " : "longest board ";
        if (gate.boardCount() > 0) {
            up(boards, boards.plus(gate.top().longest()), beside, row.times(first + 2L), what);
        }
    }

    private void across(Length from, Length to, Length up, Length offset, String what) {
        if (from.compareTo(to) < 0) {
            String figure = what + figures.of(to.minus(from));
            drawing.add(new Dimension(Spot.of(from, up), Spot.of(to, up), offset, figure));
        }
    }

    private void up(Length from, Length to, Length across, Length offset, String what) {
        if (from.compareTo(to) < 0) {
            String figure = what + figures.of(to.minus(from));
            drawing.add(new Dimension(Spot.of(across, from), Spot.of(across, to), offset, figure));
        }
    }
}
