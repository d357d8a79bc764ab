package org.fencecore.obstacles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;

class ObstacleProperties {

    private static final int SAMPLES = 60;
    private static final Length SLACK = Obstacles.ROUNDING;

    @Property
    void postsOutsideTheIntervalsAreClearAndPostsInsideAreNot(
            @ForAll("segments") Segment line,
            @ForAll("jobs") Obstacles obstacles,
            @ForAll @DoubleRange(min = 1, max = 24) double radius) {
        Length hole = Length.ofInches(radius);
        List<Interval> forbidden = obstacles.forbidden(line, hole);

        for (int i = 0; i <= SAMPLES; i++) {
            Length station = line.length().portion(i, SAMPLES);
            boolean blocked = !obstacles.blocking(line.pointAt(station), hole).isEmpty();
            assertThat(blocked)
                    .as("at %s of %s with %s", station, line, forbidden)
                    .isEqualTo(forbidden.stream().anyMatch(interval -> deepIn(interval, station, line)));
        }
        for (Interval interval : forbidden) {
            assertThat(obstacles.blocking(line.pointAt(interval.start()), hole).isEmpty()
                            || interval.start().isZero())
                    .isTrue();
            assertThat(obstacles.blocking(line.pointAt(interval.end()), hole).isEmpty()
                            || interval.end().equals(line.length()))
                    .isTrue();
        }
    }

    /** The samples almost never come within rounding of an end; the ends themselves are asked about one by one. */
    private static boolean deepIn(Interval interval, Length station, Segment line) {
        boolean fromTheVeryStart = interval.start().isZero();
        boolean toTheVeryEnd = interval.end().equals(line.length());
        return interval.contains(station)
                && (fromTheVeryStart || station.minus(interval.start()).compareTo(SLACK) > 0)
                && (toTheVeryEnd || interval.end().minus(station).compareTo(SLACK) > 0);
    }

    @Property
    void aWiderHoleIsBarredFromMore(
            @ForAll("segments") Segment line,
            @ForAll("jobs") Obstacles obstacles,
            @ForAll @DoubleRange(min = 0, max = 24) double radius,
            @ForAll @DoubleRange(min = 0, max = 24) double more) {
        List<Interval> narrow = obstacles.forbidden(line, Length.ofInches(radius));
        List<Interval> wide = obstacles.forbidden(line, Length.ofInches(radius + more));

        assertThat(narrow).allMatch(interval -> wide.stream().anyMatch(whole -> whole.contains(interval)));
    }

    @Property
    void aLineFromItsOtherEndMirrorsTheIntervals(
            @ForAll("segments") Segment line,
            @ForAll("jobs") Obstacles obstacles,
            @ForAll @DoubleRange(min = 0, max = 24) double radius) {
        List<Interval> there = obstacles.forbidden(line, Length.ofInches(radius));
        List<Interval> back = obstacles.forbidden(line.reversed(), Length.ofInches(radius));

        assertThat(back).hasSameSizeAs(there);
        for (int i = 0; i < there.size(); i++) {
            Interval mirror = back.get(back.size() - 1 - i);
            assertThat(line.length()
                            .minus(mirror.end())
                            .minus(there.get(i).start())
                            .abs())
                    .isLessThanOrEqualTo(Length.ofNanometres(2));
            assertThat(line.length()
                            .minus(mirror.start())
                            .minus(there.get(i).end())
                            .abs())
                    .isLessThanOrEqualTo(Length.ofNanometres(2));
        }
    }

    @Provide
    Arbitrary<Segment> segments() {
        return Combinators.combine(points(), points())
                .as((a, b) -> Segment.of(a, a.distanceTo(b).compareTo(Length.ofFeet(1)) < 0 ? northOf(a) : b));
    }

    private static Point northOf(Point a) {
        return Point.of(a.east(), a.north().plus(Length.ofFeet(30)));
    }

    private static Arbitrary<Point> points() {
        Arbitrary<Length> coordinate =
                Arbitraries.longs().between(-20_000_000_000L, 20_000_000_000L).map(Length::ofNanometres);
        return Combinators.combine(coordinate, coordinate).as(Point::of);
    }

    @Provide
    Arbitrary<Obstacles> jobs() {
        Arbitrary<Length> sizes = Arbitraries.doubles().between(0, 8).map(Length::ofFeet);
        Arbitrary<List<Point>> outlines =
                points().list().ofMinSize(3).ofMaxSize(6).uniqueElements();
        Arbitrary<Obstacle> lines = Combinators.combine(outlines, sizes)
                .as((points, width) -> Obstacle.utility(UtilityKind.OTHER, Polyline.of(points), width)
                        .withClear(width, Citation.COMMON_PRACTICE));
        Arbitrary<Obstacle> trees = Combinators.combine(points(), sizes, sizes)
                .as((centre, trunk, roots) -> Obstacle.tree(centre, trunk, trunk.plus(roots)));
        Arbitrary<Obstacle> areas = outlines.map(points -> Obstacle.area(Polygon.of(points)));
        return Arbitraries.oneOf(lines, trees, areas).list().ofMaxSize(4).map(Obstacles::of);
    }
}
