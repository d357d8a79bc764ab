package org.fencecore.boarding;

import org.fencecore.units.Length;

/**
 * How many boards come from sticks of one length, so many from each.
 *
 * @param width the width of the stick
 * @param stock the length of the stick
 * @param each how many boards are cut from a stick
 * @param boards how many boards are cut from such sticks
 * @param sticks how many sticks that takes
 */
public record StockUse(Length width, Length stock, int each, int boards, int sticks) {}
