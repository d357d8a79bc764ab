package org.fencecore.drawing;

import java.util.List;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.HingeSide;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * A brace on the leaf: six corners, a point in each corner of the clear space and the ends of its bearings on rails and
 * stiles.
 *
 * @param corners from the foot's point along the lower rail, up the lower edge, and round
 * @param direction how it rises, anticlockwise from the right
 */
record BraceOutline(List<Spot> corners, Angle direction) {

    /** The brace with zero at the lower left corner of the frame. */
    static BraceOutline of(GateBrace brace, HingeSide hinges) {
        boolean left = hinges == HingeSide.LEFT;
        Length footX = left ? brace.across().start() : brace.across().end();
        Length headX = left ? brace.across().end() : brace.across().start();
        Length onRail = left ? brace.railBearing() : brace.railBearing().negated();
        Length footY = brace.up().start();
        Length headY = brace.up().end();
        List<Spot> corners = List.of(
                Spot.of(footX, footY),
                Spot.of(footX.plus(onRail), footY),
                Spot.of(headX, headY.minus(brace.stileBearing())),
                Spot.of(headX, headY),
                Spot.of(headX.minus(onRail), headY),
                Spot.of(footX, footY.plus(brace.stileBearing())));
        return new BraceOutline(corners, left ? brace.rise() : Angle.STRAIGHT.minus(brace.rise()));
    }

    Spot middle() {
        return corners.get(0).middle(corners.get(3));
    }

    /** The same with zero elsewhere. */
    BraceOutline movedBy(Length across, Length up) {
        return new BraceOutline(
                corners.stream()
                        .map(spot ->
                                Spot.of(spot.across().plus(across), spot.up().plus(up)))
                        .toList(),
                direction);
    }
}
