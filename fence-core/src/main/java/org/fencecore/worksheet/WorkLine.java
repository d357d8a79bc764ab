package org.fencecore.worksheet;

import java.util.Objects;

/**
 * One line of a worked calculation: what is sought, the formula, the numbers put in, and the result.
 *
 * @param name what is sought, such as {@code rail length}
 * @param formula the formula in plain text, such as {@code sqrt(run^2 + rise^2)}; empty for a given value
 * @param numbers the formula with the numbers put in; empty for a given value
 * @param result the value itself: a length, angle or other amount, a count, or a word
 * @param shown the value as it is written on the sheet, with its unit
 * @param source where the formula or figure comes from
 */
public record WorkLine(String name, String formula, String numbers, Object result, String shown, Citation source) {

    /**
     * Checks the parts.
     *
     * @param name what is sought, such as {@code rail length}
     * @param formula the formula in plain text, such as {@code sqrt(run^2 + rise^2)}; empty for a given value
     * @param numbers the formula with the numbers put in; empty for a given value
     * @param result the value itself: a length, angle or other amount, a count, or a word
     * @param shown the value as it is written on the sheet, with its unit
     * @param source where the formula or figure comes from
     * @throws IllegalArgumentException if {@code name} or {@code shown} is blank
     */
    public WorkLine {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(numbers, "numbers");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(source, "source");
        if (name.isBlank() || shown.isBlank()) {
            throw new IllegalArgumentException("name was '" + name + "' and shown was '" + shown
                    + "'; a line must say what it works out and what came of it");
        }
    }
}
