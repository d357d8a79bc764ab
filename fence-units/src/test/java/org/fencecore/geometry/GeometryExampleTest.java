package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** The example of the package's description. */
class GeometryExampleTest {

    @Test
    void aFenceInsideALot() {
        Point a = Point.ORIGIN;
        Point b = a.plus(Bearing.parse("N 0°40' W"), Length.ofFeet(100));
        Point c = b.plus(Bearing.parse("N 89°18' E"), Length.ofFeet(60));
        Point d = c.plus(Bearing.parse("S 0°40' E"), Length.ofFeet(100));
        Polygon lot = Polygon.of(List.of(a, b, c, d));

        Polygon fence = lot.inset(Length.ofFeet(2)).orElseThrow();

        assertThat(fence.perimeter().feet()).isCloseTo(304, within(1e-5));
        assertThat(fence.corner(1).interiorAngle().degrees()).isCloseTo(90 + 2 / 60.0, within(1e-7));
        assertThat(fence.corner(1).diagonal(Length.ofFeet(6), Length.ofFeet(8)).feet())
                .isCloseTo(10.003, within(5e-4));
    }
}
