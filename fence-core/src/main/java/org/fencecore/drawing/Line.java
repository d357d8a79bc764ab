package org.fencecore.drawing;

import java.util.List;
import java.util.Objects;

/**
 * A line from place to place that does not close.
 *
 * @param layer what it shows
 * @param spots the places in order, at least two
 */
public record Line(Layer layer, List<Spot> spots) implements Shape {

    /**
     * Checks the parts.
     *
     * @param layer what it shows
     * @param spots the places in order, at least two
     * @throws IllegalArgumentException if there are fewer than two places
     */
    public Line {
        Objects.requireNonNull(layer, "layer");
        spots = List.copyOf(spots);
        if (spots.size() < 2) {
            throw new IllegalArgumentException("spots of a line on " + layer + " were " + spots
                    + "; give at least two, its beginning and its end");
        }
    }

    /**
     * Returns a line.
     *
     * @param layer what it shows
     * @param spots the places in order, at least two
     * @return the line
     * @throws IllegalArgumentException if there are fewer than two places
     */
    public static Line of(Layer layer, Spot... spots) {
        return new Line(layer, List.of(spots));
    }
}
