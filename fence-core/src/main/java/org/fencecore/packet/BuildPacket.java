package org.fencecore.packet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.FencePlan;
import org.fencecore.Run;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.sheet.Dxf;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.drawing.sheet.Svg;
import org.fencecore.estimate.Estimate;
import org.fencecore.estimate.Schedule;
import org.fencecore.stakeout.StakeSheet;
import org.fencecore.stakeout.StringLayout;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The whole packet of one fence as named files of text: the build sheet, the same with its drawings as one page for a
 * browser, tables for spreadsheets, drawings at true paper scale and in real size for other programs, and the worked
 * calculations.
 *
 * <pre>{@code
 * BuildPacket packet = BuildPacket.of(plan);
 * for (Map.Entry<String, String> file : packet.files().entrySet()) {
 *     Files.writeString(folder.resolve(file.getKey()), file.getValue());
 * }
 * }</pre>
 */
public final class BuildPacket {

    private final FencePlan plan;
    private final Takeoff takeoff;
    private final TapeFormat tape;
    private final Paper paper;
    private final Optional<String> job;
    private final Optional<Estimate> estimate;

    private BuildPacket(
            FencePlan plan,
            Takeoff takeoff,
            TapeFormat tape,
            Paper paper,
            Optional<String> job,
            Optional<Estimate> estimate) {
        this.plan = plan;
        this.takeoff = takeoff;
        this.tape = tape;
        this.paper = paper;
        this.job = job;
        this.estimate = estimate;
    }

    /**
     * Returns the packet of a plan, in feet and inches to the sixteenth and on Letter paper.
     *
     * @param plan the plan, buildable or not
     * @return the packet
     * @throws IllegalArgumentException if the plan has more pieces than {@link Takeoff#of(FencePlan)} lists
     */
    public static BuildPacket of(FencePlan plan) {
        return new BuildPacket(
                plan, Takeoff.of(plan), TapeFormat.feetAndInches(16), Paper.LETTER, Optional.empty(), Optional.empty());
    }

    /**
     * Returns the packet of the plan of an estimate, with the estimate among its files, and with the sticks that its prices
     * make the cheapest; in feet and inches to the sixteenth and on Letter paper.
     *
     * @param estimate the estimate
     * @return the packet
     */
    public static BuildPacket of(Estimate estimate) {
        return new BuildPacket(
                estimate.plan(),
                estimate.takeoff(),
                TapeFormat.feetAndInches(16),
                Paper.LETTER,
                Optional.empty(),
                Optional.of(estimate));
    }

    /**
     * Returns this packet with its lengths written for another tape, in the drawings too.
     *
     * @param newTape how lengths are written, such as {@code TapeFormat.millimetres(0)}
     * @return the packet
     */
    public BuildPacket withTape(TapeFormat newTape) {
        return new BuildPacket(plan, takeoff, Objects.requireNonNull(newTape, "newTape"), paper, job, estimate);
    }

    /**
     * Returns this packet with its drawings on other paper.
     *
     * @param newPaper the paper
     * @return the packet
     */
    public BuildPacket withPaper(Paper newPaper) {
        return new BuildPacket(plan, takeoff, tape, Objects.requireNonNull(newPaper, "newPaper"), job, estimate);
    }

    /**
     * Returns this packet with the name of the job on its sheets, its page and its drawings.
     *
     * @param name whose fence it is, in any script; what no file may hold is replaced
     * @return the packet
     */
    public BuildPacket withJob(String name) {
        return new BuildPacket(plan, takeoff, tape, paper, Optional.of(Written.printable(name)), estimate);
    }

    /**
     * Returns the build sheet.
     *
     * @return the sheet, also among the {@link #files}
     */
    public BuildSheet sheet() {
        BuildSheet sheet = BuildSheet.of(plan, takeoff).withTape(tape);
        return job.map(sheet::withJob).orElse(sheet);
    }

    /**
     * Writes the packet as one page for a browser, to read on a phone in the yard and to print on Letter or A4: the build
     * sheet with the drawings in it, every board with its mark, and the worked calculations, the long ones folded. It
     * needs no other file and has no scripts; tables and drawings wider than the screen scroll in boxes of their own.
     *
     * <p>Printed at 100 % its drawings have their true scale on the paper they were made for, without its white margins,
     * and those for Letter on A4 too; those for A4 come out 3 % smaller on Letter, and larger paper needs the drawings' own
     * files. The scale bar always tells.
     *
     * @return the text of an HTML file, to be saved as UTF-8; it is well-formed XML but for the first line
     */
    public String page() {
        String title = job.map(name -> "Fence packet: " + name).orElse("Fence packet");
        PacketPage page = new PacketPage(title, sheet().contents(), paper, worksheets());
        Drawings drawings = new Drawings(plan, tape, job);
        List<Drawing> pictures = new ArrayList<>(List.of(drawings.plan()));
        plan.runs().forEach(run -> pictures.addAll(drawings.elevation(run)));
        page.drawAfter("findings", pictures);
        if (!plan.runs().isEmpty()) {
            page.draw(
                            "boards",
                            drawings.boardMarks().values().stream()
                                    .flatMap(List::stream)
                                    .toList())
                    .fold("boards", BoardTable.of(plan, tape))
                    .draw("gates", drawings.gates());
        }
        return page.write();
    }

    /**
     * Writes all files.
     *
     * @return the text of each file by its name, the build sheet first, unmodifiable
     */
    public Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("build-sheet.txt", sheet().toText());
        files.put("packet.html", page());
        estimate.map(EstimateSheet::of).ifPresent(priced -> {
            files.put("estimate.txt", job.map(priced::withJob).orElse(priced).toText());
            files.put("estimate.csv", priced.toCsv());
        });
        if (!plan.runs().isEmpty()) {
            StringLayout strings = StringLayout.of(plan);
            files.put("strings.csv", StringTable.strings(plan, tape).toCsv());
            files.put("ties.csv", TieTable.of(plan, strings, tape).toCsv());
            files.put("batter-boards.csv", StringTable.boards(strings, tape).toCsv());
            if (!strings.corners().isEmpty()) {
                files.put("corners.csv", StringTable.corners(strings, tape).toCsv());
            }
            files.put("stakes.csv", StakeTable.of(StakeSheet.of(plan), tape).toCsv());
            files.put("posts.csv", PostTable.of(plan, tape).toCsv());
            files.put("holes.csv", HoleTable.of(plan, takeoff, tape).toCsv());
            if (plan.style().boards().isHorizontal()) {
                files.put("nailers.csv", CourseTable.nailers(plan, tape).toCsv());
                files.put("courses.csv", CourseTable.boards(plan, tape).toCsv());
            } else {
                files.put("rails.csv", RailTable.marks(plan, tape).toCsv());
                files.put("rail-pieces.csv", RailTable.pieces(plan, tape).toCsv());
                files.put("boards.csv", BoardTable.of(plan, tape).toCsv());
            }
            files.put("to-buy.csv", BuildSheet.materials(takeoff).toCsv());
        }
        drawings(files);
        StringBuilder worked = new StringBuilder();
        for (Worksheet worksheet : worksheets()) {
            // A name from outside may hold what no file may.
            worksheet
                    .toText()
                    .lines()
                    .forEach(line -> worked.append(Written.printable(line)).append('\n'));
            worked.append('\n');
        }
        files.put("worksheets.txt", worked.toString());
        return Collections.unmodifiableMap(files);
    }

    private List<Worksheet> worksheets() {
        List<Worksheet> worksheets = new ArrayList<>(plan.worksheets());
        worksheets.addAll(StringLayout.of(plan).worksheets());
        estimate.ifPresent(priced -> {
            worksheets.add(priced.worksheet());
            worksheets.add(priced.load().worksheet());
            priced.schedule().map(Schedule::worksheet).ifPresent(worksheets::add);
        });
        return worksheets;
    }

    /** Each drawing for paper, a long one over several sheets, and whole for other programs. */
    private void drawings(Map<String, String> files) {
        Drawings drawings = new Drawings(plan, tape, job);
        files.put("plan.svg", Svg.write(drawings.plan(), paper));
        files.put("plan.dxf", Dxf.write(drawings.plan(), paper));
        for (Run run : plan.runs()) {
            put(files, fileName(run), drawings.elevation(run));
            files.put(fileName(run) + ".dxf", Dxf.write(drawings.wholeElevation(run), paper));
        }
        drawings.boardMarks()
                .forEach((stretch, sheets) ->
                        put(files, "board-marks-" + stretch.toString().replace(' ', '-'), sheets));
        int number = 0;
        for (Drawing gate : drawings.gates()) {
            number++;
            files.put("gate-" + number + ".svg", Svg.write(gate, paper));
            files.put("gate-" + number + ".dxf", Dxf.write(gate, paper));
        }
    }

    private void put(Map<String, String> files, String name, List<Drawing> sheets) {
        int number = 0;
        for (Drawing sheet : sheets) {
            number++;
            files.put(name + (sheets.size() == 1 ? "" : "-sheet-" + number) + ".svg", Svg.write(sheet, paper));
        }
    }

    private static String fileName(Run run) {
        return run.name().replace(", part", "").replace(' ', '-');
    }
}
