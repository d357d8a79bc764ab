/**
 * Drawings put on paper and written as files for other programs.
 *
 * <p>{@link org.fencecore.drawing.sheet.Svg} puts a drawing on {@link org.fencecore.drawing.sheet.Paper} at the largest
 * standard {@link org.fencecore.drawing.sheet.Scale} at which it fits, with its title, notes and key, and writes it; {@link
 * org.fencecore.drawing.sheet.Dxf} writes it in the size of the real thing. What is too long for one sheet at a legible
 * scale goes over several, see {@link org.fencecore.drawing.Drawing#sheets}.
 *
 * <pre>{@code
 * Drawing stake = Drawing.titled("Stake")
 *         .add(Outline.rectangle(Layer.POSTS, Length.ZERO, Length.ZERO, Length.ofInches(2), Length.ofInches(24)))
 *         .build();
 * String svg = Svg.write(stake, Paper.LETTER);
 * String dxf = Dxf.write(stake, Paper.LETTER);
 * }</pre>
 */
@NullMarked
package org.fencecore.drawing.sheet;

import org.jspecify.annotations.NullMarked;
