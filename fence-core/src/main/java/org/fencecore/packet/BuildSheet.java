package org.fencecore.packet;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.rail.RailSpec;
import org.fencecore.stakeout.StakeSheet;
import org.fencecore.stakeout.StringLayout;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.takeoff.Takeoff;
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
    private final Optional<String> job;
    private final StringLayout strings;
    private final StakeSheet stakes;

    private BuildSheet(FencePlan plan, Takeoff takeoff, TapeFormat tape, Optional<String> job) {
        this.plan = plan;
        this.job = job;
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
                TapeFormat.feetAndInches(16),
                Optional.empty());
    }

    /**
     * Returns this sheet for another tape.
     *
     * @param newTape how lengths are written, such as {@code TapeFormat.millimetres(0)}
     * @return the sheet
     */
    public BuildSheet withTape(TapeFormat newTape) {
        return new BuildSheet(plan, takeoff, Objects.requireNonNull(newTape, "newTape"), job);
    }

    /**
     * Returns this sheet with the name of the job on top.
     *
     * @param name whose fence it is, in any script; what no file may hold is replaced
     * @return the sheet
     */
    public BuildSheet withJob(String name) {
        return new BuildSheet(plan, takeoff, tape, Optional.of(Written.printable(name)));
    }

    /**
     * Returns the sheet as text.
     *
     * @return the text, lines ended by a line feed
     */
    public String toText() {
        return contents().toText();
    }

    /** Everything on the sheet, for other ways to write it. */
    SheetText contents() {
        SheetText text = new SheetText("BUILD SHEET");
        summary(text);
        cautions(text);
        findings(text);
        if (!plan.runs().isEmpty()) {
            strings(text);
            stakes(text);
            posts(text);
            rails(text);
            new BoardText(text, plan, tape).boards();
            gates(text);
            shopping(text);
        }
        return text;
    }

    private Length half() {
        return plan.style().postLumber().width().dividedBy(2);
    }

    /** How long all runs of a plan are together. */
    static Length length(FencePlan plan) {
        return plan.runs().stream().map(Run::length).reduce(Length.ZERO, Length::plus);
    }

    private void summary(SheetText text) {
        job.ifPresent(name -> text.fact("Job: " + name));
        text.fact("Lot: "
                + plan.site().lot().courses().size() + " sides"
                + ", "
                + plan.site()
                        .lot()
                        .area()
                        .map(area -> Math.round(area.squareFeet()) + " sq ft, ")
                        .orElse("")
                + plan.site().lot().closure());
        long sides = plan.runs().stream().mapToInt(Run::side).distinct().count();
        text.fact("Fence: " + tape.format(length(plan)) + " on " + plural((int) sides, "side") + ", "
                + plural(plan.posts().size(), "post") + ", "
                + plural(plan.bays().size(), "bay") + ", "
                + plural(plan.gates().size(), "gate") + ", " + plural(plan.boardCount(), "board"));
        boolean horizontal = plan.style().boards().isHorizontal();
        text.fact("Pattern: " + plan.style().pattern()
                + (horizontal ? ", horizontal; courses " : "; boards ")
                + tape.format(plan.style().rails().boardLength())
                + (horizontal ? " high together" : " long"));
        if (allFindings().stream().anyMatch(finding -> finding.severity() == Severity.BLOCKER)) {
            text.notice("THIS FENCE CANNOT BE BUILT AS DESCRIBED: see the findings marked BLOCKER.");
        }
    }

    static String plural(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }

    private static void cautions(SheetText text) {
        text.heading("1. BEFORE ANYTHING ELSE");
        Cautions.all().forEach(text::item);
    }

    private void findings(SheetText text) {
        text.heading("2. FINDINGS");
        List<Finding> findings = allFindings();
        if (findings.isEmpty()) {
            text.fact("none");
        }
        findings.forEach(text::finding);
    }

    /** What the plan, its strings and stakes and the takeoff found, most serious first. */
    private List<Finding> allFindings() {
        return Stream.of(plan.findings(), strings.findings(), stakes.findings(), takeoff.findings())
                .flatMap(List::stream)
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
    }

    private void strings(SheetText text) {
        section(text, "3. STRINGS AND CORNERS", StringTable.strings(plan, tape));
        notes(
                text,
                stringPlace() + " They mark the outside face of the posts.",
                "From and to the corner: level, along the side from where it begins and to where it ends, to the middle of"
                        + " the post. Off side: square to it, to the same middle."
                        + (plan.site().line().isPresent() ? " Sides are those of the line that was given." : ""));
        if (plan.site().line().isEmpty()
                && plan.site().fencedSides().stream()
                        .anyMatch(
                                side -> plan.site().lot().sides().get(side - 1).isCurved())) {
            notes(
                    text,
                    "A curved side is followed in straight parts that stay on the lot; from and to the corner is along these"
                            + " parts, so find their ends by the ties below.");
        }
        text.table(
                "To find them from the lot, swing two tapes from its corners until they meet:",
                TieTable.of(plan, strings, tape));
        notes(
                text,
                "East and north: of the first lot corner, in feet; of the two places where the tapes meet they tell which."
                        + " A side starts at the corner where its call begins. Tape level. The lot corners are the surveyor's marks: never take a fence or a hedge for one.");
        text.table("Batter boards hold the strings beyond the corners:", StringTable.boards(strings, tape));
        notes(
                text,
                "Where: beyond the start or the end of a side, "
                        + tape.format(strings.spec().setBack())
                        + " past where the strings cross. String: how long it is from board to board. Along the string: from"
                        + " the string's first corner to where it crosses the board. From outer stake: along the board, from"
                        + " where the two boards of a corner meet.",
                "A board that is not on the lot stands on a neighbour's ground or in the street: ask first. Whether a"
                        + " house, a tree or a wall is in the way was not known here.");
        boolean horizontal = plan.style().boards().isHorizontal();
        TextTable corners = StringTable.corners(strings, tape);
        if (!corners.isEmpty()) {
            text.table(
                    "To prove a corner, mark both strings from where they cross and measure between the marks:",
                    corners);
            notes(
                    text,
                    "First string: that of the side named first. Tape everything level. Move the string, never the mark,"
                            + " until the tape reads the diagonal.",
                    "Set a corner post square to the side whose boards stop. Where the corner is not square the post"
                            + " stands a little proud of the other string: plane it there, or hollow the rail.",
                    horizontal
                            ? "There are no rails to mitre: the angle given is that of the corner, halved."
                            : "Rails are mitred off square by the angle given, with the long point outside; where a saw does"
                                    + " not turn so far, mark and cut by hand.",
                    "The side whose boards stop ends flush with its "
                            + (horizontal
                                    ? "posts, and the boards of the other lap"
                                    : "rails, and the first board of the other laps")
                            + " their edges; where the corner is not square, bevel the lapping edges by what its angle is off 90 deg.");
        }
        TextTable diagonals = StringTable.diagonals(strings, tape);
        if (!diagonals.isEmpty()) {
            text.table(
                    "To prove them all, measure from where strings cross, or end, to where strings cross:", diagonals);
        }
    }

    private String stringPlace() {
        if (plan.posts().stream().anyMatch(Post::isSet)) {
            return "Strings run beside the posts at the ends of each run, as they were set.";
        }
        return plan.site().line().isPresent()
                ? "Strings run through the points of the line that was given, not at a distance from the boundary."
                : "Strings run " + tape.format(plan.site().setback()) + " inside the boundary.";
    }

    private void stakes(SheetText text) {
        section(text, "4. STAKES", StakeTable.of(stakes, tape));
        notes(
                text,
                "Have underground lines marked before a stake is driven.",
                "From start and from end: along the string, from where the strings cross or the string ends, to the middle of"
                        + " the post; the two together are the whole string. Level, or on ground for a tape that lies on it. Hook"
                        + " the tape once and mark all stakes; do not step off from stake to stake.",
                "Off string: square to it and inside, to the middle of the post. A distance below zero is that far beyond where"
                        + " the strings cross. Drop: plumb from the string to the ground;"
                        + " the string is tied " + stringHeight()
                        + ". Cut or fill: what would bring the ground as far below the string as at its tie.");
    }

    private String stringHeight() {
        String above = tape.format(stakes.height().above());
        return stakes.height().isLevel()
                ? "level, " + above + " over the ground at the higher end"
                : above + " over the ground at both ends";
    }

    private void posts(SheetText text) {
        section(text, "5. POSTS AND HOLES", PostTable.of(plan, tape));
        notes(
                text,
                "Post middles stand " + tape.format(half()) + " inside the string, where section 4 puts them.",
                "Exposed: from the ground at the post to its top. Set posts uncut, corner and gate posts first, and brace"
                        + " them plumb until the concrete has hardened; then mark each top plumb from the ground at its"
                        + " post, sight from post to post, and cut.",
                "Post length is the least that will do. Holes are as deep as the post in the ground and the base under"
                        + " it.");
        text.table("The holes by size, depths rounded up to the inch:", HoleTable.of(plan, takeoff, tape));
        notes(
                text,
                "Base: " + (plan.style().setting().isDryMixBase() ? "dry concrete mix" : "gravel")
                        + " under the post, counted in the depth. Bags: of "
                        + Written.bag(takeoff.spec().bag().weight())
                        + " of concrete mix, each hole rounded up to whole bags; "
                        + plan.holes().bags(takeoff.spec().bag()) + " for the job.");
    }

    private void rails(SheetText text) {
        if (plan.style().boards().isHorizontal()) {
            new BoardText(text, plan, tape).nailers();
            return;
        }
        section(text, "6. RAILS", RailTable.marks(plan, tape));
        notes(
                text,
                "Marks are the TOP of each rail above the ground at the post, plumb, from the bottom rail up. Boards: their"
                        + " bottoms above the ground at the post. Where a bay steps, the marks on the two sides of its post"
                        + " differ.");
        text.table("Pieces, rails counted from the bottom:", RailTable.pieces(plan, tape));
        RailSpec rails = plan.style().rails();
        notes(
                text,
                rails.isBetweenPosts()
                        ? "Rails stand between the posts, flush with their outside faces. Measure each bay before cutting."
                        : "Rails sit on the outside face of the posts and are joined on the middle of posts. Lengths are along"
                                + " the slope; at a corner to the long point.",
                "Cut both ends off square by the angle given, slanting the same way, so that they stand plumb"
                        + (rails.isBetweenPosts()
                                ? "."
                                : "; ends at a corner are mitred as well (section 3). Where two pieces of different"
                                        + " grade meet on a post, each keeps its own cut."));
        if (rails.trim().isPositive()) {
            notes(text, "Leave long: cut the piece so much longer, fix it, and trim it flush in place.");
        }
    }

    private void gates(SheetText text) {
        if (plan.gates().isEmpty()) {
            return;
        }
        text.heading("8. GATES");
        for (GateBay gate : plan.gates()) {
            GateText.write(text, gate, plan, tape);
        }
        notes(
                text,
                "Hang each frame between its posts, its face flush with theirs on the side it opens to, on hinges on that"
                        + " side. Check that the ground stays clear of the leaf through the whole swing"
                        + (plan.site().surface().isPresent() ? "." : ": the plan takes it as level across the fence."),
                "What hinges and screws are counted on for leaves out slamming, children who ride along, and the sideways"
                        + " load of the same screws. The weight of a leaf is counted in the footing of its hinge post, and where a wind is known"
                        + " the wind on it, shut or standing open.");
    }

    private void shopping(SheetText text) {
        section(text, "9. TO BUY", materials(takeoff));
        section(text, "10. CUT LIST", CutTable.of(takeoff, tape));
        notes(
                text,
                "Each line is one or more sticks cut alike; the pieces in the order of the cuts. The saw takes "
                        + tape.format(takeoff.spec().kerf()) + " at each."
                        + (takeoff.spec().cutting().endTrim().isZero()
                                ? ""
                                : " Trim "
                                        + tape.format(takeoff.spec().cutting().endTrim()) + " off each stick first."));
        TextTable least = TextTable.of("lumber", "in all", "could less do?");
        takeoff.cuts().forEach(cut -> least.row(cut.what(), cut.found(), cut.nearness()));
        text.table("How near to the least the sticks are:", least);
    }

    static TextTable materials(Takeoff takeoff) {
        TextTable table = TextTable.of("quantity", "unit", "what", "note");
        for (MaterialLine line : takeoff.materials()) {
            table.row(line.quantity(), line.unit(), line.item(), line.note());
        }
        return table;
    }

    private static void section(SheetText text, String title, TextTable table) {
        text.heading(title);
        text.table(table);
    }

    /** Sentences under a table, each starting a line. */
    private static void notes(SheetText text, String... sentences) {
        for (String sentence : sentences) {
            text.sentence(sentence);
        }
    }

    static void wrap(StringBuilder text, String bullet, String paragraph) {
        int width = 110;
        String indent = " ".repeat(bullet.length());
        StringBuilder line = new StringBuilder(bullet);
        for (String word : Written.printable(paragraph).split(" ", -1)) {
            if (line.length() + word.length() > width) {
                text.append(line.toString().stripTrailing()).append('\n');
                line = new StringBuilder(indent);
            }
            line.append(word).append(' ');
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }
}
