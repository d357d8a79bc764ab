package org.fencecore;

import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.units.Length;

/**
 * One horizontal board.
 *
 * @param course which course from the bottom, from 1
 * @param placement the course's lower edge and width, square to the grade, from the bottom line
 * @param stations from where to where it reaches, level, along the run
 * @param length how long it is along the grade, plumb end to plumb end
 */
public record CourseBoard(int course, BoardPlacement placement, Interval stations, Length length) {}
