package org.fencecore.benchmarks;

import java.util.concurrent.TimeUnit;
import org.fencecore.units.Length;
import org.fencecore.units.TradeUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * What one addition of two lengths costs: a board of 3 1/2 in and a gap of 2 3/16 in.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar LengthAddition}
 */
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class LengthAdditionBenchmark extends SteadyBenchmark {

    // Fields, and not final, so that nothing is added up at compile time.
    private double boardInches = 3.5;
    private double gapInches = 2.1875;
    private long boardNanometres = 88_900_000;
    private long gapNanometres = 55_562_500;
    private Length board = Length.ofInches(3.5);
    private Length gap = Length.ofInches(2.1875);
    private ComparableQuantity<javax.measure.quantity.Length> boardInMetres =
            Quantities.getQuantity(0.0889, Units.METRE);
    private ComparableQuantity<javax.measure.quantity.Length> gapInMetres =
            Quantities.getQuantity(0.0555625, Units.METRE);
    private ComparableQuantity<javax.measure.quantity.Length> boardInInches =
            Quantities.getQuantity(3.5, TradeUnits.INCH);
    private ComparableQuantity<javax.measure.quantity.Length> gapInInches =
            Quantities.getQuantity(2.1875, TradeUnits.INCH);

    /** Plain inches, the baseline. */
    @Benchmark
    public double doubles() {
        return boardInches + gapInches;
    }

    /** Plain nanometres, unchecked. */
    @Benchmark
    public long nanometres() {
        return boardNanometres + gapNanometres;
    }

    /** The library's length: nanometres checked for overflow, and a new object for the sum. */
    @Benchmark
    public Length lengths() {
        return board.plus(gap);
    }

    /** Quantities of a general units library, both in metres. */
    @Benchmark
    public ComparableQuantity<javax.measure.quantity.Length> indriyaMetres() {
        return boardInMetres.add(gapInMetres);
    }

    /** Quantities of a general units library, both in inches. */
    @Benchmark
    public ComparableQuantity<javax.measure.quantity.Length> indriyaInches() {
        return boardInInches.add(gapInInches);
    }
}
