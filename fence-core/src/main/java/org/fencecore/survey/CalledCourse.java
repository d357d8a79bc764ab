package org.fencecore.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/** Works out the course along a curve from what was called of it, and compares what was called besides. */
final class CalledCourse {

    private static final Length HUNDRED_FEET = Length.ofFeet(100);
    /** A minute, and a thousandth of one for the last bits of sums of angles. */
    private static final Angle DIRECTIONS_AGREE = Dms.MINUTE.times(1.001);

    private static final double FULL_TURN = 2 * Math.PI;

    private final CalledCurve calls;
    private final Side turn;
    private final @Nullable Length radius;
    private final @Nullable Angle delta;
    private final @Nullable Length arc;
    private final @Nullable Length chord;
    private final @Nullable Bearing chordBearing;
    private final @Nullable Bearing tangentIn;
    private final @Nullable Bearing tangentOut;
    private final List<Finding> findings = new ArrayList<>();

    CalledCourse(CalledCurve calls) {
        this.calls = calls;
        turn = calls.turn();
        radius = calls.radius().orElse(null);
        delta = calls.delta().orElse(null);
        arc = calls.arc().orElse(null);
        chord = calls.chord().orElse(null);
        chordBearing = calls.chordBearing().orElse(null);
        tangentIn = calls.tangentIn().orElse(null);
        tangentOut = calls.tangentOut().orElse(null);
    }

    Course course() {
        Curve curve = curve();
        return Course.along(curve, direction(curve), calls, findings);
    }

    private Curve curve() {
        Angle turned = delta != null ? delta : fromDirections().orElse(null);
        Curve curve;
        if (radius != null && turned != null) {
            curve = Curve.of(turn, radius, turned);
        } else if (radius != null && arc != null) {
            curve = ofArc(radius, arc);
        } else if (radius != null && chord != null) {
            curve = Curve.of(
                    turn, radius, deltaOfChord(radius, chord, calls.major().orElse(false)));
            if (calls.major().isEmpty() && curve.delta().degrees() < 179) {
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
        return compared(curve);
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
    private Curve compared(Curve curve) {
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
        double allowed = calls.rounding().metres() * (1 + curve.delta().radians() / 2)
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

    private Bearing direction(Curve curve) {
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
        compareDirection("tangent at the beginning", tangentIn, direction.plus(half.negated()), curve);
        compareDirection("tangent at the end", tangentOut, direction.plus(half), curve);
        return direction;
    }

    private void compareDirection(String what, @Nullable Bearing asCalled, Bearing worked, Curve curve) {
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
