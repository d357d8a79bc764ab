/**
 * Lengths as a tape shows them: reading and writing feet, inches and fractions or millimetres, and rounding to the
 * tape.
 */
@NullMarked
package org.fencecore.units.tape;

import org.jspecify.annotations.NullMarked;
