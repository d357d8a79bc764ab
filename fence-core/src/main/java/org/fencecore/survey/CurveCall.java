package org.fencecore.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;
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
    private static final Length HUNDRED_FEET = Length.ofFeet(100);
    /** A minute, and a thousandth of one for the last bits of sums of angles. */
    private static final Angle DIRECTIONS_AGREE = Dms.MINUTE.times(1.001);

    private static final double FULL_TURN = 2 * Math.PI;

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
        if (!newDelta.isPositive() || newDelta.radians() >= FULL_TURN) {
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
        List<Finding> findings = new ArrayList<>();
        Curve curve = curve(findings);
        Bearing direction = direction(curve, findings);
        return Course.along(curve, direction, calls(), findings);
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

    private Curve curve(List<Finding> findings) {
        Angle turned = delta != null ? delta : fromDirections().orElse(null);
        Curve curve;
        if (radius != null && turned != null) {
            curve = Curve.of(turn, radius, turned);
        } else if (radius != null && arc != null) {
            curve = ofArc(radius, arc);
        } else if (radius != null && chord != null) {
            curve = Curve.of(turn, radius, deltaOfChord(radius, chord, Boolean.TRUE.equals(major)));
            if (major == null && curve.delta().degrees() < 179) {
                findings.add(Finding.note(
                                "curve-minor-assumed",
                                "curve",
                                "radius " + Written.station(radius) + " and chord " + Written.station(chord)
                                        + " fit two curves; the shorter was taken, its arc "
                                        + Written.station(curve.arc()))
                        .withRemedy("see on the plat whether the curve is over half a circle, and say which it is")
                        .withSource(Citation.GEOMETRY));
            }
        } else if (turned != null && arc != null) {
            curve = Curve.of(turn, over(arc, turned.radians()), turned);
        } else if (turned != null && chord != null) {
            curve = Curve.of(turn, over(chord, 2 * turned.dividedBy(2).sin()), turned);
        } else {
            throw new IllegalArgumentException("the curve was called by " + called()
                    + "; its size takes two of radius, delta, arc and chord, other than arc and chord alone: look for"
                    + " the radius on the plat");
        }
        return compared(curve, findings);
    }

    private Curve ofArc(Length ofRadius, Length ofArc) {
        double radians = ofArc.ratioTo(ofRadius).value();
        if (radians >= FULL_TURN) {
            throw new IllegalArgumentException("arc was " + ofArc + " and radius " + ofRadius
                    + "; the arc must be shorter than the whole circle of "
                    + Length.ofMetres(ofRadius.metres() * FULL_TURN));
        }
        return Curve.of(turn, ofRadius, Angle.ofRadians(radians));
    }

    private static Length over(Length length, double factor) {
        Length radius = Length.ofMetres(length.metres() / factor);
        Course.requireCallable("radius, from the calls of the curve,", radius);
        return radius;
    }

    private static Angle deltaOfChord(Length ofRadius, Length ofChord, boolean isMajor) {
        double halfSine = ofChord.ratioTo(ofRadius).value() / 2;
        if (halfSine > 1) {
            throw new IllegalArgumentException("chord was " + ofChord + " and radius " + ofRadius
                    + "; a chord is at most the diameter, " + ofRadius.times(2) + ": check both with the plat");
        }
        Angle minor = Angle.ofRadians(2 * Math.asin(halfSine));
        return isMajor ? Angle.ofRadians(FULL_TURN).minus(minor) : minor;
    }

    /** Two directions tell how far the curve turns between them; from chord to tangent it is half of delta. */
    private Optional<Angle> fromDirections() {
        if (tangentIn != null && tangentOut != null) {
            return Optional.of(turnBetween(tangentIn, tangentOut));
        }
        if (tangentIn != null && chordBearing != null) {
            return doubled(turnBetween(tangentIn, chordBearing));
        }
        return chordBearing != null && tangentOut != null
                ? doubled(turnBetween(chordBearing, tangentOut))
                : Optional.empty();
    }

    private static Optional<Angle> doubled(Angle half) {
        return half.compareTo(Angle.STRAIGHT) < 0 ? Optional.of(half.times(2)) : Optional.empty();
    }

    private Angle turnBetween(Bearing from, Bearing to) {
        Angle right = to.azimuth().minus(from.azimuth());
        return (turn == Side.RIGHT ? right : right.negated()).normalized();
    }

    /** Compares the arc and the chord called with those of the curve; an arc counted in chords gives way to the rest. */
    private Curve compared(Curve curve, List<Finding> findings) {
        if (arc != null && chord != null && delta == null && radius != null && !agrees(curve, curve.chord(), chord)) {
            Curve ofChord = Curve.of(turn, radius, deltaOfChord(radius, chord, curve.isMajor()));
            if (isCountedInChords(ofChord, arc)) {
                findings.add(countedInChords(ofChord, arc));
                return ofChord;
            }
        }
        if (arc != null && !agrees(curve, curve.arc(), arc)) {
            findings.add(
                    isCountedInChords(curve, arc)
                            ? countedInChords(curve, arc)
                            : disagreement("arc", Written.station(arc), curve, Written.station(curve.arc())));
        }
        if (chord != null && !agrees(curve, curve.chord(), chord)) {
            findings.add(disagreement("chord", Written.station(chord), curve, Written.station(curve.chord())));
        }
        return curve;
    }

    /** What rounding allows: one unit of the length, half a unit of the radius through delta, and that of delta. */
    private boolean agrees(Curve curve, Length worked, Length asCalled) {
        Angle ofDelta =
                delta != null ? Dms.halfUnit(delta) : fromDirections().isPresent() ? DIRECTIONS_AGREE : Angle.ZERO;
        double allowed = rounding.metres() * (1 + curve.delta().radians() / 2)
                + curve.radius().metres() * ofDelta.radians();
        return worked.minus(asCalled).abs().metres() <= allowed;
    }

    private boolean isCountedInChords(Curve curve, Length asCalled) {
        return curve.radius().compareTo(HUNDRED_FEET.dividedBy(2)) > 0
                && agrees(curve, arcInChords(curve), asCalled)
                && !agrees(curve, curve.arc(), asCalled);
    }

    private static Length arcInChords(Curve curve) {
        double degree = 2 * Math.asin(HUNDRED_FEET.ratioTo(curve.radius()).value() / 2);
        return Length.ofMetres(HUNDRED_FEET.metres() * curve.delta().radians() / degree);
    }

    private static Finding countedInChords(Curve curve, Length asCalled) {
        return Finding.warning(
                        "curve-arc-by-chords",
                        "curve",
                        "the arc called, " + Written.station(asCalled) + ", fits radius "
                                + Written.station(curve.radius()) + " and delta " + Dms.text(curve.delta())
                                + " only when counted in chords of 100 ft; along the curve it is "
                                + Written.station(curve.arc()))
                .withRemedy("take " + Written.station(curve.arc()) + " as the length of the fence line, and ask the"
                        + " surveyor which definition of the degree of curve the description uses")
                .withSource(Citation.GEOMETRY);
    }

    private static Finding disagreement(String what, String asCalled, Curve curve, String worked) {
        return Finding.warning(
                        "curve-calls-disagree",
                        "curve",
                        "the " + what + " called, " + asCalled + ", does not fit the other calls: radius "
                                + Written.station(curve.radius()) + " and delta " + Dms.text(curve.delta()) + " make "
                                + worked)
                .withRemedy("compare radius, delta, arc, chord and directions with the plat")
                .withSource(Citation.GEOMETRY);
    }

    private Bearing direction(Curve curve, List<Finding> findings) {
        Angle half = curve.signedDelta().dividedBy(2);
        Bearing direction;
        if (chordBearing != null) {
            direction = chordBearing;
        } else if (tangentIn != null) {
            direction = tangentIn.plus(half);
        } else if (tangentOut != null) {
            direction = tangentOut.plus(half.negated());
        } else {
            throw new IllegalArgumentException(
                    "the curve was called by " + called() + ", without a direction; give the bearing of its chord, of"
                            + " its tangent at the beginning or end, or the course before it");
        }
        compareDirection("tangent at the beginning", tangentIn, direction.plus(half.negated()), curve, findings);
        compareDirection("tangent at the end", tangentOut, direction.plus(half), curve, findings);
        return direction;
    }

    private static void compareDirection(
            String what, @Nullable Bearing asCalled, Bearing worked, Curve curve, List<Finding> findings) {
        if (asCalled != null && asCalled.turnTo(worked).abs().compareTo(DIRECTIONS_AGREE) > 0) {
            findings.add(disagreement(
                    what,
                    asCalled.toString(),
                    curve,
                    worked.roundedTo(Dms.SECOND).toString()));
        }
    }

    private String called() {
        List<String> calls = new ArrayList<>();
        add(calls, "radius ", radius);
        add(calls, "delta ", delta);
        add(calls, "arc ", arc);
        add(calls, "chord ", chord);
        add(calls, "chord bearing ", chordBearing);
        add(calls, "tangent in ", tangentIn);
        add(calls, "tangent out ", tangentOut);
        return calls.isEmpty() ? "nothing" : Written.list(calls);
    }

    private static void add(List<String> calls, String name, @Nullable Object value) {
        if (value != null) {
            calls.add(name + value);
        }
    }
}
