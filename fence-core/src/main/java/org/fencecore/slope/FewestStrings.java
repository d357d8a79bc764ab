package org.fencecore.slope;

import java.util.Arrays;
import org.fencecore.geometry.ground.Profile;
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
 * <p>The least difference of the gaps is found by trial, to a thousandth of a millimetre. A trial with too little room
 * fails at some post; halving over a stretch round that post alone, from whatever post before it and with whatever
 * strings a solution may have left there, gives the least room that the stretch asks for, which the whole run needs too
 * and which mostly is enough for it. The strings are then hung so that the middle of their gaps is the clearance, as far
 * as minimum and maximum allow. It is worked out from the lower end of the run, so that it comes out the same whichever
 * end is called first.
 */
final class FewestStrings {

    /** Room within this is the same, a thousandth of a millimetre. */
    private static final long FINE = 1_000;

    /** Where no stretch tells, this much room is tried first, and four times as much the next time. */
    private static final long FIRST_STEP = 4 * FINE;

    /** A stretch round the post where a trial fails goes at first so many times as far as a string can, either way. */
    private static final int STRETCH = 4;

    private final Corridor corridor;
    private final double minimum;
    private final double longest;
    private final int longestBays;

    /** The windows over a stretch of ground for some room, in nanometres. */
    private interface Room {
        Corridor.Windows over(Corridor ground, double room);
    }

    /** The heights of the nails over the ground at the first post, and the room that they were found with. */
    private static final class Strings {
        final double[] heights;
        final double room;

        /** Takes a height for each post, not a number where there is no nail. */
        Strings(double[] heights, double room) {
            this.heights = heights;
            this.room = room;
        }
    }

    private FewestStrings(Corridor corridor, SlopeSpec spec) {
        this.corridor = corridor;
        this.minimum = spec.minimumClearance().nanometres();
        this.longest = spec.longestString().nanometres();
        this.longestBays = corridor.mostBaysWithin(longest);
    }

    /** Returns the elevation of the board bottoms at each post that has a nail, and {@link Long#MIN_VALUE} at others. */
    static long[] nails(Profile ground, long[] stations, SlopeSpec spec) {
        Corridor ahead = Corridor.under(ground, stations);
        boolean backward = ahead.isBackward();
        Corridor corridor = backward ? ahead.reversed() : ahead;
        long span = spec.maximumClearance().minus(spec.minimumClearance()).nanometres();
        FewestStrings search = new FewestStrings(corridor, spec);
        corridor.openWhereNeeded(search.minimum, search.minimum + span);
        Tightening tightening = search.new Tightening(span);
        Strings fewest = tightening.leastSpread();
        long spread = Math.round(fewest.room);
        if (corridor.isOpen()) {
            fewest = tightening.lowestOverOpenings(fewest.room);
        }
        long lowest = spec.minimumClearance().nanometres();
        long hung = Math.max(lowest, Math.min(spec.clearance().nanometres() - spread / 2, lowest + span - spread));
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

    /** Takes room away from the strings for as long as no more of them are needed. */
    private final class Tightening {

        private final StringSearch.Budget budget;
        private final double span;
        /** How many strings it takes to each post at the least, with the least room known to do. */
        private int[] taken;

        private final double[] widest;
        private int failedAt;

        /** Searches with all the room there is, from the far end and then from the near one. */
        Tightening(long span) {
            this.span = span;
            Corridor mirror = corridor.reversed();
            Corridor.Windows windows = mirror.windows(minimum, minimum + span, Corridor.OPEN);
            mirror.narrow(windows);
            int posts = corridor.postCount();
            StringSearch back =
                    new StringSearch(mirror, windows, new StringSearch.Budget(posts, new int[posts], longest));
            back.reachesEnd();
            int[] toGo = new int[posts];
            Arrays.setAll(toGo, post -> back.fewest()[posts - 1 - post]);
            this.budget = new StringSearch.Budget(toGo[0], toGo, longest);
            StringSearch ahead = searched(spread(), this.span);
            if (ahead == null) {
                throw new IllegalStateException("no strings over ground that was opened for them");
            }
            this.taken = ahead.fewest();
            this.widest = ahead.heights();
        }

        /** The same room everywhere, and no maximum where it is given up. */
        private Room spread() {
            return (ground, room) -> ground.windows(minimum, minimum + room, Corridor.OPEN);
        }

        /** Returns the strings whose gaps differ least. */
        Strings leastSpread() {
            return least(0, new Strings(widest, span), spread());
        }

        /** Where the maximum is given up, the gaps are still as small as they can be. */
        Strings lowestOverOpenings(double spread) {
            Room room = (ground, highest) -> ground.windows(minimum, minimum + spread, highest);
            StringSearch open = searched(room, Corridor.OPEN);
            if (open == null) {
                throw new IllegalStateException("no strings with the spread they were found with");
            }
            return least(minimum + spread, new Strings(open.heights(), Corridor.OPEN), room);
        }

        /** Returns strings with the least room; this much is the least there can be, and that much is known to do. */
        private Strings least(double none, Strings known, Room room) {
            Strings best = known;
            double tooLittle = none;
            double trial = none;
            double step = FIRST_STEP;
            while (true) {
                StringSearch found = searched(room, trial);
                if (found == null) {
                    tooLittle = trial;
                } else {
                    best = new Strings(found.heights(), trial);
                    taken = found.fewest();
                }
                if (best.room - tooLittle <= FINE) {
                    return best;
                }
                double asked = askedRound(failedAt, tooLittle, best.room, room);
                if (asked > tooLittle) {
                    tooLittle = asked;
                    trial = Math.min(asked + FINE, best.room);
                } else {
                    trial = Math.min(tooLittle + step, middle(tooLittle, best.room));
                    step *= 4;
                }
            }
        }

        /** Returns the most room that is too little for a stretch round a post, no less than what is known to be. */
        private double askedRound(int post, double tooLittle, double enough, Room room) {
            int last = corridor.postCount() - 1;
            for (int reach = STRETCH * longestBays; reach < last / 4; reach *= 4) {
                int begin = Math.max(0, post - reach);
                int end = Math.min(last, post + reach);
                if (passes(begin, end, room, tooLittle)) {
                    continue;
                }
                double low = tooLittle;
                double high = enough;
                while (high - low > FINE) {
                    double middle = middle(low, high);
                    if (passes(begin, end, room, middle)) {
                        high = middle;
                    } else {
                        low = middle;
                    }
                }
                return low;
            }
            return tooLittle;
        }

        /**
         * Tells whether strings pass a stretch of posts. Any solution has its last nail before the first string's length
         * is over at one of the posts up to there, after no fewer strings than are taken with more room.
         */
        private boolean passes(int begin, int end, Room room, double trial) {
            Corridor stretch = corridor.between(begin, end);
            Corridor.Windows windows = room.over(stretch, trial);
            if (!stretch.narrow(windows)) {
                return false;
            }
            int entry = begin == 0 ? 0 : longestBays;
            int goal = end == corridor.postCount() - 1 ? end : end - longestBays;
            int[] begun = Arrays.copyOfRange(taken, begin, begin + entry + 1);
            return new StringSearch(stretch, windows, budget.between(begin, end)).reaches(begun, goal - begin);
        }

        private @Nullable StringSearch searched(Room room, double trial) {
            Corridor.Windows windows = room.over(corridor, trial);
            int broken = corridor.firstBroken(windows);
            if (broken >= 0) {
                failedAt = broken;
                return null;
            }
            StringSearch search = new StringSearch(corridor, windows, budget);
            if (search.reachesEnd()) {
                return search;
            }
            failedAt = search.furthest();
            return null;
        }
    }

    /** Between a metre and an unheard-of height, halving the exponent is faster. */
    private static double middle(double low, double high) {
        return high > 1e9 ? Math.sqrt(Math.max(low, 1e6) * high) : (low + high) / 2;
    }
}
