package org.fencecore.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.SelfCrossing;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The boundary of a lot as its deed or plat calls it: courses that should come back to where they began.
 *
 * <p>Each course gives a latitude (distance times the cosine of its azimuth, north positive) and a departure (times the
 * sine, east positive). What they fail to sum to is the misclosure; it is spread over the courses in proportion to
 * their length (the compass rule), so that the outline closes. Straight courses only. The first corner is put at east
 * 0, north 0.
 *
 * <p>A lot that misses by more than {@link #WORST_PRECISION} of its perimeter, or whose outline crosses itself, has no
 * outline here: {@link #findings} says so and {@link #outline} is empty. These limits are common practice, no source;
 * the law of the place and the surveyor decide what a boundary is.
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

    static final TapeFormat DEED_FEET = TapeFormat.decimalFeet(2);

    private static final Citation COMPASS_RULE =
            Citation.of("Purdue University ASM 215", "traverse calculations, compass rule", "");

    private final List<Course> courses;
    private final Closure closure;
    private final Optional<Polygon> outline;
    private final List<Finding> findings;

    private LotBoundary(List<Course> courses, Closure closure, Optional<Polygon> outline, List<Finding> findings) {
        this.courses = courses;
        this.closure = closure;
        this.outline = outline;
        this.findings = findings;
    }

    /**
     * Returns the boundary of these courses.
     *
     * @param courses the calls in order, from 3 to {@value #MOST_COURSES}
     * @return the boundary, with its findings
     * @throws IllegalArgumentException if there are too few or too many courses
     */
    public static LotBoundary of(List<Course> courses) {
        List<Course> calls = List.copyOf(courses);
        if (calls.size() < 3 || calls.size() > MOST_COURSES) {
            throw new IllegalArgumentException("the lot had " + calls.size() + " courses; it must have from 3 to "
                    + MOST_COURSES + ": give every call of the deed, the last back to the beginning");
        }
        List<Point> traverse = traverse(calls);
        Point end = traverse.get(calls.size());
        Length perimeter = calls.stream().map(Course::distance).reduce(Length.ZERO, Length::plus);
        Closure closure = new Closure(end.east(), end.north(), perimeter);
        List<Finding> findings = new ArrayList<>();
        if (closure.precision().compareTo(WORST_PRECISION) > 0) {
            findings.add(Finding.blocker("lot-does-not-close", "lot", "the courses do not close: " + closure)
                    .withRemedy("compare every bearing and distance with the deed; a lot should close to 1 part in "
                            + oneIn(FAIR_PRECISION) + " or better")
                    .withSource(Citation.COMMON_PRACTICE));
            return new LotBoundary(calls, closure, Optional.empty(), List.copyOf(findings));
        }
        if (closure.precision().compareTo(FAIR_PRECISION) > 0) {
            findings.add(Finding.warning("lot-closes-poorly", "lot", "the courses close poorly: " + closure)
                    .withRemedy("compare every bearing and distance with the deed before setting stakes")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        Polygon adjusted = Polygon.of(adjust(calls, traverse, closure));
        Optional<SelfCrossing> crossing = adjusted.firstSelfCrossing();
        if (crossing.isPresent()) {
            SelfCrossing at = crossing.get();
            findings.add(Finding.blocker(
                            "lot-crosses-itself",
                            "lot",
                            "side " + (at.side() + 1) + " crosses side " + (at.otherSide() + 1) + " at east "
                                    + DEED_FEET.format(at.place().east()) + ", north "
                                    + DEED_FEET.format(at.place().north()) + " of the first corner")
                    .withRemedy("put the courses in the order in which they go round the lot, and check the bearings"
                            + " of these two"));
            return new LotBoundary(calls, closure, Optional.empty(), List.copyOf(findings));
        }
        return new LotBoundary(calls, closure, Optional.of(adjusted), List.copyOf(findings));
    }

    private static long oneIn(Ratio precision) {
        return Math.round(1 / precision.value());
    }

    private static List<Point> traverse(List<Course> courses) {
        List<Point> corners = new ArrayList<>(courses.size() + 1);
        corners.add(Point.ORIGIN);
        for (Course course : courses) {
            corners.add(corners.get(corners.size() - 1).plus(course.bearing(), course.distance()));
        }
        return corners;
    }

    private static List<Point> adjust(List<Course> courses, List<Point> traverse, Closure closure) {
        List<Point> corners = new ArrayList<>(courses.size());
        Length gone = Length.ZERO;
        for (int i = 0; i < courses.size(); i++) {
            Ratio share = gone.ratioTo(closure.perimeter());
            Point corner = traverse.get(i);
            corners.add(Point.of(
                    corner.east().minus(closure.east().times(share)),
                    corner.north().minus(closure.north().times(share))));
            gone = gone.plus(courses.get(i).distance());
        }
        return corners;
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
     * Returns how well the courses close.
     *
     * @return the closure
     */
    public Closure closure() {
        return closure;
    }

    /**
     * Returns the outline of the lot with the misclosure spread out.
     *
     * @return the outline, its corner {@code i} where course {@code i + 1} begins; empty when the courses do not close
     *     or cross
     */
    public Optional<Polygon> outline() {
        return outline;
    }

    /**
     * Returns the area within the outline.
     *
     * @return the area; empty when there is no outline
     */
    public Optional<Area> area() {
        return outline.map(Polygon::area);
    }

    /**
     * Returns what is wrong with the courses.
     *
     * @return the findings, unmodifiable
     */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * Returns the traverse worked out: latitude and departure of each course, their sums, and the misclosure, in feet to
     * 4 decimals.
     *
     * @return the worksheet; its last line is the linear misclosure
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Closure of the lot");
        List<Length> latitudes = new ArrayList<>();
        List<Length> departures = new ArrayList<>();
        for (int i = 0; i < courses.size(); i++) {
            Course course = courses.get(i);
            Length latitude = course.bearing().latitude(course.distance());
            Length departure = course.bearing().departure(course.distance());
            latitudes.add(latitude);
            departures.add(departure);
            String distance = Written.feet(course.distance());
            String azimuth = "(" + azimuth(course.bearing()) + ")";
            sheet.given("course " + (i + 1), course.distance(), course.toString());
            line(sheet, "latitude " + (i + 1), "distance x cos(azimuth)", distance + " x cos" + azimuth, latitude);
            line(sheet, "departure " + (i + 1), "distance x sin(azimuth)", distance + " x sin" + azimuth, departure);
        }
        line(sheet, "sum of latitudes", "all latitudes added", sum(latitudes), closure.north());
        line(sheet, "sum of departures", "all departures added", sum(departures), closure.east());
        return sheet.line(
                        "misclosure",
                        "sqrt((sum of latitudes)^2 + (sum of departures)^2)",
                        "sqrt((" + Written.feet(closure.north()) + ")^2 + (" + Written.feet(closure.east()) + ")^2)",
                        closure.misclosure(),
                        Written.feet(closure.misclosure()),
                        COMPASS_RULE)
                .build();
    }

    private static void line(Worksheet.Builder sheet, String name, String formula, String numbers, Length result) {
        sheet.line(name, formula, numbers, result, Written.feet(result), Citation.GEOMETRY);
    }

    private static String sum(List<Length> parts) {
        StringBuilder sum = new StringBuilder(Written.feet(parts.get(0)));
        for (Length part : parts.subList(1, parts.size())) {
            sum.append(part.isNegative() ? " - " : " + ").append(Written.feet(part.abs()));
        }
        return sum.toString();
    }

    /**
     * Writes an azimuth in degrees, minutes and seconds, to the thousandth of a second that the course is written to. It
     * is rounded first and split after, so that the last bits of a sum of angles do not show.
     */
    private static String azimuth(Bearing bearing) {
        long thousandths = Math.round(bearing.azimuth().degrees() * 3_600_000) % (360 * 3_600_000L);
        return Angle.ofDms(
                        (int) (thousandths / 3_600_000),
                        (int) (thousandths / 60_000 % 60),
                        thousandths % 60_000 / 1000.0)
                .toString();
    }

    @Override
    public String toString() {
        return courses.size() + " courses, " + closure;
    }
}
