package org.fencecore.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.units.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * What is left of a boundary when all its sides are moved inwards so far that some vanish or the ground between them
 * falls apart.
 *
 * <p>A buffer operation finds which sides are left and in which order they meet. Where they meet is not taken from it but
 * worked out from the moved sides themselves, to the nanometre.
 */
public final class InsetRings {

    /** Mitres up to this many times the distance are kept: corners down to a tenth of a degree. */
    private static final double MITRE_LIMIT = 1000;

    /** Edges of the buffer that are shorter come from rounding, in metres. */
    private static final double SPECK = 1e-6;

    /**
     * At shallow corners the buffer joins its edges off the mitre by up to a twentieth of the distance along them, which
     * moves them sideways by less than this part of it.
     */
    private static final double SIDEWAYS = 0.002;

    private final Polygon boundary;
    private final Length distance;
    private final int inwards;

    private InsetRings(Polygon boundary, Length distance) {
        this.boundary = boundary;
        this.distance = distance;
        this.inwards = boundary.inside() == Side.RIGHT ? 1 : -1;
    }

    /**
     * Returns which sides are left when all are moved inwards.
     *
     * @param boundary a boundary that does not cross itself
     * @param distance how far inwards, over zero
     * @return for every piece of ground that is left, the indices of its sides in the order of the boundary; no piece when
     *     nothing is left
     */
    public static List<List<Integer>> sides(Polygon boundary, Length distance) {
        return new InsetRings(boundary, distance).sides();
    }

    /**
     * Returns where two sides that follow one another in a ring meet once they are moved.
     *
     * @param boundary the boundary
     * @param distance how far inwards
     * @param arriving the index of the side that arrives
     * @param leaving the index of the side that leaves
     * @return the place, or empty for two parallel sides
     */
    public static Optional<Point> corner(Polygon boundary, Length distance, int arriving, int leaving) {
        InsetRings inset = new InsetRings(boundary, distance);
        if (leaving == (arriving + 1) % boundary.vertices().size()) {
            return Optional.of(boundary.corner(leaving).mitrePoint(distance));
        }
        return inset.moved(arriving).intersectionOfLines(inset.moved(leaving));
    }

    private Segment moved(int side) {
        return boundary.side(side).offset(inwards > 0 ? distance : distance.negated());
    }

    private List<List<Integer>> sides() {
        BufferParameters parameters =
                new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
        // Left to simplify, it skips vertices at shallow corners that point inwards.
        parameters.setSimplifyFactor(0);
        Geometry left = new BufferOp(shape(), parameters).getResultGeometry(-distance.metres());
        List<List<Integer>> rings = new ArrayList<>();
        for (int i = 0; i < left.getNumGeometries(); i++) {
            Geometry piece = left.getGeometryN(i);
            if (!piece.isEmpty()) {
                List<Integer> ring = ring(piece.getCoordinates());
                if (ring.size() >= 3) {
                    rings.add(ring);
                }
            }
        }
        rings.sort(Comparator.comparing(Collections::min));
        return rings;
    }

    private Geometry shape() {
        List<Point> vertices = boundary.vertices();
        Coordinate[] coordinates = new Coordinate[vertices.size() + 1];
        for (int i = 0; i < coordinates.length; i++) {
            Point vertex = vertices.get(i % vertices.size());
            coordinates[i] =
                    new Coordinate(vertex.east().metres(), vertex.north().metres());
        }
        return new GeometryFactory().createPolygon(coordinates);
    }

    private List<Integer> ring(Coordinate[] closed) {
        List<Integer> sides = new ArrayList<>();
        for (int i = 0; i + 1 < closed.length; i++) {
            if (closed[i].distance(closed[i + 1]) > SPECK) {
                side(closed[i], closed[i + 1])
                        .filter(side ->
                                sides.isEmpty() || !sides.get(sides.size() - 1).equals(side))
                        .ifPresent(sides::add);
            }
        }
        if (sides.size() > 1 && sides.get(0).equals(sides.get(sides.size() - 1))) {
            sides.remove(sides.size() - 1);
        }
        if (!sides.isEmpty() && isAgainst(closed)) {
            Collections.reverse(sides);
        }
        Collections.rotate(sides, -sides.indexOf(Collections.min(sides, Comparator.naturalOrder())));
        return sides;
    }

    /** The buffer may go round the other way than the boundary does. */
    private boolean isAgainst(Coordinate[] closed) {
        double twiceArea = 0;
        for (int i = 0; i + 1 < closed.length; i++) {
            twiceArea += (closed[i].x - closed[0].x) * (closed[i + 1].y - closed[0].y)
                    - (closed[i + 1].x - closed[0].x) * (closed[i].y - closed[0].y);
        }
        boolean counterClockwise = twiceArea > 0;
        return counterClockwise != (inwards < 0);
    }

    /** The side that an edge of the buffer runs along, the nearest where several lie on one line. */
    private Optional<Integer> side(Coordinate from, Coordinate to) {
        double x = (from.x + to.x) / 2;
        double y = (from.y + to.y) / 2;
        double near = SIDEWAYS * distance.metres() + SPECK;
        int best = -1;
        double bestMiss = Double.POSITIVE_INFINITY;
        for (int i = 0; i < boundary.vertices().size(); i++) {
            Segment side = boundary.side(i);
            double dx = side.end().east().minus(side.start().east()).metres();
            double dy = side.end().north().minus(side.start().north()).metres();
            double length = Math.hypot(dx, dy);
            double px = x - side.start().east().metres();
            double py = y - side.start().north().metres();
            double sideways = Math.abs((dy * px - dx * py) / length * inwards - distance.metres());
            double along = (dx * px + dy * py) / length;
            double askew = Math.abs(dx * (to.y - from.y) - dy * (to.x - from.x)) / length;
            double miss = sideways + Math.max(0, Math.max(-along, along - length));
            if (sideways < near && askew < 2 * near && miss < bestMiss) {
                best = i;
                bestMiss = miss;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(best);
    }
}
