/**
 * What the owner wants: the boards and their pattern, rails, posts and how they are set, gates, how the fence meets the ground, and the
 * lumber it is bought in.
 *
 * <p>A {@link org.fencecore.style.FenceStyle} puts the rules of the trade modules together; {@link
 * org.fencecore.style.Lumber} is one size of wood with the lengths it is sold in. A style knows no lot: the same one
 * fits any site. {@link org.fencecore.style.BoardStyle} says how boards are put up, upright or in courses, and
 * {@link org.fencecore.style.GateHardware} what its gates are hung with.
 */
@NullMarked
package org.fencecore.style;

import org.jspecify.annotations.NullMarked;
