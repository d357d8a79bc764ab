/**
 * Numerical work behind the other packages. Not part of the published API: it may change without notice.
 */
@NullMarked
package org.fencecore.internal;

import org.jspecify.annotations.NullMarked;
