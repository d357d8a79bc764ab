package org.fencecore.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class DrawingTest {

    private static final Spot ZERO = Spot.of(Length.ZERO, Length.ZERO);

    @Test
    void theLinesOfTheFrontPageWork() {
        FencePlan plan = BackYard.sloping();

        Drawing lot = PlanView.of(plan);
        Drawing side = ElevationView.of(plan, plan.runs().get(0));
        Drawing gate = GateView.of(plan.gates().get(0));
        String svg = Svg.write(side, Paper.LETTER);

        assertThat(lot).hasToString("Fence plan");
        assertThat(side).hasToString("Elevation of side 1");
        assertThat(gate).hasToString("Gate: side gate");
        assertThat(svg).contains("<svg ").endsWith("</svg>\n");
    }

    /** Also the example of the drawing's Javadoc. */
    @Test
    void aDrawingOfOnesOwnCanBeWritten() {
        Drawing stake = Drawing.titled("Stake")
                .add(Outline.rectangle(Layer.POSTS, Length.ZERO, Length.ZERO, Length.ofInches(2), Length.ofInches(24)))
                .note("Point the lower end.")
                .build();

        assertThat(stake.shapes()).hasSize(1);
        assertThat(stake.notes()).containsExactly("Point the lower end.");
        assertThat(stake.caution()).isEmpty();
        assertThat(stake.isNorthUp()).isFalse();
        assertThat(Svg.write(stake, Paper.LETTER)).contains("Point the lower end.");
    }

    @Test
    void shapesWithoutAFormAreRefused() {
        assertThatThrownBy(() -> new Line(Layer.GROUND, List.of(ZERO)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("line on ground")
                .hasMessageContaining("at least two");
        assertThatThrownBy(() -> new Outline(Layer.BOUNDARY, List.of(ZERO, ZERO)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("outline on boundary")
                .hasMessageContaining("at least three");
        assertThatThrownBy(() -> new Dimension(ZERO, ZERO, Length.ZERO, "0\""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'0\"'")
                .hasMessageContaining("two places");
        assertThatThrownBy(() -> Scale.oneTo(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("denominator of the scale was 0");
    }

    @Test
    void layersAndPapersGoByTheirNames() {
        assertThat(Layer.OUTSIDE_BOARDS).hasToString("outside-boards");
        assertThat(Paper.LETTER).hasToString("Letter");
        assertThat(Lettering.NOTE.size()).isEqualTo(Length.ofMillimetres(2.8));
        assertThat(Lettering.NUMBER.isBold()).isTrue();
    }
}
