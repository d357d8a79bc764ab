package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.terrain.Feet.at;
import static org.fencecore.terrain.Feet.ft;
import static org.fencecore.terrain.Feet.line;
import static org.fencecore.terrain.Feet.shot;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

class ShotSurfaceTest {

    private final ShotSurface yard = ShotSurface.of(List.of(shot(0, 0, 100), shot(40, 0, 98), shot(0, 30, 100)));

    @Test
    void isStraightBetweenShots() {
        assertThat(yard.elevationAt(at(10, 10))).contains(ft(99.5));
        assertThat(yard.elevationAt(at(40, 0))).contains(ft(98));
        assertThat(yard.elevationAt(at(20, 15))).contains(ft(99));
        assertThat(yard.elevationAt(at(20, 15.1))).isEmpty();
        assertThat(yard.facets()).hasSize(1);
        assertThat(yard.facets().get(0).steepest().percent()).isCloseTo(5, within(1e-12));
        assertThat(yard.facets().get(0).downhill()).contains(Bearing.parse("N 90° E"));
        assertThat(yard).hasToString("1 triangle between 3 shots");
        assertThat(yard.findings()).isEmpty();
    }

    /** A ridge from (0,10) to (20,10), 2 ft over both sides: worked by hand. */
    @Test
    void keepsTheBreakWhereALineCrossesARidge() {
        ShotSurface ridge = ShotSurface.of(List.of(
                shot(0, 0, 100),
                shot(20, 0, 100),
                shot(0, 10, 102),
                shot(20, 10, 102),
                shot(0, 20, 100),
                shot(20, 20, 100)));
        Profile under = ridge.under(line("5,0 5,20")).orElseThrow();

        assertThat(under.highest()).isEqualTo(new ProfilePoint(ft(10), ft(102)));
        assertThat(under.elevationAt(ft(5))).isEqualTo(ft(101));
        assertThat(under.elevationAt(ft(16))).isEqualTo(ft(100.8));
        assertThat(under.extent()).isEqualTo(Interval.of(Length.ZERO, ft(20)));
    }

    @Test
    void followsALineOverShotsAndAlongEdges() {
        ShotSurface bumpy = ShotSurface.of(
                List.of(shot(0, 0, 100), shot(10, 0, 101), shot(25, 0, 99), shot(25, 25, 99), shot(0, 25, 100)));
        assertThat(bumpy.under(line("0,0 25,0")).orElseThrow())
                .isEqualTo(Profile.builder()
                        .point(ft(0), ft(100))
                        .point(ft(10), ft(101))
                        .point(ft(25), ft(99))
                        .build());
    }

    /** Shots booked to 0.01 ft may stand 0.005 ft off the lot line; they still tell the ground along it. */
    @Test
    void takesShotsASixteenthOffTheLine() {
        ShotSurface inside = ShotSurface.of(
                List.of(shot(0, 0, 100), shot(10, 0.005, 98), shot(20, 0, 100), shot(20, 20, 100), shot(0, 20, 100)));
        assertThat(inside.under(line("0,0 20,0")).orElseThrow().elevationAt(ft(10)))
                .isEqualTo(ft(98));
        assertThat(inside.elevationAt(at(10, 0))).contains(ft(98));
        assertThat(inside.withReach(Length.ofMillimetres(0.1)).elevationAt(at(10, 0)))
                .contains(ft(100));

        ShotSurface outside = ShotSurface.of(List.of(
                shot(0, 0, 100), shot(10, 0.005, 98), shot(20, 0.005, 100), shot(20, 20, 100), shot(0, 20, 100)));
        assertThat(outside.under(line("0,0 20,0")).orElseThrow().elevationAt(ft(10)))
                .isEqualTo(ft(98));
        assertThat(outside.withReach(Length.ofMillimetres(0.1)).under(line("0,0 20,0")))
                .isEmpty();
    }

    @Test
    void takesShotsFartherOffWhenToldSo() {
        List<Shot> shots =
                List.of(shot(0, -5, 100), shot(30, -5, 100), shot(30, 5, 100), shot(0, 5, 100), shot(12, 0.4, 97));
        ShotSurface surface = ShotSurface.of(shots);
        Length straight = surface.under(line("0,0 30,0")).orElseThrow().elevationAt(ft(12));
        assertThat(straight).isGreaterThan(ft(97));
        assertThat(surface.withReach(ft(0.5))
                        .under(line("0,0 30,0"))
                        .orElseThrow()
                        .elevationAt(ft(12)))
                .isEqualTo(ft(97));
        assertThatThrownBy(() -> surface.withReach(ft(2)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("reach was 2 ft");
    }

    @Test
    void tellsWhereALineLeavesIt() {
        ShotSurface square =
                ShotSurface.of(List.of(shot(0, 0, 100), shot(20, 0, 100), shot(20, 20, 100), shot(0, 20, 100)));
        assertThat(square.under(line("-5,10 30,10"))).isEmpty();
        assertThat(square.uncovered(line("-5,10 30,10")))
                .containsExactly(Interval.of(ft(0), ft(5)), Interval.of(ft(25), ft(35)));
        assertThat(square.uncovered(line("10,10 30,10 30,20 10,20"))).containsExactly(Interval.of(ft(10), ft(40)));
        assertThat(square.uncovered(line("0,-1 20,-1"))).containsExactly(Interval.of(ft(0), ft(20)));
        assertThat(square.uncovered(line("0,0 -10,0"))).containsExactly(Interval.of(ft(0), ft(10)));
        assertThat(square.uncovered(line("-10,0 0,0"))).containsExactly(Interval.of(ft(0), ft(10)));
        assertThat(square.uncovered(line("0,0 20,20"))).isEmpty();
    }

    @Test
    void refusesTooFewTooManyAndShotsInLine() {
        assertThatThrownBy(() -> ShotSurface.of(List.of(shot(0, 0, 1), shot(1, 0, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("number of shots was 2");
        assertThatThrownBy(() -> ShotSurface.of(Collections.nCopies(1_000_001, shot(0, 0, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("number of shots was 1000001");
        assertThatThrownBy(() -> ShotSurface.of(List.of(shot(0, 0, 1), shot(2, 1, 1), shot(4, 2, 5), shot(40, 20, 7))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("in line")
                .hasMessageContaining("E 40 ft");
        assertThatThrownBy(() -> ShotSurface.of(Collections.nCopies(5, shot(3, 4, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("all 1 different shots are in line");
        assertThatThrownBy(() -> ShotSurface.of(List.of(shot(0, 0, 1), shot(4e6, 0, 1), shot(0, 1, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("east was from 0 in");
    }

    @Test
    void takesTheSameShotOnceAndRefusesTwoHeightsAtOnePlace() {
        ShotSurface twice =
                ShotSurface.of(List.of(shot(0, 0, 1), shot(9, 0, 1), shot(0, 9, 1), shot(0, 0, 1), shot(9, 0, 1)));
        assertThat(twice.shots()).containsExactly(shot(0, 0, 1), shot(0, 9, 1), shot(9, 0, 1));
        assertThat(twice.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("shots-doubled");
            assertThat(finding.message()).startsWith("2 shots were given more than once");
        });
        assertThatThrownBy(() -> ShotSurface.of(List.of(shot(0, 0, 1), shot(9, 0, 1), shot(0, 9, 1), shot(9, 0, 2))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two shots at (E 9 ft, N 0 in)")
                .hasMessageContaining("were 1 ft and 2 ft high");
    }

    /** Evenly spaced shots have four on every circle: grids turned by any angle and booked in nanometres must not fold. */
    @ParameterizedTest
    @CsvSource({"0, 40", "0.001, 40", "7, 40", "30, 316", "45, 60", "45.1, 60", "89.9, 30"})
    void coversEvenGridsWhole(double degrees, int across) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < across; i++) {
            for (int j = 0; j < across; j++) {
                shots.add(shot(i * cos - j * sin, i * sin + j * cos, 100 + 0.05 * i));
            }
        }
        ShotSurface surface = ShotSurface.of(shots);
        double doubled = surface.facets().stream()
                .mapToDouble(ShotSurfaceTest::doubleSquareFeet)
                .sum();
        assertThat(doubled / 2).isCloseTo((across - 1.0) * (across - 1.0), within(1e-6));

        double middle = 0.37 * across;
        assertThat(surface.elevationAt(at(middle * cos - middle * sin, middle * sin + middle * cos))
                        .orElseThrow()
                        .feet())
                .isCloseTo(100 + 0.05 * middle, within(1e-7));
    }

    private static double doubleSquareFeet(Facet facet) {
        double bx = feet(facet.b()).x - feet(facet.a()).x;
        double by = feet(facet.b()).y - feet(facet.a()).y;
        double cx = feet(facet.c()).x - feet(facet.a()).x;
        double cy = feet(facet.c()).y - feet(facet.a()).y;
        assertThat(bx * cy - by * cx).isPositive();
        return bx * cy - by * cx;
    }

    private static Coordinate feet(Shot shot) {
        return new Coordinate(shot.place().east().feet(), shot.place().north().feet());
    }

    /** An independent triangulation, that of JTS, finds the same triangles of 2,000 shots in general position. */
    @Test
    void agreesWithAnotherTriangulation() {
        Random random = new Random(20);
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < 2_000; i++) {
            shots.add(shot(100 * random.nextDouble(), 60 * random.nextDouble(), 100));
        }
        DelaunayTriangulationBuilder other = new DelaunayTriangulationBuilder();
        other.setSites(shots.stream().map(ShotSurfaceTest::feet).toList());
        TreeSet<String> expected = new TreeSet<>();
        var triangles = other.getTriangles(new GeometryFactory());
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            Coordinate[] ring = triangles.getGeometryN(i).getCoordinates();
            expected.add(name(ring[0], ring[1], ring[2]));
        }
        TreeSet<String> found = new TreeSet<>();
        for (Facet facet : ShotSurface.of(shots).facets()) {
            found.add(name(feet(facet.a()), feet(facet.b()), feet(facet.c())));
        }
        assertThat(found).hasSizeGreaterThan(3_900).isEqualTo(expected);
    }

    private static String name(Coordinate... corners) {
        TreeSet<String> names = new TreeSet<>();
        for (Coordinate corner : corners) {
            names.add(corner.x + " " + corner.y);
        }
        return names.toString();
    }

    /** The survey of a whole estate. Processor time, quickest of three, since other work may run beside it. */
    @Test
    void bringsHundredThousandShotsToAProfileInUnderTwoSeconds() {
        Random random = new Random(100_000);
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < 100_000; i++) {
            shots.add(shot(1_000 * random.nextDouble(), 1_000 * random.nextDouble(), 100 + random.nextDouble()));
        }
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        Duration quickest = Duration.ofDays(1);
        for (int run = 0; run < 3; run++) {
            long start = clock.getCurrentThreadCpuTime();
            assertThat(ShotSurface.of(shots)
                            .under(line("5,5 990,400 20,990"))
                            .orElseThrow()
                            .points())
                    .hasSizeGreaterThan(1_500);
            Duration took = Duration.ofNanos(clock.getCurrentThreadCpuTime() - start);
            quickest = took.compareTo(quickest) < 0 ? took : quickest;
        }
        assertThat(quickest).isLessThan(Duration.ofSeconds(2));
    }

    @Test
    void refusesFacetsThatDoNotTurnLeft() {
        assertThatThrownBy(() -> new Facet(shot(0, 0, 1), shot(0, 1, 1), shot(1, 0, 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("counterclockwise");
        assertThat(new Facet(shot(0, 0, 1), shot(1, 0, 1), shot(0, 1, 1)).downhill())
                .isEmpty();
    }
}
