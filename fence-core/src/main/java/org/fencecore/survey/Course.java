package org.fencecore.survey;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * One call of a deed or plat: go that way, that far, straight or along a curve.
 *
 * <p>A straight course is its bearing and its level distance. A course along a {@link Curve} has the bearing and the
 * distance of the curve's chord, which take it from its beginning to its end just as well.
 *
 * <p>Example: a front of 80 ft, the rounded corner that follows it, and a side called by azimuth from south.
 *
 * <pre>{@code
 * Course front = Course.of(Bearing.parse("N 90° E"), Length.parse("80 ft"));
 * Course rounding = Course.curve(Side.RIGHT)
 *         .radius(Length.parse("25 ft"))
 *         .delta(Angle.RIGHT)
 *         .tangentTo(front)
 *         .build();
 * Course side = Course.of(Bearing.ofAzimuthFromSouth(Angle.parse("0°")), Length.parse("4 rods"));
 * rounding.bearing();     // S 45° E, of the chord
 * rounding.distance();    // 35.36 ft, of the chord
 * rounding.length();      // 39.27 ft, of the arc
 * }</pre>
 */
public final class Course {

    /** The shortest distance that can be called. */
    static final Length SHORTEST = Length.ofMillimetres(0.1);

    /** The longest: so long that the most courses a lot may have still sum to a length. */
    static final Length LONGEST = Length.ofMetres(500_000);

    private final Bearing bearing;
    private final Length distance;
    private final @Nullable Curve curve;
    private final @Nullable CalledCurve called;
    private final List<Finding> findings;

    private Course(
            Bearing bearing,
            Length distance,
            @Nullable Curve curve,
            @Nullable CalledCurve called,
            List<Finding> findings) {
        this.bearing = Objects.requireNonNull(bearing, "bearing");
        this.distance = distance;
        this.curve = curve;
        this.called = called;
        this.findings = findings;
    }

    /**
     * Returns a straight course.
     *
     * @param bearing the direction; see {@link Bearing#ofAzimuth} and {@link Bearing#ofAzimuthFromSouth} for azimuths
     * @param distance the level distance, from 0.1 mm to 500 km
     * @return the course
     * @throws IllegalArgumentException if {@code distance} is out of that range
     */
    public static Course of(Bearing bearing, Length distance) {
        if (!distance.isPositive()) {
            throw new IllegalArgumentException("distance of the course " + bearing + " was " + distance
                    + "; it must be over 0: leave the course out or turn its bearing round");
        }
        requireCallable("distance of the course " + bearing, distance);
        return new Course(bearing, distance, null, null, List.of());
    }

    /**
     * Returns the straight course from one point to another.
     *
     * @param start where it begins
     * @param end where it ends
     * @return the course
     * @throws IllegalArgumentException if the points are under 0.1 mm or over 500 km apart
     */
    public static Course between(Point start, Point end) {
        Length distance = start.distanceTo(end);
        requireCallable("distance from " + start + " to " + end, distance);
        return new Course(start.bearingTo(end), distance, null, null, List.of());
    }

    /**
     * Starts a course along a curve.
     *
     * @param turn the side to which it bends: left or right, going along it
     * @return what the deed calls of it, still empty
     */
    public static CurveCall curve(Side turn) {
        return new CurveCall(turn);
    }

    static Course along(Curve curve, Bearing chordBearing, CalledCurve called, List<Finding> findings) {
        return new Course(chordBearing, curve.chord(), curve, called, List.copyOf(findings));
    }

    static void requireCallable(String name, Length length) {
        if (length.compareTo(SHORTEST) < 0 || length.compareTo(LONGEST) > 0) {
            throw new IllegalArgumentException(name + " was " + length + "; it must be from " + SHORTEST + " to "
                    + LONGEST + ": check its unit, and leave out what has no length");
        }
    }

    /** This course with another bearing and distance, a curve keeping its delta. */
    Course moved(Bearing newBearing, Length newDistance) {
        return new Course(
                newBearing, newDistance, curve == null ? null : curve.withChord(newDistance), null, List.of());
    }

    /**
     * Returns the direction.
     *
     * @return the bearing of the line, or of the chord of a curve
     */
    public Bearing bearing() {
        return bearing;
    }

    /**
     * Returns the straight distance from its beginning to its end.
     *
     * @return the level distance, of a curve the length of its chord
     */
    public Length distance() {
        return distance;
    }

    /**
     * Returns the length along the boundary.
     *
     * @return the distance, of a curve the length of its arc
     */
    public Length length() {
        return curve == null ? distance : curve.arc();
    }

    /**
     * Returns the curve it follows.
     *
     * @return the curve; empty for a straight course
     */
    public Optional<Curve> curve() {
        return Optional.ofNullable(curve);
    }

    /**
     * Returns what the deed calls of the curve.
     *
     * @return the calls; empty for a straight course, and for one that was adjusted
     */
    public Optional<CalledCurve> called() {
        return Optional.ofNullable(called);
    }

    /**
     * Returns the direction in which it sets out.
     *
     * @return the bearing, or that of the curve's tangent at its beginning
     */
    public Bearing tangentIn() {
        return bearing.plus(halfDelta().negated());
    }

    /**
     * Returns the direction in which it arrives.
     *
     * @return the bearing, or that of the curve's tangent at its end
     */
    public Bearing tangentOut() {
        return bearing.plus(halfDelta());
    }

    private Angle halfDelta() {
        return curve == null ? Angle.ZERO : curve.signedDelta().dividedBy(2);
    }

    /**
     * Returns how far north it goes: distance times the cosine of the azimuth.
     *
     * @return the latitude, negative for south, to the nearest nanometre
     */
    public Length latitude() {
        return bearing.latitude(distance);
    }

    /**
     * Returns how far east it goes: distance times the sine of the azimuth.
     *
     * @return the departure, negative for west, to the nearest nanometre
     */
    public Length departure() {
        return bearing.departure(distance);
    }

    /**
     * Returns what does not agree in the call itself: {@code curve-calls-disagree}, {@code curve-arc-by-chords},
     * {@code curve-minor-assumed}, as {@link CurveCall} tells. A straight course has none.
     *
     * @return the findings, unmodifiable
     */
    public List<Finding> findings() {
        return findings;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Course that
                && bearing.equals(that.bearing)
                && distance.equals(that.distance)
                && Objects.equals(curve, that.curve)
                && findings.equals(that.findings);
    }

    @Override
    public int hashCode() {
        return Objects.hash(bearing, distance, curve);
    }

    /**
     * Returns the course as a deed calls it.
     *
     * @return such as {@code N 45°30'15" E, 85.20 ft}; for a curve its radius, delta and arc, and its chord
     */
    @Override
    public String toString() {
        String line = bearing + ", " + Written.station(distance);
        return curve == null ? line : curve + ", chord " + line;
    }
}
