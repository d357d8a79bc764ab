package org.fencecore.drawing;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.GateBay;
import org.fencecore.boarding.BoardCut;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateLeaf;
import org.fencecore.geometry.ProfilePoint;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;

/** The boards, frame and braces of a gate leaf in elevation, closed. */
final class LeafParts {

    private final GateLeaf leaf;
    private final GateBay gate;
    private final Length left;
    private final Length frameBottom;

    /** Takes the gate, how its run lies across the drawing, and how far boards stick out under the bottom rail. */
    LeafParts(GateBay gate, Unrolled unrolled, Length bottomRailAboveBottoms) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.left = unrolled.across(gate.opening()).start().plus(leaf.place().start());
        this.frameBottom = gate.boardBottom().plus(bottomRailAboveBottoms);
    }

    List<Shape> boards(FenceStyle style) {
        List<Shape> shapes = new ArrayList<>();
        gate.boards().ifPresent(layout -> {
            for (BoardCut cut : style.levelCuts(layout).cuts()) {
                shapes.add(new Outline(
                        Layer.of(cut.board().face()),
                        cut.outline().stream()
                                .map(corner -> Spot.of(
                                        left.plus(corner.station()),
                                        gate.boardBottom().plus(corner.elevation())))
                                .toList()));
            }
        });
        gate.courses().ifPresent(layout -> {
            for (BoardPlacement course : layout.courses().boards()) {
                shapes.add(Outline.rectangle(
                        Layer.of(course.face()),
                        left,
                        gate.boardBottom().plus(course.left()),
                        left.plus(layout.length()),
                        gate.boardBottom().plus(course.right())));
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
                List<Spot> ends = spots(brace.outline());
                shapes.add(new Line(Layer.GATE_BRACE, ends));
            } else {
                shapes.add(onLeaf(Layer.GATE_BRACE, brace.outline()));
            }
        }
        return shapes;
    }

    private Outline onLeaf(Layer layer, List<ProfilePoint> corners) {
        return new Outline(layer, spots(corners));
    }

    private List<Spot> spots(List<ProfilePoint> corners) {
        return corners.stream()
                .map(corner -> Spot.of(left.plus(corner.station()), frameBottom.plus(corner.elevation())))
                .toList();
    }
}
