package org.fencecore.survey;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Side;
import org.fencecore.units.Length;

/**
 * A curve in its place, in metres from an origin near by: centre, radius, the azimuth of its beginning seen from the
 * centre, and the angle it sweeps from there, clockwise if positive.
 */
record Arc(double east, double north, double radius, double azimuth, double sweep) {

    private static final double QUARTER = Math.PI / 2;

    /** The arc from one point to another, its radius that of the curve's delta over their distance. */
    static Arc of(Point origin, Point start, Point end, Curve curve) {
        double x = metres(start.east(), origin.east());
        double y = metres(start.north(), origin.north());
        double dx = metres(end.east(), start.east());
        double dy = metres(end.north(), start.north());
        double delta = curve.delta().radians();
        double sign = curve.turn() == Side.RIGHT ? 1 : -1;
        double radius = Math.hypot(dx, dy) / (2 * Math.sin(delta / 2));
        double tangent = Math.atan2(dx, dy) - sign * delta / 2;
        double toCentre = tangent + sign * QUARTER;
        return new Arc(
                x + radius * Math.sin(toCentre),
                y + radius * Math.cos(toCentre),
                radius,
                tangent - sign * QUARTER,
                sign * delta);
    }

    private static double metres(Length to, Length from) {
        return to.minus(from).metres();
    }

    /** The points between its ends of as few equal chords as keep within a distance of it. */
    List<Point> chords(Point origin, double within) {
        double most = 2 * Math.acos(Math.max(0, 1 - within / radius));
        int parts = parts(most);
        List<Point> points = new ArrayList<>(parts);
        for (int i = 1; i < parts; i++) {
            points.add(at(origin, sweep * i / parts, radius));
        }
        return points;
    }

    /** The points between its ends where as few tangents meet, touching at equal steps, as keep within a distance. */
    List<Point> tangents(Point origin, double within) {
        double most = 2 * Math.acos(radius / (radius + within));
        int parts = parts(most);
        double half = sweep / parts / 2;
        List<Point> points = new ArrayList<>(parts);
        for (int i = 0; i < parts; i++) {
            points.add(at(origin, half * (2 * i + 1), radius / Math.cos(half)));
        }
        return points;
    }

    /** Steps of a quarter turn at most, so that a small curve keeps its shape. */
    private int parts(double most) {
        return Math.max(1, (int) Math.ceil(Math.abs(sweep) / Math.min(QUARTER, most) - 1e-9));
    }

    private Point at(Point origin, double swept, double fromCentre) {
        double direction = azimuth + swept;
        return Point.of(
                origin.east().plus(Length.ofMetres(east + fromCentre * Math.sin(direction))),
                origin.north().plus(Length.ofMetres(north + fromCentre * Math.cos(direction))));
    }

    /** How far along the arc a direction from its centre is, from 0 up to under a whole circle. */
    double along(double x, double y) {
        double turned = Math.signum(sweep) * (Math.atan2(x - east, y - north) - azimuth);
        double turn = 2 * Math.PI;
        double rest = turned % turn;
        return radius * (rest < 0 ? rest + turn : rest);
    }

    double length() {
        return radius * Math.abs(sweep);
    }
}
