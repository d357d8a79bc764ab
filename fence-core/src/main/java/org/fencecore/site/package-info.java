/**
 * What the ground is: the lot, where the fence runs, the heights along it, gates, what is in the way, the rules of the
 * place, soil, wind and frost.
 *
 * <p>A {@link org.fencecore.site.Site} takes the lot as a {@link org.fencecore.survey.LotBoundary} and adds which of its
 * sides are fenced, or a line point by point; the ground side by side or as a
 * {@link org.fencecore.geometry.ground.Surface}; each {@link org.fencecore.site.GateLocation}; the
 * {@link org.fencecore.obstacles.Obstacles} and the {@link org.fencecore.rules.LocalRules}.
 *
 * <p>Sides are numbered from 1 in the order of the courses, or along the line. Distances along a side, for ground shots and
 * gates alike, are level distances from the lot corner where the side's course begins, or from the point of the line.
 */
@NullMarked
package org.fencecore.site;

import org.jspecify.annotations.NullMarked;
