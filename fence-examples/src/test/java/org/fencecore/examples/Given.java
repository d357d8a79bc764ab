package org.fencecore.examples;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.estimate.CrewRates;
import org.fencecore.estimate.PriceBook;
import org.fencecore.estimate.Task;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/** Short names for what the blocks of the documents take as given; see {@code code-blocks.txt}. */
public final class Given {

    private static final Currency USD = Currency.getInstance("USD");

    private Given() {}

    /** A length in feet. */
    public static Length feet(double feet) {
        return Length.ofFeet(feet);
    }

    /** Lengths in feet. */
    public static List<Length> stations(double... feet) {
        List<Length> stations = new ArrayList<>();
        for (double station : feet) {
            stations.add(Length.ofFeet(station));
        }
        return stations;
    }

    /** A point so many feet to the east and to the north. */
    public static Point at(double east, double north) {
        return Point.of(Length.ofFeet(east), Length.ofFeet(north));
    }

    /** A line between two points, in feet. */
    public static Segment segment(double east, double north, double toEast, double toNorth) {
        return Segment.of(at(east, north), at(toEast, toNorth));
    }

    /** The same as a line of one leg. */
    public static Polyline line(double east, double north, double toEast, double toNorth) {
        return Polyline.of(List.of(at(east, north), at(toEast, toNorth)));
    }

    /** Heights in feet at distances in feet, in pairs. */
    public static Profile shots(double... pairs) {
        Profile.Builder shots = Profile.builder();
        for (int i = 0; i < pairs.length; i += 2) {
            shots.point(Length.ofFeet(pairs[i]), Length.ofFeet(pairs[i + 1]));
        }
        return shots.build();
    }

    /** A rectangle that goes clockwise from its south-west corner, its first side due north. */
    public static LotBoundary rectangle(double feetNorth, double feetEast) {
        return LotBoundary.of(
                List.of(course(0, feetNorth), course(90, feetEast), course(180, feetNorth), course(270, feetEast)));
    }

    private static Course course(double azimuth, double feet) {
        return Course.of(Bearing.ofAzimuth(Angle.ofDegrees(azimuth)), Length.ofFeet(feet));
    }

    /** A gate on the first side. */
    public static GateLocation gate(double centreFeet, double openingInches) {
        return GateLocation.named("garden gate")
                .onSide(1)
                .centredAt(Length.ofFeet(centreFeet))
                .clearOpening(Length.ofInches(openingInches))
                .build();
    }

    /** A fence in the usual style. */
    public static FencePlan plan(Site.Builder site) {
        return FencePlanner.plan(site.build(), FenceStyle.builder().build());
    }

    /** A fence on one level side of so many feet, with a gate near its start. */
    public static FencePlan planWithGate(double feet) {
        return plan(Site.on(rectangle(feet, 60))
                .fenceOn(1)
                .ground(1, shots(0, 0, feet, 0))
                .gate(gate(30.625 / 12, 42.25)));
    }

    /** Invented prices for {@link #planWithGate} of 234 1/4 in. */
    public static PriceBook book() {
        return PriceAndCompareExample.prices();
    }

    /** Invented times, at 42 an hour. */
    public static CrewRates crew() {
        return CrewRates.builder()
                .takes(Task.LAYOUT, Duration.ofMinutes(10))
                .takes(Task.DIGGING, Duration.ofMinutes(45))
                .takes(Task.SETTING, Duration.ofMinutes(30))
                .takes(Task.RAILS, Duration.ofMinutes(40))
                .takes(Task.BOARDS, Duration.ofMinutes(3))
                .takes(Task.GATES, Duration.ofHours(3))
                .wage(new BigDecimal("42.00"), USD)
                .build();
    }

    /** A leaf 56 in high. */
    public static GateLeaf leaf() {
        return GateDesign.forOpening(
                        Length.ofInches(47.5),
                        Length.ofInches(56),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .activeLeaf();
    }
}
