package org.fencecore.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fencecore.Plans.levelSide;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Currency;
import java.util.Map;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.estimate.Comparison;
import org.fencecore.estimate.CrewRates;
import org.fencecore.estimate.Estimate;
import org.fencecore.estimate.EstimateSpec;
import org.fencecore.estimate.PriceBook;
import org.fencecore.estimate.Task;
import org.fencecore.style.FenceStyle;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Mass;
import org.junit.jupiter.api.Test;

/** Prices and times are invented. */
class EstimateSheetTest {

    private static final Currency USD = Currency.getInstance("USD");

    private final FencePlan plan =
            FencePlanner.plan(levelSide().build(), FenceStyle.builder().build());

    /** Every thing at 2.50 each. */
    private Estimate priced() {
        PriceBook.Builder book = PriceBook.in(USD);
        for (MaterialLine line : Takeoff.of(plan).materials()) {
            book.item(line.item(), new BigDecimal("2.50"));
        }
        CrewRates.Builder crew = CrewRates.builder().wage(new BigDecimal("40"), USD);
        for (Task task : Task.values()) {
            crew.takes(task, Duration.ofMinutes(30));
        }
        return Estimate.of(
                plan, EstimateSpec.builder(book.build()).crew(crew.build()).build());
    }

    @Test
    void theSheetAddsUp() {
        Estimate estimate = priced();
        String text = EstimateSheet.of(estimate)
                .withJob("A\nfence")
                .withPayload(Mass.ofPounds(2000))
                .toText();

        int things = estimate.materials().stream()
                .mapToInt(line -> line.material().quantity())
                .sum();
        BigDecimal materials = new BigDecimal("2.50").multiply(BigDecimal.valueOf(things));
        assertThat(text)
                .startsWith("ESTIMATE\n\n  Job: A fence\n")
                .contains("materials  ")
                .contains(materials.toPlainString())
                .contains("TOTAL")
                .contains(estimate.total().orElseThrow().toPlainString() + " USD")
                .contains("Trips of up to 2000 lb:")
                .doesNotContain("NOT COMPLETE")
                .doesNotContain("weight-missing");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).isEqualTo(line.stripTrailing()));
    }

    @Test
    void whatIsMissingIsSaidFirstAndMarked() {
        PriceBook empty = PriceBook.in(USD).build();
        String text = EstimateSheet.of(
                        Estimate.of(plan, EstimateSpec.builder(empty).build()))
                .toText();

        assertThat(text)
                .contains("*** THE SUM IS NOT COMPLETE: see what is missing. ***")
                .contains("WARNING  concrete mix: the price book has no price")
                .contains("TOTAL OF WHAT IS PRICED  0.00 USD")
                .contains("3. LABOUR\n  not in this estimate\n")
                .doesNotContain("6. DAYS");
    }

    @Test
    void theSpreadsheetHasPricesAndWeights() {
        String csv = EstimateSheet.of(priced()).toCsv();

        assertThat(csv.lines().findFirst().orElseThrow())
                .isEqualTo("quantity,unit,what,note,with waste,buy,of,price,amount,currency,weight lb");
        assertThat(csv).containsPattern("\\n1,cans,marking paint,[^\\n]*,1,1,cans,2.50,2.50,USD,\\n");
        assertThat(csv.lines()).hasSize(priced().materials().size() + 1);
    }

    @Test
    void thePacketOfAnEstimateHasIt() {
        Estimate estimate = priced();
        Map<String, String> files =
                BuildPacket.of(estimate).withJob("Invented job").files();
        Map<String, String> plain = BuildPacket.of(plan).files();

        assertThat(files.keySet()).containsAll(plain.keySet()).contains("estimate.txt", "estimate.csv");
        assertThat(plain.keySet()).doesNotContain("estimate.txt", "estimate.csv");
        assertThat(files.get("estimate.txt")).contains("Job: Invented job");
        assertThat(files.get("worksheets.txt")).contains("Cost of the fence", "Weight of the load", "Days of work");
        assertThat(files.get("build-sheet.txt"))
                .contains("How near to the least the sticks are:")
                .contains("proven best");
    }

    @Test
    void bothOfAComparisonAreInColumns() {
        Estimate estimate = priced();
        PriceBook empty = PriceBook.in(USD).build();
        Estimate unpriced = Estimate.of(plan, EstimateSpec.builder(empty).build());
        ComparisonSheet sheet = ComparisonSheet.of(Comparison.of("priced", estimate, "not, yet", unpriced));

        assertThat(sheet.toText())
                .contains("what")
                .containsPattern("posts +8 +8 +0\\n")
                .containsPattern("total +[0-9.]+ +\\? +\\? +USD\\n");
        assertThat(sheet.toCsv()).startsWith("what,priced,\"not, yet\",difference,unit\nposts,");
    }
}
