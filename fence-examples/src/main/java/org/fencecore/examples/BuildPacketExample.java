package org.fencecore.examples;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.footing.SoilClass;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Bearing;
import org.fencecore.json.Job;
import org.fencecore.json.JobJson;
import org.fencecore.json.UnreadableJsonException;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;

/**
 * The main job: from the courses of a lot, shots of the ground, two gates and a style to the build sheet and the packet.
 *
 * <p>The four courses are those of United States Executive Order 7804 of 1938, in its azimuths from the south. The first
 * is taken as 237 deg 00 min instead of the printed 287: only then do they close, and enclose, to within a square foot, the
 * 3,365 that the order states. Ground, gates, soil, wind and frost are invented.
 *
 * <p>With paths of job files it does the same for these; see the folder {@code jobs}.
 */
public final class BuildPacketExample {

    private BuildPacketExample() {}

    /**
     * Prints the build sheet and writes the packet: of the fence below, or of each job file that is named.
     *
     * @param args paths of job files; none for the fence below
     * @throws IOException if a job file cannot be found or a packet not be written
     * @throws UnreadableJsonException if a file holds no job: the first thing wrong, with its path, line and column
     */
    public static void main(String[] args) throws IOException {
        if (args.length == 0) {
            Packets.printAndWrite(plan(), "packet");
        }
        for (String arg : args) {
            Path file = Path.of(arg);
            try (Reader text = Files.newBufferedReader(file)) {
                Job job = JobJson.read(text);
                Packets.printAndWrite(job.packet(), folder(file));
            }
        }
    }

    /** The name of a job file without its ending. */
    private static String folder(Path file) {
        return String.valueOf(file.getFileName()).replaceFirst("\\.json$", "");
    }

    /**
     * Plans the fence.
     *
     * @return the plan
     */
    public static FencePlan plan() {
        LotBoundary lot = LotBoundary.of(List.of(
                course("237°00'", 91.00), course("318°06'", 40.60), course("57°00'", 76.85), course("120°00'", 45.00)));
        Site site = Site.on(lot)
                .fenceOn(1, 2, 3)
                .ground(1, Shots.feet(0, 12.40, 22, 11.95, 48, 10.10, 70, 9.20, 91, 8.90))
                .ground(2, Shots.feet(0, 8.90, 20, 8.55, 41, 8.30))
                .ground(3, Shots.feet(0, 8.30, 25, 9.00, 52, 10.60, 77, 12.05))
                .gate(GateLocation.named("walk gate")
                        .onSide(1)
                        .centredAt(Length.ofFeet(14))
                        .clearOpening(Length.ofInches(47.5))
                        .hinges(HingeSide.LEFT)
                        .build())
                .gate(GateLocation.named("shed gate")
                        .onSide(3)
                        .centredAt(Length.ofFeet(60))
                        .clearOpening(Length.ofInches(42))
                        .hinges(HingeSide.RIGHT)
                        .build())
                .soil(SoilClass.SANDY_GRAVEL)
                .doubledBearing(true)
                .windPressure(Pressure.ofPsf(10))
                .frostDepth(Length.ofInches(12))
                .build();
        FenceStyle style = FenceStyle.builder().postLumber(Lumber.sixBySix()).build();
        return FencePlanner.plan(site, style);
    }

    private static Course course(String azimuthFromSouth, double feet) {
        return Course.of(Bearing.ofAzimuthFromSouth(Angle.parse(azimuthFromSouth)), Length.ofFeet(feet));
    }
}
