package org.fencecore.packet;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.fencecore.BoardAtPost;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.Stretch;
import org.fencecore.boarding.BoardCut;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.jspecify.annotations.Nullable;

/** Every board with its mark: where its left edge goes, from the start of its stretch or the left edge of its gate. */
final class BoardTable {

    private BoardTable() {}

    static TextTable of(FencePlan plan, TapeFormat tape) {
        TextTable table =
                TextTable.of("where", "measured from", "face", "board", "mark", "width", "length", "kind", "ends");
        for (Stretch stretch : plan.stretches()) {
            String from = tape.format(before(stretch)) + " before the middle of " + stretch.from();
            Rows rows = new Rows(table, stretch.toString(), from, tape);
            Map<BoardPlacement, BoardAtPost> atPosts = new HashMap<>();
            stretch.boardsAtPosts().forEach(board -> atPosts.put(board.board(), board));
            stretch.cuts().ifPresent(cuts -> cuts.cuts().forEach(cut -> rows.add(cut, atPosts.get(cut.board()))));
        }
        for (GateBay gate : plan.gates()) {
            for (HungLeaf leaf : gate.leaves()) {
                Rows rows = new Rows(table, leaf.name(), "left edge of the leaf seen from outside", tape);
                leaf.cuts().ifPresent(cuts -> cuts.cuts().forEach(cut -> rows.add(cut, null)));
            }
        }
        return table;
    }

    /** Writes the boards of one place, those that meet a post strip by strip. */
    private record Rows(TextTable table, String where, String from, TapeFormat tape) {

        void add(BoardCut cut, @Nullable BoardAtPost atPost) {
            BoardPlacement board = cut.board();
            if (atPost == null) {
                row(cut, board.left(), board.width(), board.isFull() ? "full" : "ripped");
                return;
            }
            String post = atPost.post().toString();
            if (atPost.isLeftOut()) {
                row(cut, board.left(), Length.ZERO, "left out, " + post + " stands there");
            }
            if (atPost.isNotched()) {
                Length from = atPost.before();
                row(
                        cut,
                        board.left(),
                        board.width(),
                        "notched " + tape.format(atPost.cutWidth()) + " wide from " + tape.format(from) + " across, "
                                + tape.format(atPost.post().top().minus(cut.lowest())) + " up, round " + post);
                return;
            }
            if (atPost.before().isPositive()) {
                row(cut, board.left(), atPost.before(), "ripped, ends against " + post);
            }
            if (atPost.after().isPositive()) {
                row(cut, board.right().minus(atPost.after()), atPost.after(), "ripped, begins against " + post);
            }
        }

        private void row(BoardCut cut, Length mark, Length width, String kind) {
            BoardPlacement board = cut.board();
            table.row(
                    where,
                    from,
                    words(board.face()),
                    board.index() + 1,
                    tape.format(mark),
                    tape.format(width),
                    tape.format(cut.length()),
                    kind,
                    cut.ends());
        }
    }

    /** How far the boarding of a stretch begins before the middle of its first post. */
    static Length before(Stretch stretch) {
        return stretch.bays().get(0).slope().start().minus(stretch.boarded().start());
    }

    static int outside(BoardLayout layout) {
        return layout.row(Face.OUTSIDE).count();
    }

    /** What the packet calls the row of a face. */
    static String words(Face face) {
        return switch (face) {
            case OUTSIDE -> "outside";
            case INSIDE -> "inside";
            case COVER -> "over gaps";
        };
    }

    /** What the packet calls the second row of a plan, if its pattern has one. */
    static String second(FencePlan plan) {
        return words(plan.style().pattern().secondFace().orElse(Face.INSIDE));
    }

    /** How many boards a layout has in its second row. */
    static int second(BoardLayout layout) {
        return layout.count() - outside(layout);
    }

    /** How many boards of a stretch are left out because a post stands there. */
    static int leftOut(Stretch stretch) {
        return (int)
                stretch.boardsAtPosts().stream().filter(BoardAtPost::isLeftOut).count();
    }

    static String fit(BoardLayout layout) {
        return switch (layout.choice()) {
            case FULL_BOARDS -> "all full, equal gaps";
            case MIDDLE_SPLIT -> "ripped in the middle, gaps closer";
            case MIDDLE_RIPPED -> "ripped in the middle";
            case MIDDLE_RIPPED_CLOSER -> "ripped in the middle, closer";
            case ALL_RIPPED -> "all ripped alike";
            case RULES_BROKEN -> "see the findings";
        };
    }

    /** How wide boards are that are ripped to fill a layout; those ripped alike once. */
    static String ripped(BoardLayout layout, TapeFormat tape) {
        return layout.ripped().isEmpty()
                ? "none"
                : layout.ripped().size() + " to "
                        + layout.ripped().stream()
                                .map(board -> tape.format(board.width()))
                                .distinct()
                                .collect(Collectors.joining(", "));
    }

    static Length gap(BoardLayout layout) {
        return layout.row(Face.OUTSIDE).gap();
    }
}
