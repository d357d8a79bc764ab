package org.fencecore;

import java.util.List;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/** Invented lots and sites for tests. */
public final class Plans {

    private Plans() {}

    /** A rectangle that begins in its south-west corner and goes round clockwise, its first side due north. */
    public static LotBoundary rectangle(double feetNorth, double feetEast) {
        return LotBoundary.of(
                List.of(course(0, feetNorth), course(90, feetEast), course(180, feetNorth), course(270, feetEast)));
    }

    public static Course course(double azimuthDegrees, double feet) {
        return Course.of(Bearing.ofAzimuth(Angle.ofDegrees(azimuthDegrees)), Length.ofFeet(feet));
    }

    /** Heights in feet at distances in feet, in pairs. */
    public static Profile shots(double... pairs) {
        Profile.Builder shots = Profile.builder();
        for (int i = 0; i < pairs.length; i += 2) {
            shots.point(Length.ofFeet(pairs[i]), Length.ofFeet(pairs[i + 1]));
        }
        return shots.build();
    }

    public static GateLocation gate(String name, int side, double centreFeet, double openingInches) {
        return GateLocation.named(name)
                .onSide(side)
                .centredAt(Length.ofFeet(centreFeet))
                .clearOpening(Length.ofInches(openingInches))
                .build();
    }

    /** One fenced side of 50 ft on level ground at height 0. */
    public static Site.Builder levelSide() {
        return Site.on(rectangle(50, 40)).fenceOn(1).ground(1, shots(0, 0, 50, 0));
    }
}
