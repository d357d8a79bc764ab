package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The ground under a line as a surface tells it, or where the surface does not reach.
 *
 * <p>Source: geometry. Example: shots over a 20 ft square, and a line that goes on 10 ft past them.
 *
 * <pre>{@code
 * GroundUnder ground = GroundUnder.of(line, shots);
 * ground.profile();      // empty
 * ground.uncovered();    // from 20 ft to 30 ft
 * ground.findings();     // ground-not-covered at 20.00 ft to 30.00 ft
 * }</pre>
 */
public final class GroundUnder {

    private final Polyline line;
    private final @Nullable Profile profile;
    private final List<Interval> uncovered;

    private GroundUnder(Polyline line, @Nullable Profile profile, List<Interval> uncovered) {
        this.line = line;
        this.profile = profile;
        this.uncovered = uncovered;
    }

    /**
     * Looks up the ground under a line.
     *
     * @param line the line in plan
     * @param surface the ground around it
     * @return the ground under it, with {@link #findings} where there is none
     * @throws IllegalArgumentException if the ground breaks over 1,000,000 times under the line
     */
    public static GroundUnder of(Polyline line, Surface surface) {
        Objects.requireNonNull(line, "line");
        Optional<Profile> profile = surface.under(line);
        return new GroundUnder(
                line, profile.orElse(null), profile.isPresent() ? List.of() : List.copyOf(surface.uncovered(line)));
    }

    /**
     * Returns the ground.
     *
     * @return heights by level distance from the start of the line, or empty if the surface does not cover all of it
     */
    public Optional<Profile> profile() {
        return Optional.ofNullable(profile);
    }

    /**
     * Returns where the surface does not reach.
     *
     * @return the stretches of the line without ground, in order; empty if there is a profile
     */
    public List<Interval> uncovered() {
        return uncovered;
    }

    /**
     * Returns what is missing: {@code ground-not-covered} for each stretch without ground, by its stations.
     *
     * @return all findings, empty if the surface covers the line
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Interval gap : uncovered) {
            findings.add(Finding.blocker(
                            "ground-not-covered",
                            Written.station(gap.start()) + " to " + Written.station(gap.end()),
                            "the line of " + Written.station(line.length()) + " leaves the measured ground for "
                                    + Written.station(gap.length()))
                    .withRemedy("take shots out to both sides of the line there, or shorten the line")
                    .withSource(Citation.GEOMETRY));
        }
        return List.copyOf(findings);
    }

    /**
     * Returns the heights point by point, ending with how much higher the end of the line is than its start.
     *
     * @return the worksheet; empty if there is no profile
     */
    public Optional<Worksheet> worksheet() {
        return profile().map(GroundUnder::write);
    }

    private static Worksheet write(Profile ground) {
        Worksheet.Builder sheet = Worksheet.titled("Ground under the line");
        for (ProfilePoint point : ground.points()) {
            sheet.line(
                    "ground at " + Written.station(point.station()),
                    "surface at the station",
                    "",
                    point.elevation(),
                    Written.feet(point.elevation()),
                    Citation.GEOMETRY);
        }
        Length start = ground.points().get(0).elevation();
        Length end = ground.points().get(ground.points().size() - 1).elevation();
        return sheet.line(
                        "rise of the ground",
                        "end - start",
                        Written.feet(end) + " - " + Written.feet(start),
                        end.minus(start),
                        Written.feet(end.minus(start)),
                        Citation.GEOMETRY)
                .build();
    }

    /**
     * Describes the ground.
     *
     * @return such as {@code ground under 60.42 ft of line} or {@code 2 stretches without ground under 60.42 ft of line}
     */
    @Override
    public String toString() {
        int gaps = uncovered.size();
        return (gaps == 0 ? "ground" : gaps + (gaps == 1 ? " stretch" : " stretches") + " without ground") + " under "
                + Written.station(line.length()) + " of line";
    }
}
