/**
 * How deep a fence post is set, and what its hole takes.
 *
 * <p>This answers one question, and knows nothing of the fence but the push on one post: which rule decides the
 * embedment, and how far the others fall short. In reading order:
 *
 * <ul>
 *   <li>{@link org.fencecore.footing.LateralLoad}: how hard the wind pushes on the post, and how far up; of two runs at a
 *       corner, and with a gate hung on it;
 *   <li>{@link org.fencecore.footing.SoilClass}: how hard the soil pushes back;
 *   <li>{@link org.fencecore.footing.FrostEstimate}: how deep the ground may freeze under a
 *       {@link org.fencecore.footing.GroundCover}, where nobody knows;
 *   <li>{@link org.fencecore.footing.PostSetting}: the hole, a {@link org.fencecore.footing.HoleShape}, what fills it, and
 *       the rules for its depth, with what is usual where nothing is said;
 *   <li>{@link org.fencecore.footing.FootingSpec}: the post and the ground it is set in so;
 *   <li>{@link org.fencecore.footing.FootingDesign}: the answer, made of a
 *       {@link org.fencecore.footing.EmbedmentCriterion} for each {@link org.fencecore.footing.EmbedmentRule}, with its
 *       findings and worksheets;
 *   <li>{@link org.fencecore.footing.HoleList} and {@link org.fencecore.footing.BagSize}: the holes of a job, alike ones
 *       together, and concrete as it is bought.
 * </ul>
 *
 * <p>Example: posts 8 ft apart, 15 psf of wind on a 6 ft fence, sand with 24 in of frost.
 *
 * <pre>{@code
 * LateralLoad load = LateralLoad.ofPressure(
 *         Pressure.ofPsf(15), Length.ofFeet(8), Length.ofInches(2), Length.ofInches(74));
 * FootingSpec spec = FootingSpec.builder()
 *         .exposedHeight(Length.ofFeetAndInches(6, 2))
 *         .soil(SoilClass.SAND)
 *         .frostDepth(Length.ofInches(24))
 *         .build();
 * FootingDesign footing = FootingDesign.forPost(load, spec);
 * footing.embedment();                                        // 91 in
 * footing.governing().rule();                                 // lateral soil bearing
 * footing.criteria().get(3).shortOf(footing.governing());     // 53.85 in, by which a third of the post falls short
 * footing.holeDepth();                                        // 97 in, with 6 in of gravel
 * footing.bags(BagSize.POUNDS_80);                            // 7
 * footing.worksheet().result();                               // 91 in, after the calculation line by line
 * }</pre>
 *
 * <p>The same post with {@link org.fencecore.footing.LateralLoad#NONE}, the wind not being known, is set 37 in deep by the
 * rule of a third, with a warning that this was not checked against wind. The usual depths are often less than the soil
 * asks for.
 *
 * <p>All types are immutable. A design is made in less than a microsecond; findings and worksheets are made when asked for.
 * What cannot be built comes back as a finding; only misuse, such as a post wider than its hole, throws.
 */
@NullMarked
package org.fencecore.footing;

import org.jspecify.annotations.NullMarked;
