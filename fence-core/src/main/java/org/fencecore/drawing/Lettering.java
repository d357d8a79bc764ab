package org.fencecore.drawing;

import org.fencecore.units.Length;

/**
 * How big something is written: the size of the letters on paper, whatever the scale.
 *
 * <p>The smallest has capitals 2 mm high (common practice for drawings read at arm's length, no source).
 */
public enum Lettering {
    /** Dimensions, labels and notes: 2.8 mm. */
    NOTE(2.8, false),
    /** Numbers of posts, and headings: 3.5 mm, bold. */
    NUMBER(3.5, true),
    /** The title of a sheet: 5 mm, bold. */
    TITLE(5, true);

    private final double size;
    private final boolean bold;

    Lettering(double size, boolean bold) {
        this.size = size;
        this.bold = bold;
    }

    /**
     * Returns the size of the letters on paper.
     *
     * @return the height of a line set solid
     */
    public Length size() {
        return Length.ofMillimetres(size);
    }

    /**
     * Tells whether it is written bold.
     *
     * @return true for bold
     */
    public boolean isBold() {
        return bold;
    }
}
