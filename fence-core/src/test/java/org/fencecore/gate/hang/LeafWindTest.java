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
    private final GateLeaf leaf = GateDesign.forOpening(
                    inches(48.75),
                    inches(56),
                    HingeSide.LEFT,
                    GateSpec.builder().build())
            .activeLeaf();
    private final HingeLoads loads = HingeLoads.of(LeafWeight.of(leaf, PINE), HingeSpec.evenly(2, inches(7)));
    private final LeafWind open = LeafWind.on(loads, Pressure.ofPsf(20), inches(2), inches(74), inches(10));

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static void pounds(Force force, double expected) {
        assertThat(force.poundsForce()).isCloseTo(expected, within(0.01));
    }

    @Test
    void anOpenLeafGivesAllOfItsWindToTheHinges() {
        pounds(open.force(), 480);
        assertThat(open.height().inches()).isCloseTo(40.7, within(1e-9));
        pounds(open.onHinges(), 480);
        pounds(open.atLatchEdge(), 0);
        assertThat(open.heightOnPost().inches()).isCloseTo(40.7, within(1e-6));
        pounds(open.atHinges().get(0), 209.14);
        pounds(open.atHinges().get(1), 270.86);
        pounds(open.mostAtHinge(), 270.86);
    }

    @Test
    void aLatchTakesHalf() {
        LeafWind latched = open.heldAt(inches(40.7));
        pounds(latched.atLatchEdge(), 241.24);
        pounds(latched.onHinges(), 238.76);
        assertThat(latched.heightOnPost().inches()).isCloseTo(40.7, within(1e-6));
    }

    @Test
    void aRodHoldsTheFootAndNotTheHead() {
        LeafWind rod = open.heldAt(Length.ZERO);
        pounds(rod.onHinges(), 238.76);
        assertThat(rod.atGround().poundInches()).isCloseTo(19536, within(0.1));
        assertThat(rod.heightOnPost().inches()).isCloseTo(81.82, within(0.01));
        pounds(rod.atHinges().get(1), 368.51);
        pounds(rod.atHinges().get(0), -129.75);
        LeafWind both = rod.carrying(open.heldAt(inches(40.7)));
        pounds(both.atLatchEdge(), 241.24 * 2);
        pounds(both.onHinges(), 238.76);
        assertThat(both.atGround().poundInches()).isCloseTo(29354.6, within(0.2));
    }

    @Test
    void everySheetEndsWithItsValue() {
        LeafWind both = open.heldAt(Length.ZERO).carrying(open.heldAt(inches(54)));
        for (LeafWind wind : List.of(open, open.heldAt(inches(30)), both)) {
            assertThat(wind.worksheet().result()).isEqualTo(wind.mostAtHinge());
            HingePostLoad post = HingePostLoad.of(loads, inches(3.5)).withWind(wind);
            assertThat(post.worksheet().result()).isEqualTo(post.atGround());
            assertThat(post.wind()).isEqualTo(wind.onHinges());
            assertThat(post.windHeight()).isEqualTo(wind.heightOnPost());
        }
        assertThat(open.worksheet().toText()).contains("20 psf x 4 ft x (6.1667 ft - 0.1667 ft)");
        assertThat(both.worksheet().toText()).contains("F z + L zl - R zr").contains("F (e + w / 2) / (e + w) + L");
    }

    /** The forces worked out above, the hinge forces of the last (29,354.6 - 238.76 x 17) / 42 = 602.28 at the top. */
    @Test
    void theSheetsTellWhatHoldsTheLeaf() {
        assertThat(open.worksheet().toText()).isEqualTo("""
                Wind on a leaf that nothing holds
                  wind pressure = 20 psf   [given]
                  leaf width w = 4' 0"   [given]
                  boards begin over the ground = 2"   [given]
                  boards end over the ground = 6' 2"   [given]
                  wind on the leaf F = pressure x w x (top - bottom) = 20 psf x 4 ft x (6.1667 ft - 0.1667 ft) = 480 lbf
                  its height z = larger of 0.55 top and (bottom + top) / 2 = larger of 0.55 x 6.1667 ft and (0.1667 ft + 6.1667 ft) / 2 = 3.3917 ft   [Minimum Design Loads for Buildings and Other Structures, ASCE 7 2016, figure 29.3-1]
                  level on the hinges P = F = 480 lbf = 480 lbf
                  moment at the ground M = F z = 480 lbf x 3.3917 ft = 1628 lbf-ft
                  most at one hinge, square to the leaf = P / n + (M - P y) (yi - y) / sum of (yi - y)^2 = n = 2 = 270.86 lbf
                """);
        LeafWind latched = open.heldAt(inches(40.7));
        assertThat(latched.worksheet().toText())
                .startsWith("Wind on a leaf held at its latch edge")
                .endsWith("""
                  pin from the leaf e = 1/4"   [given]
                  height of what holds it zr = 3.3917 ft   [given]
                  held at the latch edge R = F (e + w / 2) / (e + w) = 480 lbf x (0.0208 ft + 4 ft / 2) / (0.0208 ft + 4 ft) = 241.24 lbf
                  level on the hinges P = F - R = 480 lbf - 241.24 lbf = 238.76 lbf
                  moment at the ground M = F z - R zr = 480 lbf x 3.3917 ft - 241.24 lbf x 3.3917 ft = 809.8 lbf-ft
                  most at one hinge, square to the leaf = P / n + (M - P y) (yi - y) / sum of (yi - y)^2 = n = 2 = 134.73 lbf
                """);
        LeafWind both = open.heldAt(Length.ZERO).carrying(latched);
        assertThat(both.worksheet().toText()).endsWith("""
                  push of the leaf that latches to it L = 241.24 lbf   [given]
                  height of its latch zl = 3.3917 ft   [given]
                  pin from the leaf e = 1/4"   [given]
                  height of what holds it zr = 0 ft   [given]
                  held at the latch edge R = F (e + w / 2) / (e + w) + L = 480 lbf x (0.0208 ft + 4 ft / 2) / (0.0208 ft + 4 ft) + 241.24 lbf = 482.49 lbf
                  level on the hinges P = F + L - R = 480 lbf + 241.24 lbf - 482.49 lbf = 238.76 lbf
                  moment at the ground M = F z + L zl - R zr = 480 lbf x 3.3917 ft + 241.24 lbf x 3.3917 ft - 482.49 lbf x 0 ft = 2446.2 lbf-ft
                  most at one hinge, square to the leaf = P / n + (M - P y) (yi - y) / sum of (yi - y)^2 = n = 2 = 602.28 lbf
                """);
        assertThat(both).hasToString("480 lbf of wind, 238.76 lbf on the hinges");
    }

    /** Four No. 10 screws with 1 1/4 in of thread hold 4 x 2850 x 0.55^2 x 0.19 x 1.25 = 819 lbf, one 204.7. */
    @Test
    void screwsThatTheWindPullsOutAreToldOf() {
        HingeScrews one = HingeScrews.wood(1, inches(0.19), inches(1.25), PINE);
        HingeScrews four = HingeScrews.wood(4, inches(0.19), inches(1.25), PINE);
        assertThat(inWind(four).findings()).isEmpty();
        assertThat(inWind(one).findings()).extracting(Finding::code).containsExactly("hinge-screws-wind");
        assertThat(inWind(one).findings().get(0).message()).contains("270.86 lbf at a hinge");
        assertThat(open.findings()).isEmpty();
    }

    private LeafWind inWind(HingeScrews screws) {
        HingeSpec spec = HingeSpec.evenly(2, inches(7)).withScrews(screws);
        HingeLoads screwed = HingeLoads.of(LeafWeight.of(leaf, PINE), spec);
        return LeafWind.on(screwed, Pressure.ofPsf(20), inches(2), inches(74), inches(10));
    }

    @Test
    void refusesWindThatCannotBe() {
        assertThatThrownBy(() -> LeafWind.on(loads, Pressure.ofPsf(-1), inches(2), inches(74), inches(10)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wind was -1 psf");
        assertThatThrownBy(() -> LeafWind.on(loads, Pressure.ofPsf(1), inches(74), inches(2), inches(10)))
                .hasMessageContaining("the top must be higher");
        assertThatThrownBy(() -> LeafWind.on(loads, Pressure.ofPsf(1), inches(74), inches(74), inches(10)))
                .hasMessageContaining("bottom was 6 ft 2 in and top 6 ft 2 in");
        assertThatThrownBy(() -> open.heldAt(inches(-1))).hasMessageContaining("aboveGround was -1 in");
        assertThatThrownBy(() -> open.carrying(open.heldAt(Length.ZERO)))
                .hasMessageContaining("this leaf was not held at its latch edge");
        assertThatThrownBy(() -> open.heldAt(Length.ZERO).carrying(open))
                .hasMessageContaining("active was not held at its latch edge");
    }
}
