/**
 * Fitting a fence to sloping ground: racked, stepped, or following the ground.
 */
@NullMarked
package org.fencecore.slope;

import org.jspecify.annotations.NullMarked;
