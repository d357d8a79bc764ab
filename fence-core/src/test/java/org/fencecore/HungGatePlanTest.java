package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.Plans.levelSide;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.util.List;
import org.fencecore.drawing.SwingArc;
import org.fencecore.drawing.view.GateView;
import org.fencecore.drawing.view.PlanView;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.LeafWind;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.Face;
import org.fencecore.packet.BuildSheet;
import org.fencecore.rules.LocalRules;
import org.fencecore.rules.PoolBarrier;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.GateHardware;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

/** Gates of one leaf and of two, level and raked, as they hang in a plan. */
class HungGatePlanTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();

    private static GateLocation.Builder gate(double openingInches) {
        return GateLocation.named("gate")
                .onSide(1)
                .centredAt(Length.ofFeet(20))
                .clearOpening(Length.ofInches(openingInches));
    }

    private static FencePlan level(GateLocation.Builder gate) {
        return level(gate, USUAL);
    }

    private static FencePlan level(GateLocation.Builder gate, FenceStyle style) {
        return FencePlanner.plan(levelSide().gate(gate.build()).build(), style);
    }

    private static List<String> codes(FencePlan plan) {
        return plan.findings().stream().map(Finding::code).toList();
    }

    private static Finding finding(FencePlan plan, String code) {
        return plan.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    /** 96 in less two hinge gaps of 1/2 and 1/2 between is 94 1/2 for two leaves, 47 1/4 each. */
    @Test
    void twoLeavesHangOnTheirOwnPosts() {
        FencePlan plan = level(gate(96).twoLeaves(true).hinges(HingeSide.RIGHT));
        GateBay gate = plan.gates().get(0);

        assertThat(gate.leaves()).extracting(HungLeaf::name).containsExactly("gate left leaf", "gate right leaf");
        assertThat(gate.leaves())
                .allSatisfy(leaf -> assertThat(leaf.leaf().width()).isEqualTo(Length.ofInches(47.25)));
        assertThat(gate.leaf()).isEqualTo(gate.leaves().get(1).leaf());
        assertThat(gate.hingePost()).isSameAs(gate.hingePost(gate.leaves().get(1)));
        assertThat(gate.hingePost(gate.leaves().get(0))).isNotSameAs(gate.hingePost());
        assertThat(gate.latchPost()).isEmpty();
        HungLeaf other = level(gate(96).twoLeaves(true)).gates().get(0).leaves().get(0);
        assertThatThrownBy(() -> gate.hingePost(other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("gate left leaf");
    }

    @Test
    void eachLeafHasFullBoardsAtBothEdges() {
        for (double opening : new double[] {70, 83.3, 96, 111}) {
            FencePlan plan = level(gate(opening).twoLeaves(true));
            GateBay gate = plan.gates().get(0);
            int boards = 0;
            for (HungLeaf leaf : gate.leaves()) {
                var outside = leaf.boards().orElseThrow().row(Face.OUTSIDE).boards();
                assertThat(outside.get(0).left()).isEqualTo(Length.ZERO);
                assertThat(outside.get(0).isFull()).isTrue();
                assertThat(outside.get(outside.size() - 1).right())
                        .isEqualTo(leaf.leaf().width());
                assertThat(outside.get(outside.size() - 1).isFull()).isTrue();
                boards += leaf.boards().orElseThrow().count();
            }
            assertThat(gate.boardCount()).isEqualTo(boards);
            assertThat(plan.boards().stream().filter(board -> board.place().startsWith("gate ")))
                    .hasSize(boards);
            assertThat(plan.boards()).hasSize(plan.boardCount());
        }
    }

    /**
     * By hand, southern pine at 19 % (37.33 pcf, from the formula of the NDS Supplement 2018, 3.1.3): two stiles of 64 in
     * and two rails of 40 1/4 in of 3 1/2 by 1 1/2 are 1094.6 cu in; the brace is 40.25 x 57 - 38.108 x 53.966 = 237.7
     * sq in, 1 1/2 thick; 11 boards of 5 1/2 by 3/4 by 72 are 3267 cu in: 23.65 + 7.70 + 70.58 = 101.93 lbf. Its middle is
     * 1 3/4 + 1/2 + 23 5/8 = 25 7/8 in from that of the post: 101.93 x 25.875 / 12 = 219.8 lbf-ft.
     */
    @Test
    void theFootingOfEachHingePostCarriesItsLeaf() {
        FencePlan plan = level(gate(96).twoLeaves(true));
        GateBay gate = plan.gates().get(0);
        for (HungLeaf leaf : gate.leaves()) {
            assertThat(leaf.loads().orElseThrow().leafWeight().total().poundsForce())
                    .isCloseTo(101.93, within(0.01));
            assertThat(gate.hingePost(leaf).footing().load().gate().poundFeet()).isCloseTo(219.8, within(0.05));
        }
        assertThat(plan.posts().get(0).footing().load().gate().isZero()).isTrue();

        FencePlan single = level(gate(48));
        assertThat(single.gates().get(0).hingePost().footing().load().gate().isZero())
                .isFalse();
        assertThat(single.gates()
                        .get(0)
                        .latchPost()
                        .orElseThrow()
                        .footing()
                        .load()
                        .gate()
                        .isZero())
                .isTrue();
    }

    private static FencePlan windy(GateLocation.Builder gate) {
        return FencePlanner.plan(
                levelSide().gate(gate.build()).windPressure(Pressure.ofPsf(15)).build(), USUAL);
    }

    /**
     * 15 psf on 6 ft of boards, all the way from the fixed post: half the bay beside it, and of an opening of 8 ft with two
     * half posts three quarters for the fixed leaf, half for the active one.
     */
    @Test
    void thePostOfAFixedLeafIsBentByHalfOfTheOtherLeafToo() {
        FencePlan plan = windy(gate(96).twoLeaves(true));
        GateBay gate = plan.gates().get(0);
        HungLeaf active = gate.leaves().get(0);
        HungLeaf fixed = gate.leaves().get(1);
        double opening = 99.5 / 12;
        double bay = bayBeside(plan, gate.hingePost(fixed), gate.hingePost(active));
        assertThat(gate.hingePost(fixed).footing().load().force().poundsForce())
                .isCloseTo(15 * 6 * (bay / 2 + opening * 0.75), within(1.0));
        double other = bayBeside(plan, gate.hingePost(active), gate.hingePost(fixed));
        assertThat(gate.hingePost(active).footing().load().force().poundsForce())
                .isCloseTo(15 * 6 * (other / 2 + opening / 2), within(1.0));

        // 47 1/4 in of leaf: 15 x 3.9375 x 6 = 354.4 lbf, and with its pins 1/4 in off (0.25 + 23.625) / 47.5 of it
        // held.
        LeafWind shut = fixed.windShut().orElseThrow();
        assertThat(shut.force().poundsForce()).isCloseTo(354.375, within(0.01));
        assertThat(shut.atLatchEdge().poundsForce()).isCloseTo(2 * 354.375 * 23.875 / 47.5, within(0.01));
        assertThat(shut.atGround().poundFeet()
                        / active.windShut().orElseThrow().atGround().poundFeet())
                .isBetween(2.9, 3.1);
        assertThat(plan.worksheets())
                .extracting(Worksheet::title)
                .contains(
                        "side 1, gate right leaf: Hinge post",
                        "side 1, gate right leaf: Wind on a leaf held at its latch edge",
                        "side 1, gate right leaf: Wind on a leaf that nothing holds");
    }

    private static double bayBeside(FencePlan plan, Post post, Post acrossTheGate) {
        int step = post.number() - acrossTheGate.number();
        Post next = plan.posts().get(post.number() - 1 + step);
        return next.centre().distanceTo(post.centre()).feet();
    }

    /** The gate is the whole fence but for 1 ft beside its hinge post: open it catches more than shut. */
    @Test
    void aLeafLeftOpenMayDecideItsFooting() {
        Polyline line = Polyline.of(
                List.of(Point.of(Length.ofFeet(5), Length.ofFeet(30)), Point.of(Length.ofFeet(14), Length.ofFeet(30))));
        GateLocation six = GateLocation.named("gate")
                .onSide(1)
                .centredAt(Length.ofFeet(4))
                .clearOpening(Length.ofFeet(6))
                .build();
        Site.Builder site = Site.on(rectangle(60, 60))
                .fenceAlong(line, Side.RIGHT)
                .ground(Plane.of(Point.ORIGIN, Length.ZERO, Slope.LEVEL, Slope.LEVEL))
                .gate(six);
        FencePlan plan = FencePlanner.plan(site.windPressure(Pressure.ofPsf(15)).build(), USUAL);
        GateBay gate = plan.gates().get(0);
        HungLeaf leaf = gate.leaves().get(0);
        LeafWind open = leaf.windOpen().orElseThrow();
        assertThat(gate.hingePost().footing().load().force().poundsForce())
                .isCloseTo(open.force().poundsForce(), within(1.0));
        Finding caution = finding(plan, "gate-open-wind");
        assertThat(caution.place()).isEqualTo("side 1, gate");
        assertThat(caution.remedy()).contains("shut and latch it before a storm");
        assertThat(codes(level(gate(48)))).doesNotContain("gate-open-wind");
        // Without a wind the weight is told all the same.
        HungLeaf still = level(gate(48)).gates().get(0).leaves().get(0);
        assertThat(still.windOpen()).isEmpty();
        assertThat(still.windShut()).isEmpty();
        assertThat(still.onPost().orElseThrow().moment())
                .isEqualTo(level(gate(48))
                        .gates()
                        .get(0)
                        .hingePost()
                        .footing()
                        .load()
                        .gate());
    }

    /** A frame 64 in high has three hinges (common practice, no source); the middle strap has no rail behind it. */
    @Test
    void straps() {
        FencePlan plan = level(gate(96).twoLeaves(true));
        assertThat(plan.gates().get(0).leaves())
                .allSatisfy(leaf -> assertThat(leaf.blocks()).containsExactly(Length.ofInches(8.5)));
        assertThat(finding(plan, "hinge-block").place()).startsWith("side 1, gate left leaf, hinge from 2' 7\"");
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

    @Test
    void aWideLeafIsOfferedAsTwoByTheCall() {
        FencePlan plan = level(gate(96));
        assertThat(finding(plan, "gate-leaf-wide").place()).isEqualTo("side 1, gate, gate leaf");
        assertThat(finding(plan, "gate-leaf-wide").remedy())
                .contains("hang two leaves of 3' 11 1/4\"")
                .contains("twoLeaves(true)");
        assertThat(codes(level(gate(96).twoLeaves(true)))).doesNotContain("gate-leaf-wide");
    }

    /** Two leaves take 1 1/2 in of gaps, one leaf 3/4 in. */
    @Test
    void anOpeningOfItsGapsAloneTakesNoLeaves() {
        assertThat(finding(level(gate(1.5).twoLeaves(true)), "gate-too-narrow").message())
                .contains("gaps beside and between two leaves");
        assertThat(level(gate(1.6).twoLeaves(true)).gates()).hasSize(1);
        assertThat(codes(level(gate(0.75)))).contains("gate-too-narrow");
    }

    /**
     * On a grade of 5 % the bottoms follow the posts, 2 in over the ground, and run on into the bays on both sides. From
     * the left edge of one leaf to that of the other is 47 3/4 in, on which they rise 2.3875 in.
     */
    @Test
    void rakedLeavesCarryTheFencesLinesThrough() {
        for (Side outside : Side.values()) {
            FencePlan plan = onPlane(5, 0, gate(96).twoLeaves(true).raked(true), outside);
            GateBay gate = plan.gates().get(0);
            boolean rising = outside == Side.RIGHT;
            assertThat(gate.design().rake()).isEqualTo(Slope.ofPercent(rising ? 5 : -5));
            double left = gate.leaves().get(0).boardBottom().inches();
            double right = gate.leaves().get(1).boardBottom().inches();
            assertThat(right - left).isCloseTo((rising ? 1 : -1) * 47.75 * 0.05, within(1e-6));
            Stretch before = plan.stretches().get(0);
            Length post = plan.runs().get(0).station(before.to());
            // From the middle of the post it is half a post, 1 3/4 in, to the opening.
            assertThat(gate.bottomLine().elevationAt(gate.opening().start()).inches())
                    .isCloseTo(before.slope().bottomAt(post).inches() + 1.75 * 0.05, within(1e-6));
            assertThat(codes(plan)).doesNotContain("gate-gap", "gate-rake-steep");
        }
        assertThat(codes(onPlane(5, 0, gate(96).twoLeaves(true), Side.RIGHT))).contains("gate-gap");
    }

    @Test
    void groundTooSteepToRakeHangsLevelAndSaysSo() {
        FencePlan plan = onPlane(120, 0, gate(48).raked(true), Side.RIGHT);
        assertThat(plan.gates().get(0).design().rake()).isEqualTo(Slope.LEVEL);
        assertThat(codes(plan)).contains("gate-rake-steep");
    }

    /** Ground that humps 6 in between the posts lifts a raked leaf to the least clearance, 1 in unless the style says. */
    @Test
    void aHumpLiftsARakedLeaf() {
        FencePlan plan = FencePlanner.plan(
                Site.on(rectangle(50, 40))
                        .fenceOn(1)
                        .ground(1, shots(0, 0, 18, 0, 20, 0.5, 22, 0, 50, 0))
                        .gate(gate(48).raked(true).build())
                        .build(),
                USUAL);
        GateBay gate = plan.gates().get(0);
        Length least =
                plan.runs().get(0).ground().clearanceUnder(gate.bottomLine()).min();
        assertThat(least).isEqualTo(USUAL.slope().minimumClearance());
    }

    private static FencePlan onPlane(double alongPercent, double inPercent, GateLocation.Builder gate, Side outside) {
        Length end = Length.ofFeet(40);
        return FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(
                                Polyline.of(List.of(
                                        Point.of(Length.ofFeet(5), Length.ofFeet(30)),
                                        Point.of(Length.ofFeet(5).plus(end), Length.ofFeet(30)))),
                                outside)
                        .ground(Plane.of(
                                Point.ORIGIN,
                                Length.ofFeet(3),
                                Slope.ofPercent(alongPercent),
                                Slope.ofPercent(inPercent)))
                        .gate(gate.build())
                        .build(),
                USUAL);
    }

    /** The ground rises into the lot alike for both leaves. */
    @Test
    void bothLeavesSwingAndTheSheetSaysWhereTheyDragAndWhatCuresIt() {
        FencePlan plan = onPlane(0, 6, gate(96).twoLeaves(true), Side.RIGHT);
        List<HungLeaf> leaves = plan.gates().get(0).leaves();
        // Open, the latch end is 47.25 + 1.75 in beyond the posts' middles: 2 - 49 x 0.06 = -0.94 in.
        assertThat(leaves)
                .allSatisfy(leaf -> assertThat(
                                leaf.swing().orElseThrow().smallestClearance().inches())
                        .isCloseTo(-0.94, within(0.001)));
        assertThat(plan.findings())
                .filteredOn(finding -> finding.code().equals("gate-drags"))
                .extracting(Finding::place)
                .containsExactly("side 1, gate left leaf, gate swing", "side 1, gate right leaf, gate swing");
        String sheet = BuildSheet.of(plan, Takeoff.of(plan)).toText();
        assertThat(sheet.replaceAll("\\s+", " "))
                .contains("swing: DRAGS, 1\" in the ground at 90 deg open, 3' 11 1/4\" from the hinge edge")
                .contains("opening the other way: clears the ground by")
                .contains("cure: let it open the other way")
                .contains("LEFT LEAF, hinges on post")
                .contains("opens first, carries the latch")
                .contains("held by the drop rod")
                .contains("weighs about 102 lbf");
        assertThat(PlanView.of(plan).shapes())
                .filteredOn(SwingArc.class::isInstance)
                .hasSize(2);
        assertThat(GateView.of(plan.gates().get(0)).description()).contains("two leaves");
    }

    private static FencePlan atPool(GateLocation.Builder gate, Side water, FenceStyle style) {
        PoolBarrier rule = PoolBarrier.builder(water, "pool barrier", PoolBarrier.PUBLISHED)
                .build();
        Site site = levelSide()
                .gate(gate.selfClosing(true).selfLatching(true).lockable(true).build())
                .rules(LocalRules.of(List.of(rule)))
                .build();
        return FencePlanner.plan(site, style);
    }

    /**
     * ISPSC 305 as parameters: away from the water; a release under 54 in has no opening over 1/2 in near it. The lot is
     * on the right of its side.
     */
    @Test
    void aPoolGateIsHeldAgainstItsRule() {
        GateLocation.Builder low = gate(42).latchRelease(Length.ofInches(48), true);
        assertThat(codes(atPool(low, Side.RIGHT, USUAL))).contains("pool-gate-swing");
        FencePlan out = atPool(low.opensOutward(true), Side.RIGHT, USUAL);
        assertThat(codes(out)).noneMatch(code -> code.startsWith("pool-gate"));
        assertThat(codes(atPool(low.opensOutward(false).latchRelease(Length.ofInches(48), false), Side.LEFT, USUAL)))
                .noneMatch(code -> code.startsWith("pool-gate"));
        FenceStyle spaced = FenceStyle.builder()
                .pattern(BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2)))
                .build();
        GateLocation.Builder inside = gate(42).opensOutward(true).latchRelease(Length.ofInches(48), true);
        Finding open = finding(atPool(inside, Side.RIGHT, spaced), "pool-gate-release");
        assertThat(open.place()).isEqualTo("gate");
        assertThat(open.message()).contains("near openings of up to");
        assertThat(out.worksheets()).anyMatch(sheet -> sheet.title().equals("side 1, gate: Pool gate"));
        assertThat(BuildSheet.of(out, Takeoff.of(out)).toText().replaceAll("\\s+", " "))
                .contains("pool barrier: opens away from the water")
                .contains("pool barrier: release of the latch 4' 6\" up or higher, or on the side of the water, 3\" or")
                .contains("release of the latch 4' 0\" above the ground, worked from inside the lot")
                .contains("self-closing gate hinge")
                .contains("self-latching gate latch that takes a lock");
        GateBay other = level(gate(42)).gates().get(0);
        assertThatThrownBy(() -> out.poolBarriers(other)).hasMessageContaining("of another plan");
    }

    @Test
    void aGateThatIsNotSaidToShutItselfIsToldAtAPool() {
        PoolBarrier rule = PoolBarrier.builder(Side.RIGHT, "pool barrier", PoolBarrier.PUBLISHED)
                .build();
        FencePlan plan = FencePlanner.plan(
                levelSide()
                        .gate(gate(42).opensOutward(true).build())
                        .rules(LocalRules.of(List.of(rule)))
                        .build(),
                USUAL);
        assertThat(codes(plan)).contains("pool-gate-closing", "pool-gate-lock", "pool-not-told");
        assertThatThrownBy(() -> gate(42).latchRelease(Length.ZERO, true).build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("release of the latch of gate was 0");
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
        assertThat(level(gate(42), battens).gates().get(0).leaves().get(0).thickness())
                .isEqualTo(Length.ofInches(2.25).plus(battens.battenLumber().thickness()));
        // Too narrow for a board: the frame alone.
        assertThat(thickness(BoardPattern.sideBySide(Length.ofInches(5.5)), 5)).isEqualTo(Length.ofInches(1.5));
    }

    private static Length thickness(BoardPattern pattern, double opening) {
        FenceStyle style = FenceStyle.builder().pattern(pattern).build();
        return level(gate(opening), style).gates().get(0).leaves().get(0).thickness();
    }

    /** At 10 % the strap finds the rail behind it; at 25 % it needs a block, cut to the raked rail. */
    @Test
    void strapsOfARakedLeafLieLevel() {
        FencePlan gentle = onPlane(10, 0, gate(48).raked(true), Side.RIGHT);
        HungLeaf leaf = gentle.gates().get(0).leaves().get(0);
        assertThat(leaf.blocks()).hasSize(1);
        assertThat(codes(gentle)).doesNotContain("hinge-off-frame");
        FencePlan steep = onPlane(25, 0, gate(48).raked(true), Side.RIGHT);
        assertThat(steep.gates().get(0).leaves().get(0).blocks()).hasSize(3);
        assertThat(codes(steep)).doesNotContain("hinge-off-frame");
        assertThat(BuildSheet.of(steep, Takeoff.of(steep)).toText().replaceAll("\\s+", " "))
                .contains("straps level, square to them and not along the rails")
                .contains("fitted to the brace and to the raked rail");
        FenceStyle low = FenceStyle.builder()
                .gateHardware(
                        GateHardware.builder().hingeInset(Length.ofInches(2)).build())
                .build();
        FencePlan told = FencePlanner.plan(steep.site(), low);
        assertThat(finding(told, "hinge-off-frame").remedy()).contains("shorter strap");
    }

    /**
     * A leaf of 17 1/4 in, 3 in deep, pins 1/4 in from it: sqrt(17.75^2 - 17.5^2) = 2.9686 in of its depth is clear, so
     * 0.0314 in must come off.
     */
    @Test
    void aNarrowThickLeafNeedsAChamfer() {
        FencePlan plan = level(gate(18));
        assertThat(plan.gates()
                        .get(0)
                        .leaves()
                        .get(0)
                        .chamfer()
                        .orElseThrow()
                        .alongEdge()
                        .inches())
                .isCloseTo(0.0314, within(0.0001));
        assertThat(finding(plan, "gate-latch-chamfer").place()).isEqualTo("side 1, gate");
        assertThat(codes(level(gate(42)))).doesNotContain("gate-latch-chamfer");
        assertThat(level(gate(42)).gates().get(0).leaves().get(0).chamfer()).isEmpty();
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
                                onPlane(8, 0, gate(42).raked(raked), Side.RIGHT).site(), butts);
                        assertThat(plan.gates().get(0).leaves().get(0).hingeSeats())
                                .hasSize(hinges);
                        assertThat(codes(plan)).doesNotContain("hinge-end-grain", "hinge-screws-end-grain");
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
        FencePlan plan = level(gate(48), poor);
        assertThat(finding(plan, "hinges-usual").place()).isEqualTo("side 1, gate, gate hinges");
        assertThat(finding(plan, "hinge-screws-pull").place()).isEqualTo("side 1, gate, top gate hinge");
        assertThat(plan.gates().get(0).leaves().get(0).blocks()).hasSize(2);
    }

    /** Posts set 1 in further apart leave each leaf 1/2 in more. */
    @Test
    void leavesAreMadeToThePostsAsTheyStand() {
        FencePlan plan = level(gate(96).twoLeaves(true));
        GateBay gate = plan.gates().get(0);
        Post to = gate.to();
        Point moved = to.centre().plus(plan.runs().get(0).postLine().bearing(), Length.ofInches(1));
        GateBay built = plan.withSetPosts(List.of(SetPost.of(to.number(), moved)))
                .gates()
                .get(0);
        assertThat(built.leaves())
                .allSatisfy(leaf -> assertThat(leaf.leaf().width()).isEqualTo(Length.ofInches(47.75)));
    }
}
