package org.fencecore.packet;

import java.util.Locale;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateDesign;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** One gate as the person at the saw needs it: sizes, pieces with their cuts, brace, boards, and how high it hangs. */
final class GateText {

    private GateText() {}

    static String of(GateBay gate, FencePlan plan, TapeFormat tape) {
        GateDesign design = gate.design();
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
                .append(design.hingeSide().name().toLowerCase(Locale.ROOT))
                .append(" seen from outside\n")
                .append("    opening ")
                .append(tape.format(design.clearOpening()))
                .append(" between posts, leaf ")
                .append(tape.format(design.leafWidth()))
                .append(" wide (gaps ")
                .append(tape.format(design.spec().hingeGap()))
                .append(" at the hinges, ")
                .append(tape.format(design.spec().latchGap()))
                .append(" at the latch), frame ")
                .append(tape.format(design.frameHeight()))
                .append(" high\n");
        TextTable pieces = TextTable.of("piece", "length", "cuts");
        for (FramePiece piece : design.pieces()) {
            pieces.row(piece.member(), tape.format(piece.length()), "square");
        }
        for (GateBrace brace : design.braces()) {
            pieces.row("brace", tape.format(brace.length()) + " point to point", braceCuts(brace));
        }
        text.append(pieces.toText("    "));
        for (GateBrace brace : design.braces()) {
            text.append("    brace from the ")
                    .append(brace.foot())
                    .append(" up to the ")
                    .append(brace.head())
                    .append(", rising ")
                    .append(Written.saw(brace.rise()))
                    .append('\n');
        }
        text.append("    square when both diagonals of the frame read ")
                .append(tape.format(design.diagonal()))
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
        return "both ends: " + Written.saw(brace.railCut()) + " off square against the rail, "
                + Written.saw(brace.stileCut()) + " against the stile";
    }
}
