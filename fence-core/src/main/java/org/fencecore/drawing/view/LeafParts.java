package org.fencecore.drawing.view;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.CourseBoard;
import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Shape;
import org.fencecore.drawing.Spot;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateLeaf;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;

/** The boards, frame and braces of a gate leaf in elevation, closed. */
final class LeafParts {

    private final GateLeaf leaf;
    private final HungLeaf hung;
    private final Length left;
    private final Length frameBottom;

    /** Takes the leaf and its gate, and how its run lies across the drawing. */
    LeafParts(HungLeaf hung, GateBay gate, Unrolled unrolled) {
        this.hung = hung;
        this.leaf = hung.leaf();
        this.left = unrolled.across(gate.opening()).start().plus(leaf.place().start());
        this.frameBottom = hung.frameBottom();
    }

    List<Shape> boards() {
        List<Shape> shapes = new ArrayList<>();
        hung.cuts()
                .ifPresent(cuts -> cuts.cuts()
                        .forEach(cut -> shapes.add(new Outline(
                                StretchParts.layer(cut.board().face()), spots(cut.outline(), Length.ZERO)))));
        hung.courses().ifPresent(part -> {
            for (CourseBoard board : part.boards()) {
                Length mark = part.mark(board.placement());
                Length depth = part.plumbWidth(board.placement());
                Length start = board.stations().start();
                Length end = board.stations().end();
                shapes.add(Outline.of(
                        Layer.OUTSIDE_BOARDS,
                        Spot.of(left.plus(start), part.bottomAt(start).plus(mark)),
                        Spot.of(left.plus(end), part.bottomAt(end).plus(mark)),
                        Spot.of(left.plus(end), part.bottomAt(end).plus(mark).plus(depth)),
                        Spot.of(
                                left.plus(start),
                                part.bottomAt(start).plus(mark).plus(depth))));
            }
        });
        return shapes;
    }

    List<Shape> frame() {
        List<Shape> shapes = new ArrayList<>();
        for (FramePiece piece : leaf.pieces()) {
            shapes.add(onLeaf(Layer.GATE_FRAME, piece.outline()));
        }
        for (GateBrace brace : leaf.braces()) {
            if (brace.kind() == BraceKind.CABLE) {
                List<Spot> ends = spots(brace.outline(), frameBottom);
                shapes.add(new Line(Layer.GATE_BRACE, ends));
            } else {
                shapes.add(onLeaf(Layer.GATE_BRACE, brace.outline()));
            }
        }
        return shapes;
    }

    private Outline onLeaf(Layer layer, List<ProfilePoint> corners) {
        return new Outline(layer, spots(corners, frameBottom));
    }

    private List<Spot> spots(List<ProfilePoint> corners, Length zero) {
        return corners.stream()
                .map(corner -> Spot.of(left.plus(corner.station()), zero.plus(corner.elevation())))
                .toList();
    }
}
