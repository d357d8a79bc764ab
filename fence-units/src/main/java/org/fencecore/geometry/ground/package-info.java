/**
 * Heights: the ground along a line, seen from the side, and the ground of a whole yard.
 *
 * <p>A {@link org.fencecore.geometry.ground.Profile} is the ground or a rail along a line: heights at stations, its {@link
 * org.fencecore.geometry.ground.ProfilePoint}s, with grades between, and the {@link
 * org.fencecore.geometry.ground.Clearance} under a line over it. The ground of a whole yard is a {@link
 * org.fencecore.geometry.ground.Surface}, which gives the profile under any line; the simplest is a {@link
 * org.fencecore.geometry.ground.Plane}.
 *
 * <p>Example: a yard that falls 5 % to the east, and the ground under a line that runs 40 ft that way.
 *
 * <pre>{@code
 * Surface yard = Plane.of(Point.ORIGIN, Length.ofFeet(100), Slope.ofPercent(-5), Slope.LEVEL);
 * Profile ground = yard.under(Polyline.of(List.of(Point.ORIGIN, Point.of(Length.ofFeet(40), Length.ZERO))))
 *         .orElseThrow();
 * ground.elevationAt(Length.ofFeet(40));      // 98 ft
 * }</pre>
 */
@NullMarked
package org.fencecore.geometry.ground;

import org.jspecify.annotations.NullMarked;
