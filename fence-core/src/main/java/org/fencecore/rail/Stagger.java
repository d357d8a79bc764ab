package org.fencecore.rail;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Spreads the joints of several rails over the posts of a straight stretch: as few posts as can be with more than one
 * joint, then as few joints as can be, and these as evenly as can be.
 *
 * <p>Going along post by post, all that matters of what lies behind is how many rails have come how many bays since their
 * last joint. For each such state the best way to it is kept. There are few states, so the time grows with the number of
 * posts.
 */
final class Stagger {

    /** Tells whether one piece can run from one post to another. */
    interface Fits {
        boolean test(int from, int to);
    }

    /** A best way to a state: how many rails have come 1, 2, 3... bays, and how many of them were joined at the post. */
    private static final class Way {
        final int[] rails;
        final int[] joined;
        final int crowded;
        final int joints;
        final int uneven;
        final @Nullable Way before;

        Way(int[] rails, int[] joined, int crowded, int joints, int uneven, @Nullable Way before) {
            this.rails = rails;
            this.joined = joined;
            this.crowded = crowded;
            this.joints = joints;
            this.uneven = uneven;
            this.before = before;
        }

        boolean isBetterThan(Way other) {
            if (crowded != other.crowded) {
                return crowded < other.crowded;
            }
            return joints != other.joints ? joints < other.joints : uneven < other.uneven;
        }

        /** The state as one number: there are no more rails than four bits hold. */
        int state() {
            int state = 0;
            for (int count : rails) {
                state = state << 4 | count;
            }
            return state;
        }
    }

    private final int bays;
    private final int mostBays;
    private final Fits fits;

    private Stagger(int bays, int mostBays, Fits fits) {
        this.bays = bays;
        this.mostBays = mostBays;
        this.fits = fits;
    }

    /** Returns for each rail whether it is joined at each post, the first and the last post left out. */
    static boolean[][] spread(int rails, int bays, int mostBays, Fits fits) {
        return new Stagger(bays, mostBays, fits).spread(rails);
    }

    private boolean[][] spread(int rails) {
        int[] start = new int[mostBays];
        start[0] = rails;
        Map<Integer, Way> ways = new LinkedHashMap<>();
        keep(ways, new Way(start, new int[mostBays], 0, 0, 0, null));
        for (int post = 1; post < bays; post++) {
            Map<Integer, Way> next = new LinkedHashMap<>();
            for (Way way : ways.values()) {
                join(next, way, post, 0, new int[mostBays]);
            }
            ways = next;
        }
        Way best = null;
        for (Way way : ways.values()) {
            best = best == null || way.isBetterThan(best) ? way : best;
        }
        return assigned(rails, best);
    }

    /** Tries every number of rails to join of those that have come {@code come + 1} bays, and of those further. */
    private void join(Map<Integer, Way> next, Way way, int post, int come, int[] joined) {
        if (come == mostBays) {
            keep(next, after(way, joined));
            return;
        }
        int there = way.rails[come];
        boolean goesOn = there > 0 && come + 2 <= mostBays && fits.test(post - come - 1, post + 1);
        for (int count = goesOn ? 0 : there; count <= there; count++) {
            joined[come] = count;
            join(next, way, post, come + 1, joined);
        }
        joined[come] = 0;
    }

    private Way after(Way way, int[] joined) {
        int[] rails = new int[mostBays];
        int joints = 0;
        for (int come = 0; come < mostBays; come++) {
            joints += joined[come];
            if (come + 1 < mostBays) {
                rails[come + 1] = way.rails[come] - joined[come];
            }
        }
        rails[0] = joints;
        return new Way(
                rails,
                joined.clone(),
                way.crowded + (joints > 1 ? 1 : 0),
                way.joints + joints,
                way.uneven + joints * joints,
                way);
    }

    private static void keep(Map<Integer, Way> ways, Way way) {
        ways.merge(way.state(), way, (known, other) -> other.isBetterThan(known) ? other : known);
    }

    /** Goes along the best way and lets the lowest rails be joined first. */
    private boolean[][] assigned(int rails, @Nullable Way best) {
        Deque<int[]> joined = new ArrayDeque<>();
        for (Way way = best; way != null && way.before != null; way = way.before) {
            joined.push(way.joined);
        }
        boolean[][] cuts = new boolean[rails][bays];
        int[] come = new int[rails];
        for (int post = 1; post < bays; post++) {
            int[] left = joined.pop().clone();
            for (int rail = 0; rail < rails; rail++) {
                if (left[come[rail]] > 0) {
                    left[come[rail]]--;
                    cuts[rail][post] = true;
                    come[rail] = 0;
                } else {
                    come[rail]++;
                }
            }
        }
        return cuts;
    }
}
