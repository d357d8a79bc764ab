package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateSpec;
import org.fencecore.geometry.Side;
import org.fencecore.layout.BoardPattern;
import org.fencecore.packet.BuildSheet;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.GateHardware;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

/** Where hinges and their screws go on the leaves of a plan, and what they are fixed to. */
class HingesInPlanTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();

    /** A frame 64 in high has three hinges (common practice, no source); the middle strap has no rail behind it. */
    @Test
    void straps() {
        FencePlan plan = HungGatePlanTest.level(HungGatePlanTest.gate(96).twoLeaves(true));
        assertThat(plan.gates().get(0).leaves())
                .allSatisfy(leaf -> assertThat(leaf.blocks()).containsExactly(Length.ofInches(8.5)));
        assertThat(HungGatePlanTest.finding(plan, "hinge-block").place())
                .startsWith("side 1, gate left leaf, hinge from 2' 7\"");
        Takeoff takeoff = Takeoff.of(plan);
        assertThat(takeoff.materials())
                .filteredOn(line -> line.item().contains("hinge with")
                        || line.item().contains("latch with")
                        || line.item().contains("drop rod"))
                .extracting(MaterialLine::quantity)
                .containsExactly(6, 1, 1);
        assertThat(takeoff.pieces())
                .extracting(piece -> piece.label())
                .contains("gate left leaf hinge stile", "gate right leaf block 1", "gate left leaf boards");
    }

    /** Frame 1 1/2, boards 3/4, battens 1/2 in: as many layers as there are. */
    @Test
    void aLeafIsAsThickAsWhatIsOnIt() {
        assertThat(thickness(BoardPattern.shadowbox(Length.ofInches(5.5)).withLap(Length.ofInches(1)), 42))
                .isEqualTo(Length.ofInches(3));
        assertThat(thickness(BoardPattern.sideBySide(Length.ofInches(5.5)), 42)).isEqualTo(Length.ofInches(2.25));
        assertThat(thickness(BoardPattern.boardOnBoard(Length.ofInches(5.5)), 42))
                .isEqualTo(Length.ofInches(3));
        FenceStyle battens = FenceStyle.builder()
                .pattern(BoardPattern.boardAndBatten(
                        Length.ofInches(5.5), USUAL.battenLumber().width()))
                .build();
        assertThat(HungGatePlanTest.level(HungGatePlanTest.gate(42), battens)
                        .gates()
                        .get(0)
                        .leaves()
                        .get(0)
                        .thickness())
                .isEqualTo(Length.ofInches(2.25).plus(battens.battenLumber().thickness()));
        // Too narrow for a board: the frame alone.
        assertThat(thickness(BoardPattern.sideBySide(Length.ofInches(5.5)), 5)).isEqualTo(Length.ofInches(1.5));
    }

    private static Length thickness(BoardPattern pattern, double opening) {
        FenceStyle style = FenceStyle.builder().pattern(pattern).build();
        return HungGatePlanTest.level(HungGatePlanTest.gate(opening), style)
                .gates()
                .get(0)
                .leaves()
                .get(0)
                .thickness();
    }

    /** At 10 % the strap finds the rail behind it; at 25 % it needs a block, cut to the raked rail. */
    @Test
    void strapsOfARakedLeafLieLevel() {
        FencePlan gentle =
                HungGatePlanTest.onPlane(10, 0, HungGatePlanTest.gate(48).raked(true), Side.RIGHT);
        HungLeaf leaf = gentle.gates().get(0).leaves().get(0);
        assertThat(leaf.blocks()).hasSize(1);
        assertThat(HungGatePlanTest.codes(gentle)).doesNotContain("hinge-off-frame");
        FencePlan steep =
                HungGatePlanTest.onPlane(25, 0, HungGatePlanTest.gate(48).raked(true), Side.RIGHT);
        assertThat(steep.gates().get(0).leaves().get(0).blocks()).hasSize(3);
        assertThat(HungGatePlanTest.codes(steep)).doesNotContain("hinge-off-frame");
        assertThat(BuildSheet.of(steep, Takeoff.of(steep)).toText().replaceAll("\\s+", " "))
                .contains("straps level, square to them and not along the rails")
                .contains("fitted to the brace and to the raked rail");
        FenceStyle low = FenceStyle.builder()
                .gateHardware(
                        GateHardware.builder().hingeInset(Length.ofInches(2)).build())
                .build();
        FencePlan told = FencePlanner.plan(steep.site(), low);
        assertThat(HungGatePlanTest.finding(told, "hinge-off-frame").remedy()).contains("shorter strap");
    }

    /**
     * A leaf of 17 1/4 in, 3 in deep, pins 1/4 in from it: sqrt(17.75^2 - 17.5^2) = 2.9686 in of its depth is clear, so
     * 0.0314 in must come off.
     */
    @Test
    void aNarrowThickLeafNeedsAChamfer() {
        FencePlan plan = HungGatePlanTest.level(HungGatePlanTest.gate(18));
        assertThat(plan.gates()
                        .get(0)
                        .leaves()
                        .get(0)
                        .chamfer()
                        .orElseThrow()
                        .alongEdge()
                        .inches())
                .isCloseTo(0.0314, within(0.0001));
        assertThat(HungGatePlanTest.finding(plan, "gate-latch-chamfer").place()).isEqualTo("side 1, gate");
        assertThat(HungGatePlanTest.codes(HungGatePlanTest.level(HungGatePlanTest.gate(42))))
                .doesNotContain("gate-latch-chamfer");
        assertThat(HungGatePlanTest.level(HungGatePlanTest.gate(42))
                        .gates()
                        .get(0)
                        .leaves()
                        .get(0)
                        .chamfer())
                .isEmpty();
        assertThat(plan.worksheets()).extracting(Worksheet::title).contains("side 1, gate: Chamfer of the latch stile");
    }

    /** Whatever the joints, nothing that is placed for the builder goes into the end of a rail. */
    @Test
    void screwsNeverGoIntoEndGrain() {
        for (FrameJoint joint : FrameJoint.values()) {
            for (boolean middle : new boolean[] {false, true}) {
                for (int hinges = 2; hinges <= 4; hinges++) {
                    FenceStyle butts = FenceStyle.builder()
                            .gate(GateSpec.builder()
                                    .joint(joint)
                                    .middleRail(middle)
                                    .build())
                            .gateHardware(GateHardware.builder()
                                    .hinges(hinges)
                                    .butts(Length.ofInches(3.5))
                                    .build())
                            .build();
                    for (boolean raked : new boolean[] {false, true}) {
                        FencePlan plan = FencePlanner.plan(
                                HungGatePlanTest.onPlane(
                                                8, 0, HungGatePlanTest.gate(42).raked(raked), Side.RIGHT)
                                        .site(),
                                butts);
                        assertThat(plan.gates().get(0).leaves().get(0).hingeSeats())
                                .hasSize(hinges);
                        assertThat(HungGatePlanTest.codes(plan))
                                .doesNotContain("hinge-end-grain", "hinge-screws-end-grain");
                    }
                }
            }
        }
    }

    @Test
    void hingesAreJudgedAsTheStyleHangsThem() {
        FenceStyle poor = FenceStyle.builder()
                .gateHardware(GateHardware.builder()
                        .hinges(2)
                        .hingeInset(Length.ofInches(24))
                        .woodScrews(1, Length.ofInches(0.15), Length.ofInches(0.5))
                        .build())
                .build();
        FencePlan plan = HungGatePlanTest.level(HungGatePlanTest.gate(48), poor);
        assertThat(HungGatePlanTest.finding(plan, "hinges-usual").place()).isEqualTo("side 1, gate, gate hinges");
        assertThat(HungGatePlanTest.finding(plan, "hinge-screws-pull").place())
                .isEqualTo("side 1, gate, top gate hinge");
        assertThat(plan.gates().get(0).leaves().get(0).blocks()).hasSize(2);
    }
}
