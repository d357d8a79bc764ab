package org.fencecore.json;

import static org.fencecore.json.Basics.COUNT;
import static org.fencecore.json.Basics.toldListOf;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Quantities.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.BoardRow;
import org.fencecore.layout.Face;
import org.fencecore.layout.Fitting;

/** How boards that are laid out are told: not one by one, but in strips of boards alike at even steps. */
final class BoardShapes {

    /** What rounding to whole nanometres leaves between boards that are alike. */
    private static final long ALIKE = 2;

    /**
     * Neighbouring boards of one width at even steps.
     *
     * @param first the board with which it begins
     * @param last the board with which it ends
     * @param count how many they are
     */
    record Strip(BoardPlacement first, BoardPlacement last, int count) {

        /** The strips of a row from left to right, each as long as it can be. */
        static List<Strip> of(List<BoardPlacement> boards) {
            List<Strip> strips = new ArrayList<>();
            int start = 0;
            for (int i = 1; i <= boards.size(); i++) {
                if (i == boards.size() || !continues(boards, start, i)) {
                    strips.add(new Strip(boards.get(start), boards.get(i - 1), i - start));
                    start = i;
                }
            }
            return strips;
        }

        private static boolean continues(List<BoardPlacement> boards, int start, int next) {
            BoardPlacement first = boards.get(start);
            BoardPlacement board = boards.get(next);
            boolean step = next == start + 1 || isNear(step(boards, next - 1), step(boards, start));
            return step && isNear(board.width().nanometres(), first.width().nanometres());
        }

        private static long step(List<BoardPlacement> boards, int index) {
            return boards.get(index + 1).left().minus(boards.get(index).left()).nanometres();
        }

        private static boolean isNear(long a, long b) {
            return Math.abs(a - b) <= ALIKE;
        }
    }

    private static final Shape<Strip> STRIP = Told.of(
            "strip",
            "Neighbouring boards alike. Board k of n, from 0, begins at left + (lastLeft - left) k / (n - 1), to 3 nm.",
            required("count", COUNT, Strip::count, "how many boards"),
            required("width", LENGTH, strip -> strip.first().width(), "how wide each is"),
            required("left", LENGTH, strip -> strip.first().left(), "where the first begins, from the left end"),
            required("lastLeft", LENGTH, strip -> strip.last().left(), "where the last begins"));

    private static final Shape<BoardRow> ROW = Told.of(
            "boardRow",
            "The boards of one face, from left to right seen from outside.",
            required("face", Basics.oneOf(Face.class), BoardRow::face, "the face they are fixed to"),
            required("count", COUNT, BoardRow::count, "how many"),
            required("gap", LENGTH, BoardRow::gap, "the gap between them"),
            required("strips", toldListOf(STRIP), row -> Strip.of(row.boards()), "where they are"));

    static final Shape<BoardLayout> BOARDS = Told.of(
            "boards",
            "Boards in a clear length.",
            required("clearLength", LENGTH, BoardLayout::clearLength, "the length they fill"),
            required("fitting", Basics.oneOf(Fitting.class), BoardLayout::choice, "how they were made to fit"),
            required("count", COUNT, BoardLayout::count, "how many on all faces"),
            maybe("lap", LENGTH, BoardLayout::lap, "how far one row laps the other"),
            required("rows", toldListOf(ROW), BoardShapes::rows, "row by row"));

    private BoardShapes() {}

    private static List<BoardRow> rows(BoardLayout layout) {
        return Stream.of(Face.values())
                .map(layout::row)
                .filter(row -> row.count() > 0)
                .toList();
    }
}
