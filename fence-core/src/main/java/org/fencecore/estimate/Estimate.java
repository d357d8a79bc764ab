package org.fencecore.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.fencecore.FencePlan;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;

/**
 * What a fence costs, weighs and how long it takes: its shopping list priced, its labour, the tax, the load and the days.
 *
 * <pre>
 * with waste  = quantity x (100 + waste %) / 100, up to whole things
 * packs       = with waste / pack size, up to whole packs
 * line        = packs x price, to the smallest coin, half up
 * labour      = count x time for one x wage, to the smallest coin, half up
 * tax         = taxed lines x tax %, to the smallest coin, half up
 * total       = lines + labour + tax
 * </pre>
 *
 * <p>So the printed lines add up to the printed total. Amounts are decimal and exact up to these roundings. What has no
 * price is never counted as free: it is found, and then there is no {@link #total}, only the sum of what is priced.
 *
 * <p>The cheapest sticks are bought of a lumber of which every length sold has a price. Left out: overhead and profit,
 * permits, delivery, tools, and the disposal of what is dug out.
 *
 * <p>Sources: common practice, no source; all rates and prices are the caller's.
 *
 * <p>An estimate is immutable. Example: see the package.
 */
public final class Estimate {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final FencePlan plan;
    private final EstimateSpec spec;
    private final Takeoff takeoff;
    private final List<EstimateLine> materials;
    private final List<LabourLine> labour;
    private final List<Finding> findings;

    private Estimate(FencePlan plan, EstimateSpec spec) {
        this.plan = plan;
        this.spec = spec;
        takeoff = Takeoff.of(plan, spec.takeoff());
        materials = takeoff.materials().stream()
                .map(line -> new EstimateLine(
                        line,
                        spec.waste(line.group()),
                        spec.prices().offer(line),
                        currency(),
                        UnitMass.of(line, plan, spec)))
                .toList();
        labour = spec.crew().stream()
                .flatMap(crew -> Arrays.stream(Task.values()).map(task -> LabourLine.of(task, plan, crew)))
                .filter(line -> line.count() > 0)
                .toList();
        findings = findGaps();
    }

    /**
     * Prices and weighs a plan.
     *
     * @param plan the plan, buildable or not
     * @param spec how
     * @return the estimate
     * @throws IllegalArgumentException if the plan is larger than {@link Takeoff#of(FencePlan)} takes
     */
    public static Estimate of(FencePlan plan, EstimateSpec spec) {
        return new Estimate(Objects.requireNonNull(plan, "plan"), Objects.requireNonNull(spec, "spec"));
    }

    /**
     * Returns the plan.
     *
     * @return the plan
     */
    public FencePlan plan() {
        return plan;
    }

    /**
     * Returns how it is priced and weighed.
     *
     * @return the spec
     */
    public EstimateSpec spec() {
        return spec;
    }

    /**
     * Returns what is bought and how it is cut, the sticks chosen by their prices.
     *
     * @return the takeoff
     */
    public Takeoff takeoff() {
        return takeoff;
    }

    /**
     * Returns the currency of all amounts.
     *
     * @return the currency
     */
    public Currency currency() {
        return spec.prices().currency();
    }

    /**
     * Returns the shopping list with prices and weights.
     *
     * @return the lines in the order of the shopping list, unmodifiable
     */
    public List<EstimateLine> materials() {
        return materials;
    }

    /**
     * Returns the labour.
     *
     * @return the lines in the order of the work, unmodifiable; empty if there is no crew
     */
    public List<LabourLine> labour() {
        return labour;
    }

    /**
     * Returns what the materials that have a price cost, without tax.
     *
     * @return the sum of the lines
     */
    public BigDecimal pricedMaterials() {
        return sum(materials.stream().map(EstimateLine::amount));
    }

    /**
     * Returns what the labour that has a rate costs, without tax.
     *
     * @return the sum of the lines
     */
    public BigDecimal pricedLabour() {
        return sum(labour.stream().map(LabourLine::amount));
    }

    /**
     * Returns the tax on what is priced.
     *
     * @return materials, and labour if it is taxed, times the tax
     */
    public BigDecimal tax() {
        return rounded(taxed().multiply(spec.salesTax()).divide(HUNDRED), currency());
    }

    /** What the tax is of. */
    BigDecimal taxed() {
        return spec.isLabourTaxed() ? pricedMaterials().add(pricedLabour()) : pricedMaterials();
    }

    /**
     * Returns the sum of what is priced; less than the fence costs if anything is missing.
     *
     * @return materials, labour and tax
     */
    public BigDecimal pricedTotal() {
        return pricedMaterials().add(pricedLabour()).add(tax());
    }

    /**
     * Returns what the fence costs.
     *
     * @return materials, labour if there is a crew, and tax; empty if any price, time or wage is missing
     */
    public Optional<BigDecimal> total() {
        return isComplete() ? Optional.of(pricedTotal()) : Optional.empty();
    }

    /**
     * Tells whether nothing is missing from the {@link #total}.
     *
     * @return true if every line has an amount
     */
    public boolean isComplete() {
        return materials.stream().allMatch(line -> line.amount().isPresent())
                && labour.stream().allMatch(line -> line.amount().isPresent());
    }

    /**
     * Returns what is loaded, and the trips it takes.
     *
     * @return the load
     */
    public Load load() {
        return new Load(materials, plan.holes().concreteWeight());
    }

    /**
     * Returns the days the work takes.
     *
     * @return the schedule; empty if there is no crew
     */
    public Optional<Schedule> schedule() {
        return spec.crew().map(crew -> Schedule.of(plan, crew));
    }

    /**
     * Returns what is missing:
     *
     * <ul>
     *   <li>{@code price-missing}, a warning: a line of the shopping list has no price, and there is no total;
     *   <li>{@code time-missing}, a warning: the crew has no time for a task, and there is no total;
     *   <li>{@code wage-missing}, a warning: the crew has no wage, and there is no total;
     *   <li>{@code lengths-without-price}, a note: not all lengths that a lumber is sold in have a price, so that the least
     *       length of it is bought and not the cheapest sticks;
     *   <li>{@code weight-missing}, a note: what a line weighs is not known, and the load is without it.
     * </ul>
     *
     * <p>The findings of plan and takeoff are not repeated.
     *
     * @return the findings, most serious first, unmodifiable; empty if nothing is missing
     */
    public List<Finding> findings() {
        return findings;
    }

    private List<Finding> findGaps() {
        List<Finding> gaps = new ArrayList<>();
        for (EstimateLine line : materials) {
            if (line.price().isEmpty()) {
                gaps.add(Gaps.price(line));
            }
        }
        for (LabourLine line : labour) {
            if (line.each().isEmpty()) {
                gaps.add(Gaps.time(line));
            }
        }
        if (spec.crew().filter(crew -> crew.wage().isEmpty()).isPresent()) {
            gaps.add(Gaps.wage());
        }
        gaps.addAll(Gaps.lengths(materials, spec.prices()));
        for (EstimateLine line : materials) {
            if (line.weightEach().isEmpty()) {
                gaps.add(Gaps.weight(line));
            }
        }
        gaps.sort(Comparator.comparing(Finding::severity).reversed());
        return List.copyOf(gaps);
    }

    private BigDecimal sum(Stream<Optional<BigDecimal>> amounts) {
        return amounts.flatMap(Optional::stream).reduce(rounded(BigDecimal.ZERO, currency()), BigDecimal::add);
    }

    static int decimals(Currency currency) {
        return Math.max(currency.getDefaultFractionDigits(), 0);
    }

    static BigDecimal rounded(BigDecimal amount, Currency currency) {
        return amount.setScale(decimals(currency), RoundingMode.HALF_UP);
    }

    /**
     * Returns the cost worked out line by line.
     *
     * @return the worksheet; its last line is {@link #pricedTotal}
     */
    public Worksheet worksheet() {
        return CostSheet.of(this);
    }

    /** Returns the estimate in words: the lines, then the total. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("estimate");
        materials.forEach(line -> text.append("\n  ").append(line));
        labour.forEach(line -> text.append("\n  ").append(line));
        return text.append("\n  ")
                .append(isComplete() ? "total " : "total of what is priced ")
                .append(pricedTotal().toPlainString())
                .append(' ')
                .append(currency())
                .toString();
    }
}
