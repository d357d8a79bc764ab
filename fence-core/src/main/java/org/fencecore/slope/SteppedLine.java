package org.fencecore.slope;

import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;

/**
 * Finds how high the level board bottoms of each bay of a stepped run stand.
 *
 * <p>A bay needs to stand the clearance over the ground at both its posts and the minimum over it in between. The
 * levels are the lowest that meet every bay's need and differ by whole increments: each bay's own is counted down from
 * the neediest bay, which stands exactly as high as it needs. Even steps are the ones whose staircase stands lowest at
 * the middle of the run, the smaller step where two are as good. Seen from the other end of the run both are the same.
 */
final class SteppedLine {

    private SteppedLine() {}

    /** Returns the level of each bay, with a step as high as needed at each post. */
    static long[] own(Profile ground, long[] stations, SlopeSpec spec) {
        long[] levels = needs(ground, stations, spec);
        long increment = spec.stepIncrement().nanometres();
        long top = Long.MIN_VALUE;
        for (long need : levels) {
            top = Math.max(top, need);
        }
        for (int bay = 0; bay < levels.length; bay++) {
            levels[bay] = top - (top - levels[bay]) / increment * increment;
        }
        return levels;
    }

    /** Returns the level of each bay, with the same step at every post. */
    static long[] even(Profile ground, long[] stations, SlopeSpec spec) {
        long[] needs = needs(ground, stations, spec);
        long increment = spec.stepIncrement().nanometres();
        long step = increment * bestCount(needs, increment);
        long first = first(needs, step);
        long[] levels = new long[needs.length];
        for (int bay = 0; bay < levels.length; bay++) {
            levels[bay] = first + bay * step;
        }
        return levels;
    }

    /** Returns how high a bay stands if it looks at no other. */
    private static long need(Profile ground, Length start, Length end, SlopeSpec spec) {
        Profile under = ground.between(start, end);
        Length atPosts = Length.max(ground.elevationAt(start), ground.elevationAt(end));
        ProfilePoint highest = under.highest();
        return Length.max(atPosts.plus(spec.clearance()), highest.elevation().plus(spec.minimumClearance()))
                .nanometres();
    }

    private static long[] needs(Profile ground, long[] stations, SlopeSpec spec) {
        long[] needs = new long[stations.length - 1];
        for (int bay = 0; bay < needs.length; bay++) {
            needs[bay] = need(ground, Length.ofNanometres(stations[bay]), Length.ofNanometres(stations[bay + 1]), spec);
        }
        return needs;
    }

    /** Returns the lowest level of the first bay from which steps of this size meet every need. */
    private static long first(long[] needs, long step) {
        long first = Long.MIN_VALUE;
        for (int bay = 0; bay < needs.length; bay++) {
            first = Math.max(first, needs[bay] - bay * step);
        }
        return first;
    }

    /**
     * Returns how many increments an even step has. Twice the level at the middle of the run is a convex function of the
     * step, so halving finds both ends of the stretch where it is least.
     */
    private static long bestCount(long[] needs, long increment) {
        long most = 1;
        for (int bay = 1; bay < needs.length; bay++) {
            most = Math.max(most, Math.abs(needs[bay] - needs[bay - 1]) / increment + 1);
        }
        long least = turn(needs, increment, -most, most, 0);
        long last = turn(needs, increment, -most, most, 1);
        return Math.max(least, Math.min(last, 0));
    }

    /** Returns the first count from which one more increment raises the middle by {@code rise} or more. */
    private static long turn(long[] needs, long increment, long from, long to, long rise) {
        long low = from;
        long high = to;
        while (low < high) {
            long count = Math.floorDiv(low + high, 2);
            long gain = middle(needs, increment * (count + 1)) - middle(needs, increment * count);
            if (gain >= rise) {
                high = count;
            } else {
                low = count + 1;
            }
        }
        return low;
    }

    private static long middle(long[] needs, long step) {
        return Math.addExact(2 * first(needs, step), Math.multiplyExact(step, needs.length - 1L));
    }
}
