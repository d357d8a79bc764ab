/**
 * Gates: the leaf, its frame and brace, the hinges, and the clearances round them.
 */
@NullMarked
package org.fencecore.gate;

import org.jspecify.annotations.NullMarked;
