/** x. */
@NullMarked
package org.fencecore.drawing;

import org.jspecify.annotations.NullMarked;
