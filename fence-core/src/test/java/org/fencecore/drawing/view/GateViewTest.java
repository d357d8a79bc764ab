package org.fencecore.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.GateBay;
import org.fencecore.Plans;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.drawing.sheet.Svg;
import org.fencecore.drawing.sheet.SvgSheet;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.HingeSide;
import org.fencecore.layout.BoardPattern;
import org.fencecore.site.GateLocation;
import org.fencecore.slope.TopShape;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.GateHardware;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class GateViewTest {

    private static final GateBay GARDEN_GATE = BackYard.sloping().gates().get(1);

    /**
     * By hand: an opening of 47 1/2 in less gaps of 1/2 and 1/4 leaves a leaf of 46 3/4 = 3 ft 10 3/4; between stiles of
     * 3 1/2 that is 39 3/4 = 3 ft 3 3/4. A frame of 72 - 4 - 4 = 64 in = 5 ft 4 leaves 57 = 4 ft 9 between rails. The
     * brace is the diagonal of 39 3/4 by 57, 69.4915 = 5 ft 9 1/2, rising atan(57 / 39.75) = 55.1 degrees; the frame's
     * diagonal is that of 46 3/4 by 64, 79.2563 = 6 ft 7 1/4.
     */
    @Test
    void theSheetTellsTheCarpenterWhatToCut() throws Exception {
        SvgSheet sheet = SvgSheet.read(Svg.write(GateView.of(GARDEN_GATE), Paper.LETTER));

        assertThat(sheet.words())
                .contains("clear opening 3' 11 1/2\"", "leaf 3' 10 3/4\"", "between stiles 3' 3 3/4\"")
                .contains("1/2\"", "1/4\"", "frame 5' 4\"", "between rails 4' 9\"")
                .contains("hinge post", "latch post", "hinge stile 5' 4\"", "latch stile 5' 4\"")
                .contains("top rail 3' 3 3/4\"", "bottom rail 3' 3 3/4\"")
                .contains("brace 5' 9 1/2\"", "boards 6' 0\"")
                .contains("hinge 1 3/4\"", "hinge 2' 8\"", "hinge 5' 2 1/4\"");
        assertThat(String.join(" ", sheet.words()))
                .contains("Cut each end to a point: 34.9° off square against the rail, 55.1° against the stile.")
                .contains("Square when both diagonals are 6'\u00a07\u00a01/4\".")
                .contains("Behind straps off the rails 1 block of 8\u00a01/2\".")
                .contains("They begin 4\" under the frame.")
                .contains("boards left off but for their edge. Hangs between post 24 and post 25");
    }

    /**
     * Straps 2 in wide reach 12 in over the leaf from its hinge edge; the boards begin 4 in under the frame. The middle strap
     * is at 32 in and has a block of 3 1/2 in behind it, from the stile's 3 1/2 in to its end.
     */
    @Test
    void strapsAndTheEdgeOfTheBoardsAreDrawnWhereTheyAre() {
        Drawing drawing = GateView.of(GARDEN_GATE);
        assertThat(outlines(drawing, Layer.HINGES))
                .hasSize(4)
                .contains(Outline.rectangle(
                        Layer.HINGES,
                        Length.ofInches(3.5),
                        Length.ofInches(30.25),
                        Length.ofInches(12),
                        Length.ofInches(33.75)))
                .contains(Outline.rectangle(
                        Layer.HINGES, Length.ZERO, Length.ofInches(0.75), Length.ofInches(12), Length.ofInches(2.75)));
        Line edge = drawing.shapes().stream()
                .filter(shape -> shape.layer() == Layer.OUTSIDE_BOARDS)
                .map(Line.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(edge.spots()).contains(inches(0, -4), inches(46.75, -4), inches(0, 68), inches(46.75, 68));
        assertThat(edge.spots().get(0)).isEqualTo(edge.spots().get(edge.spots().size() - 1));
    }

    /** One arch over both leaves: their edges meet at its crown. */
    @Test
    void aPairCarriesItsArchInTheDrawingAndOnPaperNothingIsLeftOut() throws Exception {
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .gateTop(TopShape.arched(Length.ofInches(6)))
                .build();
        GateLocation wide = GateLocation.named("drive gate")
                .onSide(1)
                .centredAt(Length.ofFeet(20))
                .clearOpening(Length.ofInches(100.5))
                .twoLeaves(true)
                .selfClosing(true)
                .latchRelease(Length.ofInches(48), true)
                .build();
        FencePlan plan = FencePlanner.plan(Plans.levelSide().gate(wide).build(), style);
        Drawing drawing = GateView.of(plan.gates().get(0));
        Length highest = drawing.shapes().stream()
                .filter(shape -> shape.layer() == Layer.OUTSIDE_BOARDS)
                .flatMap(shape -> ((Line) shape).spots().stream())
                .map(Spot::up)
                .reduce(Length.ZERO, Length::max);
        assertThat(highest.inches()).isBetween(73.99, 74.0);
        for (Paper paper : List.of(Paper.LETTER, Paper.A4, Paper.TABLOID, Paper.A3)) {
            SvgSheet sheet = SvgSheet.read(Svg.write(drawing, paper));
            assertThat(sheet.clashes()).isEmpty();
            assertThat(String.join(" ", sheet.words()))
                    .doesNotContain("left out", "More than this sheet")
                    .contains("held by the drop rod")
                    .contains("closes by itself; release of the latch 4'\u00a00\" above the ground")
                    .contains("arched between posts by 6 in, radius");
        }
    }

    @Test
    void framePiecesAndBraceAreWhereTheDesignPutsThem() {
        Drawing drawing = GateView.of(GARDEN_GATE);
        List<Outline> frame = outlines(drawing, Layer.GATE_FRAME);
        GateBrace brace = GARDEN_GATE.leaf().braces().get(0);

        assertThat(frame).hasSize(4);
        assertThat(frame.get(0))
                .isEqualTo(Outline.rectangle(
                        Layer.GATE_FRAME, Length.ZERO, Length.ZERO, Length.ofInches(3.5), Length.ofInches(64)));
        // From point to point, and the ends of the bearings: six corners within the clear space of 39 3/4 by 57.
        List<Spot> corners = outlines(drawing, Layer.GATE_BRACE).get(0).corners();
        assertThat(corners)
                .containsExactly(
                        inches(3.5, 3.5),
                        Spot.of(Length.ofInches(3.5).plus(brace.railBearing()), Length.ofInches(3.5)),
                        Spot.of(Length.ofInches(43.25), Length.ofInches(60.5).minus(brace.stileBearing())),
                        inches(43.25, 60.5),
                        Spot.of(Length.ofInches(43.25).minus(brace.railBearing()), Length.ofInches(60.5)),
                        Spot.of(Length.ofInches(3.5), Length.ofInches(3.5).plus(brace.stileBearing())));
    }

    /** Both long edges of the drawn brace are as long as the design says edges are, and 3 1/2 in apart. */
    @Test
    void theDrawnBraceIsAsWideAsItsLumber() {
        GateBrace brace = GARDEN_GATE.leaf().braces().get(0);
        List<Spot> corners =
                outlines(GateView.of(GARDEN_GATE), Layer.GATE_BRACE).get(0).corners();
        double dx = corners.get(2).across().minus(corners.get(1).across()).inches();
        double dy = corners.get(2).up().minus(corners.get(1).up()).inches();
        double edge = Math.hypot(dx, dy);
        double offX = corners.get(5).across().minus(corners.get(1).across()).inches();
        double offY = corners.get(5).up().minus(corners.get(1).up()).inches();

        assertThat(Length.ofInches(edge).minus(brace.edgeLength()).abs()).isLessThan(Length.ofMillimetres(0.001));
        assertThat(Length.ofInches((dx * offY - dy * offX) / edge)
                        .minus(Length.ofInches(3.5))
                        .abs())
                .isLessThan(Length.ofMillimetres(0.001));
    }

    @Test
    void aGateHungRightIsTheMirrorOfOneHungLeft() {
        FencePlan plan = BackYard.sloping();
        Drawing right = GateView.of(plan.gates().get(0));
        Length leaf = plan.gates().get(0).leaf().width();

        List<Spot> brace = outlines(right, Layer.GATE_BRACE).get(0).corners();

        assertThat(right.description()).contains("hinges on the right");
        assertThat(brace.get(0)).isEqualTo(Spot.of(leaf.minus(Length.ofInches(3.5)), Length.ofInches(3.5)));
        assertThat(brace.get(3).across()).isEqualTo(Length.ofInches(3.5));
    }

    @Test
    void strapsAsLongAsTheLeafAreDrawnOverWholeRails() {
        FenceStyle style = FenceStyle.builder()
                .gateHardware(GateHardware.builder()
                        .straps(Length.ofInches(2), Length.ofFeet(8))
                        .build())
                .build();
        for (HingeSide side : HingeSide.values()) {
            GateLocation gate = GateLocation.named("gate")
                    .onSide(1)
                    .centredAt(Length.ofFeet(20))
                    .clearOpening(Length.ofInches(42))
                    .hinges(side)
                    .build();
            FencePlan plan = FencePlanner.plan(Plans.levelSide().gate(gate).build(), style);
            assertThat(outlines(GateView.of(plan.gates().get(0)), Layer.HINGES))
                    .as("three straps, and the block behind the middle one")
                    .hasSize(4);
        }
    }

    private static List<Outline> outlines(Drawing drawing, Layer layer) {
        return drawing.shapes().stream()
                .filter(shape -> shape.layer() == layer)
                .filter(Outline.class::isInstance)
                .map(Outline.class::cast)
                .toList();
    }

    private static Spot inches(double across, double up) {
        return Spot.of(Length.ofInches(across), Length.ofInches(up));
    }
}
