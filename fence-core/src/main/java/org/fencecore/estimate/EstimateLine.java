package org.fencecore.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Optional;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.units.Mass;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/** One line of the shopping list with what to buy for it, what that costs and what it weighs. */
public final class EstimateLine {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final MaterialLine material;
    private final int withWaste;
    private final PriceBook.@Nullable Offer offer;
    private final Currency currency;
    private final @Nullable UnitMass unitMass;

    EstimateLine(
            MaterialLine material,
            BigDecimal waste,
            Optional<PriceBook.Offer> offer,
            Currency currency,
            Optional<UnitMass> unitMass) {
        this.material = material;
        this.withWaste = BigDecimal.valueOf(material.quantity())
                .multiply(HUNDRED.add(waste))
                .divide(HUNDRED, 0, RoundingMode.CEILING)
                .intValueExact();
        this.offer = offer.orElse(null);
        this.currency = currency;
        this.unitMass = unitMass.orElse(null);
    }

    /**
     * Returns the line of the shopping list.
     *
     * @return the line
     */
    public MaterialLine material() {
        return material;
    }

    /**
     * Returns how many it takes with waste.
     *
     * @return quantity x (100 + waste %) / 100, rounded up
     */
    public int withWaste() {
        return withWaste;
    }

    /**
     * Returns how many are in a pack.
     *
     * @return the count, 1 for what is sold one by one or has no price
     */
    public int packSize() {
        return offer == null ? 1 : offer.count();
    }

    /**
     * Returns what a pack is called.
     *
     * @return such as {@code box of 350}, or the unit of the shopping list for what is sold one by one
     */
    public String pack() {
        return offer == null || offer.pack().isEmpty() ? material.unit() : offer.pack() + " of " + offer.count();
    }

    /**
     * Returns how many packs to buy.
     *
     * @return with waste / pack size, rounded up
     */
    public int packs() {
        return (int) (((long) withWaste + packSize() - 1) / packSize());
    }

    /**
     * Returns what a pack costs.
     *
     * @return the price; empty if the price book has none
     */
    public Optional<BigDecimal> price() {
        return Optional.ofNullable(offer).map(PriceBook.Offer::price);
    }

    /**
     * Returns what the line costs.
     *
     * @return packs x price, rounded half up to the smallest coin; empty if there is no price
     */
    public Optional<BigDecimal> amount() {
        return price().map(price -> Estimate.rounded(price.multiply(BigDecimal.valueOf(packs())), currency));
    }

    /**
     * Returns what all that is bought weighs.
     *
     * @return packs x pack size x what one weighs; empty if that is not known
     */
    public Optional<Mass> weight() {
        return weightEach().map(each -> each.times((double) packs() * packSize()));
    }

    /**
     * Returns what one weighs.
     *
     * @return the weight of one in the unit of the shopping list; empty if it is not known
     */
    public Optional<Mass> weightEach() {
        return unitMass().map(UnitMass::each);
    }

    /** How the weight of one came about. */
    Optional<UnitMass> unitMass() {
        return Optional.ofNullable(unitMass);
    }

    /** Returns the line in words, such as {@code 1 box of 350: exterior screw, 34.97 USD}. */
    @Override
    public String toString() {
        return packs() + " " + pack() + ": " + material.item() + ", "
                + amount().map(amount -> Written.money(amount, currency)).orElse("no price");
    }
}
