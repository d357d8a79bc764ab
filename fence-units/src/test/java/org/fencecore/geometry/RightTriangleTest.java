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
}
