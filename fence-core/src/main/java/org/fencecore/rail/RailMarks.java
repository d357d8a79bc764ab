package org.fencecore.rail;

import org.fencecore.units.Length;

/**
 * The two marks of one rail on a post: where its bottom and its top edge meet the post.
 *
 * @param bottom the height of the lower mark above the ground at the post, plumb
 * @param top the height of the upper mark above the ground at the post, plumb
 */
public record RailMarks(Length bottom, Length top) {

    /**
     * Checks that the marks are in order.
     *
     * @param bottom the height of the lower mark above the ground at the post, plumb
     * @param top the height of the upper mark above the ground at the post, plumb
     * @throws IllegalArgumentException if {@code bottom} is not under {@code top}
     */
    public RailMarks {
        if (bottom.compareTo(top) >= 0) {
            throw new IllegalArgumentException(
                    "bottom mark was " + bottom + ", not under the top mark at " + top + "; give the lower mark first");
        }
    }
}
