package org.fencecore.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.fencecore.Plans;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;

class SiteProperties {

    private static final LotBoundary LOT = Plans.rectangle(50, 40);

    /** In whatever order a builder is told things, the site tells the same. */
    @Property
    void aSiteTellsWhatItWasTold(
            @ForAll @Size(min = 1, max = 4) Set<@IntRange(min = 1, max = 4) Integer> sides,
            @ForAll @DoubleRange(min = 0, max = 10) double setbackFeet,
            @ForAll @DoubleRange(min = 0, max = 20) double frostFeet,
            @ForAll @DoubleRange(min = 0, max = 1000) double gripKilopascals,
            @ForAll @DoubleRange(min = 1, max = 500) double windPsf,
            @ForAll @IntRange(min = 0, max = 4) int soilRow,
            @ForAll boolean doubled,
            @ForAll long order) {
        Length setback = Length.ofFeet(setbackFeet);
        Length frost = Length.ofFeet(frostFeet);
        Pressure grip = Pressure.ofPascals(gripKilopascals * 1000);
        Pressure wind = Pressure.ofPsf(windPsf);
        SoilClass soil = SoilClass.PRESUMPTIVE.get(soilRow);
        Profile heights = Plans.shots(0, 100, 40, 103);
        List<Consumer<Site.Builder>> told = new ArrayList<>(List.of(
                site -> site.setback(setback),
                site -> site.frostDepth(frost),
                site -> site.frostGrip(grip),
                site -> site.windPressure(wind),
                site -> site.soil(soil),
                site -> site.doubledBearing(doubled),
                site -> site.ground(2, heights)));
        sides.forEach(side -> told.add(site -> site.fenceOn(side)));
        Collections.shuffle(told, new Random(order));
        Site.Builder builder = Site.on(LOT);
        told.forEach(one -> one.accept(builder));

        Site site = builder.build();

        assertThat(site.lot()).isEqualTo(LOT);
        assertThat(site.fencedSides()).containsExactlyElementsOf(new TreeSet<>(sides));
        assertThat(site.setback()).isEqualTo(setback);
        assertThat(site.frostDepth()).contains(frost);
        assertThat(site.frostGrip()).contains(grip);
        assertThat(site.windPressure()).contains(wind);
        assertThat(site.wind()).isEmpty();
        assertThat(site.soil()).isEqualTo(soil);
        assertThat(site.hasDoubledBearing()).isEqualTo(doubled);
        assertThat(site.ground(2)).contains(heights);
        assertThat(site.ground(1)).isEmpty();
    }

    /** What a builder is told later does not reach a site that is built. */
    @Property
    void aBuiltSiteStays(@ForAll @IntRange(min = 1, max = 4) int fenced, @ForAll @IntRange(min = 1, max = 4) int more) {
        Site.Builder builder = Site.on(LOT).fenceOn(fenced);
        Site site = builder.build();
        builder.fenceOn(more)
                .setback(Length.ofFeet(3))
                .gate(Plans.gate("late", more, 10, 48))
                .ground(more, Plans.shots(0, 100, 40, 103));

        assertThat(site.fencedSides()).containsExactly(fenced);
        assertThat(site.setback()).isEqualTo(Site.USUAL_SETBACK);
        assertThat(site.gates()).isEmpty();
        assertThat(site.ground(more)).isEmpty();
    }

    /** The opening is as wide as was asked to the nanometre, and its middle is where it was asked. */
    @Property
    void aGatesOpeningIsAroundItsCentre(
            @ForAll @LongRange(min = 0, max = 1_000_000_000_000L) long centre,
            @ForAll @LongRange(min = 1, max = 30_480_000_000L) long clear) {
        GateLocation gate = GateLocation.named("gate")
                .onSide(1)
                .centredAt(Length.ofNanometres(centre))
                .clearOpening(Length.ofNanometres(clear))
                .build();

        assertThat(gate.opening().length()).isEqualTo(gate.clearOpening());
        long twiceMiddle =
                gate.opening().start().nanometres() + gate.opening().end().nanometres();
        assertThat(twiceMiddle).isCloseTo(2 * centre, within(1L));
    }

    /** Sides of a lot are as long as called where it closes, and those of a line as its points are apart. */
    @Property
    void sidesAreAsLongAsCalled(
            @ForAll @IntRange(min = 1, max = 1000) int north, @ForAll @IntRange(min = 1, max = 1000) int east) {
        Site lot = Site.on(Plans.rectangle(north, east)).fenceOn(1).build();
        Length first = Length.ofFeet(north);
        Length second = Length.ofFeet(east);
        List<Length> called = List.of(first, second, first, second);
        for (int side = 1; side <= lot.sideCount(); side++) {
            assertThat(lot.sideLength(side).nanometres())
                    .isCloseTo(called.get(side - 1).nanometres(), within(2L));
        }
        Point corner = Point.of(Length.ZERO, first);
        Site line = Site.on(LOT)
                .fenceAlong(Polyline.of(List.of(Point.ORIGIN, corner, Point.of(second, first))), Side.LEFT)
                .build();
        assertThat(line.sideCount()).isEqualTo(2);
        assertThat(line.fencedSides()).containsExactly(1, 2);
        assertThat(line.sideLength(1)).isEqualTo(first);
        assertThat(line.sideLength(2)).isEqualTo(second);
    }
}
