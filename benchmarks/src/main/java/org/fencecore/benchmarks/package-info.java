/** What planning costs, measured. */
@NullMarked
package org.fencecore.benchmarks;

import org.jspecify.annotations.NullMarked;
