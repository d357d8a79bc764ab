package org.fencecore.terrain;

import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;

/** Heights that a profile can hold. */
final class Heights {

    private Heights() {}

    /** Returns the nanometres of a height, after checking its size. */
    static long checked(Length elevation) {
        return new ProfilePoint(Length.ZERO, elevation).elevation().nanometres();
    }
}
