package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;

/** What holds for every plan. */
class FencePlannerProperties {

    private static final FenceStyle USUAL = FenceStyle.builder().build();

    /** A made-up yard: a rectangle, heights at its corners and middles, fenced on three sides, with one gate. */
    record Yard(double north, double east, List<Double> heights, double gateShare, double openingInches, boolean wind) {

        LotBoundary lot() {
            return Plans.rectangle(north, east);
        }

        double side(int side) {
            return side % 2 == 1 ? north : east;
        }

        /** Ground along a side: its corners' heights and one in between. */
        Profile ground(int side) {
            return Plans.shots(
                    0, heights.get(side - 1), side(side) * 0.4, heights.get(3 + side), side(side), heights.get(side));
        }

        GateLocation gate() {
            double reach = openingInches / 24 + 1;
            return Plans.gate("gate", 1, reach + gateShare * (north - 2 * reach), openingInches);
        }

        Site site() {
            Site.Builder site = Site.on(lot()).fenceOn(1, 2, 3).gate(gate());
            IntStream.rangeClosed(1, 3).forEach(side -> site.ground(side, ground(side)));
            if (wind) {
                site.windPressure(Pressure.ofPsf(10));
            }
            return site.build();
        }

        /** The same yard with its courses called the other way round. */
        Site reversed() {
            List<Course> courses = new ArrayList<>();
            for (Course course : lot().courses()) {
                courses.add(Course.of(course.bearing().reversed(), course.distance()));
            }
            Collections.reverse(courses);
            Site.Builder site = Site.on(LotBoundary.of(courses)).fenceOn(2, 3, 4);
            IntStream.rangeClosed(1, 3)
                    .forEach(side -> site.ground(5 - side, ground(side).reversed()));
            GateLocation gate = gate();
            site.gate(GateLocation.named("gate")
                    .onSide(4)
                    .centredAt(Length.ofFeet(north).minus(gate.centre()))
                    .clearOpening(gate.clearOpening())
                    .build());
            if (wind) {
                site.windPressure(Pressure.ofPsf(10));
            }
            return site.build();
        }
    }

    @Provide
    Arbitrary<Yard> yards() {
        Arbitrary<Double> feet = Arbitraries.doubles().between(24, 200).ofScale(2);
        Arbitrary<List<Double>> heights =
                Arbitraries.doubles().between(-2, 2).ofScale(2).list().ofSize(8);
        return Combinators.combine(
                        feet,
                        feet,
                        heights,
                        Arbitraries.doubles().between(0, 1).ofScale(3),
                        Arbitraries.doubles().between(30, 60).ofScale(2),
                        Arbitraries.of(true, false))
                .as(Yard::new);
    }

    @Property(tries = 200)
    void stretchesAndGatesFillEveryRun(@ForAll("yards") Yard yard) {
        FencePlan plan = FencePlanner.plan(yard.site(), USUAL);
        for (Run run : plan.runs()) {
            Length fence = run.stretches().stream().map(Stretch::length).reduce(Length.ZERO, Length::plus);
            Length gates = run.gates().stream()
                    .map(gate -> run.station(gate.to()).minus(run.station(gate.from())))
                    .reduce(Length.ZERO, Length::plus);
            assertThat(fence.plus(gates)).isEqualTo(run.length());
            for (GateBay gate : run.gates()) {
                assertThat(gate.opening().length()).isEqualTo(gate.location().clearOpening());
                assertThat(gate.leaf()
                                .width()
                                .plus(USUAL.gate().hingeGap())
                                .plus(USUAL.gate().latchGap()))
                        .isEqualTo(gate.opening().length());
            }
        }
    }

    @Property(tries = 200)
    void postsStandInOrderNoFurtherApartThanAllowedAndWithinTheLot(@ForAll("yards") Yard yard) {
        FencePlan plan = FencePlanner.plan(yard.site(), USUAL);
        for (Run run : plan.runs()) {
            for (int i = 1; i < run.posts().size(); i++) {
                assertThat(run.station(run.posts().get(i)))
                        .isGreaterThan(run.station(run.posts().get(i - 1)));
            }
        }
        assertThat(plan.bays())
                .allSatisfy(bay -> assertThat(bay.spacing())
                        .isLessThanOrEqualTo(USUAL.postSpacing().maximum()));
        Length reach = USUAL.holeDiameter().dividedBy(2);
        for (Segment side : plan.site().lot().outline().orElseThrow().sides()) {
            assertThat(plan.posts())
                    .allSatisfy(
                            post -> assertThat(side.distanceTo(post.centre())).isGreaterThanOrEqualTo(reach));
        }
        assertThat(plan.posts())
                .extracting(Post::number)
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, plan.posts().size()).boxed().toList());
    }

    @Property(tries = 200)
    void boardsFillEveryStretchExactlyAndEndFull(@ForAll("yards") Yard yard) {
        FencePlan plan = FencePlanner.plan(yard.site(), USUAL);
        for (Stretch stretch : plan.stretches()) {
            if (stretch.boards().isEmpty()) {
                continue;
            }
            BoardLayout layout = stretch.boards().get();
            List<BoardPlacement> outside = layout.row(Face.OUTSIDE).boards();
            Length at = Length.ZERO;
            for (BoardPlacement board : outside) {
                assertThat(board.left()).isGreaterThanOrEqualTo(at);
                at = board.right();
            }
            assertThat(outside.get(0).left()).isEqualTo(Length.ZERO);
            assertThat(at).isEqualTo(stretch.boarded().length());
            if (layout.findings().isEmpty() && outside.size() > 1) {
                assertThat(outside.get(0).isFull()).isTrue();
                assertThat(outside.get(outside.size() - 1).isFull()).isTrue();
            }
        }
    }

    @Property(tries = 50)
    void allBoardsAreThoseOfTheStretchesAndGates(@ForAll("yards") Yard yard) {
        FencePlan plan = FencePlanner.plan(yard.site(), USUAL);
        List<BoardPlacement> expected = new ArrayList<>();
        plan.stretches().forEach(stretch -> stretch.boards().ifPresent(layout -> expected.addAll(layout.boards())));
        plan.gates()
                .forEach(gate -> gate.leaves().get(0).boards().ifPresent(layout -> expected.addAll(layout.boards())));
        assertThat(plan.boards()).extracting(PlannedBoard::placement).containsExactlyElementsOf(expected);
        List<PlannedBoard> boards = plan.boards();
        int index = 0;
        for (PlannedBoard board : boards) {
            assertThat(board).isEqualTo(boards.get(index));
            index++;
        }
        assertThat(boards.stream().toList()).isEqualTo(List.copyOf(boards));
        assertThat(plan.boardCount()).isEqualTo(expected.size());
    }

    @Property(tries = 200)
    void boardsClearTheGroundEverywhereBetweenPosts(@ForAll("yards") Yard yard) {
        FencePlan plan = FencePlanner.plan(yard.site(), USUAL);
        Length nanometre = Length.ofNanometres(1);
        for (Run run : plan.runs()) {
            for (Stretch stretch : run.stretches()) {
                assertThat(stretch.bays())
                        .allSatisfy(bay -> assertThat(bay.slope().clearance().min())
                                .isGreaterThanOrEqualTo(
                                        USUAL.slope().minimumClearance().minus(nanometre)));
            }
        }
    }

    @Property(tries = 100)
    void callingTheCoursesTheOtherWayRoundMirrorsThePlan(@ForAll("yards") Yard yard) {
        FencePlan plan = FencePlanner.plan(yard.site(), USUAL);
        FencePlan mirrored = FencePlanner.plan(yard.reversed(), USUAL);
        assertThat(mirrored.posts()).hasSameSizeAs(plan.posts());
        List<Post> back = new ArrayList<>(mirrored.posts());
        Collections.reverse(back);
        for (int i = 0; i < back.size(); i++) {
            Post there = back.get(i);
            Post here = plan.posts().get(i);
            assertThat(there.kind()).isEqualTo(here.kind());
            // The reversed courses begin at the same corner of the lot; each line rounds once.
            assertThat(there.centre().distanceTo(here.centre())).isLessThan(Length.ofNanometres(20));
            assertThat(there.exposed().minus(here.exposed()).abs()).isLessThan(Length.ofNanometres(20));
            assertThat(there.footing().embedment()).isEqualTo(here.footing().embedment());
        }
        assertThat(mirrored.boardCount()).isBetween(plan.boardCount() - 6, plan.boardCount() + 6);
    }

    @Property(tries = 50)
    void theSamePlanWhateverTheTape(@ForAll("yards") Yard yard) {
        double metre = 0.3048;
        LotBoundary metric = LotBoundary.of(yard.lot().courses().stream()
                .map(course -> Course.of(
                        course.bearing(), Length.ofMetres(course.distance().feet() * metre)))
                .toList());
        Site.Builder site = Site.on(metric).fenceOn(1, 2, 3);
        IntStream.rangeClosed(1, 3).forEach(side -> site.ground(side, yard.ground(side)));
        site.gate(yard.gate());
        if (yard.wind()) {
            site.windPressure(Pressure.ofPascals(10 * 47.88025898033584));
        }
        FencePlan plan = FencePlanner.plan(yard.site(), USUAL);
        FencePlan inMetres = FencePlanner.plan(site.build(), USUAL);
        assertThat(inMetres.posts()).hasSameSizeAs(plan.posts());
        for (int i = 0; i < plan.posts().size(); i++) {
            assertThat(inMetres.posts().get(i).centre())
                    .isEqualTo(plan.posts().get(i).centre());
            assertThat(inMetres.posts().get(i).footing().embedment())
                    .isEqualTo(plan.posts().get(i).footing().embedment());
        }
        assertThat(inMetres.boardCount()).isEqualTo(plan.boardCount());
    }

    @Property(tries = 50)
    void planningTwiceGivesTheSame(@ForAll("yards") Yard yard) {
        FenceStyle boards = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .build();
        FencePlan once = FencePlanner.plan(yard.site(), boards);
        FencePlan again = FencePlanner.plan(yard.site(), boards);
        assertThat(again.findings()).isEqualTo(once.findings());
        assertThat(again.posts()).isEqualTo(once.posts());
        assertThat(again.worksheets().toString()).isEqualTo(once.worksheets().toString());
    }
}
