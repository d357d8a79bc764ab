package org.fencecore.drawing;

/**
 * One part of a drawing. Places are in the sizes of the real thing; the size of lettering and the distance of figures
 * from what they tell about are in sizes on paper, so that they can be read at any scale.
 */
public sealed interface Shape permits Line, Outline, SwingArc, Mark, Label, Dimension, Ladder {

    /**
     * Returns what it shows.
     *
     * @return its layer
     */
    Layer layer();
}
