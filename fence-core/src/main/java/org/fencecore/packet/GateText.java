package org.fencecore.packet;

import java.util.Locale;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateLeaf;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** One gate as the person at the saw needs it: sizes, pieces with their cuts, brace, boards, and how high it hangs. */
final class GateText {

    private GateText() {}

    static String of(GateBay gate, FencePlan plan, TapeFormat tape) {
        GateLeaf leaf = gate.leaf();
        Length frameUp = plan.style().rails().bottomRailAboveBottoms();
        StringBuilder text = new StringBuilder()
                .append("  ")
                .append(gate.name())
                .append(", ")
                .append(gate.from())
                .append(" to ")
                .append(gate.to())
                .append(", hinges on ")
                .append(gate.hingePost())
                .append(", ")
                .append(leaf.hingeSide().name().toLowerCase(Locale.ROOT))
                .append(" seen from outside\n")
                .append("    opening ")
                .append(tape.format(leaf.clearOpening()))
                .append(" between posts, leaf ")
                .append(tape.format(leaf.width()))
                .append(" wide (gaps ")
                .append(tape.format(leaf.spec().hingeGap()))
                .append(" at the hinges, ")
                .append(tape.format(leaf.spec().latchGap()))
                .append(" at the latch), frame ")
                .append(tape.format(leaf.frameHeight()))
                .append(" high\n");
        TextTable pieces = TextTable.of("piece", "length", "cuts");
        for (FramePiece piece : leaf.pieces()) {
            pieces.row(piece.member(), tape.format(piece.length()), cuts(piece));
        }
        for (GateBrace brace : leaf.braces()) {
            boolean cable = brace.kind() == BraceKind.CABLE;
            pieces.row(
                    brace.kind(),
                    tape.format(brace.length()) + (cable ? " corner to corner" : " point to point"),
                    cable ? "less eyes and turnbuckle" : braceCuts(brace));
        }
        text.append(pieces.toText("    "));
        for (GateBrace brace : leaf.braces()) {
            text.append("    ")
                    .append(brace.kind())
                    .append(" from the ")
                    .append(brace.foot())
                    .append(" up to the ")
                    .append(brace.head())
                    .append(", rising ")
                    .append(Written.saw(brace.rise()))
                    .append('\n');
        }
        text.append("    square when both diagonals of the frame read ")
                .append(tape.format(leaf.diagonal()))
                .append('\n');
        gate.boards()
                .ifPresent(layout -> text.append("    boards: ")
                        .append(BoardTable.outside(layout))
                        .append(" outside, ")
                        .append(BoardTable.second(layout))
                        .append(" " + BoardTable.second(plan))
                        .append("; first mark at the left edge seen from outside\n"));
        text.append("    hang level: board bottoms ")
                .append(tape.format(gate.boardBottom().minus(gate.from().ground())))
                .append(" above the ground at ")
                .append(gate.from())
                .append(" and ")
                .append(tape.format(gate.boardBottom().minus(gate.to().ground())))
                .append(" at ")
                .append(gate.to())
                .append("; frame ")
                .append(tape.format(frameUp))
                .append(" above the board bottoms\n");
        return text.toString();
    }

    private static String braceCuts(GateBrace brace) {
        String rail = brace.railCut()
                .map(cut -> Written.saw(cut) + " off square against the rail")
                .orElse("");
        String stile = brace.stileCut()
                .map(cut -> Written.saw(cut) + (rail.isEmpty() ? " off square" : "") + " against the stile")
                .orElse("");
        return "both ends: " + rail + (rail.isEmpty() || stile.isEmpty() ? "" : ", ") + stile;
    }

    private static String cuts(FramePiece piece) {
        String first = Written.saw(piece.firstCut());
        String other = Written.saw(piece.otherCut());
        String square = Written.saw(Angle.ZERO);
        String ends = first.equals(square) && other.equals(square) ? "square" : first + " and " + other + " off square";
        return piece.laps() == 0 ? ends : ends + ", " + piece.laps() + " half-laps";
    }
}
