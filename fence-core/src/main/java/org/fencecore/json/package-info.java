/**
 * Jobs and plans as JSON, for programs in other languages and for files.
 *
 * <p>{@link org.fencecore.json.JobJson} reads and writes a {@link org.fencecore.json.Job}: what the ground is, what the
 * owner wants, which posts stand already. {@link org.fencecore.json.PlanJson} writes a plan with the job it was made
 * from, and reads it by planning that job again. What cannot be read is an {@link
 * org.fencecore.json.UnreadableJsonException} with the place in the text.
 *
 * <p>This package needs {@code com.fasterxml.jackson.core:jackson-core} 2, which fence-core names as an optional
 * dependency: add it to your own. Nothing else in fence-core needs it.
 */
@NullMarked
package org.fencecore.json;

import org.jspecify.annotations.NullMarked;
