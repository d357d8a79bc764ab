package org.fencecore.packet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Run;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.ElevationView;
import org.fencecore.drawing.GateView;
import org.fencecore.drawing.Paper;
import org.fencecore.drawing.PlanView;
import org.fencecore.drawing.Svg;
import org.fencecore.stakeout.StakeSheet;
import org.fencecore.stakeout.StringLayout;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Worksheet;

/**
 * The whole packet of one fence as named files of text: the build sheet, tables for spreadsheets, drawings at true paper
 * scale, and the worked calculations.
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

    private BuildPacket(FencePlan plan, Takeoff takeoff, TapeFormat tape, Paper paper) {
        this.plan = plan;
        this.takeoff = takeoff;
        this.tape = tape;
        this.paper = paper;
    }

    /**
     * Returns the packet of a plan, in feet and inches to the sixteenth and on Letter paper.
     *
     * @param plan the plan, buildable or not
     * @return the packet
     * @throws IllegalArgumentException if the plan has more pieces than {@link Takeoff#of(FencePlan)} lists
     */
    public static BuildPacket of(FencePlan plan) {
        return new BuildPacket(plan, Takeoff.of(plan), TapeFormat.feetAndInches(16), Paper.LETTER);
    }

    /**
     * Returns the build sheet.
     *
     * @return the sheet, also among the {@link #files}
     */
    public BuildSheet sheet() {
        return BuildSheet.of(plan, takeoff).withTape(tape);
    }

    /**
     * Writes all files.
     *
     * @return the text of each file by its name, the build sheet first, unmodifiable
     */
    public Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("build-sheet.txt", sheet().toText());
        if (!plan.runs().isEmpty()) {
            StringLayout strings = StringLayout.of(plan);
            files.put("strings.csv", StringTable.strings(plan, tape).toCsv());
            files.put("batter-boards.csv", StringTable.boards(strings, tape).toCsv());
            if (!strings.corners().isEmpty()) {
                files.put("corners.csv", StringTable.corners(strings, tape).toCsv());
            }
            files.put("stakes.csv", StakeTable.of(StakeSheet.of(plan), tape).toCsv());
            files.put("posts.csv", PostTable.of(plan, tape).toCsv());
            if (plan.style().isHorizontal()) {
                files.put("nailers.csv", CourseTable.nailers(plan, tape).toCsv());
                files.put("courses.csv", CourseTable.boards(plan, tape).toCsv());
            } else {
                files.put("rails.csv", RailTable.of(plan, tape).toCsv());
                files.put("boards.csv", BoardTable.of(plan, tape).toCsv());
            }
            files.put("to-buy.csv", BuildSheet.materials(takeoff).toCsv());
            files.put("plan.svg", draw(PlanView.of(plan)));
            for (Run run : plan.runs()) {
                files.put(fileName(run) + ".svg", draw(ElevationView.of(plan, run)));
            }
            int number = 0;
            for (GateBay gate : plan.gates()) {
                number++;
                files.put("gate-" + number + ".svg", draw(GateView.of(gate)));
            }
        }
        StringBuilder worked = new StringBuilder();
        List<Worksheet> worksheets = new ArrayList<>(plan.worksheets());
        worksheets.addAll(StringLayout.of(plan).worksheets());
        for (Worksheet worksheet : worksheets) {
            worked.append(worksheet.toText()).append('\n');
        }
        files.put("worksheets.txt", worked.toString());
        return Collections.unmodifiableMap(files);
    }

    private static String fileName(Run run) {
        return run.name().replace(", part", "").replace(' ', '-');
    }

    private String draw(Drawing drawing) {
        return Svg.write(drawing, paper);
    }
}
