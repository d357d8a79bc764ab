package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** Stretches of a 100 ft line due east, worked by hand with 3-4-5 triangles. */
class NearnessTest {

    private static final Segment LINE = Segment.of(at(0, 0), at(100, 0));

    private static Point at(double east, double north) {
        return Point.of(Length.ofFeet(east), Length.ofFeet(north));
    }

    private static Interval feet(double start, double end) {
        return Interval.of(Length.ofFeet(start), Length.ofFeet(end));
    }

    @Test
    void aCircleCutsTheLineByARightTriangle() {
        assertThat(new Nearness(LINE).near(at(20, 3), Length.ofFeet(5))).contains(feet(16, 24));
        assertThat(new Nearness(LINE).near(at(-3, 0), Length.ofFeet(5))).contains(feet(0, 2));
        assertThat(new Nearness(LINE).near(at(103, 0), Length.ofFeet(5))).contains(feet(98, 100));
        assertThat(new Nearness(LINE).near(at(20, 5), Length.ofFeet(5)))
                .as("touches only")
                .isEmpty();
        assertThat(new Nearness(LINE).near(at(-5, 0), Length.ofFeet(5)))
                .as("touches the end only")
                .isEmpty();
        assertThat(new Nearness(LINE).near(at(20, 0), Length.ZERO)).isEmpty();
    }

    @Test
    void aLineThatCrossesSquareBarsTheDistanceEitherSide() {
        assertThat(new Nearness(LINE).near(Segment.of(at(30, -50), at(30, 50)), Length.ofFeet(2)))
                .contains(feet(28, 32));
    }

    @Test
    void aLineThatCrossesAtAnAngleBarsTheDistanceOverTheSine() {
        // It falls 3 in 5 along it, so the sine is 0.6, and 3 ft square to it are 5 ft along the fence.
        assertThat(new Nearness(LINE).near(Segment.of(at(10, 30), at(90, -30)), Length.ofFeet(3)))
                .contains(feet(45, 55));
    }

    @Test
    void aLineThatEndsShortHasARoundEnd() {
        assertThat(new Nearness(LINE).near(Segment.of(at(50, 3), at(50, 40)), Length.ofFeet(5)))
                .contains(feet(46, 54));
    }

    @Test
    void aLineAlongsideBarsItsLengthAndItsRoundEnds() {
        Segment beside = Segment.of(at(40, 3), at(60, 3));

        assertThat(new Nearness(LINE).near(beside, Length.ofFeet(5))).contains(feet(36, 64));
        assertThat(new Nearness(LINE).near(beside, Length.ofFeet(3))).isEmpty();
        assertThat(new Nearness(LINE).near(Segment.of(at(40, -3), at(60, -3)), Length.ofFeet(3)))
                .isEmpty();
        assertThat(new Nearness(LINE).near(Segment.of(at(-20, 1), at(120, 1)), Length.ofFeet(2)))
                .contains(feet(0, 100));
    }

    @Test
    void aBentLineMayComeNearTwice() {
        Polyline bent = Polyline.of(List.of(at(20, -10), at(20, 30), at(70, 30), at(70, -10)));

        assertThat(new Nearness(LINE).near(bent, Length.ofFeet(2))).containsExactly(feet(18, 22), feet(68, 72));
        assertThat(bent.distanceTo(at(0, 0))).isEqualTo(Length.ofFeet(20));
        assertThat(bent.distanceTo(at(75, 42))).isEqualTo(Length.ofFeet(13));
    }

    @Test
    void aConcaveAreaIsPassedInSeveralStretches() {
        // A comb of two teeth hanging across the line.
        Polygon comb = Polygon.of(List.of(
                at(10, 20), at(10, -5), at(30, -5), at(30, 10), at(50, 10), at(50, -5), at(60, -5), at(60, 20)));

        assertThat(new Nearness(LINE).in(comb)).containsExactly(feet(10, 30), feet(50, 60));
        assertThat(new Nearness(LINE).in(comb.reversed())).containsExactly(feet(10, 30), feet(50, 60));
        assertThat(new Nearness(LINE).near(comb, Length.ofFeet(3))).containsExactly(feet(7, 33), feet(47, 63));
        assertThat(new Nearness(LINE).near(comb, Length.ofFeet(10))).containsExactly(feet(0, 70));
        assertThat(comb.distanceTo(at(40, 0))).isEqualTo(Length.ofFeet(10));
        assertThat(comb.distanceTo(at(20, 0))).isEqualTo(Length.ZERO);
    }

    @Test
    void theBoundaryBelongsToTheArea() {
        Polygon north = Polygon.of(List.of(at(20, 0), at(40, 0), at(40, 20), at(20, 20)));
        Polygon south = Polygon.of(List.of(at(20, 0), at(40, 0), at(40, -20), at(20, -20)));
        Polygon point = Polygon.of(List.of(at(20, 0), at(40, 20), at(0, 20)));

        assertThat(new Nearness(LINE).in(north)).containsExactly(feet(20, 40));
        assertThat(new Nearness(LINE).in(south)).containsExactly(feet(20, 40));
        assertThat(new Nearness(LINE).in(point)).isEmpty();
    }

    @Test
    void cornersOnTheLineItselfCountOnce() {
        Polygon diamond = Polygon.of(List.of(at(30, 0), at(50, -20), at(70, 0), at(50, 20)));
        // Its lower edge touches the line with a corner at 50 ft, its sides pass it at 40 and 60 ft.
        Polygon notched = Polygon.of(List.of(at(40, -10), at(50, 0), at(60, -10), at(60, 10), at(40, 10)));

        assertThat(new Nearness(LINE).in(diamond)).containsExactly(feet(30, 70));
        assertThat(new Nearness(LINE).in(diamond.reversed())).containsExactly(feet(30, 70));
        assertThat(new Nearness(LINE).in(notched)).containsExactly(feet(40, 60));
    }

    @Test
    void intervalsAreMergedAndCompared() {
        assertThat(Interval.merged(List.of(feet(8, 9), feet(0, 3), feet(3, 5), feet(1, 2))))
                .containsExactly(feet(0, 5), feet(8, 9));
        assertThat(Interval.merged(List.of())).isEmpty();
        assertThat(Interval.common(List.of(feet(0, 5), feet(8, 12)), List.of(feet(5, 9), feet(10, 20))))
                .containsExactly(feet(8, 9), feet(10, 12));
        assertThat(Interval.common(List.of(feet(0, 5)), List.of())).isEmpty();
    }
}
