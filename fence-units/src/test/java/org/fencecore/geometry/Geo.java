package org.fencecore.geometry;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Length;

/** Short ways to write points in the tests. */
final class Geo {

    private Geo() {}

    static Length ft(double feet) {
        return Length.ofFeet(feet);
    }

    static Point ft(double east, double north) {
        return Point.of(Length.ofFeet(east), Length.ofFeet(north));
    }

    /** Reads vertices in feet: "0,0 75,0 75,120", east first. */
    static Polygon lot(String vertices) {
        List<Point> points = new ArrayList<>();
        for (String vertex : vertices.trim().split("\\s+", -1)) {
            String[] parts = vertex.split(",", -1);
            points.add(ft(Double.parseDouble(parts[0]), Double.parseDouble(parts[1])));
        }
        return Polygon.of(points);
    }
}
