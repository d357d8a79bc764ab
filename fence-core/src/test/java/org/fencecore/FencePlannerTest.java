package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.fencecore.Plans.gate;
import static org.fencecore.Plans.levelSide;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Side;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.Face;
import org.fencecore.rail.RailMarks;
import org.fencecore.rail.RailPiece;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/** The whole plan, against cases worked by hand on paper. */
class FencePlannerTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();

    /**
     * One side of 50 ft, level, no gate, 4x4 posts, strings 6 in inside.
     *
     * <pre>
     * post line      6 + 1 3/4 = 7 3/4 in inside, from 7 3/4 in to 600 - 7 3/4: 584 1/2 in long
     * bays           584 1/2 / 96 = 6.09, so 7 of 83 1/2 in; 8 posts
     * boarded        584 1/2 + 2 x 1 3/4 = 588 in, edge to edge of the end posts
     * outside        66 boards: gap (588 - 66 x 5 1/2) / 65 = 3.4615 in, nearer 3 1/2 than 65 boards' 3.6016
     * inside         65 behind the gaps
     * rails          three bays, 250 1/2 in, are over 16 ft, so pieces of two bays: 167 in, at the ends 168 3/4; of
     *                seven bays one end bay is left, 85 1/4
     * rail tops      6 + 3 1/2 = 9 1/2; top 2 + 72 - 4 = 70; middle half the clear of 57 in plus 1 3/4 over 9 1/2
     * </pre>
     */
    @Test
    void oneLevelSideAsOnPaper() {
        FencePlan plan = FencePlanner.plan(levelSide().build(), USUAL);

        Run run = plan.runs().get(0);
        assertThat(run.outside()).isEqualTo(Side.LEFT);
        assertThat(run.string().start()).isEqualTo(Point.of(in(6), in(6)));
        assertThat(run.postLine().start()).isEqualTo(Point.of(in(7.75), in(7.75)));
        assertThat(run.length()).isEqualTo(in(584.5));
        assertThat(run.startAlongSide()).isEqualTo(in(7.75));

        assertThat(plan.posts()).hasSize(8);
        assertThat(plan.posts().get(0).kind()).isEqualTo(PostKind.END);
        assertThat(plan.posts().get(3).kind()).isEqualTo(PostKind.LINE);
        assertThat(plan.posts()).allSatisfy(post -> assertThat(post.exposed()).isEqualTo(in(74)));
        assertThat(plan.bays())
                .hasSize(7)
                .allSatisfy(bay -> assertThat(bay.spacing()).isEqualTo(in(83.5)));

        assertThat(plan.stretches().get(0).railPieces().orElseThrow().pieces())
                .hasSize(12)
                .extracting(RailPiece::length)
                .containsOnly(in(85.25), in(167), in(168.75));
        assertThat(plan.stretches().get(0).railPieces().orElseThrow().totalLength())
                .isEqualTo(in(3 * 588));
        assertThat(plan.bays().get(3).rails())
                .extracting(rail -> rail.from().top())
                .containsExactly(in(9.5), in(9.5 + 57 / 2.0 + 1.75), in(70));

        Stretch stretch = plan.stretches().get(0);
        assertThat(stretch.boarded()).isEqualTo(Interval.of(in(-1.75), in(586.25)));
        BoardLayout boards = stretch.boards().orElseThrow();
        assertThat(boards.row(Face.OUTSIDE).count()).isEqualTo(66);
        assertThat(boards.row(Face.INSIDE).count()).isEqualTo(65);
        assertThat(boards.row(Face.OUTSIDE).gap().inches()).isCloseTo(225 / 65.0, offset(1e-6));
        assertThat(plan.boardCount()).isEqualTo(131);
        assertThat(plan.isBuildable()).isTrue();
    }

    /**
     * The inside boards of the level side stand 9 - 0.0385 = 8.9615 in apart, the first at 5 1/2 - 1.0192 = 4.4808 in from
     * the boarding's beginning. Post 2 stands from 83 1/2 to 87 in there. Board 10 begins at 4.4808 + 9 x 8.9615 = 85.1346
     * and ends at 90.6346: it meets the post, and 90.6346 - 87 = 3.6346 in are kept after it. Board 9 ends at 81.6731 and
     * stays whole.
     */
    @Test
    void insideBoardsStopAtThePosts() {
        Stretch stretch =
                FencePlanner.plan(levelSide().build(), USUAL).stretches().get(0);
        BoardAtPost first = stretch.boardsAtPosts().get(0);
        assertThat(first.post().number()).isEqualTo(2);
        assertThat(first.board().index()).isEqualTo(9);
        assertThat(first.board().left().inches()).isCloseTo(85.1346, offset(0.0001));
        assertThat(first.before()).isEqualTo(Length.ZERO);
        assertThat(first.after().inches()).isCloseTo(3.6346, offset(0.0001));
        assertThat(first.isLeftOut()).isFalse();
    }

    /** Common practice, no source: a post's centre is half its width from the string, and its hole three posts wide. */
    @Test
    void factsOfTheTrade() {
        FencePlan plan = FencePlanner.plan(levelSide().build(), USUAL);
        Run run = plan.runs().get(0);
        for (Post post : plan.posts()) {
            assertThat(run.string().distanceTo(post.centre())).isEqualTo(in(3.5 / 2));
            assertThat(post.footing().holeDiameter()).isEqualTo(in(10.5));
        }
        assertThat(plan.bays())
                .allSatisfy(bay -> assertThat(bay.spacing()).isBetween(Length.ofFeet(6), Length.ofFeet(8)));
        assertThat(plan.bays())
                .allSatisfy(bay -> assertThat(bay.slope().clearance().min()).isBetween(in(1), in(2)));
    }

    /**
     * The same side with a gate of 47 1/2 in, centred 12 ft from the lot corner.
     *
     * <pre>
     * opening along the side  144 - 23 3/4 = 120 1/4 to 167 3/4; less 7 3/4: 112 1/2 to 160 along the run
     * gate posts              at 110 3/4 and 161 3/4
     * leaf                    47 1/2 - 1/2 - 1/4 = 46 3/4 (common practice, no source)
     * frame                   from 4 in over the board bottoms to 4 in under their tops: 72 - 4 - 4 = 64
     * first stretch           boarded from -1 3/4 to 112 1/2: to the opening edge of the gate post
     * </pre>
     */
    @Test
    void aGateBetweenItsPosts() {
        Site site = levelSide().gate(gate("walk gate", 1, 12, 47.5)).build();
        FencePlan plan = FencePlanner.plan(site, USUAL);

        GateBay gate = plan.gates().get(0);
        assertThat(gate.opening()).isEqualTo(Interval.of(in(112.5), in(160)));
        Run run = plan.runs().get(0);
        assertThat(run.station(gate.from())).isEqualTo(in(110.75));
        assertThat(run.station(gate.to())).isEqualTo(in(161.75));
        assertThat(List.of(gate.from().kind(), gate.to().kind())).containsOnly(PostKind.GATE);
        assertThat(gate.leaf().width()).isEqualTo(in(46.75));
        assertThat(gate.leaf().frameHeight()).isEqualTo(in(64));
        assertThat(gate.leaves().get(0).boardBottom()).isEqualTo(in(2));

        assertThat(plan.stretches()).hasSize(2);
        assertThat(plan.stretches().get(0).boarded()).isEqualTo(Interval.of(in(-1.75), in(112.5)));
        assertThat(plan.stretches().get(1).boarded().start()).isEqualTo(in(160));
        assertThat(plan.stretches())
                .allSatisfy(stretch -> assertEndsFull(stretch.boards().orElseThrow()));
        assertEndsFull(gate.leaves().get(0).boards().orElseThrow());
    }

    /**
     * Side 1 goes north with the lot on its right, so someone outside looks east: left is north, the gate's far post. The
     * same lot called the other way round has that side last, going south, and left is its beginning.
     */
    @Test
    void hingesAreWhereTheyAreSeenFromOutside() {
        Site clockwise = levelSide().gate(gate("g", 1, 12, 48)).build();
        GateBay gate = FencePlanner.plan(clockwise, USUAL).gates().get(0);
        assertThat(gate.hingePost()).isSameAs(gate.to());
        assertThat(gate.latchPost()).containsSame(gate.from());

        LotBoundary counter = LotBoundary.of(
                List.of(Plans.course(90, 40), Plans.course(0, 50), Plans.course(270, 40), Plans.course(180, 50)));
        Site reversed = Site.on(counter)
                .fenceOn(4)
                .ground(4, shots(0, 0, 50, 0))
                .gate(gate("g", 4, 38, 48))
                .build();
        GateBay same = FencePlanner.plan(reversed, USUAL).gates().get(0);
        assertThat(same.hingePost()).isSameAs(same.from());
        assertThat(same.hingePost().centre()).isEqualTo(gate.hingePost().centre());
    }

    private static void assertEndsFull(BoardLayout layout) {
        var outside = layout.row(Face.OUTSIDE).boards();
        assertThat(outside.get(0).isFull()).isTrue();
        assertThat(outside.get(0).left()).isEqualTo(Length.ZERO);
        assertThat(outside.get(outside.size() - 1).isFull()).isTrue();
        assertThat(outside.get(outside.size() - 1).right()).isEqualTo(layout.clearLength());
    }

    /**
     * A square corner: rails reach the mitre of their outer faces, 1 3/4 + 1 1/2 = 3 1/4 in past the post's middle; the
     * arriving boards stop there, the leaving ones lap their 3/4 in edge and begin 4 in before the post's middle.
     */
    @Test
    void boardsLapAtASquareCorner() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1, 2)
                .ground(1, shots(0, 0, 50, 0))
                .ground(2, shots(0, 0, 40, 0))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);

        Run first = plan.runs().get(0);
        Run second = plan.runs().get(1);
        assertThat(first.posts().get(first.posts().size() - 1))
                .isSameAs(second.posts().get(0))
                .satisfies(post -> assertThat(post.kind()).isEqualTo(PostKind.CORNER));
        assertThat(first.stretches().get(0).boarded().end())
                .isEqualTo(first.length().plus(in(3.25)));
        assertThat(second.stretches().get(0).boarded().start()).isEqualTo(in(-4));
        assertThat(lastPiece(first.stretches().get(0)).reach().end())
                .isEqualTo(first.length().plus(in(3.25)));
    }

    /**
     * The inner corner of an L, 270 degrees inside: the outer faces of the rails meet 1 3/4 + 1 1/2 = 3 1/4 in before the
     * post's middle, so the long points are on the inner faces, 1 3/4 in before it. The boards that arrive stop where the
     * faces meet, and those that leave begin clear of their 3/4 in.
     */
    @Test
    void railsAndBoardsAtACornerThatPointsIntoTheLot() {
        LotBoundary lot = LotBoundary.of(List.of(
                Plans.course(90, 100),
                Plans.course(0, 60),
                Plans.course(270, 40),
                Plans.course(0, 80),
                Plans.course(270, 60),
                Plans.course(180, 140)));
        Site site = Site.on(lot)
                .fenceOn(3, 4)
                .ground(3, shots(0, 0, 40, 0))
                .ground(4, shots(0, 0, 80, 0))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);

        Stretch arriving = plan.runs().get(0).stretches().get(0);
        Stretch leaving = plan.runs().get(1).stretches().get(0);
        assertThat(lastPiece(arriving).reach().end())
                .isEqualTo(plan.runs().get(0).length().minus(in(1.75)));
        assertThat(arriving.boarded().end())
                .isEqualTo(plan.runs().get(0).length().minus(in(3.25)));
        assertThat(leaving.boarded().start()).isEqualTo(in(3.25 + 0.75));
    }

    private static RailPiece lastPiece(Stretch stretch) {
        return stretch.railPieces().orElseThrow().pieces().stream()
                .filter(piece -> piece.toPost() == stretch.bays().size())
                .findFirst()
                .orElseThrow();
    }

    /** 2.5 ft up in 50 ft is 5 %: every rail is sqrt(1.0025) longer, and the marks on the post stay those of the top. */
    @Test
    void railsFollowAnEvenGrade() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1)
                .ground(1, shots(0, 0, 50, 2.5))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);

        Bay bay = plan.bays().get(3);
        assertThat(bay.slope().grade().percent()).isCloseTo(5, offset(1e-6));
        assertThat(plan.stretches()
                        .get(0)
                        .railPieces()
                        .orElseThrow()
                        .totalLength()
                        .inches())
                .isCloseTo(3 * 588 * Math.sqrt(1.0025), offset(1e-5));
        RailMarks top = bay.rails().get(2).from();
        assertThat(top.top()).isEqualTo(in(70));
    }

    @Test
    void gateHangsLevelAboveTheHigherGround() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1)
                .ground(1, shots(0, 0, 50, 5))
                .gate(gate("walk gate", 1, 25, 48))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);

        GateBay gate = plan.gates().get(0);
        // The opening's far edge is 27 ft along the side, where the ground is at 2.7 ft.
        assertThat(gate.leaves().get(0).boardBottom())
                .isEqualTo(Length.ofFeet(2.7).plus(in(2)));
        // From 23 to 27 ft the ground rises 4.8 in: under the near edge the gap is 6.8 in.
        assertThat(plan.findings())
                .filteredOn(finding -> finding.code().equals("gate-gap"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("6 13/16\""));
        // The lower post must reach as high as the leaf.
        assertThat(gate.from().top())
                .isEqualTo(gate.leaves().get(0).boardBottom().plus(Length.ofFeet(6)));
    }

    @Test
    void windMakesCornerAndLinePostsDeeper() {
        Site calm = levelSide().build();
        Site windy = levelSide().windPressure(Pressure.ofPsf(15)).build();
        Post calmPost = FencePlanner.plan(calm, USUAL).posts().get(3);
        FencePlan windyPlan = FencePlanner.plan(windy, USUAL);
        assertThat(windyPlan.posts().get(3).footing().embedment())
                .isGreaterThan(calmPost.footing().embedment())
                .isGreaterThan(windyPlan.posts().get(0).footing().embedment());
        assertThat(windyPlan.posts().get(3).footing())
                .isSameAs(windyPlan.posts().get(4).footing());
    }

    // ---- what is wrong ----

    @Test
    void aLotThatDoesNotCloseHasNoPlanAndSaysByHowMuch() {
        LotBoundary lot = LotBoundary.of(
                List.of(Plans.course(0, 50), Plans.course(90, 40), Plans.course(180, 50), Plans.course(270, 30)));
        FencePlan plan = FencePlanner.plan(Site.on(lot).fenceOn(1).build(), USUAL);
        assertThat(plan.runs()).isEmpty();
        assertThat(blocker(plan)).extracting(Finding::code).isEqualTo("lot-does-not-close");
        assertThat(blocker(plan).message()).contains("10.00 ft").contains("1 part in 17");
        assertThatThrownBy(plan::requireBuildable)
                .isInstanceOf(NotBuildableException.class)
                .hasMessageContaining("do not close");
    }

    @Test
    void aLotThatCrossesItselfNamesTheSides() {
        LotBoundary lot = LotBoundary.of(List.of(
                Plans.course(45, 50 * Math.sqrt(2)),
                Plans.course(180, 50),
                Plans.course(315, 50 * Math.sqrt(2)),
                Plans.course(180, 50)));
        FencePlan plan = FencePlanner.plan(Site.on(lot).fenceOn(1).build(), USUAL);
        assertThat(blocker(plan).code()).isEqualTo("lot-crosses-itself");
        assertThat(blocker(plan).message()).contains("side 1 crosses side 3").contains("25.00 ft");
    }

    @Test
    void aGateWiderThanItsRun() {
        Site site = levelSide().gate(gate("barn gate", 1, 25, 620)).build();
        Finding finding = blocker(FencePlanner.plan(site, USUAL));
        assertThat(finding.code()).isEqualTo("gate-wider-than-run");
        assertThat(finding.place()).contains("barn gate");
        assertThat(finding.message()).contains("51' 8\"").contains("48' 5\"");
    }

    @Test
    void aGatePastTheEndOfItsRun() {
        Site site = levelSide().gate(gate("far gate", 1, 49, 48)).build();
        Finding finding = blocker(FencePlanner.plan(site, USUAL));
        assertThat(finding.code()).isEqualTo("gate-off-run");
        assertThat(finding.message()).contains("47.00 ft to 51.00 ft");
    }

    @Test
    void overlappingGates() {
        Site site = levelSide()
                .gate(gate("one", 1, 20, 48))
                .gate(gate("two", 1, 22, 48))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(blocker(plan).code()).isEqualTo("gates-overlap");
        assertThat(blocker(plan).message()).contains("20.00 ft").contains("one").contains("22.00 ft");
        assertThat(plan.gates()).hasSize(1);
    }

    @Test
    void anOpeningTooNarrowForAGate() {
        Site narrow = levelSide().gate(gate("cat gate", 1, 20, 9)).build();
        assertThat(blocker(FencePlanner.plan(narrow, USUAL)).code()).isEqualTo("gate-brace-wide");
        Site slit = levelSide().gate(gate("slit", 1, 20, 0.75)).build();
        assertThat(blocker(FencePlanner.plan(slit, USUAL)).code()).isEqualTo("gate-too-narrow");
    }

    @Test
    void aGateOnASideWithoutFence() {
        Site site = levelSide().gate(gate("lost gate", 3, 20, 48)).build();
        Finding finding = blocker(FencePlanner.plan(site, USUAL));
        assertThat(finding.code()).isEqualTo("gate-without-fence");
        assertThat(finding.place()).isEqualTo("lost gate on side 3");
    }

    @Test
    void steepGroundWithWind() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1)
                .ground(1, shots(0, 0, 20, 0, 21, 9, 50, 9))
                .windPressure(Pressure.ofPsf(10))
                .build();
        assertThat(blocker(FencePlanner.plan(site, USUAL)).code()).isEqualTo("ground-too-steep");
    }

    @Test
    void shotsOverAnotherDatum() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1, 2)
                .ground(1, shots(0, 0, 49.5, 0))
                .ground(2, shots(0.5, 900, 40, 900))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.findings())
                .filteredOn(finding -> finding.severity() == Severity.BLOCKER)
                .extracting(Finding::code)
                .contains("ground-does-not-meet", "post-too-tall");
    }

    /** A strip 30 in wide: its two posts on side 2 stand 30 - 2 x 7 3/4 = 14 1/2 in apart, those of 16 in wide 1/2 in. */
    @Test
    void postsThatStandInEachOther() {
        FencePlan strip = FencePlanner.plan(
                Site.on(rectangle(50, 16 / 12.0))
                        .fenceOn(1, 3)
                        .ground(1, shots(0, 0, 50, 0))
                        .ground(3, shots(0, 0, 50, 0))
                        .build(),
                USUAL);
        assertThat(blocker(strip).code()).isEqualTo("posts-collide");
        assertThat(blocker(strip).message()).contains("1/2\"");
        assertThat(blocker(strip).place()).isEqualTo("posts 1 and 16");
        FencePlan wider = FencePlanner.plan(
                Site.on(rectangle(50, 25 / 12.0))
                        .fenceOn(1, 3)
                        .ground(1, shots(0, 0, 50, 0))
                        .ground(3, shots(0, 0, 50, 0))
                        .build(),
                USUAL);
        assertThat(wider.isBuildable()).isTrue();
        assertThat(wider.findings()).extracting(Finding::code).contains("holes-run-together");
    }

    /** A gate on the corner post leaves the other run no mitre to meet: it ends at the post's edge like an end. */
    @Test
    void noMitreAtACornerWithAGate() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1, 2)
                .ground(1, shots(0, 0, 50, 0))
                .ground(2, shots(0, 0, 40, 0))
                .gate(gate("corner gate", 1, 47.2, 48))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.gates().get(0).to().kind()).isEqualTo(PostKind.CORNER);
        Stretch side2 = plan.runs().get(1).stretches().get(0);
        assertThat(side2.boarded().start()).isEqualTo(in(-1.75));
    }

    @Test
    void twoGatesMayShareAPostAndAGateTheCornerPost() {
        Site site = levelSide()
                .gate(gate("one", 1, 20, 48))
                .gate(gate("two", 1, 24.5, 48))
                .gate(gate("end gate", 1, 47, 48))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.isBuildable()).isTrue();
        assertThat(plan.gates().get(0).to()).isSameAs(plan.gates().get(1).from());
        assertThat(plan.gates().get(1).opening().start())
                .isEqualTo(plan.gates().get(0).opening().end().plus(in(3.5)));
        assertThat(plan.gates().get(2).to())
                .isSameAs(plan.posts().get(plan.posts().size() - 1));
        assertThat(plan.findings())
                .filteredOn(finding -> finding.code().equals("gate-moved"))
                .hasSize(2);
    }

    @Test
    void aGateThatLeavesNoRoomForItsPost() {
        // Between the end posts' faces are 581 in; 575 leave 6 in, less than a hole.
        Site site = levelSide().gate(gate("wide gate", 1, 25, 575)).build();
        assertThat(blocker(FencePlanner.plan(site, USUAL)).code()).isEqualTo("gate-leaves-no-post");
    }

    @Test
    void groundThatDoesNotCoverTheRun() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1)
                .ground(1, shots(5, 0, 50, 0))
                .build();
        Finding finding = blocker(FencePlanner.plan(site, USUAL));
        assertThat(finding.code()).isEqualTo("ground-not-covered");
        assertThat(finding.place()).isEqualTo("side 1");
        assertThat(finding.message()).contains("5.00 ft to 50.00 ft").contains("0.65 ft to 49.35 ft");
        assertThat(blocker(FencePlanner.plan(
                                Site.on(rectangle(50, 40)).fenceOn(1).build(), USUAL))
                        .code())
                .isEqualTo("no-ground");
    }

    /** Shots from 1 ft to 49 ft, the posts 7 3/4 in from the corners: 5 % goes on for 4 1/4 in, 0.2125 in up and down. */
    @Test
    void groundGoesOnALittlePastTheShots() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1)
                .ground(1, shots(1, 0, 49, 2.4))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.posts().get(0).ground()).isEqualTo(in(-0.2125));
        assertThat(plan.posts().get(7).ground()).isEqualTo(in(28.8 + 0.2125));
        assertThat(plan.findings())
                .filteredOn(finding -> finding.code().equals("ground-continued"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("4 1/4\""));
    }

    @Test
    void groundTooSteepToBuildOn() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1)
                .ground(1, shots(0, 0, 20, 0, 30, 15, 50, 15))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.findings())
                .filteredOn(finding -> finding.severity() == Severity.BLOCKER)
                .extracting(Finding::code)
                .contains("ground-too-steep");
    }

    @Test
    void aStretchTooShortForTheBoards() {
        // Of 24 in, 2 x 7 3/4 are off: the posts' outer edges are 12 in apart, less than two boards and a gap of 2 1/2.
        Site site = Site.on(rectangle(2, 40))
                .fenceOn(1)
                .ground(1, shots(0, 0, 2, 0))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.findings())
                .filteredOn(finding -> finding.severity() == Severity.BLOCKER)
                .extracting(Finding::code)
                .contains("too-short-for-boards");
    }

    @Test
    void aLotTooNarrowForTheSetback() {
        Site site = Site.on(rectangle(50, 1))
                .fenceOn(1)
                .ground(1, shots(0, 0, 50, 0))
                .build();
        assertThat(blocker(FencePlanner.plan(site, USUAL)).code()).isEqualTo("lot-too-narrow");
    }

    @Test
    void aStringOnTheBoundaryPutsTheConcreteOverIt() {
        Site site = levelSide().setback(in(1)).build();
        assertThat(FencePlanner.plan(site, USUAL).findings())
                .filteredOn(finding -> finding.code().equals("over-the-boundary"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("3 1/2\""));
    }

    @Test
    void shotsOfTwoSidesThatDisagreeAtTheirCorner() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1, 2)
                .ground(1, shots(0, 0, 50, 0))
                .ground(2, shots(0, 1, 40, 1))
                .build();
        assertThat(FencePlanner.plan(site, USUAL).findings())
                .filteredOn(finding -> finding.code().equals("ground-does-not-meet"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("1' 0\""));
    }

    private static Finding blocker(FencePlan plan) {
        return plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no blocker in " + plan.findings()));
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
