package org.fencecore.gate.hang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/**
 * One leaf weighed and hung by hand.
 *
 * <pre>
 * Leaf 46 3/4 by 56, 3 1/2 by 1 1/2 lumber; southern pine, G = 0.55, at 19 %:
 * unit weight   62.4 x 0.55 / (1 + 0.9 x 0.55 x 0.19) x 1.19          = 37.330 pcf
 * frame         (2 x 56 + 2 x 39.75) x 3.5 x 1.5 = 1005.375 cu in     = 0.58181 cu ft, 21.719 lbf
 * brace         point to point sqrt(39.75^2 + 49^2) = 63.0957; face 3.5 x 63.0957 - 3.5^2 / 4 x (39.75/49 + 49/39.75)
 *               = 220.835 - 6.260 = 214.575 sq in; x 1.5              = 0.18626 cu ft, 6.953 lbf
 * boards        9 x 5.5 x 0.625 x 72 = 2227.5 cu in                   = 1.28906 cu ft, 48.121 lbf
 * leaf          21.719 + 6.953 + 48.121                               = 76.793 lbf, its centre in the middle at 23.375
 * hinges        at 7 and 49, 42 apart, pins 1/4 from the leaf: 76.793 x 23.625 / 42 = 43.196 lbf
 * at the latch  76.793 / 2 = 38.396; brace 38.396 x 63.0957 / 49      = 49.442 lbf
 * </pre>
 */
class HingeLoadsTest {

    private static final GateWood PINE = GateWood.southernPine(Ratio.ofPercent(19));
    private static final GateLeaf LEAF = leaf(GateSpec.builder().build());
    private static final LeafWeight WEIGHT = LeafWeight.of(LEAF, PINE, boards());
    private static final HingeSpec TWO = HingeSpec.evenly(2, inches(7));

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static GateLeaf leaf(GateSpec spec) {
        return GateDesign.forOpening(inches(47.5), inches(56), HingeSide.LEFT, spec)
                .activeLeaf();
    }

    private static LeafBoards boards() {
        return LeafBoards.of(9, inches(5.5), inches(0.625), inches(72), inches(-4), PINE);
    }

    @Test
    void theLeafWeighsWhatItsPartsDo() {
        assertThat(PINE.unitWeight().pcf()).isCloseTo(37.330, within(0.001));
        assertThat(WEIGHT.frame().poundsForce()).isCloseTo(21.719, within(0.001));
        assertThat(WEIGHT.braces().poundsForce()).isCloseTo(6.953, within(0.001));
        assertThat(WEIGHT.boards().poundsForce()).isCloseTo(48.121, within(0.001));
        assertThat(WEIGHT.total().poundsForce()).isCloseTo(76.793, within(0.002));
        assertThat(WEIGHT.fromHingeEdge()).isEqualTo(inches(23.375));
        // The boards' middle is at -4 + 36 = 32, that of frame and brace at 28: 28 + 4 x 48.121 / 76.793 = 30.507.
        assertThat(WEIGHT.up().inches()).isCloseTo(30.507, within(0.001));
        assertThat(WEIGHT.worksheet().result()).isEqualTo(WEIGHT.fromHingeEdge());
        assertThat(WEIGHT.worksheet().toText())
                .contains("62.4 pcf x 0.55 / (1 + 0.9 x 0.55 x 0.19) x (1 + 0.19) = 37.33 pcf")
                .contains(
                        "weight of the leaf = frame + braces + boards = 21.72 lbf + 6.95 lbf + 48.12 lbf = 76.79 lbf");
    }

    /** The frame is the same on both sides of its middle, mitred and raked too, and a cable weighs nothing. */
    @Test
    void aLeafHungRightHasItsCentreAsFarFromItsHinges() {
        GateSpec spec = GateSpec.builder()
                .joint(FrameJoint.MITRE)
                .braceKind(BraceKind.CABLE)
                .build();
        GateLeaf right = GateDesign.forOpening(inches(47.5), inches(56), HingeSide.RIGHT, spec)
                .withRake(Slope.ofPercent(10))
                .activeLeaf();

        LeafWeight weight = LeafWeight.of(right, PINE);
        assertThat(weight.fromHingeEdge().inches()).isCloseTo(23.375, within(1e-6));
        assertThat(weight.up().inches()).isCloseTo(28 + 2.3375, within(1e-6));
        assertThat(weight.braces()).isEqualTo(Force.ZERO);
    }

    @Test
    void twoHingesPullAndPushByTheMomentOverTheirDistance() {
        HingeLoads loads = HingeLoads.of(WEIGHT, TWO);

        assertThat(loads.moment().poundInches()).isCloseTo(76.793 * 23.625, within(0.05));
        assertThat(loads.pulls()).hasSize(2);
        assertThat(loads.pullAtTop().poundsForce()).isCloseTo(43.196, within(0.002));
        assertThat(loads.pulls().get(0).poundsForce()).isCloseTo(-43.196, within(0.002));
        assertThat(loads.atLatch().poundsForce()).isCloseTo(38.396, within(0.002));
        assertThat(loads.inBraces())
                .singleElement()
                .satisfies(force -> assertThat(force.poundsForce()).isCloseTo(49.442, within(0.002)));
        assertThat(loads.worksheet().result()).isEqualTo(loads.pullAtTop());
        assertThat(loads.worksheet().toText())
                .contains("pull at the top hinge = M y / sum of y^2 = 151.2 lbf-ft x 3.5 ft");
        assertThat(loads.findings()).isEmpty();
    }

    /** Three hinges, the middle one half way: M / s x 1 / (1 + 1/4) at the top, half of that in the middle. */
    @Test
    void aThirdHingeHalfWayTakesAThirdOfThePulls() {
        HingeLoads loads = HingeLoads.of(WEIGHT, HingeSpec.evenly(3, inches(7)));

        assertThat(loads.pullAtTop().poundsForce()).isCloseTo(43.196 / 1.25, within(0.002));
        assertThat(loads.pulls().get(1).poundsForce()).isCloseTo(43.196 / 2.5, within(0.002));
        assertThat(loads.pulls().get(0).poundsForce()).isCloseTo(-43.196 * 1.2, within(0.002));
    }

    /**
     * A textbook gate 1.8 m wide of 300 N, hinges 1.2 m apart, all its weight on the lower one (the problem as posed in
     * statics courses, the answer by moments): 300 x 0.9 / 1.2 = 225 N at the upper hinge, and 375 N at the lower one by
     * the triangle of 3, 4 and 5.
     */
    @Test
    void theGateOfTheStaticsExerciseIsAsInTheBook() {
        GateSpec spec = GateSpec.builder().build();
        GateLeaf leaf = GateDesign.forOpening(Length.ofMetres(1.81905), Length.ofMetres(1.4), HingeSide.LEFT, spec)
                .activeLeaf();
        LeafWeight light = LeafWeight.of(leaf, PINE);
        double wanted = 300 - light.total().newtons();
        // Boards of one size make up the rest of the 300 N.
        LeafBoards one =
                LeafBoards.of(1, Length.ofMetres(1), Length.ofMetres(0.01), Length.ofMetres(1), Length.ZERO, PINE);
        Length length = Length.ofMetres(wanted / one.weight().newtons());
        LeafBoards rest = LeafBoards.of(1, Length.ofMetres(1), Length.ofMetres(0.01), length, Length.ZERO, PINE);
        LeafWeight weight = LeafWeight.of(leaf, PINE, rest);
        HingeLoads loads = HingeLoads.of(
                weight, HingeSpec.at(Length.ofMetres(0.1), Length.ofMetres(1.3)).withPinFromLeaf(Length.ZERO));

        assertThat(leaf.width()).isEqualTo(Length.ofMetres(1.8));
        assertThat(loads.pullAtTop().newtons()).isCloseTo(225, within(1e-5));
        double lower =
                Math.hypot(loads.pulls().get(0).newtons(), loads.carried().newtons());
        assertThat(lower).isCloseTo(375, within(1e-5));
        assertThat(Math.toDegrees(Math.atan2(
                        loads.carried().newtons(), -loads.pulls().get(0).newtons())))
                .isCloseTo(53.13, within(0.005));
    }

    /** 200 lbf at the latch: 200 x 47 / 42 = 223.81 more at the hinges. */
    @Test
    void whoLeansOnTheLatchPullsAtTheTopHinge() {
        HingeLoads loads = HingeLoads.of(WEIGHT, TWO.withLoadAtLatch(Force.ofPoundsForce(200)));

        assertThat(loads.pullAtTop().poundsForce()).isCloseTo(43.196 + 223.810, within(0.003));
        assertThat(loads.carried().poundsForce()).isCloseTo(276.793, within(0.002));
    }

    /** 2850 x 0.25 x 0.19 = 135.375; x 0.9 x 0.7 = 85.286; x 1.25 = 106.608; three hold 319.82. */
    @Test
    void screwsHoldWithTheirInputsShown() {
        GateWood fir = GateWood.douglasFirLarch(Ratio.ofPercent(19));
        HingeScrews screws = HingeScrews.wood(3, inches(0.19), inches(1.25), fir);

        assertThat(screws.ofOne().poundsForce()).isCloseTo(106.608, within(0.001));
        assertThat(screws.ofHinge().poundsForce()).isCloseTo(319.823, within(0.002));
        assertThat(screws.worksheet().result()).isEqualTo(screws.ofHinge());
        assertThat(screws.worksheet().toText())
                .contains("load duration CD = 0.9", "wet service CM = 0.7", "specific gravity G")
                .contains("W for each inch of thread = 2850 G^2 D = 2850 x 0.5^2 x 0.19 = 135.38 lbf"
                        + "   [National Design Specification for Wood Construction 2018, 12.2.2, equation 12.2-2]");
        assertThat(screws.intoEndGrain().ofHinge()).isEqualTo(Force.ZERO);
        HingeScrews lag = HingeScrews.lag(1, inches(0.375), inches(1), fir);
        assertThat(lag.intoEndGrain().ofOne().ratioTo(lag.ofOne()).value()).isCloseTo(0.75, within(1e-12));
        assertThat(screws.withFactors(Ratio.of(1.6), Ratio.of(1)).ofOne().poundsForce())
                .isCloseTo(135.375 * 1.6 * 1.25, within(0.001));
    }

    /** Two No. 8 screws with 1/2 in of thread in cedar hold 2850 x 0.1296 x 0.164 x 0.9 x 0.7 x 0.5 x 2 = 38.16 lbf. */
    @Test
    void tellsWhenTheTopHingeIsPulledOutAndHowManyWouldDo() {
        GateWood cedar = GateWood.westernCedars(Ratio.ofPercent(15));
        HingeScrews weak = HingeScrews.wood(2, inches(0.164), inches(0.5), cedar);
        HingeLoads loads = HingeLoads.of(WEIGHT, TWO.withScrews(weak));

        assertThat(weak.ofHinge().poundsForce()).isCloseTo(38.16, within(0.01));
        assertThat(loads.fewestHinges()).hasValue(3);
        Finding pull = loads.findings().get(0);
        assertThat(pull.code()).isEqualTo("hinge-screws-pull");
        assertThat(pull.message()).contains("43.2 lbf", "38.16 lbf");
        assertThat(pull.remedy()).contains("or hang it on 3 hinges");
        assertThat(HingeLoads.of(WEIGHT, TWO.withScrews(weak.intoEndGrain())).findings())
                .extracting(Finding::code)
                .containsExactly("hinge-screws-end-grain", "hinge-screws-pull");
        assertThat(HingeLoads.of(WEIGHT, TWO.withScrews(weak.intoEndGrain())).fewestHinges())
                .isEmpty();
    }

    @Test
    void aHighLeafUsuallyHasThreeHinges() {
        GateLeaf high = GateDesign.forOpening(
                        inches(47.5),
                        inches(64),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .activeLeaf();

        assertThat(high.usualHinges()).isEqualTo(3);
        assertThat(HingeLoads.of(LeafWeight.of(high, PINE), TWO).findings())
                .extracting(Finding::code)
                .containsExactly("hinges-usual");
    }

    /**
     * From the middle of a post 3 1/2 in wide: 1.75 + 0.5 + 23.375 = 25.625 in, so 76.793 x 25.625 = 1967.8 lbf-in. With
     * 50 lbf on the latch, 1.75 + 0.5 + 46.75 = 49 in out: 2450 lbf-in more.
     */
    @Test
    void theHingePostGetsWeightAndMoment() {
        HingePostLoad load = HingePostLoad.of(HingeLoads.of(WEIGHT, TWO), inches(3.5));

        assertThat(load.weight().poundsForce()).isCloseTo(76.793, within(0.002));
        assertThat(load.moment().poundInches()).isCloseTo(1967.8, within(0.1));
        assertThat(load.wind()).isEqualTo(Force.ZERO);
        assertThat(load.windHeight()).isEqualTo(Length.ZERO);
        assertThat(load.atGround()).isEqualTo(load.moment());
        assertThat(load.worksheet().result()).isEqualTo(load.moment());
        assertThat(load.worksheet().toText())
                .contains("arm of the weight a = b / 2 + g + x = 3.5 in / 2 + 0.5 in + 23.375 in = 25.625 in")
                .contains("moment of the weight Mg = W a = 76.79 lbf x");
        HingePostLoad leaning =
                HingePostLoad.of(HingeLoads.of(WEIGHT, TWO.withLoadAtLatch(Force.ofPoundsForce(50))), inches(3.5));
        assertThat(leaning.moment().poundInches()).isCloseTo(1967.8 + 2450, within(0.1));
        assertThat(leaning.worksheet().result()).isEqualTo(leaning.moment());
        assertThatThrownBy(() -> HingePostLoad.of(HingeLoads.of(WEIGHT, TWO), Length.ZERO))
                .hasMessageContaining("postWidth was 0");
    }

    /** d = 1/8: 0.125 x sqrt(4 x 72.949^2 - 0.125^2) / (4 x 56) = 0.0814; slip 1/16 / sin 50.95 = 0.0805. */
    @Test
    void whatGivesALittleDropsTheLatch() {
        LatchDrop diagonals = LatchDrop.ofDiagonals(LEAF, inches(0.125));
        LatchDrop slip = LatchDrop.ofSlip(LEAF.braces().get(0), inches(0.0625));
        LatchDrop play = LatchDrop.ofHingePlay(HingeLoads.of(WEIGHT, TWO), inches(0.125));

        assertThat(diagonals.drop().inches()).isCloseTo(0.0814, within(0.0001));
        assertThat(slip.drop().inches()).isCloseTo(0.0805, within(0.0001));
        assertThat(play.drop().inches()).isCloseTo(0.125 * 47 / 42, within(1e-6));
        for (LatchDrop drop : new LatchDrop[] {diagonals, slip, play}) {
            assertThat(drop.worksheet().result()).isEqualTo(drop.drop());
        }
        // Turned all the way down the frame is a line: diagonals of W + H and |W - H|, the latch down by W.
        assertThat(LatchDrop.ofDiagonals(LEAF, LEAF.width().times(2))
                        .drop()
                        .minus(LEAF.width())
                        .abs())
                .isLessThan(Length.ofNanometres(10));
    }

    @Test
    void refusesWhatCannotBeHung() {
        assertThatThrownBy(() -> HingeLoads.of(WEIGHT, HingeSpec.at(inches(7), inches(57))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("hinges were from 7 in to 4 ft 9 in up")
                .hasMessageContaining("from 0 to 4 ft 8 in");
        assertThatThrownBy(() -> HingeLoads.of(WEIGHT, HingeSpec.evenly(2, inches(28))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("inset was 2 ft 4 in; it must be under half the frame height");
        assertThatThrownBy(() -> HingeSpec.evenly(1, inches(7))).hasMessageContaining("count was 1");
        assertThatThrownBy(() -> HingeSpec.at(inches(7), inches(7))).hasMessageContaining("from the bottom up");
        assertThatThrownBy(() -> TWO.withLoadAtLatch(Force.ofPoundsForce(-1))).hasMessageContaining("load was -1 lbf");
        assertThatThrownBy(() -> GateWood.of("lead", Ratio.of(11), Ratio.ZERO))
                .hasMessageContaining("specificGravity was 11");
        assertThatThrownBy(() -> GateWood.redwood(Ratio.of(12))).hasMessageContaining("moisture was 1200 %");
        assertThatThrownBy(() -> HingeScrews.wood(0, inches(0.2), inches(1), PINE))
                .hasMessageContaining("count was 0");
        GateLeaf narrow = GateDesign.forOpening(
                        inches(7),
                        inches(56),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .activeLeaf();
        assertThatThrownBy(() -> LeafWeight.of(narrow, PINE)).hasMessageContaining("no room for the pieces");
        assertThatThrownBy(() -> LatchDrop.ofDiagonals(LEAF, inches(94)))
                .hasMessageContaining("difference was 7 ft 10 in");
    }
}
