package org.fencecore.json;

import static org.fencecore.json.Basics.FLAG;
import static org.fencecore.json.Basics.listOf;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.GeometryForms.POINT;
import static org.fencecore.json.GeometryForms.POINTS;
import static org.fencecore.json.GeometryForms.SIDE;
import static org.fencecore.json.Quantities.ANGLE;
import static org.fencecore.json.Quantities.BEARING;
import static org.fencecore.json.Quantities.LENGTH;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Point;
import org.fencecore.survey.CalledCurve;
import org.fencecore.survey.Course;
import org.fencecore.survey.CurveCall;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;

/** The forms of the lot: its courses as a deed or plat calls them, or its corners. */
final class LotForms {

    private static final Made<Course, Course> STRAIGHT = Made.<Course>named("straight", "A straight course.")
            .from(
                    required("bearing", BEARING, Course::bearing, "its direction"),
                    required("distance", LENGTH, Course::distance, "its level length"),
                    Course::of)
            .end(course -> course);

    /** Whatever is called of a curve is written again, so that it is compared again. */
    private static final Made<Course, CurveCall> CURVE = Made.<Course>named(
                    "curve", "A curve: two of radius, delta, arc and chord, and one direction; more are compared.")
            .from(required("turn", SIDE, course -> called(course).turn(), "the hand it turns to"), Course::curve)
            .with(
                    maybe("radius", LENGTH, course -> called(course).radius(), "the radius"),
                    (CurveCall call, Length radius) -> call.radius(radius))
            .with(maybe("delta", ANGLE, course -> called(course).delta(), "the angle at the centre"), CurveCall::delta)
            .with(maybe("arc", LENGTH, course -> called(course).arc(), "the length along the curve"), CurveCall::arc)
            .with(maybe("chord", LENGTH, course -> called(course).chord(), "the length of the chord"), CurveCall::chord)
            .with(
                    maybe("chordBearing", BEARING, course -> called(course).chordBearing(), "the chord's direction"),
                    CurveCall::chordBearing)
            .with(
                    maybe("tangentIn", BEARING, course -> called(course).tangentIn(), "the direction at the beginning"),
                    CurveCall::tangentIn)
            .with(
                    maybe("tangentOut", BEARING, course -> called(course).tangentOut(), "the direction at the end"),
                    CurveCall::tangentOut)
            .with(
                    maybe("major", FLAG, course -> called(course).major(), "whether it is over half a circle"),
                    (call, major) -> major ? call.major() : call.minor())
            .with(
                    usual("lengthsTo", LENGTH, course -> called(course).rounding(), "how finely lengths are called"),
                    CurveCall::lengthsTo)
            .end(CurveCall::build);

    private static final Form<Course> COURSE = Kinds.<Course>named("course", "One call of the boundary.")
            .kind("straight", Course.class, course -> course.curve().isEmpty(), STRAIGHT)
            .kind("curve", Course.class, course -> course.called().isPresent(), CURVE);

    /** What is known of a lot before it is one: courses from a corner, or corners. */
    private record Draft(
            Optional<Point> start,
            Optional<List<Course>> courses,
            Optional<List<Point>> corners,
            Optional<Length> facetsWithin) {

        LotBoundary build() {
            if (courses.isPresent() == corners.isPresent()) {
                throw new IllegalArgumentException("a lot has either courses or corners; give one of them");
            }
            if (corners.isPresent() && start.isPresent()) {
                throw new IllegalArgumentException("start was given with corners; it is where courses begin");
            }
            LotBoundary lot = corners.isPresent()
                    ? LotBoundary.ofCorners(corners.get())
                    : LotBoundary.startingAt(start.orElse(Point.ORIGIN), courses.orElseThrow());
            return facetsWithin.map(lot::withFacetsWithin).orElse(lot);
        }
    }

    static final Made<LotBoundary, ?> LOT = Made.<LotBoundary>named("lot", "The boundary: its courses or its corners.")
            .from(() -> new Draft(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()))
            .with(
                    maybe(
                            "start",
                            POINT,
                            lot -> lot.givenCorners().isPresent() ? Optional.empty() : Optional.of(lot.start()),
                            "where the first course begins; east 0, north 0 when not said"),
                    (draft, start) ->
                            new Draft(Optional.of(start), draft.courses(), draft.corners(), draft.facetsWithin()))
            .with(
                    maybe(
                            "courses",
                            listOf(COURSE, LotBoundary.MOST_COURSES),
                            lot -> lot.givenCorners().isPresent() ? Optional.empty() : Optional.of(lot.courses()),
                            "the calls in order, the last back to the beginning"),
                    (draft, courses) ->
                            new Draft(draft.start(), Optional.of(courses), draft.corners(), draft.facetsWithin()))
            .with(
                    maybe("corners", POINTS, LotBoundary::givenCorners, "the corners in order, each once"),
                    (draft, corners) ->
                            new Draft(draft.start(), draft.courses(), Optional.of(corners), draft.facetsWithin()))
            .with(
                    usual("facetsWithin", LENGTH, LotBoundary::facetsWithin, "how near facets keep to a curved side"),
                    (draft, within) -> new Draft(draft.start(), draft.courses(), draft.corners(), Optional.of(within)))
            .end(Draft::build);

    private LotForms() {}

    private static CalledCurve called(Course course) {
        return course.called().orElseThrow();
    }
}
