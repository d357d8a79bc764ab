package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.fencecore.boarding.Notches;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.BoardRow;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;

/**
 * A board of the inside face that stands where a post is, so that it is ripped to what shows beside the post, or notched
 * round it.
 *
 * <p>Rails sit on the outside face of the posts, so boards on the inside of the rails lie in the plane of the posts. Where
 * a post is as high as the board, nothing would hold the two sides of a notch together, and the board is ripped. Where the
 * post ends lower by {@link #LEAST_HEAD} or more, the board is notched from its bottom up to the post's top, right through
 * its thickness, and goes on over it in its full width. A strip narrower than {@link #SMALLEST_STRIP} is left out: it would stand wholly behind the lap of the
 * board in front, and the post closes the rest. An overlap of up to 1/16 in is planed off and not listed.
 *
 * @param board the board as the pattern places it
 * @param post the post it meets
 * @param before the width of the strip kept before the post, going along the run; zero for none
 * @param after the width of the strip kept after the post; zero for none
 * @param head how much of the board goes on over the post in full width; zero if it is ripped
 */
public record BoardAtPost(BoardPlacement board, Post post, Length before, Length after, Length head) {

    /** Boards with less above a post are ripped: 2 in, common practice, no source. */
    public static final Length LEAST_HEAD = Length.ofInches(2);

    /** Strips narrower than this are left out: 3/4 in, common practice, no source. */
    public static final Length SMALLEST_STRIP = Length.ofInches(0.75);

    private static final int MOST_MOVED = 1_000_000;

    private static final Length PLANED_OFF = Length.ofInches(0.0625);

    /**
     * Tells whether nothing of the board is kept.
     *
     * @return true if neither strip is kept
     */
    public boolean isLeftOut() {
        return before.isZero() && after.isZero();
    }

    /**
     * Tells whether the board is notched round the post rather than ripped.
     *
     * @return true if it goes on over the post and a strip of it is kept beside it
     */
    public boolean isNotched() {
        return head.isPositive() && !isLeftOut();
    }

    /**
     * Returns how wide the notch is, or what is ripped off.
     *
     * @return the board's width less the strips that are kept
     */
    public Length cutWidth() {
        return board.width().minus(before).minus(after);
    }

    /** The layout with its inside boards moved, within their laps, so that the fewest meet one of the posts. */
    static BoardLayout keptOff(BoardLayout layout, List<Interval> bodies, Length thickness) {
        BoardRow inside = layout.row(Face.INSIDE);
        if (inside.count() == 0
                || inside.count() > MOST_MOVED
                || layout.mostShift().isZero()) {
            return layout;
        }
        List<Interval> met = bodies.stream()
                .map(body ->
                        Interval.of(body.start().plus(PLANED_OFF), body.end().minus(PLANED_OFF)))
                .toList();
        Length most = Length.min(layout.mostShift(), inside.pitch());
        Notches asTheyAre = Notches.of(inside, met, thickness, thickness);
        Notches fewest = Notches.fewest(inside, met, thickness, thickness, most);
        return fewest.count() < asTheyAre.count() ? layout.withSecondRowMoved(fewest.shift()) : layout;
    }

    /**
     * The boards of a layout that meet one of the posts, whose bodies are given in stations of the layout.
     *
     * @param topOf how high the top of a board is, in the datum of the shots
     */
    static List<BoardAtPost> among(
            BoardLayout layout, List<Post> posts, List<Interval> bodies, Function<BoardPlacement, Length> topOf) {
        List<BoardAtPost> met = new ArrayList<>();
        for (int i = 0; i < posts.size(); i++) {
            Interval body = bodies.get(i);
            for (BoardPlacement board : layout.row(Face.INSIDE).boardsMeeting(body)) {
                Length overlap = Length.min(board.right(), body.end()).minus(Length.max(board.left(), body.start()));
                if (overlap.compareTo(PLANED_OFF) > 0) {
                    met.add(new BoardAtPost(
                            board,
                            posts.get(i),
                            strip(body.start().minus(board.left())),
                            strip(board.right().minus(body.end())),
                            head(topOf.apply(board).minus(posts.get(i).top()))));
                }
            }
        }
        return met;
    }

    private static Length head(Length above) {
        return above.compareTo(LEAST_HEAD) < 0 ? Length.ZERO : above;
    }

    private static Length strip(Length width) {
        return width.compareTo(SMALLEST_STRIP) < 0 ? Length.ZERO : width;
    }
}
