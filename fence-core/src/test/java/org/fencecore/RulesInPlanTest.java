package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fencecore.Plans.levelSide;
import static org.fencecore.Plans.shots;

import java.util.List;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.layout.BoardPattern;
import org.fencecore.rules.ClearGround;
import org.fencecore.rules.CornerVisibility;
import org.fencecore.rules.HeightLimit;
import org.fencecore.rules.LocalRule;
import org.fencecore.rules.LocalRules;
import org.fencecore.rules.PoolBarrier;
import org.fencecore.site.Site;
import org.fencecore.style.BoardStyle;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/**
 * One level side of 50 ft due north, its boards from 2 in to 6 ft 2 in over the ground, held against invented rules. Posts
 * stand from 7 3/4 in to 592 1/4 in along the side.
 */
class RulesInPlanTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();
    private static final Citation TOWN = Citation.of("Fence ordinance of an invented town", "section 4", "2026");

    private static List<Finding> against(LocalRule... rules) {
        return against(levelSide(), rules);
    }

    private static List<Finding> against(Site.Builder site, LocalRule... rules) {
        return FencePlanner.plan(site.rules(LocalRules.of(List.of(rules))).build(), USUAL).findings().stream()
                .filter(finding -> finding.code().startsWith("rule-")
                        || finding.code().startsWith("pool-")
                        || finding.code().equals("permit-needed"))
                .toList();
    }

    @Test
    void heightIsMeasuredOverTheGroundToTheTopOfTheBoards() {
        assertThat(against(HeightLimit.of(Zone.everywhere(), Length.ofInches(74), "height", TOWN)))
                .isEmpty();
        assertThat(against(HeightLimit.of(Zone.everywhere(), Length.ofFeet(6), "height", TOWN)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo("rule-height");
                    assertThat(finding.severity()).isEqualTo(Severity.BLOCKER);
                    assertThat(finding.place()).startsWith("side 1");
                    assertThat(finding.message()).contains("6' 2\"");
                    assertThat(finding.source()).contains(TOWN);
                });
        assertThat(against(HeightLimit.permitOver(Zone.everywhere(), Length.ofFeet(6), "permit", TOWN)))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.NOTE));
    }

    /** Where the ground dips a foot between two posts 83 1/2 in apart, the boards stand higher over it. */
    @Test
    void heightIsMeasuredAtEveryBreakOfTheGround() {
        Site.Builder dip = levelSide().ground(1, shots(0, 0, 10, 0, 10.5, -0.25, 11, 0, 50, 0));
        assertThat(against(dip, HeightLimit.of(Zone.everywhere(), Length.ofInches(76), "height", TOWN)))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("6' 5\""));
    }

    /** The side begins at a street corner: the first 25 ft of it, less what the fence is inside, are kept open. */
    @Test
    void aCornerIsKeptOpenToView() {
        Corner street = Corner.of(Point.ORIGIN, Bearing.WEST, Bearing.NORTH, Side.RIGHT);
        assertThat(against(CornerVisibility.of(
                        street, Length.ofFeet(25), Length.ofFeet(25), Length.ofInches(30), "view at corners", TOWN)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo("rule-visibility");
                    assertThat(finding.place()).contains("side 1");
                });
    }

    @Test
    void postsStayOutOfAnEasement() {
        Polyline strip = Polyline.of(
                List.of(Point.of(Length.ofFeet(-5), Length.ofFeet(50)), Point.of(Length.ofFeet(9), Length.ofFeet(50))));
        assertThat(against(ClearGround.noHoles(Zone.along(strip, Length.ofFeet(2)), "drain easement", TOWN)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo("rule-no-holes");
                    assertThat(finding.message() + finding.place()).contains("post 8");
                });
    }

    /** Water on the right, where the rails are too, 28 1/2 and more inches apart: a ladder on the side of the water. */
    @Test
    void aFenceRoundAPoolHasItsRailsOnTheSideOfTheWater() {
        PoolBarrier.Builder right = PoolBarrier.builder(Side.RIGHT, "pool barrier", PoolBarrier.PUBLISHED);
        assertThat(against(right.build())).extracting(Finding::code).doesNotContain("pool-climbable", "pool-height");
        PoolBarrier.Builder left = PoolBarrier.builder(Side.LEFT, "pool barrier", PoolBarrier.PUBLISHED);
        assertThat(against(left.build())).extracting(Finding::code).contains("pool-climbable");
        assertThat(against(right.height(Length.ofFeet(7)).build()))
                .extracting(Finding::code)
                .contains("pool-height");
    }

    /** Courses 6 in apart are a ladder on the outside, unless they leave no gap for a foot. */
    @Test
    void boardsThatLieAreALadderOnTheOutside() {
        LocalRules water = LocalRules.of(List.of(PoolBarrier.builder(Side.RIGHT, "pool barrier", PoolBarrier.PUBLISHED)
                .build()));
        for (BoardPattern pattern : List.of(
                BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(0.5)),
                BoardPattern.sideBySide(Length.ofInches(5.5)).withGaps(Length.ZERO, Length.ZERO, Length.ZERO))) {
            FenceStyle lying = FenceStyle.builder()
                    .pattern(pattern)
                    .boards(BoardStyle.horizontal())
                    .boardLumber(Lumber.of("1x6", Length.ofInches(0.75), Length.ofInches(5.5))
                            .soldIn(Length.ofFeet(16)))
                    .build();
            boolean ladder = pattern.preferredGap().isPositive();
            assertThat(FencePlanner.plan(levelSide().rules(water).build(), lying).findings().stream()
                            .anyMatch(finding -> finding.code().equals("pool-climbable")))
                    .isEqualTo(ladder);
        }
    }

    /** A drain 2 ft wide each side crosses where the fourth post was to stand, 258 1/4 in up the side: the post moves. */
    @Test
    void linePostsMoveOutOfAnEasement() {
        Polyline strip = Polyline.of(
                List.of(Point.of(Length.ofFeet(-5), Length.ofFeet(21)), Point.of(Length.ofFeet(9), Length.ofFeet(21))));
        Site site = levelSide()
                .rules(LocalRules.of(
                        List.of(ClearGround.noHoles(Zone.along(strip, Length.ofFeet(2)), "drain easement", TOWN))))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.findings())
                .extracting(Finding::code)
                .doesNotContain("rule-no-holes")
                .contains("posts-moved");
    }
}
