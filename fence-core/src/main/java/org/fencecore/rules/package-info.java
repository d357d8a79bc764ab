/**
 * Rules of the place: what a town, a subdivision or an easement asks of a fence, told as data with its own source, and
 * where a fence breaks it.
 *
 * <p>No town's rules come with the library. They differ from one town to the next and change; the local office decides
 * which hold, how it measures, and whether a plan is allowed. What is found here is arithmetic on the figures that were
 * given.
 *
 * <p>A {@link org.fencecore.rules.LocalRule} is a {@link org.fencecore.rules.HeightLimit} (also the height over which a
 * permit is needed), a {@link org.fencecore.rules.CornerVisibility} triangle, {@link org.fencecore.rules.ClearGround}
 * (easements and setbacks), or a {@link org.fencecore.rules.PoolBarrier}. {@link org.fencecore.rules.LocalRules} are all
 * that hold on one job. They are checked against a fence as the rules see it: {@link org.fencecore.rules.FencePart}s,
 * {@link org.fencecore.rules.PostPart}s and {@link org.fencecore.rules.GatePart}s.
 *
 * <p>Example: a town that allows 4 ft in front yards, and a fence of 6 ft that begins 25 ft inside one.
 *
 * <pre>{@code
 * LocalRules rules = LocalRules.of(List.of(
 *         HeightLimit.of(Zone.inside(frontYard), Length.ofFeet(4), "front yards", ordinance)));
 * FencePart side = FencePart.on("side 1", Segment.of(street, back)).top(Length.ofFeet(6)).build();
 * rules.check(List.of(side));   // rule-height at side 1, from 0.00 ft to 25.00 ft
 * }</pre>
 */
@NullMarked
package org.fencecore.rules;

import org.jspecify.annotations.NullMarked;
