package org.fencecore.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;

class CuttingProperties {

    /** A whole job: pieces, stock and spec. */
    record Given(List<CutPiece> pieces, List<SoldLength> stock, CuttingSpec spec) {

        CuttingPlan plan() {
            return CuttingPlan.of(pieces, stock, spec);
        }
    }

    @Property(tries = 150)
    void everyPieceIsCutOnceOrListedAsNotPlaced(@ForAll("jobs") Given job) {
        CuttingPlan plan = job.plan();
        IdentityHashMap<CutPiece, Integer> cut = new IdentityHashMap<>();
        plan.sticks().forEach(stick -> stick.pieces().forEach(piece -> cut.merge(piece, stick.count(), Integer::sum)));
        Map<String, Integer> unplaced = new HashMap<>();
        plan.unplaced().forEach(piece -> unplaced.merge(piece.label(), piece.count(), Integer::sum));

        for (CutPiece piece : job.pieces()) {
            assertThat(cut.getOrDefault(piece, 0) + unplaced.getOrDefault(piece.label(), 0))
                    .as("%s in %s", piece, plan)
                    .isEqualTo(piece.count());
        }
        assertThat(job.pieces()).containsAll(cut.keySet());
        boolean blocked = plan.findings().stream().map(Finding::severity).anyMatch(Severity.BLOCKER::equals);
        assertThat(blocked).isEqualTo(!plan.unplaced().isEmpty());
    }

    @Property(tries = 150)
    void noStickIsOverFull(@ForAll("jobs") Given job) {
        CuttingSpec spec = job.spec();
        for (CutStick stick : job.plan().sticks()) {
            long used = spec.endTrim().nanometres();
            long narrowest = Long.MAX_VALUE;
            for (CutPiece piece : stick.pieces()) {
                long saw = Math.max(
                        spec.kerf().nanometres(),
                        piece.sawCut().orElse(Length.ZERO).nanometres());
                used += piece.length().nanometres() + saw;
                narrowest = Math.min(narrowest, saw);
            }
            long needed = spec.lastCut() == LastCut.WITHIN_THE_STICK ? used : used - narrowest;
            long length = stick.sold().length().nanometres();
            assertThat(needed).as("%s", stick).isLessThanOrEqualTo(length);
            assertThat(stick.left().nanometres()).isEqualTo(Math.max(0, length - used));
        }
    }

    @Property(tries = 150)
    void whatIsBoughtAddsUpAndKeepsToTheSticksOnHand(@ForAll("jobs") Given job) {
        CuttingPlan plan = job.plan();
        Map<SoldLength, Integer> cut = new HashMap<>();
        plan.sticks().forEach(stick -> cut.merge(stick.sold(), stick.count(), Integer::sum));
        double good = 1 - job.spec().culls().value();
        BigDecimal cost = BigDecimal.ZERO;
        for (Purchase purchase : plan.purchases()) {
            assertThat(cut.remove(purchase.sold())).isEqualTo(purchase.needed());
            assertThat(purchase.sticks())
                    .isLessThanOrEqualTo(purchase.sold().limit().orElse(Integer.MAX_VALUE));
            assertThat(purchase.sticks() * good).isGreaterThanOrEqualTo(purchase.needed() - 1e-6);
            assertThat((purchase.sticks() - 1) * good).isLessThan(purchase.needed() - 1e-9);
            cost = cost.add(
                    purchase.sold().price().orElse(BigDecimal.ZERO).multiply(BigDecimal.valueOf(purchase.needed())));
        }
        assertThat(cut).isEmpty();
        assertThat(plan.cost().orElse(BigDecimal.ZERO)).isEqualByComparingTo(cost);
    }

    @Property(tries = 150)
    void theBoundIsNoMoreThanWhatIsFound(@ForAll("jobs") Given job) {
        CuttingPlan plan = job.plan();
        plan.leastLength().ifPresent(least -> assertThat(least).isLessThanOrEqualTo(plan.length()));
        plan.leastCost()
                .ifPresent(least ->
                        assertThat(least).isLessThanOrEqualTo(plan.cost().orElseThrow()));
        boolean runsOut = plan.findings().stream().map(Finding::code).anyMatch("sticks-run-out"::equals);
        assertThat(plan.isProvenBest()).isEqualTo(plan.gap().equals(Ratio.ZERO) && !runsOut);
        assertThat(plan.gap().value()).isBetween(0.0, 1.0);
        assertThat(plan.worksheet().result()).isEqualTo(plan.gap());
    }

    @Property(tries = 40)
    void theSameJobHasTheSameAnswer(@ForAll("jobs") Given job) {
        assertThat(job.plan()).hasToString(job.plan().toString());
    }

    /** Small jobs: all ways to deal the pieces out to sticks are tried. */
    @Property(tries = 300)
    void smallJobsAgainstTryingEverything(@ForAll("smallJobs") Given job) {
        CuttingPlan plan = job.plan();
        long least = new Trial(job).least();

        if (least == Trial.IMPOSSIBLE) {
            assertThat(plan.unplaced()).as("%s", plan).isNotEmpty();
            assertThat(plan.isProvenBest()).isFalse();
        } else {
            assertThat(plan.unplaced()).as("%s", plan).isEmpty();
            assertThat(Trial.value(plan)).as("%s", plan).isEqualTo(least);
            long bound = plan.leastCost()
                    .map(cost -> cost.movePointRight(2).longValueExact())
                    .orElseGet(() -> plan.leastLength().orElseThrow().nanometres());
            assertThat(bound).as("%s", plan).isLessThanOrEqualTo(least);
        }
    }

    /** Deals out pieces one by one: each goes on a started stick or on a new one of any kind. */
    private static final class Trial {

        static final long IMPOSSIBLE = Long.MAX_VALUE;

        private final List<Long> pieces = new ArrayList<>();
        private final List<SoldLength> stock;
        private final long kerf;
        private final long[] left = new long[16];
        private final int[] on;
        private long least = IMPOSSIBLE;

        Trial(Given job) {
            stock = job.stock();
            kerf = job.spec().kerf().nanometres();
            on = new int[stock.size()];
            job.pieces().forEach(piece -> {
                for (int i = 0; i < piece.count(); i++) {
                    pieces.add(piece.length().nanometres() + kerf);
                }
            });
            pieces.sort(Comparator.reverseOrder());
        }

        static long value(CuttingPlan plan) {
            return plan.cost()
                    .map(cost -> cost.movePointRight(2).longValueExact())
                    .orElseGet(() -> plan.length().nanometres());
        }

        private static long price(SoldLength sold) {
            return sold.price()
                    .map(price -> price.movePointRight(2).longValueExact())
                    .orElseGet(() -> sold.length().nanometres());
        }

        long least() {
            deal(0, 0, 0);
            return least;
        }

        private void deal(int piece, int sticks, long cost) {
            if (cost >= least) {
                return;
            }
            if (piece == pieces.size()) {
                least = cost;
                return;
            }
            long take = pieces.get(piece);
            for (int i = 0; i < sticks; i++) {
                if (left[i] >= take) {
                    left[i] -= take;
                    deal(piece + 1, sticks, cost);
                    left[i] += take;
                }
            }
            for (int kind = 0; kind < stock.size(); kind++) {
                SoldLength sold = stock.get(kind);
                if (on[kind] < sold.limit().orElse(Integer.MAX_VALUE)
                        && sold.length().nanometres() + kerf >= take) {
                    on[kind]++;
                    left[sticks] = sold.length().nanometres() + kerf - take;
                    deal(piece + 1, sticks + 1, cost + price(sold));
                    on[kind]--;
                }
            }
        }
    }

    @Provide
    Arbitrary<Given> smallJobs() {
        Arbitrary<CutPiece> piece = Combinators.combine(
                        Arbitraries.integers().between(8, 60),
                        Arbitraries.integers().between(1, 2))
                .as((inches, count) -> CutPiece.of(Length.ofInches(inches), count, inches + " in"));
        Arbitrary<List<CutPiece>> pieces = piece.list().ofMinSize(1).ofMaxSize(4);
        Arbitrary<Length> kerf = Arbitraries.of(0.0, 0.125, 1.0).map(Length::ofInches);
        return Combinators.combine(pieces, stock(List.of(62, 75, 96)), kerf)
                .as((cut, stock, saw) ->
                        new Given(cut, stock, CuttingSpec.builder().kerf(saw).build()))
                .withoutEdgeCases();
    }

    private static Arbitrary<List<SoldLength>> stock(List<Integer> inches) {
        Arbitrary<Integer> kinds = Arbitraries.integers().between(1, inches.size());
        Arbitrary<Boolean> priced = Arbitraries.of(true, false);
        Arbitrary<List<Integer>> cents =
                Arbitraries.integers().between(0, 900).list().ofSize(inches.size());
        Arbitrary<List<Integer>> limits = Arbitraries.frequency(
                        tupleOf(6, 0), tupleOf(1, 1), tupleOf(1, 2), tupleOf(1, 3))
                .list()
                .ofSize(inches.size());
        return Combinators.combine(kinds, priced, cents, limits).as((count, withPrice, price, limit) -> {
            List<SoldLength> stock = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                SoldLength sold = SoldLength.of(Length.ofInches(inches.get(i)));
                sold = withPrice
                        ? sold.withPrice(BigDecimal.valueOf(price.get(i), 2), Currency.getInstance("USD"))
                        : sold;
                stock.add(limit.get(i) > 0 ? sold.withLimit(limit.get(i)) : sold);
            }
            return stock;
        });
    }

    private static Tuple.Tuple2<Integer, Integer> tupleOf(int frequency, int value) {
        return Tuple.of(frequency, value);
    }

    @Provide
    Arbitrary<Given> jobs() {
        Arbitrary<Long> nanometres = Arbitraries.longs().between(200_000_000L, 5_200_000_000L);
        Arbitrary<Length> saw = Arbitraries.longs().between(0, 20_000_000L).map(Length::ofNanometres);
        Arbitrary<List<CutPiece>> pieces = Combinators.combine(
                        nanometres, Arbitraries.integers().between(1, 6), Arbitraries.of(true, false, false), saw)
                .as((length, count, slanting, cut) -> {
                    CutPiece piece = CutPiece.of(
                            Length.ofNanometres(length),
                            count,
                            "piece of " + length + ", " + count + (slanting ? " cut " + cut : ""));
                    return slanting ? piece.withSawCut(cut) : piece;
                })
                .list()
                .ofMinSize(0)
                .ofMaxSize(25)
                .uniqueElements(CutPiece::label);
        Arbitrary<CuttingSpec> spec = Combinators.combine(
                        Arbitraries.longs().between(0, 6_000_000L).map(Length::ofNanometres),
                        Arbitraries.longs().between(0, 50_000_000L).map(Length::ofNanometres),
                        Arbitraries.of(LastCut.values()),
                        Arbitraries.of(0.0, 0.05, 0.07, 0.25))
                .as((kerf, trim, lastCut, culls) -> CuttingSpec.builder()
                        .kerf(kerf)
                        .endTrim(trim)
                        .lastCut(lastCut)
                        .culls(Ratio.of(culls))
                        .build());
        return Combinators.combine(pieces, stock(Arrays.asList(96, 120, 144, 192)), spec)
                .as(Given::new)
                .withoutEdgeCases();
    }
}
