package org.fencecore.benchmarks;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.SplittableRandom;
import org.fencecore.cutting.CutPiece;
import org.fencecore.cutting.CuttingPlan;
import org.fencecore.cutting.SoldLength;
import org.fencecore.units.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;

/**
 * What a cut list costs: 200 rails in 40 lengths of 4 to 9 ft, from sticks of 8, 10, 12 and 16 ft, to a proven least.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar Cutting}
 */
public class CuttingBenchmark extends SteadyBenchmark {

    private static final int SIZES = 40;
    private static final int RAILS = 200;
    private static final int[] FEET = {8, 10, 12, 16};
    private static final String[] PRICES = {"5.97", "7.48", "9.62", "12.98"};

    /** Which job; each has other lengths. */
    @Param({"1", "2", "3", "4", "5", "6", "7", "8", "9", "10"})
    int job;

    /** Whether the sticks have prices. */
    @Param({"false", "true"})
    boolean priced;

    private List<CutPiece> rails = List.of();
    private List<SoldLength> stock = List.of();

    /** Takes the job. */
    @Setup
    public void takeJob() {
        rails = rails(job);
        stock = stock(priced);
    }

    static List<CutPiece> rails(int job) {
        SplittableRandom random = new SplittableRandom(job);
        int[] counts = new int[SIZES];
        Arrays.fill(counts, 1);
        for (int i = SIZES; i < RAILS; i++) {
            counts[random.nextInt(SIZES)]++;
        }
        List<CutPiece> rails = new ArrayList<>();
        for (int i = 0; i < SIZES; i++) {
            Length length = Length.ofInches(48 + random.nextInt(60 * 16) / 16.0);
            rails.add(CutPiece.of(length, counts[i], "rail " + (i + 1)));
        }
        return rails;
    }

    static List<SoldLength> stock(boolean priced) {
        List<SoldLength> stock = new ArrayList<>();
        for (int i = 0; i < FEET.length; i++) {
            SoldLength sold = SoldLength.of(Length.ofFeet(FEET[i]));
            stock.add(priced ? sold.withPrice(new BigDecimal(PRICES[i]), Currency.getInstance("USD")) : sold);
        }
        return stock;
    }

    /** The whole cutting plan. */
    @Benchmark
    public CuttingPlan plan() {
        return CuttingPlan.of(rails, stock);
    }
}
