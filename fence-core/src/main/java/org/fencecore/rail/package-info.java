/**
 * The rails that carry the boards: where they meet the posts, and the pieces they are cut into.
 *
 * <p>A {@link org.fencecore.rail.RailSpec} says how many rails there are, how deep, and how they are cut. {@link
 * org.fencecore.rail.RailHeights} gives the {@link org.fencecore.rail.RailMarks} to draw on a post for them, and {@link
 * org.fencecore.rail.RailPieces} cuts the rails of a fitted run into {@link org.fencecore.rail.RailPiece}s whose joints are
 * spread over the posts.
 *
 * <p>Example: the marks at the first post of a bay that climbs 1.6 ft in 8 ft, its boards 2 in above the ground.
 *
 * <pre>{@code
 * RailSpec rails = RailSpec.builder().build();
 * RailHeights marks = RailHeights.of(rails, Length.ofInches(2), Slope.of(Length.ofFeet(1.6), Length.ofFeet(8)));
 * marks.rails().get(0).bottom();  // 6 in above the ground
 * marks.rails().get(0).top();     // 9.5693 in: the 3 1/2 in rail takes 3.5693 in plumb
 * }</pre>
 */
@NullMarked
package org.fencecore.rail;

import org.jspecify.annotations.NullMarked;
