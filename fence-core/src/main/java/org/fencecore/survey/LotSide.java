package org.fencecore.survey;

import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.units.Length;

/**
 * One side of a lot that closes: the course that calls it, and where it lies once the misclosure is spread.
 *
 * <p>A curved side is laid out in straight facets, as strings are. They never leave the lot: where the curve bulges out
 * of the lot they are its chords, where it bulges in they are tangents. Chords are all equal; tangents too, but the
 * first and the last, which are half as long, since the ends of the side stay where they are.
 */
public final class LotSide {

    private final int number;
    private final Course course;
    private final Course adjusted;
    private final Polyline line;
    private final int firstFacet;

    LotSide(int number, Course course, Course adjusted, Polyline line, int firstFacet) {
        this.number = number;
        this.course = course;
        this.adjusted = adjusted;
        this.line = line;
        this.firstFacet = firstFacet;
    }

    /**
     * Returns which side it is.
     *
     * @return the number of its course, from 1
     */
    public int number() {
        return number;
    }

    /**
     * Returns the call of the deed.
     *
     * @return the course as called
     */
    public Course course() {
        return course;
    }

    /**
     * Returns the course after the misclosure is spread by the compass rule: its bearing, distance, latitude and
     * departure are those between the adjusted corners. A curve keeps its delta.
     *
     * @return the adjusted course
     */
    public Course adjusted() {
        return adjusted;
    }

    /**
     * Returns its facets along the adjusted boundary.
     *
     * @return a line of one piece for a straight side, of more for a curved one, in the direction of the course
     */
    public Polyline line() {
        return line;
    }

    /**
     * Returns how many facets it has.
     *
     * @return 1 for a straight side
     */
    public int facets() {
        return line.points().size() - 1;
    }

    /**
     * Returns which side of the lot's {@linkplain LotBoundary#outline outline} its first facet is; the others follow.
     *
     * @return the number of that side of the outline, from 0
     */
    public int firstFacet() {
        return firstFacet;
    }

    /**
     * Tells whether its course follows a curve.
     *
     * @return true for a curve, even of one facet
     */
    public boolean isCurved() {
        return course.curve().isPresent();
    }

    /**
     * Returns where it begins.
     *
     * @return the adjusted corner of the lot
     */
    public Point start() {
        return line.points().get(0);
    }

    /**
     * Returns where it ends.
     *
     * @return the adjusted corner of the lot, where the next side begins
     */
    public Point end() {
        return line.points().get(facets());
    }

    /**
     * Returns the length of the boundary along this side.
     *
     * @return the adjusted distance, of a curve the adjusted arc
     */
    public Length length() {
        return adjusted.length();
    }

    @Override
    public String toString() {
        return "side " + number + ": " + adjusted;
    }
}
