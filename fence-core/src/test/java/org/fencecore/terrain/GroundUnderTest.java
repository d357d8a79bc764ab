package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fencecore.terrain.Feet.ft;
import static org.fencecore.terrain.Feet.line;
import static org.fencecore.terrain.Feet.shot;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Plane;
import org.junit.jupiter.api.Test;

class GroundUnderTest {

    private final ShotSurface shots =
            ShotSurface.of(List.of(shot(0, 0, 100), shot(20, 0, 98), shot(20, 20, 98), shot(0, 20, 100)));

    @Test
    void namesTheStationsWithoutGround() {
        GroundUnder ground = GroundUnder.of(line("0,10 30,10"), shots);
        assertThat(ground.profile()).isEmpty();
        assertThat(ground.worksheet()).isEmpty();
        assertThat(ground.uncovered()).containsExactly(Interval.of(ft(20), ft(30)));
        assertThat(ground.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("ground-not-covered");
            assertThat(finding.place()).isEqualTo("20.00 ft to 30.00 ft");
            assertThat(finding.message()).isEqualTo("the line of 30.00 ft leaves the measured ground for 10.00 ft");
        });
        assertThat(ground).hasToString("1 stretch without ground under 30.00 ft of line");
    }

    @Test
    void hasTheProfileWhereThereIsGround() {
        GroundUnder ground = GroundUnder.of(line("0,10 15,10"), shots);
        assertThat(ground.profile()).isEqualTo(shots.under(line("0,10 15,10")));
        assertThat(ground.findings()).isEmpty();
        assertThat(ground.worksheet().orElseThrow().result()).isEqualTo(ft(-1.5));
        assertThat(ground).hasToString("ground under 15.00 ft of line");
        assertThat(GroundUnder.of(line("0,10 900,10"), Plane.level(ft(7))).findings())
                .isEmpty();
    }
}
