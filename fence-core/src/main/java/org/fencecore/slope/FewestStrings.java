package org.fencecore.slope;

import java.util.Arrays;
import org.fencecore.geometry.Profile;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * Finds the fewest straight strings along a run that bend only at posts, meet there, and keep the gap to the ground
 * between a minimum and a maximum; and among those the ones whose gaps differ least.
 *
 * <p>How: heights over each post are collected that can be reached with one string, then with two, and so on. From a
 * stretch of heights over a post all lines through the windows ahead reach again a stretch of heights over each later
 * post, see {@link LineReach}; what was reached before is not entered again. The first number of strings that reaches
 * the last post is the fewest, because every height that a smaller number could reach has been collected.
 *
 * <p>What keeps it fast without losing any: a stretch is followed only until all its lines pass a post at heights that
 * are reached there already with fewer strings, since these lines can as well be taken from that post; posts before one
 * whose every possible height is reached need not be begun from again; and a first search from the far end tells how many
 * strings each post still needs, so that no more is begun from posts that would be late. So about as much work is done
 * as posts times the bays of a string.
 *
 * <p>The least difference of the gaps is found by halving, to a thousandth of a millimetre, and the strings are then hung so that the middle of their gaps
 * is the clearance, as far as minimum and maximum allow. It is worked out from the lower end of the run, so that it
 * comes out the same whichever end is called first.
 */
final class FewestStrings {

    /** Heights nearer than this are the same, in nanometres. */
    private static final double SAME = 1e-3;

    /** Spreads nearer than this are the same, a thousandth of a millimetre. */
    private static final long FINE = 1_000;

    private final Corridor corridor;
    private final double minimum;
    private final double longest;

    /** The heights of the nails over the ground at the first post, and how far the gaps differ where limits are kept. */
    private static final class Strings {
        final double[] heights;
        final long spread;

        /** Takes a height for each post, not a number where there is no nail. */
        Strings(double[] heights, long spread) {
            this.heights = heights;
            this.spread = spread;
        }
    }

    private FewestStrings(Corridor corridor, SlopeSpec spec) {
        this.corridor = corridor;
        this.minimum = spec.minimumClearance().nanometres();
        this.longest = spec.longestString().nanometres();
    }

    /** Returns the elevation of the board bottoms at each post that has a nail, and {@link Long#MIN_VALUE} at others. */
    static long[] nails(Profile ground, long[] stations, SlopeSpec spec) {
        Corridor ahead = Corridor.under(ground, stations);
        boolean backward = ahead.isBackward();
        Corridor corridor = backward ? ahead.reversed() : ahead;
        long span = spec.maximumClearance().minus(spec.minimumClearance()).nanometres();
        FewestStrings search = new FewestStrings(corridor, spec);
        corridor.openWhereNeeded(search.minimum, search.minimum + span);
        Strings fewest = search.leastSpread(span);
        long lowest = spec.minimumClearance().nanometres();
        long hung = Math.max(
                lowest, Math.min(spec.clearance().nanometres() - fewest.spread / 2, lowest + span - fewest.spread));
        int last = stations.length - 1;
        long datum = ground.elevationAt(Length.ofNanometres(stations[backward ? last : 0]))
                        .nanometres()
                + hung
                - lowest;
        long[] bottoms = new long[stations.length];
        Arrays.fill(bottoms, Long.MIN_VALUE);
        for (int post = 0; post <= last; post++) {
            double height = fewest.heights[backward ? last - post : post];
            if (!Double.isNaN(height)) {
                bottoms[post] = datum + Math.round(height);
            }
        }
        return bottoms;
    }

    /** Returns as few strings as can be with the least spread of gaps, up to the span, that needs no more of them. */
    private Strings leastSpread(long span) {
        int[] toGo = stringsToGo(span);
        long low = 0;
        // The first trial is no spread at all, which is the answer on a straight grade.
        Strings best = find(0, Corridor.OPEN, toGo);
        long high = best == null ? span : 0;
        while (high - low > FINE) {
            long middle = low + (high - low) / 2;
            Strings found = find(middle, Corridor.OPEN, toGo);
            if (found != null) {
                best = found;
                high = middle;
            } else {
                low = middle;
            }
        }
        if (best == null) {
            best = find(high, Corridor.OPEN, toGo);
        }
        if (best == null) {
            throw new IllegalStateException("no strings over ground that was opened for them");
        }
        return corridor.isOpen() ? lowestOverOpenings(toGo, best) : best;
    }

    /** Returns how many strings are needed from each post to the end, from whatever height over it. */
    private int[] stringsToGo(long span) {
        Corridor mirror = corridor.reversed();
        Corridor.Windows windows = mirror.windows(minimum, minimum + span, Corridor.OPEN);
        mirror.narrow(windows);
        int[] back = new Search(mirror, windows, new int[mirror.postCount()], Integer.MAX_VALUE).fewest();
        int[] toGo = new int[back.length];
        for (int post = 0; post < back.length; post++) {
            toGo[post] = back[back.length - 1 - post];
        }
        return toGo;
    }

    /** Where the maximum is given up, the gaps are still as small as they can be. */
    private Strings lowestOverOpenings(int[] toGo, Strings found) {
        Strings best = found;
        double low = minimum + found.spread;
        double high = Corridor.OPEN;
        while (high - low > FINE) {
            // Between a metre and an unheard-of height, halving the exponent is faster.
            double middle = high > 1e9 ? Math.sqrt(Math.max(low, 1e6) * high) : (low + high) / 2;
            Strings lower = find(found.spread, middle, toGo);
            if (lower != null) {
                best = lower;
                high = middle;
            } else {
                low = middle;
            }
        }
        return best;
    }

    private @Nullable Strings find(long span, double openMaximum, int[] toGo) {
        Corridor.Windows windows = corridor.windows(minimum, minimum + span, openMaximum);
        if (!corridor.narrow(windows)) {
            return null;
        }
        double[] heights = new Search(corridor, windows, toGo, toGo[0]).heights();
        return heights == null ? null : new Strings(heights, span);
    }

    /** One search in given windows. Reached heights are pieces, kept for each post as a linked list. */
    private final class Search {

        private final Corridor corridor;
        private final Corridor.Windows windows;
        private final int[] toGo;
        private final int most;
        private final LineReach reach = new LineReach();
        private final int end;
        private final int[] head;
        private final int[] newest;
        private final int[] first;
        private double[] lows = new double[1024];
        private double[] highs = new double[1024];
        private int[] strings = new int[1024];
        private int[] from = new int[1024];
        private int[] next = new int[1024];
        private int[] post = new int[1024];
        private int pieces;
        private int firstFresh;
        private int lastFresh;

        Search(Corridor corridor, Corridor.Windows windows, int[] toGo, int most) {
            this.corridor = corridor;
            this.windows = windows;
            this.toGo = toGo;
            this.most = most;
            this.end = corridor.postCount() - 1;
            this.head = new int[end + 1];
            this.newest = new int[end + 1];
            this.first = new int[end + 1];
            Arrays.fill(head, -1);
            Arrays.fill(newest, -1);
        }

        /** Returns the heights of the nails of one way with the fewest strings; null if there is none. */
        double @Nullable [] heights() {
            collect();
            return head[end] < 0 ? null : back();
        }

        /** Returns how many strings are needed to each post. */
        int[] fewest() {
            collect();
            return first;
        }

        /** Collects what is reached with one string more at a time, until the end is or nothing new is reached. */
        private void collect() {
            int zero = corridor.point(0);
            enter(0, windows.lows[zero], windows.highs[zero], -1, 0);
            int begin = 0;
            for (int count = 1; count <= most && head[end] < 0 && lastFresh >= begin; count++) {
                int earliest = Math.max(begin, firstFresh);
                int latest = lastFresh;
                firstFresh = Integer.MAX_VALUE;
                lastFresh = -1;
                for (int at = latest; at >= earliest; at--) {
                    if (newest[at] == count - 1) {
                        followAll(at, count);
                    }
                }
                begin = lastWhole(begin);
            }
        }

        private boolean isTooLong(int at, int later) {
            return later > at + 1
                    && corridor.station(corridor.point(later)) - corridor.station(corridor.point(at)) > longest;
        }

        private void followAll(int at, int count) {
            for (int piece = head[at]; piece >= 0; piece = next[piece]) {
                if (strings[piece] == count - 1) {
                    follow(at, piece, count);
                }
            }
        }

        private void follow(int at, int piece, int count) {
            reach.begin(corridor.station(corridor.point(at)), lows[piece], highs[piece]);
            for (int later = at + 1; later <= end && !isTooLong(at, later); later++) {
                int there = corridor.point(later);
                for (int point = corridor.point(later - 1) + 1; point <= there; point++) {
                    if (!reach.pass(corridor.station(point), windows.lows[point], windows.highs[point])) {
                        return;
                    }
                }
                double low = Math.max(windows.lows[there], reach.lowest(corridor.station(there)));
                double high = Math.min(windows.highs[there], reach.highest(corridor.station(there)));
                if (isReached(later, low, high, count - 1)) {
                    return;
                }
                if (toGo[later] <= most - count) {
                    enter(later, low, high, piece, count);
                }
            }
        }

        /** Enters the heights that are not reached yet. */
        private void enter(int at, double low, double high, int source, int count) {
            double rest = low;
            double top = high;
            for (int piece = head[at]; piece >= 0; piece = next[piece]) {
                if (highs[piece] < rest || lows[piece] > top) {
                    continue;
                }
                if (lows[piece] <= rest && highs[piece] >= top) {
                    return;
                }
                if (lows[piece] <= rest) {
                    rest = highs[piece];
                } else if (highs[piece] >= top) {
                    top = lows[piece];
                } else {
                    enter(at, rest, lows[piece], source, count);
                    rest = highs[piece];
                }
            }
            if (top - rest > SAME || head[at] < 0) {
                push(at, rest, top, source, count);
            }
        }

        private void push(int at, double low, double high, int source, int count) {
            if (pieces == lows.length) {
                int room = 2 * pieces;
                lows = Arrays.copyOf(lows, room);
                highs = Arrays.copyOf(highs, room);
                strings = Arrays.copyOf(strings, room);
                from = Arrays.copyOf(from, room);
                next = Arrays.copyOf(next, room);
                post = Arrays.copyOf(post, room);
            }
            lows[pieces] = low;
            highs[pieces] = high;
            strings[pieces] = count;
            from[pieces] = source;
            if (head[at] < 0) {
                first[at] = count;
            }
            next[pieces] = head[at];
            post[pieces] = at;
            head[at] = pieces++;
            newest[at] = count;
            firstFresh = Math.min(firstFresh, at);
            lastFresh = Math.max(lastFresh, at);
        }

        private boolean isReached(int at, double low, double high, int count) {
            double rest = low;
            while (true) {
                double to = Double.NEGATIVE_INFINITY;
                for (int piece = head[at]; piece >= 0; piece = next[piece]) {
                    if (strings[piece] <= count && lows[piece] <= rest + SAME) {
                        to = Math.max(to, highs[piece]);
                    }
                }
                if (to >= high - SAME) {
                    return true;
                }
                if (to <= rest + SAME) {
                    return false;
                }
                rest = to;
            }
        }

        /** Returns the last post whose every possible height is reached. */
        private int lastWhole(int before) {
            for (int at = lastFresh; at > before; at--) {
                int point = corridor.point(at);
                if (head[at] >= 0 && isReached(at, windows.lows[point], windows.highs[point], most)) {
                    return at;
                }
            }
            return before;
        }

        /** Goes back from the end, each string in the middle of what it may be. */
        private double[] back() {
            int piece = head[end];
            for (int other = piece; other >= 0; other = next[other]) {
                piece = highs[other] - lows[other] > highs[piece] - lows[piece] ? other : piece;
            }
            double[] heights = new double[end + 1];
            Arrays.fill(heights, Double.NaN);
            double height = (lows[piece] + highs[piece]) / 2;
            heights[end] = height;
            while (from[piece] >= 0) {
                height = backFrom(post[piece], height, from[piece]);
                piece = from[piece];
                heights[post[piece]] = height;
            }
            return heights;
        }

        private double backFrom(int at, double height, int source) {
            double x = corridor.station(corridor.point(at));
            int begin = corridor.point(post[source]);
            double run = x - corridor.station(begin);
            double least = (height - highs[source]) / run;
            double most = (height - lows[source]) / run;
            for (int point = begin + 1; point < corridor.point(at); point++) {
                double ahead = x - corridor.station(point);
                least = Math.max(least, (height - windows.highs[point]) / ahead);
                most = Math.min(most, (height - windows.lows[point]) / ahead);
            }
            double at0 = height - (least + most) / 2 * run;
            return Math.max(lows[source], Math.min(highs[source], at0));
        }
    }
}
