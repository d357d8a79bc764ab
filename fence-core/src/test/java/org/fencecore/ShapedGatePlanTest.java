package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.Plans.levelSide;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.util.List;
import org.fencecore.boarding.BoardCut;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.view.ElevationView;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.LeafWeight;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.packet.BuildSheet;
import org.fencecore.rules.HeightLimit;
import org.fencecore.rules.LocalRules;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.slope.TopShape;
import org.fencecore.style.FenceStyle;
import org.fencecore.takeoff.Piece;
import org.fencecore.takeoff.PieceKind;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/**
 * Gates whose boards carry an arched, dipped or stepped top line.
 *
 * <p>By hand, the leaf of nine boards of 5 1/2 in side by side, 49 1/2 in wide, in an opening of 50 1/4 in, 1/2 in from its
 * left post. Arched 6 in from post to post the radius is (25.125^2 + 6^2) / 12 = 55.6055 in. The fifth board holds the
 * middle: 78 in. The first one's edges are 24.625 and 19.125 in from the middle:
 * 72 + 6 - 55.6055 + sqrt(55.6055^2 - 24.625^2) = 72.2501 in and, with 19.125, 74.6076 in.
 */
class ShapedGatePlanTest {

    private static final Length BOARD = Length.ofInches(5.5);

    private static FenceStyle.Builder close() {
        return FenceStyle.builder().pattern(BoardPattern.sideBySide(BOARD));
    }

    private static GateLocation.Builder gate(double openingInches) {
        return GateLocation.named("gate")
                .onSide(1)
                .centredAt(Length.ofFeet(20))
                .clearOpening(Length.ofInches(openingInches));
    }

    private static FencePlan level(GateLocation.Builder gate, FenceStyle style) {
        return FencePlanner.plan(levelSide().gate(gate.build()).build(), style);
    }

    private static HungLeaf leaf(FencePlan plan) {
        return plan.gates().get(0).leaves().get(0);
    }

    private static List<BoardCut> boards(HungLeaf leaf) {
        return leaf.cuts().orElseThrow().cuts();
    }

    private static List<String> codes(FencePlan plan) {
        return plan.findings().stream().map(Finding::code).toList();
    }

    private static final FenceStyle ARCHED =
            close().gateTop(TopShape.arched(Length.ofInches(6))).build();

    @Test
    void eachBoardReachesTheArch() {
        HungLeaf leaf = leaf(level(gate(50.25), ARCHED));
        List<BoardCut> boards = boards(leaf);
        assertThat(boards).hasSize(9);
        assertThat(boards.get(0).length().inches()).isCloseTo(74.6076, within(0.0001));
        assertThat(boards.get(4).length().inches()).isCloseTo(78, within(1e-6));
        List<ProfilePoint> corners = boards.get(0).outline();
        assertThat(corners).hasSize(4);
        assertThat(corners.get(0)).isEqualTo(new ProfilePoint(Length.ZERO, leaf.boardBottom()));
        assertThat(corners.get(1).station()).isEqualTo(BOARD);
        assertThat(corners.get(3).elevation().minus(leaf.boardBottom()).inches())
                .isCloseTo(72.2501, within(0.0001));
        // The crown is a corner of its own.
        assertThat(boards.get(4).outline()).hasSize(5);
    }

    @Test
    void mirroredHandMirroredBoards() {
        HungLeaf left = leaf(level(gate(50.25), ARCHED));
        HungLeaf right = leaf(level(gate(50.25).hinges(HingeSide.RIGHT), ARCHED));
        for (int i = 0; i < 9; i++) {
            BoardCut board = boards(left).get(i);
            BoardCut mirror = boards(right).get(8 - i);
            assertThat(board.length().minus(mirror.length()).inches()).isCloseTo(0, within(1e-6));
            assertThat(board.leftEdge().minus(mirror.rightEdge()).inches()).isCloseTo(0, within(1e-6));
            assertThat(board.outline()).hasSameSizeAs(mirror.outline());
        }
    }

    /** Seen from outside a run may go either way; its boards are told from left to right all the same. */
    @Test
    void theCornersGoRoundAlikeWhicheverWayTheRunGoes() {
        for (Side outside : Side.values()) {
            Polyline line = Polyline.of(List.of(
                    Point.of(Length.ofFeet(5), Length.ofFeet(30)), Point.of(Length.ofFeet(45), Length.ofFeet(30))));
            Site site = Site.on(rectangle(60, 60))
                    .fenceAlong(line, outside)
                    .ground(Plane.of(Point.ORIGIN, Length.ZERO, Slope.LEVEL, Slope.LEVEL))
                    .gate(gate(50.25).build())
                    .build();
            HungLeaf leaf = leaf(FencePlanner.plan(site, ARCHED));
            for (BoardCut cut : boards(leaf)) {
                List<ProfilePoint> corners = cut.outline();
                BoardPlacement board = cut.board();
                assertThat(corners.get(0).station()).isEqualTo(board.left());
                assertThat(corners.get(1).station()).isEqualTo(board.right());
                assertThat(corners.get(2).station()).isEqualTo(board.right());
                assertThat(corners.get(corners.size() - 1).station()).isEqualTo(board.left());
                assertThat(corners.get(0).elevation()).isEqualTo(corners.get(1).elevation());
            }
            // The hinges are on the left seen from outside, with 1/2 in there and 1/4 in at the latch.
            assertThat(boards(leaf).get(0).length())
                    .isLessThan(boards(leaf).get(1).length());
            assertThat(boards(leaf).get(0).outline().get(3).elevation())
                    .isGreaterThan(boards(leaf).get(8).outline().get(2).elevation());
        }
    }

    /**
     * What the leaf weighs against the arch summed in strips of a hundredth of an inch: the boards are cut straight from
     * edge to edge, which leaves out w^3 / (12 r) = 0.25 sq in of each of them.
     */
    @Test
    void weightAndCentreOfGravityFollowTheArch() {
        FencePlan plan = level(gate(50.25), ARCHED);
        LeafWeight shaped = leaf(plan).loads().orElseThrow().leafWeight();
        LeafWeight straight =
                leaf(level(gate(50.25), close().build())).loads().orElseThrow().leafWeight();
        double area = 0;
        double radius = (25.125 * 25.125 + 36) / 12;
        for (double x = 0.005; x < 49.5; x += 0.01) {
            double d = x + 0.5 - 25.125;
            area += 0.01 * (72 + 6 - radius + Math.sqrt(radius * radius - d * d));
        }
        double expected = straight.boards().poundsForce() * area / (49.5 * 72);
        assertThat(shaped.boards().poundsForce()).isCloseTo(expected, within(expected * 0.001));
        assertThat(shaped.frame()).isEqualTo(straight.frame());
        assertThat(shaped.up()).isGreaterThan(straight.up());
        assertThat(shaped.worksheet().result()).isEqualTo(shaped.fromHingeEdge());
        assertThat(shaped.worksheet().toString()).contains("width x thickness x sum of mean lengths");
    }

    /** One arch over both leaves of a pair: each is heavier towards the middle. */
    @Test
    void anArchOverTwoLeavesMovesTheirCentresAwayFromTheHinges() {
        double opening = 2 * 49.5 + 1.5;
        GateBay arched = level(gate(opening).twoLeaves(true), ARCHED).gates().get(0);
        GateBay plain =
                level(gate(opening).twoLeaves(true), close().build()).gates().get(0);
        for (int i = 0; i < 2; i++) {
            Length with =
                    arched.leaves().get(i).loads().orElseThrow().leafWeight().fromHingeEdge();
            Length without =
                    plain.leaves().get(i).loads().orElseThrow().leafWeight().fromHingeEdge();
            assertThat(with).isGreaterThan(without);
        }
        HungLeaf left = arched.leaves().get(0);
        HungLeaf right = arched.leaves().get(1);
        assertThat(boards(left).get(8).length().inches()).isCloseTo(78, within(0.01));
        assertThat(boards(right).get(0).length().inches()).isCloseTo(78, within(0.01));
        assertThat(boards(left).get(0).length()).isLessThan(Length.ofInches(74));
    }

    /** The fence's own shape runs through its gates unless they have another. */
    @Test
    void theFencesLineIsCarriedThrough() {
        FenceStyle dipped = close().top(TopShape.dipped(Length.ofInches(3))).build();
        HungLeaf leaf = leaf(level(gate(50.25), dipped));
        assertThat(boards(leaf).get(4).outline().get(3).elevation().minus(leaf.boardBottom()))
                .isEqualTo(Length.ofInches(69));
        FenceStyle own = close().top(TopShape.dipped(Length.ofInches(3)))
                .gateTop(TopShape.straight())
                .build();
        HungLeaf plain = leaf(level(gate(50.25), own));
        assertThat(boards(plain).get(4).length()).isEqualTo(Length.ofInches(72));
        // A dip of more than the 4 in that boards stand above the rail shows it.
        FenceStyle deep = close().top(TopShape.dipped(Length.ofInches(6))).build();
        assertThat(level(gate(50.25), deep).findings())
                .filteredOn(finding -> finding.code().equals("rail-above-boards"))
                .extracting(Finding::place)
                .contains("side 1, gate");
    }

    /** On 5 % the bottoms rise 50.25 x 0.05 = 2.5125 in through the opening; a stepped top is level over the higher. */
    @Test
    void aSteppedTopIsLevelOverARakedLeaf() {
        Site.Builder slope = Site.on(rectangle(50, 40)).fenceOn(1).ground(1, shots(0, 0, 50, 2.5));
        FenceStyle style = close().gateTop(TopShape.stepped()).build();
        FencePlan plan =
                FencePlanner.plan(slope.gate(gate(50.25).raked(true).build()).build(), style);
        GateBay bay = plan.gates().get(0);
        Length top = bay.top().topAt(bay.opening().start());
        assertThat(bay.top().topAt(bay.opening().end())).isEqualTo(top);
        Length bottom = bay.bottomLine().elevationAt(bay.opening().start());
        assertThat(top.minus(bottom).inches()).isCloseTo(72 + 2.5125, within(1e-6));
        // The gate posts reach what stands between them.
        assertThat(bay.from().top()).isGreaterThanOrEqualTo(top);
    }

    @Test
    void boardsFarAboveTheFrameAreToldOf() {
        FenceStyle tall = close().gateTop(TopShape.arched(Length.ofInches(9))).build();
        Finding finding = level(gate(50.25), tall).findings().stream()
                .filter(each -> each.code().equals("gate-boards-tall"))
                .findFirst()
                .orElseThrow();
        assertThat(finding.place()).isEqualTo("side 1, gate");
        // 4 in above the rail at the posts and 9 in more in the middle.
        assertThat(finding.message()).contains("up to 1' 1\" above the top rail");
        FenceStyle allowed = close().gateTop(TopShape.arched(Length.ofInches(9)))
                .gate(GateSpec.builder().reasonableOverhang(Length.ofInches(14)).build())
                .build();
        assertThat(codes(level(gate(50.25), allowed))).doesNotContain("gate-boards-tall");
        assertThat(codes(level(gate(50.25), ARCHED))).doesNotContain("gate-boards-tall", "arch-limited");
        // An opening of 15 in is narrower than twice 9 in.
        assertThat(codes(level(gate(15), tall))).contains("arch-limited");
    }

    @Test
    void everyBoardIsInTheCutListAndOnTheSheet() {
        FencePlan plan = level(gate(50.25), ARCHED);
        Takeoff takeoff = Takeoff.of(plan);
        List<Piece> boards = takeoff.pieces().stream()
                .filter(piece ->
                        piece.kind() == PieceKind.BOARD && piece.label().equals("gate boards"))
                .toList();
        assertThat(boards.stream().mapToInt(Piece::count).sum()).isEqualTo(9);
        assertThat(boards)
                .anySatisfy(piece -> assertThat(piece.length().inches()).isCloseTo(78, within(0.001)));
        assertThat(boards).allSatisfy(piece -> assertThat(piece.cuts()).contains("top to the line"));
        String sheet = BuildSheet.of(plan, takeoff).toText().replaceAll("\\s+", " ");
        assertThat(sheet)
                .contains("tops arched between posts by 6 in: set the boards cut long")
                .contains("outside 5 1' 10\" 6' 6\"");
        assertThat(plan.worksheets())
                .anyMatch(each -> each.title().startsWith("side 1, gate, middle of the opening: Board at"));
    }

    @Test
    void theElevationAndTheRulesSeeTheArch() {
        FencePlan plan = level(gate(50.25), ARCHED);
        assertThat(ElevationView.of(plan, plan.runs().get(0)).shapes())
                .filteredOn(shape -> shape instanceof Outline outline && outline.layer() == Layer.OUTSIDE_BOARDS)
                .anySatisfy(shape -> assertThat(((Outline) shape).corners())
                        .extracting(Spot::up)
                        .contains(Length.ofInches(2 + 78)));
        HeightLimit limit = HeightLimit.of(
                Zone.everywhere(), Length.ofInches(76), "height", Citation.of("invented town code", "1", ""));
        Site site = levelSide()
                .gate(gate(50.25).build())
                .rules(LocalRules.of(List.of(limit)))
                .build();
        assertThat(codes(FencePlanner.plan(site, ARCHED))).contains("rule-height");
        assertThat(codes(FencePlanner.plan(site, close().build()))).doesNotContain("rule-height");
    }
}
