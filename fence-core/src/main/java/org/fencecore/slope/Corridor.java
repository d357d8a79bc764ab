package org.fencecore.slope;

import java.util.Arrays;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;

/**
 * The ground under a run as plain numbers: its posts and every break between them, nanometres in floating point counted
 * from the ground at the first post, with room for a line between two heights over each point.
 *
 * <p>Where no line from post to post keeps both the minimum and the maximum over a bay, the maximum is given up there and
 * at its two posts; the minimum never is.
 */
final class Corridor {

    /** Rounding to whole nanometres may not decide whether a string fits. */
    private static final double SLACK = 0.5;

    /** Higher than any fence: no maximum. */
    static final double OPEN = 1e13;

    private final double[] stations;
    private final double[] ground;
    private final int[] posts;
    private final boolean[] open;
    private int openings;

    private Corridor(double[] stations, double[] ground, int[] posts) {
        this.stations = stations;
        this.ground = ground;
        this.posts = posts;
        this.open = new boolean[stations.length];
    }

    /** Takes the ground under posts at these stations. */
    static Corridor under(Profile profile, long[] posts) {
        int last = posts.length - 1;
        Profile under = profile.between(Length.ofNanometres(posts[0]), Length.ofNanometres(posts[last]));
        int shots = under.points().size();
        double[] stations = new double[shots + posts.length];
        double[] heights = new double[shots + posts.length];
        int[] indices = new int[posts.length];
        long base = under.points().get(0).elevation().nanometres();
        int size = 0;
        int post = 0;
        for (ProfilePoint shot : under.points()) {
            long at = shot.station().nanometres();
            while (post <= last && posts[post] < at) {
                indices[post] = size;
                stations[size] = posts[post] - posts[0];
                heights[size++] =
                        profile.elevationAt(Length.ofNanometres(posts[post])).nanometres() - base;
                post++;
            }
            if (post <= last && posts[post] == at) {
                indices[post] = size;
                post++;
            }
            stations[size] = at - posts[0];
            heights[size++] = shot.elevation().nanometres() - base;
        }
        return new Corridor(Arrays.copyOf(stations, size), Arrays.copyOf(heights, size), indices);
    }

    /** Returns the same ground seen from its other end. */
    Corridor reversed() {
        int size = stations.length;
        double[] s = new double[size];
        double[] g = new double[size];
        int[] p = new int[posts.length];
        for (int i = 0; i < size; i++) {
            s[i] = stations[size - 1] - stations[size - 1 - i];
            g[i] = ground[size - 1 - i] - ground[size - 1];
        }
        for (int post = 0; post < p.length; post++) {
            p[post] = size - 1 - posts[p.length - 1 - post];
        }
        Corridor reversed = new Corridor(s, g, p);
        for (int i = 0; i < size; i++) {
            reversed.open[i] = open[size - 1 - i];
        }
        return reversed;
    }

    /**
     * Tells whether the other end comes first: the lower one does, as a crew begins; on ground that is as high at both
     * ends the first difference going inwards decides. Ground that is its own mirror is the same from either end.
     */
    boolean isBackward() {
        int size = stations.length;
        for (int i = 0; i < size / 2; i++) {
            int other = size - 1 - i;
            int heights = Double.compare(ground[i], ground[other]);
            if (heights != 0) {
                return heights > 0;
            }
            int lengths = Double.compare(stations[i + 1] - stations[i], stations[other] - stations[other - 1]);
            if (lengths != 0) {
                return lengths > 0;
            }
        }
        return false;
    }

    /** Returns a stretch of it, from post to post. */
    Corridor between(int begin, int end) {
        int from = posts[begin];
        int to = posts[end] + 1;
        int[] p = Arrays.copyOfRange(posts, begin, end + 1);
        for (int post = 0; post < p.length; post++) {
            p[post] -= from;
        }
        Corridor stretch =
                new Corridor(Arrays.copyOfRange(stations, from, to), Arrays.copyOfRange(ground, from, to), p);
        System.arraycopy(open, from, stretch.open, 0, to - from);
        return stretch;
    }

    /** Returns how many bays there are within some length at the most, and one at the least. */
    int mostBaysWithin(double length) {
        int most = 1;
        int begin = 0;
        for (int end = 0; end < posts.length; end++) {
            while (stations[posts[end]] - stations[posts[begin]] > length) {
                begin++;
            }
            most = Math.max(most, end - begin);
        }
        return most;
    }

    int postCount() {
        return posts.length;
    }

    /** Returns which point a post is. */
    int point(int post) {
        return posts[post];
    }

    double station(int point) {
        return stations[point];
    }

    /** Tells whether the maximum is given up anywhere. */
    boolean isOpen() {
        return openings > 0;
    }

    /** Returns how low and how high a line may pass over each point. */
    Windows windows(double minimum, double maximum, double openMaximum) {
        double[] lows = new double[ground.length];
        double[] highs = new double[ground.length];
        for (int point = 0; point < ground.length; point++) {
            lows[point] = ground[point] + minimum - SLACK;
            highs[point] = ground[point] + (open[point] ? openMaximum : maximum) + SLACK;
        }
        return new Windows(lows, highs);
    }

    /** How low and how high a line may pass over each point. */
    static final class Windows {
        final double[] lows;
        final double[] highs;

        private Windows(double[] lows, double[] highs) {
            this.lows = lows;
            this.highs = highs;
        }
    }

    /** Gives the maximum up where it cannot be kept, alike from either end. */
    void openWhereNeeded(double minimum, double maximum) {
        boolean[] ahead = sweep(minimum, maximum);
        boolean[] back = reversed().sweep(minimum, maximum);
        for (int bay = 0; bay < ahead.length; bay++) {
            if (ahead[bay] || back[back.length - 1 - bay]) {
                Arrays.fill(open, posts[bay], posts[bay + 1] + 1, true);
                openings++;
            }
        }
    }

    /** Goes along bay by bay and tells which to open: where no line is left, it is opened and entered anew. */
    private boolean[] sweep(double minimum, double maximum) {
        boolean[] opened = new boolean[posts.length - 1];
        Windows windows = windows(minimum, maximum, OPEN);
        LineReach reach = new LineReach();
        double[][] ends = ends(windows);
        for (int bay = 0; bay < opened.length; bay++) {
            if (passBay(reach, bay, windows, ends)) {
                continue;
            }
            opened[bay] = true;
            for (int point = posts[bay]; point <= posts[bay + 1]; point++) {
                windows.highs[point] = ground[point] + OPEN;
            }
            if (bay == 0) {
                ends[1][0] = windows.highs[0];
            } else {
                passBay(reach, bay - 1, windows, ends);
            }
            passBay(reach, bay, windows, ends);
        }
        return opened;
    }

    /**
     * Narrows the windows at the posts to the heights that some unbroken line with a bend at every post can pass on its
     * way from one end to the other; returns whether there is such a line.
     */
    boolean narrow(Windows windows) {
        return firstBroken(windows) < 0;
    }

    /** Narrows the windows as {@link #narrow} does; returns the bay where no line is left, or -1. */
    int firstBroken(Windows windows) {
        LineReach reach = new LineReach();
        double[][] ahead = ends(windows);
        for (int bay = 0; bay < posts.length - 1; bay++) {
            if (!passBay(reach, bay, windows, ahead)) {
                return bay;
            }
        }
        int last = posts[posts.length - 1];
        double low = ahead[0][posts.length - 1];
        double high = ahead[1][posts.length - 1];
        windows.lows[last] = low;
        windows.highs[last] = high;
        for (int bay = posts.length - 2; bay >= 0; bay--) {
            // Back from the end of the bay: stations are taken negative, so that they increase.
            reach.begin(-stations[posts[bay + 1]], low, high);
            for (int point = posts[bay + 1] - 1; point > posts[bay]; point--) {
                if (!reach.pass(-stations[point], windows.lows[point], windows.highs[point])) {
                    return bay;
                }
            }
            int post = posts[bay];
            if (!reach.pass(-stations[post], ahead[0][bay], ahead[1][bay])) {
                return bay;
            }
            low = Math.max(ahead[0][bay], reach.lowest(-stations[post]));
            high = Math.min(ahead[1][bay], reach.highest(-stations[post]));
            windows.lows[post] = low;
            windows.highs[post] = high;
        }
        return -1;
    }

    private double[][] ends(Windows windows) {
        double[][] ends = new double[2][posts.length];
        ends[0][0] = windows.lows[0];
        ends[1][0] = windows.highs[0];
        return ends;
    }

    private boolean passBay(LineReach reach, int bay, Windows windows, double[][] ends) {
        reach.begin(stations[posts[bay]], ends[0][bay], ends[1][bay]);
        for (int point = posts[bay] + 1; point <= posts[bay + 1]; point++) {
            if (!reach.pass(stations[point], windows.lows[point], windows.highs[point])) {
                return false;
            }
        }
        int end = posts[bay + 1];
        ends[0][bay + 1] = Math.max(windows.lows[end], reach.lowest(stations[end]));
        ends[1][bay + 1] = Math.min(windows.highs[end], reach.highest(stations[end]));
        return true;
    }
}
