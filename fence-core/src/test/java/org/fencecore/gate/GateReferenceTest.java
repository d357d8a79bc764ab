package org.fencecore.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The lengths of braces against a published table. */
class GateReferenceTest {

    /** NAVEDTRA 14044 (1994), chapter 2, pp. 2-8 and 2-9; the provenance is in the file. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/gate/brace-lengths.csv", useHeadersInDisplayName = true)
    void aBraceIsAsLongAsTheFramingSquareSays(double run, double rise, double length, String place) {
        assertThat(GateDesignTest.braceAcross(run, rise, 3.5).length().inches())
                .as("%s: run %s in, rise %s in", place, run, rise)
                .isCloseTo(length, within(0.005));
    }
}
