package org.fencecore.layout;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Posts along a stretch, with one at each end: how many, and where, so that no bay is too wide for the rails and none
 * stands where it may not.
 *
 * <p>With nothing in the way the posts follow the {@link BayRule} of the spec, equal bays if not said otherwise:
 *
 * <pre>
 * bays    = length / full bay, rounded up
 * spacing = length / bays
 * </pre>
 *
 * <p>Where that puts a post into a forbidden stretch, such as the zone beside a gas line, posts move. Of all posts that keep
 * out of the forbidden stretches, the maximum and the minimum, those are taken that are best in this order:
 *
 * <ol>
 *   <li>the fewest posts;
 *   <li>the most full bays, where the rule asks for full ones;
 *   <li>the most even bays: the least sum of the squares of the bays. No other posts as few, each in the same part of the
 *       stretch, have a shorter longest bay or a longer shortest one.
 * </ol>
 *
 * <p>For equal bays that is the best there is anywhere along the stretch, not only on the marks of some grid. For full
 * bays it is the best of those that keep the rule from edge to edge of the forbidden stretches, with even bays where that
 * is not possible. A stretch seen from its other end has the same posts seen from there; one that is the same from both
 * ends has such posts too if any as good exist.
 *
 * <p>A post may stand at the edge of a forbidden stretch, so a stretch of no length forbids nothing: widen it by half
 * the hole and by the tolerance of its mark before it is given. Where not everything can be kept, the minimum gives way
 * first, then the maximum, for rather a bay too wide than a hole in a pipe; the {@link #findings} tell.
 *
 * <p>Lengths are from centre to centre if the stretch is, and clear of posts if the stretch is. Stations are exact to
 * the nanometre, the same from both ends, and do not add up rounding.
 *
 * <p>Sources: geometry; equal bays are common practice, no source.
 *
 * <p>Example: 50 ft with bays of 8 ft at most takes 7 bays of 50 / 7 = 7.143 ft. A pipe 20 to 23 ft from the start is in the
 * way of the fourth post at 21.43 ft: it moves to 20 ft, the nearer edge, three bays are 6 ft 8 in long, and the four others
 * share 30 ft.
 *
 * <pre>{@code
 * PostSpacing spacing = PostSpacing.equalBays(Length.ofFeet(50), Length.ofFeet(8), Length.ofFeet(4));
 * spacing.bayCount();           // 7
 * spacing.spacing();            // 7 ft 1 5/7 in, to the nanometre
 * spacing.stations().size();    // 8, from 0 to 50 ft
 *
 * PostSpacing moved = PostSpacing.fit(
 *         Length.ofFeet(50),
 *         PostSpacingSpec.builder().minimum(Length.ofFeet(4)).build(),
 *         List.of(Interval.of(Length.ofFeet(20), Length.ofFeet(23))));
 * moved.stations().get(3);      // 20 ft
 * moved.longestBay();           // 7 ft 6 in
 * moved.shortestBay();          // 6 ft 8 in
 * }</pre>
 */
public final class PostSpacing {

    private static final int MOST_BAYS = 10_000_000;
    private static final int MOST_MOVED_BAYS = 10_000;
    private static final int MOST_FORBIDDEN = 200;

    private final Length length;
    private final PostSpacingSpec spec;
    private final ForbiddenStretches forbidden;
    private final int hit;
    private final EvenBays[] groups;
    /** The number of the post at which each group begins, and that of the last post. */
    private final int[] firstPosts;

    private PostSpacing(
            Length length, PostSpacingSpec spec, ForbiddenStretches forbidden, int hit, List<EvenBays> groups) {
        this.length = length;
        this.spec = spec;
        this.forbidden = forbidden;
        this.hit = hit;
        this.groups = groups.toArray(new EvenBays[0]);
        firstPosts = new int[this.groups.length + 1];
        for (int i = 0; i < this.groups.length; i++) {
            firstPosts[i + 1] = firstPosts[i] + this.groups[i].bays();
        }
    }

    /**
     * Divides a stretch into the fewest equal bays that are not over the maximum.
     *
     * @param length the length of the stretch, between its end posts
     * @param maximumSpacing the longest bay that rails allow
     * @param minimumSpacing the shortest bay wanted, zero if any will do
     * @return the spacing, with {@link #findings} if its bays are under the minimum
     * @throws IllegalArgumentException if {@code length} or {@code maximumSpacing} is not over zero, if
     *     {@code minimumSpacing} is not from zero to the maximum, or if it takes over 10,000,000 bays
     */
    public static PostSpacing equalBays(Length length, Length maximumSpacing, Length minimumSpacing) {
        return fit(
                length,
                PostSpacingSpec.builder()
                        .maximum(maximumSpacing)
                        .minimum(minimumSpacing)
                        .build());
    }

    /**
     * Divides a stretch with nothing in the way.
     *
     * @param length the length of the stretch, between its end posts
     * @param spec how posts are to be spaced
     * @return the spacing, with {@link #findings} if a bay is under the minimum
     * @throws IllegalArgumentException if {@code length} is not over zero, or if it takes over 10,000,000 bays
     */
    public static PostSpacing fit(Length length, PostSpacingSpec spec) {
        return fit(length, spec, List.of());
    }

    /**
     * Divides a stretch so that no post between its ends stands within a forbidden stretch.
     *
     * @param length the length of the stretch, between its end posts
     * @param spec how posts are to be spaced
     * @param forbidden where no post may stand, in stations from the start of the stretch, in any order; they may overlap
     *     each other and reach past the ends
     * @return the spacing, with {@link #findings} if not everything could be kept
     * @throws IllegalArgumentException if {@code length} is not over zero, if it takes over 10,000,000 bays, or over
     *     10,000 where posts have to move, or if there are over 200 forbidden stretches
     */
    public static PostSpacing fit(Length length, PostSpacingSpec spec, List<Interval> forbidden) {
        if (!length.isPositive()) {
            throw new IllegalArgumentException(
                    "length was " + length + "; it must be over 0: leave out a stretch without length");
        }
        if (forbidden.size() > MOST_FORBIDDEN) {
            throw new IllegalArgumentException("forbidden had " + forbidden.size()
                    + " stretches; up to 200 are taken, so join those that touch or lay out a shorter stretch");
        }
        BayPattern pattern = new BayPattern(spec, spec.rule());
        requireBays(pattern, length, spec, MOST_BAYS);
        List<EvenBays> groups = pattern.bays(0, length.nanometres());
        ForbiddenStretches stretches = ForbiddenStretches.of(length.nanometres(), forbidden);
        int hit = stretches.firstHit(groups);
        if (hit >= 0) {
            requireBays(pattern, length, spec, MOST_MOVED_BAYS);
            groups = PostSearch.search(spec, spec.minimum().nanometres(), stretches);
            if (groups.isEmpty()) {
                groups = PostSearch.search(spec, 0, stretches);
            }
        }
        return new PostSpacing(length, spec, stretches, hit, groups);
    }

    private static void requireBays(BayPattern pattern, Length length, PostSpacingSpec spec, int most) {
        if (pattern.fewest(length.nanometres()) > most) {
            throw new IllegalArgumentException("length was " + length + " with bays of " + spec.fullBay()
                    + " at most, which takes over " + String.format(Locale.ROOT, "%,d", most)
                    + " bays; check the units, or lay out a shorter stretch");
        }
    }

    /**
     * Returns the length of the stretch.
     *
     * @return the distance between the posts at its ends
     */
    public Length length() {
        return length;
    }

    /**
     * Returns how the posts were to be spaced.
     *
     * @return the spec
     */
    public PostSpacingSpec spec() {
        return spec;
    }

    /**
     * Returns how many bays there are, one fewer than posts.
     *
     * @return the count, at least 1
     */
    public int bayCount() {
        return firstPosts[groups.length];
    }

    /**
     * Returns the average length of a bay, which equal bays have each.
     *
     * @return length over bays, to the nearest nanometre
     */
    public Length spacing() {
        return length.dividedBy(bayCount());
    }

    /**
     * Tells whether all bays are alike.
     *
     * @return true if each is the {@link #spacing}, but for a nanometre
     */
    public boolean isEven() {
        return longestBay().minus(shortestBay()).compareTo(Length.ofNanometres(1)) <= 0;
    }

    /**
     * Returns the longest bay.
     *
     * @return the longest distance between two neighbouring posts, to the nearest nanometre
     */
    public Length longestBay() {
        Length longest = Length.ZERO;
        for (EvenBays group : groups) {
            longest = Length.max(longest, spacing(group));
        }
        return longest;
    }

    /**
     * Returns the shortest bay.
     *
     * @return the shortest distance between two neighbouring posts, to the nearest nanometre
     */
    public Length shortestBay() {
        Length shortest = length;
        for (EvenBays group : groups) {
            shortest = Length.min(shortest, spacing(group));
        }
        return shortest;
    }

    /** Tells whether no bay is shorter, before any rounding. */
    boolean isAtLeast(Length least) {
        for (EvenBays group : groups) {
            if (group.length() / group.bays() < least.nanometres()) {
                return false;
            }
        }
        return true;
    }

    static Length spacing(EvenBays group) {
        return Length.ofNanometres(group.length()).dividedBy(group.bays());
    }

    /**
     * Returns where the posts stand, each measured from the start so that nothing adds up.
     *
     * @return an unmodifiable view of the stations from zero to the length of the stretch, one more than bays
     */
    public List<Length> stations() {
        return new IndexedView<>(bayCount() + 1, post -> Length.ofNanometres(station(post)));
    }

    private long station(int post) {
        if (post == bayCount()) {
            return length.nanometres();
        }
        int found = Arrays.binarySearch(firstPosts, post);
        int group = found >= 0 ? found : -found - 2;
        return groups[group].station(post - firstPosts[group]);
    }

    /**
     * Returns the bays.
     *
     * @return an unmodifiable view of the distances from post to post, along the stretch
     */
    public List<Length> bays() {
        return new IndexedView<>(bayCount(), bay -> Length.ofNanometres(station(bay + 1) - station(bay)));
    }

    /**
     * Returns what one line of rails leaves of its stock when every stick spans whole bays, as many as it reaches: sticks
     * times stock less the length of the stretch. Off-cuts are not used again here.
     *
     * @return the waste, zero for full bays alone; empty if the spec has no rail stock or a bay is longer than it
     */
    public Optional<Length> railWaste() {
        return spec.railStock()
                .filter(stock -> longestBay().compareTo(stock) <= 0)
                .map(stock -> stock.times(sticks(stock.nanometres())).minus(length));
    }

    private int sticks(long stock) {
        int sticks = 1;
        long from = 0;
        for (int post = 1; post <= bayCount(); post++) {
            if (station(post) - from > stock) {
                sticks++;
                from = station(post - 1);
            }
        }
        return sticks;
    }

    /**
     * Returns what is wrong with the spacing or worth knowing:
     *
     * <ul>
     *   <li>blockers {@code forbidden-too-wide}, a forbidden stretch that no bay may span, and {@code end-post-forbidden},
     *       the given post at an end stands in one;
     *   <li>notes {@code bay-short}, a bay under the minimum, and {@code posts-moved}, out of a forbidden stretch.
     * </ul>
     *
     * @return all findings, empty if the posts stand by their rule
     */
    public List<Finding> findings() {
        return new PostExplanation(this, forbidden, hit).findings();
    }

    /**
     * Returns the calculation line by line, ending with the spacing of equal bays, else with the longest bay.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        return new PostExplanation(this, forbidden, hit).worksheet(List.of(groups));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PostSpacing that
                && length.equals(that.length)
                && spec.equals(that.spec)
                && forbidden.equals(that.forbidden);
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, spec, forbidden);
    }

    /**
     * Describes the spacing.
     *
     * @return such as {@code 6 bays of 8' 0" in 48' 0"}
     */
    @Override
    public String toString() {
        String each =
                isEven() ? Written.tape(spacing()) : Written.tape(shortestBay()) + " to " + Written.tape(longestBay());
        return bayCount() + (bayCount() == 1 ? " bay of " : " bays of ") + each + " in " + Written.tape(length);
    }
}
