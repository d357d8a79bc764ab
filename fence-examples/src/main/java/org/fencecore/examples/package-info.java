/** Short programs, each named after the job it does. */
@NullMarked
package org.fencecore.examples;

import org.jspecify.annotations.NullMarked;
