package org.fencecore.slope;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * How high each post of a run stands above the ground and how its top is cut, level or to the slope.
 *
 * <p>The tops of the boards pass a post on a grade: the mean of the grades of its two bays. They are higher on the
 * post's uphill side than at its middle by half its width times that grade. A top cut level stands the given height over
 * that side, so that no board stands above it; one cut to the slope stands that height over the line all across. Both
 * take the same length of lumber. Where the line steps, the higher side counts.
 *
 * <p>Example: posts of 3 1/2 in flush with 6 ft boards, 2 in up, on 20 %.
 *
 * <pre>{@code
 * PostTops tops = PostTops.cutLevel(TopLine.of(TopShape.straight(), fit, Length.ofFeet(6)), Length.ofInches(3.5), Length.ZERO);
 * tops.heights().get(1).highSide();                            // 74.35 in: 2 + 72 + 3.5 / 2 * 20 %
 * tops.heights().get(1).lengthWith(Length.ofInches(36));       // 110.35 in of post
 * }</pre>
 */
public final class PostTops {

    private final TopLine top;
    private final Length postWidth;
    private final Length above;
    private final boolean toSlope;

    private PostTops(TopLine top, Length postWidth, Length above, boolean toSlope) {
        this.top = top;
        this.postWidth = postWidth;
        this.above = above;
        this.toSlope = toSlope;
        if (!postWidth.isPositive()) {
            throw new IllegalArgumentException("postWidth was " + postWidth + "; it must be over 0");
        }
        if (above.plus(top.usualLength()).compareTo(Length.ZERO) <= 0) {
            throw new IllegalArgumentException("height above the boards was " + above + " with boards of "
                    + top.usualLength() + "; it must leave something of the posts, since these carry the boards");
        }
    }

    /**
     * Returns posts that are cut level.
     *
     * @param top the line of the board tops
     * @param postWidth the width of a post along the run, over zero
     * @param above how far the posts stand over the tops of the boards; negative where they end below them
     * @return the tops of the posts
     * @throws IllegalArgumentException if the width is not over zero or the posts would end at the bottoms of the boards
     */
    public static PostTops cutLevel(TopLine top, Length postWidth, Length above) {
        return new PostTops(top, postWidth, above, false);
    }

    /**
     * Returns posts that are cut to the slope of the boards.
     *
     * @param top the line of the board tops
     * @param postWidth the width of a post along the run, over zero
     * @param above how far the posts stand over the tops of the boards; negative where they end below them
     * @return the tops of the posts
     * @throws IllegalArgumentException if the width is not over zero or the posts would end at the bottoms of the boards
     */
    public static PostTops cutToSlope(TopLine top, Length postWidth, Length above) {
        return new PostTops(top, postWidth, above, true);
    }

    /**
     * Returns the height of every post along the run.
     *
     * @return the heights, one for each post, unmodifiable
     */
    public List<PostHeight> heights() {
        List<PostHeight> heights = new ArrayList<>();
        for (int post = 0; post < top.fit().postCount(); post++) {
            heights.add(height(post));
        }
        return List.copyOf(heights);
    }

    private PostHeight height(int post) {
        Bays at = bays(post);
        Length side = at.side();
        Length middle = at.overGround().plus(above);
        Length low = toSlope ? middle.minus(side) : middle.plus(side);
        return new PostHeight(middle.plus(side), low, toSlope ? at.grade() : Slope.LEVEL);
    }

    private Bays bays(int post) {
        SlopeFit fit = top.fit();
        int last = fit.postCount() - 1;
        FittedBay before = fit.bay(Math.max(post - 1, 0));
        return new Bays(post, before, post == 0 || post == last ? before : fit.bay(post));
    }

    /** The bays that meet at a post; at an end of the run the one there is, twice. */
    private final class Bays {

        private final int post;
        private final FittedBay before;
        private final FittedBay after;

        Bays(int post, FittedBay before, FittedBay after) {
            this.post = post;
            this.before = before;
            this.after = after;
        }

        /** Returns the mean of their grades. */
        Slope grade() {
            return top.grade(before).plus(top.grade(after)).times(Ratio.of(0.5));
        }

        /** Returns how much higher the boards are at the uphill side of the post than at its middle. */
        Length side() {
            return postWidth.dividedBy(2).times(grade().abs().ratio());
        }

        Length overGround() {
            Length at = top.fit().station(post);
            Length tops = Length.max(top.topIn(before, at), top.topIn(after, at));
            return tops.minus(top.fit().groundAt(post));
        }
    }

    /**
     * Returns how the height of a post comes about.
     *
     * @param post the number of the post, from 0
     * @return the calculation; its last line is the height of the post's higher side
     * @throws IllegalArgumentException if there is no such post
     */
    public Worksheet worksheet(int post) {
        SlopeFit fit = top.fit();
        Length bottom = fit.bottomAbove(post);
        Bays at = bays(post);
        Length boards = at.overGround();
        Length side = at.side();
        PostHeight height = height(post);
        return Worksheet.titled("Top of the post at " + Written.station(fit.station(post)))
                .given("bottoms of the boards above the ground", bottom, Written.inches(bottom))
                .given("tops of the boards above the ground", boards, Written.inches(boards))
                .given("above the boards", above, Written.inches(above))
                .line(
                        "boards higher on the uphill side by",
                        "post width / 2 * mean grade",
                        Written.inches(postWidth) + " / 2 * "
                                + Written.percent(at.grade().abs()),
                        side,
                        Written.inches(side),
                        Citation.GEOMETRY)
                .line(
                        "lower side of the post",
                        toSlope ? "tops + above - half rise" : "tops + above + half rise",
                        Written.inches(boards) + " + " + Written.inches(above) + (toSlope ? " - " : " + ")
                                + Written.inches(side),
                        height.lowSide(),
                        Written.tape(height.lowSide()),
                        Citation.GEOMETRY)
                .line(
                        "higher side of the post",
                        "tops + above + half rise",
                        Written.inches(boards) + " + " + Written.inches(above) + " + " + Written.inches(side),
                        height.highSide(),
                        Written.tape(height.highSide()),
                        Citation.GEOMETRY)
                .build();
    }

    @Override
    public String toString() {
        Interval run =
                Interval.of(top.fit().station(0), top.fit().station(top.fit().postCount() - 1));
        return "tops of the posts from " + Written.station(run.start()) + " to " + Written.station(run.end());
    }
}
