/**
 * What the owner wants built, and the lumber and hardware to build it from.
 */
@NullMarked
package org.fencecore.style;

import org.jspecify.annotations.NullMarked;
