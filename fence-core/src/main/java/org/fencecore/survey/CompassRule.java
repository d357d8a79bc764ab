package org.fencecore.survey;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;

/** Walks courses from corner to corner, and spreads over them in proportion to their length what they miss by. */
final class CompassRule {

    static final Citation SOURCE = Citation.of("Purdue University ASM 215", "traverse calculations, compass rule", "");

    private CompassRule() {}

    /** The corners as the courses lead to them, one more than courses. */
    static List<Point> walk(Point start, List<Course> courses) {
        List<Point> corners = new ArrayList<>(courses.size() + 1);
        Point at = start;
        corners.add(at);
        for (Course course : courses) {
            at = at.plus(course.bearing(), course.distance());
            corners.add(at);
        }
        return corners;
    }

    /** The corners moved so that the last lies where it must, each by the share of the length gone until there. */
    static List<Point> adjust(List<Point> corners, List<Course> courses, Closure closure) {
        List<Point> adjusted = new ArrayList<>(corners.size());
        Length gone = Length.ZERO;
        for (int i = 0; i < corners.size(); i++) {
            Ratio share = gone.ratioTo(closure.perimeter());
            Point corner = corners.get(i);
            adjusted.add(Point.of(
                    corner.east().minus(closure.east().times(share)),
                    corner.north().minus(closure.north().times(share))));
            gone = i < courses.size() ? gone.plus(courses.get(i).length()) : gone;
        }
        return adjusted;
    }

    static Length sumOfLengths(List<Course> courses) {
        return courses.stream().map(Course::length).reduce(Length.ZERO, Length::plus);
    }
}
