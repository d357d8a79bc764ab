package org.fencecore.rules;

import org.fencecore.geometry.Point;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;

/** Short names for what the tests of this package are told in. */
final class Plans {

    static final Citation ORDINANCE = Citation.of("invented ordinance", "section 12", "");

    private Plans() {}

    static Point at(double east, double north) {
        return Point.of(feet(east), feet(north));
    }

    static Length feet(double feet) {
        return Length.ofFeet(feet);
    }

    static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    /** A line due east along a parallel, so that stations are eastings less the first. */
    static Segment east(double from, double to, double north) {
        return Segment.of(at(from, north), at(to, north));
    }

    /** A straight slope of heights, in feet. */
    static Profile sloping(double length, double start, double end) {
        return Profile.builder()
                .point(Length.ZERO, feet(start))
                .point(feet(length), feet(end))
                .build();
    }
}
