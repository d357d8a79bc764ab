package org.fencecore.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import org.fencecore.slope.FittedBay;
import org.fencecore.slope.SlopeFit;
import org.junit.jupiter.api.Test;

/** The strings that are timed stand over the same bays as the racked line, within their limits, and are fewer. */
class StringsTest {

    @Test
    void stringsAreFewerThanRackedBays() {
        StringsBenchmark programs = new StringsBenchmark();
        SlopeFit strings = programs.strings();
        SlopeFit racked = programs.racked();

        assertThat(strings.bays()).hasSameSizeAs(racked.bays());
        assertThat(strings.strings().size()).isLessThan(racked.strings().size() / 2);
        assertThat(strings.findings()).isEmpty();
        for (FittedBay bay : strings.bays()) {
            assertThat(bay.clearance().min().inches()).isGreaterThan(0.9999);
            assertThat(bay.clearance().max().inches()).isLessThan(2.0001);
        }
    }
}
