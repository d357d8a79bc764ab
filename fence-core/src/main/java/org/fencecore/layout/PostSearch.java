package org.fencecore.layout;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the best bays of a stretch where posts are kept out of forbidden stretches, without a grid.
 *
 * <p>Say which free part each post stands in. The most even posts in these parts then lie like a string pulled tight:
 * where a post does not stand at the edge of its part, moving it would make its two bays more even, so they are equal
 * already. Hence bays only change at edges, and between two such pins posts stand evenly. The tight string also has the
 * shortest longest bay and the longest shortest bay that these parts allow, so if any posts there keep the maximum and the
 * minimum, these do. What is left is to choose the pins, which is a shortest path: from pin to pin the fewest posts that
 * stand clear, compared by the number of bays, then of bays that are not full where full ones are wanted, then by the sum
 * of the squares of the bays. A section's bays are at least as long as the widest forbidden stretch in it, which bounds
 * their number.
 *
 * <p>Sources: that the tight string is the most even by every measure at once, A. F. Veinott, Least d-majorized network
 * flows with inventory and statistical applications, Management Science 17 (1971), from memory; {@code PostSpacingProperties}
 * compares with brute force.
 */
final class PostSearch {

    /** Costs that differ by less than so much are the same sum of squares, added up in another order. */
    private static final double SAME = 1e-12;

    private final BayPattern pattern;
    private final BayRule rule;
    /** A full bay if such are wanted; 0 if they are not, for then none is. */
    private final long full;

    private final long longest;
    private final long least;
    private final ForbiddenStretches forbidden;
    private final long[] pins;
    /** For each pin the first forbidden stretch at it or beyond. */
    private final int[] next;

    private final @Nullable Path[] best;

    private PostSearch(PostSpacingSpec spec, BayRule rule, long least, ForbiddenStretches forbidden) {
        pattern = new BayPattern(spec, rule);
        this.rule = rule;
        longest = spec.fullBay().nanometres();
        full = rule == BayRule.EQUAL ? 0 : longest;
        this.least = least;
        this.forbidden = forbidden;
        pins = forbidden.pins();
        next = new int[pins.length];
        best = new Path[pins.length];
    }

    /** Bays up to a pin: those up to the pin before, and one section more. */
    private record Path(@Nullable Path before, List<EvenBays> section, long bays, long notFull, double squares) {

        static final Path START = new Path(null, List.of(), 0, 0, 0);

        Path then(List<EvenBays> groups, long full) {
            long allBays = bays;
            long allNotFull = notFull;
            double allSquares = squares;
            for (EvenBays group : groups) {
                allBays += group.bays();
                allNotFull += group.length() == full * group.bays() ? 0 : group.bays();
                allSquares += (double) group.length() * group.length() / group.bays();
            }
            return new Path(this, groups, allBays, allNotFull, allSquares);
        }

        boolean isBetterThan(@Nullable Path other) {
            if (other == null || bays != other.bays) {
                return other == null || bays < other.bays;
            }
            return notFull != other.notFull ? notFull < other.notFull : squares < other.squares;
        }

        boolean isAsGoodAs(Path other) {
            return bays == other.bays && notFull == other.notFull && squares <= other.squares * (1 + SAME);
        }

        List<EvenBays> groups() {
            Deque<EvenBays> groups = new ArrayDeque<>();
            for (Path path = this; path != null; path = path.before) {
                for (int i = path.section.size() - 1; i >= 0; i--) {
                    groups.addFirst(path.section.get(i));
                }
            }
            return List.copyOf(groups);
        }
    }

    /**
     * Returns the best bays; none if the minimum cannot be kept.
     *
     * @param least the shortest bay allowed; with zero there is always a layout, since a forbidden stretch that is too
     *     wide for a bay is spanned all the same
     */
    static List<EvenBays> search(PostSpacingSpec spec, long least, ForbiddenStretches forbidden) {
        // Seen from the end where something comes first, so that a mirrored stretch has mirrored posts, ties included.
        boolean turn = spec.rule() == BayRule.REMAINDER_AT_START
                || (spec.rule() != BayRule.REMAINDER_AT_END && forbidden.compareToMirrored() > 0);
        if (!turn) {
            return new PostSearch(spec, spec.rule(), least, forbidden).bays();
        }
        BayRule rule = spec.rule() == BayRule.REMAINDER_AT_START ? BayRule.REMAINDER_AT_END : spec.rule();
        PostSearch mirrored = new PostSearch(spec, rule, least, forbidden.mirrored());
        return mirrored(mirrored.bays(), forbidden.length());
    }

    private static List<EvenBays> mirrored(List<EvenBays> bays, long stretch) {
        List<EvenBays> mirrored = new ArrayList<>();
        bays.forEach(group -> mirrored.add(group.mirrored(stretch)));
        Collections.reverse(mirrored);
        return mirrored;
    }

    private List<EvenBays> bays() {
        for (int pin = 0, i = 0; pin < pins.length; pin++) {
            while (i < forbidden.count() && forbidden.start(i) < pins[pin]) {
                i++;
            }
            next[pin] = i;
        }
        best[0] = Path.START;
        for (int to = 1; to < pins.length; to++) {
            // From the nearest pin, so that long sections with too many bays are soon passed over.
            for (int from = to - 1; from >= 0; from--) {
                Path before = best[from];
                Path path = before == null ? null : extended(before, from, to, best[to]);
                if (path != null && path.isBetterThan(best[to])) {
                    best[to] = path;
                }
            }
        }
        Path last = best[pins.length - 1];
        if (last == null) {
            return List.of();
        }
        boolean alike = rule != BayRule.REMAINDER_AT_END && forbidden.compareToMirrored() == 0;
        return (alike ? symmetric(last) : last).groups();
    }

    /** A path with the fewest bays from one pin to another that stand clear; null if they would be more than known ones. */
    private @Nullable Path extended(Path before, int from, int to, @Nullable Path known) {
        long start = pins[from];
        long length = pins[to] - start;
        long most = known == null ? Long.MAX_VALUE : known.bays - before.bays;
        long fewest = pattern.fewest(length);
        if (fewest > most) {
            return null;
        }
        long shortest = Math.max(1, least);
        for (int i = next[from]; i < forbidden.count() && forbidden.end(i) <= pins[to]; i++) {
            shortest = Math.max(shortest, forbidden.end(i) - forbidden.start(i));
        }
        if (shortest == length && length > longest) { // too wide for a bay, but no post may stand in it
            return before.then(List.of(EvenBays.of(start, length, 1)), full);
        }
        if (rule != BayRule.EQUAL) {
            List<EvenBays> groups = pattern.bays(start, length);
            if (keepMinimum(groups) && stand(groups, from, to)) {
                return before.then(groups, full);
            }
        }
        for (long bays = fewest; bays <= Math.min(most, length / shortest); bays++) {
            List<EvenBays> even = List.of(EvenBays.of(start, length, bays));
            if (stand(even, from, to)) {
                return before.then(even, full);
            }
        }
        return null;
    }

    private boolean keepMinimum(List<EvenBays> groups) {
        return groups.stream().allMatch(group -> group.length() / group.bays() >= least);
    }

    private boolean stand(List<EvenBays> groups, int from, int to) {
        for (int i = next[from]; i < forbidden.count() && forbidden.end(i) <= pins[to]; i++) {
            if (forbidden.isHit(groups, i)) {
                return false;
            }
        }
        return true;
    }

    /** Of a stretch that is the same from both ends, posts that are so too, if such are as good as the best. */
    private Path symmetric(Path last) {
        for (int from = 0; 2 * from < pins.length; from++) {
            Path half = best[from];
            int to = pins.length - 1 - from;
            Path middle = half == null || from == to ? half : extended(half, from, to, null);
            if (half != null && middle != null) {
                Path whole = middle.then(mirrored(half.groups(), forbidden.length()), full);
                if (whole.isAsGoodAs(last)) {
                    return whole;
                }
            }
        }
        return last;
    }
}
