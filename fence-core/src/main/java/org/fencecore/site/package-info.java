/**
 * What the ground is: the lot line from its plat calls, the ground from its shots, the rules of the place, soil, wind
 * and frost.
 */
@NullMarked
package org.fencecore.site;

import org.jspecify.annotations.NullMarked;
