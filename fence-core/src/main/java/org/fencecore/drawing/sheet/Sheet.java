package org.fencecore.drawing.sheet;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.fencecore.drawing.Drawing;

/** A drawing on paper: the largest standard scale at which it fits, and where on the sheet it stands. */
final class Sheet {

    final Drawing drawing;
    final Paper paper;
    final Placing placing;
    final Furniture furniture;
    /** How far the drawing's zero is from the left and upper edge of the sheet, in mm. */
    final double zeroX;

    final double zeroY;

    private Sheet(Drawing drawing, Paper paper, Placing placing, Furniture furniture) {
        this.drawing = drawing;
        this.paper = paper;
        this.placing = placing;
        this.furniture = furniture;
        Ink ink = placing.ink;
        zeroX = ink.isEmpty() ? 0 : furniture.centredX(ink.width()) - ink.left();
        zeroY = ink.isEmpty() ? 0 : furniture.centredY(ink.height()) - ink.top();
    }

    static Sheet of(Drawing drawing, Paper paper) {
        Ink trueSize = new Ink();
        Placing.cover(drawing, trueSize);
        Iterator<Scale> scales = paper.scales().iterator();
        while (scales.hasNext()) {
            Scale scale = scales.next();
            // Lines alone decide for most scales; words are placed only where those would fit.
            if (trueSize.width() / scale.denominator() > paper.width().millimetres()
                    || trueSize.height() / scale.denominator() > paper.height().millimetres()) {
                continue;
            }
            Placing placing = Placing.of(drawing, scale);
            List<String> notes = new ArrayList<>(drawing.notes());
            if (placing.leftOut() > 0) {
                notes.add(
                        0,
                        "Labels and figures left out for lack of room: " + placing.leftOut()
                                + ". Take them from the tables, or print on larger paper.");
            }
            for (Furniture furniture : new Furniture[] {
                Furniture.below(drawing, paper, scale, notes), Furniture.beside(drawing, paper, scale, notes)
            }) {
                if (placing.ink.width() <= furniture.areaWidth && placing.ink.height() <= furniture.areaHeight) {
                    return new Sheet(drawing, paper, placing, furniture);
                }
            }
        }
        throw new IllegalArgumentException("drawing '" + Words.oneLine(drawing.title()) + "' does not fit on " + paper
                + " at any scale, because its lettering alone is too large; shorten its labels or take larger paper");
    }
}
