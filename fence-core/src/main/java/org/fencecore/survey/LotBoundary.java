package org.fencecore.survey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.jspecify.annotations.Nullable;

/**
 * The boundary of a lot as its deed or plat calls it: courses that should come back to where they began.
 *
 * <p>Each course gives a latitude (distance times the cosine of its azimuth, north positive) and a departure (times the
 * sine, east positive), a curve those of its chord. What they fail to sum to is the misclosure; it is spread over the
 * courses in proportion to their length (the compass rule), so that the outline closes. A curve counts with the length
 * of its arc, and keeps its delta.
 *
 * <p>A lot that misses by more than {@link #WORST_PRECISION} of its perimeter, or whose boundary crosses itself, has no
 * outline here: {@link #findings} says so and {@link #outline} is empty. These limits are common practice, no source;
 * the law of the place and the surveyor decide what a boundary is. {@link #diagnosis} tells which single call would
 * have to be wrong.
 *
 * <p>Example: the lot of United States Executive Order 7804 with its first azimuth, from south, as 237°00'.
 *
 * <pre>{@code
 * LotBoundary lot = LotBoundary.of(List.of(
 *         Course.of(Bearing.ofAzimuthFromSouth(Angle.parse("237°00'")), Length.ofFeet(91.00)),
 *         Course.of(Bearing.ofAzimuthFromSouth(Angle.parse("318°06'")), Length.ofFeet(40.60)),
 *         Course.of(Bearing.ofAzimuthFromSouth(Angle.parse("57°00'")), Length.ofFeet(76.85)),
 *         Course.of(Bearing.ofAzimuthFromSouth(Angle.parse("120°00'")), Length.ofFeet(45.00))));
 * lot.closure().misclosure();    // 0.016 ft in 253.45 ft, 1 part in 15876
 * lot.area();                    // 3365.7 sq ft, where the order says 3365
 * }</pre>
 *
 * <p>Source: compass rule and worked traverses, Purdue University ASM 215, traverse calculations.
 */
public final class LotBoundary {

    /** The most courses a lot may have. */
    public static final int MOST_COURSES = 10_000;

    /** A lot that closes worse than this share of its perimeter is not laid out. */
    public static final Ratio WORST_PRECISION = Ratio.of(1.0 / 500);

    /** A lot that closes worse than this share of its perimeter is laid out with a warning. */
    public static final Ratio FAIR_PRECISION = Ratio.of(1.0 / 5000);

    /** How far the straight facets of a curved side may lie off the curve when not said. */
    public static final Length USUAL_FACETS_WITHIN = Length.ofInches(1);

    private static final Length FACETS_WITHIN_AT_LEAST = Length.ofMillimetres(0.1);

    private final List<Course> courses;
    private final List<Point> traverse;
    private final boolean byCorners;
    private final Length within;
    private final Closure closure;
    private final List<LotSide> sides;
    private final @Nullable Polygon outline;
    private final @Nullable Area area;
    private final List<Finding> findings;

    private LotBoundary(List<Course> courses, List<Point> traverse, boolean byCorners, Length within) {
        this.courses = courses;
        this.traverse = traverse;
        this.byCorners = byCorners;
        this.within = within;
        Point start = traverse.get(0);
        Point end = traverse.get(courses.size());
        closure = new Closure(
                end.east().minus(start.east()), end.north().minus(start.north()), CompassRule.sumOfLengths(courses));
        List<Finding> found = new ArrayList<>();
        for (int i = 0; i < courses.size(); i++) {
            for (Finding finding : courses.get(i).findings()) {
                found.add(finding.at("course " + (i + 1)));
            }
        }
        if (closure.precision().compareTo(WORST_PRECISION) > 0) {
            found.add(doesNotClose());
            sides = List.of();
            outline = null;
            area = null;
        } else {
            if (closure.precision().compareTo(FAIR_PRECISION) > 0) {
                found.add(Finding.warning("lot-closes-poorly", "lot", "the courses close poorly: " + closure)
                        .withRemedy("compare every bearing and distance with the deed before setting stakes")
                        .withSource(Citation.COMMON_PRACTICE));
            }
            List<Point> corners = CompassRule.adjust(traverse, courses, closure).subList(0, courses.size());
            LotOutline laidOut = new LotOutline(corners, courses);
            List<LotSide> facetted = laidOut.sides(courses, within);
            Polygon facets = LotOutline.outline(facetted);
            Optional<Finding> crossing = laidOut.crossing(facetted, facets, within);
            crossing.ifPresent(found::add);
            sides = crossing.isPresent() ? List.of() : Collections.unmodifiableList(facetted);
            outline = crossing.isPresent() ? null : facets;
            area = crossing.isPresent() ? null : laidOut.area();
        }
        findings = List.copyOf(found);
    }

    private Finding doesNotClose() {
        return Finding.blocker("lot-does-not-close", "lot", "the courses do not close: " + closure)
                .withRemedy("compare every bearing and distance with the deed; a lot should close to 1 part in "
                        + Math.round(1 / FAIR_PRECISION.value()) + " or better"
                        + ClosureDiagnosis.of(courses, closure).advice())
                .withSource(Citation.COMMON_PRACTICE);
    }

    /**
     * Returns the boundary of these courses, its first corner at east 0, north 0.
     *
     * @param courses the calls in order, from 3 to {@value #MOST_COURSES}
     * @return the boundary, with its findings
     * @throws IllegalArgumentException if there are too few or too many courses, or their curves take over 10,000 facets
     */
    public static LotBoundary of(List<Course> courses) {
        return startingAt(Point.ORIGIN, courses);
    }

    /**
     * Returns the boundary of these courses from a corner whose coordinates are known.
     *
     * @param corner where the first course begins
     * @param courses the calls in order, from 3 to {@value #MOST_COURSES}
     * @return the boundary, with its findings
     * @throws IllegalArgumentException if there are too few or too many courses, or their curves take over 10,000 facets
     */
    public static LotBoundary startingAt(Point corner, List<Course> courses) {
        List<Course> calls = List.copyOf(courses);
        requireCount(calls.size(), "courses", "give every call of the deed, the last back to the beginning");
        return new LotBoundary(calls, CompassRule.walk(corner, calls), false, USUAL_FACETS_WITHIN);
    }

    /**
     * Returns the boundary through corners whose coordinates are known. It closes exactly, which says nothing of the
     * coordinates: compare the area with what the plat states.
     *
     * @param corners the corners in order, either way round, from 3 to {@value #MOST_COURSES}, the first not repeated
     * @return the boundary, its courses those from corner to corner
     * @throws IllegalArgumentException if there are too few or too many corners, or neighbours are under 0.1 mm or over
     *     500 km apart
     */
    public static LotBoundary ofCorners(List<Point> corners) {
        List<Point> round = new ArrayList<>(corners);
        requireCount(round.size(), "corners", "give every corner once");
        round.add(round.get(0));
        List<Course> courses = new ArrayList<>(corners.size());
        for (int i = 0; i < corners.size(); i++) {
            Point start = round.get(i);
            if (start.equals(round.get(i + 1))) {
                throw new IllegalArgumentException("corners " + (i + 1) + " and " + ((i + 1) % corners.size() + 1)
                        + " were both " + start + "; give each corner once, the first not again at the end");
            }
            courses.add(Course.between(start, round.get(i + 1)));
        }
        return new LotBoundary(List.copyOf(courses), List.copyOf(round), true, USUAL_FACETS_WITHIN);
    }

    private static void requireCount(int count, String what, String remedy) {
        if (count < 3 || count > MOST_COURSES) {
            throw new IllegalArgumentException(
                    "the lot had " + count + " " + what + "; it must have from 3 to " + MOST_COURSES + ": " + remedy);
        }
    }

    /**
     * Returns this boundary with its curved sides laid out more finely or more coarsely.
     *
     * @param newWithin how far the facets may lie off the curve, 0.1 mm or more; {@link #USUAL_FACETS_WITHIN} when not said
     * @return the boundary with the fewest equal facets that keep within that
     * @throws IllegalArgumentException if {@code within} is less, or the curves take over 10,000 facets
     */
    public LotBoundary withFacetsWithin(Length newWithin) {
        if (newWithin.compareTo(FACETS_WITHIN_AT_LEAST) < 0) {
            throw new IllegalArgumentException("within was " + newWithin + "; it must be " + FACETS_WITHIN_AT_LEAST
                    + " or more: no string is set finer");
        }
        return new LotBoundary(courses, traverse, byCorners, newWithin);
    }

    /**
     * Returns the calls.
     *
     * @return the courses in order, unmodifiable
     */
    public List<Course> courses() {
        return courses;
    }

    /**
     * Returns where the first course begins.
     *
     * @return the first corner
     */
    public Point start() {
        return traverse.get(0);
    }

    /**
     * Returns the corners, if the lot was given by them.
     *
     * @return the corners as given, each once; empty if it was given by its courses
     */
    public Optional<List<Point>> givenCorners() {
        return byCorners ? Optional.of(traverse.subList(0, courses.size())) : Optional.empty();
    }

    /**
     * Returns how near the facets of curved sides keep to the curve.
     *
     * @return the greatest distance between them
     */
    public Length facetsWithin() {
        return within;
    }

    /**
     * Returns how well the courses close.
     *
     * @return the closure
     */
    public Closure closure() {
        return closure;
    }

    /**
     * Returns the sides with the misclosure spread out.
     *
     * @return one side for each course, in order, unmodifiable; empty when there is no outline
     */
    public List<LotSide> sides() {
        return sides;
    }

    /**
     * Returns the outline of the lot with the misclosure spread out, a curved side in the straight facets of
     * {@link LotSide#line}, none of which leaves the lot.
     *
     * @return the outline of the facets of all sides in order, so that on a lot without curves its side {@code i} is
     *     course {@code i + 1}; empty when the courses do not close or cross
     */
    public Optional<Polygon> outline() {
        return Optional.ofNullable(outline);
    }

    /**
     * Returns the area within the adjusted boundary: that within the chords, with the segment of each curve added where
     * it bulges out and taken off where it bulges in.
     *
     * @return the area; empty when there is no outline
     */
    public Optional<Area> area() {
        return Optional.ofNullable(area);
    }

    /**
     * Compares the area with the one that the deed states. That courses close does not prove the area: a side may follow
     * a shore, or two calls be wrong alike.
     *
     * @param stated the area of the deed
     * @param within how much of it the difference may be, as for an area stated to a hundredth of an acre
     * @return a warning {@code lot-area-differs}; empty if the areas agree or there is no outline
     * @throws IllegalArgumentException if {@code stated} is not over zero or {@code within} is negative
     */
    public Optional<Finding> areaAgainst(Area stated, Ratio within) {
        if (!stated.isPositive() || within.isNegative()) {
            throw new IllegalArgumentException("stated area was " + stated + " and within " + within
                    + "; the area must be over 0 and the share 0 or more: give the area of the deed");
        }
        return area().filter(own -> own.minus(stated).abs().compareTo(stated.times(within)) > 0)
                .map(own -> Finding.warning(
                                "lot-area-differs",
                                "lot",
                                "the courses enclose " + Dms.squareFeet(own) + ", and the deed states "
                                        + Dms.squareFeet(stated))
                        .withRemedy("look on the plat for a side that follows a shore or a curve, and for calls that"
                                + " are wrong alike")
                        .withSource(Citation.GEOMETRY));
    }

    /**
     * Returns what is wrong with the courses.
     *
     * <ul>
     *   <li>blockers: {@code lot-does-not-close}, with the likely wrong call as its remedy; {@code lot-crosses-itself};
     *   <li>warnings: {@code lot-closes-poorly}, {@code curve-calls-disagree}, {@code curve-arc-by-chords};
     *   <li>a note: {@code curve-minor-assumed}.
     * </ul>
     *
     * @return the findings, unmodifiable
     */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * Returns what would close the courses if a single call were wrong.
     *
     * @return the diagnosis
     */
    public ClosureDiagnosis diagnosis() {
        return ClosureDiagnosis.of(courses, closure);
    }

    /**
     * Returns the traverse worked out: latitude and departure of each course, their sums, and the misclosure, in feet to
     * 4 decimals.
     *
     * @return the worksheet; its last line is the linear misclosure
     */
    public Worksheet worksheet() {
        return LotSheets.closure(courses, closure);
    }

    /**
     * Returns the compass rule and the area worked out, in feet to 4 decimals: adjusted latitude, departure, length and
     * bearing of each side, its double meridian distance (DMD, the sum of the east coordinates of its ends) and its
     * double area, and the segments of curves.
     *
     * @return the worksheet, its last line the area; empty when there is no outline
     */
    public Optional<Worksheet> areaWorksheet() {
        return area().map(own -> LotSheets.area(this, own));
    }

    @Override
    public String toString() {
        return courses.size() + " courses, " + closure;
    }
}
