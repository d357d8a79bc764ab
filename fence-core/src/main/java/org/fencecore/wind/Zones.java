package org.fencecore.wind;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;

/** Cuts a run of fence where the wind's coefficient changes. */
final class Zones {

    private Zones() {}

    /** One zone from end to end. */
    static List<WindZone> even(Length run, double coefficient, DoubleUnaryOperator pascals) {
        return List.of(zone(Length.ZERO, run, coefficient, pascals));
    }

    /**
     * Returns the worst of wind from either end.
     *
     * @param unit what the steps count their distance in
     * @param least what no coefficient is under
     * @param pascals the pressure from the coefficient
     */
    static List<WindZone> worstOfBothEnds(
            Length run, Length unit, Steps fromStart, Steps fromEnd, double least, DoubleUnaryOperator pascals) {
        double length = run.ratioTo(unit).value();
        double[] cuts = cuts(length, fromStart, fromEnd);
        List<WindZone> zones = new ArrayList<>(cuts.length);
        Length start = Length.ZERO;
        double value = worst(length, middle(cuts, 0), fromStart, fromEnd, least);
        for (int i = 1; i < cuts.length - 1; i++) {
            double next = worst(length, middle(cuts, i), fromStart, fromEnd, least);
            Length cut = Length.ofMetres(cuts[i] * unit.metres());
            if (next != value && cut.compareTo(start) > 0) {
                zones.add(zone(start, cut, value, pascals));
                start = cut;
            }
            value = next;
        }
        zones.add(zone(start, run, value, pascals));
        return List.copyOf(zones);
    }

    /** Returns where either direction changes, from 0 to the length, each once. */
    private static double[] cuts(double length, Steps fromStart, Steps fromEnd) {
        double[] cuts = new double[fromStart.count() + fromEnd.count() + 1];
        int count = 0;
        for (int i = 0; i < fromStart.count(); i++) {
            cuts[count++] = Math.min(length, fromStart.start(i));
        }
        for (int i = 0; i < fromEnd.count(); i++) {
            cuts[count++] = Math.max(0, length - fromEnd.start(i));
        }
        Arrays.sort(cuts, 0, count);
        int kept = 1;
        for (int i = 1; i < count; i++) {
            // Cuts a billionth of a height apart are one cut seen from two ends.
            if (cuts[i] - cuts[kept - 1] > 1e-9 && length - cuts[i] > 1e-9) {
                cuts[kept++] = cuts[i];
            }
        }
        cuts[kept++] = length;
        return Arrays.copyOf(cuts, kept);
    }

    private static double middle(double[] cuts, int i) {
        return (cuts[i] + cuts[i + 1]) / 2;
    }

    private static double worst(double length, double distance, Steps fromStart, Steps fromEnd, double least) {
        return Math.max(least, Math.max(fromStart.at(distance), fromEnd.at(length - distance)));
    }

    private static WindZone zone(Length start, Length end, double coefficient, DoubleUnaryOperator pascals) {
        return new WindZone(
                Interval.of(start, end), Ratio.of(coefficient), Pressure.ofPascals(pascals.applyAsDouble(coefficient)));
    }
}
