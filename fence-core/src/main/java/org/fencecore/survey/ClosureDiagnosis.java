package org.fencecore.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * Which single call of a lot may be wrong when its courses do not close.
 *
 * <p>For each course in turn the others are taken as right, and what it would have to be is worked out; see
 * {@link CourseFix}. A change is likely if it leaves one part of the call as it is and the lot then closes to
 * {@link LotBoundary#WORST_PRECISION}, or to {@link LotBoundary#FAIR_PRECISION} where some change does. A diagnosis is a
 * hint where to look in the deed, never a correction: two wrong calls can look like one, and on sides that run parallel a
 * wrong length fits each.
 *
 * <p>Example: United States Executive Order 7804 as transcribed misses by 76.93 ft.
 *
 * <pre>{@code
 * ClosureDiagnosis diagnosis = lot.diagnosis();
 * diagnosis.likely().get(0).number();       // 1
 * diagnosis.likely().get(0).change();       // BEARING
 * diagnosis.likely().get(0).corrected();    // N 57° E, 91.00 ft, that is 237° from south instead of 287°
 * diagnosis.likely().get(0).area();         // 3365.7 sq ft, where the order says 3365
 * }</pre>
 */
public final class ClosureDiagnosis {

    private static final int MOST_ADVISED = 3;

    private final Closure closure;
    private final List<CourseFix> fixes;
    private final List<CourseFix> likely;

    private ClosureDiagnosis(Closure closure, List<CourseFix> fixes) {
        this.closure = closure;
        this.fixes = List.copyOf(fixes);
        likely = closure.precision().compareTo(LotBoundary.WORST_PRECISION) > 0 ? likely(fixes, closure) : List.of();
    }

    /** Where some change closes the lot fairly, those that close it poorly are chance. */
    private static List<CourseFix> likely(List<CourseFix> fixes, Closure closure) {
        Length fair = closure.perimeter().times(LotBoundary.FAIR_PRECISION);
        List<CourseFix> single = fixes.stream()
                .filter(fix -> fix.change() != CourseChange.BOTH)
                .sorted(Comparator.comparing((CourseFix fix) -> fix.reading().isEmpty())
                        .thenComparing(CourseFix::misclosure))
                .toList();
        List<CourseFix> closing = single.stream()
                .filter(fix -> fix.misclosure().compareTo(fair) <= 0)
                .toList();
        return closing.isEmpty() ? single : closing;
    }

    static ClosureDiagnosis of(List<Course> courses, Closure closure) {
        Length allowed = closure.perimeter().times(LotBoundary.WORST_PRECISION);
        Length close = closure.perimeter().times(LotBoundary.FAIR_PRECISION);
        List<CourseFix> fixes = new ArrayList<>(courses.size());
        for (int i = 0; i < courses.size(); i++) {
            fixes.add(fix(i + 1, courses, closure, allowed, close));
        }
        return new ClosureDiagnosis(closure, fixes);
    }

    private static CourseFix fix(int number, List<Course> courses, Closure closure, Length allowed, Length close) {
        Course called = courses.get(number - 1);
        Point closing = Point.of(
                called.departure().minus(closure.east()), called.latitude().minus(closure.north()));
        Length length = Point.ORIGIN.distanceTo(closing);
        if (length.compareTo(Length.max(close, Course.SHORTEST)) <= 0) {
            Bearing bearing = length.isZero() ? null : Point.ORIGIN.bearingTo(closing);
            return new CourseFix(number, courses, bearing, length, CourseChange.LEFT_OUT, null, "", length);
        }
        Bearing bearing = Point.ORIGIN.bearingTo(closing);
        // By how much each change misses: in length with the bearing that closes, or square off the own bearing.
        Length lengthMisses = length.minus(called.distance()).abs();
        double turn = called.bearing().turnTo(bearing).radians();
        Length bearingMisses = Math.cos(turn) > 0
                ? Length.ofNanometres(Math.round(Math.abs(length.nanometres() * Math.sin(turn))))
                : length;
        boolean byBearing = lengthMisses.compareTo(bearingMisses) <= 0;
        Length misses = byBearing ? lengthMisses : bearingMisses;
        Course whole = called.moved(bearing, length);
        if (misses.compareTo(allowed) > 0) {
            return new CourseFix(number, courses, bearing, length, CourseChange.BOTH, whole, "", Length.ZERO);
        }
        CourseChange change = byBearing ? CourseChange.BEARING : CourseChange.LENGTH;
        Optional<Misreading> slip = Misreading.of(called, change, bearing, length, close);
        Course corrected = slip.map(Misreading::course)
                .orElseGet(() -> byBearing
                        ? called.moved(bearing, called.distance())
                        : called.moved(
                                called.bearing(),
                                Length.ofNanometres(Math.round(length.nanometres() * Math.cos(turn)))));
        return new CourseFix(
                number,
                courses,
                bearing,
                length,
                change,
                corrected,
                slip.map(Misreading::words).orElse(""),
                slip.map(found -> found.misses(closing)).orElse(misses));
    }

    /**
     * Returns what each course would have to be.
     *
     * @return one fix for each course in order, unmodifiable
     */
    public List<CourseFix> fixes() {
        return fixes;
    }

    /**
     * Returns the single changes after which the lot would close, the likeliest first: those that a slip explains, then
     * by what the lot still misses by.
     *
     * @return the likely fixes, unmodifiable; empty if the lot closes, or if no single change does it
     */
    public List<CourseFix> likely() {
        return likely;
    }

    /**
     * Returns the course that would close the lot if it was left out after the last.
     *
     * @return the course from the end back to the beginning; empty if they are under 0.1 mm or over 500 km apart
     */
    public Optional<Course> missing() {
        Length misclosure = closure.misclosure();
        boolean callable = misclosure.compareTo(Course.SHORTEST) >= 0 && misclosure.compareTo(Course.LONGEST) <= 0;
        return callable
                ? Optional.of(Course.between(Point.of(closure.east(), closure.north()), Point.ORIGIN))
                : Optional.empty();
    }

    /** The likely changes as the end of a remedy, or nothing. */
    String advice() {
        if (likely.isEmpty()) {
            return "; no change of the bearing or the length of a single course closes it";
        }
        List<String> changes =
                likely.stream().limit(MOST_ADVISED).map(CourseFix::advice).toList();
        return "; look first at " + String.join(", or at ", changes);
    }

    /**
     * Returns what each course would have to be, written out.
     *
     * @return the worksheet; its last line is the number of the likeliest course, 0 if there is none
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Which course keeps the lot from closing")
                .given("misclosure", closure.misclosure(), closure.toString());
        for (CourseFix fix : fixes) {
            String bearing = fix.closingBearing()
                    .map(closing -> closing.roundedTo(Dms.SECOND).toString())
                    .orElse("no bearing");
            sheet.line(
                    "course " + fix.number(),
                    "what the others lack to close",
                    "called " + fix.called(),
                    fix.closingLength(),
                    bearing + ", " + Written.station(fix.closingLength()),
                    Citation.GEOMETRY);
        }
        int first = likely.isEmpty() ? 0 : likely.get(0).number();
        String shown = likely.isEmpty() ? "none" : likely.get(0).advice();
        return sheet.line(
                        "likely wrong",
                        "the course whose own length or bearing is the one that closes",
                        "",
                        first,
                        shown,
                        Citation.GEOMETRY)
                .build();
    }

    @Override
    public String toString() {
        return closure + advice();
    }
}
