package org.fencecore.slope;

import java.util.Arrays;

/**
 * One search for strings in given windows: the heights over each post that can be reached with one string, with two, and
 * so on, each a piece between two heights, kept for each post as a linked list.
 *
 * <p>It begins from heights over one post or several, which may have taken strings already, and ends when a nail is
 * reached at a post that is far enough on. Nothing is begun from a post from which too many strings are still to go.
 */
final class StringSearch {

    /** Heights nearer than this are the same, in nanometres. */
    private static final double SAME = 1e-3;

    /** As many strings as that reach no post. */
    static final int NEVER = Integer.MAX_VALUE;

    /** How many strings may be used, how many are still to go from each post at the least, and how long one may be. */
    static final class Budget {
        private final int most;
        private final int[] toGo;
        private final double longest;

        /** Takes the strings, those to go from each post, and a length in nanometres. */
        Budget(int most, int[] toGo, double longest) {
            this.most = most;
            this.toGo = toGo;
            this.longest = longest;
        }

        /** Returns the budget of a stretch of posts. */
        Budget between(int begin, int end) {
            return new Budget(most, Arrays.copyOfRange(toGo, begin, end + 1), longest);
        }
    }

    private final Corridor corridor;
    private final Corridor.Windows windows;
    private final Budget budget;
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
    private int firstFresh = Integer.MAX_VALUE;
    private int lastFresh = -1;
    private int furthest;

    /** Prepares a search between these windows. */
    StringSearch(Corridor corridor, Corridor.Windows windows, Budget budget) {
        this.corridor = corridor;
        this.windows = windows;
        this.budget = budget;
        this.end = corridor.postCount() - 1;
        this.head = new int[end + 1];
        this.newest = new int[end + 1];
        this.first = new int[end + 1];
        Arrays.fill(head, -1);
        Arrays.fill(newest, -1);
        Arrays.fill(first, NEVER);
    }

    /** Searches from the first post to the last; returns whether the last is reached. */
    boolean reachesEnd() {
        return reaches(new int[] {0}, end);
    }

    /**
     * Collects what is reached with one string more at a time, until a post as far on as the goal is, or nothing new.
     *
     * @param taken how many strings have been taken to each of the first posts, increasing, or {@link #NEVER}
     */
    boolean reaches(int[] taken, int goal) {
        int last = taken.length - 1;
        while (last > 0 && taken[last] == NEVER) {
            last--;
        }
        int entered = 0;
        int begin = 0;
        for (int count = 0; count <= budget.most; count++) {
            int earliest = Math.max(begin, firstFresh);
            int latest = lastFresh;
            firstFresh = NEVER;
            lastFresh = -1;
            for (int at = latest; at >= earliest; at--) {
                if (newest[at] == count - 1) {
                    followAll(at, count);
                }
            }
            begin = lastWhole(begin);
            for (; entered <= last && (taken[entered] == NEVER || taken[entered] <= count); entered++) {
                enterWhole(entered, taken[entered]);
            }
            if (furthest >= goal) {
                return true;
            }
            if (entered > last && lastFresh < begin) {
                return false;
            }
        }
        return false;
    }

    private void enterWhole(int at, int count) {
        int point = corridor.point(at);
        if (count != NEVER && windows.lows[point] <= windows.highs[point]) {
            enter(at, windows.lows[point], windows.highs[point], -1, count);
        }
    }

    /** Returns how many strings it takes to each post, or {@link #NEVER}. */
    int[] fewest() {
        return first;
    }

    /** Returns the last post that a nail was reached at. */
    int furthest() {
        return furthest;
    }

    private boolean isTooLong(int at, int later) {
        return later > at + 1
                && corridor.station(corridor.point(later)) - corridor.station(corridor.point(at)) > budget.longest;
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
            if (budget.toGo[later] <= budget.most - count) {
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
            furthest = Math.max(furthest, at);
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
            if (head[at] >= 0 && isReached(at, windows.lows[point], windows.highs[point], budget.most)) {
                return at;
            }
        }
        return before;
    }

    /** Returns the heights of the nails of one way to the end, each string in the middle of what it may be; not a number elsewhere. */
    double[] heights() {
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
