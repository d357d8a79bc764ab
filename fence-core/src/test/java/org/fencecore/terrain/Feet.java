package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.units.Length;

/** Short ways to write places and shots in the tests, in feet. */
final class Feet {

    private Feet() {}

    static Length ft(double feet) {
        return Length.ofFeet(feet);
    }

    static Length m(double metres) {
        return Length.ofMetres(metres);
    }

    static Point at(double east, double north) {
        return Point.of(ft(east), ft(north));
    }

    static Shot shot(double east, double north, double elevation) {
        return Shot.of(ft(east), ft(north), ft(elevation));
    }

    /** Reads places: "0,0 75,0 75,120", east first. */
    static Polyline line(String places) {
        List<Point> points = new ArrayList<>();
        for (String place : places.trim().split("\\s+", -1)) {
            String[] parts = place.split(",", -1);
            points.add(at(Double.parseDouble(parts[0]), Double.parseDouble(parts[1])));
        }
        return Polyline.of(points);
    }
}
