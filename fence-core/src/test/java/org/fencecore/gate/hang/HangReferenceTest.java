package org.fencecore.gate.hang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Weights of wood and the hold of screws against published tables; the files name them. */
class HangReferenceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/gate/wood-unit-weights.csv", useHeadersInDisplayName = true)
    void woodWeighsAsTheTableSays(String species, double specificGravity, double pcf) {
        GateWood wood = GateWood.of(species, Ratio.of(specificGravity), Ratio.ofPercent(15));

        assertThat(wood.unitWeight().pcf()).isCloseTo(pcf, within(0.05));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/gate/screw-withdrawal.csv", useHeadersInDisplayName = true)
    void screwsHoldAsTheTableSays(String kind, double specificGravity, double diameter, double pounds) {
        GateWood wood = GateWood.of("wood", Ratio.of(specificGravity), Ratio.ofPercent(15));
        Length shank = Length.ofInches(diameter);
        Length inch = Length.ofInches(1);
        HingeScrews screws =
                kind.equals("lag") ? HingeScrews.lag(1, shank, inch, wood) : HingeScrews.wood(1, shank, inch, wood);

        assertThat(screws.perInchOfThread().poundsForce()).isCloseTo(pounds, within(1.0));
    }
}
