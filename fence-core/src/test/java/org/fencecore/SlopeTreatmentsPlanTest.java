package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.ElevationView;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.Treatment;
import org.fencecore.style.FenceStyle;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whole plans under each treatment of the ground. */
class SlopeTreatmentsPlanTest {

    private static final Site HILL = Site.on(rectangle(50, 40))
            .fenceOn(1)
            .ground(1, shots(0, 0, 20, 0.4, 34, 3.2, 50, 4))
            .build();

    private static FenceStyle style(Treatment treatment) {
        return FenceStyle.builder()
                .slope(SlopeSpec.builder()
                        .treatment(treatment)
                        .maximumGrade(Slope.ofPercent(15))
                        .build())
                .build();
    }

    @ParameterizedTest
    @EnumSource
    void postsReachTheBoardsOfTheirHigherSideAndRailsFollowTheirBay(Treatment treatment) {
        FencePlan plan = FencePlanner.plan(HILL, style(treatment));

        Stretch stretch = plan.runs().get(0).stretches().get(0);
        assertThat(stretch.slope().treatment()).isEqualTo(treatment);
        for (int at = 0; at < plan.posts().size(); at++) {
            assertThat(plan.posts().get(at).exposed())
                    .isEqualTo(stretch.slope().bottomAbove(at).plus(Length.ofFeet(6)));
        }
        for (Bay bay : stretch.bays()) {
            for (RailCut rail : bay.rails()) {
                assertThat(rail.endCut()).isEqualTo(bay.slope().endCut());
                Length below = Length.ofInches(4);
                if (rail.number() == 1) {
                    assertThat(rail.from().bottom())
                            .isEqualTo(bay.slope().aboveStart().plus(below));
                    assertThat(rail.to().bottom())
                            .isEqualTo(bay.slope().aboveEnd().plus(below));
                }
            }
        }
        for (Worksheet sheet : plan.worksheets()) {
            assertThat(sheet.toText()).doesNotContain("null");
        }
        Drawing elevation = ElevationView.of(plan, plan.runs().get(0));
        assertThat(elevation.shapes()).hasSizeGreaterThan(plan.boardCount());
    }

    /** Level rails between 4x4 posts: each as long as its bay is level, and its marks rise on the low post. */
    @Test
    void steppedRailsAreLevel() {
        FencePlan plan = FencePlanner.plan(HILL, style(Treatment.STEPPED));

        Bay bay = plan.bays().get(3);
        RailCut top = bay.rails().get(2);
        assertThat(bay.slope().rise()).isEqualTo(Length.ZERO);
        assertThat(top.length()).isEqualTo(bay.spacing());
        assertThat(top.endCut().degrees()).isZero();
        assertThat(top.from().top().minus(top.to().top())).isEqualTo(bay.slope().groundRise());
        assertThat(Takeoff.of(plan).pieces()).isNotEmpty();
    }

    @Test
    void onLevelGroundEveryTreatmentPlansTheSameFence() {
        FencePlan racked = FencePlanner.plan(Plans.levelSide().build(), style(Treatment.RACKED));
        for (Treatment treatment : Treatment.values()) {
            FencePlan plan = FencePlanner.plan(Plans.levelSide().build(), style(treatment));
            assertThat(plan.posts()).extracting(Post::exposed).containsOnly(Length.ofInches(74));
            for (int bay = 0; bay < plan.bays().size(); bay++) {
                assertThat(plan.bays().get(bay).rails().get(0).length().inches())
                        .isCloseTo(
                                racked.bays().get(bay).rails().get(0).length().inches(), offset(1e-9));
            }
        }
    }
}
