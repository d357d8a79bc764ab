package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fencecore.geometry.Geo.ft;

import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class SegmentTest {

    private static final Segment STRING = Segment.of(Point.ORIGIN, ft(40, 0));

    private static Segment line(double east, double north, double toEast, double toNorth) {
        return Segment.of(ft(east, north), ft(toEast, toNorth));
    }

    @Test
    void placesByStationAndOffset() {
        Point stake = STRING.pointAt(ft(44), ft(2));

        assertThat(stake).isEqualTo(ft(44, -2));
        assertThat(STRING.stationOf(stake)).isEqualTo(ft(44));
        assertThat(STRING.offsetOf(stake)).isEqualTo(ft(2));
        assertThat(STRING.sideOf(stake)).contains(Side.RIGHT);
        assertThat(STRING.sideOf(ft(10, 1))).contains(Side.LEFT);
        assertThat(STRING.sideOf(ft(99, 0))).isEmpty();
        assertThat(STRING.bearing()).isEqualTo(Bearing.EAST);
        assertThat(STRING.reversed().bearing()).isEqualTo(Bearing.WEST);
    }

    @Test
    void measuresAlongASlantingLine() {
        Segment slant = line(0, 0, 30, 40);

        assertThat(slant.length()).isEqualTo(ft(50));
        assertThat(slant.pointAt(ft(5))).isEqualTo(ft(3, 4));
        assertThat(slant.pointAt(ft(-5))).isEqualTo(ft(-3, -4));
        assertThat(slant.pointAt(ft(5), ft(10))).isEqualTo(ft(11, -2));
        assertThat(slant.offset(ft(5))).isEqualTo(line(4, -3, 34, 37));
        assertThat(slant.offset(ft(-5))).isEqualTo(line(-4, 3, 26, 43));
    }

    @Test
    void findsTheNearestPlace() {
        assertThat(STRING.nearestTo(ft(10, 7))).isEqualTo(ft(10, 0));
        assertThat(STRING.distanceTo(ft(10, 7))).isEqualTo(ft(7));
        assertThat(STRING.nearestTo(ft(43, 4))).isEqualTo(ft(40, 0));
        assertThat(STRING.distanceTo(ft(43, 4))).isEqualTo(ft(5));
        assertThat(STRING.distanceTo(ft(-3, -4))).isEqualTo(ft(5));
    }

    @Test
    void linesThatCross() {
        Segment other = line(10, -5, 20, 5);

        assertThat(STRING.crosses(other)).isTrue();
        assertThat(STRING.touches(other)).isTrue();
        assertThat(STRING.intersection(other)).contains(ft(15, 0));
    }

    @Test
    void linesThatTouchDoNotCross() {
        Segment other = line(10, 0, 10, 5);

        assertThat(STRING.crosses(other)).isFalse();
        assertThat(STRING.touches(other)).isTrue();
        assertThat(STRING.intersection(other)).contains(ft(10, 0));
        assertThat(other.crosses(STRING)).isFalse();
        assertThat(other.touches(STRING)).isTrue();
    }

    @Test
    void linesThatAreApartMeetWhenExtended() {
        Segment other = line(50, 5, 50, 10);

        assertThat(STRING.touches(other)).isFalse();
        assertThat(STRING.intersection(other)).isEmpty();
        assertThat(STRING.intersectionOfLines(other)).contains(ft(50, 0));
        assertThat(STRING.intersectionOfLines(line(0, 1, 40, 1))).isEmpty();
    }

    @Test
    void linesThatLieOnEachOther() {
        assertThat(STRING.intersection(line(30, 0, 60, 0))).isEmpty();
        assertThat(STRING.touches(line(30, 0, 60, 0))).isTrue();
        assertThat(STRING.crosses(line(30, 0, 60, 0))).isFalse();
        assertThat(STRING.intersection(line(10, 0, 40, 0))).isEmpty();
        assertThat(STRING.intersection(line(10, 0, 20, 0))).isEmpty();
        assertThat(STRING.intersection(STRING.reversed())).isEmpty();
        assertThat(STRING.intersection(line(40, 0, 60, 0))).contains(ft(40, 0));
        assertThat(STRING.intersection(line(-5, 0, 0, 0))).contains(ft(0, 0));
        assertThat(STRING.intersection(line(41, 0, 60, 0))).isEmpty();
    }

    @Test
    void decidesToTheNanometre() {
        // Three neighbouring Fibonacci numbers: twice the triangle is 1 square nanometre, of products near 7e21.
        Segment line = Segment.of(Point.ORIGIN, Point.at(139_583_862_445L, 86_267_571_272L));

        assertThat(line.sideOf(Point.at(86_267_571_272L, 53_316_291_173L))).contains(Side.LEFT);
        assertThat(line.sideOf(Point.at(2 * 139_583_862_445L, 2 * 86_267_571_272L)))
                .isEmpty();
    }

    @Test
    void nearlyParallelLinesMeetTooFarAway() {
        Segment other = Segment.of(Point.at(0, 1_000_000_000), Point.at(10_000_000_000L, 999_999_999));

        assertThat(STRING.intersectionOfLines(other)).isEmpty();
        // At 1,000,000 km they still meet, a nanometre further they do not.
        assertThat(STRING.intersectionOfLines(Segment.of(Point.at(Exact.LIMIT - 1, 1), Point.at(Exact.LIMIT - 2, 2))))
                .contains(Point.at(Exact.LIMIT, 0));
        assertThat(STRING.intersectionOfLines(Segment.of(Point.at(Exact.LIMIT, 1), Point.at(Exact.LIMIT - 1, 2))))
                .isEmpty();
    }

    @Test
    void refusesStationsAndOffsetsBeyondTheEarth() {
        // The places would be within reach, for the line starts far to the north-west.
        Segment line = Segment.of(Point.of(Length.ofMetres(-9e8), Length.ofMetres(9e8)), Point.ORIGIN);
        Length far = Length.ofMetres(1.1e9);

        assertThatThrownBy(() -> line.pointAt(far))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("station was " + far);
        assertThatThrownBy(() -> line.pointAt(Length.ofMetres(9e8), far.negated()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("right was " + far.negated());
    }

    @Test
    void needsTwoPoints() {
        assertThatThrownBy(() -> Segment.of(Point.ORIGIN, Point.of(Length.ZERO, Length.ZERO)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two different points");
    }
}
