/**
 * What to buy for a plan, and which pieces to cut from which stick.
 *
 * <p>{@link org.fencecore.takeoff.Takeoff} reads a finished plan and counts by the rules it lists, with the kerf and the
 * bag of a {@link org.fencecore.takeoff.TakeoffSpec}. It answers with the {@link org.fencecore.takeoff.Piece}s to cut,
 * each of a {@link org.fencecore.takeoff.PieceKind}; with the cut list, a {@link org.fencecore.takeoff.Stick} for each
 * stick of lumber to buy; and with the shopping list, a {@link org.fencecore.takeoff.MaterialLine} for each thing.
 *
 * <p>Example: 18 ft 2 3/4 in of fence, in the usual style and on level ground, of 4 posts: a gate for an opening of
 * 42 1/4 in, and two bays of 7 ft 2 1/2 in.
 *
 * <pre>{@code
 * Takeoff takeoff = Takeoff.of(plan);
 * takeoff.pieces().get(4).label();          // post 2 to post 4 rail 1
 * takeoff.pieces().get(4).length();         // 14 ft 8 1/2 in
 * // One 2x4 of 12 ft gives a stile, both rails and a block of the gate.
 * takeoff.sticks().get(8).pieces().size();  // 4
 * takeoff.sticks().get(8).left();           // 2 in
 * takeoff.materials().get(0).item();        // 4x4 post, 10 ft
 * takeoff.materials().get(0).quantity();    // 4
 * takeoff.findings();                       // none
 * }</pre>
 */
@NullMarked
package org.fencecore.takeoff;

import org.jspecify.annotations.NullMarked;
