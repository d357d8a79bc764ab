package org.fencecore.drawing;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.GateBay;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.HingeSide;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.units.Length;

/** The boards, frame and braces of a gate leaf in elevation, closed. */
final class LeafParts {

    private final GateDesign design;
    private final GateBay gate;
    private final Length left;
    private final Length frameBottom;

    /** Takes the gate, how its run lies across the drawing, and how far boards stick out under the bottom rail. */
    LeafParts(GateBay gate, Unrolled unrolled, Length bottomRailAboveBottoms) {
        this.gate = gate;
        this.design = gate.design();
        Length leftGap = design.hingeSide() == HingeSide.LEFT
                ? design.spec().hingeGap()
                : design.spec().latchGap();
        this.left = unrolled.across(gate.opening()).start().plus(leftGap);
        this.frameBottom = gate.boardBottom().plus(bottomRailAboveBottoms);
    }

    List<Shape> boards(Length boardLength) {
        List<Shape> shapes = new ArrayList<>();
        gate.boards().ifPresent(layout -> {
            for (BoardPlacement board : layout.boards()) {
                shapes.add(Outline.rectangle(
                        Layer.of(board.face()),
                        left.plus(board.left()),
                        gate.boardBottom(),
                        left.plus(board.right()),
                        gate.boardBottom().plus(boardLength)));
            }
        });
        return shapes;
    }

    List<Shape> frame() {
        List<Shape> shapes = new ArrayList<>();
        for (FramePiece piece : design.pieces()) {
            shapes.add(Outline.rectangle(
                    Layer.GATE_FRAME,
                    left.plus(piece.across().start()),
                    frameBottom.plus(piece.up().start()),
                    left.plus(piece.across().end()),
                    frameBottom.plus(piece.up().end())));
        }
        for (GateBrace brace : design.braces()) {
            BraceOutline outline = BraceOutline.of(brace, design.hingeSide()).movedBy(left, frameBottom);
            shapes.add(new Outline(Layer.GATE_BRACE, outline.corners()));
        }
        return shapes;
    }
}
