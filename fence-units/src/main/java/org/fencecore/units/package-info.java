/**
 * Amounts with their units, so that inches, feet and millimetres cannot be mixed up.
 *
 * <p>Start with {@link org.fencecore.units.Length}, which is exact; {@link org.fencecore.units.Angle} and
 * {@link org.fencecore.units.Slope} come next. These three read and write text as well. The others, such as
 * {@link org.fencecore.units.Force} and {@link org.fencecore.units.Pressure}, are for loads and volumes.
 * {@link org.fencecore.units.TradeUnits} has the units for exchange with other JSR-385 code.
 *
 * <p>Example: posts of 3 1/2 in stand 8 ft apart, centre to centre, on ground that rises 1 in 12.
 *
 * <pre>{@code
 * Length clear = Length.parse("8 ft").minus(Length.parse("3 1/2 in"));   // 7 ft 8 1/2 in
 * Slope grade = Slope.parse("1:12");                                     // 8.333 %
 * Length rise = grade.riseOver(Length.parse("8 ft"));                    // 8 in
 * }</pre>
 */
@NullMarked
package org.fencecore.units;

import org.jspecify.annotations.NullMarked;
