/**
 * From what the crew measured to the ground under a line. Whichever way the ground was taken, the end is one
 * {@link org.fencecore.geometry.ground.Profile}, with every break kept.
 *
 * <p>Along the line itself: {@link org.fencecore.terrain.LevelNotes} reduces a page of the level book, each line a
 * {@link org.fencecore.terrain.LevelEntry}, and shares out the misclosure as
 * {@link org.fencecore.terrain.MisclosureSpread} says; {@link org.fencecore.terrain.StringDrops} takes what was measured
 * down from a level string. Station and elevation pairs are a profile already.
 *
 * <p>Over the whole yard: {@link org.fencecore.terrain.ShotSurface} joins spot {@link org.fencecore.terrain.Shot}s into
 * flat triangles, each a {@link org.fencecore.terrain.Facet}, and {@link org.fencecore.terrain.GridSurface} is bilinear
 * between the nodes of a grid. Both are a {@link org.fencecore.geometry.ground.Surface}, and
 * {@link org.fencecore.terrain.GroundUnder} is the profile under a line, or where the surface does not reach.
 *
 * <p>{@link org.fencecore.terrain.SlopeTaping} brings a distance taped along the slope to the level distance that
 * stations count in, and back.
 *
 * <p>Example: level notes along a fence line to the ground under it.
 *
 * <pre>{@code
 * LevelNotes notes = LevelNotes.from("corner stake", Length.ofFeet(100))
 *         .backsight(Length.ofFeet(4.20))
 *         .intermediate(Station.parse("0+00"), Length.ofFeet(4.35))
 *         .intermediate(Station.parse("0+24"), Length.ofFeet(6.10))
 *         .intermediate(Station.parse("0+48"), Length.ofFeet(9.85))
 *         .foresight("corner stake", Length.ofFeet(4.20))
 *         .build();
 * Profile ground = notes.profile().orElseThrow();
 * ground.elevationAt(Length.ofFeet(36));    // 96.225 ft
 * }</pre>
 */
@NullMarked
package org.fencecore.terrain;

import org.jspecify.annotations.NullMarked;
