package org.fencecore.drawing.sheet;

import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.fencecore.units.Length;

/**
 * A size of paper, lying on its long side, and the scales that go with it: those of the architect's and the engineer's
 * rule on inch sizes, and of the metric rule on metric ones.
 *
 * <p>Sources: sizes A and B of ANSI/ASME Y14.1 (Letter and Tabloid), A4 and A3 of ISO 216; both from memory. Scales:
 * the faces of the usual rules, common practice, no source.
 */
public final class Paper {

    /** 11 by 8 1/2 in. */
    public static final Paper LETTER = inches("Letter", 11, 8.5);

    /** 17 by 11 in. */
    public static final Paper TABLOID = inches("Tabloid", 17, 11);

    /** 297 by 210 mm. */
    public static final Paper A4 = millimetres("A4", 297, 210);

    /** 420 by 297 mm. */
    public static final Paper A3 = millimetres("A3", 420, 297);

    /** Inch scales from 1 1/2 in to 1/16 in to the foot, and 1 in to 10 to 100 ft; the last five are repeated times 10. */
    private static final long[] INCH_SCALES = {8, 12, 16, 24, 32, 48, 64, 96, 120, 128, 192, 240, 360, 480, 600, 1200};

    private static final long[] METRIC_SCALES = {5, 10, 20, 25, 50, 100, 200, 250, 500, 1000};

    private static final int REPEATED = 5;

    private final String name;
    private final Length width;
    private final Length height;
    private final boolean metric;

    private Paper(String name, Length width, Length height, boolean metric) {
        this.name = name;
        this.width = width;
        this.height = height;
        this.metric = metric;
    }

    private static Paper inches(String name, double width, double height) {
        return new Paper(name, Length.ofInches(width), Length.ofInches(height), false);
    }

    private static Paper millimetres(String name, double width, double height) {
        return new Paper(name, Length.ofMillimetres(width), Length.ofMillimetres(height), true);
    }

    /**
     * Returns its width.
     *
     * @return the long side
     */
    public Length width() {
        return width;
    }

    /**
     * Returns its height.
     *
     * @return the short side
     */
    public Length height() {
        return height;
    }

    boolean isMetric() {
        return metric;
    }

    /** Returns the scales from the largest drawing to smaller and smaller ones, as far as lengths go. */
    Stream<Scale> scales() {
        long[] rule = metric ? METRIC_SCALES : INCH_SCALES;
        LongStream smaller = LongStream.iterate(10, tens -> tens <= 1_000_000_000, tens -> 10 * tens)
                .flatMap(tens ->
                        LongStream.of(rule).skip(rule.length - REPEATED).map(denominator -> denominator * tens));
        return LongStream.concat(LongStream.of(rule), smaller).mapToObj(Scale::oneTo);
    }

    @Override
    public String toString() {
        return name;
    }
}
