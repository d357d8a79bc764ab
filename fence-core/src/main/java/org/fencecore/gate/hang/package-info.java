/**
 * Hanging a gate: what a leaf weighs, what its hinges, screws, brace and post carry, and whether it swings clear.
 *
 * <p>{@link org.fencecore.gate.hang.LeafWeight} is the start: a leaf of {@link org.fencecore.gate.hang.GateWood} with its
 * {@link org.fencecore.gate.hang.LeafBoards}, and where its centre of gravity is.
 * {@link org.fencecore.gate.hang.HingeLoads} takes that and a {@link org.fencecore.gate.hang.HingeSpec} with
 * {@link org.fencecore.gate.hang.HingeScrews}, and tells the pull on every hinge, the force in the brace and, as a
 * {@link org.fencecore.gate.hang.HingePostLoad}, what the post and its footing get.
 * {@link org.fencecore.gate.hang.LatchDrop} tells how far the latch sinks when joints or hinges give.
 *
 * <p>{@link org.fencecore.gate.hang.GateSwing} follows the lower edge of the leaf over the ground.
 * {@link org.fencecore.gate.hang.Chamfer} keeps the edges of a thick leaf clear of the posts, and
 * {@link org.fencecore.gate.hang.HingeSeat} finds the wood that hinge screws go into. A gate in the fence around a pool is
 * judged by the rule of that barrier, in {@code org.fencecore.rules}.
 *
 * <p>Nothing here says that a gate is strong enough or meets a code: local codes and a licensed engineer decide that.
 *
 * <p>Example: a leaf of an opening of 47 1/2 in, 56 in high, with nine boards.
 *
 * <pre>{@code
 * GateLeaf leaf = GateDesign.forOpening(
 *                 Length.ofInches(47.5), Length.ofInches(56), HingeSide.LEFT, GateSpec.builder().build())
 *         .activeLeaf();
 * GateWood pine = GateWood.southernPine(Ratio.ofPercent(19));
 * LeafBoards boards = LeafBoards.of(
 *         9, Length.ofInches(5.5), Length.ofInches(0.625), Length.ofInches(72), Length.ofInches(-4), pine);
 * LeafWeight weight = LeafWeight.of(leaf, pine, boards);
 * weight.total();                                   // 76.8 lbf
 * HingeLoads loads = HingeLoads.of(weight, HingeSpec.evenly(2, Length.ofInches(7)));
 * loads.pulls();                                    // -43.2 lbf, 43.2 lbf: against the post below, away from it above
 * }</pre>
 */
@NullMarked
package org.fencecore.gate.hang;

import org.jspecify.annotations.NullMarked;
