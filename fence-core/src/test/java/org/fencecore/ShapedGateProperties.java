package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.Plans.rectangle;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.boarding.BoardCut;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.HingeLoads;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.slope.TopShape;
import org.fencecore.style.FenceStyle;
import org.fencecore.takeoff.Piece;
import org.fencecore.takeoff.PieceKind;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/** Gates with tops of any shape, on level ground and on a slope, seen from either side. */
class ShapedGateProperties {

    private static FencePlan plan(
            TopShape top, double opening, double percent, boolean two, HingeSide hinges, Side outside) {
        Polyline line = Polyline.of(
                List.of(Point.of(Length.ofFeet(5), Length.ofFeet(30)), Point.of(Length.ofFeet(45), Length.ofFeet(30))));
        Site site = Site.on(rectangle(60, 60))
                .fenceAlong(line, outside)
                .ground(Plane.of(Point.ORIGIN, Length.ofFeet(3), Slope.ofPercent(percent), Slope.LEVEL))
                .gate(GateLocation.named("gate")
                        .onSide(1)
                        .centredAt(Length.ofFeet(20))
                        .clearOpening(Length.ofInches(opening))
                        .raked(true)
                        .twoLeaves(two)
                        .hinges(hinges)
                        .build())
                .build();
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.shadowbox(Length.ofInches(5.5)).withLap(Length.ofInches(1)))
                .gateTop(top)
                .build();
        return FencePlanner.plan(site, style);
    }

    /** Each board reaches from the line of the bottoms at its middle to the line of the tops, and no further. */
    @Property(tries = 40)
    void boardsReachTheLineOfTheTops(
            @ForAll("tops") TopShape top,
            @ForAll @DoubleRange(min = 36, max = 110) double opening,
            @ForAll @DoubleRange(min = -20, max = 20) double percent,
            @ForAll boolean two,
            @ForAll("outsides") Side outside) {
        FencePlan plan = plan(top, opening, percent, two, HingeSide.LEFT, outside);
        GateBay gate = plan.gates().get(0);
        int boards = 0;
        for (HungLeaf leaf : gate.leaves()) {
            for (BoardCut cut : leaf.cuts().orElseThrow().cuts()) {
                boards++;
                List<ProfilePoint> corners = cut.outline();
                for (ProfilePoint corner : corners.subList(2, corners.size())) {
                    Length fromPost = leaf.leaf().place().start().plus(corner.station());
                    Length station = outside == Side.RIGHT
                            ? gate.opening().start().plus(fromPost)
                            : gate.opening().end().minus(fromPost);
                    if (!top.isStraight()) {
                        assertThat(corner.elevation()
                                        .minus(gate.top().topAt(station))
                                        .inches())
                                .isCloseTo(0, within(1e-6));
                    }
                }
                assertThat(cut.length()).isGreaterThanOrEqualTo(cut.meanLength().minus(Length.ofNanometres(2)));
            }
        }
        assertThat(gate.boardCount()).isEqualTo(boards);
        int cut = Takeoff.of(plan).pieces().stream()
                .filter(piece ->
                        piece.kind() == PieceKind.BOARD && piece.label().startsWith("gate"))
                .mapToInt(Piece::count)
                .sum();
        assertThat(cut).isEqualTo(boards);
    }

    /** The same gate hung on the other side over ground that rises the other way is its mirror. */
    @Property(tries = 40)
    void mirroredHandMirroredLeaf(
            @ForAll("tops") TopShape top,
            @ForAll @DoubleRange(min = 36, max = 60) double opening,
            @ForAll @DoubleRange(min = -20, max = 20) double percent,
            @ForAll("outsides") Side outside) {
        HungLeaf one = plan(top, opening, percent, false, HingeSide.LEFT, outside)
                .gates()
                .get(0)
                .leaves()
                .get(0);
        HungLeaf other = plan(top, opening, -percent, false, HingeSide.RIGHT, outside)
                .gates()
                .get(0)
                .leaves()
                .get(0);
        List<BoardCut> boards = one.cuts().orElseThrow().cuts();
        List<BoardCut> mirrored = other.cuts().orElseThrow().cuts();
        assertThat(mirrored).hasSameSizeAs(boards);
        for (BoardCut cut : boards) {
            BoardPlacement board = cut.board();
            BoardCut mirror = mirrored.stream()
                    .filter(each -> each.board().face() == board.face())
                    .filter(each -> each.board()
                                    .right()
                                    .minus(one.leaf().width().minus(board.left()))
                                    .abs()
                                    .compareTo(Length.ofNanometres(2))
                            <= 0)
                    .findFirst()
                    .orElseThrow();
            assertThat(mirror.leftEdge().minus(cut.rightEdge()).inches()).isCloseTo(0, within(1e-6));
            assertThat(mirror.rightEdge().minus(cut.leftEdge()).inches()).isCloseTo(0, within(1e-6));
        }
        HingeLoads loads = one.loads().orElseThrow();
        HingeLoads mirror = other.loads().orElseThrow();
        assertThat(mirror.pullAtTop().newtons()).isCloseTo(loads.pullAtTop().newtons(), within(1e-3));
        assertThat(other.blocks()).isEqualTo(one.blocks());
    }

    @Provide
    Arbitrary<TopShape> tops() {
        return Arbitraries.oneOf(
                Arbitraries.of(TopShape.straight(), TopShape.stepped(), TopShape.followingGround()),
                Arbitraries.doubles().between(0.5, 12).map(rise -> TopShape.arched(Length.ofInches(rise))),
                Arbitraries.doubles().between(0.5, 12).map(dip -> TopShape.dipped(Length.ofInches(dip))));
    }

    @Provide
    Arbitrary<Side> outsides() {
        return Arbitraries.of(Side.class);
    }
}
