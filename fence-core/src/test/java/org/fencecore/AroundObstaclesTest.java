package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.fencecore.Plans.levelSide;

import java.util.List;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.obstacles.Obstacle;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.obstacles.UtilityKind;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/**
 * One level side of 50 ft due north with what is in its way. Posts 7 3/4 in inside the side are 83 1/2 in apart from
 * 7 3/4 in on; holes are 10 1/2 in wide.
 */
class AroundObstaclesTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();

    private static FencePlan plan(Obstacle... obstacles) {
        return FencePlanner.plan(
                levelSide().obstacles(Obstacles.of(List.of(obstacles))).build(), USUAL);
    }

    private static Obstacle gasAcross(double inchesNorth) {
        Length north = Length.ofInches(inchesNorth);
        return Obstacle.utility(
                UtilityKind.GAS,
                Polyline.of(List.of(Point.of(Length.ofFeet(-9), north), Point.of(Length.ofFeet(9), north))));
    }

    /**
     * A gas line crosses 252 in up the side, 244 1/4 in from the first post. No middle of a hole may be within 24 + 5 1/4 in
     * of it: from 215 to 273 1/2 in, where the fourth post was to stand at 250 1/2. It takes the nearer edge, 273 1/2.
     */
    @Test
    void postsMoveOffABuriedLine() {
        FencePlan plan = plan(gasAcross(252));
        Run run = plan.runs().get(0);
        assertThat(plan.isBuildable()).isTrue();
        assertThat(run.posts()).hasSize(8);
        assertThat(run.station(run.posts().get(3))).isEqualTo(Length.ofInches(273.5));
        assertThat(run.station(run.posts().get(1)).inches() * 3).isCloseTo(273.5, offset(1e-6));
        assertThat(plan.findings()).extracting(Finding::code).contains("underground-lines");
    }

    @Test
    void aPostThatCannotMoveIsABlocker() {
        assertThat(blockers(plan(gasAcross(10)))).containsExactly("obstacle-at-post at post 1");
    }

    /** A trunk of 1 ft across stands on the line: the fence cannot go through it, wherever the posts are. */
    @Test
    void theFenceDoesNotGoThroughATree() {
        Obstacle tree =
                Obstacle.tree(Point.of(Length.ofInches(7), Length.ofFeet(20)), Length.ofInches(6), Length.ofInches(24));
        assertThat(blockers(plan(tree))).containsExactly("obstacle-in-fence at side 1");
    }

    @Test
    void theNoteToHaveLinesMarkedIsAlwaysThere() {
        assertThat(plan().findings())
                .filteredOn(finding -> finding.code().equals("underground-lines"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.remedy()).contains("marked before digging"));
    }

    /** Lines so close together that no post of a bay finds room: the bays get too wide, and the plan says which lines do it. */
    @Test
    void saysWhichLinesLeaveNoRoomForAPost() {
        FencePlan plan = plan(gasAcross(200), gasAcross(240), gasAcross(280), gasAcross(320));
        assertThat(blockers(plan)).containsExactly("forbidden-too-wide at side 1, post 1 to post 7, posts");
    }

    private static List<String> blockers(FencePlan plan) {
        return plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER)
                .map(finding -> finding.code() + " at " + finding.place())
                .toList();
    }
}
