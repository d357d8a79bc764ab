package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

class SlopeProperties {

    @Property
    void textReadsBackAsTheSameGrade(@ForAll @DoubleRange(min = -10, max = 10) double risePerRun) {
        Slope slope = Slope.LEVEL.with(risePerRun);
        Slope read = Slope.parse(slope.toString());
        assertThat(read.ratio().value()).isCloseTo(risePerRun, within(1e-15 * Math.max(1, Math.abs(risePerRun))));
    }

    @Property
    void angleAndBackIsTheSameGrade(@ForAll @DoubleRange(min = -10, max = 10) double risePerRun) {
        Slope slope = Slope.LEVEL.with(risePerRun);
        assertThat(Slope.ofAngle(slope.angle()).ratio().value()).isCloseTo(risePerRun, within(1e-13));
    }

    @Property
    void riseRunAndLengthAreARightTriangle(
            @ForAll @LongRange(min = -3_000_000_000L, max = 3_000_000_000L) long rise,
            @ForAll @LongRange(min = 100_000_000L, max = 30_000_000_000L) long run) {
        Slope slope = Slope.of(Length.ofNanometres(rise), Length.ofNanometres(run));
        Length level = Length.ofNanometres(run);
        assertThat(slope.riseOver(level).nanometres()).isEqualTo(rise);
        assertThat(slope.lengthOver(level).nanometres())
                .isCloseTo(Math.round(Math.hypot((double) rise, (double) run)), within(1L));
    }
}
