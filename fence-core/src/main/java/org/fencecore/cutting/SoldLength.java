package org.fencecore.cutting;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * One length a stick is sold in, with its price if that is to count, and how many there are if that is not as many as
 * wanted.
 *
 * <p>Example: {@code SoldLength.of(Length.ofFeet(16)).withPrice(new BigDecimal("12.98"), Currency.getInstance("USD"))}.
 * What lies in the yard already is {@code SoldLength.of(length).withLimit(4)}, at a price of 0 if the others have prices.
 */
public final class SoldLength {

    private static final Length LONGEST = Length.ofMetres(60);
    private static final BigDecimal DEAREST = new BigDecimal(1_000_000);
    private static final int MOST_DECIMALS = 4;
    private static final int MOST_STICKS = 1_000_000;

    private final Length length;
    private final @Nullable BigDecimal price;
    private final @Nullable Currency currency;
    private final int limit;

    private SoldLength(Length length, @Nullable BigDecimal price, @Nullable Currency currency, int limit) {
        this.length = length;
        this.price = price;
        this.currency = currency;
        this.limit = limit;
    }

    /**
     * Returns a length to be had in any number, without a price.
     *
     * @param length how long the stick is, over zero and up to 60 m
     * @return the length sold
     * @throws IllegalArgumentException if out of that range
     */
    public static SoldLength of(Length length) {
        if (!length.isPositive() || length.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(
                    "length was " + length + "; a stick must be over 0 and up to " + LONGEST + " long");
        }
        return new SoldLength(length, null, null, Job.NO_LIMIT);
    }

    /**
     * Returns this length at a price.
     *
     * @param newPrice what one stick costs, from 0 to 1,000,000, with up to 4 decimals
     * @param newCurrency the currency
     * @return the length sold
     * @throws IllegalArgumentException if the price is out of that range
     */
    public SoldLength withPrice(BigDecimal newPrice, Currency newCurrency) {
        BigDecimal plain = newPrice.stripTrailingZeros();
        if (plain.signum() < 0 || plain.compareTo(DEAREST) > 0 || plain.scale() > MOST_DECIMALS) {
            throw new IllegalArgumentException("price of a stick of " + length + " was " + newPrice + " " + newCurrency
                    + "; it must be from 0 to 1,000,000 with up to 4 decimals");
        }
        return new SoldLength(length, newPrice, Objects.requireNonNull(newCurrency, "newCurrency"), limit);
    }

    /**
     * Returns this length of which there are only so many.
     *
     * @param newLimit how many there are, from 0 to 1,000,000
     * @return the length sold
     * @throws IllegalArgumentException if out of that range
     */
    public SoldLength withLimit(int newLimit) {
        if (newLimit < 0 || newLimit > MOST_STICKS) {
            throw new IllegalArgumentException("limit of sticks of " + length + " was " + newLimit
                    + "; it must be from 0 to 1,000,000: leave it out if there are as many as wanted");
        }
        return new SoldLength(length, price, currency, newLimit);
    }

    /**
     * Returns how long the stick is.
     *
     * @return the length
     */
    public Length length() {
        return length;
    }

    /**
     * Returns what one stick costs.
     *
     * @return the price; empty if none was said
     */
    public Optional<BigDecimal> price() {
        return Optional.ofNullable(price);
    }

    /**
     * Returns the currency of the price.
     *
     * @return the currency; empty if no price was said
     */
    public Optional<Currency> currency() {
        return Optional.ofNullable(currency);
    }

    /**
     * Returns how many there are.
     *
     * @return the number of sticks; empty for as many as wanted
     */
    public OptionalInt limit() {
        return limit == Job.NO_LIMIT ? OptionalInt.empty() : OptionalInt.of(limit);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SoldLength that
                && length.equals(that.length)
                && Objects.equals(price, that.price)
                && Objects.equals(currency, that.currency)
                && limit == that.limit;
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, price, currency, limit);
    }

    /** Returns the stick in words, such as {@code 16 ft at 12.98 USD, 4 on hand}. */
    @Override
    public String toString() {
        return Written.stock(length)
                + (price == null ? "" : " at " + price.toPlainString() + " " + currency)
                + (limit == Job.NO_LIMIT ? "" : ", " + limit + " on hand");
    }
}
