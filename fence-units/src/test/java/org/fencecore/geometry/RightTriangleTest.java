package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.geometry.Geo.ft;

import org.fencecore.units.Angle;
import org.junit.jupiter.api.Test;

class RightTriangleTest {

    @Test
    void squaresACorner() {
        RightTriangle corner = RightTriangle.ofLegs(ft(35), ft(40));

        assertThat(corner.hypotenuse().feet()).isCloseTo(53.1507, within(5e-5));
        assertThat(corner.outOfSquare(ft(53.1)).degrees()).isCloseTo(-0.11, within(0.005));
        assertThat(RightTriangle.ofLegs(ft(3), ft(4)).outOfSquare(ft(5)).degrees())
                .isCloseTo(0, within(1e-12));
    }

    @Test
    void anyTwoPartsGiveTheSameTriangle() {
        RightTriangle triangle = RightTriangle.ofLegs(ft(4), ft(3));

        assertThat(RightTriangle.ofLegAndHypotenuse(ft(4), ft(5))).isEqualTo(triangle);
        assertThat(RightTriangle.ofLegAndAngle(ft(4), triangle.angleB())).isEqualTo(triangle);
        assertThat(RightTriangle.ofHypotenuseAndAngle(ft(5), triangle.angleB())).isEqualTo(triangle);
        assertThat(triangle.angleA().plus(triangle.angleB()).degrees()).isCloseTo(90, within(1e-12));
        assertThat(triangle.angleB().degrees()).isCloseTo(36.8699, within(5e-5));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> RightTriangle.ofLegs(ft(0), ft(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("leg a was 0");
        assertThatThrownBy(() -> RightTriangle.ofLegs(ft(1), ft(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("leg b was -1 ft; it must be over 0");
        assertThatThrownBy(() -> RightTriangle.ofLegAndHypotenuse(ft(-3), ft(5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("leg a was -3 ft; it must be over 0");
        assertThatThrownBy(() -> RightTriangle.ofLegAndHypotenuse(ft(3), ft(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("hypotenuse was 0 in; it must be over 0");
        assertThatThrownBy(() -> RightTriangle.ofLegAndAngle(ft(0), Angle.ofDegrees(30)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("leg a was 0 in; it must be over 0");
        assertThatThrownBy(() -> RightTriangle.ofHypotenuseAndAngle(ft(-5), Angle.ofDegrees(30)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("hypotenuse was -5 ft; it must be over 0");
        assertThatThrownBy(() -> RightTriangle.ofHypotenuseAndAngle(ft(5), Angle.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("angle B was 0°; it must be over 0 and under 90 degrees");
        assertThatThrownBy(() -> RightTriangle.ofLegAndHypotenuse(ft(5), ft(5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("longer than the leg");
        assertThatThrownBy(() -> RightTriangle.ofLegAndAngle(ft(5), Angle.RIGHT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("angle B was 90°");
        assertThatThrownBy(() -> RightTriangle.ofLegs(ft(3), ft(4)).outOfSquare(ft(7)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("measure again");
    }

    @Test
    void theLargestThreeFourFiveFitsBothLines() {
        // 30 ft hold ten times 3 ft, but 34 ft only eight times 4 ft: 24, 32 and 40 ft.
        assertThat(RightTriangle.largest345(ft(30), ft(34), ft(1))).contains(RightTriangle.ofLegs(ft(24), ft(32)));
        assertThat(RightTriangle.largest345(ft(34), ft(30), ft(1))).contains(RightTriangle.ofLegs(ft(32), ft(24)));
        assertThatThrownBy(() -> RightTriangle.largest345(ft(0), ft(30), ft(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("along a was 0 in; it must be over 0");
        assertThatThrownBy(() -> RightTriangle.largest345(ft(30), ft(-1), ft(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("along b was -1 ft; it must be over 0");
    }

    @Test
    void saysItsSides() {
        assertThat(RightTriangle.ofLegs(ft(3), ft(4)))
                .hasToString("RightTriangle of legs 3 ft and 4 ft, hypotenuse 5 ft");
    }
}
