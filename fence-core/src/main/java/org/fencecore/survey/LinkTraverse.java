package org.fencecore.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * A traverse of measured angles and distances from a known point and direction to another known point and direction, or
 * back to the same ones.
 *
 * <p>Each angle is measured clockwise from the line behind, at the first point from the known direction, at the last
 * from the leg that arrives to the known direction there. What all of them miss the closing direction by is the angular
 * misclosure; it is spread equally over the angles. With the directions so corrected the legs are walked, and what they
 * miss the last point by is spread in proportion to their length (the compass rule).
 *
 * <p>Example: the four legs of a link traverse between K and V.
 *
 * <pre>{@code
 * LinkTraverse traverse = LinkTraverse.from(k, Bearing.ofAzimuth(Angle.parse("351-12-05")))
 *         .leg(Angle.parse("17-14-18"), Length.ofMetres(139.835))
 *         .leg(Angle.parse("156-45-26"), Length.ofMetres(269.34))
 *         .leg(Angle.parse("224-20-11"), Length.ofMetres(169.425))
 *         .leg(Angle.parse("138-59-26"), Length.ofMetres(345.92))
 *         .closingOn(v, Angle.parse("102-15-52"), Bearing.ofAzimuth(Angle.parse("270-47-46")));
 * traverse.angularMisclosure();    // -28": the angles sum to so much too little
 * traverse.points().get(1);        // E 599787.749 m, N 149085.008 m
 * }</pre>
 *
 * <p>Limits for a warning are common practice, no source: 30" times the square root of the number of angles, and
 * {@link LotBoundary#FAIR_PRECISION}.
 *
 * <p>Source: link traverse of the groma survey program (GeoSpark/groma, test calculations).
 */
public final class LinkTraverse {

    /** The most legs of a traverse. */
    public static final int MOST_LEGS = 10_000;

    /** The angular misclosure of one angle over which there is a warning; of n angles, times the square root of n. */
    public static final Angle FAIR_ANGLE = Angle.ofDms(0, 0, 30);

    private static final double FULL_TURN = 2 * Math.PI;

    private final Builder measured;
    private final Angle angularMisclosure;
    private final List<Course> legs;
    private final List<Point> points;
    private final Closure closure;

    private LinkTraverse(Builder measured, Point end, Bearing closing) {
        this.measured = measured;
        Bearing arrived = measured.reference;
        for (int i = 0; i < measured.angles.size(); i++) {
            arrived = arrived.plus(measured.angles.get(i));
            arrived = i < measured.angles.size() - 1 ? arrived.reversed() : arrived;
        }
        angularMisclosure = closing.turnTo(arrived);
        Angle correction = correction();
        List<Course> corrected = new ArrayList<>(measured.distances.size());
        Bearing behind = measured.reference;
        for (int i = 0; i < measured.distances.size(); i++) {
            Bearing ahead = behind.plus(measured.angles.get(i).plus(correction));
            corrected.add(Course.of(ahead, measured.distances.get(i)));
            behind = ahead.reversed();
        }
        legs = List.copyOf(corrected);
        List<Point> walked = CompassRule.walk(measured.start, legs);
        Point reached = walked.get(legs.size());
        closure = new Closure(
                reached.east().minus(end.east()), reached.north().minus(end.north()), CompassRule.sumOfLengths(legs));
        points = List.copyOf(CompassRule.adjust(walked, legs, closure));
    }

    /**
     * Starts a traverse.
     *
     * @param start the known point it begins at
     * @param reference the known direction there from which the first angle is measured: to a mark, or that of zero on
     *     the circle
     * @return a builder without legs
     */
    public static Builder from(Point start, Bearing reference) {
        return new Builder(start, reference);
    }

    /**
     * Returns by how much the measured angles turn past the known closing direction.
     *
     * @return the angular misclosure, measured less known, over -180 up to 180 degrees
     */
    public Angle angularMisclosure() {
        return angularMisclosure;
    }

    /**
     * Returns what is added to each angle.
     *
     * @return the angular misclosure with its sign turned, over the number of angles
     */
    public Angle correction() {
        return angularMisclosure.negated().dividedBy(measured.angles.size());
    }

    /**
     * Returns the legs with corrected directions and measured distances.
     *
     * @return the legs before the compass rule, unmodifiable
     */
    public List<Course> legs() {
        return legs;
    }

    /**
     * Returns how far the corrected legs end from the known point.
     *
     * @return the linear misclosure, reached less known, with the sum of the legs as its perimeter
     */
    public Closure closure() {
        return closure;
    }

    /**
     * Returns the points of the traverse after the compass rule.
     *
     * @return the points from the first, known, to the last, known, one more than legs, unmodifiable
     */
    public List<Point> points() {
        return points;
    }

    /**
     * Returns what is doubtful: warnings {@code traverse-angles-miss} and {@code traverse-closes-poorly}.
     *
     * @return the findings, unmodifiable
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        Angle allowed = FAIR_ANGLE.times(Math.sqrt(measured.angles.size()));
        if (angularMisclosure.abs().compareTo(allowed) > 0) {
            findings.add(Finding.warning(
                            "traverse-angles-miss",
                            "traverse",
                            "the angles miss the closing direction by " + Dms.text(angularMisclosure) + ", over "
                                    + Dms.text(allowed) + " for " + measured.angles.size() + " angles")
                    .withRemedy("look for an angle booked or turned wrongly, and check both known directions")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        if (closure.precision().compareTo(LotBoundary.FAIR_PRECISION) > 0) {
            findings.add(Finding.warning(
                            "traverse-closes-poorly",
                            "traverse",
                            "the legs miss the known point: they end " + closure.shift() + " of it, " + closure.oneIn())
                    .withRemedy("look for a distance booked wrongly, and check both known points")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        return List.copyOf(findings);
    }

    /**
     * Returns the traverse worked out.
     *
     * @return the worksheet; its last line is the linear misclosure
     */
    public Worksheet worksheet() {
        int n = measured.angles.size();
        Worksheet.Builder sheet = Worksheet.titled("Link traverse")
                .given("first known direction", measured.reference, Dms.azimuth(measured.reference));
        for (int i = 0; i < n; i++) {
            sheet.given("angle " + (i + 1), measured.angles.get(i), Dms.text(measured.angles.get(i)));
        }
        sheet.line(
                "angular misclosure",
                "first direction + angles - 180° for each leg - closing direction",
                "",
                angularMisclosure,
                Dms.text(angularMisclosure),
                Citation.GEOMETRY);
        sheet.line(
                "correction of each angle",
                "- angular misclosure / number of angles",
                "-(" + Dms.text(angularMisclosure) + ") / " + n,
                correction(),
                Dms.text(correction()),
                Citation.COMMON_PRACTICE);
        for (int i = 0; i < legs.size(); i++) {
            Course leg = legs.get(i);
            String numbers = Written.feet(leg.distance()) + " x ";
            String azimuth = "(" + Dms.azimuth(leg.bearing()) + ")";
            sheet.line(
                    "latitude " + (i + 1),
                    "distance x cos(azimuth)",
                    numbers + "cos" + azimuth,
                    leg.latitude(),
                    Written.feet(leg.latitude()),
                    Citation.GEOMETRY);
            sheet.line(
                    "departure " + (i + 1),
                    "distance x sin(azimuth)",
                    numbers + "sin" + azimuth,
                    leg.departure(),
                    Written.feet(leg.departure()),
                    Citation.GEOMETRY);
        }
        return sheet.line(
                        "misclosure",
                        "sqrt((north reached - known)^2 + (east reached - known)^2)",
                        "sqrt((" + Written.feet(closure.north()) + ")^2 + (" + Written.feet(closure.east()) + ")^2)",
                        closure.misclosure(),
                        Written.feet(closure.misclosure()),
                        CompassRule.SOURCE)
                .build();
    }

    @Override
    public String toString() {
        return legs.size() + " legs, angles miss by " + Dms.text(angularMisclosure) + ", then " + closure.oneIn();
    }

    /** Collects what was measured of a traverse. */
    public static final class Builder {

        private final Point start;
        private final Bearing reference;
        private final List<Angle> angles = new ArrayList<>();
        private final List<Length> distances = new ArrayList<>();

        private Builder(Point start, Bearing reference) {
            this.start = Objects.requireNonNull(start, "start");
            this.reference = Objects.requireNonNull(reference, "reference");
        }

        /**
         * Adds a leg.
         *
         * @param angle the angle clockwise at the beginning of the leg, from the line behind to the leg
         * @param distance the level length of the leg, from 0.1 mm to 500 km
         * @return this builder
         * @throws IllegalArgumentException if the angle is not from 0 to under 360 degrees, the distance out of its range,
         *     or there are too many legs
         */
        public Builder leg(Angle angle, Length distance) {
            if (distances.size() == MOST_LEGS) {
                throw new IllegalArgumentException("the traverse had " + MOST_LEGS
                        + " legs already, the most it may have; divide it at a point and start another there");
            }
            Course.requireCallable("distance of leg " + (distances.size() + 1), distance);
            angles.add(requireTurn("angle of leg " + (distances.size() + 1), angle));
            distances.add(distance);
            return this;
        }

        /**
         * Closes the traverse and works it out.
         *
         * @param end the known point at the end of the last leg; for a loop the first one
         * @param angle the angle clockwise there, from the leg that arrives to the known direction
         * @param closingReference the known direction there
         * @return the traverse
         * @throws IllegalArgumentException if there are no legs, or the angle is not from 0 to under 360 degrees
         */
        public LinkTraverse closingOn(Point end, Angle angle, Bearing closingReference) {
            if (distances.isEmpty()) {
                throw new IllegalArgumentException("the traverse had no legs; add at least one before closing it");
            }
            Builder all = new Builder(start, reference);
            all.angles.addAll(angles);
            all.angles.add(requireTurn("closing angle", angle));
            all.distances.addAll(distances);
            return new LinkTraverse(all, Objects.requireNonNull(end, "end"), closingReference);
        }

        private static Angle requireTurn(String name, Angle angle) {
            if (angle.isNegative() || angle.radians() >= FULL_TURN) {
                throw new IllegalArgumentException(name + " was " + angle
                        + "; it must be from 0 to under 360 degrees, clockwise from the line behind");
            }
            return angle;
        }
    }
}
