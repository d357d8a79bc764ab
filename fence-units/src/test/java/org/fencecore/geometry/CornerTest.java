package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.geometry.Geo.ft;

import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class CornerTest {

    private static final Corner SQUARE = Corner.of(Point.ORIGIN, ft(0, 50), ft(30, 50), Side.RIGHT);

    @Test
    void squareCornerOfAYardOnTheRight() {
        assertThat(SQUARE.interiorAngle()).isEqualTo(Angle.RIGHT);
        assertThat(SQUARE.turn()).isEqualTo(Angle.RIGHT);
        assertThat(SQUARE.isReflex()).isFalse();
        assertThat(SQUARE.mitrePoint(ft(2))).isEqualTo(ft(2, 48));
        assertThat(SQUARE.mitreRun(ft(2))).isEqualTo(ft(2));
        assertThat(SQUARE.mitreLength(ft(2)).feet()).isCloseTo(2 * Math.sqrt(2), within(1e-8));
        assertThat(SQUARE.diagonal(ft(6), ft(8))).isEqualTo(ft(10));
        assertThat(SQUARE.mitrePoint(ft(-2))).isEqualTo(ft(-2, 52));
    }

    @Test
    void theSameCornerSeenFromOutsideIsReflex() {
        Corner outside = Corner.of(SQUARE.vertex(), SQUARE.arriving(), SQUARE.leaving(), Side.LEFT);

        assertThat(outside.interiorAngle().degrees()).isCloseTo(270, within(1e-12));
        assertThat(outside.isReflex()).isTrue();
        assertThat(outside.mitrePoint(ft(2))).isEqualTo(ft(-2, 52));
        assertThat(outside.mitreRun(ft(2))).isEqualTo(ft(-2));
        assertThat(outside.diagonal(ft(6), ft(8))).isEqualTo(ft(10));
    }

    @Test
    void aSixtyDegreeCorner() {
        // An equilateral triangle, clockwise: half the interior angle is 30 degrees, whose sine is 1/2.
        Corner sharp = Corner.of(ft(0, 0), Bearing.NORTH, Bearing.ofAzimuth(Angle.ofDegrees(120)), Side.RIGHT);

        assertThat(sharp.interiorAngle().degrees()).isCloseTo(60, within(1e-12));
        assertThat(sharp.mitreLength(ft(1)).feet()).isCloseTo(2, within(1e-8));
        assertThat(sharp.mitreRun(ft(1)).feet()).isCloseTo(Math.sqrt(3), within(1e-8));
        assertThat(sharp.diagonal(ft(10), ft(10)).feet()).isCloseTo(10, within(1e-8));
    }

    @Test
    void aStraightLineHasACornerToo() {
        Corner straight = Corner.of(ft(0, 0), ft(0, 50), ft(0, 70), Side.RIGHT);

        assertThat(straight.interiorAngle()).isEqualTo(Angle.STRAIGHT);
        assertThat(straight.isReflex()).isFalse();
        assertThat(straight.mitrePoint(ft(3))).isEqualTo(ft(3, 50));
        assertThat(straight.diagonal(ft(6), ft(8))).isEqualTo(ft(14));
    }

    @Test
    void aLineThatDoublesBackHasNoMitre() {
        Corner back = Corner.of(ft(0, 0), ft(0, 50), ft(0, 20), Side.RIGHT);

        assertThat(back.interiorAngle()).isEqualTo(Angle.ZERO);
        assertThatThrownBy(() -> back.mitrePoint(ft(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("doubles back on itself");
        assertThatThrownBy(() -> SQUARE.diagonal(ft(0), ft(8)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("onArriving was 0");
        assertThatThrownBy(() -> SQUARE.diagonal(ft(6), ft(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("onLeaving was 0");
    }

    @Test
    void refusesToMoveLegsBeyondTheEarth() {
        Corner straight = Corner.of(ft(0, 0), ft(0, 50), ft(0, 70), Side.RIGHT);
        Length far = Length.ofMetres(1.1e9);

        assertThatThrownBy(() -> straight.mitreRun(far))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("offset was " + far + "; it must be within 1,000,000 km");
    }

    @Test
    void saysWhereItIsAndHowItTurns() {
        assertThat(SQUARE).hasToString("corner at " + ft(0, 50) + ", N 0° E to N 90° E, interior angle 90°");
    }
}
