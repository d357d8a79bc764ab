package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.footing.EmbedmentRule;
import org.fencecore.footing.FootingDesign;
import org.fencecore.footing.HoleShape;
import org.fencecore.footing.PostSetting;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/** How the owner wants posts set, and what the place says of the frost, reach every footing of a plan. */
class PostSettingInPlanTest {

    private static FenceStyle style(PostSetting.Builder setting) {
        return FenceStyle.builder().setting(setting.build()).build();
    }

    private static FencePlan plan(Site.Builder site, PostSetting.Builder setting) {
        return FencePlanner.plan(site.build(), style(setting));
    }

    @Test
    void everyFootingIsSetAsTheStyleSays() {
        PostSetting.Builder setting = PostSetting.builder()
                .hole(HoleShape.square(Length.ofInches(12)))
                .dryMixBase(Length.ofInches(4))
                .belowFrostLine(Length.ofInches(2))
                .concreteTop(Length.ofInches(-2))
                .crown(Length.ofInches(1))
                .fenceStandardMinimum(true)
                .heldAtGrade(true);
        FencePlan plan = plan(Plans.levelSide().frostDepth(Length.ofInches(48)), setting);

        assertThat(plan.footings()).isNotEmpty().allSatisfy(footing -> {
            assertThat(footing.spec().setting()).isEqualTo(setting.build());
            assertThat(footing.governing().rule()).isEqualTo(EmbedmentRule.FROST);
            assertThat(footing.embedment()).isEqualTo(Length.ofInches(50));
            assertThat(footing.holeDepth()).isEqualTo(Length.ofInches(54));
            assertThat(footing.gravel().isZero()).isTrue();
        });
    }

    /** The diagonal of a square of 12 in is 16.97 in; a bell counts where it is widest. */
    @Test
    void theGroundThatAHoleTakesUpIsMeasuredWhereItIsWidest() {
        Length twelve = Length.ofInches(12);

        assertThat(style(PostSetting.builder().hole(HoleShape.square(twelve)))
                        .holeDiameter()
                        .inches())
                .isCloseTo(16.97, within(0.001));
        assertThat(style(PostSetting.builder().hole(HoleShape.belled(twelve, Length.ofInches(20), twelve)))
                        .holeDiameter())
                .isEqualTo(Length.ofInches(20));
    }

    /** Clay is gripped unless the place says that its ground drains; sand is not unless it says how hard. */
    @Test
    void howHardTheGroundGripsBelongsToThePlace() {
        Site.Builder clay = Plans.levelSide().frostDepth(Length.ofInches(36));

        assertThat(grips(plan(clay, PostSetting.builder()))).isTrue();
        assertThat(grips(plan(clay.frostGrip(Pressure.ZERO), PostSetting.builder())))
                .isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Plans.levelSide().frostGrip(Pressure.ofPascals(1_000_001)))
                .withMessageContaining("it must be from 0 to 1,000 kPa");
    }

    private static boolean grips(FencePlan plan) {
        return plan.findings().stream().map(Finding::code).anyMatch("frost-grip"::equals);
    }

    /** Where fence stands in the ground a post may be no more than 1 ft and the clearance out of it. */
    @Test
    void concreteMustStayBelowTheShortestPost() {
        PostSetting.Builder high = PostSetting.builder().concreteTop(Length.ofInches(11));
        Length two = Length.ofInches(2);

        assertThat(FenceStyle.builder()
                        .slope(SlopeSpec.builder().clearance(two).build())
                        .setting(high.build())
                        .build()
                        .setting()
                        .concreteTop())
                .isEqualTo(Length.ofInches(11));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> style(high.crown(Length.ofInches(3))))
                .withMessageContaining("it must be below the top of the post, 1 ft 2 in");
    }

    @Test
    void aPostWiderThanItsHoleIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> style(PostSetting.builder().holeDiameter(Length.ofInches(4))))
                .withMessageContaining("the post must fit in its hole");
    }

    /** Worked in the documentation of the setting. */
    @Test
    void documentedExample() {
        PostSetting setting = PostSetting.builder()
                .holeDiameter(Length.ofInches(12))
                .belowFrostLine(Length.ofInches(2))
                .concreteTop(Length.ofInches(-2))
                .crown(Length.ofInches(1))
                .build();

        assertThat(setting.holeFor(Length.ofInches(3.5))).hasToString("1' 0\" wide");
        assertThat(setting)
                .hasToString("hole 1' 0\" wide, gravel 6\", concrete to -2\" above grade and crowned by 1\"")
                .isEqualTo(setting)
                .isNotEqualTo(PostSetting.builder().build());
        FootingDesign footing = FencePlanner.plan(
                        Plans.levelSide().frostDepth(Length.ofInches(48)).build(),
                        FenceStyle.builder().setting(setting).build())
                .footings()
                .get(0);
        assertThat(footing.concreteWorksheet().result()).isEqualTo(footing.concrete());
    }
}
