package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.Face;
import org.fencecore.packet.BuildPacket;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopShape;
import org.fencecore.style.BoardStyle;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.takeoff.Piece;
import org.fencecore.takeoff.PieceKind;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/**
 * Boards in courses on a side of 50 ft: 8 posts 83 1/2 in apart, 584 1/2 in from first to last, boarded from edge to edge
 * over 588 in (worked in FencePlannerTest).
 */
class HorizontalBoardsTest {

    private static final Lumber LONG =
            Lumber.of("1x6", in(0.75), in(5.5)).soldIn(Length.ofFeet(8), Length.ofFeet(12), Length.ofFeet(16));

    private static final FenceStyle LYING = FenceStyle.builder()
            .pattern(BoardPattern.sideBySide(in(5.5)))
            .boards(BoardStyle.horizontal())
            .boardLumber(LONG)
            .build();

    /*
     * Height: 13 courses of 5 1/2 in leave 72 - 71 1/2 = 1/2 in, 1/24 in between two.
     * Length: 16 ft pass two bays (168 3/4 in with the post's half at an end) but not three, and 588 / 192 is over 3, so
     * four boards a course, 52 in all; joints on posts 3, 5, 7 and 2, 4, 6 in turn.
     * Nailers: 83 1/2 in is over 4 ft and under 8, one in the middle of each bay, 41 3/4 in from the post.
     * Fixings: 8 posts and 7 nailers, and each of 3 joints twice: 18 a course, 234 in all, 468 fasteners.
     */
    @Test
    void aLevelSideByHand() {
        FencePlan plan = FencePlanner.plan(Plans.levelSide().build(), LYING);
        assertThat(plan.isBuildable()).isTrue();
        Stretch stretch = plan.stretches().get(0);
        assertThat(stretch.boards()).isEmpty();
        assertThat(plan.bays()).allSatisfy(bay -> assertThat(bay.rails()).isEmpty());
        assertThat(stretch.courses()).hasSize(1);

        CourseRun part = stretch.courses().get(0);
        assertThat(part.layout().courses().count()).isEqualTo(13);
        assertThat(part.layout().courses().row(Face.OUTSIDE).gap().inches()).isCloseTo(1 / 24.0, offset(1e-7));
        assertThat(part.stations()).isEqualTo(Interval.of(in(-1.75), in(586.25)));
        assertThat(part.layout().jointsInLine()).isEmpty();
        assertThat(List.of(
                        part.layout().pieces(0).get(0).length(),
                        part.layout().pieces(1).get(0).length()))
                .containsExactlyInAnyOrder(in(85.25), in(168.75));
        assertThat(plan.boardCount()).isEqualTo(52);
        assertThat(part.nailers()).hasSize(7).startsWith(in(41.75), in(125.25));
        assertThat(part.fixingCount()).isEqualTo(234);
        assertThat(part.mark(part.boards().get(51).placement())).isEqualTo(in(66.5));
        assertThat(part.boards()).hasSize(52).last().satisfies(board -> {
            assertThat(board.course()).isEqualTo(13);
            assertThat(board.stations().end()).isEqualTo(in(586.25));
        });

        Takeoff takeoff = Takeoff.of(plan);
        assertThat(count(takeoff, PieceKind.BOARD)).isEqualTo(52);
        assertThat(count(takeoff, PieceKind.NAILER)).isEqualTo(7);
        assertThat(count(takeoff, PieceKind.RAIL)).isZero();
        assertThat(takeoff.materials()).anySatisfy(line -> {
            assertThat(line.item()).startsWith("exterior screw");
            assertThat(line.quantity()).isEqualTo(468);
        });
        assertThat(BuildPacket.of(plan).files())
                .containsKeys("courses.csv", "nailers.csv")
                .doesNotContainKeys("rails.csv", "boards.csv");
    }

    private static int count(Takeoff takeoff, PieceKind kind) {
        return takeoff.pieces().stream()
                .filter(piece -> piece.kind() == kind)
                .mapToInt(Piece::count)
                .sum();
    }

    /*
     * A grade of 10 %: 1 / cos = 1.0049876. The courses share 72 cos = 71.64267 in; the highest begins 72 - 5.5 x
     * 1.0049876 = 66.47257 in up the post, plumb. Two bays of 83 1/2 in are 167.83293 in along the board.
     */
    @Test
    void onAGradeBoardsAreLongerAndTheirEndsPlumb() {
        FencePlan plan = FencePlanner.plan(
                Site.on(Plans.rectangle(50, 40))
                        .fenceOn(1)
                        .ground(1, Plans.shots(0, 0, 50, 5))
                        .build(),
                LYING);
        CourseRun part = plan.stretches().get(0).courses().get(0);
        assertThat(plan.stretches().get(0).courses()).hasSize(1);
        assertThat(part.layout().courses().clearLength().inches()).isCloseTo(71.64267, offset(1e-5));
        assertThat(part.mark(part.boards().get(51).placement()).inches()).isCloseTo(66.47257, offset(1e-5));
        assertThat(part.endCut().degrees()).isCloseTo(5.7106, offset(1e-4));
        assertThat(part.boards())
                .extracting(board -> board.length().inches())
                .anySatisfy(length -> assertThat(length).isCloseTo(167.83293, offset(1e-5)));
        // The ends slant by 5.5 x 0.1 in, which the stick must hold as well.
        assertThat(Takeoff.of(plan).pieces())
                .filteredOn(piece -> piece.kind() == PieceKind.BOARD)
                .allSatisfy(piece -> assertThat(
                                piece.overall().minus(piece.length()).inches())
                        .isCloseTo(0.55, offset(1e-6)));
    }

    /* The ground bends at 25 ft, between posts 4 and 5: one bay has its own grade, so that boards end at both. */
    @Test
    void boardsEndWhereTheFenceBends() {
        FencePlan plan = FencePlanner.plan(
                Site.on(Plans.rectangle(50, 40))
                        .fenceOn(1)
                        .ground(1, Plans.shots(0, 0, 25, 0, 50, 2))
                        .build(),
                LYING);
        assertThat(plan.stretches().get(0).courses()).hasSize(3);
        assertThat(plan.findings())
                .filteredOn(finding -> finding.code().equals("courses-break"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("at 2 posts"));
    }

    /* Boards of 6 ft do not reach over bays of 83 1/2 in. */
    @Test
    void aBoardMustReachFromPostToPost() {
        FenceStyle brief = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(in(5.5)))
                .boards(BoardStyle.horizontal())
                .boardLumber(Lumber.of("1x6", in(0.75), in(5.5)).soldIn(Length.ofFeet(6)))
                .build();
        FencePlan plan = FencePlanner.plan(Plans.levelSide().build(), brief);
        assertThat(plan.isBuildable()).isFalse();
        assertThat(plan.findings()).extracting(Finding::code).contains("bay-longer-than-board");
    }

    /* A corner: backs are at the posts' faces, 1 3/4 in out, so the leaving run begins 2 1/2 in before the post. */
    @Test
    void atACornerTheNextSidesBoardsLap() {
        FencePlan plan = FencePlanner.plan(
                Plans.levelSide().fenceOn(2).ground(2, Plans.shots(0, 0, 40, 0)).build(), LYING);
        assertThat(plan.runs().get(0).stretches().get(0).boarded().end())
                .isEqualTo(plan.runs().get(0).length().plus(in(1.75)));
        assertThat(plan.runs().get(1).stretches().get(0).boarded().start()).isEqualTo(in(-2.5));
    }

    @Test
    void theLeafOfAGateHasTheCoursesOfTheFence() {
        FencePlan plan = FencePlanner.plan(
                Plans.levelSide().gate(Plans.gate("garden gate", 1, 25, 42)).build(), LYING);
        GateBay gate = plan.gates().get(0);
        HungLeaf leaf = gate.leaves().get(0);
        assertThat(leaf.boards()).isEmpty();
        assertThat(leaf.courses())
                .hasValueSatisfying(part -> assertThat(part.layout().courses())
                        .isEqualTo(plan.stretches()
                                .get(0)
                                .courses()
                                .get(0)
                                .layout()
                                .courses()));
        assertThat(gate.boardCount()).isEqualTo(13);
        assertThat(plan.findings()).extracting(Finding::code).doesNotContain("courses-off-at-gate");
    }

    /*
     * Ground that rises 1 in 20 along the run, the leaf raked with it: 3 ft 5 1/4 in of leaf, its 13 boards 41.25 /
     * cos(2.8624 deg) = 41.3015 in along the grade, ends 2.9 deg off square, fixed to both stiles.
     */
    @Test
    void onARakedLeafBoardsLieAlongTheRake() {
        FencePlan plan = FencePlanner.plan(
                Site.on(Plans.rectangle(50, 40))
                        .fenceOn(1)
                        .ground(1, Plans.shots(0, 0, 50, 2.5))
                        .gate(GateLocation.named("garden gate")
                                .onSide(1)
                                .centredAt(Length.ofFeet(25))
                                .clearOpening(in(42))
                                .raked(true)
                                .build())
                        .build(),
                LYING);
        HungLeaf leaf = plan.gates().get(0).leaves().get(0);
        CourseRun courses = leaf.courses().orElseThrow();
        assertThat(courses.boards())
                .hasSize(13)
                .allSatisfy(board ->
                        assertThat(board.length().inches()).isCloseTo(41.25 * Math.hypot(1, 0.05), offset(1e-4)));
        assertThat(courses.endCut().degrees()).isCloseTo(2.8624, offset(1e-3));
        assertThat(courses.fixingCount()).isEqualTo(26);
        assertThat(plan.findings()).extracting(Finding::code).doesNotContain("courses-off-at-gate");
        assertThat(BuildPacket.of(plan).files())
                .extractingByKey("courses.csv", InstanceOfAssertFactories.STRING)
                .contains("garden gate,left edge of the leaf seen from outside,1,");
        assertThat(BuildPacket.of(plan).sheet().toText())
                .contains("boards: 13 courses, each one board of 3' 5 5/16\" with both ends 2.9 deg off square");
    }

    /* A level leaf of 41 1/4 in: 13 boards of 5 1/2 x 3/4 in that lie weigh what their wood does, 2211.6 cu in. */
    @Test
    void boardsThatLieAreWeighedOnTheLeaf() {
        FencePlan plan = FencePlanner.plan(
                Plans.levelSide().gate(Plans.gate("garden gate", 1, 25, 42)).build(), LYING);
        double volume = 13 * 5.5 * 0.75 * 41.25 / 1728;
        double perCubicFoot =
                LYING.gateHardware().woodOf(LYING.boardLumber()).unitWeight().pcf();
        assertThat(plan.gates()
                        .get(0)
                        .leaves()
                        .get(0)
                        .loads()
                        .orElseThrow()
                        .leafWeight()
                        .boards()
                        .poundsForce())
                .isCloseTo(volume * perCubicFoot, offset(1e-6));
    }

    @Test
    void patternsThatLapDoNotLie() {
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        FenceStyle.builder().boards(BoardStyle.horizontal()).build())
                .withMessageContaining("one face");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BoardStyle.horizontal().withNailersEvery(in(3)))
                .withMessageContaining("from 1 to 20 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BoardStyle.upright().withNailersEvery(in(36)))
                .withMessageContaining("start from horizontal");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BoardStyle.horizontal().withEnds(BoardEnds.square()))
                .withMessageContaining("start from upright");
        FenceStyle.Builder lying =
                FenceStyle.builder().pattern(BoardPattern.sideBySide(in(5.5))).boards(BoardStyle.horizontal());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> lying.top(TopShape.arched(in(6))).build())
                .withMessageContaining("leave the tops straight");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> lying.top(TopShape.straight())
                        .slope(SlopeSpec.builder()
                                .underBoards(SlopeSpec.UnderBoards.BOARDS_TO_GROUND)
                                .build())
                        .build())
                .withMessageContaining("close gaps under it with kick boards");
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
