package org.fencecore.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.entry;

import java.util.List;
import org.junit.jupiter.api.Test;

class PlanTimeChartTest {

    private static final String NAMES =
            "\"Benchmark\",\"Mode\",\"Threads\",\"Samples\",\"Score\",\"Score Error (99.9%)\",\"Unit\",\"Param: feet\"";

    @Test
    void timesAreReadByBenchmarkAndLength() {
        List<String> csv = List.of(
                NAMES,
                "\"org.fencecore.benchmarks.WholePlanBenchmark.plan\",\"avgt\",1,60,45.5,0.9,\"us/op\",200",
                "\"org.fencecore.benchmarks.WholePlanBenchmark.plan\",\"avgt\",1,60,20.25,0.9,\"us/op\",50",
                "\"org.fencecore.benchmarks.WholePlanBenchmark.doubles\",\"avgt\",1,60,4.0,0.1,\"us/op\",200");

        assertThat(PlanTimeChart.times(csv).get("plan")).containsExactly(entry(50, 20.25), entry(200, 45.5));
        assertThat(PlanTimeChart.times(csv).get("doubles")).containsOnlyKeys(200);
    }

    @Test
    void otherMeasurementsAreRefused() {
        List<String> csv = List.of(
                NAMES, "\"org.fencecore.benchmarks.ThreadsBenchmark.planOnOne\",\"thrpt\",1,60,45.5,0.9,\"ops/s\",");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> PlanTimeChart.times(csv))
                .withMessageContaining("give those of WholePlanBenchmark");
    }
}
