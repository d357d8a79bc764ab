package org.fencecore.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/** Holes of other shapes, what they are filled with, loads of gates and corners, and the list of all holes. */
class HoleTest {

    private static final Length THREE_FEET = Length.ofInches(36);

    private static PostSetting.Builder twelveInches() {
        return PostSetting.builder().holeDiameter(Length.ofInches(12));
    }

    private static FootingSpec.Builder post() {
        return post(twelveInches());
    }

    private static FootingSpec.Builder post(PostSetting.Builder setting) {
        return FootingSpec.builder()
                .exposedHeight(Length.ofFeet(6))
                .soil(SoilClass.SAND)
                .frostDepth(Length.ZERO)
                .setting(setting.build());
    }

    private static FootingDesign design(FootingSpec.Builder spec) {
        return FootingDesign.forPost(LateralLoad.NONE, spec.build());
    }

    private static List<String> codes(FootingDesign footing) {
        return footing.findings().stream().map(Finding::code).toList();
    }

    /**
     * By hand, in cubic inches: a cylinder 12 wide 4071.5; a box 12 square 5184; a cone stump 12 to 18 pi / 12 x 36 x (144 +
     * 216 + 324) = 6446.5; a bell of 8: 113.097 x 28 + pi / 12 x 8 x 684 = 3166.7 + 1432.6 = 4599.3.
     */
    @Test
    void volumes() {
        Length foot = Length.ofInches(12);
        Length wide = Length.ofInches(18);

        assertThat(HoleShape.round(foot).volume(THREE_FEET).cubicFeet()).isCloseTo(4071.5 / 1728, within(0.0001));
        assertThat(HoleShape.square(foot).volume(THREE_FEET).cubicFeet()).isCloseTo(3, within(1e-9));
        assertThat(HoleShape.tapered(foot, wide).volume(THREE_FEET).cubicFeet())
                .isCloseTo(6446.5 / 1728, within(0.0001));
        HoleShape belled = HoleShape.belled(foot, wide, Length.ofInches(8));
        assertThat(belled.volume(THREE_FEET).cubicFeet()).isCloseTo(4599.3 / 1728, within(0.0001));
        assertThat(belled.bearingWidth()).isEqualTo(foot);
        assertThat(belled.bell()).contains(Length.ofInches(8));
        assertThat(belled.widest()).isEqualTo(wide);
        assertThat(belled.isSquare()).isFalse();
        assertThat(HoleShape.square(foot).isSquare()).isTrue();
        assertThat(HoleShape.square(foot).widest().inches()).isCloseTo(12 * Math.sqrt(2), within(1e-7));
        assertThat(belled)
                .isEqualTo(HoleShape.belled(foot, wide, Length.ofInches(8)))
                .hasSameHashCodeAs(HoleShape.belled(foot, wide, Length.ofInches(8)))
                .isNotEqualTo(HoleShape.belled(foot, wide, Length.ofInches(9)))
                .doesNotHaveSameHashCodeAs(HoleShape.belled(foot, wide, Length.ofInches(9)));
        assertThat(belled).hasToString("1' 0\" wide, belled in its lowest 8\" to 1' 6\"");
        // Part by part they add up.
        assertThat(belled.volume(Length.ZERO, Length.ofInches(5), THREE_FEET)
                        + belled.volume(Length.ofInches(5), Length.ofInches(20), THREE_FEET)
                        + belled.volume(Length.ofInches(20), THREE_FEET, THREE_FEET))
                .isCloseTo(belled.volume(THREE_FEET).cubicMetres(), within(1e-12));
    }

    /**
     * By hand: 36 in of embedment, 6 in of base, 12 in wide, a 4x4. Around the post (113.097 - 12.25) x 36 = 3630.5; base
     * 113.097 x 6 = 678.6; a crown of 1 in: (113.097 + sqrt(113.097 x 12.25) + 12.25) / 3 - 12.25 = 41.94 cu in.
     */
    @Test
    void fillings() {
        FootingDesign gravel = design(post());
        FootingDesign dryMix = design(post(twelveInches().dryMixBase(Length.ofInches(6))));
        FootingDesign crowned = design(post(twelveInches().crown(Length.ofInches(1))));

        assertThat(gravel.concrete().cubicFeet()).isCloseTo(3630.5 / 1728, within(0.0001));
        assertThat(gravel.gravel().cubicFeet()).isCloseTo(678.6 / 1728, within(0.0001));
        assertThat(dryMix.holeDepth()).isEqualTo(gravel.holeDepth());
        assertThat(dryMix.gravel().isZero()).isTrue();
        assertThat(dryMix.spec().setting().isDryMixBase()).isTrue();
        assertThat(dryMix.concrete().cubicFeet()).isCloseTo((3630.5 + 678.6) / 1728, within(0.0001));
        assertThat(crowned.concrete().cubicFeet()).isCloseTo((3630.5 + 41.94) / 1728, within(0.0001));
        for (FootingDesign each : List.of(gravel, dryMix, crowned)) {
            assertThat(each.concreteWorksheet().result()).isEqualTo(each.concrete());
        }
    }

    @Test
    void concreteBelowGradeSlopedAway() {
        FootingDesign footing =
                design(post(twelveInches().concreteTop(Length.ofInches(-2)).crown(Length.ofInches(1))));

        assertThat(footing.concrete().cubicFeet()).isCloseTo((3630.5 * 34 / 36 + 41.94) / 1728, within(0.0001));
    }

    @Test
    void belowTheFrostLine() {
        FootingDesign footing =
                design(post(twelveInches().belowFrostLine(Length.ofInches(3))).frostDepth(Length.ofInches(42)));

        assertThat(footing.governing().rule()).isEqualTo(EmbedmentRule.FROST);
        assertThat(footing.embedment()).isEqualTo(Length.ofInches(45));
        assertThat(footing.worksheet().toText()).contains("frost depth + how far below it = 42 in + 3 in");
    }

    @Test
    void frostMayLiftAStraightShaftInClay() {
        FootingSpec.Builder clay = post().soil(SoilClass.CLAY).frostDepth(THREE_FEET);

        assertThat(codes(design(clay))).contains("frost-grip");
        assertThat(codes(design(clay.frostGrip(Pressure.ZERO)))).doesNotContain("frost-grip");
        assertThat(codes(design(post().frostDepth(THREE_FEET)))).doesNotContain("frost-grip");
        assertThat(codes(design(
                        post(PostSetting.builder().hole(HoleShape.tapered(Length.ofInches(14), Length.ofInches(10)))))))
                .contains("hole-wider-at-top");
    }

    @Test
    void aBellHoldsBetterThanAStraightShaft() {
        FootingSpec.Builder clay = post().soil(SoilClass.CLAY).frostDepth(Length.ofInches(12));
        FootingDesign straight = design(clay);
        FootingDesign belled = design(clay.setting(PostSetting.builder()
                .hole(HoleShape.belled(Length.ofInches(12), Length.ofInches(20), Length.ofInches(8)))
                .build()));
        Pressure grip = Pressure.ofPascals(65_000);

        assertThat(FrostGrip.on(belled, Length.ofInches(12), grip).hold())
                .isGreaterThan(FrostGrip.on(straight, Length.ofInches(12), grip).hold());
        assertThat(FrostGrip.on(belled, Length.ofInches(12), grip).lift())
                .isEqualTo(FrostGrip.on(straight, Length.ofInches(12), grip).lift());
    }

    /**
     * By hand: a shaft 12 in wide and 36 in deep with 12 in of frost has pi x 1 ft x 1 ft = 3.1416 sq ft in frozen ground, on
     * which 1,000 psf lift with 3141.6 lbf. Its 2.1010 cu ft of concrete weigh 304.6 lb; below the frost 130 psf on pi x 1 ft
     * x 2 ft hold another 816.8 lbf in clay. A bell from 12 to 20 in in the lowest 8 in of the hole, of which 6 in are
     * gravel, makes the concrete 2.1240 cu ft or 308.0 lb, and has 2 ft of soil of 100 pcf on a ring of 1.3963 sq ft, 279.3
     * lbf.
     */
    @Test
    void whatLiftsAndWhatHolds() {
        Length frost = Length.ofInches(12);
        Pressure grip = Pressure.ofPsf(1000);
        FootingSpec.Builder clay = post().soil(SoilClass.CLAY).frostDepth(frost);

        FrostGrip straight = FrostGrip.on(design(clay), frost, grip);
        assertThat(straight.lift().poundsForce()).isCloseTo(3141.6, within(0.05));
        assertThat(straight.hold().poundsForce()).isCloseTo(304.6 + 816.8, within(0.1));
        assertThat(FrostGrip.on(design(post().frostDepth(frost)), frost, grip)
                        .hold()
                        .poundsForce())
                .isCloseTo(304.6, within(0.05));
        HoleShape bell = HoleShape.belled(Length.ofInches(12), Length.ofInches(20), Length.ofInches(8));
        assertThat(FrostGrip.on(
                                design(clay.setting(
                                        PostSetting.builder().hole(bell).build())),
                                frost,
                                grip)
                        .hold()
                        .poundsForce())
                .isCloseTo(308.0 + 816.8 + 279.3, within(0.2));
    }

    /** 300 and 400 lbf at a right angle are 500; straight on 700; 60 degrees sqrt(9 + 16 + 12) = 608.3. */
    @Test
    void aCornerPostIsPushedByBothRuns() {
        LateralLoad one = LateralLoad.of(Force.ofPoundsForce(300), Length.ofFeet(3));
        LateralLoad other = LateralLoad.of(Force.ofPoundsForce(400), Length.ofFeet(3));

        LateralLoad corner = one.together(other, Angle.ofDegrees(90));
        assertThat(corner.force().poundsForce()).isCloseTo(500, within(1e-6));
        assertThat(corner.height().feet()).isCloseTo(3, within(1e-8));
        assertThat(one.together(other, Angle.ZERO).force().poundsForce()).isCloseTo(700, within(1e-6));
        assertThat(one.together(other, Angle.ofDegrees(60)).force().poundsForce())
                .isCloseTo(608.28, within(0.01));
        assertThat(one.together(other, Angle.ofDegrees(120)).force().poundsForce())
                .isCloseTo(608.28, within(0.01));
        assertThat(one.together(LateralLoad.NONE, Angle.ofDegrees(90))).isEqualTo(one);
        assertThat(LateralLoad.NONE.together(one, Angle.ofDegrees(90))).isEqualTo(one);
        FootingDesign footing = FootingDesign.forPost(corner, post().build());
        assertThat(footing.worksheet().result()).isEqualTo(footing.embedment());
        assertThat(footing.worksheet().toText()).contains("sqrt((300 lbf)^2 + (400 lbf)^2 + 2 x");
    }

    /** By hand: 300 lbf 3 ft up and a gate of 80 lb 2 ft off: (900 + 160) / 300 = 3.5333 ft. */
    @Test
    void aGatePostStandsDeeper() {
        LateralLoad wind = LateralLoad.of(Force.ofPoundsForce(300), Length.ofFeet(3));
        LateralLoad hinge = wind.withGate(Moment.ofPoundFeet(160));
        FootingDesign latchPost = FootingDesign.forPost(wind, post().build());
        FootingDesign hingePost = FootingDesign.forPost(hinge, post().build());
        FootingDesign asHigher = FootingDesign.forPost(
                LateralLoad.of(Force.ofPoundsForce(300), Length.ofFeet(1060 / 300.0)), post().build());

        assertThat(hinge.moment().poundFeet()).isCloseTo(1060, within(1e-6));
        assertThat(hingePost.governing().depth())
                .isGreaterThan(latchPost.governing().depth());
        assertThat(hingePost.governing().depth().inches())
                .isCloseTo(asHigher.governing().depth().inches(), within(1e-4));
        assertThat(hingePost.worksheet().toText()).contains("h + Mg / P = 3 ft + 160 lbf-ft / 300 lbf = 3.5333 ft");

        LateralLoad gateAlone = LateralLoad.NONE.withGate(Moment.ofPoundFeet(160));
        FootingDesign noWind = FootingDesign.forPost(gateAlone, post().build());
        assertThat(gateAlone.isNone()).isFalse();
        assertThat(gateAlone.knowsPush()).isFalse();
        assertThat(codes(noWind)).contains("wind-not-checked");
        assertThat(noWind.criteria().get(0).rule()).isEqualTo(EmbedmentRule.LATERAL_BEARING);
        assertThat(noWind.worksheet().result()).isEqualTo(noWind.embedment());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> wind.withGate(Moment.ofPoundFeet(-1)))
                .withMessageContaining("moment was -1 lbf-ft");
    }

    @Test
    void holesOfAJob() {
        FootingDesign line = design(post());
        FootingDesign gate = design(
                post(twelveInches().minimumEmbedment(Length.ofInches(47.3)).roundUpTo(Length.ofInches(0.1))));
        List<FootingDesign> footings = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            footings.add(line);
        }
        footings.add(4, gate);
        HoleList holes = HoleList.of(footings);

        assertThat(holes).hasToString("9 of 1' 0\" wide, 3' 6\" deep; 1 of 1' 0\" wide, 4' 6\" deep");
        assertThat(holes.groups().get(0).places()).containsExactly(1, 2, 3, 4, 6, 7, 8, 9, 10);
        assertThat(holes.groups().get(1).places()).containsExactly(5);
        assertThat(holes.count()).isEqualTo(10);
        // 2.1010 cu ft in 80 lb bags of 0.60: 4 each, and 5 for the gate post's 2.7605.
        assertThat(holes.bags(BagSize.POUNDS_80)).isEqualTo(9 * 4 + 5);
        assertThat(holes.bagsMixedTogether(BagSize.POUNDS_80)).isEqualTo(37);
        assertThat(holes.concrete().cubicFeet()).isCloseTo(9 * 2.1010 + 2.7605, within(0.001));
        assertThat(holes.concreteWeight().pounds())
                .isCloseTo(145 * holes.concrete().cubicFeet(), within(1e-6));
        assertThat(holes.gravel().cubicFeet()).isCloseTo(10 * 678.6 / 1728, within(0.001));
        assertThat(holes)
                .isEqualTo(HoleList.of(footings))
                .hasSameHashCodeAs(HoleList.of(footings))
                .isNotEqualTo(HoleList.of(footings.subList(0, 9)))
                .doesNotHaveSameHashCodeAs(HoleList.of(footings.subList(0, 9)));
        assertThat(HoleList.of(List.of(gate, line, line)))
                .as("the most first, whatever comes first along the fence")
                .hasToString("2 of 1' 0\" wide, 3' 6\" deep; 1 of 1' 0\" wide, 4' 6\" deep");
        assertThat(HoleList.of(List.of()).groups()).isEmpty();
        assertThat(HoleList.of(List.of()).bags(BagSize.POUNDS_80)).isZero();
    }

    /**
     * Embedments of 41.2 and 41.9 in are dug alike, 48 in with the base, and get the bags of the deeper one: 100.847 sq in x
     * 41.9 in = 2.4453 cu ft, 5 bags of 0.6 cu ft; with 2.4045 cu ft the other takes 5 as well.
     */
    @Test
    void holesThatAreDugAlikeAreFilledAlike() {
        List<FootingDesign> footings = new ArrayList<>();
        for (double inches : new double[] {41.2, 41.9}) {
            footings.add(design(post(
                    twelveInches().minimumEmbedment(Length.ofInches(inches)).roundUpTo(Length.ofInches(0.1)))));
        }
        HoleList holes = HoleList.of(footings);

        assertThat(holes.groups()).hasSize(1);
        assertThat(holes.groups().get(0).depth()).isEqualTo(Length.ofInches(48));
        assertThat(holes.groups().get(0).concrete()).isEqualTo(footings.get(1).concrete());
        assertThat(holes.groups().get(0).concrete().cubicFeet()).isCloseTo(2.4453, within(0.0005));
        assertThat(holes.groups().get(0).bagsEach(BagSize.POUNDS_80)).isEqualTo(5);
        assertThat(holes.bags(BagSize.POUNDS_80)).isEqualTo(10);
    }

    @Test
    void aPostMustFitItsHole() {
        Length four = Length.ofInches(4);

        assertThat(design(post(PostSetting.builder().hole(HoleShape.square(four))))
                        .holeDiameter())
                .isEqualTo(four);
        assertThat(codes(design(post(PostSetting.builder().hole(HoleShape.square(four))))))
                .contains("narrow-hole");
        // 4 in more than a post of 3 1/2 in are room enough.
        assertThat(codes(design(post(PostSetting.builder().hole(HoleShape.square(Length.ofInches(7.5)))))))
                .doesNotContain("narrow-hole");
        assertThat(PostSetting.builder().hole(HoleShape.square(four)).build().hole())
                .contains(HoleShape.square(four));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> design(post(PostSetting.builder().hole(HoleShape.round(four)))))
                .withMessageContaining("the post must fit in its hole");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        design(post(PostSetting.builder().hole(HoleShape.tapered(Length.ofInches(12), four)))))
                .withMessageContaining("the post must fit in its hole");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HoleShape.belled(Length.ofInches(12), four, four))
                .withMessageContaining("atBottom was");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> post().frostGrip(Pressure.ofPascals(2_000_000)))
                .withMessageContaining("stress was");
    }
}
