package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.view.ElevationView;
import org.fencecore.rail.RailPiece;
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
            // Flush on the uphill side of a 4x4, whose boards run on at the mean grade of its two bays.
            double before =
                    stretch.bays().get(Math.max(at - 1, 0)).slope().grade().percent();
            double after = stretch.bays()
                    .get(Math.min(at, stretch.bays().size() - 1))
                    .slope()
                    .grade()
                    .percent();
            assertThat(plan.posts().get(at).exposed().inches())
                    .isCloseTo(
                            stretch.slope().bottomAbove(at).inches() + 72 + 1.75 * Math.abs(before + after) / 200,
                            offset(1e-6));
        }
        for (Bay bay : stretch.bays()) {
            for (BayRail rail : bay.rails()) {
                Length below = Length.ofInches(4);
                if (rail.number() == 1) {
                    assertThat(rail.from().bottom())
                            .isEqualTo(bay.slope().aboveStart().plus(below));
                    assertThat(rail.to().bottom())
                            .isEqualTo(bay.slope().aboveEnd().plus(below));
                }
            }
        }
        for (RailPiece piece : stretch.railPieces().orElseThrow().pieces()) {
            for (Bay bay : stretch.bays().subList(piece.fromPost(), piece.toPost())) {
                assertThat(piece.endCut().degrees())
                        .isCloseTo(bay.slope().endCut().degrees(), offset(1e-6));
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
        BayRail top = bay.rails().get(2);
        assertThat(bay.slope().rise()).isEqualTo(Length.ZERO);
        assertThat(plan.stretches().get(0).railPieces().orElseThrow().pieces())
                .allSatisfy(piece -> assertThat(piece.length()).isEqualTo(piece.run()))
                .allSatisfy(piece -> assertThat(piece.endCut().degrees()).isZero());
        assertThat(top.from().top().minus(top.to().top())).isEqualTo(bay.slope().groundRise());
        assertThat(Takeoff.of(plan).pieces()).isNotEmpty();
    }

    @Test
    void onLevelGroundEveryTreatmentPlansTheSameFence() {
        FencePlan racked = FencePlanner.plan(Plans.levelSide().build(), style(Treatment.RACKED));
        for (Treatment treatment : Treatment.values()) {
            FencePlan plan = FencePlanner.plan(Plans.levelSide().build(), style(treatment));
            assertThat(plan.posts()).extracting(Post::exposed).containsOnly(Length.ofInches(74));
            assertThat(plan.stretches()
                            .get(0)
                            .railPieces()
                            .orElseThrow()
                            .worksheet()
                            .toText())
                    .isEqualTo(racked.stretches()
                            .get(0)
                            .railPieces()
                            .orElseThrow()
                            .worksheet()
                            .toText());
        }
    }
}
