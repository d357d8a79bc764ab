package org.fencecore.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A finite amount of one kind, held as a {@code double} in its SI unit; the common arithmetic of every value type here
 * but {@link Length}, which is exact.
 *
 * <p>Values are immutable, compare by size and are equal when their SI values are equal. Amounts of different kinds do
 * not mix: adding a {@link Force} to a {@link Moment} does not compile.
 *
 * @param <M> the kind itself
 */
public abstract sealed class Measure<M extends Measure<M>> implements Comparable<M>
        permits Angle,
                Area,
                Conductivity,
                DegreeDays,
                Force,
                Mass,
                Moment,
                Pressure,
                Ratio,
                Slope,
                Speed,
                UnitWeight,
                Volume {

    private final double si;

    Measure(double si) {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException(
                    getClass().getSimpleName() + " was " + si + "; it must be a finite number");
        }
        // Adding zero turns -0.0 into 0.0, so that equal amounts are equal values.
        this.si = si + 0.0;
    }

    abstract M with(double newSi);

    final double si() {
        return si;
    }

    static <Q extends Quantity<Q>> double siOf(Quantity<Q> quantity, Unit<Q> unit) {
        return quantity.to(unit).getValue().doubleValue();
    }

    /** Writes a number for a reader: to ten digits, so that 0.1 + 0.2 is 0.3. */
    static String rounded(double value) {
        return plain(new BigDecimal(value).round(new MathContext(10)));
    }

    /** Writes a number without an exponent and without idle zeros, to twenty decimals. */
    static String plain(BigDecimal value) {
        BigDecimal kept = value.scale() > 20 ? value.setScale(20, RoundingMode.HALF_UP) : value;
        return kept.signum() == 0 ? "0" : kept.stripTrailingZeros().toPlainString();
    }

    /**
     * Returns the sum of the two amounts.
     *
     * @param other the amount to add
     * @return this plus {@code other}
     */
    public final M plus(M other) {
        return with(si + ((Measure<?>) other).si);
    }

    /**
     * Returns the difference of the two amounts.
     *
     * @param other the amount to take away
     * @return this minus {@code other}
     */
    public final M minus(M other) {
        return with(si - ((Measure<?>) other).si);
    }

    /**
     * Returns this amount scaled by a plain number.
     *
     * @param factor the factor, finite
     * @return this times {@code factor}
     * @throws IllegalArgumentException if the result is not finite
     */
    public final M times(double factor) {
        return with(si * factor);
    }

    /**
     * Returns this amount scaled by a ratio.
     *
     * @param factor the factor
     * @return this times {@code factor}
     * @throws IllegalArgumentException if the result is not finite
     */
    public final M times(Ratio factor) {
        return with(si * factor.value());
    }

    /**
     * Returns this amount divided by a plain number.
     *
     * @param divisor the divisor, finite and not zero
     * @return this divided by {@code divisor}
     * @throws IllegalArgumentException if the result is not finite
     */
    public final M dividedBy(double divisor) {
        return with(si / divisor);
    }

    /**
     * Returns this amount as a share of another.
     *
     * @param other the whole, not zero
     * @return this over {@code other}
     * @throws IllegalArgumentException if {@code other} is zero
     */
    public final Ratio ratioTo(M other) {
        return Ratio.of(si / ((Measure<?>) other).si);
    }

    /**
     * Returns this amount with the opposite sign.
     *
     * @return zero minus this
     */
    public final M negated() {
        return with(-si);
    }

    /**
     * Returns the size of this amount without its sign.
     *
     * @return the absolute amount
     */
    public final M abs() {
        return with(Math.abs(si));
    }

    /**
     * Tells whether this amount is over zero.
     *
     * @return true if greater than zero
     */
    public final boolean isPositive() {
        return si > 0;
    }

    /**
     * Tells whether this amount is zero.
     *
     * @return true if zero
     */
    public final boolean isZero() {
        return si == 0;
    }

    /**
     * Tells whether this amount is under zero.
     *
     * @return true if less than zero
     */
    public final boolean isNegative() {
        return si < 0;
    }

    @Override
    public final int compareTo(M other) {
        return Double.compare(si, ((Measure<?>) other).si);
    }

    @Override
    @SuppressWarnings("EqualsGetClass") // two measures of different kinds are never equal
    public final boolean equals(@Nullable Object other) {
        return other != null && other.getClass() == getClass() && ((Measure<?>) other).si == si;
    }

    @Override
    public final int hashCode() {
        return Double.hashCode(si);
    }
}
