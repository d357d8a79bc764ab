package org.fencecore;

import org.fencecore.footing.FootingDesign;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;

/**
 * One post: where it stands, how far it stands out of the ground, and its footing.
 *
 * @param number its number on the plan, from 1 along the fence
 * @param kind what it does
 * @param centre the middle of the post in plan, east and north of the first lot corner
 * @param ground the height of the ground there, in the datum of the shots
 * @param exposed how far its top stands above that ground
 * @param footing depth, hole and concrete
 */
public record Post(int number, PostKind kind, Point centre, Length ground, Length exposed, FootingDesign footing) {

    /**
     * Returns the height of the post's top.
     *
     * @return ground plus exposed height, in the datum of the shots
     */
    public Length top() {
        return ground.plus(exposed);
    }

    @Override
    public String toString() {
        return "post " + number;
    }
}
