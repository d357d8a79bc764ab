package org.fencecore.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.fencecore.cutting.SoldLength;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;

/**
 * What a yard asks for its goods, in one currency: sticks of lumber by their length, and all else by the name it has on
 * the shopping list, by the piece or by the pack it is sold in; and what things weigh, where that matters.
 *
 * <p>Names are those of {@link MaterialLine#item}, for a screw of another length is another article. What has no price
 * here is a gap of the estimate and never free.
 *
 * <pre>{@code
 * PriceBook book = PriceBook.in(Currency.getInstance("USD"))
 *         .stick("4x4", Length.ofFeet(10), new BigDecimal("17.98"))
 *         .item("concrete mix", new BigDecimal("5.28"))
 *         .pack("structural screw, 3 1/2\"", "box", 50, new BigDecimal("28.50"))
 *         .weighs("gate hinge with its screws", Mass.ofPounds(1.5))
 *         .build();
 * }</pre>
 */
public final class PriceBook {

    private static final BigDecimal DEAREST = new BigDecimal(1_000_000);
    private static final int MOST_DECIMALS = 4;
    private static final int LARGEST_PACK = 1_000_000;

    private final Currency currency;
    private final Map<String, List<SoldLength>> sticks;
    private final Map<String, Offer> offers;
    private final Map<String, Mass> weights;

    /**
     * What one pack costs.
     *
     * @param pack what it is called, such as {@code box}; empty for what is sold one by one
     * @param count how many are in it
     * @param price what it costs
     */
    record Offer(String pack, int count, BigDecimal price) {}

    private PriceBook(Builder from) {
        currency = from.currency;
        sticks = Collections.unmodifiableMap(new TreeMap<>(from.sticks));
        offers = Map.copyOf(from.offers);
        weights = Map.copyOf(from.weights);
    }

    /**
     * Starts a price book.
     *
     * @param currency the currency of all its prices
     * @return a builder without prices
     */
    public static Builder in(Currency currency) {
        return new Builder(Objects.requireNonNull(currency, "currency"));
    }

    /**
     * Returns the currency of all prices.
     *
     * @return the currency
     */
    public Currency currency() {
        return currency;
    }

    /**
     * Returns what sticks cost, as a takeoff takes it.
     *
     * @return the priced lengths by the name of the lumber, shortest first, unmodifiable
     */
    public Map<String, List<SoldLength>> sticks() {
        return sticks;
    }

    /** What the things of a line are sold for; empty if the book does not say. */
    Optional<Offer> offer(MaterialLine line) {
        Offer byName = offers.get(line.item());
        if (byName != null || line.lumber().isEmpty()) {
            return Optional.ofNullable(byName);
        }
        Length length = line.length().orElseThrow();
        return sticks.getOrDefault(line.lumber().get().name(), List.of()).stream()
                .filter(sold -> sold.length().equals(length))
                .flatMap(sold -> sold.price().stream())
                .map(price -> new Offer("", 1, price))
                .findFirst();
    }

    /** What one of an item weighs; empty if the book does not say. */
    Optional<Mass> weight(String item) {
        return Optional.ofNullable(weights.get(item));
    }

    /** Collects prices; each thing has one. */
    public static final class Builder {

        private final Currency currency;
        private final Map<String, List<SoldLength>> sticks = new HashMap<>();
        private final Map<String, Offer> offers = new HashMap<>();
        private final Map<String, Mass> weights = new HashMap<>();

        private Builder(Currency currency) {
            this.currency = currency;
        }

        /**
         * Sets what one stick of lumber costs, whatever is cut from it. The cheapest sticks are chosen where all lengths
         * that a lumber is sold in have a price.
         *
         * @param lumber the name of the lumber, such as {@code 2x4}
         * @param length how long the stick is
         * @param price what one costs, from 0 to 1,000,000, with up to 4 decimals
         * @return this builder
         * @throws IllegalArgumentException if the price or the length is out of range, or that stick has a price
         */
        public Builder stick(String lumber, Length length, BigDecimal price) {
            List<SoldLength> lengths = sticks.computeIfAbsent(requireName("lumber", lumber), none -> new ArrayList<>());
            if (lengths.stream().anyMatch(sold -> sold.length().equals(length))) {
                throw new IllegalArgumentException(
                        "lumber was " + lumber + " of " + length + ", which has a price already; give each stick one");
            }
            lengths.add(SoldLength.of(length).withPrice(price, currency));
            lengths.sort((a, b) -> a.length().compareTo(b.length()));
            return this;
        }

        /**
         * Sets what one of a thing costs.
         *
         * @param item its name on the shopping list
         * @param price what one costs in the unit that is counted there, such as a bag or a foot; from 0 to 1,000,000, with
         *     up to 4 decimals
         * @return this builder
         * @throws IllegalArgumentException if the price is out of that range, the name is blank or has a price
         */
        public Builder item(String item, BigDecimal price) {
            return offer(item, new Offer("", 1, price));
        }

        /**
         * Sets what a pack of a thing costs; as many whole packs are bought as it takes.
         *
         * @param item its name on the shopping list
         * @param pack what the pack is called, such as {@code box}
         * @param count how many are in it, in the unit that is counted on the shopping list; from 1 to 1,000,000
         * @param price what a pack costs, from 0 to 1,000,000, with up to 4 decimals
         * @return this builder
         * @throws IllegalArgumentException if price or count are out of range, a name is blank, or the item has a price
         */
        public Builder pack(String item, String pack, int count, BigDecimal price) {
            if (count < 1 || count > LARGEST_PACK) {
                throw new IllegalArgumentException("count of a " + pack + " of " + item + " was " + count
                        + "; it must be from 1 to 1,000,000: how many are in one?");
            }
            return offer(item, new Offer(requireName("pack", pack), count, price));
        }

        private Builder offer(String item, Offer offer) {
            BigDecimal plain = offer.price.stripTrailingZeros();
            if (plain.signum() < 0 || plain.compareTo(DEAREST) > 0 || plain.scale() > MOST_DECIMALS) {
                throw new IllegalArgumentException("price of " + item + " was " + offer.price + " " + currency
                        + "; it must be from 0 to 1,000,000 with up to 4 decimals");
            }
            if (offers.putIfAbsent(requireName("item", item), offer) != null) {
                throw new IllegalArgumentException(
                        "item was " + item + ", which has a price already; give each thing one");
            }
            return this;
        }

        /**
         * Sets what one of a thing weighs, where the library cannot know it, as of hinges and screws, or knows it only
         * roughly, as of gravel.
         *
         * @param item its name on the shopping list
         * @param each what one weighs, 0 or more, in the unit that is counted there
         * @return this builder
         * @throws IllegalArgumentException if the weight is negative or the name is blank
         */
        public Builder weighs(String item, Mass each) {
            if (each.isNegative()) {
                throw new IllegalArgumentException("weight of " + item + " was " + each + "; it must be 0 or more");
            }
            weights.put(requireName("item", item), each);
            return this;
        }

        private static String requireName(String parameter, String name) {
            if (name.isBlank()) {
                throw new IllegalArgumentException(
                        parameter + " was blank; give its name as the shopping list has it, such as concrete mix");
            }
            return name;
        }

        /**
         * Returns the price book.
         *
         * @return the price book
         */
        public PriceBook build() {
            return new PriceBook(this);
        }
    }
}
