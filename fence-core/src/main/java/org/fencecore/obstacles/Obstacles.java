package org.fencecore.obstacles;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Segment;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * All that was told to be underground or in the way on one job, up to 10,000 things.
 *
 * <p>Posts that can be moved along their line keep out of the {@link #forbidden} intervals. Posts that cannot, at corners,
 * ends and gates, are asked about one by one with {@link #atPost}; the fence between them with {@link #alongFence}.
 *
 * <p>Example: see {@link org.fencecore.obstacles}.
 */
public final class Obstacles {

    /** Less than this is rounding: 0.001 mm. */
    static final Length ROUNDING = Length.ofNanometres(1_000);

    private static final int MOST = 10_000;
    private static final Citation LOCATE = Citation.of("29 CFR", "1926.651(b)", "");
    private static final Obstacles NONE = new Obstacles(List.of());

    private final List<Obstacle> list;

    private Obstacles(List<Obstacle> list) {
        this.list = list;
    }

    /**
     * Returns a job of which nothing was told.
     *
     * @return no obstacles
     */
    public static Obstacles none() {
        return NONE;
    }

    /**
     * Returns the obstacles of a job.
     *
     * @param obstacles up to 10,000 things
     * @return all of them
     * @throws IllegalArgumentException if there are more
     */
    public static Obstacles of(List<Obstacle> obstacles) {
        if (obstacles.size() > MOST) {
            throw new IllegalArgumentException("number of obstacles was " + obstacles.size()
                    + "; give no more than 10,000, so leave out what is far from the fence");
        }
        return new Obstacles(List.copyOf(obstacles));
    }

    /**
     * Returns the obstacles one by one.
     *
     * @return the obstacles in the order given, unmodifiable
     */
    public List<Obstacle> list() {
        return list;
    }

    /**
     * Returns where along a line of posts no hole may be dug, for any of the obstacles.
     *
     * @param postLine the line of the posts' centres
     * @param holeRadius how far a hole reaches from its centre
     * @return the stations in order, apart from each other; a post may stand at either end of an interval
     * @throws IllegalArgumentException if the radius is negative or over 1,000 ft
     */
    public List<Interval> forbidden(Segment postLine, Length holeRadius) {
        Obstacle.requireSize("holeRadius", holeRadius);
        List<Interval> found = new ArrayList<>();
        for (Obstacle obstacle : list) {
            found.addAll(obstacle.forbidden(postLine, holeRadius));
        }
        return Interval.merged(found);
    }

    /**
     * Returns which obstacles bar a hole at a place.
     *
     * @param centre the middle of the hole
     * @param holeRadius how far it reaches from there
     * @return the obstacles in the order given; empty if a hole may be dug
     * @throws IllegalArgumentException if the radius is negative or over 1,000 ft
     */
    public List<Obstacle> blocking(Point centre, Length holeRadius) {
        Obstacle.requireSize("holeRadius", holeRadius);
        return list.stream()
                .filter(obstacle -> obstacle.blocks(centre, holeRadius))
                .toList();
    }

    /**
     * Returns what is wrong with a post that stays where it is.
     *
     * @param place what one calls the post, such as {@code post 7}
     * @param centre the middle of its hole
     * @param holeRadius how far the hole reaches from there
     * @return a blocker {@code obstacle-at-post} for each obstacle that bars the hole
     * @throws IllegalArgumentException if the radius is negative or over 1,000 ft
     */
    public List<Finding> atPost(String place, Point centre, Length holeRadius) {
        return blocking(centre, holeRadius).stream()
                .map(obstacle -> atPost(place, obstacle, holeRadius))
                .toList();
    }

    private static Finding atPost(String place, Obstacle obstacle, Length holeRadius) {
        String message = "a hole " + Written.tape(holeRadius.times(2)) + " wide here "
                + (obstacle.clear().isZero()
                        ? "reaches into " + obstacle.phrase()
                        : "comes within the " + Written.tape(obstacle.clear()) + " that " + obstacle.phrase()
                                + " has to itself");
        String remedy = "move the post, corner or gate until the middle of the hole is at least "
                + Written.tape(obstacle.clear().plus(holeRadius), Rounding.UP) + " from its edge"
                + (obstacle.utility().isPresent() ? ", or ask the line's owner how one may dig there" : "");
        return Finding.blocker("obstacle-at-post", place, message)
                .withRemedy(remedy)
                .withSource(obstacle.source());
    }

    /**
     * Returns what the fence itself runs into, between its posts as well.
     *
     * @param place what one calls this part of the fence, such as {@code side 2}
     * @param fence its line
     * @param reach how far the fence reaches to either side of that line
     * @return for each obstacle, a blocker {@code obstacle-in-fence} where the line runs through a trunk, a wall or a
     *     structure, or else a warning {@code obstacle-crowded} where it runs through the space that a hydrant needs;
     *     stations are along the line
     * @throws IllegalArgumentException if the reach is negative or over 1,000 ft
     */
    public List<Finding> alongFence(String place, Segment fence, Length reach) {
        Obstacle.requireSize("reach", reach);
        List<Finding> findings = new ArrayList<>();
        for (Obstacle obstacle : list) {
            Finding finding = alongFence(place, obstacle, fence, reach);
            if (finding != null) {
                findings.add(finding);
            }
        }
        return List.copyOf(findings);
    }

    private static @Nullable Finding alongFence(String place, Obstacle obstacle, Segment fence, Length reach) {
        List<Interval> through = obstacle.crossed(fence, reach);
        if (!through.isEmpty()) {
            return Finding.blocker(
                            "obstacle-in-fence",
                            place,
                            "the fence runs into " + obstacle.phrase() + " " + stations(through))
                    .withRemedy("end the fence on either side of it, or move the line")
                    .withSource(Citation.GEOMETRY);
        }
        List<Interval> near = obstacle.crowded(fence, reach);
        return near.isEmpty()
                ? null
                : Finding.warning(
                                "obstacle-crowded",
                                place,
                                "the fence runs " + stations(near) + " within the " + Written.tape(obstacle.clear())
                                        + " that " + obstacle.phrase() + " needs round it")
                        .withRemedy("move the line away from it, or ask the local office")
                        .withSource(obstacle.source());
    }

    private static String stations(List<Interval> stretches) {
        return Written.list(stretches.stream()
                .map(stretch -> "from " + Written.station(stretch.start()) + " to " + Written.station(stretch.end()))
                .toList());
    }

    /**
     * Returns what always has to be said before anyone digs: which buried lines the posts were kept clear of, and that
     * there may be others.
     *
     * @return a note {@code underground-lines} for the whole job
     */
    public Finding undergroundNote() {
        List<String> told = list.stream()
                .filter(obstacle -> obstacle.utility().isPresent())
                .map(Obstacle::name)
                .distinct()
                .toList();
        String message = told.isEmpty()
                ? "no buried lines were told, so posts were kept clear of none"
                : "posts were kept clear of the buried lines that were told (" + Written.list(told)
                        + "); there may be others";
        return Finding.note("underground-lines", "job", message)
                .withRemedy("have all lines marked before digging, private ones as well, and check the holes against"
                        + " the marks")
                .withSource(LOCATE);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Obstacles that && list.equals(that.list);
    }

    @Override
    public int hashCode() {
        return list.hashCode();
    }

    /**
     * Returns the names.
     *
     * @return such as {@code [gas line, the oak]}
     */
    @Override
    public String toString() {
        return list.toString();
    }
}
