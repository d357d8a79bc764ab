package org.fencecore.geometry;

/**
 * Where a boundary runs into itself.
 *
 * @param side the number of one side, from 0 for the side that leaves the first vertex
 * @param otherSide the number of the other side, higher
 * @param place a point that both sides have in common
 */
public record SelfCrossing(int side, int otherSide, Point place) {}
