package org.fencecore.drawing;

import org.fencecore.geometry.Point;
import org.fencecore.units.Length;

/**
 * A place on a drawing, in the sizes of the real thing: how far across to the right and how far up.
 *
 * <p>On a plan across is east and up is north; on an elevation across runs along the fence and up is height.
 *
 * @param across the distance to the right of the drawing's zero
 * @param up the distance above the drawing's zero
 */
public record Spot(Length across, Length up) {

    /**
     * Returns a place.
     *
     * @param across the distance to the right of the drawing's zero
     * @param up the distance above the drawing's zero
     * @return the spot
     */
    public static Spot of(Length across, Length up) {
        return new Spot(across, up);
    }

    /**
     * Returns the place of a point on a plan with north up.
     *
     * @param point the point
     * @return its east across and its north up
     */
    public static Spot of(Point point) {
        return new Spot(point.east(), point.north());
    }

    /**
     * Returns the place half way to another, to the nearest nanometre.
     *
     * @param other the other place
     * @return the middle
     */
    public Spot middle(Spot other) {
        return new Spot(
                across.plus(other.across).dividedBy(2), up.plus(other.up).dividedBy(2));
    }
}
