package org.fencecore;

import java.util.List;
import java.util.function.Supplier;
import org.fencecore.internal.Once;
import org.fencecore.slope.FittedBay;
import org.fencecore.slope.KickBoard;
import org.fencecore.units.Length;

/**
 * The fence between two neighbouring posts: how it meets the ground there, and where its rails sit.
 */
public final class Bay {

    private final int number;
    private final Post from;
    private final Post to;
    private final FittedBay slope;
    private final Once<List<BayRail>> rails;
    private final List<KickBoard> kickBoards;

    Bay(int number, Post from, Post to, FittedBay slope, Supplier<List<BayRail>> rails, List<KickBoard> kickBoards) {
        this.number = number;
        this.from = from;
        this.to = to;
        this.slope = slope;
        this.rails = Once.of(rails);
        this.kickBoards = List.copyOf(kickBoards);
    }

    /**
     * Returns its number on the plan, from 1 along the fence.
     *
     * @return its number on the plan, from 1 along the fence
     */
    public int number() {
        return number;
    }

    /**
     * Returns the post where it begins.
     *
     * @return the post where it begins
     */
    public Post from() {
        return from;
    }

    /**
     * Returns the post where it ends.
     *
     * @return the post where it ends
     */
    public Post to() {
        return to;
    }

    /**
     * Returns how it meets the ground: rise, grade, clearance; stations are along the run.
     *
     * @return how it meets the ground: rise, grade, clearance; stations are along the run
     */
    public FittedBay slope() {
        return slope;
    }

    /**
     * Returns the rails from the bottom up.
     *
     * @return the marks of each rail on the two posts; none where the bay is too steep for rails
     */
    public List<BayRail> rails() {
        return rails.get();
    }

    /**
     * Returns the kick boards that close the gap under its boards.
     *
     * @return the kick boards from the uppermost down; none unless the style asks for them and the gap is too wide
     */
    public List<KickBoard> kickBoards() {
        return kickBoards;
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
