package org.fencecore;

import org.fencecore.slope.RailMarks;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * One rail of a bay, ready to cut and to set: its length, its end cuts and the marks on the two posts.
 *
 * @param number its number from the bottom, from 1
 * @param length the length along the slope, to the long points
 * @param endCut how far off square both ends are cut, so that they stand plumb
 * @param from the marks above the ground at the post where the bay begins
 * @param to the marks above the ground at the post where the bay ends
 */
public record RailCut(int number, Length length, Angle endCut, RailMarks from, RailMarks to) {}
