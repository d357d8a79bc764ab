package org.fencecore.survey;

import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Written;

/**
 * How far the end of a run of courses lies from their beginning, which for a lot should be nowhere at all.
 *
 * @param east how far east of the beginning the end lies, negative for west
 * @param north how far north of the beginning the end lies, negative for south
 * @param perimeter the sum of the courses
 */
public record Closure(Length east, Length north, Length perimeter) {

    /**
     * Returns the linear misclosure: the distance between end and beginning.
     *
     * @return the square root of east squared plus north squared
     */
    public Length misclosure() {
        return Point.ORIGIN.distanceTo(Point.of(east, north));
    }

    /**
     * Returns the misclosure as a share of the perimeter; its inverse is the n of the precision 1 : n.
     *
     * @return misclosure over perimeter
     */
    public Ratio precision() {
        return misclosure().ratioTo(perimeter);
    }

    /**
     * Tells whether end and beginning meet to the nanometre.
     *
     * @return true if the misclosure is zero
     */
    public boolean isExact() {
        return east.isZero() && north.isZero();
    }

    /** Returns the misclosure in words: how far, which way, and 1 part in how many. */
    @Override
    public String toString() {
        if (isExact()) {
            return "closes exactly";
        }
        return "the end lies " + shift() + " of the beginning, " + oneIn();
    }

    /** How far and which way the end lies off. */
    String shift() {
        Bearing direction = Point.ORIGIN.bearingTo(Point.of(east, north)).roundedTo(Dms.MINUTE);
        return Written.station(misclosure()) + " " + direction;
    }

    /** The precision in words. */
    String oneIn() {
        return isExact()
                ? "closes exactly"
                : "1 part in " + Math.round(1 / precision().value());
    }
}
