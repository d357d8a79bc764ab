/**
 * Which sticks to buy for a list of pieces, and how to cut them: the cheapest set, or the one of least length, with a
 * proven bound.
 *
 * <p>Say what to cut with {@link org.fencecore.cutting.CutPiece}, what is sold with
 * {@link org.fencecore.cutting.SoldLength}, and how the saw works with {@link org.fencecore.cutting.CuttingSpec}, among it
 * the rule for the {@link org.fencecore.cutting.LastCut}. {@link org.fencecore.cutting.CuttingPlan} works out the rest: the
 * {@link org.fencecore.cutting.Purchase}s, each {@link org.fencecore.cutting.CutStick}, a lower bound, and the gap that is
 * left between the two. It knows nothing of fences.
 *
 * <p>Example: 6 rails of 7 ft 4 1/4 in, a brace of 5 ft 6 5/8 in, 2 stiles of 5 ft 4 in and 2 gate rails of 2 ft 10 1/2 in,
 * from 8, 10, 12, 14 and 16 ft. Each longest piece on the shortest stick that takes it, and the gate rails together, are 10
 * sticks of 8 ft, 80 ft in all. The least is 70 ft: one stick of 16 ft gives a rail, a stile and a gate rail, 186 3/4 in and
 * two cuts of 1/8 in; one of 14 ft gives the rest of the gate.
 *
 * <pre>{@code
 * CuttingPlan plan = CuttingPlan.of(
 *         List.of(
 *                 CutPiece.of(Length.ofFeetAndInches(7, 4.25), 6, "rail"),
 *                 CutPiece.of(Length.ofFeetAndInches(5, 6.625), 1, "brace"),
 *                 CutPiece.of(Length.ofFeetAndInches(5, 4), 2, "stile"),
 *                 CutPiece.of(Length.ofFeetAndInches(2, 10.5), 2, "gate rail")),
 *         Stream.of(8, 10, 12, 14, 16)
 *                 .map(feet -> SoldLength.of(Length.ofFeet(feet)))
 *                 .toList());
 * plan.length();             // 70 ft
 * plan.leastLength();        // 70 ft
 * plan.isProvenBest();       // true
 * plan.gap();                // 0
 * plan.purchases();          // 1 of 8 ft, 1 of 14 ft, 3 of 16 ft
 * plan.sticks().get(1);      // 2 of 16 ft: 2 x 7' 4 1/4" rail; 1' 3 1/4" left
 * plan.findings();           // none
 * }</pre>
 */
@NullMarked
package org.fencecore.cutting;

import org.jspecify.annotations.NullMarked;
