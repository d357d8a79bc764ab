package org.fencecore.drawing;

import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;

/**
 * A table under an elevation whose columns stand under what they tell about: a row of spacings, a row of distances from
 * the first post, and so on.
 *
 * <p>A row is lettered level; figures that have no room between their neighbours drop to a second line. Where that is
 * not enough the whole row is lettered upright, and figures that run into each other even then are left out, which the
 * sheet says.
 *
 * @param top how far up its upper edge is
 * @param rungs the rows from the top down
 */
public record Ladder(Length top, List<Rung> rungs) implements Shape {

    /**
     * Takes the parts.
     *
     * @param top how far up its upper edge is
     * @param rungs the rows from the top down
     */
    public Ladder {
        Objects.requireNonNull(top, "top");
        rungs = List.copyOf(rungs);
    }

    @Override
    public Layer layer() {
        return Layer.DIMENSIONS;
    }

    /**
     * One row.
     *
     * @param heading what its figures are
     * @param lettering how big they are written
     * @param cells the figures from left to right
     */
    public record Rung(String heading, Lettering lettering, List<Cell> cells) {

        /**
         * Takes the parts.
         *
         * @param heading what its figures are
         * @param lettering how big they are written
         * @param cells the figures from left to right
         */
        public Rung {
            Objects.requireNonNull(heading, "heading");
            Objects.requireNonNull(lettering, "lettering");
            cells = List.copyOf(cells);
        }
    }

    /**
     * One figure.
     *
     * @param across what it tells about: a stretch, whose ends get a stroke, or a single place, an interval of no length
     * @param text the figure
     */
    public record Cell(Interval across, String text) {

        /**
         * Takes the parts.
         *
         * @param across what it tells about
         * @param text the figure
         */
        public Cell {
            Objects.requireNonNull(across, "across");
            Objects.requireNonNull(text, "text");
        }
    }
}
