package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.geometry.Geo.ft;

import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class TriangleTest {

    @Test
    void solvesTheExampleOfItsDescription() {
        assertThat(Triangle.ofTwoSides(ft(10), ft(10), Angle.ofDegrees(105)).c().feet())
                .isCloseTo(15.8671, within(5e-5));
        assertThat(Triangle.ofSides(ft(35), ft(40), ft(53.1)).angleC().degrees())
                .isCloseTo(89.89, within(0.005));
    }

    @Test
    void threeFourFiveIsSquare() {
        Triangle triangle = Triangle.ofSides(ft(3), ft(4), ft(5));

        assertThat(triangle.angleC().degrees()).isCloseTo(90, within(1e-12));
        assertThat(triangle.angleA().degrees()).isCloseTo(Math.toDegrees(Math.asin(0.6)), within(1e-12));
        assertThat(triangle.angleB().degrees()).isCloseTo(Math.toDegrees(Math.asin(0.8)), within(1e-12));
        assertThat(triangle.area().squareFeet()).isCloseTo(6, within(1e-12));
    }

    @Test
    void aNearlyFlatTriangleKeepsItsDigits() {
        // 100 m and 100 m with 1 nm less than 200 m across: A = acos(1 - 1e-11/2 ...), about sqrt(1e-11) rad.
        long leg = 100_000_000_000L;
        Triangle flat =
                Triangle.ofSides(Length.ofNanometres(leg), Length.ofNanometres(leg), Length.ofNanometres(2 * leg - 1));

        assertThat(flat.angleA().radians()).isCloseTo(Math.sqrt(1e-11), within(1e-16));
    }

    @Test
    void refusesTrianglesThatDoNotClose() {
        assertThatThrownBy(() -> Triangle.ofSides(ft(3), ft(4), ft(7)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a = " + ft(3) + ", b = " + ft(4) + ", c = " + ft(7))
                .hasMessageContaining("measure again");
        assertThatThrownBy(() -> Triangle.ofSides(ft(3), ft(0), ft(3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("side b was 0");
        assertThatThrownBy(() -> Triangle.ofTwoSides(ft(3), ft(4), Angle.STRAIGHT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("angle C was 180°");
    }

    @Test
    void refusesSidesThatAreNone() {
        assertThatThrownBy(() -> Triangle.ofSides(ft(-1), ft(4), ft(4)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("side a was -1 ft; it must be over 0");
        assertThatThrownBy(() -> Triangle.ofSides(ft(4), ft(4), ft(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("side c was 0 in; it must be over 0");
        assertThatThrownBy(() -> Triangle.ofTwoSides(ft(0), ft(4), Angle.RIGHT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("side a was 0 in; it must be over 0");
        assertThatThrownBy(() -> Triangle.ofSides(Length.ofMetres(1.1e9), ft(4), ft(5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("side a was " + Length.ofMetres(1.1e9) + "; it must be within 1,000,000 km");
    }

    @Test
    void saysItsSides() {
        assertThat(Triangle.ofSides(ft(3), ft(4), ft(5))).hasToString("Triangle of a 3 ft, b 4 ft, c 5 ft");
    }
}
