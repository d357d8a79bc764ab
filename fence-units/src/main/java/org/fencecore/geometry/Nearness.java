package org.fencecore.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fencecore.units.Length;

/**
 * Which stretches of one line lie near, or in, something else in plan.
 *
 * <p>All that lies within a distance of a straight piece is a strip with a half circle at each end. That shape bulges
 * nowhere inwards, so a line passes it in one stretch: from the first to the last station that is in the strip or in the
 * circle at either end. Distances are zero or more, and what is exactly at the distance is not near.
 */
final class Nearness {

    private final Segment line;
    private final double length;
    private final double ux; // the direction of the line, of length 1
    private final double uy;

    Nearness(Segment line) {
        this.line = line;
        length = Math.sqrt((double) line.dx() * line.dx() + (double) line.dy() * line.dy());
        ux = line.dx() / length;
        uy = line.dy() / length;
    }

    Optional<Interval> near(Point point, Length distance) {
        Range range = new Range();
        range.addCircle(along(point), off(point), (double) distance.nanometres());
        return range.onLine();
    }

    Optional<Interval> near(Segment other, Length distance) {
        double d = distance.nanometres();
        Range range = new Range();
        double s0 = along(other.start());
        double o0 = off(other.start());
        double s1 = along(other.end());
        double o1 = off(other.end());
        range.addCircle(s0, o0, d);
        range.addCircle(s1, o1, d);
        // The strip in the other line's own frame: both its station and its offset change evenly along this line.
        double run = Math.hypot(s1 - s0, o1 - o0);
        double cos = (s1 - s0) / run;
        double sin = (o1 - o0) / run;
        Limits strip = new Limits();
        strip.require(-s0 * cos - o0 * sin, cos, 0, run);
        strip.require(s0 * sin - o0 * cos, -sin, -d, d);
        if (strip.from < strip.to) {
            range.add(strip.from, strip.to);
        }
        return range.onLine();
    }

    List<Interval> near(Polyline other, Length distance) {
        return nearAny(other.segments(), distance, new ArrayList<>());
    }

    List<Interval> near(Polygon other, Length distance) {
        return nearAny(other.sides(), distance, new ArrayList<>(in(other)));
    }

    private List<Interval> nearAny(List<Segment> pieces, Length distance, List<Interval> found) {
        for (Segment piece : pieces) {
            near(piece, distance).ifPresent(found::add);
        }
        return Interval.merged(found);
    }

    /** Cuts the line, extended, where it passes a side: from the first cut to the second it is inside, and so on. */
    List<Interval> in(Polygon polygon) {
        List<Interval> found = new ArrayList<>();
        double[] cuts = new double[polygon.vertices().size()];
        int count = 0;
        for (Segment side : polygon.sides()) {
            int start = line.leftOf(side.start());
            int end = line.leftOf(side.end());
            if (start == 0 && end == 0) { // the side lies on the line, and the boundary belongs to the inside
                onLine(
                                Math.min(along(side.start()), along(side.end())),
                                Math.max(along(side.start()), along(side.end())))
                        .ifPresent(found::add);
            }
            if (start > 0 != end > 0) { // a vertex on the line counts as right of it, so each passing counts once
                cuts[count++] = cut(side);
            }
        }
        Arrays.sort(cuts, 0, count);
        for (int i = 0; i + 1 < count; i += 2) {
            onLine(cuts[i], cuts[i + 1]).ifPresent(found::add);
        }
        return Interval.merged(found);
    }

    private double cut(Segment side) {
        double from = off(side.start());
        double to = off(side.end());
        double share = from == to ? 0.5 : Math.max(0, Math.min(1, from / (from - to)));
        return along(side.start()) + share * (along(side.end()) - along(side.start()));
    }

    private double along(Point point) {
        return ux * (point.x() - line.start().x())
                + uy * (point.y() - line.start().y());
    }

    private double off(Point point) {
        return uy * (point.x() - line.start().x())
                - ux * (point.y() - line.start().y());
    }

    private Optional<Interval> onLine(double from, double to) {
        long start = Math.round(Math.max(0, from));
        long end = Math.min(Math.round(to), Math.round(length));
        return start < end
                ? Optional.of(Interval.of(Length.ofNanometres(start), Length.ofNanometres(end)))
                : Optional.empty();
    }

    /** The stations from the first to the last of all that were added. */
    private final class Range {

        private double from = Double.POSITIVE_INFINITY;
        private double to = Double.NEGATIVE_INFINITY;

        void addCircle(double station, double offset, double radius) {
            if (Math.abs(offset) < radius) {
                double half = Math.sqrt((radius - offset) * (radius + offset));
                add(station - half, station + half);
            }
        }

        void add(double first, double last) {
            from = Math.min(from, first);
            to = Math.max(to, last);
        }

        Optional<Interval> onLine() {
            return Nearness.this.onLine(from, to);
        }
    }

    /** The stations at which every required quantity, changing evenly along the line, is between its limits. */
    private static final class Limits {

        private double from = Double.NEGATIVE_INFINITY;
        private double to = Double.POSITIVE_INFINITY;

        /** Requires {@code low < atZero + s * rate < high}. */
        void require(double atZero, double rate, double low, double high) {
            if (rate == 0) {
                if (atZero <= low || atZero >= high) {
                    to = Double.NEGATIVE_INFINITY;
                }
                return;
            }
            double a = (low - atZero) / rate;
            double b = (high - atZero) / rate;
            from = Math.max(from, Math.min(a, b));
            to = Math.min(to, Math.max(a, b));
        }
    }
}
