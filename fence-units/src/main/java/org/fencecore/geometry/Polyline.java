package org.fencecore.geometry;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * A line of straight pieces from point to point, open at its ends: a fence line around three sides of a yard.
 *
 * <p>Stations count along it from its start, each piece adding its length to the nearest nanometre, so that the station
 * of a corner is exactly the sum of the pieces before it. It has from 2 to 10,000 points.
 *
 * <p>Example: 30 ft east, then 40 ft north.
 *
 * <pre>{@code
 * Polyline line = Polyline.of(List.of(
 *         Point.ORIGIN,
 *         Point.of(Length.ofFeet(30), Length.ZERO),
 *         Point.of(Length.ofFeet(30), Length.ofFeet(40))));
 * line.length();                          // 70 ft
 * line.pointAt(Length.ofFeet(36));        // E 30 ft, N 6 ft
 * line.bearingAt(Length.ofFeet(36));      // N 0° E
 * }</pre>
 */
public final class Polyline {

    /** The most points of a polyline or a polygon. */
    static final int MOST_POINTS = 10_000;

    private final List<Point> points;
    private final long[] stations;

    private Polyline(List<Point> points) {
        this.points = points;
        stations = new long[points.size()];
        for (int i = 1; i < stations.length; i++) {
            long piece = points.get(i - 1).distanceTo(points.get(i)).nanometres();
            stations[i] = Math.addExact(stations[i - 1], piece);
        }
    }

    /**
     * Returns the line from point to point.
     *
     * @param points the points in order, 2 to 10,000, no two neighbours the same
     * @return the line
     * @throws IllegalArgumentException if there are too few or too many points, or two neighbours are the same
     * @throws ArithmeticException if the whole is beyond what a length holds
     */
    public static Polyline of(List<Point> points) {
        return new Polyline(requireDistinct(points, 2));
    }

    /** Returns a copy of the points after checking their number and that no two neighbours are the same. */
    static List<Point> requireDistinct(List<Point> points, int fewest) {
        if (points.size() < fewest || points.size() > MOST_POINTS) {
            throw new IllegalArgumentException("number of points was " + points.size() + "; give from " + fewest
                    + " to 10,000, and draw a curve with fewer");
        }
        List<Point> copy = List.copyOf(points);
        for (int i = 1; i < copy.size(); i++) {
            if (copy.get(i).equals(copy.get(i - 1))) {
                throw new IllegalArgumentException("points " + (i - 1) + " and " + i + " were both " + copy.get(i)
                        + "; give each point once, counting from 0");
            }
        }
        return copy;
    }

    /**
     * Returns the points in order.
     *
     * @return the two ends and every corner between, unmodifiable
     */
    public List<Point> points() {
        return points;
    }

    /**
     * Returns the straight pieces in order, one fewer than the points.
     *
     * @return the pieces, unmodifiable
     */
    public List<Segment> segments() {
        return new AbstractList<>() {
            @Override
            public Segment get(int index) {
                return new Segment(points.get(index), points.get(index + 1));
            }

            @Override
            public int size() {
                return points.size() - 1;
            }
        };
    }

    /**
     * Returns how long the line is.
     *
     * @return the sum of its pieces
     */
    public Length length() {
        return Length.ofNanometres(stations[stations.length - 1]);
    }

    /**
     * Returns the station of one of the points.
     *
     * @param index which point, from 0
     * @return the distance along the line from its start
     * @throws IndexOutOfBoundsException if there is no such point
     */
    public Length stationOfPoint(int index) {
        return Length.ofNanometres(stations[index]);
    }

    /**
     * Returns the corner at one of the points between the ends.
     *
     * @param index which point, from 1 to the last but one
     * @param inside which side of the line is the inside
     * @return the corner
     * @throws IndexOutOfBoundsException if there is no such point or it is an end
     */
    public Corner corner(int index, Side inside) {
        return Corner.of(points.get(index - 1), points.get(index), points.get(index + 1), inside);
    }

    /**
     * Returns the point at a station.
     *
     * @param station the distance along the line from its start, from zero to the length
     * @return the point, to the nearest nanometre each way
     * @throws IllegalArgumentException if the station is not on the line
     */
    public Point pointAt(Length station) {
        int piece = pieceAt(station);
        return segments().get(piece).pointAt(station.minus(stationOfPoint(piece)));
    }

    /**
     * Returns the direction of the line at a station. At a corner it is the direction ahead.
     *
     * @param station the distance along the line from its start, from zero to the length
     * @return the bearing
     * @throws IllegalArgumentException if the station is not on the line
     */
    public Bearing bearingAt(Length station) {
        return segments().get(pieceAt(station)).bearing();
    }

    /**
     * Returns the station of the point of this line nearest to a given one, the first if several are as near.
     *
     * @param point any point
     * @return the distance along the line from its start
     */
    public Length stationNearest(Point point) {
        Length best = Length.ZERO;
        Length nearest = points.get(0).distanceTo(point);
        for (int i = 0; i < points.size() - 1; i++) {
            Segment piece = segments().get(i);
            Length distance = piece.distanceTo(point);
            if (distance.compareTo(nearest) < 0) {
                nearest = distance;
                Length along = Length.max(Length.ZERO, Length.min(piece.length(), piece.stationOf(point)));
                best = stationOfPoint(i).plus(along);
            }
        }
        return best;
    }

    /**
     * Returns how far a point is from this line.
     *
     * @param point any point
     * @return the shortest distance to any of the pieces, zero or more
     */
    public Length distanceTo(Point point) {
        return nearest(segments(), point);
    }

    /** Returns the shortest distance from a point to any of some lines, of which there is at least one. */
    static Length nearest(List<Segment> pieces, Point point) {
        Length nearest = pieces.get(0).distanceTo(point);
        for (Segment piece : pieces) {
            nearest = Length.min(nearest, piece.distanceTo(point));
        }
        return nearest;
    }

    /**
     * Returns the same line from its other end.
     *
     * @return the line with its points in the opposite order
     */
    public Polyline reversed() {
        Point[] back = new Point[points.size()];
        Arrays.setAll(back, i -> points.get(back.length - 1 - i));
        return new Polyline(List.of(back));
    }

    private int pieceAt(Length station) {
        if (station.isNegative() || station.compareTo(length()) > 0) {
            throw new IllegalArgumentException("station was " + station + "; the line runs from 0 to " + length()
                    + ", so give a station on it or make the line longer");
        }
        int found = Arrays.binarySearch(stations, station.nanometres());
        return Math.min(found >= 0 ? found : -found - 2, stations.length - 2);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Polyline line && line.points.equals(points);
    }

    @Override
    public int hashCode() {
        return points.hashCode();
    }

    /**
     * Returns the points as text.
     *
     * @return the points in order
     */
    @Override
    public String toString() {
        return "Polyline" + points;
    }
}
