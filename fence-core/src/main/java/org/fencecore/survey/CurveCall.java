package org.fencecore.survey;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * What a deed calls of a curve, from which the course along it is made.
 *
 * <p>Its size takes two of radius, delta, arc and chord, but arc and chord alone; two directions, such as both tangents,
 * stand for delta. Its place takes one direction: of the chord, of the tangent at the beginning or end, or that of the
 * course before. Whatever else is called is compared: lengths to what rounding of the calls allows, directions to a
 * minute. The curve is laid out by the first of these that is there: radius and delta, radius and arc, radius and chord,
 * delta and arc, delta and chord; and by the bearing of the chord, the tangent at the beginning, the tangent at the end.
 *
 * <ul>
 *   <li>{@code curve-calls-disagree}, a warning: the call that does not fit the others, by how much.
 *   <li>{@code curve-arc-by-chords}, a warning: the arc called fits only when it is counted in chords of 100 ft, as old
 *       descriptions do with the degree of curve D, where sin(D/2) = 50 ft / R: 100 ft x delta / D.
 *   <li>{@code curve-minor-assumed}, a note: radius and chord fit two curves, and the call does not say which.
 * </ul>
 *
 * <p>Example: the curve of United States Executive Order 5265, with all that it calls.
 *
 * <pre>{@code
 * Course curve = Course.curve(Side.RIGHT)
 *         .radius(Length.ofFeet(301.53))
 *         .delta(Angle.parse("25°59'"))
 *         .arc(Length.ofFeet(136.73))
 *         .chord(Length.ofFeet(135.57))
 *         .chordBearing(Bearing.parse("S 5°55'30\" E"))
 *         .tangentOut(Bearing.parse("S 7°04' W"))
 *         .build();
 * curve.tangentIn();    // S 18°55' E
 * curve.findings();     // none: the calls agree
 * }</pre>
 *
 * <p>Sources: curve calls of public land descriptions; the two definitions of the degree of curve are those of railroad
 * and highway surveying (from memory).
 */
public final class CurveCall {

    /** How finely lengths are called when not said: a hundredth of a foot. */
    public static final Length USUAL_ROUNDING = Length.ofFeet(0.01);

    private static final Length LONGEST_ROUNDING = Length.ofFeet(10);

    private final Side turn;
    private @Nullable Length radius;
    private @Nullable Angle delta;
    private @Nullable Length arc;
    private @Nullable Length chord;
    private @Nullable Bearing chordBearing;
    private @Nullable Bearing tangentIn;
    private @Nullable Bearing tangentOut;
    private @Nullable Boolean major;
    private Length rounding = USUAL_ROUNDING;

    CurveCall(Side turn) {
        this.turn = Objects.requireNonNull(turn, "turn");
    }

    /**
     * Sets the radius.
     *
     * @param newRadius the radius, from 0.1 mm to 500 km
     * @return this call
     * @throws IllegalArgumentException if out of that range
     */
    public CurveCall radius(Length newRadius) {
        Course.requireCallable("radius", newRadius);
        radius = newRadius;
        return this;
    }

    /**
     * Sets the angle at the centre.
     *
     * @param newDelta the angle, over 0 and under 360 degrees, without a sign whichever way the curve turns
     * @return this call
     * @throws IllegalArgumentException if out of that range
     */
    public CurveCall delta(Angle newDelta) {
        if (!newDelta.isPositive() || newDelta.radians() >= 2 * Math.PI) {
            throw new IllegalArgumentException("delta was " + newDelta
                    + "; it must be over 0 and under 360 degrees: give it without a sign and say the turn apart");
        }
        delta = newDelta;
        return this;
    }

    /**
     * Sets the length along the curve.
     *
     * @param newArc the arc, from 0.1 mm to 500 km
     * @return this call
     * @throws IllegalArgumentException if out of that range
     */
    public CurveCall arc(Length newArc) {
        Course.requireCallable("arc", newArc);
        arc = newArc;
        return this;
    }

    /**
     * Sets the straight distance between the ends.
     *
     * @param newChord the chord, from 0.1 mm to 500 km
     * @return this call
     * @throws IllegalArgumentException if out of that range
     */
    public CurveCall chord(Length newChord) {
        Course.requireCallable("chord", newChord);
        chord = newChord;
        return this;
    }

    /**
     * Sets the direction from the beginning to the end.
     *
     * @param bearing the bearing of the chord
     * @return this call
     */
    public CurveCall chordBearing(Bearing bearing) {
        chordBearing = Objects.requireNonNull(bearing, "bearing");
        return this;
    }

    /**
     * Sets the direction in which the curve sets out.
     *
     * @param bearing the bearing of the tangent at the beginning
     * @return this call
     */
    public CurveCall tangentIn(Bearing bearing) {
        tangentIn = Objects.requireNonNull(bearing, "bearing");
        return this;
    }

    /**
     * Lets the curve set out in the direction in which the course before it arrives.
     *
     * @param before the course that the deed calls before this one
     * @return this call
     */
    public CurveCall tangentTo(Course before) {
        return tangentIn(before.tangentOut());
    }

    /**
     * Sets the direction in which the curve arrives.
     *
     * @param bearing the bearing of the tangent at the end
     * @return this call
     */
    public CurveCall tangentOut(Bearing bearing) {
        tangentOut = Objects.requireNonNull(bearing, "bearing");
        return this;
    }

    /**
     * Says that of the two curves of a radius and a chord the shorter is meant.
     *
     * @return this call
     */
    public CurveCall minor() {
        major = false;
        return this;
    }

    /**
     * Says that of the two curves of a radius and a chord the longer is meant, over half of the circle.
     *
     * @return this call
     */
    public CurveCall major() {
        major = true;
        return this;
    }

    /**
     * Sets how finely the lengths are called, a hundredth of a foot when not said; calls that differ by what comes of
     * rounding agree.
     *
     * @param step the last unit that lengths are written to, over 0 up to 10 ft
     * @return this call
     * @throws IllegalArgumentException if out of that range
     */
    public CurveCall lengthsTo(Length step) {
        if (!step.isPositive() || step.compareTo(LONGEST_ROUNDING) > 0) {
            throw new IllegalArgumentException("step was " + step + "; it must be over 0 up to " + LONGEST_ROUNDING
                    + ": the last unit that the deed writes lengths to, such as 0.01 ft");
        }
        rounding = step;
        return this;
    }

    /**
     * Returns the course along the curve.
     *
     * @return the course, with what does not agree as its {@link Course#findings}
     * @throws IllegalArgumentException if too little is called to know the curve, or the chord is longer than the
     *     curve's diameter
     */
    public Course build() {
        return new CalledCourse(calls()).course();
    }

    private CalledCurve calls() {
        return new CalledCurve(
                turn,
                Optional.ofNullable(radius),
                Optional.ofNullable(delta),
                Optional.ofNullable(arc),
                Optional.ofNullable(chord),
                Optional.ofNullable(chordBearing),
                Optional.ofNullable(tangentIn),
                Optional.ofNullable(tangentOut),
                Optional.ofNullable(major),
                rounding);
    }
}
