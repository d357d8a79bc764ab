package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.terrain.Feet.at;
import static org.fencecore.terrain.Feet.line;
import static org.fencecore.terrain.Feet.shot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Seven invented shots, triangulated by Tinfour 2.1.8, JTS 1.20.0 and scipy with Qhull, which agree; heights and grades
 * computed from those triangles independently.
 */
class TerrainReferenceTest {

    private static final List<Shot> SHOTS = List.of(
            shot(0, 0, 100.00),
            shot(30, 2, 101.20),
            shot(58, 0, 103.10),
            shot(62, 35, 104.60),
            shot(28, 22, 102.05),
            shot(3, 38, 101.40),
            shot(33, 41, 103.30));

    private final ShotSurface surface = ShotSurface.of(SHOTS);

    private static String name(Facet facet) {
        TreeSet<Integer> numbers = new TreeSet<>();
        for (Shot corner : List.of(facet.a(), facet.b(), facet.c())) {
            numbers.add(SHOTS.indexOf(corner) + 1);
        }
        return numbers.toString().replaceAll("[^0-9]", "");
    }

    @Test
    void trianglesAndTheirGrades() {
        Map<String, Double> expected = new TreeMap<>(Map.of(
                "457", 7.5455, "567", 7.7089, "156", 5.7654, "125", 5.9134, "345", 7.1008, "235", 8.6963, "123",
                20.8685));
        assertThat(surface.facets())
                .extracting(TerrainReferenceTest::name)
                .containsExactlyInAnyOrderElementsOf(expected.keySet());
        for (Facet facet : surface.facets()) {
            assertThat(facet.steepest().percent()).isCloseTo(expected.get(name(facet)), within(5.1e-5));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "10, 10, 100.803106",
        "20, 5, 100.969371",
        "40, 10, 102.311151",
        "50, 20, 103.326714",
        "30, 30, 102.570180",
        "15, 30, 101.701403",
        "45, 35, 103.657831",
        "5, 35, 101.395040",
        "55, 2, 102.985072"
    })
    void heights(double east, double north, double height) {
        assertThat(surface.elevationAt(at(east, north)).orElseThrow().feet()).isCloseTo(height, within(5.1e-7));
    }

    @Test
    void profileWithEveryEdgeCrossed() {
        Profile under = surface.under(line("5,5 60,30")).orElseThrow();
        double[][] expected = {
            {0, 100.401553}, {3.5538, 100.602941}, {25.9523, 101.783913}, {31.3173, 102.242857}, {60.4152, 104.298155}
        };
        List<double[]> found = new ArrayList<>();
        for (ProfilePoint point : under.points()) {
            found.add(new double[] {point.station().feet(), point.elevation().feet()});
        }
        assertThat(found).hasSameSizeAs(expected);
        for (int i = 0; i < expected.length; i++) {
            assertThat(found.get(i)[0]).isCloseTo(expected[i][0], within(5.1e-5));
            assertThat(found.get(i)[1]).isCloseTo(expected[i][1], within(5.1e-7));
        }
        assertThat(under.extent().length().feet()).isCloseTo(60.41523, within(5.1e-6));
    }
}
