package org.fencecore.geometry.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.junit.jupiter.api.Test;

class PlaneTest {

    private final Plane yard = Plane.of(Point.ORIGIN, Length.ofFeet(100), Slope.ofPercent(-2), Slope.ofPercent(5));

    @Test
    void fallsAndRisesWithItsGrades() {
        assertThat(yard.elevationAt(Point.of(Length.ofFeet(40), Length.ofFeet(10))))
                .contains(Length.parse("99.7 ft"));
        assertThat(Plane.level(Length.ofFeet(7)).elevationAt(Point.of(Length.ofFeet(-3), Length.ofFeet(9))))
                .contains(Length.ofFeet(7));
    }

    @Test
    void keepsEveryPointOfTheLineAboveIt() {
        Polyline line = Polyline.of(List.of(
                Point.ORIGIN,
                Point.of(Length.ofFeet(50), Length.ZERO),
                Point.of(Length.ofFeet(50), Length.ofFeet(20))));
        assertThat(yard.under(line).orElseThrow())
                .isEqualTo(Profile.builder()
                        .point(Length.ZERO, Length.ofFeet(100))
                        .point(Length.ofFeet(50), Length.ofFeet(99))
                        .point(Length.ofFeet(70), Length.ofFeet(100))
                        .build());
        assertThat(yard.uncovered(line)).isEmpty();
    }

    @Test
    void saysWhatItIs() {
        assertThat(yard).hasToString("100 ft at (E 0 in, N 0 in), -2 % east, 5 % north");
        assertThat(yard.place()).isEqualTo(Point.ORIGIN);
    }

    @Test
    void planesAreEqualWhenTheirPartsAre() {
        Length high = Length.ofFeet(100);
        Slope east = Slope.ofPercent(-2);
        Slope north = Slope.ofPercent(5);

        assertThat(Plane.of(Point.ORIGIN, high, east, north)).isEqualTo(yard).hasSameHashCodeAs(yard);
        for (Plane other : List.of(
                Plane.of(Point.of(high, high), high, east, north),
                Plane.of(Point.ORIGIN, Length.ofFeet(99), east, north),
                Plane.of(Point.ORIGIN, high, north, north),
                Plane.of(Point.ORIGIN, high, east, east))) {
            assertThat(other).isNotEqualTo(yard).doesNotHaveSameHashCodeAs(yard);
        }
    }
}
