package org.fencecore.geometry;

import java.math.BigInteger;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * A closed boundary of straight sides, such as a lot. Side {@code i} runs from vertex {@code i} to the next, the last
 * side back to vertex 0.
 *
 * <p>It has from 3 to 10,000 vertices, in either direction round. A boundary that crosses itself can be made, so that it
 * can be drawn and the mistake shown; {@link #firstSelfCrossing} tells where. What is said of the inside then means
 * nothing.
 *
 * <p>Example: a rectangular lot of 75 by 120 ft, and the ground left 5 ft inside its lines.
 *
 * <pre>{@code
 * Polygon lot = Polygon.of(List.of(
 *         Point.ORIGIN,
 *         Point.of(Length.ofFeet(75), Length.ZERO),
 *         Point.of(Length.ofFeet(75), Length.ofFeet(120)),
 *         Point.of(Length.ZERO, Length.ofFeet(120))));
 * lot.area();                                         // 9000 sq ft
 * lot.perimeter();                                    // 390 ft
 * lot.inset(Length.ofFeet(5)).orElseThrow().area();   // 7150 sq ft
 * lot.inset(Length.ofFeet(37.5));                     // empty: nothing is left
 * }</pre>
 *
 * <p>Sources: area by the coordinate method, as worked in the chapters on coordinate geometry of Open Access Surveying Library.
 */
public final class Polygon {

    private final List<Point> vertices;
    private final BigInteger twiceArea; // in square nanometres, over zero if the vertices go counter-clockwise
    // Looked for when first asked; of two threads that ask at once each finds the same.
    private @Nullable SelfCrossing crossing;
    private volatile boolean isSearched;

    private Polygon(List<Point> vertices) {
        this.vertices = vertices;
        Point origin = vertices.get(0);
        BigInteger sum = BigInteger.ZERO;
        for (int i = 2; i < vertices.size(); i++) {
            Point a = vertices.get(i - 1);
            Point b = vertices.get(i);
            sum = sum.add(Exact.cross(a.x() - origin.x(), a.y() - origin.y(), b.x() - origin.x(), b.y() - origin.y()));
        }
        twiceArea = sum;
    }

    /**
     * Returns the boundary through the given vertices.
     *
     * @param vertices the corners in order, either way round, 3 to 10,000; the first is not repeated at the end
     * @return the boundary
     * @throws IllegalArgumentException if there are too few or too many vertices, or two neighbours are the same
     */
    public static Polygon of(List<Point> vertices) {
        List<Point> copy = Polyline.requireDistinct(vertices, 3);
        if (copy.get(0).equals(copy.get(copy.size() - 1))) {
            throw new IllegalArgumentException("the first and the last vertex were both " + copy.get(0)
                    + "; leave out the last, since the boundary closes by itself");
        }
        return new Polygon(copy);
    }

    /**
     * Returns the corners in order.
     *
     * @return the vertices, unmodifiable
     */
    public List<Point> vertices() {
        return vertices;
    }

    /**
     * Returns a side.
     *
     * @param index which side, from 0 for the one that leaves the first vertex
     * @return the side from that vertex to the next
     * @throws IndexOutOfBoundsException if there is no such side
     */
    public Segment side(int index) {
        return new Segment(vertices.get(index), vertices.get((index + 1) % vertices.size()));
    }

    /**
     * Returns all sides in order, as many as vertices.
     *
     * @return the sides, unmodifiable
     */
    public List<Segment> sides() {
        return new AbstractList<>() {
            @Override
            public Segment get(int index) {
                return side(index);
            }

            @Override
            public int size() {
                return vertices.size();
            }
        };
    }

    /**
     * Returns the corner at a vertex, with the inside of the boundary as its inside.
     *
     * @param index which vertex, from 0
     * @return the corner
     * @throws IndexOutOfBoundsException if there is no such vertex
     */
    public Corner corner(int index) {
        int n = vertices.size();
        return Corner.of(
                vertices.get(index == 0 ? n - 1 : index - 1),
                vertices.get(index),
                vertices.get((index + 1) % n),
                inside());
    }

    /**
     * Returns the enclosed area by the coordinate method: half the sum of the cross products of neighbouring vertices,
     * summed exactly.
     *
     * @return the area, zero or more whichever way round
     */
    public Area area() {
        return Area.ofSquareMetres(twiceArea.abs().doubleValue() / 2e18);
    }

    /**
     * Returns on which side of the boundary the inside lies, going round in the order of the vertices.
     *
     * @return right if the vertices go clockwise, left if counter-clockwise
     */
    public Side inside() {
        return twiceArea.signum() < 0 ? Side.RIGHT : Side.LEFT;
    }

    /**
     * Returns the length of the boundary.
     *
     * @return the sum of the sides
     * @throws ArithmeticException if it is beyond what a length holds
     */
    public Length perimeter() {
        Length sum = Length.ZERO;
        for (Segment side : sides()) {
            sum = sum.plus(side.length());
        }
        return sum;
    }

    /**
     * Returns the same boundary the other way round, from the same first vertex.
     *
     * @return the boundary with the inside on the other side
     */
    public Polygon reversed() {
        List<Point> back = new ArrayList<>(vertices.size());
        for (int i = 0; i < vertices.size(); i++) {
            back.add(vertices.get((vertices.size() - i) % vertices.size()));
        }
        return new Polygon(List.copyOf(back));
    }

    /**
     * Tells whether a point is inside or on the boundary, exactly to the nanometre.
     *
     * @param point any point
     * @return true if it is not outside
     */
    public boolean contains(Point point) {
        // Count the sides that a line due east from the point passes: an odd number puts it inside.
        boolean inside = false;
        Point start = vertices.get(vertices.size() - 1);
        for (Point end : vertices) {
            Point from = start;
            start = end;
            boolean startAbove = from.y() > point.y();
            boolean endAbove = end.y() > point.y();
            boolean passesBeside = (startAbove && endAbove)
                    || (from.y() < point.y() && end.y() < point.y())
                    || (from.x() < point.x() && end.x() < point.x());
            if (passesBeside) {
                continue;
            }
            Segment side = new Segment(from, end);
            if (side.contains(point)) {
                return true;
            }
            if (startAbove != endAbove && side.leftOf(point) == (endAbove ? 1 : -1)) {
                inside = !inside;
            }
        }
        return inside;
    }

    /**
     * Returns how far a point is outside.
     *
     * @param point any point
     * @return the shortest distance to the boundary from outside; zero inside and on the boundary
     */
    public Length distanceTo(Point point) {
        return contains(point) ? Length.ZERO : Polyline.nearest(sides(), point);
    }

    /**
     * Returns the first place where the boundary crosses, touches or doubles back on itself, judged exactly.
     *
     * @return the lowest pair of sides that meet elsewhere than at the vertex they share; empty for a sound boundary
     */
    public Optional<SelfCrossing> firstSelfCrossing() {
        if (!isSearched) {
            crossing = SelfCrossingSearch.first(this).orElse(null);
            isSearched = true;
        }
        return Optional.ofNullable(crossing);
    }

    /**
     * Returns the boundary with every side moved inwards by the same distance, its neighbours meeting in mitred
     * corners: a setback line, or a fence line kept inside the lot line.
     *
     * <p>While every side lasts, the area is {@code A - P d + S d²} and the perimeter {@code P - 2 S d}, with S the sum
     * of the tangents of half the turns. Side {@code i} of the result is parallel to side {@code i} of this boundary.
     * When a side would vanish or the moved boundary would run into itself, there is no such boundary and the answer is
     * empty, even if some smaller pieces of ground would still be left.
     *
     * @param distance how far inwards, square to the sides; negative to move outwards
     * @return the moved boundary, each vertex to the nearest nanometre; empty if a side vanishes or the parts collide
     * @throws IllegalArgumentException if this boundary crosses itself
     */
    public Optional<Polygon> inset(Length distance) {
        firstSelfCrossing().ifPresent(crossing -> {
            throw new IllegalArgumentException("sides " + crossing.side() + " and " + crossing.otherSide()
                    + " of the boundary meet at " + crossing.place() + ", so it has no inside; correct its vertices");
        });
        int n = vertices.size();
        List<Point> moved = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            moved.add(corner(i).mitrePoint(distance));
        }
        for (int i = 0; i < n; i++) {
            Point start = moved.get(i);
            Point end = moved.get((i + 1) % n);
            Segment side = side(i);
            // A side shrinks evenly with the distance: once it has turned round it never comes back.
            double along = (double) side.dx() * (end.x() - start.x()) + (double) side.dy() * (end.y() - start.y());
            if (along <= 0) {
                return Optional.empty();
            }
        }
        Polygon inset = new Polygon(List.copyOf(moved));
        boolean sound = inset.firstSelfCrossing().isEmpty() && inset.inside() == inside();
        return sound ? Optional.of(inset) : Optional.empty();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Polygon polygon && polygon.vertices.equals(vertices);
    }

    @Override
    public int hashCode() {
        return vertices.hashCode();
    }

    /**
     * Returns the vertices as text.
     *
     * @return the vertices in order
     */
    @Override
    public String toString() {
        return "Polygon" + vertices;
    }
}
