package org.fencecore.json;

import static org.fencecore.json.Basics.COUNT;
import static org.fencecore.json.Basics.toldListOf;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.GeometryForms.INTERVAL;
import static org.fencecore.json.Quantities.ANGLE;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.SLOPE;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fencecore.CourseBoard;
import org.fencecore.CourseRun;
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
            required("shift", LENGTH, BoardLayout::shift, "how far the second row is moved from mid-gap, to the right"),
            required("rows", toldListOf(ROW), BoardShapes::rows, "row by row"));

    private static final Shape<CourseBoard> COURSE_BOARD = Told.of(
            "courseBoard",
            "A board of a course.",
            required("stations", INTERVAL, CourseBoard::stations, "the level stretch along the run that it covers"),
            required("length", LENGTH, CourseBoard::length, "the length to cut, along the grade"));

    static final Shape<CourseRun> COURSES = Told.of(
            "courses",
            "Horizontal boards with posts behind them. Boards of the third, fifth and so on courses are as those of the"
                    + " first, of the fourth, sixth and so on as those of the second.",
            required("stations", INTERVAL, CourseRun::stations, "the stretch that they cover"),
            required(
                    "bottomAtStart",
                    LENGTH,
                    run -> run.bottomAt(run.stations().start()),
                    "the height of their lowest edge where they begin"),
            required("grade", SLOPE, CourseRun::grade, "how they rise"),
            required("endCut", ANGLE, CourseRun::endCut, "the cut of their ends, off square"),
            required(
                    "shares",
                    BOARDS,
                    run -> run.layout().courses(),
                    "how courses share the height square to the grade, from the bottom as boards do from the left"),
            required("first", toldListOf(COURSE_BOARD), run -> course(run, 1), "the boards of the first course"),
            required("second", toldListOf(COURSE_BOARD), run -> course(run, 2), "the boards of the second course"),
            required("posts", toldListOf(LENGTH), CourseRun::posts, "where the posts are that they are fixed to"),
            required("nailers", toldListOf(LENGTH), CourseRun::nailers, "where nailers between posts are"),
            required("boardCount", COUNT, CourseRun::boardCount, "how many boards in all"));

    private BoardShapes() {}

    private static List<CourseBoard> course(CourseRun run, int number) {
        return run.boards().stream()
                .dropWhile(board -> board.course() < number)
                .takeWhile(board -> board.course() == number)
                .toList();
    }

    private static List<BoardRow> rows(BoardLayout layout) {
        return Stream.of(Face.values())
                .map(layout::row)
                .filter(row -> row.count() > 0)
                .toList();
    }
}
