package org.fencecore.examples;

import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;

/** Ground shots written in one line. */
final class Shots {

    private Shots() {}

    /** Heights in feet at distances in feet along the side, in pairs. */
    static Profile feet(double... pairs) {
        Profile.Builder shots = Profile.builder();
        for (int i = 0; i < pairs.length; i += 2) {
            shots.point(Length.ofFeet(pairs[i]), Length.ofFeet(pairs[i + 1]));
        }
        return shots.build();
    }
}
