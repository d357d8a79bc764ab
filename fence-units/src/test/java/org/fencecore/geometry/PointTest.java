package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class PointTest {

    @Test
    void walksACourseOfAPlat() {
        Point end = Point.ORIGIN.plus(Bearing.parse("S61°25'E"), Length.ofFeet(520.16));

        assertThat(end.north().feet()).isCloseTo(-248.86, within(0.005));
        assertThat(end.east().feet()).isCloseTo(456.76, within(0.005));
        assertThat(Point.ORIGIN.bearingTo(end)).hasToString("S 61°25' E");
    }

    @Test
    void measuresExactlyWhereTheAnswerIsWhole() {
        Point a = Geo.ft(1000, 2000);
        Point b = Geo.ft(1003, 2004);

        assertThat(a.distanceTo(b)).isEqualTo(Length.ofFeet(5));
        assertThat(a.midpoint(b)).isEqualTo(Geo.ft(1001.5, 2002));
        assertThat(a.plus(Bearing.EAST, Length.ofFeet(3)).plus(Bearing.NORTH, Length.ofFeet(4)))
                .isEqualTo(b);
        assertThat(a.plus(Bearing.WEST, Length.ofFeet(-3))).isEqualTo(Geo.ft(1003, 2000));
    }

    @Test
    void noDirectionToItself() {
        assertThatThrownBy(() -> Point.ORIGIN.bearingTo(Point.ORIGIN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two different points");
    }

    @Test
    void refusesPlacesBeyondTheEarth() {
        assertThatThrownBy(() -> Point.of(Length.ofMetres(1.1e9), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("east was " + Length.ofMetres(1.1e9));
        assertThatThrownBy(() -> Point.of(Length.ZERO, Length.ofMetres(-1.1e9)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("north was " + Length.ofMetres(-1.1e9));
        // The point would be within reach, but the course is not.
        assertThatThrownBy(
                        () -> Point.of(Length.ofMetres(-9e8), Length.ZERO).plus(Bearing.EAST, Length.ofMetres(1.1e9)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("distance was " + Length.ofMetres(1.1e9));
    }

    @Test
    void saysWhatItIs() {
        assertThat(Geo.ft(3, -4.5)).hasToString("(E 3 ft, N -4 ft 6 in)");
    }
}
