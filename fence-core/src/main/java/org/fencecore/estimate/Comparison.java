package org.fencecore.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fencecore.takeoff.MaterialGroup;
import org.fencecore.takeoff.Stick;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;

/**
 * Two ways to build a fence side by side: posts 6 ft or 8 ft apart, shadowbox or side by side, stepped or racked.
 *
 * <p>Each row has both values in one unit, rounded for reading, and their difference, that of the rounded values. Where
 * one of them is not known, as a total with a price missing, there is no difference either.
 *
 * <pre>{@code
 * Comparison posts = Comparison.of("6 ft", Estimate.of(closePosts, spec), "8 ft", Estimate.of(widePosts, spec));
 * posts.row("posts").difference();   // -2: the second takes two fewer
 * }</pre>
 */
public final class Comparison {

    private final String firstName;
    private final Estimate first;
    private final String secondName;
    private final Estimate second;
    private final List<Row> rows = new ArrayList<>();

    /**
     * One thing in both.
     *
     * @param what the thing, such as {@code posts}
     * @param unit what it is counted in, such as {@code lb}; empty for a plain number
     * @param first its value in the first; empty if not known
     * @param second its value in the second; empty if not known
     */
    public record Row(String what, String unit, Optional<BigDecimal> first, Optional<BigDecimal> second) {

        /**
         * Returns how much more the second has.
         *
         * @return second - first; empty if either is not known
         */
        public Optional<BigDecimal> difference() {
            return first.flatMap(before -> second.map(after -> after.subtract(before)));
        }
    }

    private Comparison(String firstName, Estimate first, String secondName, Estimate second) {
        this.firstName = firstName;
        this.first = first;
        this.secondName = secondName;
        this.second = second;
        counts();
        concrete();
        String money = first.currency().getCurrencyCode();
        row("materials", money, Comparison::materials);
        row("labour", money, Comparison::labour);
        row("total", money, Estimate::total);
        row(
                "weight of the load",
                "lb",
                estimate -> Optional.of(pounds(estimate.load().weight())));
        row(
                "days",
                "",
                estimate -> estimate.schedule()
                        .map(Schedule::days)
                        .filter(days -> days.isPresent())
                        .map(days -> BigDecimal.valueOf(days.getAsInt())));
    }

    /**
     * Compares two estimates.
     *
     * @param firstName what the first is called
     * @param first the first
     * @param secondName what the second is called
     * @param second the second
     * @return the comparison
     * @throws IllegalArgumentException if they are in different currencies, or a name is blank
     */
    public static Comparison of(String firstName, Estimate first, String secondName, Estimate second) {
        if (firstName.isBlank() || secondName.isBlank()) {
            throw new IllegalArgumentException("firstName was '" + firstName + "' and secondName was '" + secondName
                    + "'; give both a name, such as 6 ft and 8 ft");
        }
        if (!first.currency().equals(second.currency())) {
            throw new IllegalArgumentException(firstName + " was in " + first.currency() + " and " + secondName + " in "
                    + second.currency() + "; price both in one currency");
        }
        return new Comparison(firstName, first, secondName, second);
    }

    private void counts() {
        count("posts", estimate -> estimate.plan().posts().size());
        count("bays", estimate -> estimate.plan().bays().size());
        count("gates", estimate -> estimate.plan().gates().size());
        count("boards", estimate -> estimate.plan().boardCount());
        row("sticks and boards", "ft", estimate -> Optional.of(feet(estimate)));
    }

    private void concrete() {
        row(
                "concrete",
                "cu ft",
                estimate -> Optional.of(
                        BigDecimal.valueOf(estimate.plan().holes().concrete().cubicFeet())
                                .setScale(1, RoundingMode.HALF_UP)));
        count(
                "bags of concrete mix",
                estimate -> estimate.materials().stream()
                        .filter(line -> line.material().group() == MaterialGroup.CONCRETE)
                        .mapToInt(EstimateLine::withWaste)
                        .sum());
    }

    private void count(String what, Function<Estimate, Integer> of) {
        row(what, "", estimate -> Optional.of(BigDecimal.valueOf(of.apply(estimate))));
    }

    private void row(String what, String unit, Function<Estimate, Optional<BigDecimal>> of) {
        rows.add(new Row(what, unit, of.apply(first), of.apply(second)));
    }

    /** What all materials cost; not known if the price of one is not. */
    private static Optional<BigDecimal> materials(Estimate estimate) {
        boolean known =
                estimate.materials().stream().allMatch(line -> line.amount().isPresent());
        return known ? Optional.of(estimate.pricedMaterials()) : Optional.empty();
    }

    /** What all labour costs; not known without a crew, or if what one of its tasks costs is not. */
    private static Optional<BigDecimal> labour(Estimate estimate) {
        boolean known = estimate.spec().crew().isPresent()
                && estimate.labour().stream().allMatch(line -> line.amount().isPresent());
        return known ? Optional.of(estimate.pricedLabour()) : Optional.empty();
    }

    private static BigDecimal feet(Estimate estimate) {
        Length bought = Length.ZERO;
        for (Stick stick : estimate.takeoff().sticks()) {
            bought = bought.plus(stick.length().times(stick.count()));
        }
        return BigDecimal.valueOf(bought.feet()).setScale(0, RoundingMode.HALF_UP);
    }

    private static BigDecimal pounds(Mass mass) {
        return BigDecimal.valueOf(mass.pounds()).setScale(0, RoundingMode.HALF_UP);
    }

    /**
     * Returns what the first is called.
     *
     * @return the name
     */
    public String firstName() {
        return firstName;
    }

    /**
     * Returns the first.
     *
     * @return the estimate
     */
    public Estimate first() {
        return first;
    }

    /**
     * Returns what the second is called.
     *
     * @return the name
     */
    public String secondName() {
        return secondName;
    }

    /**
     * Returns the second.
     *
     * @return the estimate
     */
    public Estimate second() {
        return second;
    }

    /**
     * Returns the rows: posts, bays, gates, boards, the length of sticks and boards bought, concrete, bags of mix,
     * materials and labour without tax, total, weight of the load, days.
     *
     * @return the rows, unmodifiable
     */
    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /**
     * Returns one row.
     *
     * @param what its name, such as {@code posts}
     * @return the row
     * @throws IllegalArgumentException if there is none of that name
     */
    public Row row(String what) {
        return rows.stream()
                .filter(row -> row.what().equals(what))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("what was '" + what + "'; it must be one of "
                        + String.join(", ", rows.stream().map(Row::what).toList())));
    }

    /** Returns the rows in words, a line each. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(firstName + " and " + secondName);
        rows.forEach(row -> text.append("\n  ").append(row));
        return text.toString();
    }
}
