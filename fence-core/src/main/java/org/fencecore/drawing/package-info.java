/**
 * Pictures to build from: the plan of a fence, the elevation of each side, the board marks of each stretch, and the frame
 * of each gate, on paper at true scale or in real size for other programs.
 *
 * <p>{@link org.fencecore.drawing.PlanView}, {@link org.fencecore.drawing.ElevationView}, {@link
 * org.fencecore.drawing.BoardMarksView} and {@link org.fencecore.drawing.GateView} turn a plan into a {@link org.fencecore.drawing.Drawing}: {@link
 * org.fencecore.drawing.Shape}s on {@link org.fencecore.drawing.Layer}s, in the sizes of the real thing, with a title,
 * notes and a key. {@link org.fencecore.drawing.Svg} puts a drawing on {@link org.fencecore.drawing.Paper} at the largest
 * standard {@link org.fencecore.drawing.Scale} at which it fits, and writes it; {@link org.fencecore.drawing.Dxf} writes it
 * in the size of the real thing. What is too long for one sheet at a legible scale goes over several, which join at match
 * lines. Programs with a canvas of their own read
 * {@link org.fencecore.drawing.Drawing#shapes} instead.
 *
 * <pre>{@code
 * Drawing lot = PlanView.of(plan);
 * Drawing side = ElevationView.of(plan, plan.runs().get(0));
 * List<Drawing> sheets = ElevationView.sheets(plan, plan.runs().get(0), Length.ofFeet(30));
 * Drawing gate = GateView.of(plan.gates().get(0));
 * String svg = Svg.write(side, Paper.LETTER);
 * String dxf = Dxf.write(side, Paper.LETTER);
 * }</pre>
 *
 * <p>Dimensions are written in feet and inches to the nearest sixteenth; nothing else is rounded. A drawing repeats what
 * the plan says and decides nothing: where the plan has blockers, every sheet says first not to build from it.
 */
@NullMarked
package org.fencecore.drawing;

import org.jspecify.annotations.NullMarked;
