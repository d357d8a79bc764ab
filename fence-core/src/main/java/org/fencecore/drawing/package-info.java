/**
 * A drawing before it is on paper: lines, pieces, figures and words in the sizes of the real thing.
 *
 * <p>A {@link org.fencecore.drawing.Drawing} has a title, notes, lines of a {@link org.fencecore.drawing.Key} and {@link
 * org.fencecore.drawing.Shape}s, each on a {@link org.fencecore.drawing.Layer}: {@link org.fencecore.drawing.Line}, {@link
 * org.fencecore.drawing.Outline} and {@link org.fencecore.drawing.SwingArc} between {@link org.fencecore.drawing.Spot}s,
 * {@link org.fencecore.drawing.Mark}s with a {@link org.fencecore.drawing.Symbol} for what is too small to be drawn to
 * scale, {@link org.fencecore.drawing.Label}s and {@link org.fencecore.drawing.Dimension}s in some {@link
 * org.fencecore.drawing.Lettering}, and the table under an elevation, a {@link org.fencecore.drawing.Ladder}.
 *
 * <p>The drawings of a fence are made by {@code org.fencecore.drawing.view}, and put on sheets of paper by {@code
 * org.fencecore.drawing.sheet}. Programs with a canvas of their own read {@link org.fencecore.drawing.Drawing#shapes}
 * instead.
 */
@NullMarked
package org.fencecore.drawing;

import org.jspecify.annotations.NullMarked;
