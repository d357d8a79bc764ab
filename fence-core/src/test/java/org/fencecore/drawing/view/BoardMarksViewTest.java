package org.fencecore.drawing.view;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.fencecore.FencePlan;
import org.fencecore.Run;
import org.junit.jupiter.api.Test;

class BoardMarksViewTest {

    @Test
    void marksAreOfThePlanThatIsDrawn() {
        FencePlan plan = BackYard.level(24);
        Run other = BackYard.level(40).runs().get(0);
        assertThatThrownBy(() ->
                        BoardMarksView.sheets(plan, other, other.stretches().get(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("take them from the plan");
    }
}
