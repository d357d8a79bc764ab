package org.fencecore;

import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/** How the findings of a plan write lengths: to the sixteenth, and along a lot side in the deed's decimal feet. */
final class Shown {

    private static final TapeFormat TAPE = TapeFormat.feetAndInches(16);
    private static final TapeFormat DEED = TapeFormat.decimalFeet(2);

    private Shown() {}

    static String tape(Length length) {
        return TAPE.format(length);
    }

    static String alongSide(Length length) {
        return DEED.format(length);
    }
}
