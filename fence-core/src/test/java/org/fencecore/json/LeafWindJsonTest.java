package org.fencecore.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.fencecore.Plans;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.junit.jupiter.api.Test;

/** How the document of a plan tells the wind on leaves. */
class LeafWindJsonTest {

    private static Site.Builder twoLeaves() {
        return Plans.levelSide()
                .gate(GateLocation.named("drive")
                        .onSide(1)
                        .centredAt(Length.ofFeet(20))
                        .clearOpening(Length.ofInches(96))
                        .twoLeaves(true)
                        .build());
    }

    private static JsonNode leaves(Site.Builder site) throws JsonProcessingException {
        String plan = PlanJson.write(Job.of(site.build(), FenceStyle.builder().build()));
        return new ObjectMapper().readTree(plan).at("/plan/runs/0/gates/0/leaves");
    }

    /** A force is written in the unit that gives it exactly; 1 lbf is 4.448 221 615 260 5 N (NIST SP 811, 2008, B.8). */
    private static double pounds(JsonNode force) {
        String[] parts = force.asText().split(" ", -1);
        assertThat(parts[1]).isIn("lbf", "N");
        return Double.parseDouble(parts[0]) / ("N".equals(parts[1]) ? 4.4482216152605 : 1);
    }

    /*
     * Statics, by hand: 15 psf on a leaf of 47 1/4 in x 6 ft is 354.375 lbf, and with the pins 1/4 in off, 23.875 / 47.5 of
     * it go to the latch. The fixed leaf's rod holds as much again, for what the active one pushes.
     */
    @Test
    void theWindOnTwoLeavesByHand() throws JsonProcessingException {
        JsonNode leaves = leaves(twoLeaves().windPressure(Pressure.ofPsf(15)));
        double force = 15 * (47.25 / 12) * 6;
        double latch = force * 23.875 / 47.5;

        JsonNode active = leaves.at("/0/windShut");
        assertThat(pounds(active.get("force"))).isCloseTo(force, within(0.01));
        assertThat(pounds(active.get("atLatchEdge"))).isCloseTo(latch, within(0.01));
        assertThat(pounds(active.get("onHinges"))).isCloseTo(force - latch, within(0.01));

        JsonNode fixed = leaves.at("/1/windShut");
        assertThat(pounds(fixed.get("atLatchEdge"))).isCloseTo(2 * latch, within(0.01));
        assertThat(pounds(fixed.get("onHinges"))).isCloseTo(force - latch, within(0.01));

        JsonNode open = leaves.at("/1/windOpen");
        assertThat(pounds(open.get("atLatchEdge"))).isZero();
        assertThat(pounds(open.get("onHinges"))).isCloseTo(force, within(0.01));
        double together = 0;
        for (JsonNode hinge : open.get("atHinges")) {
            together += pounds(hinge);
        }
        assertThat(together).isCloseTo(force, within(0.01));
    }

    @Test
    void withoutAWindThereIsNone() throws JsonProcessingException {
        JsonNode leaves = leaves(twoLeaves());
        assertThat(leaves).hasSize(2);
        assertThat(leaves).noneMatch(leaf -> leaf.has("windShut") || leaf.has("windOpen"));
    }
}
