package org.fencecore.gate.hang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/**
 * By hand: a leaf 48 in wide, its boards from 2 to 74 in over the ground, in 20 psf: 4 x 6 x 20 = 480 lbf, acting 0.55 x 74 =
 * 40.7 in up (ASCE 7-16, figure 29.3-1), its frame of 56 in 10 in up, hinges 7 in from its ends at 17 and 59 in, pins 1/4 in
 * from it.
 *
 * <pre>
 * open        all 480 lbf on the hinges: top 480 x (40.7 - 17) / 42 = 270.86, bottom 209.14
 * latched     at 40.7 in: 480 x 24.25 / 48.25 = 241.24 to the latch, 238.76 to the hinges
 * on its rod  238.76 on the hinges, 480 x 40.7 = 19,536 lbf-in at the ground: 81.82 in up;
 *             top (19,536 - 238.76 x 17) / 42 = 368.51, bottom 238.76 - 368.51 = -129.75
 * both        the fixed leaf on its rod with 241.24 from the other at 40.7 in: 19,536 + 9,818.6 = 29,354.6 lbf-in
 * </pre>
 */
class LeafWindTest {

    private static final GateWood PINE = GateWood.southernPine(Ratio.ofPercent(19));
    private static final GateLeaf LEAF = GateDesign.forOpening(
                    inches(48.75),
                    inches(56),
                    HingeSide.LEFT,
                    GateSpec.builder().build())
            .activeLeaf();
    private static final HingeLoads LOADS = HingeLoads.of(LeafWeight.of(LEAF, PINE), HingeSpec.evenly(2, inches(7)));
    private static final LeafWind OPEN = LeafWind.on(LOADS, Pressure.ofPsf(20), inches(2), inches(74), inches(10));

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static void pounds(Force force, double expected) {
        assertThat(force.poundsForce()).isCloseTo(expected, within(0.01));
    }

    @Test
    void anOpenLeafGivesAllOfItsWindToTheHinges() {
        pounds(OPEN.force(), 480);
        assertThat(OPEN.height().inches()).isCloseTo(40.7, within(1e-9));
        pounds(OPEN.onHinges(), 480);
        pounds(OPEN.atLatchEdge(), 0);
        assertThat(OPEN.heightOnPost().inches()).isCloseTo(40.7, within(1e-6));
        pounds(OPEN.atHinges().get(0), 209.14);
        pounds(OPEN.atHinges().get(1), 270.86);
        pounds(OPEN.mostAtHinge(), 270.86);
    }

    @Test
    void aLatchTakesHalf() {
        LeafWind latched = OPEN.heldAt(inches(40.7));
        pounds(latched.atLatchEdge(), 241.24);
        pounds(latched.onHinges(), 238.76);
        assertThat(latched.heightOnPost().inches()).isCloseTo(40.7, within(1e-6));
    }

    @Test
    void aRodHoldsTheFootAndNotTheHead() {
        LeafWind rod = OPEN.heldAt(Length.ZERO);
        pounds(rod.onHinges(), 238.76);
        assertThat(rod.atGround().poundInches()).isCloseTo(19536, within(0.1));
        assertThat(rod.heightOnPost().inches()).isCloseTo(81.82, within(0.01));
        pounds(rod.atHinges().get(1), 368.51);
        pounds(rod.atHinges().get(0), -129.75);
        LeafWind both = rod.carrying(OPEN.heldAt(inches(40.7)));
        pounds(both.atLatchEdge(), 241.24 * 2);
        pounds(both.onHinges(), 238.76);
        assertThat(both.atGround().poundInches()).isCloseTo(29354.6, within(0.2));
    }

    @Test
    void everySheetEndsWithItsValue() {
        LeafWind both = OPEN.heldAt(Length.ZERO).carrying(OPEN.heldAt(inches(54)));
        for (LeafWind wind : List.of(OPEN, OPEN.heldAt(inches(30)), both)) {
            assertThat(wind.worksheet().result()).isEqualTo(wind.mostAtHinge());
            HingePostLoad post = HingePostLoad.of(LOADS, inches(3.5)).withWind(wind);
            assertThat(post.worksheet().result()).isEqualTo(post.atGround());
            assertThat(post.wind()).isEqualTo(wind.onHinges());
            assertThat(post.windHeight()).isEqualTo(wind.heightOnPost());
        }
        assertThat(OPEN.worksheet().toText()).contains("20 psf x 4 ft x (6.1667 ft - 0.1667 ft)");
        assertThat(both.worksheet().toText()).contains("F z + L zl - R zr").contains("F (e + w / 2) / (e + w) + L");
    }

    /** Four No. 10 screws with 1 1/4 in of thread hold 4 x 2850 x 0.55^2 x 0.19 x 1.25 = 819 lbf, one 204.7. */
    @Test
    void screwsThatTheWindPullsOutAreToldOf() {
        HingeScrews one = HingeScrews.wood(1, inches(0.19), inches(1.25), PINE);
        HingeScrews four = HingeScrews.wood(4, inches(0.19), inches(1.25), PINE);
        assertThat(inWind(four).findings()).isEmpty();
        assertThat(inWind(one).findings()).extracting(Finding::code).containsExactly("hinge-screws-wind");
        assertThat(inWind(one).findings().get(0).message()).contains("270.86 lbf at a hinge");
        assertThat(OPEN.findings()).isEmpty();
    }

    private static LeafWind inWind(HingeScrews screws) {
        HingeSpec spec = HingeSpec.evenly(2, inches(7)).withScrews(screws);
        HingeLoads loads = HingeLoads.of(LeafWeight.of(LEAF, PINE), spec);
        return LeafWind.on(loads, Pressure.ofPsf(20), inches(2), inches(74), inches(10));
    }

    @Test
    void refusesWindThatCannotBe() {
        assertThatThrownBy(() -> LeafWind.on(LOADS, Pressure.ofPsf(-1), inches(2), inches(74), inches(10)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wind was -1 psf");
        assertThatThrownBy(() -> LeafWind.on(LOADS, Pressure.ofPsf(1), inches(74), inches(2), inches(10)))
                .hasMessageContaining("the top must be higher");
        assertThatThrownBy(() -> OPEN.heldAt(inches(-1))).hasMessageContaining("aboveGround was -1 in");
        assertThatThrownBy(() -> OPEN.carrying(OPEN.heldAt(Length.ZERO)))
                .hasMessageContaining("this leaf was not held at its latch edge");
        assertThatThrownBy(() -> OPEN.heldAt(Length.ZERO).carrying(OPEN))
                .hasMessageContaining("active was not held at its latch edge");
    }
}
