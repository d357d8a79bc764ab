/**
 * What the ground is: the lot and its line, the heights along it, where the gates go, soil, wind and frost.
 *
 * <p>A {@link org.fencecore.site.Site} takes the lot as a {@link org.fencecore.survey.LotBoundary} and adds which sides
 * are fenced, the ground along them and each {@link org.fencecore.site.GateLocation}.
 *
 * <p>Sides are numbered from 1 in the order of the courses. Distances along a side, for ground shots and gates alike,
 * are level distances from the lot corner where the side's course begins.
 */
@NullMarked
package org.fencecore.site;

import org.jspecify.annotations.NullMarked;
