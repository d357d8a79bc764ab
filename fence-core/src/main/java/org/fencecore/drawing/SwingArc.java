package org.fencecore.drawing;

import java.util.Objects;
import org.fencecore.units.Angle;

/**
 * The way the end of a gate leaf swings: part of a circle round the hinges.
 *
 * @param layer what it shows
 * @param hinge the middle of the circle
 * @param start where the arc begins
 * @param turn how far it goes round, anticlockwise if positive
 */
public record SwingArc(Layer layer, Spot hinge, Spot start, Angle turn) implements Shape {

    /**
     * Takes the parts.
     *
     * @param layer what it shows
     * @param hinge the middle of the circle
     * @param start where the arc begins
     * @param turn how far it goes round, anticlockwise if positive
     */
    public SwingArc {
        Objects.requireNonNull(layer, "layer");
        Objects.requireNonNull(hinge, "hinge");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(turn, "turn");
    }
}
