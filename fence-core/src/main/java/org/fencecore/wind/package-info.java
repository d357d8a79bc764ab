/**
 * How hard the wind pushes on a fence, zone by zone along a run.
 *
 * <p>This answers one question, and knows nothing of the fence but the face that a straight run shows. In reading order:
 *
 * <ul>
 *   <li>{@link org.fencecore.wind.Wind}: the design wind of a place, as {@link org.fencecore.wind.AsceWind} with its
 *       {@link org.fencecore.wind.AsceEdition} and {@link org.fencecore.wind.Exposure}, or as
 *       {@link org.fencecore.wind.EnWind} with its {@link org.fencecore.wind.EnTerrain};
 *   <li>{@link org.fencecore.wind.FenceFace}: what a run shows the wind;
 *   <li>{@link org.fencecore.wind.FenceWind}: the answer, a {@link org.fencecore.wind.WindZone} for each stretch, with
 *       its findings and worksheet;
 *   <li>{@link org.fencecore.wind.ForceCoefficient}: the tables behind it.
 * </ul>
 *
 * <p>Example: 120 ft of solid fence, 6 ft high on open ground, in a 115 mph wind by ASCE 7-16.
 *
 * <pre>{@code
 * Wind wind = AsceWind.builder().speed(Speed.ofMilesPerHour(115)).build();
 * FenceWind push = wind.on(FenceFace.builder().length(Length.ofFeet(120)).top(Length.ofFeet(6)).build());
 * push.greatest();                                                    // 40.52 psf in the 6 ft at either end
 * push.average(Interval.of(Length.ofFeet(56), Length.ofFeet(64)));    // 16.2 psf on a post in the middle
 * }</pre>
 *
 * <p>Local code and a licensed engineer decide the design wind. All types are immutable; a run is worked out in a few
 * microseconds, texts only when asked for.
 */
@NullMarked
package org.fencecore.wind;

import org.jspecify.annotations.NullMarked;
