package org.fencecore;

import org.fencecore.layout.BoardPlacement;

/**
 * One board of the plan: which stretch or gate it is on, and where on it.
 *
 * @param place the stretch, such as {@code post 1 to post 4}, or the name of the gate's leaf
 * @param placement its face, mark and width; marks are measured from the start of the boarded part of the stretch, or from
 *     the left edge of the leaf seen from outside
 */
public record PlannedBoard(String place, BoardPlacement placement) {}
