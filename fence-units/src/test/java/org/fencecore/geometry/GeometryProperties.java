package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

class GeometryProperties {

    private static final long NANOMETRE = 1;

    @Property
    void walkingBackEndsWhereItBegan(
            @ForAll("points") Point start,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @LongRange(min = 10_000_000, max = 1_000_000_000_000L) long distance) {
        Bearing bearing = Bearing.ofAzimuth(Angle.ofDegrees(azimuth));
        Length far = Length.ofNanometres(distance);
        Point end = start.plus(bearing, far);

        assertThat(end.plus(bearing.reversed(), far).distanceTo(start).nanometres())
                .isLessThanOrEqualTo(2 * NANOMETRE);
        assertThat(start.distanceTo(end).minus(far).abs().nanometres()).isLessThanOrEqualTo(NANOMETRE);
        // The end is rounded by up to 0.7 nm, which at the end of so short a line is a small angle.
        assertThat(start.bearingTo(end).turnTo(bearing).abs().radians()).isLessThan(1e-12 + 1.0 / distance);
        assertThat(start.plus(bearing, far.negated()))
                .matches(p -> p.distanceTo(start.plus(bearing.reversed(), far)).nanometres() <= NANOMETRE);
    }

    @Property
    void aBearingReadsBackToTheThousandthOfASecond(@ForAll @DoubleRange(min = 0, max = 360) double azimuth) {
        Bearing bearing = Bearing.ofAzimuth(Angle.ofDegrees(azimuth));
        Bearing read = Bearing.parse(bearing.toString());

        assertThat(read.turnTo(bearing).abs().degrees() * 3600).isLessThanOrEqualTo(0.000_501);
        assertThat(read).hasToString(bearing.toString());
    }

    @Property
    void turnsAddUp(
            @ForAll @DoubleRange(min = 0, max = 360) double from, @ForAll @DoubleRange(min = 0, max = 360) double to) {
        Bearing a = Bearing.ofAzimuth(Angle.ofDegrees(from));
        Bearing b = Bearing.ofAzimuth(Angle.ofDegrees(to));
        Angle turn = a.turnTo(b);

        assertThat(turn.degrees()).isGreaterThan(-180).isLessThanOrEqualTo(180);
        assertThat(a.plus(turn).turnTo(b).degrees()).isCloseTo(0, within(1e-12));
    }

    @Property
    void stationAndOffsetLeadBackToThePoint(@ForAll("segments") Segment line, @ForAll("points") Point point) {
        Point back = line.pointAt(line.stationOf(point), line.offsetOf(point));

        // On a line shorter than the way to the point, the rounding of the line's own length counts several times.
        double times = 1
                + (double) line.start().distanceTo(point).nanometres()
                        / line.length().nanometres();
        assertThat((double) back.distanceTo(point).nanometres()).isLessThanOrEqualTo(2 + 2 * times);
        assertThat(line.pointAt(line.length())).isEqualTo(line.end());
        assertThat(line.pointAt(Length.ZERO)).isEqualTo(line.start());
        line.sideOf(point)
                .filter(side -> !line.offsetOf(point).isZero())
                .ifPresent(side -> assertThat(line.offsetOf(point).isPositive()).isEqualTo(side == Side.RIGHT));
    }

    @Property
    void crossingIsMutualAndThePointIsOnBoth(@ForAll("segments") Segment a, @ForAll("segments") Segment b) {
        assertThat(a.crosses(b)).isEqualTo(b.crosses(a));
        assertThat(a.touches(b)).isEqualTo(b.touches(a));
        Optional<Point> crossing = a.intersection(b);

        assertThat(b.intersection(a)).isEqualTo(crossing);
        assertThat(crossing.isPresent()).isEqualTo(a.touches(b) && !lieOnEachOther(a, b));
        crossing.ifPresent(p -> {
            assertThat(a.distanceTo(p).nanometres()).isLessThanOrEqualTo(NANOMETRE);
            assertThat(b.distanceTo(p).nanometres()).isLessThanOrEqualTo(NANOMETRE);
        });
    }

    /** Tells whether two lines share a stretch: two of their four ends, different ones, are on both. */
    private static boolean lieOnEachOther(Segment a, Segment b) {
        long shared = Stream.of(a.start(), a.end(), b.start(), b.end())
                .filter(p -> a.contains(p) && b.contains(p))
                .distinct()
                .count();
        return shared > 1;
    }

    @Property
    void interiorAnglesAddUp(@ForAll("lots") Polygon lot) {
        double sum = 0;
        for (int i = 0; i < lot.vertices().size(); i++) {
            sum += lot.corner(i).interiorAngle().degrees();
        }

        assertThat(lot.firstSelfCrossing()).isEmpty();
        assertThat(sum).isCloseTo((lot.vertices().size() - 2) * 180.0, within(1e-9));
    }

    @Property
    void theOtherWayRoundIsTheSameGround(@ForAll("lots") Polygon lot, @ForAll("points") Point point) {
        Polygon other = lot.reversed();

        assertThat(other.area()).isEqualTo(lot.area());
        assertThat(other.perimeter()).isEqualTo(lot.perimeter());
        assertThat(other.inside()).isEqualTo(lot.inside().opposite());
        assertThat(other.contains(point)).isEqualTo(lot.contains(point));
        assertThat(other.corner(0).interiorAngle().degrees())
                .isCloseTo(lot.corner(0).interiorAngle().degrees(), within(1e-9));
    }

    @Property
    void aPointOfTheInsideIsInside(
            @ForAll("lots") Polygon lot,
            @ForAll @IntRange(min = 0, max = 100) int any,
            @ForAll @LongRange(min = 0, max = 999) long share) {
        // The lots are seen whole from the origin, so any point between it and a vertex is inside.
        Point vertex = lot.vertices().get(any % lot.vertices().size());

        assertThat(lot.contains(Point.at(vertex.x() / 1000 * share, vertex.y() / 1000 * share)))
                .isTrue();
        assertThat(lot.contains(vertex)).isTrue();
        assertThat(lot.contains(Point.at(vertex.x() * 2, vertex.y() * 2))).isFalse();
    }

    @Property
    void insetsFollowTheClosedForm(
            @ForAll("lots") Polygon lot,
            @ForAll @LongRange(min = -3_000_000_000L, max = 6_000_000_000L) long distance) {
        double d = distance * 1e-9;
        Optional<Polygon> inset = lot.inset(Length.ofNanometres(distance));
        Assume.that(inset.isPresent());
        double s = 0;
        for (int i = 0; i < lot.vertices().size(); i++) {
            s += Math.tan(Math.toRadians((180 - lot.corner(i).interiorAngle().degrees()) / 2));
        }
        double area = lot.area().squareMetres();
        double perimeter = lot.perimeter().metres();

        // Each vertex is rounded by up to 0.7 nm; S is known to about 1e-16 of its largest tangent squared.
        assertThat(inset.get().area().squareMetres()).isCloseTo(area - perimeter * d + s * d * d, within(1e-6));
        assertThat(inset.get().perimeter().metres()).isCloseTo(perimeter - 2 * s * d, within(1e-6));
        for (int i = 0; i < lot.vertices().size(); i++) {
            assertThat(lot.side(i).offsetOf(inset.get().side(i).start()).nanometres())
                    .isCloseTo(lot.inside() == Side.RIGHT ? distance : -distance, within(2L));
        }
    }

    @Property
    void anInsetLotLiesInsideTheLot(
            @ForAll("lots") Polygon lot, @ForAll @LongRange(min = 1_000, max = 6_000_000_000L) long distance) {
        Optional<Polygon> inset = lot.inset(Length.ofNanometres(distance));
        Assume.that(inset.isPresent());

        for (Point vertex : inset.get().vertices()) {
            assertThat(lot.contains(vertex)).isTrue();
            for (Segment side : lot.sides()) {
                assertThat(side.distanceTo(vertex).nanometres()).isGreaterThanOrEqualTo(distance - 2);
            }
        }
    }

    /** Lots that are seen whole from the origin: 3 to 9 corners at growing azimuths and any distance. */
    /** The lowest pair of sides of a small boundary that meet, compared with a look at every pair. */
    @Property
    void theFirstSelfCrossingIsTheLowestPair(@ForAll("coarse") List<Point> vertices) {
        int n = vertices.size();
        for (int i = 0; i < n; i++) {
            Assume.that(!vertices.get(i).equals(vertices.get((i + 1) % n)));
        }
        Polygon boundary = Polygon.of(vertices);
        assertThat(boundary.firstSelfCrossing().map(found -> List.of(found.side(), found.otherSide())))
                .isEqualTo(lowestMeeting(boundary));
    }

    private static Optional<List<Integer>> lowestMeeting(Polygon boundary) {
        int n = boundary.vertices().size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                Segment a = boundary.side(i);
                Segment b = boundary.side(j);
                boolean follows = j == i + 1;
                boolean precedes = i == 0 && j == n - 1;
                // Neighbours have a point in common; if they have no single one, they lie on each other.
                if ((follows || precedes) ? a.intersection(b).isEmpty() : a.touches(b)) {
                    return Optional.of(List.of(i, j));
                }
            }
        }
        return Optional.empty();
    }

    @Provide
    static Arbitrary<List<Point>> coarse() {
        Arbitrary<Long> coordinate = Arbitraries.longs().between(0, 8);
        return Combinators.combine(coordinate, coordinate)
                .as((x, y) -> Point.at(x * 1_000_000_000L, y * 1_000_000_000L))
                .list()
                .ofMinSize(3)
                .ofMaxSize(7);
    }

    @Provide
    static Arbitrary<Polygon> lots() {
        Arbitrary<List<Double>> reaches =
                Arbitraries.doubles().between(5, 60).list().ofMinSize(3).ofMaxSize(9);
        return Combinators.combine(reaches, Arbitraries.doubles().between(0, 360), Arbitraries.of(true, false))
                .as(GeometryProperties::lot);
    }

    private static Polygon lot(List<Double> reaches, double first, boolean clockwise) {
        List<Point> vertices = new ArrayList<>();
        for (int i = 0; i < reaches.size(); i++) {
            Angle azimuth = Angle.ofDegrees(first + 360.0 * i / reaches.size());
            vertices.add(Point.ORIGIN.plus(Bearing.ofAzimuth(azimuth), Length.ofMetres(reaches.get(i))));
        }
        Polygon lot = Polygon.of(vertices);
        return clockwise ? lot : lot.reversed();
    }

    @Provide
    static Arbitrary<Point> points() {
        Arbitrary<Long> coordinate = Arbitraries.longs().between(-100_000_000_000L, 100_000_000_000L);
        return Combinators.combine(coordinate, coordinate).as(Point::at);
    }

    /** Lines on a coarse grid, so that touching and parallel ones come up, and on a fine one. */
    @Provide
    static Arbitrary<Segment> segments() {
        Arbitrary<Point> coarse = Combinators.combine(
                        Arbitraries.longs().between(-3, 3), Arbitraries.longs().between(-3, 3))
                .as((x, y) -> Point.at(x * 1_000_000_000L, y * 1_000_000_000L));
        Arbitrary<Point> point = Arbitraries.oneOf(coarse, points());
        return Combinators.combine(point, point).filter((a, b) -> !a.equals(b)).as(Segment::of);
    }
}
