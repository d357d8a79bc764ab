package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.fencecore.units.Length;

/** What is said of stretches is compared with the distance measured at many stations of the line. */
class NearnessProperties {

    private static final int SAMPLES = 97;

    /** A point of the line is rounded to a nanometre each way, and so are stations and distances. */
    private static final long SLACK = 4;

    @Property
    void nearALineIsWhereTheDistanceIsLess(
            @ForAll("segments") Segment line,
            @ForAll("segments") Segment other,
            @ForAll @LongRange(min = 0, max = 40_000_000_000L) long d) {
        List<Interval> near =
                new Nearness(line).near(other, Length.ofNanometres(d)).stream().toList();

        for (int i = 0; i <= SAMPLES; i++) {
            Length station = line.length().portion(i, SAMPLES);
            agree(near, station, other.distanceTo(line.pointAt(station)).nanometres(), d);
        }
    }

    @Property
    void nearAnAreaIsWhereTheDistanceIsLess(
            @ForAll("segments") Segment line,
            @ForAll("polygons") Polygon area,
            @ForAll @LongRange(min = 1_000, max = 40_000_000_000L) long d) {
        List<Interval> near = new Nearness(line).near(area, Length.ofNanometres(d));

        for (int i = 0; i <= SAMPLES; i++) {
            Length station = line.length().portion(i, SAMPLES);
            agree(near, station, area.distanceTo(line.pointAt(station)).nanometres(), d);
        }
    }

    @Property
    void insideAnAreaIsWhereItHoldsThePoint(@ForAll("segments") Segment line, @ForAll("polygons") Polygon area) {
        List<Interval> inside = new Nearness(line).in(area);

        for (int i = 0; i <= SAMPLES; i++) {
            Length station = line.length().portion(i, SAMPLES);
            Point point = line.pointAt(station);
            if (Polyline.nearest(area.sides(), point).nanometres() > SLACK) {
                assertThat(inside.stream().anyMatch(stretch -> stretch.contains(station)))
                        .isEqualTo(area.contains(point));
            }
        }
    }

    @Property
    void aLineFromItsOtherEndMirrorsTheStretches(
            @ForAll("segments") Segment line,
            @ForAll("polygons") Polygon area,
            @ForAll @LongRange(min = 0, max = 40_000_000_000L) long d) {
        List<Interval> there = new Nearness(line).near(area, Length.ofNanometres(d));
        List<Interval> back = new Nearness(line.reversed()).near(area, Length.ofNanometres(d));

        long length = line.length().nanometres();
        assertThat(back).hasSameSizeAs(there);
        for (int i = 0; i < there.size(); i++) {
            Interval mirror = back.get(back.size() - 1 - i);
            assertThat(length - mirror.end().nanometres())
                    .isBetween(
                            there.get(i).start().nanometres() - 2,
                            there.get(i).start().nanometres() + 2);
            assertThat(length - mirror.start().nanometres())
                    .isBetween(
                            there.get(i).end().nanometres() - 2,
                            there.get(i).end().nanometres() + 2);
        }
    }

    private static void agree(List<Interval> near, Length station, long distance, long d) {
        boolean within = near.stream().anyMatch(stretch -> stretch.contains(station));
        if (distance < d - SLACK) {
            assertThat(within).as("%s nm at %s", distance, station).isTrue();
        } else if (distance > d + SLACK) {
            assertThat(within).as("%s nm at %s", distance, station).isFalse();
        }
    }

    @Provide
    Arbitrary<Point> points() {
        Arbitrary<Length> coordinates =
                Arbitraries.longs().between(-60_000_000_000L, 60_000_000_000L).map(Length::ofNanometres);
        return Combinators.combine(coordinates, coordinates).as(Point::of);
    }

    @Provide
    Arbitrary<Segment> segments() {
        return Combinators.combine(points(), points())
                .as((a, b) -> a.distanceTo(b).compareTo(Length.ofMillimetres(1)) < 0
                        ? Segment.of(a, a.plus(Bearing.parse("N 30° E"), Length.ofFeet(10)))
                        : Segment.of(a, b));
    }

    /** Any closed line, also such as cross themselves: inside is then told by the odd number of sides passed. */
    @Provide
    Arbitrary<Polygon> polygons() {
        return points().list().ofMinSize(3).ofMaxSize(8).uniqueElements().map(Polygon::of);
    }
}
