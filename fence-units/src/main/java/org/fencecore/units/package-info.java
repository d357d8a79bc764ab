/**
 * Amounts with their units, so that inches, feet and millimetres cannot be mixed up.
 *
 * <p>Start with {@link org.fencecore.units.Length}, which is exact; {@link org.fencecore.units.Angle} and
 * {@link org.fencecore.units.Slope} come next. {@link org.fencecore.units.TradeUnits} has the units for exchange with
 * other JSR-385 code.
 */
@NullMarked
package org.fencecore.units;

import org.jspecify.annotations.NullMarked;
