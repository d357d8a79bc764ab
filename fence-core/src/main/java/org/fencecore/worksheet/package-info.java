/**
 * How an answer shows its work and says what is wrong with it.
 *
 * <p>A {@link org.fencecore.worksheet.Worksheet} is the calculation written out line by line, each a
 * {@link org.fencecore.worksheet.WorkLine}, as a teacher would put it on a board and an engineer would check it. A
 * {@link org.fencecore.worksheet.Finding} is one thing the builder should know about a design, with its
 * {@link org.fencecore.worksheet.Severity} and the {@link org.fencecore.worksheet.Citation} behind it.
 * {@link org.fencecore.worksheet.Written} is how both write lengths, angles and other amounts.
 */
@NullMarked
package org.fencecore.worksheet;

import org.jspecify.annotations.NullMarked;
