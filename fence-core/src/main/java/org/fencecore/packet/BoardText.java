package org.fencecore.packet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fencecore.Bay;
import org.fencecore.BoardAtPost;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Stretch;
import org.fencecore.boarding.BoardCuts;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.boarding.Privacy;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.GateBoards;
import org.fencecore.slope.KickBoard;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopShape;
import org.fencecore.slope.Treatment;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** The boards as the crew sets and cuts them, upright or in courses, with what carries courses in place of rails. */
final class BoardText {

    private static final Angle SIDEWAYS = Angle.ofDegrees(60);

    private final FencePlan plan;
    private final TapeFormat tape;
    private final SheetText text;

    BoardText(SheetText text, FencePlan plan, TapeFormat tape) {
        this.text = text;
        this.plan = plan;
        this.tape = tape;
    }

    /** Writes where the nailers stand that horizontal boards have instead of rails. */
    void nailers() {
        text.heading("6. NAILERS");
        text.table(CourseTable.nailers(plan, tape));
        notes("There are no rails: boards are fixed to the outside faces of the posts. A nailer of "
                + plan.style().railLumber()
                + " stands plumb against the backs of the boards wherever posts are over "
                + tape.format(plan.style().boards().nailerSpacing())
                + " apart, and ties them together; it hangs on the boards and stays off the ground.");
    }

    private void courses() {
        text.heading("7. BOARDS");
        text.table(CourseTable.parts(plan, tape));
        notes(
                "The bottom line runs straight from the mark of the lowest board on the first post to that on the last: "
                        + tape.format(plan.style().slope().clearance())
                        + " above the ground at the posts unless the findings say otherwise. Mark every course on every post"
                        + " from that line, plumb, with the marks in courses.csv; do not step off with a spacer.",
                "Boards end on the middle of a post, half of it to each, and at corners, ends and gates where courses.csv"
                        + " says. Cut both ends off square by the angle given so that they stand plumb, and lengths are from"
                        + " end to end along the board. Odd courses count from the lowest, and joints change post from course"
                        + " to course.",
                "Two fasteners where a board crosses a post or a nailer, and two in each end of a joint: drill for them, they"
                        + " stand near the end.");
    }

    /** What one sees through the fence, and whether the pattern goes on across the gates. */
    private void seen() {
        List<Privacy> seen = plan.stretches().stream()
                .flatMap(stretch -> stretch.privacy().stream())
                .toList();
        if (!seen.isEmpty()) {
            notes(privacy(seen));
        }
        Set<String> gates = new LinkedHashSet<>();
        plan.runs()
                .forEach(run -> run.gates()
                        .forEach(gate -> run.boardsThrough(gate).forEach(boards -> gates.add(through(gate, boards)))));
        gates.forEach(text::sentence);
    }

    private String through(GateBay gate, GateBoards boards) {
        return gate.name() + ": the boards " + (boards.readsThrough() ? "read" : "do not quite read") + " through from "
                + tape.format(BoardTable.gap(boards.leaf())) + " apart on the leaf to "
                + Stream.of(boards.before(), boards.after())
                        .flatMap(Optional::stream)
                        .map(beside -> tape.format(BoardTable.gap(beside)))
                        .distinct()
                        .collect(Collectors.joining(" and "))
                + " beside it" + (boards.readsThrough() ? "." : ": see the findings.");
    }

    /** From the most private stretch to the least; they differ by what their gaps came to. */
    private static String privacy(List<Privacy> stretches) {
        String solid = "Privacy: "
                + range(stretches.stream().map(each -> each.solid().percent())) + " % of the face is closed";
        List<Angle> from = stretches.stream()
                .flatMap(each -> each.seeThroughFrom().stream())
                .sorted()
                .toList();
        if (from.isEmpty()) {
            return solid + ", and nothing is seen through at any angle.";
        }
        if (from.get(0).equals(Angle.ZERO)) {
            return solid + ", seen through from straight in front.";
        }
        return solid + "; one starts to see through from " + Written.degrees(from.get(0)) + " off square"
                + (from.size() < stretches.size() || !from.get(0).equals(from.get(from.size() - 1)) ? " or more" : "")
                + ", and at " + Written.degrees(SIDEWAYS) + " "
                + range(stretches.stream().map(each -> each.visibleAt(SIDEWAYS).percent())) + " % is open.";
    }

    private static String range(Stream<Double> percents) {
        List<Long> rounded = percents.map(Math::round).sorted().distinct().toList();
        return rounded.get(0) + (rounded.size() == 1 ? "" : " to " + rounded.get(rounded.size() - 1));
    }

    /** Writes how the boards are set, cut, and what one sees between them. */
    void boards() {
        if (plan.style().boards().isHorizontal()) {
            courses();
            seen();
            return;
        }
        TextTable table = TextTable.of(
                "stretch",
                "begins",
                "boarded",
                "outside",
                "gap",
                "ripped to fill",
                BoardTable.second(plan),
                "cut at posts",
                "fit");
        for (Stretch stretch : plan.stretches()) {
            stretch.boards()
                    .ifPresent(layout -> table.row(
                            stretch,
                            tape.format(BoardTable.before(stretch)) + " before",
                            tape.format(stretch.boarded().length()),
                            BoardTable.outside(layout),
                            tape.format(BoardTable.gap(layout)),
                            BoardTable.ripped(layout, tape),
                            BoardTable.second(layout) - BoardTable.leftOut(stretch),
                            stretch.boardsAtPosts().size() - BoardTable.leftOut(stretch),
                            BoardTable.fit(layout)));
        }
        text.heading("7. BOARDS");
        text.table(table);
        notes(
                "Begins: how far the boarding begins before the middle of the stretch's first post.",
                "Set each board to its mark in boards.csv: the level distance from that beginning to the edge of the board"
                        + " nearer to it. Carry marks down plumb; do not tape them along a sloping rail, and do not add gaps"
                        + " up.",
                "A full board stands at every corner, end and gate. " + bottoms());
        kickBoards();
        tops();
        if (plan.stretches().stream()
                .anyMatch(stretch -> !stretch.boardsAtPosts().isEmpty())) {
            boolean notched = plan.stretches().stream()
                    .flatMap(stretch -> stretch.boardsAtPosts().stream())
                    .anyMatch(BoardAtPost::isNotched);
            notes((notched
                            ? "Boards of the inside face are notched round the posts, which stand in their plane and end"
                                    + " below their tops: boards.csv has the notches, measured from the edge nearer to"
                                    + " the beginning and from the bottom; where nothing would be left above a post it"
                                    + " has the strips that are kept,"
                            : "Boards of the inside face stop at the posts, which stand in their plane: boards.csv has the"
                                    + " strips that are kept,")
                    + " and leaves out those under "
                    + tape.format(BoardAtPost.SMALLEST_STRIP)
                    + ". Against a corner post that stands turned, scribe the strip to fit.");
        }
        cuts();
        seen();
    }

    private void cuts() {
        List<BoardCuts> cuts = plan.stretches().stream()
                .flatMap(stretch -> stretch.cuts().stream())
                .toList();
        if (cuts.stream().allMatch(BoardCuts::areAllSquare)) {
            return;
        }
        BoardEnds ends = plan.style().boards().ends();
        notes("Lengths and end cuts of all boards are in boards.csv"
                + (ends.equals(BoardEnds.square()) ? "." : ": " + ends + "."));
        boolean marked = !plan.style().top().isStraight()
                || plan.style().slope().underBoards() == SlopeSpec.UnderBoards.BOARDS_TO_GROUND;
        if (marked) {
            notes(
                    "Ends to the line of the tops or to the ground are marked in place: the cut list has such boards up to"
                            + " the next inch, boards.csv as long as they end up.");
        }
    }

    private String bottoms() {
        SlopeSpec slope = plan.style().slope();
        String usual = slope.treatment() == Treatment.RACKED
                ? "Board bottoms stand " + tape.format(slope.clearance())
                        + " above the ground at the posts unless section 6 says otherwise."
                : "The fence runs " + slope.treatment()
                        + ": section 6 has how high the boards of each bay stand at its two posts.";
        return slope.underBoards() == SlopeSpec.UnderBoards.OPEN
                ? usual
                : usual + " Gaps over " + tape.format(slope.maximumClearance()) + " are " + slope.underBoards()
                        + (slope.underBoards() == SlopeSpec.UnderBoards.KICK_BOARD
                                ? " (cut list), the lowest scribed to the ground "
                                        + tape.format(slope.minimumClearance()) + " off it."
                                : ", " + tape.format(slope.clearance()) + " off it.");
    }

    private void kickBoards() {
        TextTable table = TextTable.of("bay", "kick board", "begins", "length", "rip to");
        for (Bay bay : plan.bays()) {
            for (KickBoard board : bay.kickBoards()) {
                table.row(
                        bay.number(),
                        board.course(),
                        tape.format(board.reach().start().minus(bay.slope().start())) + " from " + bay.from(),
                        tape.format(board.length()),
                        tape.format(board.depth()));
            }
        }
        if (!table.isEmpty()) {
            text.table("Kick boards, counted down from the bottoms of the boards:", table);
            notes(
                    "Begins: level, from the middle of the bay's first post. Fix kick boards in the plane of the boards to"
                            + " the posts, and to cleats where they end between posts.");
        }
    }

    /** How the tops are struck, where they are not straight: an arc is drawn through three marks. */
    private void tops() {
        TopShape shape = plan.style().top();
        if (shape.isStraight()) {
            return;
        }
        notes("The tops run " + shape + ": set the boards long, mark the line on them, and cut. A board is "
                + tape.format(plan.style().rails().boardLength()) + " long where it stands as usual.");
        if (shape.rise().isZero()) {
            return;
        }
        TextTable table = TextTable.of("bay", "off the string at the middle", "at both quarters");
        for (Stretch stretch : plan.stretches()) {
            for (Bay bay : stretch.bays()) {
                Interval posts = Interval.of(bay.slope().start(), bay.slope().end());
                table.row(
                        bay.number(),
                        tape.format(off(stretch, bay, posts.middle())),
                        tape.format(off(
                                stretch,
                                bay,
                                Interval.of(posts.start(), posts.middle()).middle())));
            }
        }
        text.table("Marks for the tops, plumb from a string along the board tops from post to post:", table);
        notes("Bend a batten through the marks and the string's ends, and draw the arc along it.");
    }

    private Length off(Stretch stretch, Bay bay, Length station) {
        return stretch.topLine()
                .topIn(bay.slope(), station)
                .minus(bay.slope().bottomAt(station))
                .minus(plan.style().rails().boardLength());
    }

    /** Sentences under a table, each starting a line. */
    private void notes(String... sentences) {
        for (String sentence : sentences) {
            text.sentence(sentence);
        }
    }
}
