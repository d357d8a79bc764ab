package org.fencecore.gate.hang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.fencecore.EqualValues;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
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
    private final GateLeaf usual = leaf(GateSpec.builder().build());
    private final LeafWeight weighed = LeafWeight.of(usual, PINE, boards());
    private final HingeSpec two = HingeSpec.evenly(2, inches(7));

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
        assertThat(weighed.frame().poundsForce()).isCloseTo(21.719, within(0.001));
        assertThat(weighed.braces().poundsForce()).isCloseTo(6.953, within(0.001));
        assertThat(weighed.boards().poundsForce()).isCloseTo(48.121, within(0.001));
        assertThat(weighed.total().poundsForce()).isCloseTo(76.793, within(0.002));
        assertThat(weighed.fromHingeEdge()).isEqualTo(inches(23.375));
        // The boards' middle is at -4 + 36 = 32, that of frame and brace at 28: 28 + 4 x 48.121 / 76.793 = 30.507.
        assertThat(weighed.up().inches()).isCloseTo(30.507, within(0.001));
        assertThat(weighed.worksheet().result()).isEqualTo(weighed.fromHingeEdge());
        assertThat(weighed.worksheet().toText())
                .contains("62.4 pcf x 0.55 / (1 + 0.9 x 0.55 x 0.19) x (1 + 0.19) = 37.33 pcf")
                .contains(
                        "weight of the leaf = frame + braces + boards = 21.72 lbf + 6.95 lbf + 48.12 lbf = 76.79 lbf");
    }

    @Test
    void theWeightIsWorkedOutPartByPart() {
        assertThat(weighed.worksheet().toText()).isEqualTo("""
                Weight of the gate leaf
                  unit weight of frame and brace, southern pine at 19 % moisture = 62.4 pcf x G / (1 + 0.9 G m) x (1 + m) = 62.4 pcf x 0.55 / (1 + 0.9 x 0.55 x 0.19) x (1 + 0.19) = 37.33 pcf   [National Design Specification for Wood Construction, Supplement 2018, 3.1.3]
                  frame = unit weight x volume = 37.33 pcf x 0.582 cu ft = 21.72 lbf
                  braces = unit weight x volume = 37.33 pcf x 0.186 cu ft = 6.95 lbf
                  unit weight of boards, southern pine at 19 % moisture = 62.4 pcf x G / (1 + 0.9 G m) x (1 + m) = 62.4 pcf x 0.55 / (1 + 0.9 x 0.55 x 0.19) x (1 + 0.19) = 37.33 pcf   [National Design Specification for Wood Construction, Supplement 2018, 3.1.3]
                  volume of the boards = count x width x thickness x length = 9 x 5.5 in x 0.625 in x 72 in = 1.289 cu ft
                  boards = unit weight x volume = 37.33 pcf x 1.289 cu ft = 48.12 lbf
                  weight of the leaf = frame + braces + boards = 21.72 lbf + 6.95 lbf + 48.12 lbf = 76.79 lbf
                  height of its centre of gravity = sum of weight x height / weight of the leaf = 2' 6 1/2"
                  centre of gravity from the hinge edge = sum of weight x distance / weight of the leaf = 1' 11 3/8"
                """);
        assertThat(weighed).hasToString("gate leaf 3' 10 3/4\" wide and 4' 8\" high, hinged left, 76.79 lbf");
    }

    /**
     * Boards at 10 and 20 in from the left of a leaf raked 10 %, one 60 and two 66 in long from 4 in below the frame, and one
     * of thicker stock: 5.5 x 0.625 x 192 = 660 cu in and 5.5 x 1 x 60 = 330 cu in, at 37.33 pcf 14.258 and 7.129 lbf.
     */
    @Test
    void boardsThatDifferAreWeighedEachAtItsPlace() {
        GateLeaf raked = GateDesign.forOpening(
                        inches(47.5),
                        inches(56),
                        HingeSide.RIGHT,
                        GateSpec.builder().build())
                .withRake(Slope.ofPercent(10))
                .activeLeaf();
        LeafBoards low = board(60, 0.625).at(inches(10));
        LeafBoards high = LeafBoards.of(2, inches(5.5), inches(0.625), inches(66), inches(-4), PINE)
                .at(inches(20));
        LeafBoards thick = board(60, 1).at(inches(30));
        LeafWeight weight = LeafWeight.of(raked, PINE, low, high, thick);
        LeafWeight frame = LeafWeight.of(raked, PINE);

        assertThat(weight.boards().poundsForce()).isCloseTo(14.258 + 7.129, within(0.002));
        // Their middles: 10 % of the way across, and half their length less 4 in, up.
        double lowMoment = low.weight().poundsForce() * (1 + 30 - 4);
        double highMoment = high.weight().poundsForce() * (2 + 33 - 4);
        double thickMoment = thick.weight().poundsForce() * (3 + 30 - 4);
        double frameMoment = frame.total().poundsForce() * frame.up().inches();
        assertThat(weight.up().inches() * weight.total().poundsForce())
                .isCloseTo(frameMoment + lowMoment + highMoment + thickMoment, within(0.001));
        double across = low.weight().poundsForce() * 36.75
                + high.weight().poundsForce() * 26.75
                + thick.weight().poundsForce() * 16.75
                + frame.total().poundsForce() * frame.fromHingeEdge().inches();
        assertThat(weight.fromHingeEdge().inches() * weight.total().poundsForce())
                .isCloseTo(across, within(0.001));
        assertThat(weight.worksheet().toText())
                .contains(
                        "volume of the boards 1 = width x thickness x sum of mean lengths = 5.5 in x 0.625 in x (60 in + 2 x 66 in) = 0.382 cu ft")
                .contains("volume of the boards 2 = count x width x thickness x length = 1 x 5.5 in x 1 in x 60 in =")
                .contains("weight of the leaf = frame + braces + boards 1 + boards 2 =");
    }

    /** Up to forty lots are written out, more are summed up. */
    @Test
    void manyBoardsThatDifferAreSummedUp() {
        LeafBoards[] forty =
                IntStream.rangeClosed(1, 40).mapToObj(lot -> board(lot, 0.625)).toArray(LeafBoards[]::new);
        LeafBoards[] more =
                IntStream.rangeClosed(1, 41).mapToObj(lot -> board(lot, 0.625)).toArray(LeafBoards[]::new);
        assertThat(LeafWeight.of(usual, PINE, forty).worksheet().toText()).contains("39 in + 40 in)");
        assertThat(LeafWeight.of(usual, PINE, more).worksheet().toText())
                .contains("5.5 in x 0.625 in x the mean lengths of 41 boards = ");
    }

    private static LeafBoards board(double length, double thickness) {
        return LeafBoards.of(1, inches(5.5), inches(thickness), inches(length), inches(-4), PINE);
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
        assertThat(weight.worksheet().toText()).doesNotContain("braces").contains("weight of the leaf = frame = ");
    }

    @Test
    void twoHingesPullAndPushByTheMomentOverTheirDistance() {
        HingeLoads loads = HingeLoads.of(weighed, two);

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
        HingeLoads loads = HingeLoads.of(weighed, HingeSpec.evenly(3, inches(7)));

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
        HingeLoads loads = HingeLoads.of(weighed, two.withLoadAtLatch(Force.ofPoundsForce(200)));

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
        HingeLoads loads = HingeLoads.of(weighed, two.withScrews(weak));

        assertThat(weak.ofHinge().poundsForce()).isCloseTo(38.16, within(0.01));
        assertThat(loads.fewestHinges()).hasValue(3);
        Finding pull = loads.findings().get(0);
        assertThat(pull.code()).isEqualTo("hinge-screws-pull");
        assertThat(pull.message()).contains("43.2 lbf", "38.16 lbf");
        assertThat(pull.remedy()).contains("or hang it on 3 hinges");
        assertThat(HingeLoads.of(weighed, two.withScrews(weak.intoEndGrain())).findings())
                .extracting(Finding::code)
                .containsExactly("hinge-screws-end-grain", "hinge-screws-pull");
        assertThat(HingeLoads.of(weighed, two.withScrews(weak.intoEndGrain())).fewestHinges())
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
        assertThat(HingeLoads.of(LeafWeight.of(high, PINE), two).findings())
                .extracting(Finding::code)
                .containsExactly("hinges-usual");
    }

    /**
     * From the middle of a post 3 1/2 in wide: 1.75 + 0.5 + 23.375 = 25.625 in, so 76.793 x 25.625 = 1967.8 lbf-in. With
     * 50 lbf on the latch, 1.75 + 0.5 + 46.75 = 49 in out: 2450 lbf-in more.
     */
    @Test
    void theHingePostGetsWeightAndMoment() {
        HingePostLoad load = HingePostLoad.of(HingeLoads.of(weighed, two), inches(3.5));

        assertThat(load.weight().poundsForce()).isCloseTo(76.793, within(0.002));
        assertThat(load.moment().poundInches()).isCloseTo(1967.8, within(0.1));
        assertThat(load.wind()).isEqualTo(Force.ZERO);
        assertThat(load.windHeight()).isEqualTo(Length.ZERO);
        assertThat(load.atGround()).isEqualTo(load.moment());
        assertThat(load.worksheet().result()).isEqualTo(load.moment());
        assertThat(load.worksheet().toText())
                .contains("arm of the weight a = b / 2 + g + x = 3.5 in / 2 + 0.5 in + 23.375 in = 25.625 in")
                .contains("moment of the weight Mg = W a = 76.79 lbf x");
        LeafWind open = LeafWind.on(HingeLoads.of(weighed, two), Pressure.ofPsf(20), inches(2), inches(74), inches(6));
        HingePostLoad windy = load.withWind(open);
        assertThat(windy.moment().poundFeet()).isCloseTo(163.98, within(0.01));
        assertThat(windy.wind().poundsForce()).isCloseTo(467.5, within(0.01));
        assertThat(windy.windHeight().inches()).isCloseTo(40.7, within(1e-6));
        assertThat(windy.leafWind()).contains(open);
        HingePostLoad leaning =
                HingePostLoad.of(HingeLoads.of(weighed, two.withLoadAtLatch(Force.ofPoundsForce(50))), inches(3.5));
        assertThat(leaning.moment().poundInches()).isCloseTo(1967.8 + 2450, within(0.1));
        assertThat(leaning.worksheet().result()).isEqualTo(leaning.moment());
        assertThat(leaning.withWind(open).worksheet().toText())
                .contains("moment of the weight Mg = W a + load at the latch x (b / 2 + g + leaf width)"
                        + " = 76.79 lbf x 2.1354 ft + 50 lbf x 4.0833 ft = 368.2 lbf-ft")
                .contains("moment at the ground M = F z = 467.5 lbf x 3.3917 ft")
                .contains("moment at the foot of the post = Mg + M, as if both went one way = 368.2 lbf-ft + ");
        assertThat(load.worksheet().toText()).doesNotContain("load at the latch");
        assertThat(leaning).hasToString("126.79 lbf down, 368.2 lbf-ft, 0 lbf of wind");
        assertThatThrownBy(() -> HingePostLoad.of(HingeLoads.of(weighed, two), Length.ZERO))
                .hasMessageContaining("postWidth was 0");
    }

    /** d = 1/8: 0.125 x sqrt(4 x 72.949^2 - 0.125^2) / (4 x 56) = 0.0814; slip 1/16 / sin 50.95 = 0.0805. */
    @Test
    void whatGivesALittleDropsTheLatch() {
        LatchDrop diagonals = LatchDrop.ofDiagonals(usual, inches(0.125));
        LatchDrop slip = LatchDrop.ofSlip(usual.braces().get(0), inches(0.0625));
        LatchDrop play = LatchDrop.ofHingePlay(HingeLoads.of(weighed, two), inches(0.125));

        assertThat(diagonals.drop().inches()).isCloseTo(0.0814, within(0.0001));
        assertThat(slip.drop().inches()).isCloseTo(0.0805, within(0.0001));
        assertThat(play.drop().inches()).isCloseTo(0.125 * 47 / 42, within(1e-6));
        for (LatchDrop drop : new LatchDrop[] {diagonals, slip, play}) {
            assertThat(drop.worksheet().result()).isEqualTo(drop.drop());
        }
        // Turned all the way down the frame is a line: diagonals of W + H and |W - H|, the latch down by W.
        assertThat(LatchDrop.ofDiagonals(usual, usual.width().times(2))
                        .drop()
                        .minus(usual.width())
                        .abs())
                .isLessThan(Length.ofNanometres(10));
    }

    /**
     * With 50 lbf on the latch and a hinge half way: at the latch 38.396 + 50 = 88.396, in the brace x 63.0957 / 49 =
     * 113.83; M = 76.793 x 23.625 + 50 x 47 = 4164.2 lbf-in; over 21^2 + 42^2 = 2205 the pulls are x 21 = 39.66 and
     * x 42 = 79.32, and the lowest hinge is pushed by both.
     */
    @Test
    void theSheetGoesFromHingeToHinge() {
        HingeLoads loads =
                HingeLoads.of(weighed, HingeSpec.evenly(3, inches(7)).withLoadAtLatch(Force.ofPoundsForce(50)));
        assertThat(loads.worksheet().toText()).isEqualTo("""
                Gate hinges
                  weight of the leaf = 76.79 lbf   [given]
                  centre of gravity from the hinge edge x = 1' 11 3/8"   [given]
                  pin from the leaf e = 1/4"   [given]
                  leaf width w = 3' 10 3/4"   [given]
                  load at the latch = 50 lbf   [given]
                  height of hinge 1 = 7"   [given]
                  height of hinge 2 = 2' 4"   [given]
                  height of hinge 3 = 4' 1"   [given]
                  load at the latch edge P = weight x x / w + load at the latch = 76.79 lbf x 23.375 in / 46.75 in + 50 lbf = 88.4 lbf
                  force in brace 1 = P / (number x sin rise) = 88.4 lbf / (1 x sin 50.95 deg) = 113.83 lbf
                  moment about the pins M = weight x (e + x) + load at the latch x (e + w) = 76.79 lbf x (0.0208 ft + 1.9479 ft) + 50 lbf x (0.0208 ft + 3.8958 ft) = 347 lbf-ft
                  pull at hinge 2 = M y / sum of y^2 = 347 lbf-ft x 1.75 ft / ((1.75 ft)^2 + (3.5 ft)^2) = 39.66 lbf
                  push at hinge 1 = sum of the pulls = 118.98 lbf
                  pull at the top hinge = M y / sum of y^2 = 347 lbf-ft x 3.5 ft / ((1.75 ft)^2 + (3.5 ft)^2) = 79.32 lbf
                """);
        assertThat(loads).hasToString("3 hinges, pins 1/4\" from the leaf, 79.32 lbf away from the post at the top");
    }

    /** A brace that falls with a steep rake carries nothing; the sheet leaves it out and goes on to the pulls. */
    @Test
    void theSheetLeavesOutABraceThatFalls() {
        GateLeaf falling = GateDesign.forOpening(
                        inches(60),
                        inches(30),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .withRake(Slope.ofPercent(-100))
                .activeLeaf();
        HingeLoads loads = HingeLoads.of(LeafWeight.of(falling, PINE), HingeSpec.evenly(2, inches(4)));

        assertThat(loads.worksheet().toText()).doesNotContain("force in brace").contains("pull at the top hinge");
        assertThat(loads.worksheet().result()).isEqualTo(loads.pullAtTop());
    }

    /** G = 0.55, D = 3/8: 1800 x 0.55^1.5 x 0.375^0.75 = 351.84; x 0.9 x 0.7 x 0.75 x 2 = 332.48; two hold 664.97. */
    @Test
    void theSheetOfScrewsNamesTheirKindAndGrain() {
        HingeScrews lag = HingeScrews.lag(2, inches(0.375), inches(2), PINE).intoEndGrain();
        assertThat(lag.worksheet().toText())
                .startsWith("Lag screws of a hinge in withdrawal")
                .contains("end grain Ceg = 0.75   [given]")
                .contains("1800 G^1.5 D^0.75 = 1800 x 0.55^1.5 x 0.375^0.75 = 351.84 lbf")
                .contains("one screw = W x CD x CM x Ceg x p = 351.84 lbf x 0.9 x 0.7 x 0.75 x 2 = 332.48 lbf")
                .contains("one hinge = n x one screw = 2 x 332.48 lbf = 664.97 lbf");
        assertThat(lag)
                .hasToString(
                        "2 lag screws 0.375 in thick, 2\" of thread in southern pine at 19 % moisture, in end grain");
        HingeScrews wood = HingeScrews.wood(3, inches(0.19), inches(1.25), PINE);
        assertThat(wood.worksheet().toText())
                .startsWith("Wood screws of a hinge in withdrawal")
                .contains("side grain Ceg = 1   [given]");
        assertThat(wood)
                .hasToString("3 wood screws 0.19 in thick, 1 1/4\" of thread in southern pine at 19 % moisture");
    }

    /** What pulls just as hard as the screws hold needs no more hinges, and nothing is told. */
    @Test
    void screwsThatHoldJustThePullAreEnough() {
        HingeLoads plain = HingeLoads.of(weighed, two);
        GateWood soft = GateWood.of("soft wood", Ratio.of(0.5), Ratio.ZERO);
        HingeScrews inch = HingeScrews.wood(1, inches(0.2), inches(1), soft);
        Length thread = inches(plain.pullAtTop().ratioTo(inch.ofOne()).value());
        HingeLoads enough =
                HingeLoads.of(weighed, two.withScrews(HingeScrews.wood(1, inches(0.2), thread.plus(hair()), soft)));
        HingeLoads little =
                HingeLoads.of(weighed, two.withScrews(HingeScrews.wood(1, inches(0.2), thread.minus(hair()), soft)));

        assertThat(enough.findings()).isEmpty();
        assertThat(enough.fewestHinges()).hasValue(2);
        assertThat(little.findings()).extracting(Finding::code).containsExactly("hinge-screws-pull");
        assertThat(little.fewestHinges()).hasValue(3);
    }

    private static Length hair() {
        return Length.ofNanometres(2);
    }

    /** The sum of (i / 5)^2 for i from 1 to 5 is 55 / 25 = 11 / 5, so six hinges leave 5 / 11 of the pull of two. */
    @Test
    void sixHingesAreTheMostThatAreAdvised() {
        GateWood soft = GateWood.of("soft wood", Ratio.of(0.5), Ratio.ZERO);
        HingeScrews inch = HingeScrews.wood(1, inches(0.2), inches(1), soft);
        double sixth =
                HingeLoads.of(weighed, two).pullAtTop().ratioTo(inch.ofOne()).value() * 5 / 11;
        assertThat(HingeLoads.of(weighed, two.withScrews(HingeScrews.wood(1, inches(0.2), inches(sixth * 1.001), soft)))
                        .fewestHinges())
                .hasValue(6);
        assertThat(HingeLoads.of(weighed, two.withScrews(HingeScrews.wood(1, inches(0.2), inches(sixth * 0.999), soft)))
                        .fewestHinges())
                .isEmpty();
    }

    @Test
    void hingesScrewsBoardsAndWoodAreEqualIfAllTheirPartsAre() {
        GateWood fir = GateWood.douglasFirLarch(Ratio.ofPercent(19));
        HingeScrews screws = HingeScrews.wood(3, inches(0.19), inches(1.25), PINE);
        EqualValues.assertDistinct(
                () -> GateWood.of("pine", Ratio.of(0.5), Ratio.ofPercent(15)),
                () -> GateWood.of("fir", Ratio.of(0.5), Ratio.ofPercent(15)),
                () -> GateWood.of("pine", Ratio.of(0.4), Ratio.ofPercent(15)),
                () -> GateWood.of("pine", Ratio.of(0.5), Ratio.ofPercent(19)));
        EqualValues.assertDistinct(
                () -> HingeScrews.wood(3, inches(0.19), inches(1.25), PINE),
                () -> HingeScrews.lag(3, inches(0.19), inches(1.25), PINE),
                () -> HingeScrews.wood(4, inches(0.19), inches(1.25), PINE),
                () -> HingeScrews.wood(3, inches(0.2), inches(1.25), PINE),
                () -> HingeScrews.wood(3, inches(0.19), inches(1), PINE),
                () -> HingeScrews.wood(3, inches(0.19), inches(1.25), fir),
                () -> screws.withFactors(Ratio.of(1.6), Ratio.of(0.7)),
                () -> screws.withFactors(Ratio.of(0.9), Ratio.of(1)),
                screws::intoEndGrain);
        EqualValues.assertDistinct(
                () -> HingeSpec.evenly(2, inches(7)),
                () -> HingeSpec.evenly(3, inches(7)),
                () -> HingeSpec.evenly(2, inches(8)),
                () -> HingeSpec.at(inches(7), inches(49)),
                () -> HingeSpec.at(inches(7), inches(48)),
                () -> two.withPinFromLeaf(inches(0.5)),
                () -> two.withLoadAtLatch(Force.ofPoundsForce(50)),
                () -> two.withScrews(screws));
        EqualValues.assertDistinct(
                HingeLoadsTest::boards,
                () -> LeafBoards.of(8, inches(5.5), inches(0.625), inches(72), inches(-4), PINE),
                () -> LeafBoards.of(9, inches(5), inches(0.625), inches(72), inches(-4), PINE),
                () -> LeafBoards.of(9, inches(5.5), inches(0.75), inches(72), inches(-4), PINE),
                () -> LeafBoards.of(9, inches(5.5), inches(0.625), inches(60), inches(-4), PINE),
                () -> LeafBoards.of(9, inches(5.5), inches(0.625), inches(72), inches(4), PINE),
                () -> LeafBoards.of(9, inches(5.5), inches(0.625), inches(72), inches(-4), fir),
                () -> boards().at(inches(10)),
                () -> boards().at(inches(20)));
    }

    @Test
    void partsTellWhatTheyAre() {
        LeafBoards boards = boards().at(inches(10));
        assertThat(boards.count()).isEqualTo(9);
        assertThat(boards.centre()).contains(inches(10));
        assertThat(boards().centre()).isEmpty();
        assertThat(boards).hasToString("9 boards of 5 1/2\" by 5/8\", 6' 0\" long");
        assertThat(two).hasToString("2 hinges, pins 1/4\" from the leaf");
        assertThat(LatchDrop.ofDiagonals(usual, inches(0.125))).hasToString("latch down 0.0814 in");
    }

    @Test
    void theEndsOfEachRangeAreInIt() {
        Length most = Length.ofFeet(100);
        LeafBoards none = LeafBoards.of(0, inches(5.5), inches(0.625), inches(72), inches(-4), PINE);
        assertThat(LeafWeight.of(usual, PINE, none).boards()).isEqualTo(Force.ZERO);
        assertThat(LeafBoards.of(10_000, most, most, most, most.negated(), PINE).bottom())
                .isEqualTo(most.negated());
        assertThat(GateWood.of("heaviest", Ratio.of(1.3), Ratio.ofPercent(30)).moisture())
                .isEqualTo(Ratio.ofPercent(30));
        assertThat(GateWood.of("dry", Ratio.of(0.5), Ratio.ZERO).unitWeight().pcf())
                .isCloseTo(31.2, within(1e-9));
        assertThat(HingeScrews.wood(100, inches(0.2), inches(1), PINE)
                        .worksheet()
                        .toText())
                .contains("screws in one hinge n = 100");
        assertThat(HingeSpec.evenly(20, inches(7)).heightsOn(usual)).hasSize(20);
        Length[] twenty = HingeSpec.evenly(20, inches(7)).heightsOn(usual).toArray(Length[]::new);
        assertThat(HingeSpec.at(twenty).count()).isEqualTo(20);
        assertThat(HingeSpec.at(Length.ZERO, inches(56)).heightsOn(usual)).containsExactly(Length.ZERO, inches(56));
    }

    @Test
    void refusesPartsThatCannotBe() {
        assertThatThrownBy(() -> LeafBoards.of(-1, inches(5.5), inches(1), inches(72), Length.ZERO, PINE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("count was -1; it must be from 0 to 10000 boards on one leaf");
        assertThatThrownBy(() -> LeafBoards.of(1, inches(5.5), inches(1), inches(72), Length.ofFeet(101), PINE))
                .hasMessage("bottom was 101 ft; it must be within 100 ft of zero, so check its unit");
        HingeScrews screws = HingeScrews.wood(3, inches(0.19), inches(1.25), PINE);
        assertThatThrownBy(() -> screws.withFactors(Ratio.of(2.1), Ratio.of(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("newLoadDuration was 2.1; it must be over 0 and no more than 2");
        assertThatThrownBy(() -> screws.withFactors(Ratio.of(2), Ratio.of(1.1)))
                .hasMessageContaining("newWetService was 1.1; it must be over 0 and no more than 1");
        assertThatThrownBy(() -> HingeSpec.at(inches(7))).hasMessage("heights were 1; give from 2 to 20");
        assertThatThrownBy(() -> HingeSpec.evenly(21, inches(1))).hasMessageContaining("count was 21");
    }

    @Test
    void refusesWhatCannotBeHung() {
        assertThatThrownBy(() -> HingeLoads.of(weighed, HingeSpec.at(inches(7), inches(57))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("hinges were from 7 in to 4 ft 9 in up")
                .hasMessageContaining("from 0 to 4 ft 8 in");
        assertThatThrownBy(() -> HingeLoads.of(weighed, HingeSpec.evenly(2, inches(28))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("inset was 2 ft 4 in; it must be under half the frame height");
        assertThatThrownBy(() -> HingeSpec.evenly(1, inches(7))).hasMessageContaining("count was 1");
        assertThatThrownBy(() -> HingeSpec.at(inches(7), inches(7))).hasMessageContaining("from the bottom up");
        assertThatThrownBy(() -> two.withLoadAtLatch(Force.ofPoundsForce(-1))).hasMessageContaining("load was -1 lbf");
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
        assertThatThrownBy(() -> LatchDrop.ofDiagonals(usual, inches(94)))
                .hasMessageContaining("difference was 7 ft 10 in");
    }
}
