/**
 * Post holes: wind on the fence, soil and frost, depth of embedment, strength of the post, and concrete.
 */
@NullMarked
package org.fencecore.footing;

import org.jspecify.annotations.NullMarked;
