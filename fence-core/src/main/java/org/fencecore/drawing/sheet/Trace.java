package org.fencecore.drawing.sheet;

import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Symbol;

/** One line or piece on paper, in mm to the right and down. */
final class Trace {

    static final double HALF_SYMBOL = 0.95;

    final Layer layer;
    /** Places one after the other, x before y; of a circle its middle. */
    final double[] xy;

    final boolean closed;
    /** The radius of a circle, 0 for anything else. */
    final double radius;
    /** Left white inside, whatever the filling of its layer. */
    final boolean open;

    private Trace(Layer layer, double[] xy, boolean closed, double radius, boolean open) {
        this.layer = layer;
        this.xy = xy;
        this.closed = closed;
        this.radius = radius;
        this.open = open;
    }

    static Trace line(Layer layer, double... xy) {
        return new Trace(layer, xy, false, 0, false);
    }

    static Trace piece(Layer layer, double... xy) {
        return new Trace(layer, xy, true, 0, false);
    }

    static Trace rectangle(Layer layer, double x, double y, double width, double height) {
        return piece(layer, x, y, x + width, y, x + width, y + height, x, y + height);
    }

    /** A symbol about its middle. */
    static Trace symbol(Layer layer, Symbol symbol, double x, double y) {
        double half = HALF_SYMBOL;
        double[] square = {x - half, y - half, x + half, y - half, x + half, y + half, x - half, y + half};
        double tip = half * 1.4;
        return switch (symbol) {
            case FILLED_SQUARE -> new Trace(layer, square, true, 0, false);
            case OPEN_SQUARE -> new Trace(layer, square, true, 0, true);
            case DIAMOND ->
                new Trace(layer, new double[] {x, y - tip, x + tip, y, x, y + tip, x - tip, y}, true, 0, true);
            case DOT -> new Trace(layer, new double[] {x, y}, true, half, false);
        };
    }

    Trace movedBy(double dx, double dy) {
        double[] moved = xy.clone();
        for (int i = 0; i < moved.length; i += 2) {
            moved[i] += dx;
            moved[i + 1] += dy;
        }
        return new Trace(layer, moved, closed, radius, open);
    }

    boolean isCircle() {
        return radius > 0;
    }
}
