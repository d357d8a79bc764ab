package org.fencecore.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.SelfCrossing;
import org.fencecore.geometry.Side;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** A lot whose misclosure is spread, laid out in facets: its sides, its outline and its area, or where it crosses. */
final class LotOutline {

    private static final int MOST_FACETS = 10_000;

    private final List<Point> corners;
    private final List<Course> adjusted;
    private final Side inside;
    private final Area area;

    /** Lays out the courses between adjusted corners, as many as courses. */
    LotOutline(List<Point> corners, List<Course> courses) {
        this.corners = corners;
        adjusted = new ArrayList<>(courses.size());
        Polygon chords = Polygon.of(corners);
        double squareMetres = chords.inside() == Side.LEFT
                ? chords.area().squareMetres()
                : -chords.area().squareMetres();
        for (int i = 0; i < courses.size(); i++) {
            Point start = corners.get(i);
            Point end = corners.get((i + 1) % corners.size());
            Course course = courses.get(i).moved(start.bearingTo(end), start.distanceTo(end));
            adjusted.add(course);
            squareMetres += course.curve()
                    .map(curve -> curve.areaLeftOfChord().squareMetres())
                    .orElse(0.0);
        }
        inside = squareMetres < 0 ? Side.RIGHT : Side.LEFT;
        area = Area.ofSquareMetres(Math.abs(squareMetres));
    }

    Area area() {
        return area;
    }

    /** The sides in facets that keep within a distance of the curves. */
    List<LotSide> sides(List<Course> courses, Length within) {
        List<LotSide> sides = new ArrayList<>(courses.size());
        int facets = 0;
        for (int i = 0; i < courses.size(); i++) {
            LotSide side = new LotSide(i + 1, courses.get(i), adjusted.get(i), line(i, within), facets);
            sides.add(side);
            facets += side.facets();
        }
        if (facets > MOST_FACETS) {
            throw new IllegalArgumentException("the curves of the lot within " + within + " take " + facets
                    + " straight facets in all; it must be 10,000 or fewer: lay them out more coarsely");
        }
        return sides;
    }

    private Polyline line(int side, Length within) {
        Point start = corners.get(side);
        Point end = corners.get((side + 1) % corners.size());
        List<Point> points = new ArrayList<>();
        points.add(start);
        adjusted.get(side).curve().ifPresent(curve -> {
            Arc arc = Arc.of(corners.get(0), start, end, curve);
            boolean bulgesOut = curve.turn() == inside;
            points.addAll(
                    bulgesOut
                            ? arc.chords(corners.get(0), within.metres())
                            : arc.tangents(corners.get(0), within.metres()));
        });
        points.add(end);
        return Polyline.of(points);
    }

    /** The outline of the facets of all sides. */
    static Polygon outline(List<LotSide> sides) {
        List<Point> vertices = new ArrayList<>();
        for (LotSide side : sides) {
            vertices.addAll(side.line().points().subList(0, side.facets()));
        }
        return Polygon.of(vertices);
    }

    /** Says where the lot crosses itself, or its facets do. */
    Optional<Finding> crossing(List<LotSide> sides, Polygon outline, Length within) {
        boolean curved = sides.stream().anyMatch(LotSide::isCurved);
        Optional<SelfCrossing> crossing =
                curved ? CurvedCrossing.first(corners, adjusted) : outline.firstSelfCrossing();
        if (crossing.isPresent()) {
            SelfCrossing at = crossing.get();
            return Optional.of(crossing(at.side() + 1, at.otherSide() + 1, "crosses", at.place()));
        }
        return curved
                ? outline.firstSelfCrossing()
                        .map(at -> crossing(
                                owner(sides, at.side()),
                                owner(sides, at.otherSide()),
                                "comes within " + Written.tape(within) + " of",
                                at.place()))
                : Optional.empty();
    }

    private Finding crossing(int side, int other, String how, Point place) {
        Point first = corners.get(0);
        return Finding.blocker(
                        "lot-crosses-itself",
                        "lot",
                        "side " + side + " " + how + " side " + other + " at east "
                                + Written.station(place.east().minus(first.east())) + ", north "
                                + Written.station(place.north().minus(first.north())) + " of the first corner")
                .withRemedy("put the courses in the order in which they go round the lot, and check the bearings"
                        + " of these two");
    }

    private static int owner(List<LotSide> sides, int facet) {
        int owner = 0;
        while (owner + 1 < sides.size() && sides.get(owner + 1).firstFacet() <= facet) {
            owner++;
        }
        return owner + 1;
    }
}
