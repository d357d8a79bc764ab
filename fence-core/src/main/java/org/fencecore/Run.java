package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.GateBoards;
import org.fencecore.units.Length;
import org.fencecore.wind.FenceWind;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * The fence along one straight line: a side of the lot, or a part of one.
 *
 * <p>Two parallel lines describe it: the string, on the outside face of the posts, and the post line through their
 * centres, half a post further in. Stations along the run are level distances from the centre of its first post.
 */
public final class Run {

    /** Courses that are further apart in height do not read as one; common practice, no source. */
    private static final Length SEEN = Length.ofInches(0.25);

    private final int side;
    private final String name;
    private final Segment string;
    private final Segment postLine;
    private final Side outside;
    private final Profile ground;
    private final Length startAlongSide;
    private final Optional<Corner> startCorner;
    private final Optional<Corner> endCorner;
    private final List<Post> posts;
    private final List<Stretch> stretches;
    private final List<GateBay> gates;
    private final Optional<FenceWind> wind;

    Run(
            FenceLine line,
            Profile ground,
            List<Post> posts,
            List<Stretch> stretches,
            List<GateBay> gates,
            Optional<FenceWind> wind) {
        this.side = line.side;
        this.name = line.name;
        this.string = line.string;
        this.postLine = line.postLine;
        this.outside = line.outside;
        this.ground = ground;
        this.startAlongSide = line.startAlongSide;
        this.startCorner = line.start;
        this.endCorner = line.end;
        this.posts = List.copyOf(posts);
        this.stretches = List.copyOf(stretches);
        this.gates = List.copyOf(gates);
        this.wind = wind;
    }

    /**
     * Returns the side that it follows, of the lot or of the line given for the fence.
     *
     * @return the number of the side, from 1
     */
    public int side() {
        return side;
    }

    /**
     * Returns what it is called on the plan.
     *
     * @return such as {@code side 3}, or {@code side 3, part 2} where a side is fenced in several straight parts
     */
    public String name() {
        return name;
    }

    /**
     * Returns the corner of the post lines at its first post, where the fence comes from another run.
     *
     * @return the corner, or empty where the fence begins
     */
    public Optional<Corner> startCorner() {
        return startCorner;
    }

    /**
     * Returns the corner of the post lines at its last post, where the fence goes on along another run.
     *
     * @return the corner, or empty where the fence ends
     */
    public Optional<Corner> endCorner() {
        return endCorner;
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
     * Returns how far along its side the first post's centre is, to turn distances along the side into stations along the
     * run.
     *
     * @return the level distance from the corner where the side begins
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
     * Returns the place at a distance along the run and off the line of the posts' centres, to note where a post stands.
     *
     * @param station the level distance from the centre of the first post
     * @param outward how far outside the post line; negative if inside
     * @return the place in plan
     */
    public Point pointAt(Length station, Length outward) {
        return postLine.pointAt(station, outside == Side.RIGHT ? outward : outward.negated());
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

    /**
     * Returns the wind on it, zone by zone.
     *
     * @return the wind; empty where the site says none, or a pressure for the whole fence
     */
    public Optional<FenceWind> wind() {
        return wind;
    }

    /**
     * Returns the boards of a gate's leaves with those beside them, to see whether the pattern reads through.
     *
     * @param gate one of its gates
     * @return for each leaf from left to right as seen from outside its boards, with those of the fence or the other leaf on
     *     either side; empty when no leaf has upright boards
     */
    public List<GateBoards> boardsThrough(GateBay gate) {
        return gate.leaves().stream()
                .flatMap(leaf -> through(gate, leaf).stream())
                .toList();
    }

    private Optional<GateBoards> through(GateBay gate, HungLeaf leaf) {
        boolean beginsLeft = outside == Side.RIGHT;
        Optional<BoardLayout> arriving = before(gate).flatMap(Stretch::boards);
        Optional<BoardLayout> leaving = after(gate).flatMap(Stretch::boards);
        List<HungLeaf> leaves = gate.leaves();
        int at = leaves.indexOf(leaf);
        Optional<BoardLayout> left = at > 0 ? leaves.get(at - 1).boards() : beginsLeft ? arriving : leaving;
        Optional<BoardLayout> right =
                at + 1 < leaves.size() ? leaves.get(at + 1).boards() : beginsLeft ? leaving : arriving;
        return leaf.boards().map(boards -> GateBoards.of(left, boards, right));
    }

    private Optional<Stretch> before(GateBay gate) {
        return stretches.stream().filter(each -> each.to().equals(gate.from())).findFirst();
    }

    private Optional<Stretch> after(GateBay gate) {
        return stretches.stream().filter(each -> each.from().equals(gate.to())).findFirst();
    }

    /** What keeps boards from reading through its gates. */
    List<Finding> throughGates() {
        List<Finding> findings = new ArrayList<>();
        for (GateBay gate : gates) {
            for (HungLeaf leaf : gate.leaves()) {
                through(gate, leaf)
                        .ifPresent(boards ->
                                boards.findings().forEach(finding -> findings.add(finding.within(name + ", " + leaf))));
            }
            if (gate.leaves().stream().anyMatch(leaf -> leaf.courses().isPresent())) {
                coursesThrough(gate).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private Optional<Finding> coursesThrough(GateBay gate) {
        List<Length> off = new ArrayList<>();
        before(gate)
                .ifPresent(stretch -> off.add(off(gate, stretch, gate.opening().start())));
        after(gate)
                .ifPresent(stretch -> off.add(off(gate, stretch, gate.opening().end())));
        return off.stream()
                .reduce(Length::max)
                .filter(most -> most.compareTo(SEEN) > 0)
                .map(most -> Finding.note(
                                "courses-off-at-gate",
                                name + ", " + gate,
                                "the courses on the gate are up to " + Written.tape(most) + " off those beside it")
                        .withRemedy("rake the gate, level the ground at it, or move it to flatter ground")
                        .withSource(Citation.COMMON_PRACTICE));
    }

    private static Length off(GateBay gate, Stretch stretch, Length station) {
        return gate.bottomLine()
                .elevationAt(station)
                .minus(stretch.slope().bottomAt(station))
                .abs();
    }

    @Override
    public String toString() {
        return name;
    }
}
