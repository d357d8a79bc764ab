package org.fencecore.gate.hang;

import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;

/**
 * What a leaf does to the post it hangs on, in plain amounts that a footing or a beam calculation takes.
 *
 * @param weight straight down on the post
 * @param moment in the line of the fence: the weight times its distance from the middle of the post, the same at any
 *     height
 * @param wind level, square to the leaf
 * @param windHeight how high the wind acts over the ground
 */
public record HingePostLoad(Force weight, Moment moment, Force wind, Length windHeight) {}
