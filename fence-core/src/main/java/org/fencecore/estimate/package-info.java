/**
 * What a fence costs and weighs, how long it takes, and what another way to build it would change.
 *
 * <p>The caller's {@link org.fencecore.estimate.PriceBook} says what the yard asks, and
 * {@link org.fencecore.estimate.CrewRates} how long each {@link org.fencecore.estimate.Task} takes and what an hour costs;
 * an {@link org.fencecore.estimate.EstimateSpec} adds waste and tax. {@link org.fencecore.estimate.Estimate} prices a plan
 * with them: an {@link org.fencecore.estimate.EstimateLine} for each thing to buy and a
 * {@link org.fencecore.estimate.LabourLine} for each part of the work, the {@link org.fencecore.estimate.Load} with its
 * trips, and the {@link org.fencecore.estimate.Schedule}. {@link org.fencecore.estimate.Comparison} puts two of them side
 * by side. There are no prices, wages or times in the library.
 *
 * <p>Example: the fence of the takeoff's example, with invented prices, 5 % of boards and 10 % of fasteners over, 8.25 % of
 * tax on materials, and two people at 42 an hour.
 *
 * <pre>{@code
 * EstimateSpec spec = EstimateSpec.builder(book)
 *         .crew(crew)
 *         .waste(MaterialGroup.BOARDS, new BigDecimal(5))
 *         .waste(MaterialGroup.FASTENERS, new BigDecimal(10))
 *         .salesTax(new BigDecimal("8.25"))
 *         .build();
 * Estimate estimate = Estimate.of(plan, spec);
 * estimate.materials().get(6).packs();              // 1, a box of 350 screws for 297
 * estimate.pricedMaterials();                       // 613.92
 * estimate.tax();                                   // 50.65
 * estimate.pricedLabour();                          // 501.90
 * estimate.total();                                 // 1166.47; empty as long as a price is missing
 * estimate.load().weight();                         // 1662.2 lb
 * estimate.load().trips(Mass.ofPounds(1000)).size();    // 2
 * // Layout, digging and setting on the first, rails, boards and gates on the last.
 * estimate.schedule().orElseThrow().days();         // OptionalInt[4]
 * }</pre>
 */
@NullMarked
package org.fencecore.estimate;

import org.jspecify.annotations.NullMarked;
