package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fencecore.geometry.Geo.ft;

import java.util.Collections;
import java.util.List;
import org.fencecore.units.Angle;
import org.junit.jupiter.api.Test;

class PolylineTest {

    private static final Polyline LINE = Polyline.of(List.of(Point.ORIGIN, ft(30, 0), ft(30, 40)));

    @Test
    void countsStationsAroundTheCorner() {
        assertThat(LINE.length()).isEqualTo(ft(70));
        assertThat(LINE.stationOfPoint(1)).isEqualTo(ft(30));
        assertThat(LINE.pointAt(ft(36))).isEqualTo(ft(30, 6));
        assertThat(LINE.pointAt(ft(0))).isEqualTo(Point.ORIGIN);
        assertThat(LINE.pointAt(ft(70))).isEqualTo(ft(30, 40));
        assertThat(LINE.bearingAt(ft(36))).isEqualTo(Bearing.NORTH);
        assertThat(LINE.bearingAt(ft(30))).isEqualTo(Bearing.NORTH);
        assertThat(LINE.bearingAt(ft(29))).isEqualTo(Bearing.EAST);
        assertThat(LINE.bearingAt(ft(70))).isEqualTo(Bearing.NORTH);
        assertThat(LINE.bearingAt(ft(36))).hasToString("N 0° E");
        assertThat(LINE.segments())
                .containsExactly(Segment.of(Point.ORIGIN, ft(30, 0)), Segment.of(ft(30, 0), ft(30, 40)));
    }

    @Test
    void cornersTurn() {
        assertThat(LINE.corner(1, Side.LEFT).turn()).isEqualTo(Angle.RIGHT.negated());
        assertThat(LINE.corner(1, Side.LEFT).isReflex()).isFalse();
        assertThat(LINE.corner(1, Side.RIGHT).isReflex()).isTrue();
    }

    @Test
    void findsTheNearestStation() {
        assertThat(LINE.stationNearest(ft(12, -3))).isEqualTo(ft(12));
        assertThat(LINE.stationNearest(ft(28, 20))).isEqualTo(ft(50));
        assertThat(LINE.stationNearest(ft(40, 60))).isEqualTo(ft(70));
        assertThat(LINE.stationNearest(ft(-4, 1))).isEqualTo(ft(0));
    }

    @Test
    void ofSeveralPlacesAsNearItTakesTheFirst() {
        // Round three sides of a yard 20 ft wide; 10 ft from the left leg and from the right one.
        Polyline yard = Polyline.of(List.of(ft(0, 40), ft(0, 0), ft(20, 0), ft(20, 40)));

        assertThat(yard.stationNearest(ft(10, 30))).isEqualTo(ft(10));
        assertThat(yard.reversed().stationNearest(ft(10, 30))).isEqualTo(ft(10));
        assertThat(yard.distanceTo(ft(10, 30))).isEqualTo(ft(10));
    }

    @Test
    void saysWhichPointsItHas() {
        assertThat(LINE).hasToString("Polyline[" + Point.ORIGIN + ", " + ft(30, 0) + ", " + ft(30, 40) + "]");
    }

    @Test
    void readsTheSameFromItsOtherEnd() {
        assertThat(LINE.reversed().pointAt(ft(34))).isEqualTo(ft(30, 6));
        assertThat(LINE.reversed().reversed()).isEqualTo(LINE);
    }

    @Test
    void refusesWhatIsNoLine() {
        assertThatThrownBy(() -> Polyline.of(List.of(Point.ORIGIN)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("number of points was 1; give from 2 to 10,000");
        assertThatThrownBy(() -> Polyline.of(Collections.nCopies(10_001, Point.ORIGIN)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("number of points was 10001");
        assertThatThrownBy(() -> Polyline.of(List.of(Point.ORIGIN, ft(1, 0), ft(1, 0))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("points 1 and 2");
        assertThatThrownBy(() -> LINE.pointAt(ft(71)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the line runs from 0 to " + ft(70));
        assertThatThrownBy(() -> LINE.corner(0, Side.LEFT)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
