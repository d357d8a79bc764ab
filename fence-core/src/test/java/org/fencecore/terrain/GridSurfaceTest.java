package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.terrain.Feet.at;
import static org.fencecore.terrain.Feet.ft;
import static org.fencecore.terrain.Feet.line;

import java.util.Collections;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class GridSurfaceTest {

    private final GridSurface warped =
            GridSurface.of(Point.ORIGIN, ft(10), List.of(List.of(ft(100), ft(101)), List.of(ft(101), ft(104))));

    /** By hand: 100 + u + v + 2 u v. */
    @Test
    void isBilinearInACell() {
        assertThat(warped.elevationAt(at(5, 5))).contains(ft(101.5));
        assertThat(warped.elevationAt(at(2.5, 7.5))).contains(ft(101.375));
        assertThat(warped.elevationAt(at(10, 10))).contains(ft(104));
        assertThat(warped.elevationAt(at(10.1, 5))).isEmpty();
        assertThat(warped.elevationAt(at(10.005, 5))).contains(ft(102.5));
        assertThat(warped.elevationAt(at(5, -0.1))).isEmpty();
        assertThat(warped.columns()).isEqualTo(2);
        assertThat(warped.rows()).isEqualTo(2);
        assertThat(warped.spacing()).isEqualTo(ft(10));
        assertThat(warped.origin()).isEqualTo(Point.ORIGIN);
    }

    /** Along the diagonal the ground is 100 + 2 t + 2 t^2: a chord over all of it is 1/2 ft off in its middle. */
    @Test
    void staysWithinASixteenthOfTheParabola() {
        Profile under = warped.under(line("0,0 10,10")).orElseThrow();
        double length = under.extent().length().feet();
        for (int i = 0; i <= 1_000; i++) {
            double t = i / 1_000.0;
            Length station = Length.min(ft(t * length), under.extent().end());
            assertThat(under.elevationAt(station).inches())
                    .isCloseTo(12 * (100 + 2 * t + 2 * t * t), within(1.0 / 16 + 1e-6));
        }
        assertThat(under.points()).hasSize(11); // sqrt(6 in x 16) = 9.8 pieces, so 10
    }

    @Test
    void breaksAtCellEdgesAndRunsStraightAlongThem() {
        GridSurface grid = GridSurface.of(
                at(0, 0),
                ft(10),
                List.of(
                        List.of(ft(100), ft(102), ft(101)),
                        List.of(ft(100), ft(103), ft(101)),
                        List.of(ft(100), ft(102), ft(101))));
        assertThat(grid.under(line("0,10 20,10")).orElseThrow())
                .isEqualTo(Profile.builder()
                        .point(ft(0), ft(100))
                        .point(ft(10), ft(103))
                        .point(ft(20), ft(101))
                        .build());
        assertThat(grid.under(line("5,0 5,20")).orElseThrow())
                .isEqualTo(Profile.builder()
                        .point(ft(0), ft(101))
                        .point(ft(10), ft(101.5))
                        .point(ft(20), ft(101))
                        .build());
    }

    @Test
    void tellsWhereALineLeavesIt() {
        assertThat(warped.under(line("5,5 15,5"))).isEmpty();
        assertThat(warped.uncovered(line("5,5 15,5"))).containsExactly(Interval.of(ft(5), ft(10)));
        assertThat(warped.uncovered(line("-5,5 15,5 15,20")))
                .containsExactly(Interval.of(ft(0), ft(5)), Interval.of(ft(15), ft(35)));
        assertThat(warped.uncovered(line("-5,11 15,11"))).containsExactly(Interval.of(ft(0), ft(20)));
        assertThat(warped.uncovered(line("0,0 10,10"))).isEmpty();
    }

    @Test
    void refusesWhatIsNoGrid() {
        assertThatThrownBy(() -> GridSurface.of(Point.ORIGIN, ft(10), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rows were 0 of 0");
        assertThatThrownBy(() -> GridSurface.of(
                        Point.ORIGIN, ft(10), List.of(List.of(ft(1), ft(1)), List.of(ft(1), ft(1), ft(1)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("row 1 had 3 heights and the first had 2");
        assertThatThrownBy(() -> GridSurface.of(
                        Point.ORIGIN, ft(10), Collections.nCopies(1_001, Collections.nCopies(1_000, ft(1)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rows were 1001 of 1000 heights");
        assertThatThrownBy(() -> GridSurface.of(
                        Point.ORIGIN, Length.ZERO, List.of(List.of(ft(1), ft(1)), List.of(ft(1), ft(1)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("spacing was 0 in");
        assertThatThrownBy(() ->
                        GridSurface.of(Point.ORIGIN, ft(4e6), List.of(List.of(ft(1), ft(1)), List.of(ft(1), ft(1)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("over 1,000 km long");
    }

    @Test
    void refusesALineThatBreaksTooOften() {
        GridSurface twisted = GridSurface.of(
                Point.ORIGIN,
                Length.ofMetres(1_000),
                Collections.nCopies(
                                8,
                                List.of(
                                        List.of(ft(0), Length.ofMetres(900_000_000)),
                                        List.of(Length.ofMetres(900_000_000), ft(0))))
                        .stream()
                        .flatMap(List::stream)
                        .toList());
        assertThatThrownBy(() -> twisted.under(line("0,0 3000,45000")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("breaks over 1,000,000 times");
    }
}
