package org.fencecore.drawing.sheet;

/**
 * The room a line of writing takes on paper: a rectangle in mm about its middle, turned clockwise as y grows downward.
 */
record Box(double x, double y, double halfWidth, double halfHeight, double turn) {

    private double cos() {
        return StrictMath.cos(turn);
    }

    private double sin() {
        return StrictMath.sin(turn);
    }

    /** Returns how far it reaches from its middle in a direction. */
    double reach(double dx, double dy) {
        return halfWidth * Math.abs(dx * cos() + dy * sin()) + halfHeight * Math.abs(dy * cos() - dx * sin());
    }

    /** Tells whether two boxes share more than an edge: if so, no side of either has the other wholly beyond it. */
    boolean overlaps(Box other) {
        return !isApart(other) && !other.isApart(this);
    }

    private boolean isApart(Box other) {
        return isApart(other, cos(), sin()) || isApart(other, -sin(), cos());
    }

    private boolean isApart(Box other, double dx, double dy) {
        double distance = Math.abs((other.x - x) * dx + (other.y - y) * dy);
        return distance >= reach(dx, dy) + other.reach(dx, dy) - 1e-9;
    }

    /** Adds room before and after the line. */
    Box widened(double ends) {
        return new Box(x, y, halfWidth + ends, halfHeight, turn);
    }

    Box movedBy(double dx, double dy) {
        return new Box(x + dx, y + dy, halfWidth, halfHeight, turn);
    }
}
