package org.fencecore.drawing;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * Words or figures at a place. A label that would run into others is moved a little further the same way; if there is
 * no room it is left out, and the sheet says so.
 *
 * @param text what is written
 * @param lettering how big
 * @param at the place it tells about
 * @param toward on which side of that place it is written, anticlockwise from the right; empty for right on it
 * @param gap how far away on paper its nearest edge is
 * @param turn how far the line of writing is turned anticlockwise from level; a label that would be upside down is
 *     turned round
 */
public record Label(String text, Lettering lettering, Spot at, Optional<Angle> toward, Length gap, Angle turn)
        implements Shape {

    /**
     * Takes the parts.
     *
     * @param text what is written
     * @param lettering how big
     * @param at the place it tells about
     * @param toward on which side of that place it is written; empty for right on it
     * @param gap how far away on paper its nearest edge is
     * @param turn how far the line of writing is turned from level
     */
    public Label {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(lettering, "lettering");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(toward, "toward");
        Objects.requireNonNull(gap, "gap");
        Objects.requireNonNull(turn, "turn");
    }

    /**
     * Returns a level note written right on its place.
     *
     * @param at the place, the middle of the label
     * @param text what is written
     * @return the label
     */
    public static Label on(Spot at, String text) {
        return new Label(text, Lettering.NOTE, at, Optional.empty(), Length.ZERO, Angle.ZERO);
    }

    /**
     * Returns a level note written beside its place.
     *
     * @param at the place
     * @param toward on which side of it, anticlockwise from the right
     * @param gap how far away on paper
     * @param text what is written
     * @return the label
     */
    public static Label beside(Spot at, Angle toward, Length gap, String text) {
        return new Label(text, Lettering.NOTE, at, Optional.of(toward), gap, Angle.ZERO);
    }

    /**
     * Returns this label with other lettering.
     *
     * @param newLettering how big
     * @return the label
     */
    public Label withLettering(Lettering newLettering) {
        return new Label(text, newLettering, at, toward, gap, turn);
    }

    /**
     * Returns this label with its line of writing turned.
     *
     * @param newTurn how far it is turned anticlockwise from level
     * @return the label
     */
    public Label withTurn(Angle newTurn) {
        return new Label(text, lettering, at, toward, gap, newTurn);
    }

    @Override
    public Layer layer() {
        return Layer.LETTERING;
    }
}
