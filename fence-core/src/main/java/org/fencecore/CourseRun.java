package org.fencecore;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.CourseLayout;
import org.fencecore.layout.Face;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Written;

/**
 * Horizontal boards along a straight part of a stretch: from a fixed post to the next, or to the line post where the fence
 * bends or steps, where boards of every course must end.
 *
 * <p>Boards are fixed to the outside faces of the posts, without rails. They end at the ends of the boarding and else on
 * the middle of a post, and are tied together on upright nailers between posts that stand further apart than the boards
 * span well. On a grade they lie along it, with plumb ends, and the marks on the posts are taken plumb:
 *
 * <pre>
 * mark            = height of the course square to the grade / cos(grade)
 * length of board = level length / cos(grade)
 * </pre>
 *
 * <p>The courses share out what the height of the fence measures square to the grade, so that their tops are at the same
 * plumb height over the bottoms whatever the grade, and the courses of two parts meet on the post between them within the
 * width of a board times (1 / cos(grade) - 1).
 *
 * <p>Sources: geometry; joints on posts, and no rails, are common practice, no source.
 */
public final class CourseRun {

    private final Interval stations;
    private final Length bottomAtStart;
    private final Slope grade;
    private final CourseLayout layout;
    private final List<Length> posts;
    private final List<Length> nailers;

    CourseRun(
            Interval stations,
            Length bottomAtStart,
            Slope grade,
            CourseLayout layout,
            List<Length> posts,
            List<Length> nailers) {
        this.stations = stations;
        this.bottomAtStart = bottomAtStart;
        this.grade = grade;
        this.layout = layout;
        this.posts = List.copyOf(posts);
        this.nailers = List.copyOf(nailers);
    }

    /**
     * Returns the part of the run that it covers.
     *
     * @return level stations along the run; the first may be negative
     */
    public Interval stations() {
        return stations;
    }

    /**
     * Returns the grade that the boards lie along.
     *
     * @return the grade, positive where it climbs along the run
     */
    public Slope grade() {
        return grade;
    }

    /**
     * Returns how the courses share out the height, square to the grade, and where boards meet.
     *
     * @return the layout, its zero at the start of {@link #stations}; lengths in it are level
     */
    public CourseLayout layout() {
        return layout;
    }

    /**
     * Returns the posts that the boards are fixed to.
     *
     * @return the stations of their middles along the run, unmodifiable
     */
    public List<Length> posts() {
        return posts;
    }

    /**
     * Returns the upright nailers between the posts, on the inside of the boards.
     *
     * @return the stations of their middles along the run, unmodifiable; empty if the boards span from post to post
     */
    public List<Length> nailers() {
        return nailers;
    }

    /**
     * Returns the height of the lowest edge of the boards.
     *
     * @param station a station along the run
     * @return the elevation in the datum of the shots
     */
    public Length bottomAt(Length station) {
        return bottomAtStart.plus(grade.riseOver(station.minus(stations.start())));
    }

    /**
     * Returns how high a course begins over the bottom line, plumb: the mark on every post.
     *
     * @param course a course of the layout
     * @return its lower edge
     */
    public Length mark(BoardPlacement course) {
        return grade.lengthOver(course.left());
    }

    /**
     * Returns how wide a course is, plumb.
     *
     * @param course a course of the layout
     * @return its width along a post
     */
    public Length plumbWidth(BoardPlacement course) {
        return grade.lengthOver(course.width());
    }

    /**
     * Returns how far off square both ends of every board are cut, so that they stand plumb.
     *
     * @return the angle of the grade, zero or more
     */
    public Angle endCut() {
        return grade.angle().abs();
    }

    /**
     * Returns every board, course by course from the bottom up, in each along the run.
     *
     * @return an unmodifiable view that works out a board when it is asked for
     */
    public List<CourseBoard> boards() {
        return new Boards();
    }

    /**
     * Returns how many boards it takes.
     *
     * @return the number of boards
     */
    public int boardCount() {
        return layout.pieceCount();
    }

    /**
     * Returns how often boards and posts or nailers cross or meet: a board that ends on a post counts there, and so does
     * the one that goes on from it.
     *
     * @return the number of places to fix
     */
    public int fixingCount() {
        int odd = fixings(layout.pieces(0));
        int count = layout.courses().row(Face.OUTSIDE).count();
        return count == 1 ? odd : (count + 1) / 2 * odd + count / 2 * fixings(layout.pieces(1));
    }

    private int fixings(List<Interval> pieces) {
        List<Length> supports = new ArrayList<>(posts);
        supports.addAll(nailers);
        int fixings = 0;
        for (Interval piece : pieces) {
            Interval along = piece.shiftedBy(stations.start());
            fixings += (int) supports.stream().filter(along::contains).count();
        }
        return fixings;
    }

    /**
     * Describes the boards.
     *
     * @return such as {@code 13 courses of 24' 0" in 33 boards}
     */
    @Override
    public String toString() {
        return layout + (grade.equals(Slope.LEVEL) ? "" : " at " + Written.percent(grade));
    }

    /** Boards in pairs of courses, since every second course is alike. */
    private final class Boards extends AbstractList<CourseBoard> implements RandomAccess {

        private final List<BoardPlacement> courses =
                layout.courses().row(Face.OUTSIDE).boards();
        private final int first = layout.pieces(0).size();
        private final int pair =
                courses.size() == 1 ? first : first + layout.pieces(1).size();

        @Override
        public CourseBoard get(int index) {
            Objects.checkIndex(index, size());
            int within = index % pair;
            int course = 2 * (index / pair) + (within < first ? 0 : 1);
            Interval piece = layout.pieces(course).get(within < first ? within : within - first);
            return new CourseBoard(
                    course + 1,
                    courses.get(course),
                    piece.shiftedBy(stations.start()),
                    grade.lengthOver(piece.length()));
        }

        @Override
        public int size() {
            return boardCount();
        }
    }
}
