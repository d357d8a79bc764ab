package org.fencecore.survey;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * What one course would have to be for a lot to close, if all the others were right.
 *
 * <p>The bearing and length that close the lot are those from the end of the course before to the beginning of the
 * course after. If that length is the course's own, its bearing alone may be wrong; if that bearing is its own, its
 * length. A {@linkplain #reading reading} then says what slip makes the one of the other: letters of the quadrant
 * swapped, the course called the wrong way round, one digit wrong or two neighbouring digits swapped.
 */
public final class CourseFix {

    private final int number;
    private final Course called;
    private final @Nullable Bearing closingBearing;
    private final Length closingLength;
    private final CourseChange change;
    private final @Nullable Course corrected;
    private final String reading;
    private final Length misclosure;
    private final List<Course> courses;

    CourseFix(
            int number,
            List<Course> courses,
            @Nullable Bearing closingBearing,
            Length closingLength,
            CourseChange change,
            @Nullable Course corrected,
            String reading,
            Length misclosure) {
        this.number = number;
        this.called = courses.get(number - 1);
        this.closingBearing = closingBearing;
        this.closingLength = closingLength;
        this.change = change;
        this.corrected = corrected;
        this.reading = Objects.requireNonNull(reading, "reading");
        this.misclosure = misclosure;
        this.courses = courses;
    }

    /**
     * Returns which course it is about.
     *
     * @return the number of the course, from 1
     */
    public int number() {
        return number;
    }

    /**
     * Returns the course as called.
     *
     * @return the call of the deed
     */
    public Course called() {
        return called;
    }

    /**
     * Returns the bearing that would close the lot.
     *
     * @return the bearing, of a curve that of its chord; empty if the lot closes exactly without the course
     */
    public Optional<Bearing> closingBearing() {
        return Optional.ofNullable(closingBearing);
    }

    /**
     * Returns the length that would close the lot.
     *
     * @return the distance, of a curve that of its chord
     */
    public Length closingLength() {
        return closingLength;
    }

    /**
     * Returns which part of the call would have to be wrong.
     *
     * @return the change after which the lot closes well enough to be laid out, or {@link CourseChange#BOTH}
     */
    public CourseChange change() {
        return change;
    }

    /**
     * Returns the course after that change.
     *
     * @return the course with the other bearing or length, as the reading has it if there is one; empty if the course is
     *     left out, or would have no length
     */
    public Optional<Course> corrected() {
        return Optional.ofNullable(corrected);
    }

    /**
     * Returns the slip that would explain the change.
     *
     * @return such as {@code one digit, 237°00' for 287°00' as azimuth from south}; empty if none was found
     */
    public Optional<String> reading() {
        return reading.isEmpty() ? Optional.empty() : Optional.of(reading);
    }

    /**
     * Returns what the lot still misses by after that change.
     *
     * @return the linear misclosure
     */
    public Length misclosure() {
        return misclosure;
    }

    /**
     * Returns the area that the lot would have with the bearing and the length that close it, curves taken as their
     * chords. Where several changes close the lot, the area that the deed states tells which.
     *
     * @return the area within the corners
     */
    public Area area() {
        List<Point> walked = CompassRule.walk(Point.ORIGIN, courses);
        Point end = walked.get(courses.size());
        Point origin = walked.get(0);
        double twice = 0;
        Point before = origin;
        for (int i = 1; i < courses.size(); i++) {
            Point corner = walked.get(i);
            Point at = i < number
                    ? corner
                    : Point.of(corner.east().minus(end.east()), corner.north().minus(end.north()));
            twice += before.east().times(at.north()).squareMetres()
                    - at.east().times(before.north()).squareMetres();
            before = at;
        }
        return Area.ofSquareMetres(Math.abs(twice) / 2);
    }

    /**
     * Returns the closing bearing and length worked out from the sums of the other courses.
     *
     * @return the worksheet; its last line is the closing length
     */
    public Worksheet worksheet() {
        Length latitude = Length.ZERO;
        Length departure = Length.ZERO;
        for (int i = 0; i < courses.size(); i++) {
            if (i != number - 1) {
                latitude = latitude.minus(courses.get(i).latitude());
                departure = departure.minus(courses.get(i).departure());
            }
        }
        Worksheet.Builder sheet = Worksheet.titled("Course " + number + " that would close the lot")
                .given("course " + number + " as called", called.distance(), called.toString())
                .line(
                        "latitude",
                        "what the latitudes of the other courses lack",
                        "",
                        latitude,
                        Written.feet(latitude),
                        Citation.GEOMETRY)
                .line(
                        "departure",
                        "what the departures of the other courses lack",
                        "",
                        departure,
                        Written.feet(departure),
                        Citation.GEOMETRY);
        String numbers = Written.feet(departure) + " / " + Written.feet(latitude);
        closingBearing()
                .ifPresent(bearing -> sheet.line(
                        "closing bearing",
                        "the direction with tangent departure / latitude",
                        numbers,
                        bearing,
                        bearing.roundedTo(Dms.SECOND).toString(),
                        Citation.GEOMETRY));
        return sheet.line(
                        "closing length",
                        "sqrt(latitude^2 + departure^2)",
                        "sqrt((" + Written.feet(latitude) + ")^2 + (" + Written.feet(departure) + ")^2)",
                        closingLength,
                        Written.feet(closingLength),
                        Citation.GEOMETRY)
                .build();
    }

    /** What the change is, in words. */
    String advice() {
        String place = "course " + number;
        String closes = " closes to " + Written.station(misclosure);
        return switch (change) {
            case BEARING -> place + " as " + corrected + " instead of " + called.bearing() + closes + explained();
            case LENGTH ->
                place + " as " + corrected + " instead of " + Written.station(called.distance()) + closes + explained();
            case LEFT_OUT -> place + " left out" + closes;
            case BOTH -> place + " as " + corrected + closes;
        };
    }

    private String explained() {
        return reading.isEmpty() ? "" : " (" + reading + ")";
    }

    @Override
    public String toString() {
        return advice();
    }
}
