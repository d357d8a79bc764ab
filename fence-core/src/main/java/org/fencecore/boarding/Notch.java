package org.fencecore.boarding;

import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;

/**
 * A notch to cut in a board where it meets a post.
 *
 * @param board the board
 * @param post which of the posts, 0 for the first
 * @param across from where to where across the board, from its left edge: the width of the notch
 * @param depth how deep into the board's thickness
 */
public record Notch(BoardPlacement board, int post, Interval across, Length depth) {

    /**
     * Tells whether it takes an edge of the board, so that a saw reaches it from the side.
     *
     * @return false for a notch within the board's width
     */
    public boolean isAtEdge() {
        return across.start().isZero() || across.end().equals(board.width());
    }

    /**
     * Tells whether nothing of the board's width is left beside the post.
     *
     * @return true if the post is at least as wide as the board and stands behind all of it
     */
    public boolean isWholeWidth() {
        return across.length().equals(board.width());
    }

    /**
     * Describes the notch.
     *
     * @return such as {@code INSIDE board 8: 1 3/4" wide at 0", 3/4" deep}
     */
    @Override
    public String toString() {
        return board.face() + " board " + board.index() + ": " + Written.tape(across.length()) + " wide at "
                + Written.tape(across.start()) + ", " + Written.tape(depth) + " deep";
    }
}
