/** Arithmetic on whole nanometres for the geometry alone, not exported. */
@NullMarked
package org.fencecore.geometry.exact;

import org.jspecify.annotations.NullMarked;
