/**
 * Whether the wood of a post or a rail is strong and stiff enough for its load.
 *
 * <p>This answers one question, and knows nothing of the fence but forces and lengths. In reading order:
 *
 * <ul>
 *   <li>{@link org.fencecore.strength.WoodMember}: a piece of wood by {@link org.fencecore.strength.SpeciesGroup},
 *       {@link org.fencecore.strength.WoodGrade} and {@link org.fencecore.strength.WoodSection}, and how it is used, by
 *       {@link org.fencecore.strength.LoadDuration} and {@link org.fencecore.strength.ServiceTemperature};
 *   <li>{@link org.fencecore.strength.ReferenceValues}: what the tables list for it, and
 *       {@link org.fencecore.strength.AdjustedValues}: what it may be loaded with;
 *   <li>{@link org.fencecore.strength.PostStrength}: a post at the ground line, the largest spacing it could have, and
 *       the size that would do;
 *   <li>{@link org.fencecore.strength.RailStrength}: a rail under its boards and the wind.
 * </ul>
 *
 * <p>Example: 720 lbf of wind 3.39 ft up on a 4x4 is too much, and a 6x6 would do.
 *
 * <pre>{@code
 * WoodMember post = WoodMember.builder(SpeciesGroup.SOUTHERN_PINE, WoodSection.FOUR_BY_FOUR).build();
 * PostStrength check = PostStrength.of(
 *         post, Force.ofPoundsForce(720), Length.ofInches(40.7), Length.ofInches(74));
 * check.used();                                        // 2.33
 * check.largestSpacing(Length.ofFeet(8));              // 3 ft 5.2 in
 * check.sizeThatWorks(WoodSection.POSTS);              // 5 1/2" x 5 1/2"
 * }</pre>
 *
 * <p>Only the reference values of wood are held here, not its weight or how it moves. Local code and a licensed engineer
 * decide. All types are immutable; a check is a few hundred nanoseconds, texts only when asked for.
 */
@NullMarked
package org.fencecore.strength;

import org.jspecify.annotations.NullMarked;
