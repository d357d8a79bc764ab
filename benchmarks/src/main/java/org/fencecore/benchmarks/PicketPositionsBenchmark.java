package org.fencecore.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.units.TradeUnits;
import org.openjdk.jmh.annotations.Benchmark;
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * What it costs to work out where 10,000 pickets stand, each 5 11/16 in past the one before, and write every position
 * to a new array.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar PicketPositions}
 */
public class PicketPositionsBenchmark extends SteadyBenchmark {

    /** How many pickets stand in the row. */
    static final int PICKETS = 10_000;

    private double pitchInches = 5.6875;
    private long pitchNanometres = 144_462_500;
    private Length pitch = Length.ofInches(5.6875);
    private ComparableQuantity<javax.measure.quantity.Length> pitchInMetres =
            Quantities.getQuantity(0.1444625, Units.METRE);
    private ComparableQuantity<javax.measure.quantity.Length> pitchInInches =
            Quantities.getQuantity(5.6875, TradeUnits.INCH);

    /** Plain inches, the baseline. */
    @Benchmark
    public double[] doubles() {
        double[] positions = new double[PICKETS];
        double at = 0;
        for (int i = 0; i < PICKETS; i++) {
            positions[i] = at;
            at += pitchInches;
        }
        return positions;
    }

    /** Plain nanometres, unchecked. */
    @Benchmark
    public long[] nanometres() {
        long[] positions = new long[PICKETS];
        long at = 0;
        for (int i = 0; i < PICKETS; i++) {
            positions[i] = at;
            at += pitchNanometres;
        }
        return positions;
    }

    /** The library's length, an object for every position. */
    @Benchmark
    public Length[] lengths() {
        Length[] positions = new Length[PICKETS];
        Length at = Length.ZERO;
        for (int i = 0; i < PICKETS; i++) {
            positions[i] = at;
            at = at.plus(pitch);
        }
        return positions;
    }

    /** Quantities of a general units library in metres. */
    @Benchmark
    public List<ComparableQuantity<javax.measure.quantity.Length>> indriyaMetres() {
        return positions(Quantities.getQuantity(0.0, Units.METRE), pitchInMetres);
    }

    /** Quantities of a general units library in inches. */
    @Benchmark
    public List<ComparableQuantity<javax.measure.quantity.Length>> indriyaInches() {
        return positions(Quantities.getQuantity(0.0, TradeUnits.INCH), pitchInInches);
    }

    /** A list, since Java has no generic arrays; it is an array inside, and the additions outweigh it by far. */
    private static List<ComparableQuantity<javax.measure.quantity.Length>> positions(
            ComparableQuantity<javax.measure.quantity.Length> start,
            ComparableQuantity<javax.measure.quantity.Length> pitch) {
        List<ComparableQuantity<javax.measure.quantity.Length>> positions = new ArrayList<>(PICKETS);
        ComparableQuantity<javax.measure.quantity.Length> at = start;
        for (int i = 0; i < PICKETS; i++) {
            positions.add(at);
            at = at.add(pitch);
        }
        return positions;
    }
}
