package org.fencecore;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.fencecore.internal.Once;
import org.fencecore.worksheet.Finding;

/**
 * What a plan has to say of itself, collected while it is made. Most of it is words for what the plan knows anyway, and
 * words take longer than the plan: what can be said later is put in as a promise, and said when somebody first asks.
 *
 * <p>While it is collected it belongs to one planner; once that is done any thread may ask.
 */
final class Findings {

    private final List<Supplier<? extends Collection<Finding>>> parts = new ArrayList<>();
    private final Once<List<Finding>> told = Once.of(this::tell);

    /** Adds what is known now. */
    void add(Finding finding) {
        parts.add(() -> List.of(finding));
    }

    /** Adds what will be known when asked; it must always come out the same. */
    void later(Supplier<? extends Collection<Finding>> promise) {
        parts.add(promise);
    }

    /** Adds what something has to say of itself, with the place where it is. */
    void later(Supplier<? extends Collection<Finding>> promise, String place) {
        parts.add(() ->
                promise.get().stream().map(finding -> finding.within(place)).toList());
    }

    /** Returns all that there is to say, each thing once, the most serious first. */
    List<Finding> all() {
        return told.get();
    }

    private List<Finding> tell() {
        Set<Finding> once = new LinkedHashSet<>();
        parts.forEach(part -> once.addAll(part.get()));
        return once.stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
    }
}
