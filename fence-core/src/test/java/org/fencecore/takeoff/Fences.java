package org.fencecore.takeoff;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Profile;
import org.fencecore.site.Course;
import org.fencecore.site.GateLocation;
import org.fencecore.site.LotBoundary;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/** Invented fences for the tests of this package. */
final class Fences {

    private Fences() {}

    static LotBoundary rectangle(Length side, Length depth) {
        return LotBoundary.of(List.of(course(90, side), course(180, depth), course(270, side), course(0, depth)));
    }

    private static Course course(double azimuth, Length distance) {
        return Course.of(Bearing.ofAzimuth(Angle.ofDegrees(azimuth)), distance);
    }

    static Profile level(Length length) {
        return slope(length, Length.ZERO);
    }

    static Profile slope(Length length, Length rise) {
        return Profile.builder()
                .point(Length.ZERO, Length.ZERO)
                .point(length, rise)
                .build();
    }

    /** One side of 19 ft 6 1/4 in with a gate of 42 1/4 in beside its first post, level, in the usual style. */
    static FencePlan small() {
        return FencePlanner.plan(smallSite().build(), FenceStyle.builder().build());
    }

    static Site.Builder smallSite() {
        Length side = Length.ofInches(234.25);
        return Site.on(rectangle(side, Length.ofFeet(60)))
                .fenceOn(1)
                .ground(1, level(side))
                .gate(GateLocation.named("garden gate")
                        .onSide(1)
                        .centredAt(Length.ofInches(30.625))
                        .clearOpening(Length.ofInches(42.25))
                        .build());
    }
}
