package org.fencecore.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Horizontal boards: how the courses share out the height, and where the boards of a course meet on posts.
 *
 * <p>A course is to the height what a board is to the length, so any {@link BoardPattern} will do: side by side, spaced,
 * or on both faces in turn. {@link #courses} is that {@link BoardLayout}, its left end the bottom of the lowest course.
 *
 * <p>Boards end at the ends of the run and else on the middle of a post, where there is wood to fix both to. The first,
 * third and every other course have the fewest boards that no stick is too short for. The courses between them have as
 * few joints as can be on the posts where those have theirs, and of such ways one with the fewest boards; so the joints
 * are staggered wherever sticks are long enough.
 *
 * <p>Courses on the inside face of a shadowbox take turns likewise, counted by themselves. It assumes level or evenly
 * racked courses: lengths are level, and the stretch of a slope is left to whoever cuts.
 *
 * <p>Sources: joints on posts, and staggered, are common practice, no source.
 *
 * <p>Example: 24 ft with posts every 6 ft and boards up to 12 ft. The first course is 12 + 12 with its joint on the
 * middle post; the second keeps off it with 6 + 12 + 6.
 *
 * <pre>{@code
 * CourseLayout layout = CourseLayout.fit(Length.ofInches(66), BoardPattern.sideBySide(Length.ofInches(5.5)),
 *         Length.ofFeet(24), List.of(Length.ofFeet(6), Length.ofFeet(12), Length.ofFeet(18)), Length.ofFeet(12));
 * layout.courses().count();     // 12
 * layout.pieces(0);             // 0 to 12 ft, 12 to 24 ft
 * layout.pieces(1);             // 0 to 6 ft, 6 to 18 ft, 18 to 24 ft
 * layout.pieceCount();          // 30: six courses of 2 and six of 3
 * }</pre>
 */
public final class CourseLayout {

    private static final int MOST_POSTS = 10_000;

    private final BoardLayout courses;
    private final Length length;
    private final Length longest;
    private final List<Interval> odd;
    private final List<Interval> even;

    private CourseLayout(BoardLayout courses, Length length, Length longest, List<Interval> odd, List<Interval> even) {
        this.courses = courses;
        this.length = length;
        this.longest = longest;
        this.odd = odd;
        this.even = even;
    }

    /**
     * Shares out a height among courses and a length among boards.
     *
     * @param height the height to fill, from the bottom of the lowest course to the top of the highest
     * @param pattern how courses follow each other upwards
     * @param length the length of a course, over zero
     * @param posts where the middles of the posts between its ends are, from the left end, in rising order; up to 10,000
     * @param longest the longest board to be had, over zero
     * @return the layout, with {@link #findings} where a bay is longer than a board or joints cannot be staggered
     * @throws IllegalArgumentException if {@code height} is shorter than a board is wide or takes over 10,000,000
     *     courses, {@code length} or {@code longest} is not over zero, or posts are too many, out of order or not between
     *     the ends
     */
    public static CourseLayout fit(
            Length height, BoardPattern pattern, Length length, List<Length> posts, Length longest) {
        requirePositive("length", length);
        requirePositive("longest", longest);
        if (posts.size() > MOST_POSTS) {
            throw new IllegalArgumentException("posts were " + posts.size() + "; a course passes up to " + MOST_POSTS
                    + ", so lay out a shorter stretch");
        }
        long[] places = new long[posts.size() + 2];
        places[places.length - 1] = length.nanometres();
        for (int i = 0; i < posts.size(); i++) {
            places[i + 1] = posts.get(i).nanometres();
            if (places[i + 1] <= places[i] || places[i + 1] >= length.nanometres()) {
                throw new IllegalArgumentException("post " + (i + 1) + " was at " + posts.get(i)
                        + "; give the middles of the posts between 0 and " + length + ", each after the one before");
            }
        }
        Joints joints = new Joints(places, longest.nanometres());
        int[] first = joints.fewest(new boolean[places.length]);
        boolean[] taken = new boolean[places.length];
        for (int joint : first) {
            taken[joint] = true;
        }
        return new CourseLayout(
                BoardLayout.fit(height, pattern),
                length,
                longest,
                joints.pieces(first),
                joints.pieces(joints.fewest(taken)));
    }

    private static void requirePositive(String name, Length value) {
        if (!value.isPositive()) {
            throw new IllegalArgumentException(name + " was " + value + "; it must be over 0");
        }
    }

    /**
     * Returns the courses from the bottom up, as boards are from left to right.
     *
     * @return the layout of the height
     */
    public BoardLayout courses() {
        return courses;
    }

    /**
     * Returns the length of a course.
     *
     * @return from end to end
     */
    public Length length() {
        return length;
    }

    /**
     * Returns the boards of a course from left to right.
     *
     * @param course which course of its face, 0 for the lowest
     * @return from where to where each reaches, unmodifiable; they touch and fill the length
     * @throws IllegalArgumentException if there is no such course
     */
    public List<Interval> pieces(int course) {
        if (course < 0 || course >= courses.row(Face.OUTSIDE).count()) {
            throw new IllegalArgumentException("course was " + course + "; it must be from 0 to "
                    + (courses.row(Face.OUTSIDE).count() - 1));
        }
        return course % 2 == 0 ? odd : even;
    }

    /**
     * Returns how many boards all courses on both faces take.
     *
     * @return the count, at least 1
     * @throws ArithmeticException if it is over 2,147,483,647
     */
    public int pieceCount() {
        long sum = 0;
        for (Face face : Face.values()) {
            long count = courses.row(face).count();
            sum += (count + 1) / 2 * odd.size() + count / 2 * even.size();
        }
        return Math.toIntExact(sum);
    }

    /**
     * Returns where courses above each other have a joint on the same post.
     *
     * @return the middles of those posts, unmodifiable; empty if all joints are staggered
     */
    public List<Length> jointsInLine() {
        List<Length> above = ends(even);
        return ends(odd).stream().filter(above::contains).toList();
    }

    private static List<Length> ends(List<Interval> pieces) {
        return pieces.subList(0, pieces.size() - 1).stream().map(Interval::end).toList();
    }

    /**
     * Returns what is wrong: those of the {@linkplain BoardLayout#findings courses}, a blocker {@code
     * bay-longer-than-board} where no board reaches from post to post, and a warning {@code joints-in-line} where joints
     * cannot be staggered.
     *
     * @return all findings, empty if there are none
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(courses.findings());
        for (Interval piece : odd) {
            if (piece.length().compareTo(longest) > 0) {
                findings.add(Finding.blocker(
                                "bay-longer-than-board",
                                "courses",
                                "from " + Written.tape(piece.start()) + " to " + Written.tape(piece.end()) + " is "
                                        + Written.tape(piece.length()) + ", and the longest board is "
                                        + Written.tape(longest))
                        .withRemedy("put a post between, or get longer boards")
                        .withSource(Citation.COMMON_PRACTICE));
            }
        }
        List<Length> inLine = jointsInLine();
        if (!inLine.isEmpty() && courses.row(Face.OUTSIDE).count() > 1) {
            findings.add(Finding.warning(
                            "joints-in-line",
                            "courses",
                            inLine.size() + (inLine.size() == 1 ? " post has" : " posts have")
                                    + " a joint in every course, the first at "
                                    + Written.tape(inLine.get(0)))
                    .withRemedy("get boards that are longer than two bays, or set the posts closer")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        return List.copyOf(findings);
    }

    /**
     * Returns the calculation of the courses, ending with how many boards they take.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Courses");
        courses.worksheet().lines().forEach(sheet::line);
        long count = 0;
        long staggered = 0;
        for (Face face : Face.values()) {
            count += (courses.row(face).count() + 1) / 2;
            staggered += courses.row(face).count() / 2;
        }
        sheet.given("length of a course", length, Written.tape(length));
        sheet.given("longest board", longest, Written.tape(longest));
        sheet.line(
                "boards",
                "odd courses x fewest boards + even courses x boards with joints elsewhere",
                count + " x " + odd.size() + " + " + staggered + " x " + even.size(),
                pieceCount(),
                Integer.toString(pieceCount()),
                Citation.COMMON_PRACTICE);
        return sheet.build();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CourseLayout that
                && courses.equals(that.courses)
                && longest.equals(that.longest)
                && odd.equals(that.odd)
                && even.equals(that.even);
    }

    @Override
    public int hashCode() {
        return Objects.hash(courses, longest, odd, even);
    }

    /**
     * Describes the layout.
     *
     * @return such as {@code 12 courses of 24' 0" in 30 boards}
     */
    @Override
    public String toString() {
        return courses.count() + " courses of " + Written.tape(length) + " in " + pieceCount() + " boards";
    }

    /** The ways to go from one end to the other by boards that end on posts. */
    private static final class Joints {

        private final long[] places;
        private final long longest;

        Joints(long[] places, long longest) {
            this.places = places;
            this.longest = longest;
        }

        /**
         * The joints that share fewest taken places and, of those ways, are fewest: worked out place by place from the
         * left, each from the best way to the places a board before it. A bay longer than any board is crossed in one.
         */
        int[] fewest(boolean[] taken) {
            int last = places.length - 1;
            int[] shared = new int[last + 1];
            int[] boards = new int[last + 1];
            int[] before = new int[last + 1];
            for (int place = 1; place <= last; place++) {
                boards[place] = Integer.MAX_VALUE;
                shared[place] = Integer.MAX_VALUE;
                int own = taken[place] ? 1 : 0;
                for (int from = place - 1;
                        from >= 0 && (from == place - 1 || places[place] - places[from] <= longest);
                        from--) {
                    if (shared[from] + own < shared[place]
                            || (shared[from] + own == shared[place] && boards[from] < boards[place] - 1)) {
                        shared[place] = shared[from] + own;
                        boards[place] = boards[from] + 1;
                        before[place] = from;
                    }
                }
            }
            int[] joints = new int[boards[last] - 1];
            int place = last;
            for (int joint = joints.length - 1; joint >= 0; joint--) {
                place = before[place];
                joints[joint] = place;
            }
            return joints;
        }

        List<Interval> pieces(int[] joints) {
            List<Interval> pieces = new ArrayList<>();
            long from = 0;
            for (long to :
                    Arrays.stream(joints).mapToLong(joint -> places[joint]).toArray()) {
                pieces.add(Interval.of(Length.ofNanometres(from), Length.ofNanometres(to)));
                from = to;
            }
            pieces.add(Interval.of(Length.ofNanometres(from), Length.ofNanometres(places[places.length - 1])));
            return List.copyOf(pieces);
        }
    }
}
