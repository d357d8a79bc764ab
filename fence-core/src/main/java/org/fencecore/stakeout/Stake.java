package org.fencecore.stakeout;

import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The stake of one post: how far along the string from either end, how far off it, and how far the ground lies below it.
 *
 * <p>Distances along are counted from where the strings cross, or where the string ends, to the middle of the post; each is
 * worked out from there, so that nothing adds up. Along the ground they are what a tape measures that lies on it; the bit
 * before the first post and past the last is taken as level.
 */
public final class Stake {

    private final StakedRun staked;
    private final Post post;
    private final Length station;

    Stake(StakedRun staked, Post post) {
        this.staked = staked;
        this.post = post;
        station = staked.station(post);
    }

    /**
     * Returns the run it is on; a corner post has a stake on both of its runs.
     *
     * @return the run
     */
    public Run run() {
        return staked.run();
    }

    /**
     * Returns the post it is for, with its number and what it does.
     *
     * @return the post
     */
    public Post post() {
        return post;
    }

    /**
     * Returns the level distance from the start of the string.
     *
     * @return along the string to the middle of the post
     */
    public Length fromStart() {
        return staked.lead().plus(station);
    }

    /**
     * Returns the level distance from the end of the string, which with {@link #fromStart} makes the whole string.
     *
     * @return back along the string to the middle of the post
     */
    public Length fromEnd() {
        return staked.string().minus(fromStart());
    }

    /**
     * Returns the distance from the start of the string for a tape that lies on the ground.
     *
     * @return along every break of the ground to the middle of the post
     */
    public Length fromStartOnGround() {
        return staked.lead().plus(staked.run().ground().lengthAlong(Length.ZERO, station));
    }

    /**
     * Returns the distance from the end of the string for a tape that lies on the ground.
     *
     * @return back along every break of the ground to the middle of the post
     */
    public Length fromEndOnGround() {
        return staked.string()
                .minus(staked.lead())
                .minus(staked.length())
                .plus(staked.run().ground().lengthAlong(station, staked.length()));
    }

    /**
     * Returns how far inside the string the middle of the post is, square to it: half the post.
     *
     * @return the offset
     */
    public Length offset() {
        return staked.run().string().offsetOf(post.centre()).abs();
    }

    /**
     * Returns the height of the ground at the post.
     *
     * @return the height, in the datum of the shots
     */
    public Length ground() {
        return post.ground();
    }

    /**
     * Returns the height of the string beside the post.
     *
     * @return the height, in the datum of the shots
     */
    public Length string() {
        return staked.height(station);
    }

    /**
     * Returns how far the ground is below the string, for a rule held plumb.
     *
     * @return the drop, negative if the ground is above the string
     */
    public Length drop() {
        return string().minus(ground());
    }

    /**
     * Returns how much would have to be cut off the ground, or filled, to bring it as far below the string as it is where
     * the string is tied.
     *
     * @return the height the string is tied at less the drop: a cut if positive, a fill if negative
     */
    public Length cut() {
        return staked.above().minus(drop());
    }

    /**
     * Returns the calculation line by line, ending with the cut or fill.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        Length lead = staked.lead();
        return Worksheet.titled("Stake")
                .given("first post from the start of the string", lead, Written.feet(lead))
                .given("from the first post", station, Written.feet(station))
                .line(
                        "from the start",
                        "first post + from the first post",
                        Written.feet(lead) + " + " + Written.feet(station),
                        fromStart(),
                        Written.tape(fromStart()),
                        Citation.GEOMETRY)
                .line(
                        "from the end",
                        "string - from the start",
                        Written.feet(staked.string()) + " - " + Written.feet(fromStart()),
                        fromEnd(),
                        Written.tape(fromEnd()),
                        Citation.GEOMETRY)
                .line(
                        "from the start on the ground",
                        "first post + sum of level * sqrt(1 + grade^2)",
                        "",
                        fromStartOnGround(),
                        Written.tape(fromStartOnGround()),
                        Citation.GEOMETRY)
                .line(
                        "drop",
                        "height of the string - height of the ground",
                        Written.feet(string()) + " - " + Written.feet(ground()),
                        drop(),
                        Written.tape(drop()),
                        Citation.GEOMETRY)
                .line(
                        "cut, or fill if negative",
                        "height the string is tied at - drop",
                        Written.feet(staked.above()) + " - " + Written.feet(drop()),
                        cut(),
                        Written.tape(cut()),
                        Citation.GEOMETRY)
                .build()
                .within(run() + ", " + post);
    }

    @Override
    public String toString() {
        return "stake of " + post + " on " + run();
    }
}
