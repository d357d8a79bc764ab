package org.fencecore.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The lengths of braces against published tables. */
class GateReferenceTest {

    /** NAVEDTRA 14044 (1994), chapter 2, and ABC of the Steel Square, brace measure; each row names its place. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/gate/brace-lengths.csv", useHeadersInDisplayName = true)
    void aBraceIsAsLongAsTheFramingSquareSays(double run, double rise, double length, String source) {
        assertThat(GateLeafTest.braceAcross(run, rise, 3.5).length().inches())
                .as("%s: run %s in, rise %s in", source, run, rise)
                .isCloseTo(length, within(0.005));
    }
}
