/**
 * From what the crew measured to the ground under a line: level notes, drops from a string, spot shots and grids all give
 * one {@link org.fencecore.geometry.Profile}.
 */
@NullMarked
package org.fencecore.terrain;

import org.jspecify.annotations.NullMarked;
