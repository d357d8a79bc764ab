package org.fencecore.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import org.fencecore.geometry.ground.Profile;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.GeometryFactory;

/** The programs that are timed against each other find as many triangles. */
class GroundBenchmarkTest {

    @Test
    void bothFindAsManyTriangles() {
        GroundBenchmark programs = new GroundBenchmark();
        assertThat(programs.jts().getTriangles(new GeometryFactory()).getNumGeometries())
                .isEqualTo(programs.surface().facets().size());
        Profile ground = programs.shotsToProfile();
        assertThat(ground.points()).hasSizeGreaterThan(1_500);
        assertThat(ground.lowest().elevation().feet()).isBetween(100.0, 101.0);
    }
}
