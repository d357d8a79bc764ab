package org.fencecore.drawing.sheet;

import org.fencecore.drawing.Lettering;

/**
 * One line of writing on paper.
 *
 * @param text what is written, clean
 * @param lettering how big
 * @param anchor which part of it stays put if a font is wider or narrower than reckoned
 * @param box the room it takes
 * @param masked whether lines under it are blotted out
 */
record Writing(String text, Lettering lettering, Anchor anchor, Box box, boolean masked) {

    private static final double HALF_LINE = 0.56;

    /** The part of a line that stays put, as SVG names it. */
    enum Anchor {
        START(-1),
        MIDDLE(0),
        END(1);

        private final int side;

        Anchor(int side) {
            this.side = side;
        }
    }

    /** A line of writing about its middle, turned clockwise. */
    static Writing centred(String text, Lettering lettering, double x, double y, double turn) {
        double halfWidth = Words.width(text, lettering) / 2;
        Box box = new Box(x, y, halfWidth, HALF_LINE * lettering.size().millimetres(), turn);
        return new Writing(text, lettering, Anchor.MIDDLE, box, false);
    }

    /** A level line of writing that begins at x, its middle at y. */
    static Writing from(String text, Lettering lettering, double x, double y) {
        Writing centred = centred(text, lettering, x, y, 0);
        Box box = centred.box.movedBy(centred.box.halfWidth(), 0);
        return new Writing(text, lettering, Anchor.START, box, false);
    }

    /** A level line of writing that ends at x, its middle at y. */
    static Writing upTo(String text, Lettering lettering, double x, double y) {
        Writing centred = centred(text, lettering, x, y, 0);
        Box box = centred.box.movedBy(-centred.box.halfWidth(), 0);
        return new Writing(text, lettering, Anchor.END, box, false);
    }

    Writing mask() {
        return new Writing(text, lettering, anchor, box, true);
    }

    Writing movedBy(double dx, double dy) {
        return new Writing(text, lettering, anchor, box.movedBy(dx, dy), masked);
    }

    /** How far right of the middle of its box, unturned, its anchor is. */
    double anchorRight() {
        return anchor.side * box.halfWidth();
    }
}
