package org.fencecore.packet;

import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Stretch;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/** Every board with its mark: where its left edge goes, from the start of its stretch or the left edge of its gate. */
final class BoardTable {

    private BoardTable() {}

    static TextTable of(FencePlan plan, TapeFormat tape) {
        TextTable table = TextTable.of("where", "face", "board", "mark", "width", "kind");
        for (Stretch stretch : plan.stretches()) {
            stretch.boards().ifPresent(layout -> add(table, stretch.toString(), layout, tape));
        }
        for (GateBay gate : plan.gates()) {
            gate.boards().ifPresent(layout -> add(table, gate.name(), layout, tape));
        }
        return table;
    }

    private static void add(TextTable table, String where, BoardLayout layout, TapeFormat tape) {
        for (BoardPlacement board : layout.boards()) {
            table.row(
                    where,
                    board.face() == Face.OUTSIDE ? "outside" : "inside",
                    board.index() + 1,
                    tape.format(board.left()),
                    tape.format(board.width()),
                    board.isFull() ? "full" : "ripped");
        }
    }

    static int outside(BoardLayout layout) {
        return layout.row(Face.OUTSIDE).count();
    }

    static int inside(BoardLayout layout) {
        return layout.count() - outside(layout);
    }

    static String fit(BoardLayout layout) {
        return switch (layout.choice()) {
            case FULL_BOARDS -> "all full, equal gaps";
            case MIDDLE_RIPPED -> "ripped in the middle";
            case MIDDLE_RIPPED_CLOSER -> "ripped in the middle, closer";
            case ALL_RIPPED -> "all ripped alike";
            case RULES_BROKEN -> "see the findings";
        };
    }

    static Length gap(BoardLayout layout) {
        return layout.row(Face.OUTSIDE).gap();
    }
}
