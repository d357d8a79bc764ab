package org.fencecore.slope;

import java.util.Comparator;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;
import org.fencecore.geometry.ground.Profile;

/**
 * Finds how high the board bottoms of a racked run stand at its posts: at the clearance over the ground, lifted where a
 * high spot between two posts would come nearer than the minimum.
 *
 * <p>A bay's need is how far its line, lifted alike at both posts, must rise to clear its high spots. Bays are lifted
 * in order of need, the neediest first. Each lifts both its posts to its need; but where one of them already stands
 * higher than that for a needier neighbour, the other is lifted only as far as is still lacking.
 *
 * <p>Why every bay ends up clear: a bay is clear once its turn is over, and from then on posts only go up, which takes
 * nothing from any gap.
 *
 * <p>Why no post could stand lower: a post gets its last lift in the turn of some bay, which has then no more than its
 * minimum at some high spot. Its other post has at least that bay's need by then, and later turns lift no post beyond
 * their own lesser need. So both posts stay as they are, and taking the post down would lose the minimum there.
 *
 * <p>Why the answer does not hang on the direction of the run: among neighbours of equal need no turn lifts the post
 * they share beyond that need, so none of them finds it "higher than that", whoever comes first.
 */
final class RackedLine {

    private final Profile ground;
    private final long[] stations;
    private final long[] resting;
    private final long[] lifts;
    private final long minimum;

    private RackedLine(Profile ground, long[] stations, long[] grounds, SlopeSpec spec) {
        this.ground = ground;
        this.stations = stations;
        this.minimum = spec.minimumClearance().nanometres();
        this.lifts = new long[stations.length];
        this.resting = new long[stations.length];
        for (int post = 0; post < stations.length; post++) {
            resting[post] = Math.addExact(grounds[post], spec.clearance().nanometres());
        }
    }

    /**
     * Returns the elevation of the board bottoms at each post.
     *
     * @param grounds the elevation of the ground at each post
     */
    static long[] bottoms(Profile ground, long[] stations, long[] grounds, SlopeSpec spec) {
        RackedLine line = new RackedLine(ground, stations, grounds, spec);
        line.clearHighSpots();
        long[] bottoms = line.resting;
        for (int post = 0; post < bottoms.length; post++) {
            bottoms[post] += line.lifts[post];
        }
        return bottoms;
    }

    private void clearHighSpots() {
        long[] needs = new long[stations.length - 1];
        for (int bay = 0; bay < needs.length; bay++) {
            needs[bay] = minimum - leastGap(bay, 0, 0);
        }
        IntStream.range(0, needs.length)
                .filter(bay -> needs[bay] > 0)
                .boxed()
                .sorted(Comparator.comparingLong(bay -> -needs[bay]))
                .forEach(bay -> lift(bay, needs[bay]));
    }

    private void lift(int bay, long need) {
        long left = lifts[bay];
        long right = lifts[bay + 1];
        lifts[bay] =
                right > need ? least(left, need, lift -> leastGap(bay, lift, right) >= minimum) : Math.max(left, need);
        lifts[bay + 1] =
                left > need ? least(right, need, lift -> leastGap(bay, left, lift) >= minimum) : Math.max(right, need);
    }

    /** Returns the least lift from {@code from} up that clears, where {@code enough} is known to: by halving, exact. */
    private static long least(long from, long enough, LongPredicate clears) {
        long low = from;
        long high = enough;
        while (low < high) {
            long middle = low + (high - low) / 2;
            if (clears.test(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private long leastGap(int bay, long leftLift, long rightLift) {
        return new FittedBay(
                        Treatment.RACKED,
                        ground,
                        stations[bay],
                        resting[bay] + leftLift,
                        stations[bay + 1],
                        resting[bay + 1] + rightLift)
                .clearance()
                .min()
                .nanometres();
    }
}
