package org.fencecore.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class KnapsackProperties {

    private static final long ALL = Long.MAX_VALUE;

    /** Items and the room for them. */
    static final class Given {

        private final long[] sizes;
        private final long[] values;
        private final int[] limits;
        private final long room;

        Given(long[] sizes, long[] values, int[] limits, long room) {
            this.sizes = sizes;
            this.values = values;
            this.limits = limits;
            this.room = room;
        }

        /** What jqwik shows of it. */
        @Override
        public String toString() {
            return Arrays.toString(sizes) + Arrays.toString(values) + Arrays.toString(limits) + room;
        }

        /** Tries every count of every item. */
        long most(int item, long left) {
            if (item == sizes.length) {
                return 0;
            }
            long most = 0;
            for (int n = 0; n <= limits[item] && n * sizes[item] <= left; n++) {
                most = Math.max(most, n * values[item] + most(item + 1, left - n * sizes[item]));
            }
            return most;
        }

        long size(int[] counts) {
            long size = 0;
            for (int i = 0; i < counts.length; i++) {
                assertThat(counts[i]).isBetween(0, limits[i]);
                size += counts[i] * sizes[i];
            }
            return size;
        }

        long value(int[] counts) {
            long value = 0;
            for (int i = 0; i < counts.length; i++) {
                value += counts[i] * values[i];
            }
            return value;
        }

        Knapsack knapsack() {
            return new Knapsack(sizes, values, limits);
        }
    }

    @Property(tries = 500)
    void theBestFillingIsFound(@ForAll("problems") Given given) {
        Knapsack knapsack = given.knapsack();
        long most = given.most(0, given.room);

        assertThat(knapsack.fill(given.room, 0, ALL, ALL)).isEqualTo(most > 0);
        assertThat(knapsack.isComplete()).isTrue();
        assertThat(knapsack.most()).isEqualTo(most);
        assertThat(given.value(knapsack.counts())).isEqualTo(most);
        assertThat(given.size(knapsack.counts())).isLessThanOrEqualTo(given.room);
        assertThat(knapsack.fill(given.room, most, ALL, ALL)).isFalse();
    }

    @Property(tries = 500)
    void theGridFindsItToo(@ForAll("problems") Given given, @ForAll @IntRange(min = 1, max = 300) int cells) {
        GridKnapsack grid = new GridKnapsack(given.sizes, given.values, given.limits, given.room, cells);
        for (long room : new long[] {given.room, given.room / 2}) {
            long most = given.most(0, room);
            assertThat(grid.fill(room, 0, ALL)).isEqualTo(most > 0);
            assertThat(grid.most()).isEqualTo(most);
            if (most > 0) {
                assertThat(given.value(grid.counts())).isEqualTo(most);
                assertThat(given.size(grid.counts())).isLessThanOrEqualTo(room);
            }
            assertThat(grid.fill(room, most, ALL)).isFalse();
            // Cut short, it still bounds.
            grid.fill(room, 0, 2);
            assertThat(grid.most()).isGreaterThanOrEqualTo(most);
        }
    }

    @Property(tries = 300)
    void allFillingsWorthEnoughAreGoneThroughOnce(@ForAll("problems") Given given) {
        long atLeast = Math.max(1, given.most(0, given.room) * 3 / 4);
        List<String> seen = new ArrayList<>();
        boolean all = given.knapsack().each(given.room, atLeast, 1_000_000, counts -> {
            assertThat(given.value(counts)).isGreaterThanOrEqualTo(atLeast);
            assertThat(given.size(counts)).isLessThanOrEqualTo(given.room);
            seen.add(Arrays.toString(counts));
        });

        assertThat(all).isTrue();
        assertThat(seen).doesNotHaveDuplicates();
        assertThat((long) seen.size()).isEqualTo(number(given, 0, given.room, 0, atLeast));
    }

    /** How many fillings are worth enough, items of no value left out. */
    private static long number(Given given, int item, long left, long worth, long atLeast) {
        if (item == given.sizes.length) {
            return worth >= atLeast ? 1 : 0;
        }
        long number = 0;
        int limit = given.values[item] == 0 ? 0 : given.limits[item];
        for (int n = 0; n <= limit && n * given.sizes[item] <= left; n++) {
            number += number(given, item + 1, left - n * given.sizes[item], worth + n * given.values[item], atLeast);
        }
        return number;
    }

    @Provide
    Arbitrary<Given> problems() {
        Arbitrary<Long> size = Arbitraries.longs().between(5, 60);
        Arbitrary<Long> value = Arbitraries.longs().between(0, 50);
        Arbitrary<Integer> limit = Arbitraries.integers().between(0, 3);
        return Arbitraries.integers()
                .between(1, 5)
                .flatMap(n -> Combinators.combine(
                                size.array(long[].class).ofSize(n),
                                value.array(long[].class).ofSize(n),
                                limit.array(int[].class).ofSize(n),
                                Arbitraries.longs().between(1, 200))
                        .as(Given::new));
    }
}
