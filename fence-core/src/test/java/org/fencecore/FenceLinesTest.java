package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.Plans.course;
import static org.fencecore.Plans.rectangle;

import java.util.List;
import java.util.stream.IntStream;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.terrain.Shot;
import org.fencecore.terrain.ShotSurface;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/** Where the lines of a fence run: inside the sides of lots of all shapes, or point by point. Posts are 3 1/2 in wide. */
class FenceLinesTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();
    private static final Plane LEVEL = Plane.level(Length.ZERO);

    private static Point at(double eastFeet, double northFeet) {
        return Point.of(Length.ofFeet(eastFeet), Length.ofFeet(northFeet));
    }

    private static Polyline line(double... eastNorth) {
        return Polyline.of(IntStream.range(0, eastNorth.length / 2)
                .mapToObj(i -> at(eastNorth[2 * i], eastNorth[2 * i + 1]))
                .toList());
    }

    /** Going round: 120 east, 80 north, 50 west, 50 south, 20 west, 50 north, 50 west, 80 south. */
    private static final LotBoundary YOU = LotBoundary.of(List.of(
            course(90, 120),
            course(0, 80),
            course(270, 50),
            course(180, 50),
            course(270, 20),
            course(0, 50),
            course(270, 50),
            course(180, 80)));

    /**
     * A U whose foot is 30 ft deep: with strings 14 ft in, posts 14 ft 1 3/4 in, the foot is still 1 ft 8 1/2 in deep; 15 ft
     * in, it has fallen apart into two legs, each closed round by what is left of sides 1 and 5.
     */
    @Test
    void goesRoundBothPartsOfALotThatFallsApart() {
        Site.Builder site = Site.on(YOU).fenceOn(1, 2, 3, 4, 5, 6, 7, 8).ground(LEVEL);
        FencePlan whole = FencePlanner.plan(site.setback(Length.ofFeet(14)).build(), USUAL);
        assertThat(whole.runs()).hasSize(8);

        FencePlan apart = FencePlanner.plan(site.setback(Length.ofFeet(15)).build(), USUAL);
        assertThat(apart.runs())
                .extracting(Run::name)
                .containsExactly(
                        "side 1, part 1", "side 1, part 2", "side 2", "side 3", "side 4", "side 6", "side 7", "side 8");
        assertThat(blockers(apart)).containsExactly("side-lost at side 5");
        // The west leg is 50 ft wide and 80 ft high; its posts stand 15 ft 1 3/4 in inside on all sides.
        Run foot = apart.runs().get(0);
        assertThat(foot.postLine().start()).isEqualTo(at(15 + 1.75 / 12, 15 + 1.75 / 12));
        assertThat(foot.postLine().end()).isEqualTo(at(35 - 1.75 / 12, 15 + 1.75 / 12));
        assertThat(foot.string()).isEqualTo(Segment.of(at(15, 15), at(35, 15)));
        assertThat(apart.posts())
                .filteredOn(post -> post.kind() == PostKind.CORNER)
                .hasSize(8);
    }

    /** A corner cut off by 2.83 ft at 45 degrees: 6 ft inside, its neighbours meet and the cut has no fence of its own. */
    @Test
    void letsTheNeighboursOfALostSideMeet() {
        LotBoundary cut = LotBoundary.of(
                List.of(course(90, 98), course(45, Math.sqrt(8)), course(0, 78), course(270, 100), course(180, 80)));
        FencePlan plan = FencePlanner.plan(
                Site.on(cut)
                        .fenceOn(1, 3)
                        .setback(Length.ofFeet(6))
                        .ground(LEVEL)
                        .build(),
                USUAL);
        assertThat(blockers(plan)).isEmpty();
        assertThat(plan.runs()).extracting(Run::name).containsExactly("side 1", "side 3");
        assertThat(plan.runs().get(0).string().end().distanceTo(at(94, 6)).inches())
                .isCloseTo(0, within(1e-4));
        assertThat(plan.runs().get(0).endCorner()).isPresent();
        FencePlan asked = FencePlanner.plan(
                Site.on(cut)
                        .fenceOn(1, 2, 3)
                        .setback(Length.ofFeet(6))
                        .ground(LEVEL)
                        .build(),
                USUAL);
        assertThat(blockers(asked)).containsExactly("side-lost at side 2");
    }

    /** A string given from 10 ft east, 10 ft north: 30 ft east, then 20 ft north; the outside on the right. */
    @Test
    void followsALinePointByPoint() {
        FencePlan plan = FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(line(10, 10, 40, 10, 40, 30), Side.RIGHT)
                        .ground(Plane.of(Point.ORIGIN, Length.ZERO, Slope.ofPercent(10), Slope.LEVEL))
                        .build(),
                USUAL);
        assertThat(plan.isBuildable()).isTrue();
        assertThat(plan.runs()).extracting(Run::name).containsExactly("side 1", "side 2");
        Run first = plan.runs().get(0);
        assertThat(first.string()).isEqualTo(Segment.of(at(10, 10), at(40, 10)));
        assertThat(first.postLine()).isEqualTo(Segment.of(at(10, 10 + 1.75 / 12), at(40 - 1.75 / 12, 10 + 1.75 / 12)));
        assertThat(first.outside()).isEqualTo(Side.RIGHT);
        assertThat(plan.runs().get(1).postLine().start())
                .isEqualTo(first.postLine().end());
        assertThat(plan.posts().get(0).kind()).isEqualTo(PostKind.END);
        assertThat(plan.posts().get(0).ground()).isEqualTo(Length.ofFeet(1));
        assertThat(first.endCorner().orElseThrow().interiorAngle().degrees()).isCloseTo(90, within(1e-9));
    }

    /** A line of one side has two ends and no corner: its ground may fall 4 ft from one to the other. */
    @Test
    void takesHeightsAlongALineOfOneSide() {
        FencePlan plan = FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(line(10, 10, 50, 10), Side.RIGHT)
                        .ground(1, Plans.shots(0, 100, 20, 98, 40, 96))
                        .build(),
                USUAL);
        assertThat(blockers(plan)).isEmpty();
        assertThat(plan.posts().get(0).ground()).isEqualTo(Length.ofFeet(100));
        assertThat(plan.posts().get(5).ground()).isEqualTo(Length.ofFeet(96));
    }

    @Test
    void closesALineThatEndsWhereItBegan() {
        FencePlan plan = FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(line(10, 10, 40, 10, 40, 30, 10, 30, 10, 10), Side.RIGHT)
                        .ground(LEVEL)
                        .build(),
                USUAL);
        assertThat(plan.isBuildable()).isTrue();
        assertThat(plan.runs()).hasSize(4);
        assertThat(plan.posts())
                .filteredOn(post -> post.kind() == PostKind.CORNER)
                .hasSize(4);
        assertThat(plan.posts()).noneMatch(post -> post.kind() == PostKind.END);
        Run last = plan.runs().get(3);
        assertThat(last.posts().get(last.posts().size() - 1))
                .isEqualTo(plan.posts().get(0));
    }

    /** Holes are three posts wide, 10 1/2 in: 5 1/4 in round a middle that is 1 3/4 in inside the string. */
    @Test
    void measuresHolesAndBoardsAgainstTheBoundary() {
        FencePlan plan = FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(line(0.1, 10, 0.1, 40), Side.LEFT)
                        .ground(LEVEL)
                        .build(),
                USUAL);
        // The middle is 1.2 + 1.75 = 2.95 in inside, so the hole reaches 2.3 in over; the boards 2.25 - 1.2 = 1.05 in.
        assertThat(plan.findings())
                .filteredOn(finding -> finding.code().equals("over-the-boundary"))
                .extracting(Finding::message)
                .anyMatch(message -> message.contains("2 5/16\""))
                .anyMatch(message -> message.contains("1 1/16\""));
        FencePlan inside = FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(line(0.5, 10, 0.5, 40), Side.LEFT)
                        .ground(LEVEL)
                        .build(),
                USUAL);
        assertThat(inside.findings()).extracting(Finding::code).doesNotContain("over-the-boundary");
    }

    /** A leaf of 47 1/4 in hung on posts 6 in inside opens 41 1/4 in over the boundary, inwards not at all. */
    @Test
    void tellsWhenAGateOpensOverTheBoundary() {
        GateLocation.Builder gate = GateLocation.named("street gate")
                .onSide(1)
                .centredAt(Length.ofFeet(20))
                .clearOpening(Length.ofInches(48));
        FencePlan outwards = FencePlanner.plan(
                Plans.levelSide().gate(gate.opensOutward(true).build()).build(), USUAL);
        assertThat(outwards.findings())
                .filteredOn(finding -> finding.code().equals("gate-opens-over-boundary"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("3' 5 1/4\""));
        for (Site.Builder site : List.of(
                Plans.levelSide().gate(gate.opensOutward(false).build()),
                Plans.levelSide()
                        .setback(Length.ofInches(47.25))
                        .gate(gate.opensOutward(true).build()))) {
            assertThat(FencePlanner.plan(site.build(), USUAL).findings())
                    .extracting(Finding::code)
                    .doesNotContain("gate-opens-over-boundary");
        }
    }

    @Test
    void saysWhichSideLeavesNoRoomForThePostsOrHasNoGround() {
        FencePlan tight = FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(line(10, 10, 40, 10, 40, 10.2, 10, 10.2), Side.RIGHT)
                        .ground(LEVEL)
                        .build(),
                USUAL);
        assertThat(blockers(tight)).contains("line-too-tight at side 2");
        FencePlan unknown = FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(line(10, 10, 40, 10), Side.RIGHT)
                        .build(),
                USUAL);
        assertThat(blockers(unknown)).containsExactly("no-ground at side 1");
    }

    /**
     * A street corner rounded with 25 ft. A chord stays within 1 in of that curve up to 2 acos(1 - 1 / 300) = 9.36
     * degrees, so a quarter of the circle takes 10 facets of 9 degrees, a post at each end.
     */
    @Test
    void goesRoundACurveInStraightParts() {
        Course front = Course.of(Bearing.NORTH, Length.ofFeet(50));
        LotBoundary lot = LotBoundary.of(List.of(
                front,
                Course.curve(Side.RIGHT)
                        .radius(Length.ofFeet(25))
                        .delta(Angle.RIGHT)
                        .tangentTo(front)
                        .build(),
                Course.of(Bearing.EAST, Length.ofFeet(50)),
                Course.of(Bearing.SOUTH, Length.ofFeet(75)),
                Course.of(Bearing.WEST, Length.ofFeet(75))));
        FencePlan plan =
                FencePlanner.plan(Site.on(lot).fenceOn(1, 2, 3).ground(LEVEL).build(), USUAL);
        assertThat(blockers(plan)).isEmpty();
        assertThat(plan.runs()).hasSize(12);
        assertThat(plan.runs().get(0).name()).isEqualTo("side 1");
        assertThat(plan.runs().get(1).name()).isEqualTo("side 2, part 1");
        assertThat(plan.runs().get(10).name()).isEqualTo("side 2, part 10");
        assertThat(plan.findings())
                .filteredOn(finding -> finding.code().equals("curve-in-parts"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("10 straight parts"));
        assertThat(plan.findings()).extracting(Finding::code).doesNotContain("bay-short");
        Point middle = at(25, 50);
        for (Run part : plan.runs().subList(1, 11)) {
            assertThat(part.posts()).hasSize(2).allMatch(post -> post.kind() == PostKind.CORNER);
            assertThat(part.posts()).allMatch(post -> {
                double radius = post.centre().distanceTo(middle).inches();
                return radius < 300 - 7.75 + 0.1 && radius > 300 - 7.75 - 1;
            });
        }
        assertThat(plan.runs().get(5).endCorner().orElseThrow().interiorAngle().degrees())
                .isCloseTo(171, within(1e-6));
        for (int i = 1; i < 12; i++) {
            List<Post> before = plan.runs().get(i - 1).posts();
            assertThat(plan.runs().get(i).posts().get(0)).isEqualTo(before.get(before.size() - 1));
        }
    }

    /** Four shots round the first 30 ft of a line of 40 ft: the last 10 ft have no ground. */
    @Test
    void saysWhereShotsLeaveALineWithoutGround() {
        ShotSurface shots = ShotSurface.of(List.of(
                new Shot(at(9, 5), Length.ZERO),
                new Shot(at(9, 15), Length.ZERO),
                new Shot(at(40, 5), Length.ofFeet(1)),
                new Shot(at(40, 15), Length.ofFeet(1))));
        FencePlan plan = FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(line(10, 10, 50, 10), Side.RIGHT)
                        .ground(shots)
                        .build(),
                USUAL);
        assertThat(blockers(plan)).containsExactly("ground-not-covered at side 1, 30.00 ft to 40.00 ft");
        FencePlan shorter = FencePlanner.plan(
                Site.on(rectangle(60, 60))
                        .fenceAlong(line(10, 10, 40, 10), Side.RIGHT)
                        .ground(shots)
                        .build(),
                USUAL);
        assertThat(shorter.isBuildable()).isTrue();
        assertThat(shorter.posts().get(4).ground().feet()).isCloseTo(1, within(1e-6));
    }

    private static List<String> blockers(FencePlan plan) {
        return plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER)
                .map(finding -> finding.code() + " at " + finding.place())
                .toList();
    }
}
