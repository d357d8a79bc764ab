package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** What holds for values of every type, asked of some that differ in one part each. */
public final class EqualValues {

    private EqualValues() {}

    /** Asserts that values made alike are equal and hash alike, and that all others differ. */
    @SafeVarargs
    public static <T> void assertDistinct(Supplier<? extends T>... values) {
        List<T> once = new ArrayList<>();
        List<T> again = new ArrayList<>();
        for (Supplier<? extends T> value : values) {
            once.add(value.get());
            again.add(value.get());
        }
        for (int i = 0; i < once.size(); i++) {
            for (int j = 0; j < again.size(); j++) {
                assertThat(once.get(i).equals(again.get(j)))
                        .as("%s equals %s", once.get(i), again.get(j))
                        .isEqualTo(i == j);
            }
            assertThat(once.get(i)).hasSameHashCodeAs(again.get(i)).isNotEqualTo(new Object());
        }
        // Hash codes may clash, but a type whose values all hash alike makes a list of every map.
        assertThat(once.stream().map(Object::hashCode).collect(Collectors.toSet()))
                .hasSizeGreaterThan(once.size() / 2);
    }
}
