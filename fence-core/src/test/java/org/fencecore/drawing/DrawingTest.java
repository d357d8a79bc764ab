package org.fencecore.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.drawing.sheet.Scale;
import org.fencecore.drawing.sheet.Svg;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class DrawingTest {

    private static final Spot ZERO = Spot.of(Length.ZERO, Length.ZERO);

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
