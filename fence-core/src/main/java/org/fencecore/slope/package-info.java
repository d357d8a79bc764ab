/**
 * How a fence meets sloping ground: where the bottoms of the boards run, and their tops.
 *
 * <p>Give {@link org.fencecore.slope.SlopeFit} the ground as a profile, the stations of the posts and a
 * {@link org.fencecore.slope.SlopeSpec}; whichever {@link org.fencecore.slope.Treatment} it is, it answers with one
 * {@link org.fencecore.slope.FittedBay} for each two neighbouring posts. {@link org.fencecore.slope.SlopeChoice} compares
 * the treatments. What stands on that line follows from it: a {@link org.fencecore.slope.TopLine} of some {@link org.fencecore.slope.TopShape} gives the length of every board, and
 * {@link org.fencecore.slope.BayTop} the same over one bay or over the opening of a gate;
 * {@link org.fencecore.slope.KickBoard}s close what is open under a bay, and
 * {@link org.fencecore.slope.PostTops} the {@link org.fencecore.slope.PostHeight} of every post. Nothing else of the fence
 * need be known.
 *
 * <p>Posts and boards stand plumb. In each bay rails and board bottoms run along one straight line, level in a stepped
 * bay; what the ground does under it shows in the gap under the boards. Where the lines of two bays do not meet at their
 * post, the fence steps there, and heights before and after the post differ.
 *
 * <p>Posts and bays are numbered from 0 in calls, as in a list, and from 1 in the text of findings and worksheets, as
 * people count; the text gives the station as well.
 *
 * <p>Example: a hillside that climbs 1.6 ft in each 8 ft bay.
 *
 * <pre>{@code
 * Profile ground = Profile.builder()
 *         .point(Length.ZERO, Length.ofFeet(100))
 *         .point(Length.ofFeet(24), Length.ofFeet(104.8))
 *         .build();
 * List<Length> posts = List.of(Length.ZERO, Length.ofFeet(8), Length.ofFeet(16), Length.ofFeet(24));
 * SlopeSpec spec = SlopeSpec.builder()
 *         .clearance(Length.ofInches(2))
 *         .minimumClearance(Length.ofInches(1))
 *         .maximumClearance(Length.ofInches(4))
 *         .maximumGrade(Slope.ofPercent(25))
 *         .build();
 *
 * SlopeFit fit = SlopeFit.rack(ground, posts, spec);
 * FittedBay bay = fit.bays().get(0);
 * bay.rise();                     // 1.6 ft
 * bay.grade();                    // 20 %, 11.3099 degrees, 2.4 in to the foot
 * bay.railLength();               // 8.1584 ft from post centre to post centre
 * bay.endCut();                   // 11.3099 degrees off square
 * bay.clearance().min();          // 2 in
 * fit.findings();                 // none
 *
 * SlopeFit.strings(ground, posts, spec).strings().size();      // 1, over all three bays
 * SlopeFit.best(ground, posts, spec).best().treatment();       // RACKED
 * }</pre>
 */
@NullMarked
package org.fencecore.slope;

import org.jspecify.annotations.NullMarked;
