package org.fencecore.drawing;

import java.util.Objects;
import java.util.Optional;

/**
 * One line of the key of a drawing: how something is drawn and what it is.
 *
 * @param layer the layer it explains
 * @param symbol the symbol it explains; empty for a line or a filling
 * @param text what it is
 */
public record Key(Layer layer, Optional<Symbol> symbol, String text) {

    /**
     * Takes the parts.
     *
     * @param layer the layer it explains
     * @param symbol the symbol it explains; empty for a line or a filling
     * @param text what it is
     */
    public Key {
        Objects.requireNonNull(layer, "layer");
        Objects.requireNonNull(symbol, "symbol");
        Objects.requireNonNull(text, "text");
    }
}
