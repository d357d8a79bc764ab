package org.fencecore.drawing;

import java.util.List;
import java.util.Objects;
import org.fencecore.units.Length;

/**
 * A piece seen from the front or from above: a closed line round it.
 *
 * @param layer what it shows
 * @param corners its corners in order, at least three, the first not repeated
 */
public record Outline(Layer layer, List<Spot> corners) implements Shape {

    /**
     * Checks the parts.
     *
     * @param layer what it shows
     * @param corners its corners in order, at least three, the first not repeated
     * @throws IllegalArgumentException if there are fewer than three corners
     */
    public Outline {
        Objects.requireNonNull(layer, "layer");
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException(
                    "corners of an outline on " + layer + " were " + corners + "; give at least three");
        }
    }

    /**
     * Returns an outline.
     *
     * @param layer what it shows
     * @param corners its corners in order, at least three
     * @return the outline
     * @throws IllegalArgumentException if there are fewer than three corners
     */
    public static Outline of(Layer layer, Spot... corners) {
        return new Outline(layer, List.of(corners));
    }

    /**
     * Returns a level, upright rectangle.
     *
     * @param layer what it shows
     * @param left how far across its left edge is
     * @param bottom how far up its lower edge is
     * @param right how far across its right edge is
     * @param top how far up its upper edge is
     * @return the outline, from the lower left corner anticlockwise
     */
    public static Outline rectangle(Layer layer, Length left, Length bottom, Length right, Length top) {
        return of(layer, Spot.of(left, bottom), Spot.of(right, bottom), Spot.of(right, top), Spot.of(left, top));
    }
}
