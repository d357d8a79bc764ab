package org.fencecore.estimate;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Currency;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How fast a crew works and what it is paid: the time one person takes for a post, a bay, a board or a gate, how many
 * they are, how long their day is, what an hour costs, and how long posts cure.
 *
 * <p>What is not said is two people, a day of 8 hours and 2 days of cure (all common practice, no source). Times and wage
 * are the caller's: a task without a time is a gap of the estimate.
 *
 * <pre>{@code
 * CrewRates crew = CrewRates.builder()
 *         .takes(Task.DIGGING, Duration.ofMinutes(45))
 *         .takes(Task.SETTING, Duration.ofMinutes(30))
 *         .wage(new BigDecimal("42.00"), Currency.getInstance("USD"))
 *         .build();
 * }</pre>
 */
public final class CrewRates {

    private static final Duration LONGEST = Duration.ofHours(1000);
    private static final Duration LONGEST_DAY = Duration.ofHours(24);
    private static final BigDecimal DEAREST = new BigDecimal(1_000_000);
    private static final int MOST_DECIMALS = 4;
    private static final int MOST_PEOPLE = 1000;
    private static final int MOST_DAYS = 365;

    private final Map<Task, Duration> times;
    private final int people;
    private final Duration day;
    private final int cureDays;
    private final @Nullable BigDecimal wage;
    private final @Nullable Currency currency;

    private CrewRates(Builder from) {
        times = new EnumMap<>(from.times);
        people = from.people;
        day = from.day;
        cureDays = from.cureDays;
        wage = from.wage;
        currency = from.currency;
    }

    /**
     * Starts from the usual crew.
     *
     * @return a builder with the values named above
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns how long one person takes for one.
     *
     * @param task the work
     * @return the time for one post, hole, bay, board or leaf; empty if it was not said
     */
    public Optional<Duration> time(Task task) {
        return Optional.ofNullable(times.get(task));
    }

    /**
     * Returns how many people work together.
     *
     * @return at least 1
     */
    public int people() {
        return people;
    }

    /**
     * Returns how long they work in a day.
     *
     * @return the time, over 0
     */
    public Duration day() {
        return day;
    }

    /**
     * Returns how many whole days pass between the last post set and the first rail.
     *
     * @return the days, 0 or more
     */
    public int cureDays() {
        return cureDays;
    }

    /**
     * Returns what an hour of one person costs.
     *
     * @return the wage; empty if it was not said
     */
    public Optional<BigDecimal> wage() {
        return Optional.ofNullable(wage);
    }

    /**
     * Returns the currency of the wage.
     *
     * @return the currency; empty if there is no wage
     */
    public Optional<Currency> currency() {
        return Optional.ofNullable(currency);
    }

    /** Collects what a crew does, starting from the usual. */
    public static final class Builder {

        private final Map<Task, Duration> times = new EnumMap<>(Task.class);
        private int people = 2;
        private Duration day = Duration.ofHours(8);
        private int cureDays = 2;
        private @Nullable BigDecimal wage;
        private @Nullable Currency currency;

        private Builder() {}

        /**
         * Sets how long one person takes for one post, hole, bay, board or leaf, whatever the task is counted by.
         *
         * @param task the work
         * @param each the time for one, from 0 to 1000 hours
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder takes(Task task, Duration each) {
            if (each.isNegative() || each.compareTo(LONGEST) > 0) {
                throw new IllegalArgumentException("time of one " + task.unit() + " for " + task + " was " + each
                        + "; it must be from 0 to 1000 hours: how long one person takes for one");
            }
            times.put(task, each);
            return this;
        }

        /**
         * Sets how many people work together, sharing all work; 2 if not set.
         *
         * @param count from 1 to 1000
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder people(int count) {
            if (count < 1 || count > MOST_PEOPLE) {
                throw new IllegalArgumentException("people were " + count
                        + "; they must be from 1 to 1000: how many work on this fence together?");
            }
            people = count;
            return this;
        }

        /**
         * Sets how long they work in a day; 8 hours if not set.
         *
         * @param length over 0, to 24 hours
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder day(Duration length) {
            if (length.isNegative() || length.isZero() || length.compareTo(LONGEST_DAY) > 0) {
                throw new IllegalArgumentException(
                        "day was " + length + "; it must be over 0, to 24 hours: how long the crew works in one");
            }
            day = length;
            return this;
        }

        /**
         * Sets how many whole days pass between the last post set and the first rail, as the maker of the mix says; 2 if
         * not set.
         *
         * @param days from 0 to 365
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder cureDays(int days) {
            if (days < 0 || days > MOST_DAYS) {
                throw new IllegalArgumentException(
                        "days of cure were " + days + "; they must be from 0 to 365: 0 for posts that need no cure");
            }
            cureDays = days;
            return this;
        }

        /**
         * Sets what an hour of one person costs, all told.
         *
         * @param hourly the wage, from 0 to 1,000,000, with up to 4 decimals
         * @param newCurrency its currency
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder wage(BigDecimal hourly, Currency newCurrency) {
            BigDecimal plain = hourly.stripTrailingZeros();
            if (plain.signum() < 0 || plain.compareTo(DEAREST) > 0 || plain.scale() > MOST_DECIMALS) {
                throw new IllegalArgumentException("wage was " + hourly + " " + newCurrency
                        + " an hour; it must be from 0 to 1,000,000 with up to 4 decimals");
            }
            wage = hourly;
            currency = Objects.requireNonNull(newCurrency, "newCurrency");
            return this;
        }

        /**
         * Returns the rates.
         *
         * @return the rates
         */
        public CrewRates build() {
            return new CrewRates(this);
        }
    }
}
