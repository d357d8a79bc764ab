package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.obstacles.Obstacle;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.obstacles.UtilityKind;
import org.fencecore.rules.ClearGround;
import org.fencecore.rules.CornerVisibility;
import org.fencecore.rules.HeightLimit;
import org.fencecore.rules.LocalRules;
import org.fencecore.rules.PoolBarrier;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.terrain.Shot;
import org.fencecore.terrain.ShotSurface;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Citation;

/** Sites of every kind that the builders take, and what stands on them. */
public final class AnySite {

    private AnySite() {}

    public static Arbitrary<Site> sites() {
        Arbitrary<List<Course>> courses = Combinators.combine(
                        Arbitraries.doubles().between(0, 360).ofScale(2),
                        Arbitraries.doubles().between(0.5, 300).ofScale(2))
                .as(Plans::course)
                .list()
                .ofMinSize(2)
                .ofMaxSize(7);
        Arbitrary<LotBoundary> lots = Arbitraries.oneOf(
                courses.map(AnySite::closed),
                Combinators.combine(
                                Arbitraries.doubles().between(1, 300).ofScale(2),
                                Arbitraries.doubles().between(1, 300).ofScale(2))
                        .as(Plans::rectangle));
        return lots.flatMap(AnySite::siteOn);
    }

    /** The courses, and one that leads back to the beginning. */
    private static LotBoundary closed(List<Course> courses) {
        Point at = Point.ORIGIN;
        for (Course course : courses) {
            at = at.plus(course.bearing(), course.distance());
        }
        List<Course> all = new ArrayList<>(courses);
        if (!at.equals(Point.ORIGIN)) {
            all.add(Course.of(at.bearingTo(Point.ORIGIN), at.distanceTo(Point.ORIGIN)));
        }
        return all.size() < 3 ? Plans.rectangle(40, 40) : LotBoundary.of(all);
    }

    private static Arbitrary<Site> siteOn(LotBoundary lot) {
        int sides = lot.courses().size();
        Arbitrary<Double> heights = Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(8, Arbitraries.doubles().between(-6, 6).ofScale(2)),
                net.jqwik.api.Tuple.of(
                        1, Arbitraries.doubles().between(-1000, 1000).ofScale(2)));
        Arbitrary<List<GateLocation>> gates = Combinators.combine(
                        Arbitraries.integers().between(1, sides),
                        Arbitraries.doubles().between(0, 300).ofScale(2),
                        Arbitraries.doubles().between(0.25, 150).ofScale(2),
                        Arbitraries.of(HingeSide.class),
                        Arbitraries.integers().between(0, 15))
                .as((side, centre, opening, hinges, wishes) -> GateLocation.named("gate at " + centre + " on " + side)
                        .onSide(side)
                        .centredAt(Length.ofFeet(centre))
                        .clearOpening(Length.ofInches(opening))
                        .hinges(hinges)
                        .twoLeaves((wishes & 1) != 0)
                        .raked((wishes & 2) != 0)
                        .opensOutward((wishes & 4) != 0)
                        .selfClosing((wishes & 8) != 0)
                        .selfLatching((wishes & 8) != 0)
                        .latchRelease(Length.ofInches(40 + wishes), (wishes & 8) != 0)
                        .build())
                .list()
                .ofMaxSize(3)
                .uniqueElements(GateLocation::name);
        return Combinators.combine(
                        Arbitraries.integers().between(1, sides).set().ofMinSize(1),
                        heights.list().ofSize(3 * sides),
                        gates,
                        Arbitraries.doubles().between(0, 30).ofScale(1),
                        Arbitraries.doubles().between(1, 500).ofScale(1).injectNull(0.3),
                        Arbitraries.integers().between(-3, 1))
                .as((fenced, ups, places, setback, wind, shotsShortBy) -> {
                    Site.Builder site = Site.on(lot).setback(Length.ofInches(setback));
                    fenced.forEach(site::fenceOn);
                    IntStream.rangeClosed(1, sides)
                            .forEach(side -> site.ground(side, ground(lot, side, ups, shotsShortBy)));
                    places.forEach(site::gate);
                    if (wind != null) {
                        site.windPressure(Pressure.ofPsf(wind));
                    }
                    return site.build();
                });
    }

    private static Profile ground(LotBoundary lot, int side, List<Double> ups, int shortBy) {
        double length = lot.courses().get(side - 1).distance().feet();
        double first = Math.max(0, shortBy) * length / 10;
        return Plans.shots(
                first,
                ups.get(3 * side - 3),
                first + length / 2,
                ups.get(3 * side - 2),
                Math.max(first + length, first + length - shortBy),
                ups.get(3 * side - 1));
    }

    /** A lot of five sides whose second is a curve to either hand, from nearly straight to more than half round. */
    static Arbitrary<LotBoundary> curvedLots() {
        return Combinators.combine(
                        Arbitraries.doubles().between(1, 80).ofScale(2),
                        Arbitraries.doubles().between(2, 200).ofScale(1),
                        Arbitraries.doubles().between(5, 60).ofScale(2),
                        Arbitraries.of(Side.class),
                        Arbitraries.of(true, false),
                        Arbitraries.integers().between(0, 90))
                .as((front, delta, radius, turn, clockwise, back) -> {
                    Course first = Plans.course(0, front);
                    Course curve = Course.curve(turn)
                            .radius(Length.ofFeet(radius))
                            .delta(Angle.ofDegrees(delta))
                            .tangentTo(first)
                            .build();
                    double way = clockwise ? 90 : 270;
                    return closed(List.of(first, curve, Plans.course(way, 100), Plans.course(way + 60 + back, 90)));
                });
    }

    private static Point at(int eastFeet, int northFeet) {
        return Point.of(Length.ofFeet(eastFeet), Length.ofFeet(northFeet));
    }

    private static Polyline line(int east, int north, int along, int up) {
        return Polyline.of(List.of(at(east, north), at(east + along, north + up)));
    }

    static Arbitrary<Obstacles> obstacles() {
        Arbitrary<Integer> place = Arbitraries.integers().between(-60, 160);
        Arbitrary<Integer> reach = Arbitraries.integers().between(1, 150);
        return Combinators.combine(place, place, reach, Arbitraries.integers().between(0, 5))
                .as((east, north, size, kind) -> {
                    Polyline line = line(east, north, size, 40 - size);
                    Length small = Length.ofInches(size);
                    return switch (kind) {
                        case 0 -> Obstacle.utility(UtilityKind.GAS, line);
                        case 1 -> Obstacle.tree(at(east, north), small, small.times(2));
                        case 2 -> Obstacle.wall(line, small);
                        case 3 -> Obstacle.hydrant(at(east, north), small);
                        case 4 ->
                            Obstacle.structure(Polygon.of(
                                    List.of(at(east, north), at(east + size, north), at(east, north + size))));
                        default -> Obstacle.utility(UtilityKind.OTHER, line, small);
                    };
                })
                .list()
                .ofMaxSize(8)
                .map(Obstacles::of);
    }

    static LocalRules rules(int feet) {
        Citation town = Citation.of("invented town code", "1", "");
        Polyline street = line(-20, 0, 200, feet);
        return LocalRules.of(List.of(
                HeightLimit.of(Zone.along(street, Length.ofFeet(feet)), Length.ofInches(10 * feet), "front", town),
                HeightLimit.permitOver(Zone.everywhere(), Length.ofFeet(6), "permit", town),
                CornerVisibility.of(
                        Corner.of(at(0, 0), Bearing.SOUTH, Bearing.EAST, Side.LEFT),
                        Length.ofFeet(feet),
                        Length.ofFeet(25),
                        Length.ofFeet(3),
                        "corner",
                        town),
                ClearGround.easement(Zone.along(street, Length.ofFeet(2)), "drain", town),
                ClearGround.noHoles(Zone.around(at(40, 40), Length.ofFeet(feet)), "tank", town),
                PoolBarrier.builder(Side.RIGHT, "pool", PoolBarrier.PUBLISHED).build()));
    }

    static ShotSurface bumps(List<Integer> inches) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < inches.size(); i++) {
            // Twelve shots a row, 40 ft apart and a little out of line, round every lot that is tried here.
            Point place = at(-180 + 40 * (i % 12) + i % 7, -180 + 40 * (i / 12) + i % 5);
            shots.add(new Shot(place, Length.ofInches(inches.get(i))));
        }
        return ShotSurface.of(shots);
    }
}
