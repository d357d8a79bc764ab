package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;

/**
 * A board of the inside face that stands where a post is, so that it is ripped to what shows beside the post.
 *
 * <p>Rails sit on the outside face of the posts, so boards on the inside of the rails lie in the plane of the posts and
 * stop at them. A strip narrower than {@link #SMALLEST_STRIP} is left out: it would stand wholly behind the lap of the
 * board in front, and the post closes the rest. An overlap of up to 1/16 in is planed off and not listed.
 *
 * @param board the board as the pattern places it
 * @param post the post it meets
 * @param before the width of the strip kept before the post, going along the run; zero for none
 * @param after the width of the strip kept after the post; zero for none
 */
public record BoardAtPost(BoardPlacement board, Post post, Length before, Length after) {

    /** Strips narrower than this are left out: 3/4 in, common practice, no source. */
    public static final Length SMALLEST_STRIP = Length.ofInches(0.75);

    private static final Length PLANED_OFF = Length.ofInches(0.0625);

    /**
     * Tells whether nothing of the board is kept.
     *
     * @return true if neither strip is kept
     */
    public boolean isLeftOut() {
        return before.isZero() && after.isZero();
    }

    /** The boards of a layout that meet one of the posts, whose bodies are given in stations of the layout. */
    static List<BoardAtPost> among(BoardLayout layout, List<Post> posts, List<Interval> bodies) {
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
                            strip(board.right().minus(body.end()))));
                }
            }
        }
        return met;
    }

    private static Length strip(Length width) {
        return width.compareTo(SMALLEST_STRIP) < 0 ? Length.ZERO : width;
    }
}
