package org.fencecore.takeoff;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fencecore.cutting.CuttingPlan;
import org.fencecore.cutting.SoldLength;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The sticks of one lumber in all, and how near to the least they are proven to be: the least cost where every length sold
 * has a price, else the least length.
 *
 * <pre>
 * gap = (found - lower bound) / found
 * </pre>
 *
 * <p>Spares for culls are not among them. How the bound is found is told with {@link CuttingPlan}.
 */
public final class LumberCut {

    private static final int DIGITS = 2;

    private final String what;
    private final Lumber lumber;
    private final Length length;
    private final @Nullable BigDecimal cost;
    private final @Nullable Currency currency;
    private final Ratio gap;
    private final boolean isProvenBest;

    private LumberCut(
            String what,
            Lumber lumber,
            Length length,
            @Nullable BigDecimal cost,
            @Nullable Currency currency,
            Ratio gap,
            boolean isProvenBest) {
        this.what = what;
        this.lumber = lumber;
        this.length = length;
        this.cost = cost;
        this.currency = currency;
        this.gap = gap;
        this.isProvenBest = isProvenBest;
    }

    static LumberCut of(String what, Lumber lumber, CuttingPlan plan) {
        return new LumberCut(
                what,
                lumber,
                plan.length(),
                plan.cost().orElse(null),
                plan.currency().orElse(null),
                plan.gap(),
                plan.isProvenBest());
    }

    /** Sticks that were not cut by a plan, with what they cost at least; lengths in nanometres if they have no prices. */
    static LumberCut of(
            String what, Lumber lumber, List<SoldLength> sold, Map<SoldLength, Integer> bought, double least) {
        Length length = Length.ZERO;
        BigDecimal cost = BigDecimal.ZERO;
        for (Map.Entry<SoldLength, Integer> sticks : bought.entrySet()) {
            length = length.plus(sticks.getKey().length().times(sticks.getValue()));
            cost = cost.add(cost(sticks.getKey()).multiply(BigDecimal.valueOf(sticks.getValue())));
        }
        Currency currency = sold.get(0).currency().orElse(null);
        // Rounding of doubles must not prove what is not; anything less would be less by a whole step.
        double proven = least * (1 - 1e-12);
        boolean best = cost.doubleValue() - proven < step(sold).doubleValue();
        double gap = best ? 0 : 1 - proven / cost.doubleValue();
        return new LumberCut(what, lumber, length, currency == null ? null : cost, currency, Ratio.of(gap), best);
    }

    /** The greatest amount that the costs of all sticks are whole multiples of; costs of any sticks differ by it at least. */
    private static BigDecimal step(List<SoldLength> sold) {
        int scale = sold.stream().mapToInt(stick -> cost(stick).scale()).max().orElse(0);
        BigInteger step = sold.stream()
                .map(stick -> cost(stick).setScale(scale).unscaledValue())
                .reduce(BigInteger.ZERO, BigInteger::gcd);
        return new BigDecimal(step.max(BigInteger.ONE), scale);
    }

    /** What is made least: the price of a stick, or its length in nanometres. */
    static BigDecimal cost(SoldLength sold) {
        return sold.price().orElseGet(() -> BigDecimal.valueOf(sold.length().nanometres()));
    }

    /**
     * Returns the lumber.
     *
     * @return the lumber
     */
    public Lumber lumber() {
        return lumber;
    }

    /**
     * Returns what it is cut to.
     *
     * @return the name of the lumber, with what all of it becomes, such as {@code 4x4 post}, {@code 2x4} or
     *     {@code 1x6 board}
     */
    public String what() {
        return what;
    }

    /**
     * Returns the length of all sticks.
     *
     * @return the sum of their lengths
     */
    public Length length() {
        return length;
    }

    /**
     * Returns what all sticks cost.
     *
     * @return the sum of their prices; empty if the least length was sought
     */
    public Optional<BigDecimal> cost() {
        return Optional.ofNullable(cost);
    }

    /**
     * Returns the currency of the cost.
     *
     * @return the currency; empty if there are no prices
     */
    public Optional<Currency> currency() {
        return Optional.ofNullable(currency);
    }

    /**
     * Tells whether nothing less will do.
     *
     * @return true if the sticks meet the lower bound
     */
    public boolean isProvenBest() {
        return isProvenBest;
    }

    /**
     * Returns how much less might do at most.
     *
     * @return (found - lower bound) / found; 0 if proven best
     */
    public Ratio gap() {
        return gap;
    }

    /**
     * Tells how near to the least it is.
     *
     * @return {@code proven best}, or such as {@code no more than 0.35 % over the least}, rounded up to two digits
     */
    public String nearness() {
        if (isProvenBest) {
            return "proven best";
        }
        // Of the least, not of what was found, and so a little more.
        BigDecimal percent = BigDecimal.valueOf(100 * gap.value() / (1 - Math.min(gap.value(), 0.999)))
                .round(new MathContext(DIGITS, RoundingMode.CEILING))
                .stripTrailingZeros();
        return "no more than " + percent.toPlainString() + " % over the least";
    }

    /**
     * Returns what it comes to.
     *
     * @return the cost, or without prices the length, such as {@code 72 ft}
     */
    public String found() {
        return cost != null && currency != null ? Written.money(cost, currency) : Written.stock(length);
    }

    /** Returns it in words, such as {@code 2x4: 72 ft, proven best}. */
    @Override
    public String toString() {
        return what + ": " + found() + ", " + nearness();
    }
}
