/**
 * Boards once they are laid out: what is cut from them, what one sees between them, and how they move.
 *
 * <p>It begins where {@link org.fencecore.layout.BoardLayout} ends. {@link org.fencecore.boarding.BoardCuts} gives every
 * {@link org.fencecore.boarding.BoardCut board's length} between a top line and a bottom line, or
 * under a fence's {@link org.fencecore.slope.TopLine line of tops}, with {@link org.fencecore.boarding.BoardEnds ends}
 * square, sloped or dog-eared, and {@link org.fencecore.boarding.StockUse how many come from which stock}. {@link org.fencecore.boarding.Notches} finds the boards
 * that meet a post and the shift with fewest {@link org.fencecore.boarding.Notch notches}. {@link
 * org.fencecore.boarding.Privacy} tells how much of the fence is solid and from which angle one sees through it, and
 * {@link org.fencecore.boarding.BoardMovement} what becomes of gaps and laps as the wood dries and gets wet. {@link
 * org.fencecore.boarding.CornerBoards} tells where the boards of two runs end at the post they share.
 *
 * <pre>{@code
 * BoardLayout layout = BoardLayout.fit(Length.parse("7 ft 10 1/2 in"), BoardPattern.shadowbox(Length.ofInches(5.5)));
 * Privacy privacy = Privacy.of(layout, Length.ofInches(0.75), Length.ofInches(1.5));
 * privacy.solid();             // 1: nothing is seen from square in front
 * privacy.seeThroughFrom();    // 34.99 deg: a lap of 1.05 in at 1 1/2 in between the faces
 * }</pre>
 */
@NullMarked
package org.fencecore.boarding;

import org.jspecify.annotations.NullMarked;
