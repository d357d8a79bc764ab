/**
 * The plane geometry a layout crew works with: places, directions and lines on the ground, seen from above. Distances are
 * level distances. Heights are in {@code org.fencecore.geometry.ground}.
 *
 * <p>Along one line, start with {@link org.fencecore.geometry.Interval}, a stretch of it, and
 * {@link org.fencecore.geometry.Station}, a distance along it as a surveyor writes it.
 *
 * <p>In plan, {@link org.fencecore.geometry.Point} and {@link org.fencecore.geometry.Bearing} come first, then
 * {@link org.fencecore.geometry.Segment} for one straight line and its two {@link org.fencecore.geometry.Side}s,
 * {@link org.fencecore.geometry.Polyline} for an open line and {@link org.fencecore.geometry.Polygon} for a closed
 * boundary with its {@link org.fencecore.geometry.Corner}s; {@link org.fencecore.geometry.SelfCrossing} tells where a
 * boundary runs into itself. A {@link org.fencecore.geometry.Zone} is
 * ground on which something holds, and tells which stretches of a line lie in it. To square a corner, see {@link org.fencecore.geometry.RightTriangle}, and
 * {@link org.fencecore.geometry.Triangle} for any other angle.
 *
 * <p>Coordinates are whole nanometres inside. Whether points lie left or right, inside or outside, and whether lines
 * cross, is decided exactly; a computed point or length is rounded once.
 *
 * <p>Example: a lot from its plat, a fence line 2 ft inside it, and the tape that squares the first corner.
 *
 * <pre>{@code
 * Point a = Point.ORIGIN;
 * Point b = a.plus(Bearing.parse("N 0°40' W"), Length.ofFeet(100));
 * Point c = b.plus(Bearing.parse("N 89°18' E"), Length.ofFeet(60));
 * Point d = c.plus(Bearing.parse("S 0°40' E"), Length.ofFeet(100));
 * Polygon lot = Polygon.of(List.of(a, b, c, d));
 *
 * Polygon fence = lot.inset(Length.ofFeet(2)).orElseThrow();
 * fence.perimeter();                                                          // 304.000 ft
 * fence.corner(1).interiorAngle();                                            // 90°02'
 * fence.corner(1).diagonal(Length.ofFeet(6), Length.ofFeet(8));               // 10.003 ft
 * }</pre>
 */
@NullMarked
package org.fencecore.geometry;

import org.jspecify.annotations.NullMarked;
