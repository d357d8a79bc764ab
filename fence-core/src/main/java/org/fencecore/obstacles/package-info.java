/**
 * What is underground and in the way of a fence: where no post hole may be dug, and where no fence can pass.
 *
 * <p>Begin with {@link org.fencecore.obstacles.Obstacle}: one marked {@linkplain org.fencecore.obstacles.UtilityKind
 * utility line}, tree, wall, hydrant, structure or keep-out area, told in plan. {@link org.fencecore.obstacles.Obstacles}
 * are all of them on one job: they tell which stretches of a post line are barred, and what is wrong with a post or a
 * fence that stays where it is.
 *
 * <p>Only what was told is kept clear of. Nothing here finds buried lines: before any digging they have to be marked, the
 * public ones by the local one-call service, the private ones (sprinklers, lights, septic, gas to a grill) by whoever
 * finds them.
 *
 * <p>Example: a gas line crosses the line of the posts square at 30 ft, and the holes are 12 in wide.
 *
 * <pre>{@code
 * Obstacles obstacles = Obstacles.of(List.of(
 *         Obstacle.utility(UtilityKind.GAS, gasMark),
 *         Obstacle.tree(oak, Length.ofInches(9), Length.ofFeet(5)).withName("the oak")));
 * obstacles.forbidden(postLine, Length.ofInches(6));   // from 27 ft 6 in to 32 ft 6 in
 * }</pre>
 */
@NullMarked
package org.fencecore.obstacles;

import org.jspecify.annotations.NullMarked;
