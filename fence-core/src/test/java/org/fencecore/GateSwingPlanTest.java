package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/** A fence along the south line of a lot, running east; the lot is to the north, and the ground rises north. */
class GateSwingPlanTest {

    private static final Length FEET_40 = Length.ofFeet(40);
    private static final LotBoundary LOT = LotBoundary.ofCorners(List.of(
            Point.ORIGIN, Point.of(FEET_40, Length.ZERO), Point.of(FEET_40, FEET_40), Point.of(Length.ZERO, FEET_40)));

    private static FencePlan plan(Surface ground, HingeSide hinges, boolean outward) {
        return FencePlanner.plan(
                Site.on(LOT)
                        .fenceAlong(Polyline.of(List.of(Point.ORIGIN, Point.of(FEET_40, Length.ZERO))), Side.RIGHT)
                        .ground(ground)
                        .gate(GateLocation.named("gate")
                                .onSide(1)
                                .centredAt(Length.ofFeet(20))
                                .clearOpening(Length.ofInches(47.5))
                                .hinges(hinges)
                                .opensOutward(outward)
                                .build())
                        .build(),
                FenceStyle.builder().build());
    }

    private static Plane rising(double northPercent) {
        return Plane.of(Point.ORIGIN, Length.ZERO, Slope.LEVEL, Slope.ofPercent(northPercent));
    }

    /**
     * Up 5 % into the lot. Posts 3 1/2 in wide stand inside the string, so that flush with their inside the leaf is 3 1/2
     * in from it, and when open its latch is 50 1/4 in: the ground there is 50.25 x 0.05 in up. Its bottom, 2 in over the
     * middle of the posts, is at 2 + 1.75 x 0.05 and so 0.425 in deep in the ground. Opening out it hangs at the string;
     * the ground is highest under the back of the shut leaf, which is as thick as frame and two boards.
     */
    @Test
    void aGateThatOpensUphillDragsAndOneThatOpensDownhillDoesNot() {
        for (HingeSide hinges : HingeSide.values()) {
            FencePlan in = plan(rising(5), hinges, false);
            assertThat(in.gates()
                            .get(0)
                            .leaves()
                            .get(0)
                            .swing()
                            .orElseThrow()
                            .smallestClearance()
                            .inches())
                    .isCloseTo(-0.425, within(0.001));
            assertThat(bottom(in)).isCloseTo(2 + 1.75 * 0.05, within(1e-6));
            assertThat(in.findings()).extracting(Finding::code).contains("gate-drags");
            assertThat(in.worksheets())
                    .anyMatch(sheet -> sheet.title().endsWith("gate: Swing of the gate over the ground"));

            FencePlan out = plan(rising(5), hinges, true);
            double back = FenceStyle.builder().build().boardLumber().thickness().inches() * 2 + 1.5;
            assertThat(out.gates()
                            .get(0)
                            .leaves()
                            .get(0)
                            .swing()
                            .orElseThrow()
                            .smallestClearance()
                            .inches())
                    .isCloseTo(bottom(out) - 0.05 * back, within(0.001));
            assertThat(out.findings()).extracting(Finding::code).doesNotContain("gate-drags", "gate-swing-close");
        }
    }

    private static double bottom(FencePlan plan) {
        return plan.gates().get(0).leaves().get(0).boardBottom().inches();
    }

    @Test
    void shotsThatEndAtTheFenceTellThatTheSwingIsUnknown() {
        FencePlan plan = plan(new Strip(rising(5), Length.ofFeet(1)), HingeSide.LEFT, false);

        assertThat(plan.gates().get(0).leaves().get(0).swing()).isEmpty();
        assertThat(plan.findings()).extracting(Finding::code).contains("gate-swing-unknown");
    }

    /** Ground that is known so far to the north only. */
    private record Strip(Plane ground, Length north) implements Surface {

        @Override
        public Optional<Length> elevationAt(Point place) {
            return place.north().compareTo(north) > 0 ? Optional.empty() : ground.elevationAt(place);
        }

        @Override
        public Optional<Profile> under(Polyline line) {
            boolean within =
                    line.points().stream().allMatch(point -> point.north().compareTo(north) <= 0);
            return within ? ground.under(line) : Optional.empty();
        }

        @Override
        public List<Interval> uncovered(Polyline line) {
            throw new UnsupportedOperationException("not asked for here");
        }
    }
}
