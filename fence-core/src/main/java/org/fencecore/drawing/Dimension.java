package org.fencecore.drawing;

import java.util.Objects;
import org.fencecore.units.Length;

/**
 * A dimension: a line beside what is measured, with a stroke at both ends and the figure on it.
 *
 * @param from where the measured distance begins
 * @param to where it ends, not the same place
 * @param offset how far away on paper the dimension line is, to the left of the way from {@code from} to {@code to} if
 *     positive
 * @param text the figure as it is to be read off the tape
 */
public record Dimension(Spot from, Spot to, Length offset, String text) implements Shape {

    /**
     * Checks the parts.
     *
     * @param from where the measured distance begins
     * @param to where it ends, not the same place
     * @param offset how far away on paper the dimension line is, to the left if positive
     * @param text the figure as it is to be read off the tape
     * @throws IllegalArgumentException if both places are the same
     */
    public Dimension {
        Objects.requireNonNull(offset, "offset");
        Objects.requireNonNull(text, "text");
        if (from.equals(to)) {
            throw new IllegalArgumentException(
                    "dimension '" + text + "' was from " + from + " to the same place; give two places");
        }
    }

    @Override
    public Layer layer() {
        return Layer.DIMENSIONS;
    }
}
