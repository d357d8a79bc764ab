package org.fencecore.style;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.GateWood;
import org.fencecore.strength.SpeciesGroup;
import org.fencecore.strength.WoodGrade;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.junit.jupiter.api.Test;

class GateHardwareTest {

    private static final GateWood PINE = GateWood.southernPine(Ratio.ofPercent(19));

    private static GateLeaf leaf(double high) {
        return GateDesign.forOpening(
                        Length.ofInches(47.5),
                        Length.ofInches(high),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .activeLeaf();
    }

    @Test
    void theExampleOfItsDocumentation() {
        GateHardware hardware = GateHardware.builder()
                .hinges(2)
                .hingeInset(Length.ofInches(7))
                .lagScrews(3, Length.ofInches(0.25), Length.ofInches(1.25))
                .build();
        GateLeaf leaf = leaf(56);
        assertThat(hardware.hingesOn(leaf, PINE).heightsOn(leaf))
                .containsExactly(Length.ofInches(7), Length.ofInches(49));
        assertThat(hardware)
                .hasToString("strap hinge 1' 0\" long with 3 lag screws of 0.25 in, 1.25 in of thread in the wood");
    }

    /** Straps on the rails, which are 3 1/2 in; three where the frame is over 5 ft high (common practice, no source). */
    @Test
    void usualHingesAreOnTheRails() {
        GateHardware usual = GateHardware.builder().build();
        assertThat(usual.hingesOn(leaf(56), PINE).heightsOn(leaf(56)))
                .containsExactly(Length.ofInches(1.75), Length.ofInches(54.25));
        assertThat(usual.hingesOn(leaf(64), PINE).heightsOn(leaf(64)))
                .containsExactly(Length.ofInches(1.75), Length.ofInches(32), Length.ofInches(62.25));
        assertThat(usual.hingesOn(leaf(56), PINE).pinFromLeaf()).isEqualTo(Length.ofInches(0.25));
    }

    @Test
    void anInsetTooGreatForALowFrameIsAQuarterOfIt() {
        GateHardware far =
                GateHardware.builder().hingeInset(Length.ofInches(30)).build();
        assertThat(far.hingesOn(leaf(40), PINE).heightsOn(leaf(40)))
                .containsExactly(Length.ofInches(10), Length.ofInches(30));
    }

    /** Specific gravities of the NDS Supplement 2018, table 4A, as in GateWood. */
    @Test
    void woodIsThatOfTheLumber() {
        GateHardware dry = GateHardware.builder().moisture(Ratio.ofPercent(15)).build();
        assertThat(dry.woodOf(Lumber.twoByFour())).isEqualTo(GateWood.southernPine(Ratio.ofPercent(15)));
        Map<SpeciesGroup, Double> gravities = Map.of(
                SpeciesGroup.SOUTHERN_PINE, 0.55,
                SpeciesGroup.DOUGLAS_FIR_LARCH, 0.50,
                SpeciesGroup.HEM_FIR, 0.43,
                SpeciesGroup.SPRUCE_PINE_FIR, 0.42,
                SpeciesGroup.WESTERN_CEDARS, 0.36,
                SpeciesGroup.REDWOOD, 0.37);
        assertThat(gravities.keySet()).containsExactlyInAnyOrder(SpeciesGroup.values());
        gravities.forEach((group, gravity) -> {
            Lumber lumber = Lumber.twoByFour().graded(group, WoodGrade.NO_2);
            assertThat(dry.woodOf(lumber).specificGravity()).isEqualTo(Ratio.of(gravity));
        });
    }

    @Test
    void whatCannotBeIsRefused() {
        GateHardware.Builder builder = GateHardware.builder();
        assertThatThrownBy(() -> builder.hinges(1)).hasMessageContaining("count of hinges was 1");
        assertThatThrownBy(() -> builder.hingeInset(Length.ZERO)).hasMessageContaining("inset was 0");
        assertThatThrownBy(() -> builder.straps(Length.ofInches(2), Length.ofFeet(101)))
                .hasMessageContaining("reach was 101 ft");
        assertThatThrownBy(() -> builder.woodScrews(0, Length.ofInches(0.2), Length.ofInches(1)))
                .hasMessageContaining("count was 0");
        assertThatThrownBy(() -> builder.loadAtLatch(Force.ofPoundsForce(1001))).hasMessageContaining("1,000 lbf");
        assertThatThrownBy(() -> builder.moisture(Ratio.ofPercent(31))).hasMessageContaining("0 to 30 %");
        assertThatThrownBy(() -> builder.openTo(Angle.ofDegrees(181))).hasMessageContaining("180 deg");
    }

    @Test
    void sameHardwareIsEqual() {
        assertThat(GateHardware.builder().build())
                .isEqualTo(GateHardware.builder().build())
                .hasSameHashCodeAs(GateHardware.builder().build())
                .isNotEqualTo(GateHardware.builder().hinges(3).build())
                .isNotEqualTo(GateHardware.builder().butts(Length.ofInches(4)).build());
    }

    /**
     * By hand, 10 % up from the hinges: the rail's middle is 3.5 x sqrt(1.01) / 2 = 1.7587 in up at the hinge edge and, half
     * way from the stile to the end of a 12 in strap, 0.775 in higher. At the top that is 55.016, and the strap of 2 in
     * stays under the stile's end at 55.
     */
    @Test
    void onARakedLeafTheStrapsAreWhereTheRailsPassBehindThem() {
        GateHardware usual = GateHardware.builder().build();
        GateLeaf raked = GateDesign.forOpening(
                        Length.ofInches(47.5),
                        Length.ofInches(56),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .withRake(Slope.ofPercent(10))
                .activeLeaf();
        List<Length> heights = usual.hingesOn(raked, PINE).heightsOn(raked);
        assertThat(heights.get(0).inches()).isCloseTo(2.5337, within(0.0001));
        assertThat(heights.get(1).inches()).isCloseTo(55, within(1e-9));
        GateHardware butts = GateHardware.builder().butts(Length.ofInches(3.5)).build();
        assertThat(butts.hingesOn(raked, PINE).heightsOn(raked).get(0).inches()).isCloseTo(1.7587, within(0.0001));
    }
}
