package org.fencecore.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.Plans.gate;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.takeoff.MaterialGroup;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Mass;
import org.fencecore.worksheet.Finding;

class EstimateProperties {

    @Property(tries = 100)
    void theLinesAddUpToTheTotal(
            @ForAll("plans") FencePlan plan,
            @ForAll("prices") List<BigDecimal> prices,
            @ForAll("percents") BigDecimal tax) {
        Estimate estimate = Estimate.of(
                plan,
                EstimateSpec.builder(book(plan, prices, ""))
                        .crew(EstimateTest.crew().build())
                        .salesTax(tax)
                        .build());
        BigDecimal materials = estimate.materials().stream()
                .map(line -> line.amount().orElseThrow())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal labour = estimate.labour().stream()
                .map(line -> line.amount().orElseThrow())
                .reduce(BigDecimal.ZERO, BigDecimal::add);

        assertThat(estimate.total().orElseThrow())
                .isEqualByComparingTo(materials.add(labour).add(estimate.tax()));
        assertThat(estimate.total().orElseThrow().scale()).isEqualTo(2);
        // Half a cent at most, and then up.
        BigDecimal off = estimate.tax().subtract(materials.multiply(tax).movePointLeft(2));
        assertThat(off).isBetween(new BigDecimal("-0.00499999999"), new BigDecimal("0.005"));
        assertThat(estimate.worksheet().result()).isEqualTo(estimate.total().orElseThrow());
    }

    @Property(tries = 100)
    void withoutAnyOneOfThePricesThereIsNoTotal(
            @ForAll("plans") FencePlan plan,
            @ForAll("prices") List<BigDecimal> prices,
            @ForAll @IntRange(max = 1000) int which) {
        List<MaterialLine> lines = Takeoff.of(plan).materials();
        MaterialLine without = lines.get(which % lines.size());
        Estimate whole =
                Estimate.of(plan, EstimateSpec.builder(book(plan, prices, "")).build());
        Estimate lacking = Estimate.of(
                plan, EstimateSpec.builder(book(plan, prices, without.item())).build());

        assertThat(lacking.total()).isEmpty();
        assertThat(lacking.findings())
                .filteredOn(finding -> finding.code().equals("price-missing"))
                .extracting(Finding::place)
                .containsExactly(without.item());
        assertThat(lacking.pricedTotal())
                .isEqualTo(whole.pricedTotal()
                        .subtract(whole.materials()
                                .get(which % lines.size())
                                .amount()
                                .orElseThrow()));
    }

    /** A price for each line, by turns for one or for a pack of 7. */
    private static PriceBook book(FencePlan plan, List<BigDecimal> prices, String without) {
        PriceBook.Builder book = PriceBook.in(EstimateTest.USD);
        int number = 0;
        for (MaterialLine line : Takeoff.of(plan).materials()) {
            BigDecimal price = prices.get(number % prices.size());
            number++;
            if (line.item().equals(without)) {
                continue;
            }
            if (number % 2 == 0) {
                book.pack(line.item(), "pack", 7, price);
            } else {
                book.item(line.item(), price);
            }
        }
        return book.build();
    }

    @Property(tries = 100)
    void enoughPacksAndNoneToSpare(
            @ForAll("plans") FencePlan plan,
            @ForAll("prices") List<BigDecimal> prices,
            @ForAll("percents") BigDecimal waste) {
        EstimateSpec.Builder spec = EstimateSpec.builder(book(plan, prices, ""));
        for (MaterialGroup group : MaterialGroup.values()) {
            spec.waste(group, waste);
        }
        BigDecimal share = waste.movePointLeft(2).add(BigDecimal.ONE);

        assertThat(Estimate.of(plan, spec.build()).materials()).allSatisfy(line -> {
            BigDecimal needed =
                    share.multiply(BigDecimal.valueOf(line.material().quantity()));
            assertThat(BigDecimal.valueOf(line.withWaste())).isGreaterThanOrEqualTo(needed);
            assertThat(BigDecimal.valueOf(line.withWaste() - 1L)).isLessThan(needed);
            assertThat(line.packs() * line.packSize()).isGreaterThanOrEqualTo(line.withWaste());
            assertThat((line.packs() - 1) * line.packSize()).isLessThan(line.withWaste());
        });
    }

    @Property(tries = 100)
    void everythingIsOnOneTripAndNoTripIsTooHeavy(
            @ForAll("plans") FencePlan plan, @ForAll @IntRange(min = 100, max = 20_000) int pounds) {
        PriceBook none = PriceBook.in(EstimateTest.USD).build();
        Load load = Estimate.of(plan, EstimateSpec.builder(none).build()).load();
        Mass payload = Mass.ofPounds(pounds);
        Map<EstimateLine, Integer> loaded = new HashMap<>();
        List<Load.Trip> trips = load.trips(payload);
        for (Load.Trip trip : trips) {
            double weight = trip.parts().stream()
                    .mapToDouble(part -> part.line().weightEach().orElseThrow().pounds() * part.count())
                    .sum();
            assertThat(weight).isLessThanOrEqualTo(pounds + 1e-6);
            trip.parts().forEach(part -> loaded.merge(part.line(), part.count(), Integer::sum));
        }
        loaded.forEach((line, count) -> assertThat(count).isEqualTo(line.packs() * line.packSize()));
        assertThat(trips.stream()
                        .map(Load.Trip::weight)
                        .reduce(Mass.ZERO, Mass::plus)
                        .pounds())
                .isCloseTo(load.weight().pounds(), within(1e-6));
        assertThat(trips.size())
                .isGreaterThanOrEqualTo((int) Math.ceil(load.weight().pounds() / pounds - 1e-9));
    }

    @Property(tries = 100)
    void tasksFollowEachOtherAndMorePeopleAreNotSlower(
            @ForAll("plans") FencePlan plan,
            @ForAll @IntRange(min = 1, max = 6) int people,
            @ForAll @IntRange(min = 30, max = 600) int minutesADay,
            @ForAll @IntRange(max = 7) int cure) {
        CrewRates.Builder crew = EstimateTest.crew()
                .people(people)
                .day(Duration.ofMinutes(minutesADay))
                .cureDays(cure);
        Schedule schedule = Schedule.of(plan, crew.build());
        Schedule helped = Schedule.of(plan, crew.people(people + 1).build());

        List<Schedule.Step> steps = schedule.steps();
        for (int i = 1; i < steps.size(); i++) {
            assertThat(steps.get(i).firstDay())
                    .isGreaterThanOrEqualTo(steps.get(i - 1).lastDay());
        }
        Duration work = steps.stream().map(Schedule.Step::time).reduce(Duration.ZERO, Duration::plus);
        int worked = schedule.days().orElseThrow() - cure;
        assertThat(work).isLessThanOrEqualTo(Duration.ofMinutes((long) minutesADay * worked));
        // The day before the cure and the last day may be part days.
        assertThat(work).isGreaterThan(Duration.ofMinutes((long) minutesADay * (worked - 2)));
        assertThat(helped.days().orElseThrow())
                .isLessThanOrEqualTo(schedule.days().orElseThrow());
    }

    @Provide
    Arbitrary<List<BigDecimal>> prices() {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, new BigDecimal(500))
                .ofScale(4)
                .list()
                .ofMinSize(1)
                .ofMaxSize(9);
    }

    @Provide
    Arbitrary<BigDecimal> percents() {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, new BigDecimal(40))
                .ofScale(3);
    }

    /** One to three sides of a lot, with a gate. */
    @Provide
    Arbitrary<FencePlan> plans() {
        Arbitrary<Double> feet = Arbitraries.doubles().between(25, 150);
        Arbitrary<Double> fall = Arbitraries.doubles().between(-0.1, 0.1);
        return Combinators.combine(feet, feet, fall, Arbitraries.of(1, 2, 3))
                .as((north, east, tilt, sides) -> {
                    Site.Builder site = Site.on(rectangle(north, east)).gate(gate("gate", 1, north / 2, 42));
                    for (int side = 1; side <= sides; side++) {
                        double length = side % 2 == 1 ? north : east;
                        double rise = side == 2 ? 0 : side == 1 ? length * tilt : -length * tilt;
                        double from = side == 1 ? 0 : north * tilt;
                        site.fenceOn(side).ground(side, shots(0, from, length, from + rise));
                    }
                    return FencePlanner.plan(site.build(), FenceStyle.builder().build());
                })
                .withoutEdgeCases();
    }
}
