package org.fencecore.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

/**
 * A case worked by hand, and what the design does with the rest of its options.
 *
 * <p>By hand: a 6 ft shadowbox fence, its boards from 2 in to 6 ft 2 in above grade, posts 8 ft apart, 15 psf of wind,
 * class 4 soil, 24 in of frost, a 4x4 post in a hole three posts wide.
 *
 * <pre>
 *   force      P = 15 psf x 8 ft x 6 ft = 720 lbf
 *   height     h = the higher of 0.55 x 74 in = 40.7 in and (2 + 74) / 2 = 38 in; 40.7 in = 3.3917 ft
 *   hole       b = 3 x 3 1/2 in = 10 1/2 in = 0.875 ft
 *   try        d = 7.57 ft: S1 = 150 x 7.57 / 3 = 378.5 psf, A = 2.34 x 720 / (378.5 x 0.875) = 5.0872 ft,
 *              d = 0.5 x 5.0872 x (1 + sqrt(1 + 4.36 x 3.3917 / 5.0872)) = 2.5436 x (1 + 1.9765) = 7.571 ft
 *   check      the cubic d^3 - K d - 1.09 K h with K = 7.02 x 720 / (150 x 0.875) = 38.510 ft2 and
 *              1.09 K h = 142.37 ft3: at 7.570 ft it is -0.09, at 7.571 ft +0.05; so d = 7.571 ft = 90.85 in
 *   others     frost 24 in, minimum 24 in, a third of the post 74 / 2 = 37 in
 *   embedment  90.85 in, up to 91 in; hole 91 + 6 = 97 in; post 74 + 91 = 165 in
 *   concrete   (pi / 4 x 10.5^2 - 3.5^2) x 91 = (86.590 - 12.25) x 91 = 6764.9 cu in = 3.915 cu ft,
 *              in 80 lb bags 3.915 / 0.60 = 6.5, so 7
 *   gravel     86.590 x 6 = 519.5 cu in = 0.3007 cu ft
 * </pre>
 */
class FootingDesignTest {

    private static final LateralLoad WIND =
            LateralLoad.ofPressure(Pressure.ofPsf(15), Length.ofFeet(8), Length.ofInches(2), Length.ofInches(74));

    private static final FootingSpec SHADOWBOX = shadowbox().build();

    private static FootingSpec.Builder shadowbox() {
        return FootingSpec.builder()
                .postWidth(Length.ofInches(3.5))
                .exposedHeight(Length.ofFeetAndInches(6, 2))
                .soil(SoilClass.SAND)
                .frostDepth(Length.ofInches(24));
    }

    @Test
    void theCaseWorkedByHand() {
        FootingDesign footing = FootingDesign.forPost(WIND, SHADOWBOX);

        assertThat(footing.load().force().poundsForce()).isCloseTo(720, within(1e-9));
        assertThat(footing.load().height()).isEqualTo(Length.ofInches(40.7));
        assertThat(footing.governing().rule()).isEqualTo(EmbedmentRule.LATERAL_BEARING);
        assertThat(footing.governing().depth().inches()).isCloseTo(90.85, within(0.01));
        assertThat(footing.embedment()).isEqualTo(Length.ofInches(91));
        assertThat(footing.holeDiameter()).isEqualTo(Length.ofInches(10.5));
        assertThat(footing.holeDepth()).isEqualTo(Length.ofInches(97));
        assertThat(footing.postLength()).isEqualTo(Length.ofInches(165));
        assertThat(footing.concrete().cubicFeet()).isCloseTo(3.915, within(0.0005));
        assertThat(footing.bags(BagSize.POUNDS_80)).isEqualTo(7);
        assertThat(footing.gravel().cubicFeet()).isCloseTo(0.3007, within(0.0001));
    }

    @Test
    void everyCriterionIsListedWithHowFarItFallsShort() {
        FootingDesign footing = FootingDesign.forPost(WIND, SHADOWBOX);

        assertThat(footing.criteria())
                .extracting(EmbedmentCriterion::rule)
                .containsExactly(
                        EmbedmentRule.LATERAL_BEARING,
                        EmbedmentRule.FROST,
                        EmbedmentRule.MINIMUM,
                        EmbedmentRule.THIRD_OF_POST);
        EmbedmentCriterion third = footing.criteria().get(3);
        assertThat(third.depth()).isEqualTo(Length.ofInches(37));
        assertThat(third.source()).isEqualTo(Citation.COMMON_PRACTICE);
        assertThat(third.shortOf(footing.governing()).inches()).isCloseTo(53.85, within(0.01));
    }

    @Test
    void withoutWindTheUsualMinimumsDecideAndAFindingSaysSo() {
        FootingDesign footing = FootingDesign.forPost(LateralLoad.NONE, SHADOWBOX);

        assertThat(footing.governing().rule()).isEqualTo(EmbedmentRule.THIRD_OF_POST);
        assertThat(footing.embedment()).isEqualTo(Length.ofInches(37));
        assertThat(codes(footing)).containsExactly("wind-not-checked", "local-code");
        assertThat(footing.findings().get(0).severity()).isEqualTo(Severity.WARNING);
    }

    @Test
    void equalDepthsAreGovernedByTheRuleListedFirst() {
        FootingSpec spec = shadowbox()
                .setting(PostSetting.builder().thirdOfPostInGround(false).build())
                .build();
        FootingDesign footing = FootingDesign.forPost(LateralLoad.NONE, spec);

        assertThat(footing.embedment()).isEqualTo(Length.ofInches(24));
        assertThat(footing.governing().rule()).isEqualTo(EmbedmentRule.FROST);
    }

    @Test
    void theEmbedmentIsRoundedUpToTheIncrement() {
        FootingSpec spec = shadowbox()
                .exposedHeight(Length.ofMillimetres(1880))
                .setting(PostSetting.builder()
                        .roundUpTo(Length.ofMillimetres(50))
                        .build())
                .build();
        FootingDesign footing = FootingDesign.forPost(LateralLoad.NONE, spec);

        assertThat(footing.governing().depth()).isEqualTo(Length.ofMillimetres(940));
        assertThat(footing.embedment()).isEqualTo(Length.ofMillimetres(950));
    }

    @Test
    void gravelLengthensTheHoleOnly() {
        FootingDesign with = FootingDesign.forPost(WIND, SHADOWBOX);
        FootingDesign without = FootingDesign.forPost(
                WIND,
                shadowbox()
                        .setting(PostSetting.builder().gravelBase(Length.ZERO).build())
                        .build());

        assertThat(without.embedment()).isEqualTo(with.embedment());
        assertThat(without.concrete()).isEqualTo(with.concrete());
        assertThat(without.holeDepth()).isEqualTo(without.embedment());
        assertThat(without.gravel().isZero()).isTrue();
    }

    /**
     * Concrete stopped 6 in below grade: the ground above it is not counted, so the post is reckoned as if grade were
     * 6 in lower and the wind 6 in higher. The cubic with h = 3.3917 + 0.5 = 3.8917 ft has its root at 7.724 ft; with
     * the 6 in on top it is 8.224 ft or 98.69 in, up to 99 in.
     */
    @Test
    void groundAboveConcreteThatStopsBelowGradeIsNotCounted() {
        FootingDesign footing = FootingDesign.forPost(
                WIND,
                shadowbox()
                        .setting(PostSetting.builder()
                                .concreteTop(Length.ofInches(-6))
                                .build())
                        .build());

        double d = 7.724;
        double k = 7.02 * 720 / (150 * 0.875);
        assertThat(d * d * d - k * d - 1.09 * k * 3.8917).isCloseTo(0, within(0.05));
        assertThat(footing.governing().depth().inches()).isCloseTo(98.69, within(0.01));
        assertThat(footing.concrete().cubicFeet()).isCloseTo(74.340 * (99 - 6) / 1728, within(0.0005));
    }

    @Test
    void crownedConcreteTakesMoreButBearsNoMore() {
        FootingDesign footing = FootingDesign.forPost(
                WIND,
                shadowbox()
                        .setting(PostSetting.builder()
                                .concreteTop(Length.ofInches(2))
                                .build())
                        .build());

        assertThat(footing.embedment()).isEqualTo(Length.ofInches(91));
        assertThat(footing.concrete().cubicFeet()).isCloseTo(74.340 * (91 + 2) / 1728, within(0.0005));
    }

    @Test
    void theUsualDesignHasNotesOnly() {
        FootingDesign footing = FootingDesign.forPost(WIND, SHADOWBOX);

        assertThat(codes(footing))
                .containsExactly(
                        "lateral-bearing-governs", "presumptive-soil", "post-strength-not-checked", "local-code");
        assertThat(footing.findings()).allMatch(finding -> finding.severity() == Severity.NOTE);
        assertThat(footing.findings().get(0).message())
                .isEqualTo(
                        "lateral soil bearing asks for 7' 6 7/8\", 4' 5 7/8\" more than a third of the post in the ground");
    }

    @Test
    void aGoverningFrostNeedsNoRemark() {
        FootingDesign footing = FootingDesign.forPost(
                WIND, shadowbox().frostDepth(Length.ofFeet(8)).build());

        assertThat(footing.embedment()).isEqualTo(Length.ofInches(96));
        assertThat(codes(footing)).containsExactly("presumptive-soil", "post-strength-not-checked", "local-code");
    }

    @Test
    void unknownFrostIsAWarningAndNoFrostIsNot() {
        FootingSpec unknown = FootingSpec.builder()
                .exposedHeight(Length.ofFeetAndInches(6, 2))
                .soil(SoilClass.SAND)
                .build();
        FootingSpec none = shadowbox().frostDepth(Length.ZERO).build();

        assertThat(codes(FootingDesign.forPost(WIND, unknown))).contains("frost-not-checked");
        assertThat(codes(FootingDesign.forPost(WIND, none))).doesNotContain("frost-not-checked");
        assertThat(FootingDesign.forPost(WIND, unknown).criteria())
                .extracting(EmbedmentCriterion::rule)
                .doesNotContain(EmbedmentRule.FROST);
    }

    @Test
    void doubledBearingIsShallowerAndWarned() {
        FootingDesign footing =
                FootingDesign.forPost(WIND, shadowbox().doubledBearing(true).build());

        // K halves to 19.255 and 1.09 K h to 71.18: 5.645 ft makes the cubic 179.88 - 108.69 - 71.18 = 0.01, so it is
        // 5.645 ft or 67.74 in.
        assertThat(footing.governing().depth().inches()).isCloseTo(67.74, within(0.02));
        Finding finding = find(footing, "doubled-bearing");
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.message()).contains("300 psf/ft", "1/2 in");
        assertThat(finding.source())
                .hasValueSatisfying(source -> assertThat(source.section()).contains("1806.3.4"));
    }

    @Test
    void beyondTwelveFeetIsABlocker() {
        LateralLoad heavy = LateralLoad.of(Force.ofPoundsForce(2200), Length.ofFeet(4));
        FootingDesign footing = FootingDesign.forPost(heavy, SHADOWBOX);

        assertThat(footing.governing().depth()).isGreaterThan(Length.ofFeet(12));
        Finding finding = footing.findings().get(0);
        assertThat(finding.code()).isEqualTo("bearing-over-12-ft");
        assertThat(finding.severity()).isEqualTo(Severity.BLOCKER);
        assertThat(finding.remedy()).contains("engineer");
    }

    /** The diagonal of a 3 1/2 in post is 4.95 in; with 4 in more the hole is 8.95 in. */
    @Test
    void aHoleHardlyWiderThanThePostIsAWarning() {
        FootingSpec narrow = shadowbox()
                .setting(PostSetting.builder().holeDiameter(Length.ofInches(8)).build())
                .build();
        FootingSpec wide = shadowbox()
                .setting(PostSetting.builder().holeDiameter(Length.ofInches(9)).build())
                .build();

        Finding finding = find(FootingDesign.forPost(WIND, narrow), "narrow-hole");
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.message())
                .isEqualTo(
                        "the hole is 8\" wide, less than 4 in more than the post's diagonal of 5\", so concrete may not fill"
                                + " in around it");
        assertThat(finding.remedy()).isEqualTo("dig it 9\" wide or more");
        assertThat(codes(FootingDesign.forPost(WIND, wide))).doesNotContain("narrow-hole");
    }

    @Test
    void everyDesignDefersToLocalCodeAndEngineerWithoutPromises() {
        for (LateralLoad load : List.of(LateralLoad.NONE, WIND)) {
            FootingDesign footing = FootingDesign.forPost(load, SHADOWBOX);
            assertThat(find(footing, "local-code").message()).contains("local code", "licensed engineer");
            assertThat(footing.findings().toString() + footing.worksheet() + footing.concreteWorksheet())
                    .doesNotContainIgnoringCase("safe")
                    .doesNotContainIgnoringCase("compliant");
        }
    }

    @Test
    void theWorksheetShowsTheCaseWorkedByHand() {
        FootingDesign footing = FootingDesign.forPost(WIND, SHADOWBOX);

        assertThat(footing.worksheet().result()).isEqualTo(footing.embedment());
        assertThat(footing.worksheet().toText().lines())
                .containsExactly(
                        "Embedment of a post",
                        "  wind pressure, allowable stress level = 15 psf   [given]",
                        "  tributary width of fence = 8' 0\"   [given]",
                        "  bottom of the wind's surface above grade = 2\"   [given]",
                        "  top of the wind's surface above grade = 6' 2\"   [given]",
                        "  force P = pressure x width x (top - bottom) = 15 psf x 8 ft x (6.1667 ft - 0.1667 ft) = 720 lbf",
                        "  height h of P above grade = larger of 0.55 top and (bottom + top) / 2"
                                + " = larger of 0.55 x 6.1667 ft and (0.1667 ft + 6.1667 ft) / 2 = 3.3917 ft"
                                + "   [ASCE 7-16, figure 29.3-1, resultant at 0.55 h for s/h = 1, else at mid-height]",
                        "  width b bearing on the soil = hole diameter = 10.5 in = 0.875 ft   [IBC 2018, section 1807.3.2.1]",
                        "  gravel base, below the post and not counted as embedment = 6\"   [given]",
                        "  lateral bearing S of sand, silty or clayey sand, silty or clayey gravel = 150 psf/ft"
                                + "   [IBC 2012, table 1806.2, class 4]",
                        "  depth d to be found, at which the last formula below gives d again = 7.5707 ft"
                                + "   [IBC 2018, section 1807.3.2.1]",
                        "  bearing S1 at a third of the depth = S x d / 3 = 150 psf/ft x 7.5707 ft / 3 = 378.53 psf"
                                + "   [IBC 2018, section 1807.3.2.1]",
                        "  A = 2.34 P / (S1 b) = 2.34 x 720 lbf / (378.53 psf x 0.875 ft) = 5.0867 ft   [IBC 2018, section 1807.3.2.1]",
                        "  depth for lateral soil bearing = 0.5 A (1 + sqrt(1 + 4.36 h / A))"
                                + " = 0.5 x 5.0867 ft x (1 + sqrt(1 + 4.36 x 3.3917 ft / 5.0867 ft)) = 7.5707 ft = 7' 6 7/8\""
                                + "   [IBC 2018, section 1807.3.2.1, equation 18-1]",
                        "  depth for frost = 2' 0\"   [IRC, section R403.1.4.1; local frost depth as given]",
                        "  depth for the least embedment = 2' 0\""
                                + "   [USDA NRCS Conservation Practice Standard 382 (Fence) Kentucky 2007, wood line posts]",
                        "  depth for a third of the post in the ground = height above grade / 2 = 74 in / 2 = 3' 1\""
                                + "   [common practice, no source]",
                        "  embedment = deepest, rounded up to 1\" = 90.8479 in, by lateral soil bearing = 7' 7\""
                                + "   [common practice, no source]");
    }

    @Test
    void theConcreteWorksheetEndsInTheConcrete() {
        FootingDesign footing = FootingDesign.forPost(WIND, SHADOWBOX);
        Worksheet sheet = footing.concreteWorksheet();

        assertThat(sheet.result()).isEqualTo(footing.concrete());
        assertThat(sheet.toText())
                .contains("hole depth = embedment + gravel base = 91 in + 6 in = 8' 1\"")
                .contains(
                        "concrete = (pi / 4 x hole^2 - post^2) x height = (0.7854 x (10.5 in)^2 - (3.5 in)^2) x 91 in / 1728"
                                + " = 3.915 cu ft");
    }

    @Test
    void worksheetsFollowTheOptions() {
        FootingSpec spec = shadowbox()
                .soil(SoilClass.ofLateralBearing("the soils report", UnitWeight.ofPcf(180)))
                .doubledBearing(true)
                .setting(PostSetting.builder().concreteTop(Length.ofInches(-6)).build())
                .build();
        FootingDesign footing = FootingDesign.forPost(LateralLoad.of(Force.ofPoundsForce(500), Length.ofFeet(3)), spec);

        assertThat(footing.worksheet().result()).isEqualTo(footing.embedment());
        assertThat(footing.worksheet().toText())
                .contains("lateral bearing S of the soils report = 180 psf/ft   [given]")
                .contains("S doubled for a post that may move 1/2 in at grade = 2 S = 2 x 180 psf/ft = 360 psf/ft")
                .contains("ground above the concrete, not counted = 6\"")
                .contains("height h of P above the top of the concrete = 3 ft + 0.5 ft = 3.5 ft");
        assertThat(codes(footing)).doesNotContain("presumptive-soil");
    }

    @Test
    void equalInputsGiveEqualDesigns() {
        FootingDesign one = FootingDesign.forPost(WIND, SHADOWBOX);
        FootingDesign same = FootingDesign.forPost(
                LateralLoad.ofPressure(Pressure.ofPsf(15), Length.ofFeet(8), Length.ofInches(2), Length.ofInches(74)),
                shadowbox().build());

        assertThat(one).isEqualTo(same).hasSameHashCodeAs(same);
        assertThat(one)
                .isNotEqualTo(FootingDesign.forPost(LateralLoad.NONE, SHADOWBOX))
                .doesNotHaveSameHashCodeAs(FootingDesign.forPost(LateralLoad.NONE, SHADOWBOX));
        assertThat(one).isNotEqualTo(FootingDesign.forPost(WIND, SHADOWBOX.withExposedHeight(Length.ofFeet(6))));
        assertThat(one).hasToString("post embedded 7' 7\" by lateral soil bearing, hole 10 1/2\" wide and 8' 1\" deep");
    }

    @Test
    void nullsAreNamed() {
        assertThatNullPointerException()
                .isThrownBy(() -> FootingDesign.forPost(nothing(), SHADOWBOX))
                .withMessage("load");
        assertThatNullPointerException()
                .isThrownBy(() -> FootingDesign.forPost(WIND, nothing()))
                .withMessage("spec");
    }

    @SuppressWarnings({"NullAway", "TypeParameterUnusedInFormals"}) // what an unchecked caller would pass
    private static <T> T nothing() {
        return null;
    }

    @Test
    void bagsAreRoundedUp() {
        FootingDesign footing = FootingDesign.forPost(WIND, SHADOWBOX);
        BagSize exact =
                new BagSize(BagSize.POUNDS_80.weight(), footing.concrete().dividedBy(4));
        BagSize little =
                new BagSize(BagSize.POUNDS_80.weight(), footing.concrete().dividedBy(4.001));

        assertThat(footing.bags(exact)).isEqualTo(4);
        assertThat(footing.bags(little)).isEqualTo(5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BagSize(exact.weight(), exact.yield().negated()))
                .withMessageContaining("yield was -0.979 cu ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BagSize(exact.weight().negated(), exact.yield()))
                .withMessageContaining("weight was -80 lb");
    }

    private static List<String> codes(FootingDesign footing) {
        return footing.findings().stream().map(Finding::code).toList();
    }

    private static Finding find(FootingDesign footing, String code) {
        return footing.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
