/**
 * The inside of the library, not for its users: the only home of the numeric libraries it stands on, and what many of its
 * packages need alike.
 */
@NullMarked
package org.fencecore.internal;

import org.jspecify.annotations.NullMarked;
