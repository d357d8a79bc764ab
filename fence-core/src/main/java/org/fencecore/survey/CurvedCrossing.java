package org.fencecore.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.SelfCrossing;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * Looks for two sides of a boundary with curves that meet where they should not: the lowest pair. Straight sides are
 * compared exactly; a curve that comes within 0.1 mm of another side counts as touching it. Sides that follow each other
 * are dismissed a block at a time.
 */
final class CurvedCrossing {

    private static final double TOUCH = 1e-4;
    private static final int BLOCK = 64;

    private final List<Edge> edges = new ArrayList<>();
    private final List<Box> blocks = new ArrayList<>();
    private final Point origin;

    private CurvedCrossing(List<Point> corners, List<Course> courses) {
        origin = corners.get(0);
        for (int i = 0; i < corners.size(); i++) {
            Edge edge = Edge.of(origin, corners.get(i), corners.get((i + 1) % corners.size()), courses.get(i));
            edges.add(edge);
            if (i % BLOCK == 0) {
                blocks.add(edge.box);
            } else {
                blocks.set(i / BLOCK, blocks.get(i / BLOCK).and(edge.box));
            }
        }
    }

    static Optional<SelfCrossing> first(List<Point> corners, List<Course> courses) {
        return new CurvedCrossing(corners, courses).first();
    }

    private Optional<SelfCrossing> first() {
        for (int i = 0; i < edges.size() - 1; i++) {
            for (int block = (i + 1) / BLOCK; block < blocks.size(); block++) {
                if (edges.get(i).box.meets(blocks.get(block))) {
                    Optional<SelfCrossing> found = firstInBlock(i, block);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<SelfCrossing> firstInBlock(int i, int block) {
        int end = Math.min(edges.size(), (block + 1) * BLOCK);
        for (int j = Math.max(i + 1, block * BLOCK); j < end; j++) {
            if (edges.get(i).box.meets(edges.get(j).box)) {
                Optional<SelfCrossing> found = meeting(i, j);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
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

    /** What a side or a block of them covers, in metres from the origin. */
    private record Box(double west, double east, double south, double north) {

        Box and(Box other) {
            return new Box(
                    Math.min(west, other.west),
                    Math.max(east, other.east),
                    Math.min(south, other.south),
                    Math.max(north, other.north));
        }

        Box and(double x, double y) {
            return and(new Box(x, x, y, y));
        }

        boolean meets(Box other) {
            return west <= other.east + TOUCH
                    && other.west <= east + TOUCH
                    && south <= other.north + TOUCH
                    && other.south <= north + TOUCH;
        }
    }

    /** A side in metres from the origin. */
    private static final class Edge {

        private final Segment line;
        private final @Nullable Arc arc;
        private final double x;
        private final double y;
        private final double direction;
        private final double length;
        private final Box box;

        private Edge(Point origin, Segment line, @Nullable Arc arc) {
            this.line = line;
            this.arc = arc;
            x = line.start().east().minus(origin.east()).metres();
            y = line.start().north().minus(origin.north()).metres();
            double endX = line.end().east().minus(origin.east()).metres();
            double endY = line.end().north().minus(origin.north()).metres();
            direction = Math.atan2(endX - x, endY - y);
            length = Math.hypot(endX - x, endY - y);
            box = reach(new Box(x, x, y, y).and(endX, endY), arc);
        }

        static Edge of(Point origin, Point start, Point end, Course course) {
            Segment line = Segment.of(start, end);
            return new Edge(
                    origin,
                    line,
                    course.curve()
                            .map(curve -> Arc.of(origin, start, end, curve))
                            .orElse(null));
        }

        /** Widens the box of the ends to where the arc is furthest west, east, south and north. */
        private static Box reach(Box ends, @Nullable Arc arc) {
            Box box = ends;
            if (arc != null) {
                for (int quarter = 0; quarter < 4; quarter++) {
                    double x = arc.east() + arc.radius() * Math.sin(quarter * Math.PI / 2);
                    double y = arc.north() + arc.radius() * Math.cos(quarter * Math.PI / 2);
                    box = arc.along(x, y) <= arc.length() ? box.and(x, y) : box;
                }
            }
            return box;
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
