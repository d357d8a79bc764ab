package org.fencecore.drawing.view;

import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/** Dimensions as they are written on one drawing. */
record Figures(TapeFormat tape) {

    /** As the trade writes them where nothing else is asked for: feet and inches to the sixteenth. */
    static final TapeFormat USUAL = TapeFormat.feetAndInches(16);

    String of(Length length) {
        return tape.format(length);
    }

    /** A dimension within a sentence, which no end of line may part. */
    String inText(Length length) {
        return of(length).replace(' ', '\u00a0');
    }
}
