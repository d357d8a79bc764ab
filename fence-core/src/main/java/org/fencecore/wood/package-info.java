/**
 * Wood as a material: how much it shrinks and swells as it dries and gets wet.
 *
 * <p>A {@link org.fencecore.wood.WoodSpecies} has its shrinkage across the grain, a {@link org.fencecore.wood.Grain} says
 * how a board is sawn, and a {@link org.fencecore.wood.WoodMovement} tells what becomes of a width between two moisture
 * contents. {@link org.fencecore.wood.WoodInUse} is what a builder says of the boards: which wood, how wet when built, and
 * how dry and wet later.
 *
 * <pre>{@code
 * // A 5 1/2 in board put up soaking wet that dries to 12 %.
 * WoodMovement drying = WoodMovement.of(WoodSpecies.LOBLOLLY_PINE, Grain.FLAT, Length.ofInches(5.5),
 *         Ratio.ofPercent(30), Ratio.ofPercent(12));
 * drying.change();    // -0.244 in
 * drying.width();     // 5.256 in
 * }</pre>
 */
@NullMarked
package org.fencecore.wood;

import org.jspecify.annotations.NullMarked;
