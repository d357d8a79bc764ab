package org.fencecore.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import tech.units.indriya.ComparableQuantity;

/** The programs that are timed against each other add up to the same. */
class LengthArithmeticTest {

    /** A thousandth of a nanometre: what doubles may be off after 10,000 additions over 1.4 km is well under it. */
    private static final double TOLERANCE_NANOMETRES = 0.001;

    private static final double NANOMETRES_PER_INCH = 25_400_000;
    private static final double NANOMETRES_PER_METRE = 1e9;

    @Test
    void oneAdditionGivesTheSameInEveryKindOfNumber() {
        LengthAdditionBenchmark programs = new LengthAdditionBenchmark();
        // 3 1/2 in + 2 3/16 in = 5 11/16 in.
        assertThat(programs.doubles()).isEqualTo(5.6875);
        assertThat(programs.nanometres()).isEqualTo(144_462_500L);
        assertThat(programs.lengths()).isEqualTo(Length.ofNanometres(144_462_500L));
        assertThat(programs.indriyaMetres().getValue().doubleValue() * NANOMETRES_PER_METRE)
                .isCloseTo(144_462_500, within(TOLERANCE_NANOMETRES));
        assertThat(programs.indriyaInches().getValue().doubleValue() * NANOMETRES_PER_INCH)
                .isCloseTo(144_462_500, within(TOLERANCE_NANOMETRES));
    }

    @Test
    void everyPicketStandsAtTheSamePlaceInEveryKindOfNumber() {
        PicketPositionsBenchmark programs = new PicketPositionsBenchmark();
        double[] doubles = programs.doubles();
        long[] nanometres = programs.nanometres();
        Length[] lengths = programs.lengths();
        List<ComparableQuantity<javax.measure.quantity.Length>> metres = programs.indriyaMetres();
        List<ComparableQuantity<javax.measure.quantity.Length>> inches = programs.indriyaInches();
        assertThat(nanometres).hasSize(PicketPositionsBenchmark.PICKETS);
        assertThat(doubles).hasSameSizeAs(nanometres);
        assertThat(lengths).hasSameSizeAs(nanometres);
        assertThat(metres).hasSameSizeAs(nanometres);
        assertThat(inches).hasSameSizeAs(nanometres);
        for (int i = 0; i < nanometres.length; i++) {
            assertThat(nanometres[i]).isEqualTo(i * 144_462_500L);
            assertThat(lengths[i].nanometres()).isEqualTo(nanometres[i]);
            double exact = i * 144_462_500.0;
            assertThat(doubles[i] * NANOMETRES_PER_INCH).isCloseTo(exact, within(TOLERANCE_NANOMETRES));
            assertThat(metres.get(i).getValue().doubleValue() * NANOMETRES_PER_METRE)
                    .isCloseTo(exact, within(TOLERANCE_NANOMETRES));
            assertThat(inches.get(i).getValue().doubleValue() * NANOMETRES_PER_INCH)
                    .isCloseTo(exact, within(TOLERANCE_NANOMETRES));
        }
    }
}
