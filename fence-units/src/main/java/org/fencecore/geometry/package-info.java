/**
 * Points, lines, bearings and stations: the plane geometry a layout crew works with.
 */
@NullMarked
package org.fencecore.geometry;

import org.jspecify.annotations.NullMarked;
