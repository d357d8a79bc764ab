package org.fencecore.geometry;

import java.math.BigInteger;
import java.util.Optional;
import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Length;

/**
 * A straight line between two points in plan: one side of a lot, one string between two stakes.
 *
 * <p>Places on it are told as a surveyor does, by station and offset: how far along from the start, and how far square
 * off to the right. Stations before the start or past the end are on the line extended, where batter boards stand.
 *
 * <p>Example: a 40 ft string running east, and a stake 4 ft past its end and 2 ft off to the right.
 *
 * <pre>{@code
 * Segment string = Segment.of(Point.ORIGIN, Point.of(Length.ofFeet(40), Length.ZERO));
 * Point stake = string.pointAt(Length.ofFeet(44), Length.ofFeet(2));   // E 44 ft, N -2 ft
 * string.stationOf(stake);                                             // 44 ft
 * string.offsetOf(stake);                                              // 2 ft
 * }</pre>
 *
 * @param start where it begins
 * @param end where it ends, another point
 */
public record Segment(Point start, Point end) {

    /**
     * Checks that the line has a direction.
     *
     * @param start where it begins
     * @param end where it ends, another point
     * @throws IllegalArgumentException if both ends are the same point
     */
    public Segment {
        if (start.equals(end)) {
            throw new IllegalArgumentException(
                    "start and end were both " + start + "; a line needs two different points");
        }
    }

    /**
     * Returns the straight line between two points.
     *
     * @param start where it begins
     * @param end where it ends, another point
     * @return the line
     * @throws IllegalArgumentException if both ends are the same point
     */
    public static Segment of(Point start, Point end) {
        return new Segment(start, end);
    }

    /**
     * Returns how long it is.
     *
     * @return the level distance from start to end, to the nearest nanometre
     */
    public Length length() {
        return start.distanceTo(end);
    }

    /**
     * Returns the direction from start to end.
     *
     * @return the bearing
     */
    public Bearing bearing() {
        return start.bearingTo(end);
    }

    /**
     * Returns the same line from its other end.
     *
     * @return the line from end to start
     */
    public Segment reversed() {
        return new Segment(end, start);
    }

    /**
     * Returns the point at a station. The start is at zero and the end at the length, exactly.
     *
     * @param station the distance from the start; negative, or past the end, is on the line extended
     * @return the point, to the nearest nanometre each way
     * @throws IllegalArgumentException if the station or the point is over 1,000,000 km from zero
     */
    public Point pointAt(Length station) {
        Exact.requireInRange("station", station);
        long length = length().nanometres();
        return Point.at(
                start.x() + Exact.timesOver(dx(), station.nanometres(), length),
                start.y() + Exact.timesOver(dy(), station.nanometres(), length));
    }

    /**
     * Returns the point at a station and an offset.
     *
     * @param station the distance from the start along the line
     * @param right the distance off the line, square to it, to the right if positive
     * @return the point, to a nanometre each way
     * @throws IllegalArgumentException if the station, the offset or the point is over 1,000,000 km from zero
     */
    public Point pointAt(Length station, Length right) {
        Exact.requireInRange("right", right);
        long length = length().nanometres();
        Point onLine = pointAt(station);
        return Point.at(
                onLine.x() + Exact.timesOver(dy(), right.nanometres(), length),
                onLine.y() - Exact.timesOver(dx(), right.nanometres(), length));
    }

    /**
     * Returns the line moved square off to a side.
     *
     * @param right how far, to the right if positive
     * @return the parallel line, of the same length
     * @throws IllegalArgumentException if the offset or an end is over 1,000,000 km from zero
     */
    public Segment offset(Length right) {
        Point newStart = pointAt(Length.ZERO, right);
        return new Segment(newStart, Point.at(newStart.x() + dx(), newStart.y() + dy()));
    }

    /**
     * Returns the station of the foot of the square from a point to this line.
     *
     * @param point any point
     * @return the distance from the start, negative or past the end if the foot is on the line extended
     */
    public Length stationOf(Point point) {
        double along = (double) dx() * (point.x() - start.x()) + (double) dy() * (point.y() - start.y());
        return Length.ofNanometres(Math.round(along / Math.sqrt((double) dx() * dx() + (double) dy() * dy())));
    }

    /**
     * Returns how far a point is off the line, or the line extended, square to it.
     *
     * @param point any point
     * @return the offset, to the right if positive
     */
    public Length offsetOf(Point point) {
        double off = (double) dy() * (point.x() - start.x()) - (double) dx() * (point.y() - start.y());
        return Length.ofNanometres(Math.round(off / Math.sqrt((double) dx() * dx() + (double) dy() * dy())));
    }

    /**
     * Returns the point of this line nearest to a given one: the foot of the square, or the end it lies beyond.
     *
     * @param point any point
     * @return the nearest point between start and end
     */
    public Point nearestTo(Point point) {
        return pointAt(Length.max(Length.ZERO, Length.min(length(), stationOf(point))));
    }

    /**
     * Returns how far a point is from this line, between its ends.
     *
     * @param point any point
     * @return the shortest distance, zero or more
     */
    public Length distanceTo(Point point) {
        Length station = stationOf(point);
        boolean beside = !station.isNegative() && station.compareTo(length()) <= 0;
        return beside ? offsetOf(point).abs() : Length.min(start.distanceTo(point), end.distanceTo(point));
    }

    /**
     * Returns on which side of the line, or the line extended, a point lies, exactly.
     *
     * @param point any point
     * @return the side, or empty if the point is on the line
     */
    public Optional<Side> sideOf(Point point) {
        int left = leftOf(point);
        return left == 0 ? Optional.empty() : Optional.of(left > 0 ? Side.LEFT : Side.RIGHT);
    }

    /**
     * Tells whether a point lies on this line, its ends included, exactly to the nanometre.
     *
     * @param point any point
     * @return true if it is on the line between the ends
     */
    public boolean contains(Point point) {
        return leftOf(point) == 0 && between(point.x(), start.x(), end.x()) && between(point.y(), start.y(), end.y());
    }

    /**
     * Tells whether two lines pass through each other, exactly: each has its ends on both sides of the other. Lines
     * that only touch, or run along each other, do not cross.
     *
     * @param other the other line
     * @return true if they cross at an inner point of both
     */
    public boolean crosses(Segment other) {
        return leftOf(other.start) * leftOf(other.end) < 0 && other.leftOf(start) * other.leftOf(end) < 0;
    }

    /**
     * Tells whether two lines have a point in common, exactly: they cross, touch or lie on each other.
     *
     * @param other the other line
     * @return true if they meet anywhere, ends included
     */
    public boolean touches(Segment other) {
        return crosses(other)
                || contains(other.start)
                || contains(other.end)
                || other.contains(start)
                || other.contains(end);
    }

    /**
     * Returns the one point that two lines have in common.
     *
     * @param other the other line
     * @return the point, to the nearest nanometre each way; empty if the lines are apart, or lie on each other along a
     *     stretch and so have no single point in common
     */
    public Optional<Point> intersection(Segment other) {
        if (!touches(other)) {
            return Optional.empty();
        }
        if (Exact.crossSign(dx(), dy(), other.dx(), other.dy()) != 0) {
            return intersectionOfLines(other);
        }
        // Both lie on one line: they have a single point in common if they meet end to end and go on apart.
        Point shared = other.contains(start) ? start : end;
        boolean atOtherEnd = shared.equals(other.start) || shared.equals(other.end);
        Point ours = shared.equals(start) ? end : start;
        Point theirs = shared.equals(other.start) ? other.end : other.start;
        return atOtherEnd && !other.contains(ours) && !contains(theirs) ? Optional.of(shared) : Optional.empty();
    }

    /**
     * Returns where two lines meet when both are extended as far as it takes, as two strings of a corner do.
     *
     * @param other the other line
     * @return the point, to the nearest nanometre each way; empty if the lines are parallel or meet over 1,000,000 km
     *     from the origin
     */
    public Optional<Point> intersectionOfLines(Segment other) {
        // start + t * (end - start), with t the ratio of two exact cross products, rounded once at the end.
        BigInteger divisor = Exact.cross(dx(), dy(), other.dx(), other.dy());
        if (divisor.signum() == 0) {
            return Optional.empty();
        }
        BigInteger t = Exact.cross(other.start.x() - start.x(), other.start.y() - start.y(), other.dx(), other.dy());
        BigInteger x =
                Exact.divide(BigInteger.valueOf(dx()).multiply(t), divisor).add(BigInteger.valueOf(start.x()));
        BigInteger y =
                Exact.divide(BigInteger.valueOf(dy()).multiply(t), divisor).add(BigInteger.valueOf(start.y()));
        BigInteger limit = BigInteger.valueOf(Exact.LIMIT);
        if (x.abs().max(y.abs()).compareTo(limit) > 0) {
            return Optional.empty();
        }
        return Optional.of(Point.at(x.longValueExact(), y.longValueExact()));
    }

    /** Returns nanometres east from start to end. */
    long dx() {
        return end.x() - start.x();
    }

    /** Returns nanometres north from start to end. */
    long dy() {
        return end.y() - start.y();
    }

    /** Returns 1 if a point is left of the line, -1 if right, 0 if on the line or the line extended. */
    int leftOf(Point point) {
        return Exact.crossSign(dx(), dy(), point.x() - start.x(), point.y() - start.y());
    }

    private static boolean between(long value, long a, long b) {
        return Math.min(a, b) <= value && value <= Math.max(a, b);
    }
}
