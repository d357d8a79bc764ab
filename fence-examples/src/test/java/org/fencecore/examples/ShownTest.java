package org.fencecore.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.junit.jupiter.api.Test;

class ShownTest {

    @Test
    void lengthsAreExactOrRoundToTheFigure() {
        Length value = Length.ofInches(97.25);
        assertThat(Shown.agree(value, "8 ft 1 1/4 in, with the gravel")).isTrue();
        assertThat(Shown.agree(value, "97.25 in")).isTrue();
        assertThat(Shown.agree(value, "8 ft 1.3 in")).isTrue();
        assertThat(Shown.agree(value, "8 + 0.1 = 8.104 ft")).isTrue();
        assertThat(Shown.agree(value, "97 in")).isFalse();
        assertThat(Shown.agree(value, "8 ft 1 1/2 in")).isFalse();
        assertThat(Shown.agree(value, "8 ft 1.4 in")).isFalse();
        assertThat(Shown.agree(value, "97.25")).isFalse();
        assertThat(Shown.agree(value, "97.25 sq in")).isFalse();
    }

    @Test
    void otherFiguresRound() {
        assertThat(Shown.agree(Area.ofSquareFeet(11865.87), "11,865.9 sq ft")).isTrue();
        assertThat(Shown.agree(Area.ofSquareFeet(11865.87), "11,865.8 sq ft")).isFalse();
        assertThat(Shown.agree(Ratio.ofPercent(12.5), "12.5 %")).isTrue();
        assertThat(Shown.agree(Ratio.ofPercent(12.5), "0.125")).isTrue();
        assertThat(Shown.agree(Ratio.ofPercent(12.5), "0.13 %")).isFalse();
        assertThat(Shown.agree(Angle.ofDms(90, 2, 10), "90°02', to the right")).isTrue();
        assertThat(Shown.agree(Angle.ofDms(90, 2, 10), "90°03'")).isFalse();
        assertThat(Shown.agree(Angle.ofDegrees(-28 / 3600.0), "-28\": too little"))
                .isTrue();
        assertThat(Shown.agree(7, "7: each in two pieces")).isTrue();
        assertThat(Shown.agree(72, "7")).isFalse();
    }

    @Test
    void listsAndPlacesArePartByPart() {
        List<Length> two = List.of(Length.ofInches(7), Length.ofInches(49));
        assertThat(Shown.agree(two, "7 in, 49 in, on a frame 56 in high")).isTrue();
        assertThat(Shown.agree(two, "7 in")).isFalse();
        assertThat(Shown.agree(two, "none")).isFalse();
        assertThat(Shown.agree(List.of(), "none")).isTrue();
        assertThat(Shown.agree(Optional.empty(), "empty: nothing is left")).isTrue();
        assertThat(Shown.agree(Interval.of(Length.ZERO, Length.ofFeet(6)), "from 0 to 6 ft"))
                .isTrue();
        assertThat(Shown.agree(Interval.of(Length.ZERO, Length.ofFeet(6)), "0 to 7 ft"))
                .isFalse();
        assertThat(Shown.agree(Point.of(Length.ofFeet(1), Length.ofFeet(-2)), "E 1 ft, N -2 ft"))
                .isTrue();
        assertThat(Shown.agree(Point.of(Length.ofFeet(1), Length.ofFeet(-2)), "E 1 ft, N 2 ft"))
                .isFalse();
    }

    @Test
    void aCommentAtTheEndOfAStatementIsChecked() {
        CodeBlock block = new CodeBlock(
                "here",
                "here",
                List.of("Length a = Length.ZERO; // 0 in", "", "a", "    .plus(a);  // 0 in", "// done"));
        assertThat(block.statements())
                .contains("shown.accept(a, \"0 in\");")
                .contains("shown.accept(a\n    .plus(a), \"0 in\");")
                .endsWith("// done\n");
    }
}
