package org.fencecore.terrain;

import java.util.Optional;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/**
 * One flat triangle of the ground between three neighbouring shots.
 *
 * <p>Its plane rises by {@code gx} to the east and {@code gy} to the north; its steepest grade is
 * {@code sqrt(gx^2 + gy^2)}. Source: geometry.
 *
 * @param a one corner
 * @param b the next corner, counterclockwise seen from above
 * @param c the third corner
 */
public record Facet(Shot a, Shot b, Shot c) {

    /**
     * Checks that the corners turn left.
     *
     * @param a one corner
     * @param b the next corner, counterclockwise seen from above
     * @param c the third corner
     * @throws IllegalArgumentException if they are in line or go around clockwise
     */
    public Facet {
        if (turn(a, b, c) <= 0) {
            throw new IllegalArgumentException("the shots at " + a.place() + ", " + b.place() + " and " + c.place()
                    + " do not go around a triangle counterclockwise; give them in that order");
        }
    }

    private static int turn(Shot a, Shot b, Shot c) {
        return Predicates.turn(east(a), north(a), east(b), north(b), east(c), north(c));
    }

    private static long east(Shot shot) {
        return shot.place().east().nanometres();
    }

    private static long north(Shot shot) {
        return shot.place().north().nanometres();
    }

    /**
     * Returns how steep the ground is straight down its fall.
     *
     * @return the grade, zero or more
     */
    public Slope steepest() {
        return Slope.ofPercent(100 * Math.hypot(eastward(), northward()));
    }

    /**
     * Returns where water runs.
     *
     * @return the bearing straight down the fall; empty if the three are as high
     */
    public Optional<Bearing> downhill() {
        double run = Math.hypot(eastward(), northward());
        if (run == 0) {
            return Optional.empty();
        }
        double reach = 1e15 / run; // so long that whole nanometres do not turn it
        return Optional.of(Point.ORIGIN.bearingTo(Point.of(
                Length.ofNanometres(Math.round(-reach * eastward())),
                Length.ofNanometres(Math.round(-reach * northward())))));
    }

    private double eastward() {
        return (rise(b) * northOf(c) - rise(c) * northOf(b)) / doubleArea();
    }

    private double northward() {
        return (rise(c) * eastOf(b) - rise(b) * eastOf(c)) / doubleArea();
    }

    private double doubleArea() {
        return eastOf(b) * northOf(c) - eastOf(c) * northOf(b);
    }

    private double eastOf(Shot shot) {
        return (double) (east(shot) - east(a));
    }

    private double northOf(Shot shot) {
        return (double) (north(shot) - north(a));
    }

    private double rise(Shot shot) {
        return (double) (shot.elevation().nanometres() - a.elevation().nanometres());
    }
}
