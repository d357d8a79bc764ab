package org.fencecore.packet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fencecore.BoardAtPost;
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
        TextTable table = TextTable.of("where", "measured from", "face", "board", "mark", "width", "kind");
        for (Stretch stretch : plan.stretches()) {
            String from = tape.format(before(stretch)) + " before the middle of " + stretch.from();
            Map<BoardPlacement, BoardAtPost> atPosts = new HashMap<>();
            stretch.boardsAtPosts().forEach(board -> atPosts.put(board.board(), board));
            stretch.boards().ifPresent(layout -> {
                for (BoardPlacement board : layout.boards()) {
                    BoardAtPost atPost = atPosts.get(board);
                    add(
                            table,
                            stretch.toString(),
                            from,
                            board,
                            atPost == null ? kind(board) : kept(atPost, tape),
                            tape);
                }
            });
        }
        for (GateBay gate : plan.gates()) {
            gate.boards()
                    .ifPresent(layout -> layout.boards()
                            .forEach(board -> add(
                                    table,
                                    gate.name(),
                                    "left edge of the leaf seen from outside",
                                    board,
                                    kind(board),
                                    tape)));
        }
        return table;
    }

    private static void add(
            TextTable table, String where, String from, BoardPlacement board, String kind, TapeFormat tape) {
        table.row(
                where,
                from,
                board.face() == Face.OUTSIDE ? "outside" : "inside",
                board.index() + 1,
                tape.format(board.left()),
                tape.format(board.width()),
                kind);
    }

    private static String kind(BoardPlacement board) {
        return board.isFull() ? "full" : "ripped to this width";
    }

    private static String kept(BoardAtPost board, TapeFormat tape) {
        if (board.isLeftOut()) {
            return "left out, " + board.post() + " stands there";
        }
        List<String> strips = new ArrayList<>();
        if (board.before().isPositive()) {
            strips.add(tape.format(board.before()) + " before");
        }
        if (board.after().isPositive()) {
            strips.add(tape.format(board.after()) + " after");
        }
        return "rip: keep " + String.join(" and ", strips) + " " + board.post();
    }

    /** How far the boarding of a stretch begins before the middle of its first post. */
    static Length before(Stretch stretch) {
        return stretch.bays().get(0).slope().start().minus(stretch.boarded().start());
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
