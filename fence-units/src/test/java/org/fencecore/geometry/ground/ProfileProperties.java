package org.fencecore.geometry.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Length;

class ProfileProperties {

    @Property
    void exactDivisionAgreesWithBigNumbers(
            @ForAll @LongRange(min = -2_000_000_000_000_000_000L, max = 2_000_000_000_000_000_000L) long a,
            @ForAll @LongRange(min = 1, max = 2_000_000_000_000_000_000L) long c,
            @ForAll @LongRange(min = 0, max = 1_000_000) long share) {
        long b = BigInteger.valueOf(c)
                .multiply(BigInteger.valueOf(share))
                .divide(BigInteger.valueOf(1_000_000))
                .longValueExact();

        // floor(2ab + c over 2c) in unbounded integers
        BigDecimal twice = new BigDecimal(BigInteger.valueOf(a)
                .multiply(BigInteger.valueOf(b))
                .shiftLeft(1)
                .add(BigInteger.valueOf(c)));
        BigDecimal expected = twice.divide(new BigDecimal(BigInteger.valueOf(c).shiftLeft(1)), 0, RoundingMode.FLOOR);

        assertThat(Exact.timesOver(a, b, c)).isEqualTo(expected.longValueExact());
    }

    @Property
    void exactDivisionAgreesAtTheSizesOfAJob(
            @ForAll @LongRange(min = -10_000_000_000L, max = 10_000_000_000L) long a,
            @ForAll @LongRange(min = 0, max = 100_000_000_000L) long any,
            @ForAll @LongRange(min = 1, max = 100_000_000_000L) long c) {
        long b = any % (c + 1);
        BigDecimal exact = new BigDecimal(a)
                .multiply(new BigDecimal(b))
                .divide(new BigDecimal(c), 40, RoundingMode.FLOOR)
                .add(new BigDecimal("0.5"))
                .setScale(0, RoundingMode.FLOOR);

        assertThat(Exact.timesOver(a, b, c)).isEqualTo(exact.longValueExact());
    }

    @Property
    void aMirroredProfileReadsTheSameHeights(@ForAll("profiles") Profile ground, @ForAll @LongRange(min = 0) long any) {
        Length station = stationOf(ground, any);
        Length mirrored = ground.extent().start().plus(ground.extent().end()).minus(station);

        assertThat(ground.reversed().elevationAt(mirrored)).isEqualTo(ground.elevationAt(station));
        assertThat(ground.reversed().reversed()).isEqualTo(ground);
    }

    @Property
    void liftingARailLiftsEveryGap(
            @ForAll("profiles") Profile ground,
            @ForAll @LongRange(min = -10_000_000_000L, max = 10_000_000_000L) long up) {
        Length lift = Length.ofNanometres(up);
        Clearance gap = ground.clearanceUnder(ground.shiftedBy(Length.ZERO, lift));

        assertThat(gap.min()).isEqualTo(lift);
        assertThat(gap.max()).isEqualTo(lift);
    }

    @Property
    void noStationHasAGapBeyondTheExtremes(
            @ForAll("profiles") Profile ground,
            @ForAll("profiles") Profile line,
            @ForAll @LongRange(min = 0) long any) {
        Interval stretch = ground.extent().intersection(line.extent()).orElse(null);
        if (stretch == null) {
            return;
        }
        Clearance gap = ground.clearanceUnder(line);
        Length at =
                stretch.start().plus(Length.ofNanometres(any % (stretch.length().nanometres() + 1)));
        long here = line.elevationAt(at).minus(ground.elevationAt(at)).nanometres();

        // Reading two lines rounds twice, so a gap between the breaks may be a nanometre past the exact one.
        assertThat(here).isBetween(gap.min().nanometres() - 1, gap.max().nanometres() + 1);
        assertThat(line.elevationAt(gap.minStation()).minus(ground.elevationAt(gap.minStation())))
                .isEqualTo(gap.min());
        assertThat(line.elevationAt(gap.maxStation()).minus(ground.elevationAt(gap.maxStation())))
                .isEqualTo(gap.max());
    }

    @Property
    void aPartReadsLikeTheWhole(@ForAll("profiles") Profile ground, @ForAll @LongRange(min = 0) long any) {
        Length middle = stationOf(ground, any);
        Length start = ground.extent().start();
        Length end = ground.extent().end();
        if (middle.equals(start) || middle.equals(end)) {
            return;
        }
        assertThat(ground.between(start, middle).elevationAt(middle)).isEqualTo(ground.elevationAt(middle));
        assertThat(ground.rise(start, middle).plus(ground.rise(middle, end))).isEqualTo(ground.rise(start, end));
        long parts = ground.lengthAlong(start, middle)
                .plus(ground.lengthAlong(middle, end))
                .nanometres();
        assertThat(parts)
                .isBetween(
                        ground.lengthAlong(start, end).nanometres() - 2,
                        ground.lengthAlong(start, end).nanometres() + 2);
        assertThat(ground.lengthAlong(start, end)).isGreaterThanOrEqualTo(end.minus(start));
    }

    private static Length stationOf(Profile ground, long any) {
        return ground.extent()
                .start()
                .plus(Length.ofNanometres(any % (ground.extent().length().nanometres() + 1)));
    }

    @Provide
    static Arbitrary<Profile> profiles() {
        Arbitrary<Long> step = Arbitraries.longs().between(1, 20_000_000_000L);
        Arbitrary<Long> height = Arbitraries.longs().between(-5_000_000_000L, 5_000_000_000L);
        Arbitrary<List<Long>> steps = step.list().ofMinSize(1).ofMaxSize(12);
        Arbitrary<List<Long>> heights = height.list().ofSize(13);
        return Arbitraries.longs()
                .between(-30_000_000_000L, 30_000_000_000L)
                .flatMap(start -> steps.flatMap(s -> heights.map(h -> profile(start, s, h))));
    }

    private static Profile profile(long start, List<Long> steps, List<Long> heights) {
        Profile.Builder builder =
                Profile.builder().point(Length.ofNanometres(start), Length.ofNanometres(heights.get(0)));
        long station = start;
        for (int i = 0; i < steps.size(); i++) {
            station += steps.get(i);
            builder.point(Length.ofNanometres(station), Length.ofNanometres(heights.get(i + 1)));
        }
        return builder.build();
    }
}
