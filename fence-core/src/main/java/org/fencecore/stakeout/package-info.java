/**
 * Staking a plan out: which strings to stretch and how to prove them square, and a stake for every post.
 *
 * <p>A {@link org.fencecore.stakeout.StringLayout} reads a plan and gives every
 * {@link org.fencecore.stakeout.StringLine string} with the {@link org.fencecore.stakeout.BatterBoard boards} that hold it,
 * every {@link org.fencecore.stakeout.StringCorner corner} with the triangle that proves it, and the
 * {@link org.fencecore.stakeout.ProvingDiagonal diagonals} that prove the whole. How far off the boards stand and how long
 * the tape is says a {@link org.fencecore.stakeout.StringSpec}.
 *
 * <p>A {@link org.fencecore.stakeout.StakeSheet} gives a {@link org.fencecore.stakeout.Stake} for every post of every run:
 * distances from both ends, level and along the ground, and how far the ground lies below the string, whose height a
 * {@link org.fencecore.stakeout.StringHeight} says.
 *
 * <p>Have underground lines marked before a stake or a batter board is driven. Whether a house, a tree or a wall stands in
 * the way of a string is not known here.
 *
 * <p>Example: the strings and stakes of a plan.
 *
 * <pre>{@code
 * StringLayout strings = StringLayout.of(plan);
 * for (StringCorner corner : strings.corners()) {
 *     System.out.println(corner + ": " + corner.onArriving() + ", " + corner.onLeaving() + ", " + corner.diagonal());
 * }
 * for (Stake stake : StakeSheet.of(plan).stakes()) {
 *     System.out.println(stake + ": " + stake.fromStart() + " from the corner, " + stake.drop() + " below the string");
 * }
 * }</pre>
 */
@NullMarked
package org.fencecore.stakeout;

import org.jspecify.annotations.NullMarked;
