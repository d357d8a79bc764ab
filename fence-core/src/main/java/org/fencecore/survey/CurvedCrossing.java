package org.fencecore.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.SelfCrossing;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * Looks for two sides of a boundary with curves that meet where they should not: the lowest pair. Straight sides are
 * compared exactly; a curve that comes within 0.1 mm of another side counts as touching it. A sweep from west to east
 * compares only sides that lie above one another.
 */
final class CurvedCrossing {

    private static final double TOUCH = 1e-4;

    private final List<Edge> edges = new ArrayList<>();
    private final Point origin;

    private CurvedCrossing(List<Point> corners, List<Course> courses) {
        origin = corners.get(0);
        for (int i = 0; i < corners.size(); i++) {
            edges.add(Edge.of(origin, corners.get(i), corners.get((i + 1) % corners.size()), courses.get(i)));
        }
    }

    static Optional<SelfCrossing> first(List<Point> corners, List<Course> courses) {
        return new CurvedCrossing(corners, courses).first();
    }

    private Optional<SelfCrossing> first() {
        int n = edges.size();
        int[] fromWest = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> edges.get(i).west))
                .mapToInt(i -> i)
                .toArray();
        SelfCrossing best = null;
        for (int a = 0; a < n; a++) {
            Edge edge = edges.get(fromWest[a]);
            for (int b = a + 1; b < n && edges.get(fromWest[b]).west <= edge.east + TOUCH; b++) {
                Edge other = edges.get(fromWest[b]);
                int i = Math.min(fromWest[a], fromWest[b]);
                int j = Math.max(fromWest[a], fromWest[b]);
                if (edge.south <= other.north + TOUCH && other.south <= edge.north + TOUCH && isLower(i, j, best)) {
                    best = meeting(i, j).orElse(best);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean isLower(int i, int j, @Nullable SelfCrossing best) {
        return best == null || i < best.side() || (i == best.side() && j < best.otherSide());
    }

    private Optional<SelfCrossing> meeting(int i, int j) {
        Edge a = edges.get(i);
        Edge b = edges.get(j);
        boolean follows = j == i + 1;
        boolean precedes = i == 0 && j == edges.size() - 1;
        if (follows || precedes) {
            Point shared = follows ? b.line.start() : a.line.start();
            return meetingPoints(a, b, -TOUCH)
                    .filter(point -> point.distanceTo(shared).metres() > TOUCH)
                    .findFirst()
                    .map(point -> new SelfCrossing(i, j, point));
        }
        return meetingPoints(a, b, TOUCH).findFirst().map(point -> new SelfCrossing(i, j, point));
    }

    /** The points of both edges, each edge made longer at its ends by the slack. */
    private Stream<Point> meetingPoints(Edge a, Edge b, double slack) {
        if (a.arc == null && b.arc == null) {
            return straight(a.line, b.line);
        }
        List<double[]> points = new ArrayList<>();
        if (a.arc != null && b.arc != null) {
            arcs(a.arc, b.arc, points);
        } else if (a.arc != null) {
            lineAndArc(b, a.arc, points);
        } else if (b.arc != null) {
            lineAndArc(a, b.arc, points);
        }
        return points.stream()
                .filter(point -> a.has(point[0], point[1], slack) && b.has(point[0], point[1], slack))
                .map(point -> Point.of(
                        origin.east().plus(Length.ofMetres(point[0])),
                        origin.north().plus(Length.ofMetres(point[1]))));
    }

    /** Where they cross, or the ends that lie on the other side. */
    private static Stream<Point> straight(Segment a, Segment b) {
        Stream<Point> ends = Stream.concat(
                Stream.of(a.start(), a.end()).filter(b::contains),
                Stream.of(b.start(), b.end()).filter(a::contains));
        return a.crosses(b) ? a.intersection(b).stream() : ends;
    }

    private static void lineAndArc(Edge line, Arc arc, List<double[]> points) {
        double ux = Math.sin(line.direction);
        double uy = Math.cos(line.direction);
        double along = (arc.east() - line.x) * ux + (arc.north() - line.y) * uy;
        double off = (arc.east() - line.x) * uy - (arc.north() - line.y) * ux;
        addPair(line.x + along * ux, line.y + along * uy, ux, uy, arc.radius(), Math.abs(off), points);
    }

    private static void arcs(Arc a, Arc b, List<double[]> points) {
        double dx = b.east() - a.east();
        double dy = b.north() - a.north();
        double apart = Math.hypot(dx, dy);
        if (apart < TOUCH) {
            if (Math.abs(a.radius() - b.radius()) < TOUCH) {
                // One circle: where they lie on each other, an end or the middle of one is on the other.
                for (double share : new double[] {0, 0.5, 1}) {
                    addPoint(a, share, points);
                    addPoint(b, share, points);
                }
            }
            return;
        }
        double ux = dx / apart;
        double uy = dy / apart;
        double along = (apart * apart + a.radius() * a.radius() - b.radius() * b.radius()) / (2 * apart);
        addPair(a.east() + along * ux, a.north() + along * uy, -uy, ux, a.radius(), Math.abs(along), points);
    }

    private static void addPoint(Arc arc, double share, List<double[]> points) {
        double direction = arc.azimuth() + share * arc.sweep();
        points.add(new double[] {
            arc.east() + arc.radius() * Math.sin(direction), arc.north() + arc.radius() * Math.cos(direction)
        });
    }

    /** The two points of a circle on the line through a foot that is so far from its centre; one where they touch. */
    private static void addPair(
            double x, double y, double ux, double uy, double radius, double off, List<double[]> points) {
        if (off > radius + TOUCH) {
            return;
        }
        double half = Math.sqrt(Math.max(0, (radius - off) * (radius + off)));
        points.add(new double[] {x - half * ux, y - half * uy});
        points.add(new double[] {x + half * ux, y + half * uy});
    }

    /** A side with its box, in metres from the origin. */
    private static final class Edge {

        private final Segment line;
        private final @Nullable Arc arc;
        private final double x;
        private final double y;
        private final double direction;
        private final double length;
        private double west;
        private double east;
        private double south;
        private double north;

        private Edge(Point origin, Segment line, @Nullable Arc arc) {
            this.line = line;
            this.arc = arc;
            x = line.start().east().minus(origin.east()).metres();
            y = line.start().north().minus(origin.north()).metres();
            double endX = line.end().east().minus(origin.east()).metres();
            double endY = line.end().north().minus(origin.north()).metres();
            direction = Math.atan2(endX - x, endY - y);
            length = Math.hypot(endX - x, endY - y);
            west = Math.min(x, endX);
            east = Math.max(x, endX);
            south = Math.min(y, endY);
            north = Math.max(y, endY);
        }

        static Edge of(Point origin, Point start, Point end, Course course) {
            Segment line = Segment.of(start, end);
            Arc arc = course.curve()
                    .map(curve -> Arc.of(origin, start, end, curve))
                    .orElse(null);
            Edge edge = new Edge(origin, line, arc);
            if (arc != null) {
                edge.cover(arc);
            }
            return edge;
        }

        /** Widens the box to where the arc runs due east or north. */
        private void cover(Arc arc) {
            double r = arc.radius();
            west = reaches(arc, -r, 0) ? arc.east() - r : west;
            east = reaches(arc, r, 0) ? arc.east() + r : east;
            south = reaches(arc, 0, -r) ? arc.north() - r : south;
            north = reaches(arc, 0, r) ? arc.north() + r : north;
        }

        private static boolean reaches(Arc arc, double dx, double dy) {
            return arc.along(arc.east() + dx, arc.north() + dy) <= arc.length();
        }

        /** Tells whether a point of its line or circle lies between its ends. */
        private boolean has(double px, double py, double slack) {
            if (arc == null) {
                double along = (px - x) * Math.sin(direction) + (py - y) * Math.cos(direction);
                return along >= -slack && along <= length + slack;
            }
            double along = arc.along(px, py);
            return along <= arc.length() + slack
                    ? along >= -slack
                    : slack > 0 && along >= 2 * Math.PI * arc.radius() - slack;
        }
    }
}
