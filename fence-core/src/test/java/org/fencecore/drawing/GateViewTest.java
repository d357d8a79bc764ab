package org.fencecore.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.gate.GateBrace;
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
                .contains("brace 5' 9 1/2\", off square 34.9° rail, 55.1° stile");
        assertThat(String.join(" ", sheet.words()))
                .contains("Square when both diagonals are 6'\u00a07\u00a01/4\".")
                .contains("seen from outside, boards left off. Hangs between post 24 and post 25");
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
