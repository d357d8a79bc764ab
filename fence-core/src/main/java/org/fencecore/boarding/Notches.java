package org.fencecore.boarding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.BoardRow;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;

/**
 * The notches a row of boards needs where it meets posts on the posts' own face, and the shift of the row that needs the
 * fewest.
 *
 * <p>Where posts stand proud of the rails' face that boards are fixed to, every board that crosses a post is notched: as
 * wide as the two overlap, and as deep as the post stands proud, at most right through the board. Touching is no overlap.
 *
 * <p>Moving all boards of the row alike moves them on and off the posts. The boards of a shadowbox's inside face may move
 * within their laps; the shift taken is the one with fewest notches, and of those the smallest, to the right if two are
 * alike.
 *
 * <pre>
 * a board from l to r meets a post from a to b at shifts s with a - r &lt; s &lt; b - l
 * </pre>
 *
 * <p>so the number of notches changes at those ends only, and trying them, no shift and the greatest shifts finds the
 * fewest.
 *
 * <p>Sources: geometry.
 *
 * <p>Example: 5 1/2 in boards every 8 in, and a post of 3 1/2 in from 45 to 48 1/2 in: board 5, from 40 to 45 1/2, and
 * board 6, from 48, both overlap it by 1/2 in. Moved by 1/2 in to the right, only board 5 does, by 1 in; the gap of 2
 * 1/2 in cannot take the post.
 *
 * <pre>{@code
 * BoardRow row = BoardLayout.fit(Length.ofInches(93.5),
 *         BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2.5))).row(Face.OUTSIDE);
 * List<Interval> posts = List.of(Interval.of(Length.ofInches(45), Length.ofInches(48.5)));
 * Notches.of(row, posts, Length.ofInches(1.5), Length.ofInches(0.75)).count();    // 2
 * Notches least = Notches.fewest(row, posts, Length.ofInches(1.5), Length.ofInches(0.75), Length.ofInches(1));
 * least.count();    // 1
 * least.shift();    // 1/2 in
 * }</pre>
 */
public final class Notches {

    private static final int MOST_POSTS = 100_000;
    private static final int MOST_MEETINGS = 5_000_000;

    private final Length shift;
    private final List<Notch> notches;

    private Notches(Length shift, List<Notch> notches) {
        this.shift = shift;
        this.notches = notches;
    }

    /**
     * Returns the notches of a row as it stands.
     *
     * @param row the boards
     * @param posts where each post begins and ends along the row; up to 100,000, in any order
     * @param proud how far posts stand past the face the boards are fixed to, 0 or more
     * @param thickness how thick the boards are, over zero
     * @return the notches, none if posts are flush
     * @throws IllegalArgumentException if there are too many posts, or a length is out of its range, or over 5,000,000
     *     boards meet posts
     */
    public static Notches of(BoardRow row, List<Interval> posts, Length proud, Length thickness) {
        return fewest(row, posts, proud, thickness, Length.ZERO);
    }

    /**
     * Returns the notches of a row moved so that it needs the fewest.
     *
     * @param row the boards
     * @param posts where each post begins and ends along the row; up to 100,000, in any order
     * @param proud how far posts stand past the face the boards are fixed to, 0 or more
     * @param thickness how thick the boards are, over zero
     * @param mostShift how far the row may be moved to either side, from 0 to a board and a gap
     * @return the notches at the best shift
     * @throws IllegalArgumentException if there are too many posts, or a length is out of its range, or over 5,000,000
     *     boards meet posts
     */
    public static Notches fewest(BoardRow row, List<Interval> posts, Length proud, Length thickness, Length mostShift) {
        if (posts.size() > MOST_POSTS) {
            throw new IllegalArgumentException(
                    "posts were " + posts.size() + "; give up to " + MOST_POSTS + ", a shorter stretch at a time");
        }
        if (proud.isNegative() || !thickness.isPositive()) {
            throw new IllegalArgumentException("proud was " + proud + " and thickness " + thickness
                    + "; posts stand 0 or more past the rails, and boards are over 0 thick");
        }
        if (mostShift.isNegative() || mostShift.compareTo(row.pitch()) > 0) {
            throw new IllegalArgumentException("mostShift was " + mostShift + "; it must be from 0 to " + row.pitch()
                    + ", the distance from board to board, after which the row is the same again");
        }
        if (proud.isZero()) {
            return new Notches(Length.ZERO, List.of());
        }
        long best = bestShift(row, posts, mostShift.nanometres());
        return new Notches(
                Length.ofNanometres(best),
                notches(row, posts, Length.min(proud, thickness), Length.ofNanometres(best)));
    }

    private static long bestShift(BoardRow row, List<Interval> posts, long most) {
        if (most == 0) {
            return 0;
        }
        Meetings meetings = new Meetings();
        for (Interval post : posts) {
            Interval near = Interval.of(
                    Length.ofNanometres(post.start().nanometres() - most),
                    Length.ofNanometres(post.end().nanometres() + most));
            for (BoardPlacement board : row.boardsMeeting(near)) {
                meetings.add(
                        post.start().nanometres() - board.right().nanometres(),
                        post.end().nanometres() - board.left().nanometres());
            }
        }
        return meetings.leastMet(most);
    }

    private static List<Notch> notches(BoardRow row, List<Interval> posts, Length depth, Length shift) {
        List<Notch> notches = new ArrayList<>();
        for (int post = 0; post < posts.size(); post++) {
            // The row stands still and the posts move the other way.
            Interval body = posts.get(post).shiftedBy(shift.negated());
            for (BoardPlacement board : row.boardsMeeting(body)) {
                if (notches.size() == MOST_MEETINGS) {
                    throw tooManyMeetings();
                }
                Length from = Length.max(board.left(), body.start()).minus(board.left());
                Length to = Length.min(board.right(), body.end()).minus(board.left());
                if (to.compareTo(from) > 0) {
                    notches.add(new Notch(board, post, Interval.of(from, to), depth));
                }
            }
        }
        return List.copyOf(notches);
    }

    private static IllegalArgumentException tooManyMeetings() {
        return new IllegalArgumentException("posts met over " + MOST_MEETINGS
                + " boards; check that each post is given as wide as it is, and in the unit it is in");
    }

    /**
     * Returns how far the row is moved.
     *
     * @return the shift, to the right if positive
     */
    public Length shift() {
        return shift;
    }

    /**
     * Returns the notches, post by post, each with its board where the layout has it; to where it is built, add the
     * shift.
     *
     * @return the notches, unmodifiable
     */
    public List<Notch> notches() {
        return notches;
    }

    /**
     * Returns how many notches there are.
     *
     * @return the count, 0 if no board meets a post
     */
    public int count() {
        return notches.size();
    }

    /**
     * Describes the notches.
     *
     * @return such as {@code 3 notches, shifted 1/2"}
     */
    @Override
    public String toString() {
        return count()
                + (count() == 1 ? " notch" : " notches")
                + (shift.isZero() ? "" : ", shifted " + Written.tape(shift));
    }

    /** From which shift to which, both without, each board near a post meets it. */
    private static final class Meetings {

        private long[] starts = new long[16];
        private long[] ends = new long[16];
        private int size;

        void add(long start, long end) {
            if (size == MOST_MEETINGS) {
                throw tooManyMeetings();
            }
            if (size == starts.length) {
                starts = Arrays.copyOf(starts, 2 * size);
                ends = Arrays.copyOf(ends, 2 * size);
            }
            starts[size] = start;
            ends[size] = end;
            size++;
        }

        /** The shift at which fewest meet. */
        long leastMet(long most) {
            long[] first = Arrays.copyOf(starts, size);
            long[] past = Arrays.copyOf(ends, size);
            Arrays.sort(first);
            Arrays.sort(past);
            long best = 0;
            int least = met(first, past, 0);
            for (long shift : candidates(most)) {
                int met = met(first, past, shift);
                boolean nearer = Math.abs(shift) < Math.abs(best) || (shift == -best && shift > 0);
                if (met < least || (met == least && nearer)) {
                    best = shift;
                    least = met;
                }
            }
            return best;
        }

        private long[] candidates(long most) {
            return LongStream.concat(
                            LongStream.of(-most, most),
                            LongStream.concat(Arrays.stream(starts, 0, size), Arrays.stream(ends, 0, size)))
                    .filter(shift -> Math.abs(shift) <= most)
                    .toArray();
        }

        /** Those begun before a shift, less those ended at it or before. */
        private static int met(long[] first, long[] past, long shift) {
            return before(first, shift) - before(past, shift + 1);
        }

        /** How many of the sorted values are under a limit. */
        private static int before(long[] sorted, long limit) {
            int low = 0;
            int high = sorted.length;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (sorted[middle] < limit) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }
}
