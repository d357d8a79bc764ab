package org.fencecore.packet;

import java.util.List;
import org.fencecore.CourseBoard;
import org.fencecore.CourseRun;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Stretch;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** Horizontal boards: the marks of the courses on the posts, the boards of each, and the nailers between posts. */
final class CourseTable {

    private final FencePlan plan;
    private final TapeFormat tape;

    private CourseTable(FencePlan plan, TapeFormat tape) {
        this.plan = plan;
        this.tape = tape;
    }

    /** What the courses of each straight part come to. */
    static TextTable parts(FencePlan plan, TapeFormat tape) {
        return new CourseTable(plan, tape).parts();
    }

    /** Where the nailers stand. */
    static TextTable nailers(FencePlan plan, TapeFormat tape) {
        return new CourseTable(plan, tape).nailers();
    }

    /** Every board. */
    static TextTable boards(FencePlan plan, TapeFormat tape) {
        return new CourseTable(plan, tape).boards();
    }

    private TextTable parts() {
        TextTable table = TextTable.of(
                "stretch",
                "posts",
                "grade",
                "courses",
                "mark to mark",
                "gap",
                "ripped",
                "end cut",
                "odd courses",
                "even courses");
        for (Stretch stretch : plan.stretches()) {
            for (CourseRun part : stretch.courses()) {
                BoardLayout courses = part.layout().courses();
                table.row(
                        stretch,
                        posts(stretch, part),
                        Written.percent(part.grade()),
                        courses.count(),
                        tape.format(part.grade()
                                .lengthOver(courses.row(Face.OUTSIDE).pitch())),
                        tape.format(BoardTable.gap(courses)),
                        BoardTable.ripped(courses, tape),
                        Written.saw(part.endCut()),
                        lengths(part, 0),
                        courses.count() > 1 ? lengths(part, 1) : "none");
            }
        }
        return table;
    }

    private String lengths(CourseRun part, int course) {
        List<String> lengths = part.layout().pieces(course).stream()
                .map(piece -> tape.format(part.grade().lengthOver(piece.length())))
                .toList();
        return String.join(" + ", lengths);
    }

    /** The posts that a part runs between, by their numbers. */
    private static String posts(Stretch stretch, CourseRun part) {
        return number(stretch, part.posts().get(0)) + "-"
                + number(stretch, part.posts().get(part.posts().size() - 1));
    }

    private static int number(Stretch stretch, Length station) {
        return stretch.bays().stream()
                .filter(bay -> bay.slope().start().equals(station))
                .findFirst()
                .map(bay -> bay.from().number())
                .orElseGet(() -> stretch.to().number());
    }

    private TextTable nailers() {
        TextTable table = TextTable.of("stretch", "after post", "nailer", "from the middle of that post", "length");
        String length = tape.format(plan.style().rails().boardLength());
        for (Stretch stretch : plan.stretches()) {
            int number = 0;
            for (CourseRun part : stretch.courses()) {
                for (Length nailer : part.nailers()) {
                    number++;
                    Length post = part.posts().stream()
                            .filter(each -> each.compareTo(nailer) < 0)
                            .reduce((before, after) -> after)
                            .orElseThrow();
                    table.row(stretch, number(stretch, post), number, tape.format(nailer.minus(post)), length);
                }
            }
        }
        return table;
    }

    private TextTable boards() {
        TextTable table = TextTable.of(
                "where",
                "measured from",
                "course",
                "mark above the bottom line",
                "width",
                "board",
                "from",
                "to",
                "length",
                "end cut");
        for (Stretch stretch : plan.stretches()) {
            for (CourseRun part : stretch.courses()) {
                Length first = part.posts().get(0);
                int course = 0;
                int number = 0;
                for (CourseBoard board : part.boards()) {
                    number = board.course() == course ? number + 1 : 1;
                    course = board.course();
                    table.row(
                            stretch + ", posts " + posts(stretch, part),
                            "middle of post " + number(stretch, first),
                            course,
                            tape.format(part.mark(board.placement())),
                            tape.format(board.placement().width()),
                            number,
                            tape.format(board.stations().start().minus(first)),
                            tape.format(board.stations().end().minus(first)),
                            tape.format(board.length()),
                            Written.saw(part.endCut()));
                }
            }
        }
        for (GateBay gate : plan.gates()) {
            gate.leaves().forEach(leaf -> leaf.courses().ifPresent(part -> leaf(table, leaf.name(), part)));
        }
        return table;
    }

    private void leaf(TextTable table, String name, CourseRun part) {
        for (CourseBoard board : part.boards()) {
            table.row(
                    name,
                    "left edge of the leaf seen from outside",
                    board.course(),
                    tape.format(part.mark(board.placement())),
                    tape.format(board.placement().width()),
                    1,
                    tape.format(board.stations().start()),
                    tape.format(board.stations().end()),
                    tape.format(board.length()),
                    Written.saw(part.endCut()));
        }
    }
}
