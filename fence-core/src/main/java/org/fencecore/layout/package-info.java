/**
 * Spacing: posts along a run, pickets and boards in an opening.
 */
@NullMarked
package org.fencecore.layout;

import org.jspecify.annotations.NullMarked;
