package org.fencecore.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * Which sticks to buy for a list of pieces and how to cut them: the cheapest where the sticks have prices, else those of
 * the least length in all, with a bound that proves how far from the least it can be.
 *
 * <p>How it is worked out: first by best fit decreasing (the longest piece first, each on the started stick with the least
 * room for it). Then by column generation (Gilmore and Gomory): a linear program mixes patterns in fractions, and new
 * patterns are made by a bounded knapsack, exactly, as long as one is worth more than its stick costs. The prices the
 * program ends with give the lower bound, reckoned in whole numbers and rounded up, so that no rounding of {@code double}
 * can make it too high. Then whole sticks are taken out of the fractions, and the search goes on around the best answer
 * and over the numbers of sticks, until answer and bound meet ({@link #isProvenBest}) or the work it may do is done
 * ({@link #gap}). Work is counted, not timed: the same job gives the same answer on any machine. There is always an
 * answer, and it is never worse than best fit decreasing.
 *
 * <p>Among answers that cost the same, fewer sticks are preferred, then fewer ways to cut, so far as they come up; no proof
 * is sought for that. For a share of culls more sticks are bought in the end, rounded up for each length; bound, gap and
 * proof are of the sticks that are cut. Sticks on hand are counted less the culls among them.
 *
 * <p>It assumes straight sticks of exactly the length sold, and cuts across the whole stick. Left out: knots to be cut
 * around, nesting of slanted ends, and what an offcut is worth.
 *
 * <p>Up to 100,000 pieces and 100 lengths sold. With over 800 different sizes it is best fit decreasing, with the bound
 * that each piece costs at least its share of the best stick.
 *
 * <p>Sources: P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, Operations
 * Research 9 (1961), pages 849-859, and A. A. Farley, Operations Research 38 (1990), pages 922-923, for the bound (both
 * from memory).
 *
 * <p>A cutting plan is immutable. Example: see the package.
 */
public final class CuttingPlan {

    private static final int MOST_PIECES = 100_000;
    private static final int MOST_LENGTHS = 100;
    private static final int LABELS_NAMED = 6;

    private final List<CutPiece> asked;
    private final List<SoldLength> stock;
    private final CuttingSpec spec;
    private final Money money;
    private final List<CutStick> sticks = new ArrayList<>();
    private final List<Purchase> purchases = new ArrayList<>();
    private final List<CutPiece> unplaced = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private long value;
    private long bound;

    private CuttingPlan(List<CutPiece> pieces, List<SoldLength> stock, CuttingSpec spec) {
        this.asked = List.copyOf(pieces);
        this.stock = List.copyOf(stock);
        this.spec = spec;
        requireSizes();
        money = Money.of(this.stock);
        List<CutPiece> fitting = new ArrayList<>();
        for (CutPiece piece : asked) {
            if (this.stock.stream().anyMatch(sold -> Sizes.fits(piece, sold, spec))) {
                fitting.add(piece);
            } else {
                unplaced.add(piece);
                findings.add(tooLong(piece));
            }
        }
        if (!fitting.isEmpty()) {
            cut(fitting);
        }
        findings.sort(Comparator.comparing(Finding::severity).reversed());
    }

    /**
     * Works out what to buy and how to cut it, with a kerf of 1/8 in.
     *
     * @param pieces the pieces to cut
     * @param stock the lengths sold
     * @return the cutting plan
     * @throws IllegalArgumentException as {@link #of(List, List, CuttingSpec)}
     */
    public static CuttingPlan of(List<CutPiece> pieces, List<SoldLength> stock) {
        return of(pieces, stock, CuttingSpec.builder().build());
    }

    /**
     * Works out what to buy and how to cut it.
     *
     * @param pieces the pieces to cut
     * @param stock the lengths sold, each with a price in the same currency, or all without
     * @param spec how sticks are cut
     * @return the cutting plan
     * @throws IllegalArgumentException if there are over 100,000 pieces, no lengths sold or over 100, some with a price and
     *     some without, prices in several currencies, or if kerf or end trim are not less than the shortest stick
     */
    public static CuttingPlan of(List<CutPiece> pieces, List<SoldLength> stock, CuttingSpec spec) {
        return new CuttingPlan(pieces, stock, spec);
    }

    private void requireSizes() {
        long count = asked.stream().mapToLong(CutPiece::count).sum();
        if (count > MOST_PIECES) {
            throw new IllegalArgumentException(
                    "pieces were " + count + "; a cutting plan takes up to 100,000: cut the job in parts");
        }
        if (stock.isEmpty() || stock.size() > MOST_LENGTHS) {
            throw new IllegalArgumentException(
                    "stock was " + stock.size() + " lengths; give from 1 to 100 lengths that are sold");
        }
        for (SoldLength sold : stock) {
            requireLess("kerf", spec.kerf(), sold);
            requireLess("endTrim", spec.endTrim(), sold);
        }
    }

    private static void requireLess(String name, Length length, SoldLength sold) {
        if (length.compareTo(sold.length()) >= 0) {
            throw new IllegalArgumentException(name + " was " + length + ", and a stick sold is " + sold.length()
                    + "; it must be less than the shortest stick: is its unit right?");
        }
    }

    private void cut(List<CutPiece> pieces) {
        Sizes sizes = Sizes.of(pieces, spec);
        Job job = sizes.job(stock, money);
        Search search = new Search(job, Effort.usual(job, spec.effort()));
        search.run();
        List<Map.Entry<Pattern, Integer>> patterns =
                new ArrayList<>(search.best().times().entrySet());
        patterns.sort(Map.Entry.comparingByKey(Comparator.comparing((Pattern pattern) -> pattern.kind == job.missing())
                .thenComparing(Pattern.LONGEST_FIRST)));
        int[] used = new int[stock.size()];
        Map<CutPiece, Integer> missed = new LinkedHashMap<>();
        int missing = 0;
        for (Map.Entry<Pattern, Integer> entry : patterns) {
            Pattern pattern = entry.getKey();
            int times = entry.getValue();
            if (pattern.kind == job.missing()) {
                missing += times;
                for (CutStick stick : sizes.sticks(pattern, times, longest())) {
                    stick.pieces().forEach(piece -> missed.merge(piece, stick.count(), Integer::sum));
                }
            } else {
                sticks.addAll(sizes.sticks(pattern, times, stock.get(pattern.kind)));
                used[pattern.kind] += times;
                value += times * job.cost[pattern.kind];
            }
        }
        for (int kind = 0; kind < used.length; kind++) {
            if (used[kind] > 0) {
                purchases.add(new Purchase(stock.get(kind), used[kind], spec.spares(used[kind])));
            }
        }
        if (missing > 0) {
            missed.forEach((piece, count) -> unplaced.add(piece.times(count)));
            findings.add(runsOut(missed, missing, search.bound() > job.mostWithoutMissing()));
        } else {
            bound = search.bound();
            if (bound < value) {
                findings.add(notProven());
            }
        }
    }

    private SoldLength longest() {
        return stock.stream().max(Comparator.comparing(SoldLength::length)).orElseThrow();
    }

    private Finding tooLong(CutPiece piece) {
        Length longest = longest().length();
        String lost = spec.endTrim().isZero() ? "" : " less " + Written.tape(spec.endTrim()) + " of trim";
        return Finding.blocker(
                        "piece-too-long",
                        piece.label(),
                        "it takes " + Written.inches(piece.length()) + ", and the longest stick sold is "
                                + Written.stock(longest) + lost)
                .withRemedy("add a longer stick to the stock, or make the piece of two")
                .withSource(Citation.GEOMETRY);
    }

    private Finding runsOut(Map<CutPiece, Integer> missed, int missing, boolean proven) {
        List<String> labels =
                missed.keySet().stream().map(CutPiece::label).distinct().toList();
        int more = labels.size() - LABELS_NAMED;
        String places = more <= 0
                ? Written.list(labels)
                : String.join(", ", labels.subList(0, LABELS_NAMED)) + " and " + more + " more";
        int count = missed.values().stream().mapToInt(Integer::intValue).sum();
        return Finding.blocker(
                        "sticks-run-out",
                        places,
                        (proven ? "the sticks on hand do not do" : "no way was found to do with the sticks on hand")
                                + ": " + count + (count == 1 ? " piece is" : " pieces are") + " left over")
                .withRemedy(
                        "get " + missing + " more of " + Written.stock(longest().length()));
    }

    private Finding notProven() {
        return Finding.note(
                        "not-proven-best",
                        "cut list",
                        "the sticks come to " + money.written(value)
                                + ", and the least is only known to be no less than " + money.written(bound))
                .withRemedy("allow more effort if the difference matters");
    }

    /**
     * Returns how the sticks are cut.
     *
     * @return the spec
     */
    public CuttingSpec spec() {
        return spec;
    }

    /**
     * Returns the cut list.
     *
     * @return the sticks, in the order of their longest piece, unmodifiable
     */
    public List<CutStick> sticks() {
        return List.copyOf(sticks);
    }

    /**
     * Returns what to buy.
     *
     * @return the purchases, in the order of the stock, those of no stick left out, unmodifiable
     */
    public List<Purchase> purchases() {
        return List.copyOf(purchases);
    }

    /**
     * Returns the pieces that no stick is found for: those too long, and those for which the sticks on hand run out.
     *
     * @return the pieces, with how many of them, unmodifiable
     */
    public List<CutPiece> unplaced() {
        return List.copyOf(unplaced);
    }

    /**
     * Returns the length of all sticks that are cut, without spares.
     *
     * @return the sum of their lengths
     */
    public Length length() {
        return purchases.stream()
                .map(purchase -> purchase.sold().length().times(purchase.needed()))
                .reduce(Length.ZERO, Length::plus);
    }

    /**
     * Returns what all sticks that are cut cost, without spares.
     *
     * @return the sum of their prices; empty if they have none
     */
    public Optional<BigDecimal> cost() {
        return currency().map(none -> money.price(value));
    }

    /**
     * Returns what all sticks to buy cost, with spares.
     *
     * @return the sum of their prices; empty if they have none
     */
    public Optional<BigDecimal> costWithSpares() {
        return currency()
                .map(none -> purchases.stream()
                        .map(purchase ->
                                purchase.sold().price().orElseThrow().multiply(BigDecimal.valueOf(purchase.sticks())))
                        .reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /**
     * Returns the currency of the prices.
     *
     * @return the currency; empty if there are no prices
     */
    public Optional<Currency> currency() {
        return Optional.ofNullable(money.currency());
    }

    /**
     * Returns a length that no set of sticks for these pieces is shorter than, proven.
     *
     * @return the lower bound of {@link #length}; 0 if sticks run out; empty if the cost is made least
     */
    public Optional<Length> leastLength() {
        return money.currency() == null ? Optional.of(money.length(bound)) : Optional.empty();
    }

    /**
     * Returns a cost that no set of sticks for these pieces is cheaper than, proven.
     *
     * @return the lower bound of {@link #cost}; 0 if sticks run out; empty if the length is made least
     */
    public Optional<BigDecimal> leastCost() {
        return currency().map(none -> money.price(bound));
    }

    /**
     * Tells whether the sticks are proven to be the cheapest, or of the least length, for all pieces that a stick is long
     * enough for.
     *
     * @return true if they meet the lower bound
     */
    public boolean isProvenBest() {
        return bound == value
                && findings.stream().noneMatch(finding -> finding.code().equals("sticks-run-out"));
    }

    /**
     * Returns how far above the least they may be at most: (found - lower bound) / found.
     *
     * @return the gap, 0 if they are proven best
     */
    public Ratio gap() {
        return Ratio.of(value == 0 ? 0 : (double) (value - bound) / value);
    }

    /**
     * Returns what keeps the pieces from being cut, and what is worth knowing:
     *
     * <ul>
     *   <li>{@code piece-too-long}, a blocker, at the piece's label: no stick is long enough;
     *   <li>{@code sticks-run-out}, a blocker, at the labels of the pieces left over: there are not enough sticks, or no way
     *       was found to do with them;
     *   <li>{@code not-proven-best}, a note: a cheaper set of sticks might exist, within the gap.
     * </ul>
     *
     * @return the findings, most serious first, unmodifiable; empty if all is well
     */
    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    /**
     * Returns the sums written out: what is cut, what is bought, the lower bound and the gap.
     *
     * @return the worksheet; its last line is {@link #gap}
     */
    public Worksheet worksheet() {
        return CuttingSheet.of(this, asked, stock, money.written(value), money.written(bound));
    }

    /** Returns the plan in words: what to buy, and how each stick is cut. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("cutting plan: " + money.written(value)
                + (isProvenBest() ? ", proven best" : ", lower bound " + money.written(bound)));
        purchases.forEach(purchase -> text.append("\n  buy ").append(purchase));
        sticks.forEach(stick -> text.append("\n  cut ").append(stick));
        unplaced.forEach(piece -> text.append("\n  not placed: ").append(piece));
        return text.toString();
    }
}
