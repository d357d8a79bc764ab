package org.fencecore.packet;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fencecore.BoardAtPost;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.boarding.Privacy;
import org.fencecore.layout.Face;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.Treatment;
import org.fencecore.stakeout.StakeSheet;
import org.fencecore.stakeout.StringLayout;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Written;

/**
 * The sheet a crew of two builds from, as plain text: what to watch for, strings, stakes, holes, rails, boards, gates
 * and the shopping list, in the order of the work.
 *
 * <p>Lengths are rounded once, here, to the marks of the tape it is given; 1/16 in when not said.
 */
public final class BuildSheet {

    private final FencePlan plan;
    private final Takeoff takeoff;
    private final TapeFormat tape;
    private final StringLayout strings;
    private final StakeSheet stakes;

    private BuildSheet(FencePlan plan, Takeoff takeoff, TapeFormat tape) {
        this.plan = plan;
        strings = StringLayout.of(plan);
        stakes = StakeSheet.of(plan);
        this.takeoff = takeoff;
        this.tape = tape;
    }

    /**
     * Returns the sheet of a plan, in feet and inches to the sixteenth.
     *
     * @param plan the plan
     * @param takeoff its takeoff
     * @return the sheet
     */
    public static BuildSheet of(FencePlan plan, Takeoff takeoff) {
        return new BuildSheet(
                Objects.requireNonNull(plan, "plan"),
                Objects.requireNonNull(takeoff, "takeoff"),
                TapeFormat.feetAndInches(16));
    }

    /**
     * Returns this sheet for another tape.
     *
     * @param newTape how lengths are written, such as {@code TapeFormat.millimetres(0)}
     * @return the sheet
     */
    public BuildSheet withTape(TapeFormat newTape) {
        return new BuildSheet(plan, takeoff, Objects.requireNonNull(newTape, "newTape"));
    }

    /**
     * Returns the sheet as text.
     *
     * @return the text, lines ended by a line feed
     */
    public String toText() {
        StringBuilder text = new StringBuilder();
        summary(text);
        cautions(text);
        findings(text);
        if (!plan.runs().isEmpty()) {
            strings(text);
            stakes(text);
            posts(text);
            rails(text);
            boards(text);
            gates(text);
            shopping(text);
        }
        return text.toString();
    }

    private Length half() {
        return plan.style().postLumber().width().dividedBy(2);
    }

    private void summary(StringBuilder text) {
        Length fence = plan.runs().stream().map(Run::length).reduce(Length.ZERO, Length::plus);
        text.append("BUILD SHEET\n\n");
        text.append("  Lot: ").append(plan.site().lot().courses().size()).append(" sides, ");
        plan.site()
                .lot()
                .area()
                .ifPresent(area -> text.append(Math.round(area.squareFeet())).append(" sq ft, "));
        text.append(plan.site().lot().closure()).append('\n');
        text.append("  Fence: ")
                .append(tape.format(fence))
                .append(" on ")
                .append(plural(plan.runs().size(), "side"))
                .append(", ")
                .append(plural(plan.posts().size(), "post"))
                .append(", ")
                .append(plural(plan.bays().size(), "bay"))
                .append(", ")
                .append(plural(plan.gates().size(), "gate"))
                .append(", ")
                .append(plural(plan.boardCount(), "board"))
                .append('\n');
        text.append("  Pattern: ")
                .append(plan.style().pattern())
                .append(plan.style().isHorizontal() ? ", horizontal; courses " : "; boards ")
                .append(tape.format(plan.style().rails().boardLength()))
                .append(plan.style().isHorizontal() ? " high together\n" : " long\n");
        if (allFindings().stream().anyMatch(finding -> finding.severity() == Severity.BLOCKER)) {
            text.append("\n  *** THIS FENCE CANNOT BE BUILT AS DESCRIBED: see the findings marked BLOCKER. ***\n");
        }
    }

    static String plural(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }

    private static void cautions(StringBuilder text) {
        text.append("\n1. BEFORE ANYTHING ELSE\n");
        for (String caution : Cautions.all()) {
            wrap(text, "  - ", caution);
        }
    }

    private void findings(StringBuilder text) {
        text.append("\n2. FINDINGS\n");
        List<Finding> findings = allFindings();
        if (findings.isEmpty()) {
            text.append("  none\n");
        }
        for (Finding finding : findings) {
            String remedy = finding.remedy().isEmpty() ? "" : " What to do: " + finding.remedy() + ".";
            String source = finding.source().map(cited -> " [" + cited + "]").orElse("");
            wrap(
                    text,
                    "  " + finding.severity() + "  ",
                    finding.place() + ": " + finding.message() + "." + remedy + source);
        }
    }

    /** What the plan, its strings and stakes and the takeoff found, most serious first. */
    private List<Finding> allFindings() {
        return Stream.of(plan.findings(), strings.findings(), stakes.findings(), takeoff.findings())
                .flatMap(List::stream)
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
    }

    private void strings(StringBuilder text) {
        section(text, "3. STRINGS AND CORNERS", StringTable.strings(plan, tape));
        notes(
                text,
                "Strings run " + tape.format(plan.site().setback())
                        + " inside the boundary and mark the outside face of the posts.",
                "From and to the lot corner: level, along the side, to the middle of the post. Off the side: square to it,"
                        + " to the same middle.");
        text.append("\n  Batter boards hold the strings beyond the corners:\n")
                .append(StringTable.boards(strings, tape).toText("  "));
        notes(
                text,
                "Where: beyond the start or the end of a side, "
                        + tape.format(strings.spec().setBack())
                        + " past where the strings cross. String: how long it is from board to board. Along the string: from"
                        + " the string's first corner to where it crosses the board. From outer stake: along the board, from"
                        + " where the two boards of a corner meet.",
                "A board that is not on the lot stands on a neighbour's ground or in the street: ask first. Whether a"
                        + " house, a tree or a wall is in the way was not known here.");
        TextTable corners = StringTable.corners(strings, tape);
        if (!corners.isEmpty()) {
            text.append(
                            "\n  To prove a corner, mark both strings from where they cross and measure between the marks:\n")
                    .append(corners.toText("  "));
            notes(
                    text,
                    "First string: that of the side named first. Tape everything level. Move the string, never the mark,"
                            + " until the tape reads the diagonal.",
                    "Set a corner post square to the side whose boards stop. Where the corner is not square the post"
                            + " stands a little proud of the other string: plane it there, or hollow the rail.",
                    plan.style().isHorizontal()
                            ? "There are no rails to mitre: the angle given is that of the corner, halved."
                            : "Rails are mitred off square by the angle given, with the long point outside; where a saw does"
                                    + " not turn so far, mark and cut by hand.",
                    "The side whose boards stop ends flush with its "
                            + (plan.style().isHorizontal() ? "posts" : "rails")
                            + ", and the "
                            + (plan.style().isHorizontal() ? "boards" : "first board")
                            + " of the other "
                            + (plan.style().isHorizontal() ? "lap" : "laps")
                            + " their edges; where the corner is not square, bevel the edges to meet.");
        }
        TextTable diagonals = StringTable.diagonals(strings, tape);
        if (!diagonals.isEmpty()) {
            text.append("\n  To prove them all, measure from where strings cross, or end, to where strings cross:\n")
                    .append(diagonals.toText("  "));
        }
    }

    private void stakes(StringBuilder text) {
        section(text, "4. STAKES", StakeTable.of(stakes, tape));
        notes(
                text,
                "Have underground lines marked before a stake is driven.",
                "From start and from end: along the string, from where the strings cross or the string ends, to the middle of"
                        + " the post; the two together are the whole string. Level, or on ground for a tape that lies on it. Hook"
                        + " the tape once and mark all stakes; do not step off from stake to stake.",
                "Off string: square to it and inside, to the middle of the post. Drop: plumb from the string to the ground;"
                        + " the string is tied " + stringHeight()
                        + ". Cut or fill: what would bring the ground as far below the string as at its tie.");
    }

    private String stringHeight() {
        String above = tape.format(stakes.height().above());
        return stakes.height().isLevel()
                ? "level, " + above + " over the ground at the higher end"
                : above + " over the ground at both ends";
    }

    private void posts(StringBuilder text) {
        section(text, "5. POSTS AND HOLES", PostTable.of(plan, tape));
        notes(
                text,
                "Post middles stand " + tape.format(half()) + " inside the string, where section 4 puts them.",
                "Exposed: from the ground at the post to its top. Set posts uncut, corner and gate posts first, and brace"
                        + " them plumb until the concrete has hardened; then mark each top plumb from the ground at its"
                        + " post, sight from post to post, and cut.",
                "Post length is the least that will do. Holes are as deep as the post in the ground and the gravel under"
                        + " it.");
    }

    private void rails(StringBuilder text) {
        if (plan.style().isHorizontal()) {
            nailers(text);
            return;
        }
        section(text, "6. RAILS", RailTable.of(plan, tape));
        notes(
                text,
                "Marks are the TOP of each rail above the ground at the post, plumb, from the bottom rail up.",
                "Rails sit on the outside face of the posts and meet on the middle of line posts. Lengths are along the"
                        + " slope; at a corner to the long point.",
                "Cut both ends off square by the angle given, slanting the same way, so that they stand plumb; ends at a"
                        + " corner are mitred as well (section 3).");
    }

    private void nailers(StringBuilder text) {
        section(text, "6. NAILERS", CourseTable.nailers(plan, tape));
        notes(
                text,
                "There are no rails: boards are fixed to the outside faces of the posts. A nailer of "
                        + plan.style().railLumber()
                        + " stands plumb against the backs of the boards wherever posts are over "
                        + tape.format(plan.style().nailerSpacing())
                        + " apart, and ties them together; it hangs on the boards and stays off the ground.");
    }

    private void courses(StringBuilder text) {
        section(text, "7. BOARDS", CourseTable.parts(plan, tape));
        notes(
                text,
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

    /** What one sees through the fence, how its boards move, and whether the pattern goes on across the gates. */
    private void seen(StringBuilder text) {
        Set<String> lines = new LinkedHashSet<>();
        plan.stretches().forEach(stretch -> stretch.privacy().ifPresent(seen -> lines.add(privacy(seen))));
        plan.runs()
                .forEach(run -> run.gates()
                        .forEach(gate -> run.boardsThrough(gate)
                                .ifPresent(through -> lines.add(gate.name() + ": the boards "
                                        + (through.readsThrough() ? "read" : "do not quite read") + " through from "
                                        + tape.format(
                                                through.leaf().row(Face.OUTSIDE).gap()) + " apart on the leaf to "
                                        + Stream.of(through.before(), through.after())
                                                .flatMap(Optional::stream)
                                                .map(beside -> tape.format(
                                                        beside.row(Face.OUTSIDE).gap()))
                                                .distinct()
                                                .collect(Collectors.joining(" and "))
                                        + " beside it" + (through.readsThrough() ? "." : ": see the findings.")))));
        notes(text, lines.toArray(String[]::new));
    }

    private static String privacy(Privacy seen) {
        String solid = Math.round(seen.solid().percent()) + " % of the face is closed";
        return "Privacy: " + solid
                + seen.seeThroughFrom()
                        .map(angle -> angle.equals(Angle.ZERO)
                                ? ", seen through from straight in front."
                                : "; one starts to see through from " + Written.degrees(angle)
                                        + " off square, and at 60 deg "
                                        + Math.round(seen.visibleAt(Angle.ofDegrees(60))
                                                .percent())
                                        + " % is open.")
                        .orElse(", and nothing is seen through at any angle.");
    }

    private void boards(StringBuilder text) {
        if (plan.style().isHorizontal()) {
            courses(text);
            seen(text);
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
        section(text, "7. BOARDS", table);
        notes(
                text,
                "Begins: how far the boarding begins before the middle of the stretch's first post.",
                "Set each board to its mark in boards.csv: the level distance from that beginning to the edge of the board"
                        + " nearer to it. Carry marks down plumb; do not tape them along a sloping rail, and do not add gaps"
                        + " up.",
                "A full board stands at every corner, end and gate. " + bottoms());
        if (plan.stretches().stream()
                .anyMatch(stretch -> !stretch.boardsAtPosts().isEmpty())) {
            boolean notched = plan.stretches().stream()
                    .flatMap(stretch -> stretch.boardsAtPosts().stream())
                    .anyMatch(BoardAtPost::isNotched);
            notes(
                    text,
                    (notched
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
        if (!plan.style().boardEnds().equals(BoardEnds.square())) {
            notes(
                    text,
                    "Lengths and end cuts of all boards are in boards.csv: "
                            + plan.style().boardEnds() + ".");
        }
        seen(text);
    }

    private String bottoms() {
        SlopeSpec slope = plan.style().slope();
        if (slope.treatment() == Treatment.RACKED) {
            return "Board bottoms stand " + tape.format(slope.clearance())
                    + " above the ground at the posts unless the findings say otherwise.";
        }
        return "The fence runs " + slope.treatment() + ": how high the boards of each bay stand at its posts is in its"
                + " worksheet, and the gaps under them are in the elevations.";
    }

    private void gates(StringBuilder text) {
        if (plan.gates().isEmpty()) {
            return;
        }
        text.append("\n8. GATES\n");
        for (GateBay gate : plan.gates()) {
            text.append(GateText.of(gate, plan, tape));
        }
        notes(
                text,
                "Hang each frame between its posts, its inside face flush with theirs, to swing into the lot on hinges on the"
                        + " inside. Check that the ground inside stays clear of the leaf through the whole swing: the plan takes it as level"
                        + " across the fence.",
                "The weight of the leaf is not counted in the footing: set gate posts no less deep than their"
                        + " neighbours.");
    }

    private void shopping(StringBuilder text) {
        section(text, "9. TO BUY", materials(takeoff));
        section(text, "10. CUT LIST", CutTable.of(takeoff, tape));
        notes(
                text,
                "Each line is one or more sticks cut alike; the pieces in the order of the cuts. The saw takes "
                        + tape.format(takeoff.spec().kerf()) + " at each.");
    }

    static TextTable materials(Takeoff takeoff) {
        TextTable table = TextTable.of("quantity", "unit", "what", "note");
        for (MaterialLine line : takeoff.materials()) {
            table.row(line.quantity(), line.unit(), line.item(), line.note());
        }
        return table;
    }

    private static void section(StringBuilder text, String title, TextTable table) {
        text.append('\n').append(title).append('\n').append(table.toText("  "));
    }

    /** Sentences under a table, each starting a line. */
    private static void notes(StringBuilder text, String... sentences) {
        for (String sentence : sentences) {
            wrap(text, "  ", sentence);
        }
    }

    private static void wrap(StringBuilder text, String bullet, String paragraph) {
        int width = 110;
        String indent = " ".repeat(bullet.length());
        StringBuilder line = new StringBuilder(bullet);
        for (String word : paragraph.split(" ", -1)) {
            if (line.length() + word.length() > width) {
                text.append(line.toString().stripTrailing()).append('\n');
                line = new StringBuilder(indent);
            }
            line.append(word).append(' ');
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }
}
