/**
 * The lot in plan: from the calls of a deed or plat to a boundary that closes, with its area.
 *
 * <p>This answers one question, and knows nothing of fences: where the lines of the lot run, and whether its description
 * can be right. In reading order:
 *
 * <ul>
 *   <li>{@link org.fencecore.survey.Course}: one call, by bearing and distance, by azimuth from north or south, between
 *       two points, or along a {@link org.fencecore.survey.Curve} that a {@link org.fencecore.survey.CurveCall}
 *       describes and a {@link org.fencecore.survey.CalledCurve} keeps;
 *   <li>{@link org.fencecore.survey.LotBoundary}: all courses of a lot, how well they close
 *       ({@link org.fencecore.survey.Closure}), and once the misclosure is spread each
 *       {@link org.fencecore.survey.LotSide}, the outline and the area;
 *   <li>{@link org.fencecore.survey.ClosureDiagnosis}: for a lot that does not close, what each course would have to be
 *       ({@link org.fencecore.survey.CourseFix}), and which {@link org.fencecore.survey.CourseChange} is likely;
 *   <li>{@link org.fencecore.survey.LinkTraverse}: measured angles and distances between known points.
 * </ul>
 *
 * <p>Example: a lot with a rounded corner.
 *
 * <pre>{@code
 * Course front = Course.of(Bearing.parse("N 90° E"), Length.parse("75 ft"));
 * Course rounding = Course.curve(Side.LEFT)
 *         .radius(Length.parse("25 ft"))
 *         .delta(Angle.RIGHT)
 *         .tangentTo(front)
 *         .build();
 * LotBoundary lot = LotBoundary.of(List.of(
 *         front,
 *         rounding,
 *         Course.of(Bearing.parse("N 0° E"), Length.parse("95 ft")),
 *         Course.of(Bearing.parse("N 90° W"), Length.parse("100 ft")),
 *         Course.of(Bearing.parse("S 0° E"), Length.parse("120 ft"))));
 * lot.area();                      // 100 x 120 ft less 25^2 x (1 - pi / 4) = 11,865.87 sq ft
 * lot.sides().get(1).facets();     // 10 chords within 1 in of the curve
 * }</pre>
 *
 * <p>Lengths may be read in feet, metres, rods, chains and links, or in US survey feet, rods, chains and links by that
 * name; see {@link org.fencecore.units.Length#parse}. Positions are level and on one grid: no curvature of the earth, no
 * magnetic declination. What is a boundary is for the law of the place and a licensed surveyor to say.
 *
 * <p>All types are immutable but {@code CurveCall} and builders. What is wrong with a description comes back as findings;
 * only misuse, such as a course without length, throws.
 */
@NullMarked
package org.fencecore.survey;

import org.jspecify.annotations.NullMarked;
