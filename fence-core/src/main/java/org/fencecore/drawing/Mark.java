package org.fencecore.drawing;

import java.util.Objects;

/**
 * A symbol at a place, of the same size on paper at any scale.
 *
 * @param layer what it shows
 * @param at its middle
 * @param symbol its form
 */
public record Mark(Layer layer, Spot at, Symbol symbol) implements Shape {

    /**
     * Takes the parts.
     *
     * @param layer what it shows
     * @param at its middle
     * @param symbol its form
     */
    public Mark {
        Objects.requireNonNull(layer, "layer");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(symbol, "symbol");
    }
}
