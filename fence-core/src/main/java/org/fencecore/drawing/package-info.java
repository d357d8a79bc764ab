/**
 * Plan, elevation and gate drawings, and the sheets the crew takes to the job.
 */
@NullMarked
package org.fencecore.drawing;

import org.jspecify.annotations.NullMarked;
