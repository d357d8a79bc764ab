package org.fencecore.gate;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Area;
import org.fencecore.units.Length;

/** Sums over the corners of a piece on the leaf, across and up in nanometres. */
final class Outlines {

    private Outlines() {}

    static double x(ProfilePoint point) {
        return point.station().nanometres();
    }

    static double y(ProfilePoint point) {
        return point.elevation().nanometres();
    }

    static ProfilePoint point(double x, double y) {
        return new ProfilePoint(nearest(x), nearest(y));
    }

    static Length nearest(double nanometres) {
        return Length.ofNanometres(Math.round(nanometres));
    }

    static Length distance(ProfilePoint a, ProfilePoint b) {
        return nearest(Math.hypot(x(b) - x(a), y(b) - y(a)));
    }

    static Interval across(List<ProfilePoint> outline) {
        return Interval.of(
                outline.stream().map(ProfilePoint::station).reduce(Length::min).orElseThrow(),
                outline.stream().map(ProfilePoint::station).reduce(Length::max).orElseThrow());
    }

    static Interval up(List<ProfilePoint> outline) {
        return Interval.of(
                outline.stream()
                        .map(ProfilePoint::elevation)
                        .reduce(Length::min)
                        .orElseThrow(),
                outline.stream()
                        .map(ProfilePoint::elevation)
                        .reduce(Length::max)
                        .orElseThrow());
    }

    static Area area(List<ProfilePoint> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            twice += cross(outline, i);
        }
        return Area.ofSquareMetres(Math.abs(twice) / 2e18);
    }

    static ProfilePoint centre(List<ProfilePoint> outline) {
        double twice = 0;
        double sumX = 0;
        double sumY = 0;
        for (int i = 0; i < outline.size(); i++) {
            ProfilePoint a = outline.get(i);
            ProfilePoint b = outline.get((i + 1) % outline.size());
            double cross = cross(outline, i);
            twice += cross;
            sumX += (x(a) + x(b)) * cross;
            sumY += (y(a) + y(b)) * cross;
        }
        return point(sumX / (3 * twice), sumY / (3 * twice));
    }

    private static double cross(List<ProfilePoint> outline, int i) {
        ProfilePoint a = outline.get(i);
        ProfilePoint b = outline.get((i + 1) % outline.size());
        return x(a) * y(b) - x(b) * y(a);
    }
}
