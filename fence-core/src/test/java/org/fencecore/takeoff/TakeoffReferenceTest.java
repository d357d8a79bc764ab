package org.fencecore.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/**
 * The packing of sticks against a published cutting problem.
 *
 * <p>Rolls of 5600 mm are to be cut to 13 widths: EPFL Graph Search, concept "Cutting stock problem" (copy of an
 * encyclopaedia article), which gives an optimum of 73 rolls. Best fit decreasing alone would need 82.
 */
class TakeoffReferenceTest {

    private static final int OPTIMUM = 73;

    @Test
    void thePublishedOptimumIsFound() {
        int[][] widthsAndDemand = {
            {1380, 22},
            {1520, 25},
            {1560, 12},
            {1710, 14},
            {1820, 18},
            {1880, 18},
            {1930, 20},
            {2000, 10},
            {2050, 12},
            {2100, 14},
            {2140, 16},
            {2150, 18},
            {2200, 20}
        };
        Lumber roll = Lumber.of("roll", Length.ofMillimetres(1), Length.ofMillimetres(1))
                .soldIn(Length.ofMillimetres(5600));
        List<Piece> pieces = new ArrayList<>();
        Length sum = Length.ZERO;
        for (int[] item : widthsAndDemand) {
            for (int i = 0; i < item[1]; i++) {
                Length length = Length.ofMillimetres(item[0]);
                sum = sum.plus(length);
                pieces.add(new Piece(
                        PieceKind.RAIL, item[0] + " no. " + i, 1, roll, length, roll.width(), EndCuts.SQUARE));
            }
        }
        // The published problem sums to 407,160 mm.
        assertThat(sum).isEqualTo(Length.ofMillimetres(407_160));

        Cutting cutting =
                Cutting.of(pieces, TakeoffSpec.builder().kerf(Length.ZERO).build());
        List<Stick> sticks = cutting.sticks();

        assertThat(cutting.cuts()).singleElement().asString().isEqualTo("roll: 408.80 m, proven best");

        assertThat(sticks.stream().mapToInt(Stick::count).sum()).isEqualTo(OPTIMUM);
        assertThat(sticks.stream()
                        .map(stick -> stick.left().times(stick.count()))
                        .reduce(Length.ZERO, Length::plus))
                .isEqualTo(Length.ofMillimetres(5600).times(OPTIMUM).minus(sum));
    }
}
