package org.fencecore.wind;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.jspecify.annotations.Nullable;

/**
 * How hard the wind pushes on a run of fence, zone by zone: hardest at free ends and corners, less in the middle.
 *
 * <p>Each zone has the worst of wind from either end and square on, so that the zones do not all happen at once: their
 * sum is more than the whole run ever gets. Pressures are on the gross area of the face, openings taken off, and at
 * allowable stress level: 0.6 of the strength load by ASCE 7; by EN 1991 the characteristic load without a partial factor.
 *
 * <p>Left out: shelter by houses and other fences, hills that were not said, gusts along hedges, and falling trees. Local
 * code and a licensed engineer decide.
 *
 * <p>Example: 120 ft of solid fence, 6 ft high on open ground, in a 115 mph wind by ASCE 7-16.
 *
 * <pre>{@code
 * Wind wind = AsceWind.builder().speed(Speed.ofMilesPerHour(115)).build();
 * FenceWind push = wind.on(FenceFace.builder().length(Length.ofFeet(120)).top(Length.ofFeet(6)).build());
 * push.zones().get(0);                   // 0.00 ft to 6.00 ft: 40.52 psf
 * push.zones().get(2).pressure();        // 19.82 psf
 * push.greatest();                       // 40.52 psf
 * // On an end post with bays of 8 ft.
 * push.average(Interval.of(Length.ZERO, Length.ofFeet(4)));    // 40.52 psf
 * }</pre>
 */
public final class FenceWind {

    private static final String PLACE = "wind";

    private final Wind wind;
    private final FenceFace face;
    private final Reckoning reckoning;

    FenceWind(Wind wind, FenceFace face, Reckoning reckoning) {
        this.wind = wind;
        this.face = face;
        this.reckoning = reckoning;
    }

    /**
     * Returns the wind.
     *
     * @return the wind
     */
    public Wind wind() {
        return wind;
    }

    /**
     * Returns what the run shows it.
     *
     * @return the face
     */
    public FenceFace face() {
        return face;
    }

    /**
     * Returns the velocity pressure at the height that counts: the top of the face, or the middle of an open one by
     * ASCE 7.
     *
     * @return the velocity pressure, as {@link Wind#velocityPressure} has it
     */
    public Pressure velocityPressure() {
        return reckoning.velocityPressure();
    }

    /**
     * Returns the pressures along the run.
     *
     * @return the zones from start to end without a gap, at least one, unmodifiable
     */
    public List<WindZone> zones() {
        return reckoning.zones();
    }

    /**
     * Returns the hardest push anywhere on the run.
     *
     * @return the pressure at allowable stress level
     */
    public Pressure greatest() {
        return worst().pressure();
    }

    private WindZone worst() {
        WindZone worst = zones().get(0);
        for (WindZone zone : zones()) {
            if (zone.pressure().compareTo(worst.pressure()) > 0) {
                worst = zone;
            }
        }
        return worst;
    }

    /**
     * Returns the pressure on a part of the run, such as what one post holds, evened out over it.
     *
     * @param part the part, at least partly within the run and not empty; what reaches over its ends is not counted
     * @return the pressure at allowable stress level
     * @throws IllegalArgumentException if the part is outside the run or empty
     */
    public Pressure average(Interval part) {
        Objects.requireNonNull(part, "part");
        double sum = 0;
        long length = 0;
        for (WindZone zone : zones()) {
            long within = zone.within(part).nanometres();
            sum += zone.pressure().pascals() * within;
            length += within;
        }
        if (length == 0) {
            throw new IllegalArgumentException("part was " + part.start() + " to " + part.end()
                    + "; it must take in some of the run from 0 to " + face.length());
        }
        return Pressure.ofPascals(sum / length);
    }

    /**
     * Returns what an engineer and a builder should know about these pressures, worst first: {@code outside-wind-table},
     * {@code minimum-wind}, {@code open-fence}, {@code off-centre-wind}, {@code characteristic-wind} and
     * {@code wind-local-code}.
     *
     * @return the findings, at least the one that defers to local code
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        reckoning.addFindings(findings);
        findings.add(Finding.note(
                        "wind-local-code",
                        PLACE,
                        "local code and a licensed engineer decide the design wind; this is arithmetic with the wind as"
                                + " it was given")
                .withRemedy("ask the local building department for wind speed and exposure"));
        findings.sort(Comparator.comparing(Finding::severity).reversed());
        return List.copyOf(findings);
    }

    /**
     * Returns the pressure in the hardest zone worked out line by line.
     *
     * @return the worksheet, whose last line is {@link #greatest}
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Wind on a fence");
        reckoning.explain(sheet, worst());
        return sheet.build();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FenceWind that && wind.equals(that.wind) && face.equals(that.face);
    }

    @Override
    public int hashCode() {
        return 31 * wind.hashCode() + face.hashCode();
    }

    @Override
    public String toString() {
        return wind + " on " + face;
    }
}
