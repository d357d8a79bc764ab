package org.fencecore.survey;

import java.util.Optional;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * What was called of a curve, as {@link CurveCall} took it, so that a lot can be written down again with its calls.
 *
 * @param turn the hand to which the curve turns
 * @param radius the radius, if called
 * @param delta the angle at the centre, if called
 * @param arc the length along the curve, if called
 * @param chord the length of the chord, if called
 * @param chordBearing the direction of the chord, if called
 * @param tangentIn the direction at the beginning, if called
 * @param tangentOut the direction at the end, if called
 * @param major true for a curve over half a circle, false for one under it; empty if the call does not say
 * @param rounding the last unit to which the lengths were called
 */
public record CalledCurve(
        Side turn,
        Optional<Length> radius,
        Optional<Angle> delta,
        Optional<Length> arc,
        Optional<Length> chord,
        Optional<Bearing> chordBearing,
        Optional<Bearing> tangentIn,
        Optional<Bearing> tangentOut,
        Optional<Boolean> major,
        Length rounding) {}
