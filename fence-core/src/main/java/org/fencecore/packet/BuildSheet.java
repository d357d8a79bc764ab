package org.fencecore.packet;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * The sheet a crew of two builds from, as plain text: what to watch for, strings and stakes, holes, rails, boards, gates
 * and the shopping list, in the order of the work.
 *
 * <p>Lengths are rounded once, here, to the marks of the tape it is given; 1/16 in when not said.
 */
public final class BuildSheet {

    private static final Angle SECOND = Angle.ofDms(0, 0, 1);

    private final FencePlan plan;
    private final Takeoff takeoff;
    private final TapeFormat tape;

    private BuildSheet(FencePlan plan, Takeoff takeoff, TapeFormat tape) {
        this.plan = plan;
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
            section(text, "4. POSTS AND HOLES", PostTable.of(plan, tape));
            text.append("  Along: level distance from the middle of the side's first post; keep the tape level.\n")
                    .append("  Post middles stand ")
                    .append(tape.format(half()))
                    .append(" inside the string.\n")
                    .append(
                            "  Exposed: from the ground at the post to its top. Set posts uncut, corner and gate posts first, and"
                                    + " brace them plumb until the\n")
                    .append("  concrete has hardened; then mark each top plumb from the ground at its post, sight from"
                            + " post to post, and cut.\n")
                    .append("  Post length is the least that will do. Holes are as deep as the post in the ground and"
                            + " the gravel under it.\n");
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
                .append("; boards ")
                .append(tape.format(plan.style().rails().boardLength()))
                .append(" long\n");
        if (!plan.isBuildable()) {
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
        if (plan.findings().isEmpty() && takeoff.findings().isEmpty()) {
            text.append("  none\n");
        }
        for (List<Finding> findings : List.of(plan.findings(), takeoff.findings())) {
            for (Finding finding : findings) {
                String remedy = finding.remedy().isEmpty() ? "" : " What to do: " + finding.remedy() + ".";
                String source =
                        finding.source().map(cited -> " [" + cited + "]").orElse("");
                wrap(
                        text,
                        "  " + finding.severity() + "  ",
                        finding.place() + ": " + finding.message() + "." + remedy + source);
            }
        }
    }

    private void strings(StringBuilder text) {
        TextTable table = TextTable.of(
                "side",
                "string",
                "bearing",
                "first post",
                "from lot corner",
                "last post",
                "to lot corner",
                "off the side");
        for (Run run : plan.runs()) {
            Length side = plan.site()
                    .lot()
                    .outline()
                    .orElseThrow()
                    .side(run.side() - 1)
                    .length();
            table.row(
                    run.side(),
                    tape.format(run.string().length()),
                    run.string().bearing().roundedTo(SECOND),
                    run.posts().get(0).number(),
                    tape.format(run.startAlongSide()),
                    run.posts().get(run.posts().size() - 1).number(),
                    tape.format(side.minus(run.startAlongSide()).minus(run.length())),
                    tape.format(plan.site().setback().plus(half())));
        }
        section(text, "3. STRINGS AND CORNERS", table);
        text.append("  Strings run ")
                .append(tape.format(plan.site().setback()))
                .append(
                        " inside the boundary and mark the outside face of the posts. From and to the lot corner: level,\n")
                .append(
                        "  along the side, to the middle of the post; off the side: square to it, to the same middle.\n");
        TextTable corners = TextTable.of(
                "corner",
                "post",
                "angle",
                "on each string",
                "diagonal must read",
                "rails mitred",
                "boards stop",
                "boards lap");
        for (int i = 0; i < plan.runs().size(); i++) {
            CornerCheck.after(plan, i)
                    .ifPresent(check -> corners.row(
                            "sides " + check.arriving() + " and " + check.leaving(),
                            check.post().number(),
                            Written.saw(check.angle()),
                            tape.format(check.leg()),
                            tape.format(check.diagonal()),
                            Written.saw(check.mitre()),
                            "side " + check.arriving(),
                            "side " + check.leaving()));
        }
        if (!corners.isEmpty()) {
            text.append(
                            "\n  To prove a corner, mark both strings from where they cross and measure between the marks:\n")
                    .append(corners.toText("  "))
                    .append(
                            "  Set a corner post square to the side whose boards stop. Rails are mitred off square by the"
                                    + " angle given, with the long\n")
                    .append("  point outside; a saw that does not turn so far marks and cuts by hand. The side whose"
                            + " boards stop ends flush with its\n")
                    .append(
                            "  rails, and the first board of the other laps their edges; where the corner is not square,"
                                    + " bevel the edges to meet.\n");
        }
    }

    private void rails(StringBuilder text) {
        section(text, "5. RAILS", RailTable.of(plan, tape));
        text.append("  Marks are the TOP of each rail above the ground at the post, plumb, from the bottom rail up.\n")
                .append("  Rails sit on the outside face of the posts and meet on the middle of line posts. Lengths are"
                        + " along the slope;\n")
                .append(
                        "  at a corner to the long point. Cut both ends off square by the angle given, so that they stand"
                                + " plumb.\n");
    }

    private void boards(StringBuilder text) {
        TextTable table = TextTable.of(
                "stretch", "begins", "boarded", "outside", "gap", "inside", "ripped to fill", "at posts", "fit");
        for (Stretch stretch : plan.stretches()) {
            stretch.boards()
                    .ifPresent(layout -> table.row(
                            stretch,
                            tape.format(BoardTable.before(stretch)) + " before",
                            tape.format(stretch.boarded().length()),
                            BoardTable.outside(layout),
                            tape.format(BoardTable.gap(layout)),
                            BoardTable.inside(layout),
                            layout.ripped().isEmpty()
                                    ? "none"
                                    : layout.ripped().stream()
                                            .map(board -> tape.format(board.width()))
                                            .collect(Collectors.joining(", ")),
                            stretch.boardsAtPosts().size(),
                            BoardTable.fit(layout)));
        }
        section(text, "6. BOARDS", table);
        text.append(
                        "  Begins: how far the boarding begins before the middle of the stretch's first post. Set each board"
                                + " to its mark in boards.csv:\n")
                .append(
                        "  the level distance from that beginning to the edge of the board nearer to it. Carry marks down"
                                + " plumb; do not tape them along a\n")
                .append("  sloping rail, and do not add gaps up. A full board stands at every corner, end and gate.\n")
                .append("  Board bottoms stand ")
                .append(tape.format(plan.style().rack().clearance()))
                .append(" above the ground at the posts unless the findings say otherwise.\n");
        if (plan.stretches().stream()
                .anyMatch(stretch -> !stretch.boardsAtPosts().isEmpty())) {
            text.append(
                    "  At posts: boards of the inside face stop at the posts, which stand in their plane; boards.csv"
                            + " says what is kept of each.\n");
        }
    }

    private void gates(StringBuilder text) {
        if (plan.gates().isEmpty()) {
            return;
        }
        text.append("\n7. GATES\n");
        for (GateBay gate : plan.gates()) {
            text.append(GateText.of(gate, plan, tape));
        }
        text.append(
                        "  Hang each frame between its posts, its outside face flush with theirs, to swing into the lot. Check"
                                + " that the ground inside\n")
                .append(
                        "  stays clear of the leaf through the whole swing: the plan takes it as level across the fence.\n")
                .append("  The weight of the leaf is not counted in the footing: set gate posts no less deep than their"
                        + " neighbours.\n");
    }

    private void shopping(StringBuilder text) {
        section(text, "8. TO BUY", materials(takeoff));
        section(text, "9. CUT LIST", CutTable.of(takeoff, tape));
        text.append("  One line a stick; the pieces in the order of the cuts. The saw takes ")
                .append(tape.format(takeoff.spec().kerf()))
                .append(" at each.\n");
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
