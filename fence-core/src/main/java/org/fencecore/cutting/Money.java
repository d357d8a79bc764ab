package org.fencecore.cutting;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Currency;
import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * What is made least, as whole numbers: the price of the sticks if they have prices, else their length.
 *
 * @param unit what 1 stands for: the greatest length or price that all sticks are whole multiples of
 * @param currency the currency, or nothing when lengths are counted, in nanometres
 */
record Money(BigDecimal unit, @Nullable Currency currency) {

    static Money of(List<SoldLength> stock) {
        Currency currency = stock.get(0).currency().orElse(null);
        for (SoldLength sold : stock) {
            Currency other = sold.currency().orElse(null);
            if (currency == null != (other == null)) {
                throw new IllegalArgumentException("stock was " + stock
                        + "; all lengths must have a price or none: give what is on hand a price of 0");
            }
            if (currency != null && !currency.equals(other)) {
                throw new IllegalArgumentException(
                        "stock had prices in " + currency + " and " + other + "; give all prices in one currency");
            }
        }
        int scale = stock.stream().mapToInt(sold -> amount(sold).scale()).max().orElse(0);
        BigInteger divisor = stock.stream()
                .map(sold -> amount(sold).setScale(scale).unscaledValue())
                .reduce(BigInteger.ZERO, BigInteger::gcd);
        return new Money(new BigDecimal(divisor.max(BigInteger.ONE), scale), currency);
    }

    private static BigDecimal amount(SoldLength sold) {
        return sold.price()
                .orElse(BigDecimal.valueOf(sold.length().nanometres()))
                .stripTrailingZeros();
    }

    long of(SoldLength sold) {
        return amount(sold).divideToIntegralValue(unit).longValueExact();
    }

    BigDecimal price(long units) {
        return unit.multiply(BigDecimal.valueOf(units));
    }

    Length length(long units) {
        return Length.ofNanometres(price(units).longValueExact());
    }

    String written(long units) {
        return currency == null ? Written.stock(length(units)) : Written.money(price(units), currency);
    }
}
