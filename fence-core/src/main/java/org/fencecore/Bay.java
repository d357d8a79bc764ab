package org.fencecore;

import java.util.List;
import org.fencecore.slope.FittedBay;
import org.fencecore.units.Length;

/**
 * The fence between two neighbouring posts: how it meets the ground there, and its rails.
 *
 * @param number its number on the plan, from 1 along the fence
 * @param from the post where it begins
 * @param to the post where it ends
 * @param slope how it meets the ground: rise, grade, clearance; stations are along the run
 * @param rails the rails from the bottom up
 */
public record Bay(int number, Post from, Post to, FittedBay slope, List<RailCut> rails) {

    /**
     * Takes the parts.
     *
     * @param number its number on the plan, from 1 along the fence
     * @param from the post where it begins
     * @param to the post where it ends
     * @param slope how it meets the ground
     * @param rails the rails from the bottom up
     */
    public Bay {
        rails = List.copyOf(rails);
    }

    /**
     * Returns the level distance between the posts.
     *
     * @return centre to centre
     */
    public Length spacing() {
        return slope.run();
    }

    @Override
    public String toString() {
        return "bay " + number;
    }
}
