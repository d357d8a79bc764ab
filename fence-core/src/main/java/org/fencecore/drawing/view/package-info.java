/**
 * Pictures to build from: the plan of a fence, the elevation of each side, the board marks of each stretch, and the frame
 * of each gate.
 *
 * <p>{@link org.fencecore.drawing.view.PlanView}, {@link org.fencecore.drawing.view.ElevationView}, {@link
 * org.fencecore.drawing.view.BoardMarksView} and {@link org.fencecore.drawing.view.GateView} turn a plan into drawings, which
 * {@code org.fencecore.drawing.sheet} writes.
 *
 * <pre>{@code
 * Drawing lot = PlanView.of(plan);
 * Drawing side = ElevationView.of(plan, plan.runs().get(0));
 * List<Drawing> sheets = ElevationView.sheets(plan, plan.runs().get(0), Length.ofFeet(30));
 * Drawing gate = GateView.of(plan.gates().get(0));
 * String svg = Svg.write(side, Paper.LETTER);
 * }</pre>
 *
 * <p>Dimensions are written in feet and inches to the nearest sixteenth; nothing else is rounded. A drawing repeats what
 * the plan says and decides nothing: where the plan has blockers, every sheet says first not to build from it.
 */
@NullMarked
package org.fencecore.drawing.view;

import org.jspecify.annotations.NullMarked;
