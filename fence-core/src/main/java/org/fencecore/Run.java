package org.fencecore;

import java.util.List;
import org.fencecore.geometry.Profile;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.units.Length;

/**
 * The fence along one side of the lot.
 *
 * <p>Two parallel lines describe it: the string, on the outside face of the posts, and the post line through their
 * centres, half a post further in. Stations along the run are level distances from the centre of its first post.
 */
public final class Run {

    private final int side;
    private final Segment string;
    private final Segment postLine;
    private final Side outside;
    private final Profile ground;
    private final Length startAlongSide;
    private final List<Post> posts;
    private final List<Stretch> stretches;
    private final List<GateBay> gates;

    Run(
            int side,
            Segment string,
            Segment postLine,
            Side outside,
            Profile ground,
            Length startAlongSide,
            List<Post> posts,
            List<Stretch> stretches,
            List<GateBay> gates) {
        this.side = side;
        this.string = string;
        this.postLine = postLine;
        this.outside = outside;
        this.ground = ground;
        this.startAlongSide = startAlongSide;
        this.posts = List.copyOf(posts);
        this.stretches = List.copyOf(stretches);
        this.gates = List.copyOf(gates);
    }

    /**
     * Returns the side of the lot it follows.
     *
     * @return the number of the side, from 1
     */
    public int side() {
        return side;
    }

    /**
     * Returns the string: the line of the posts' outside faces.
     *
     * @return from corner to corner of the strings, east and north of the first lot corner
     */
    public Segment string() {
        return string;
    }

    /**
     * Returns the line of the posts' centres.
     *
     * @return from the centre of the first post to that of the last
     */
    public Segment postLine() {
        return postLine;
    }

    /**
     * Returns on which hand the outside of the lot is, going along the run.
     *
     * @return the side
     */
    public Side outside() {
        return outside;
    }

    /**
     * Returns the ground along the post line.
     *
     * @return heights by station along the run
     */
    public Profile ground() {
        return ground;
    }

    /**
     * Returns how far along the lot side the first post's centre is, to turn distances from the lot corner into stations
     * along the run.
     *
     * @return the level distance from the lot corner where the side begins
     */
    public Length startAlongSide() {
        return startAlongSide;
    }

    /**
     * Returns the level length from the centre of the first post to that of the last.
     *
     * @return the length
     */
    public Length length() {
        return postLine.length();
    }

    /**
     * Returns its posts; a corner post belongs to both of its runs.
     *
     * @return the posts along the run, unmodifiable
     */
    public List<Post> posts() {
        return posts;
    }

    /**
     * Returns the station of a post.
     *
     * @param post one of its posts
     * @return the level distance from the centre of the first post
     */
    public Length station(Post post) {
        return postLine.stationOf(post.centre());
    }

    /**
     * Returns its stretches of fence.
     *
     * @return the stretches along the run, unmodifiable
     */
    public List<Stretch> stretches() {
        return stretches;
    }

    /**
     * Returns its gates.
     *
     * @return the gates along the run, unmodifiable
     */
    public List<GateBay> gates() {
        return gates;
    }

    @Override
    public String toString() {
        return "side " + side;
    }
}
