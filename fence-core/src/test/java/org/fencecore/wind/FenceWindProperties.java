package org.fencecore.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Speed;

class FenceWindProperties {

    @Provide
    Arbitrary<FenceFace> faces() {
        return Combinators.combine(
                        Arbitraries.doubles().between(1, 2000),
                        Arbitraries.doubles().between(0, 3),
                        Arbitraries.doubles().between(0.5, 12),
                        Arbitraries.doubles().between(0.01, 1),
                        Arbitraries.doubles().between(0, 50),
                        Arbitraries.doubles().between(0, 50))
                .as((length, bottom, height, solid, start, end) -> FenceFace.builder()
                        .length(Length.ofFeet(length))
                        .bottom(Length.ofFeet(bottom))
                        .top(Length.ofFeet(bottom + height))
                        .solidFraction(Ratio.of(solid))
                        .returnAtStart(Length.ofFeet(start))
                        .returnAtEnd(Length.ofFeet(end))
                        .build());
    }

    @Provide
    Arbitrary<Wind> winds() {
        Arbitrary<Speed> speeds = Arbitraries.doubles().between(10, 240).map(Speed::ofMilesPerHour);
        Arbitrary<Wind> asce = Combinators.combine(
                        speeds, Arbitraries.of(AsceEdition.values()), Arbitraries.of(Exposure.values()))
                .as((speed, edition, exposure) -> AsceWind.builder()
                        .speed(speed)
                        .edition(edition)
                        .exposure(exposure)
                        .build());
        Arbitrary<Wind> en = Combinators.combine(speeds, Arbitraries.of(EnTerrain.values()))
                .as((speed, terrain) ->
                        EnWind.builder().basicSpeed(speed).terrain(terrain).build());
        return Arbitraries.oneOf(asce, en);
    }

    @Property
    void zonesCoverTheRunWithoutAGap(@ForAll("winds") Wind wind, @ForAll("faces") FenceFace face) {
        FenceWind push = wind.on(face);
        Length reached = Length.ZERO;
        for (WindZone zone : push.zones()) {
            assertThat(zone.along().start()).isEqualTo(reached);
            assertThat(zone.along().length().isPositive()).isTrue();
            assertThat(zone.pressure()).isLessThanOrEqualTo(push.greatest());
            reached = zone.along().end();
        }
        assertThat(reached).isEqualTo(face.length());
        assertThat(push.worksheet().result()).isEqualTo(push.greatest());
    }

    @Property
    void theMirroredRunHasMirroredPressure(
            @ForAll("winds") Wind wind,
            @ForAll("faces") FenceFace face,
            @ForAll @DoubleRange(min = 0, max = 0.9) double from,
            @ForAll @DoubleRange(min = 0.05, max = 0.1) double part) {
        FenceFace mirrored = FenceFace.builder()
                .length(face.length())
                .bottom(face.bottom())
                .top(face.top())
                .solidFraction(face.solidFraction())
                .returnAtStart(face.returnAtEnd())
                .returnAtEnd(face.returnAtStart())
                .build();
        Length start = face.length().times(Ratio.of(from));
        Length end = face.length().times(Ratio.of(from + part));

        assertThat(wind.on(mirrored)
                        .average(Interval.of(
                                face.length().minus(end), face.length().minus(start)))
                        .pascals())
                .isCloseTo(
                        wind.on(face).average(Interval.of(start, end)).pascals(),
                        within(1e-6 * wind.on(face).greatest().pascals()));
    }

    @Property
    void moreWindPushesHarder(
            @ForAll("faces") FenceFace face,
            @ForAll @DoubleRange(min = 10, max = 240) double mph,
            @ForAll @DoubleRange(min = 0, max = 10) double more) {
        FenceWind less =
                AsceWind.builder().speed(Speed.ofMilesPerHour(mph)).build().on(face);
        FenceWind harder = AsceWind.builder()
                .speed(Speed.ofMilesPerHour(mph + more))
                .build()
                .on(face);

        assertThat(harder.greatest()).isGreaterThanOrEqualTo(less.greatest());
    }

    @Property
    void zonesAddUpToTheAverageOfTheRun(@ForAll("winds") Wind wind, @ForAll("faces") FenceFace face) {
        FenceWind push = wind.on(face);
        double sum = push.zones().stream()
                .mapToDouble(zone ->
                        zone.pressure().pascals() * zone.along().length().metres())
                .sum();

        assertThat(push.average(Interval.of(Length.ZERO, face.length())).pascals()
                        * face.length().metres())
                .isCloseTo(sum, within(sum * 1e-9));
    }
}
