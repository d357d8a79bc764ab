/**
 * Lengths as a tape shows them: rounded to its marks and written as the trades write them.
 *
 * <p>A {@link org.fencecore.units.tape.TapeFormat} is a way of writing: feet and inches to a fraction, inches, decimal
 * feet as on a plat, or metric. It rounds first, to a named rule, and splits into feet, inches and a reduced fraction
 * after. A {@link org.fencecore.units.tape.TapeReading} also tells what the rounding left over. What a format writes,
 * {@link org.fencecore.units.Length#parse} reads.
 *
 * <p>Example: seven equal spaces in an opening of 46 3/4 in are 6.6786 in each.
 *
 * <pre>{@code
 * Length space = Length.parse("46 3/4\"").dividedBy(7);
 * TapeFormat tape = TapeFormat.inches(16);
 * tape.format(space);                                // 6 11/16"
 * tape.withRounding(Rounding.DOWN).format(space);    // 6 5/8"
 * tape.read(space).remainder();                      // -0.226786 mm: the mark is that much over
 * }</pre>
 */
@NullMarked
package org.fencecore.units.tape;

import org.jspecify.annotations.NullMarked;
