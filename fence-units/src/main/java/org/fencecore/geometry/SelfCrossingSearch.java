package org.fencecore.geometry;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Looks for two sides of a boundary that meet where they should not. Going from west to east it compares each side only
 * with those that begin before it ends.
 */
final class SelfCrossingSearch {

    private final Polygon boundary;
    private final int n;
    private final long[] west;
    private final long[] east;
    private final long[] south;
    private final long[] north;

    private SelfCrossingSearch(Polygon boundary) {
        this.boundary = boundary;
        n = boundary.vertices().size();
        west = new long[n];
        east = new long[n];
        south = new long[n];
        north = new long[n];
        for (int i = 0; i < n; i++) {
            Segment side = boundary.side(i);
            west[i] = Math.min(side.start().x(), side.end().x());
            east[i] = Math.max(side.start().x(), side.end().x());
            south[i] = Math.min(side.start().y(), side.end().y());
            north[i] = Math.max(side.start().y(), side.end().y());
        }
    }

    static Optional<SelfCrossing> first(Polygon boundary) {
        return new SelfCrossingSearch(boundary).first();
    }

    private Optional<SelfCrossing> first() {
        int[] fromWest = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparingLong(i -> west[i]))
                .mapToInt(i -> i)
                .toArray();
        Optional<SelfCrossing> lowest = Optional.empty();
        int lowestSide = n;
        int lowestOther = n;
        for (int a = 0; a < n; a++) {
            int one = fromWest[a];
            for (int b = a + 1; b < n && west[fromWest[b]] <= east[one]; b++) {
                int two = fromWest[b];
                int i = Math.min(one, two);
                int j = Math.max(one, two);
                boolean near = south[i] <= north[j] && south[j] <= north[i];
                if (near && (i < lowestSide || (i == lowestSide && j < lowestOther))) {
                    Optional<SelfCrossing> found = meeting(i, j);
                    if (found.isPresent()) {
                        lowest = found;
                        lowestSide = i;
                        lowestOther = j;
                    }
                }
            }
        }
        return lowest;
    }

    private Optional<SelfCrossing> meeting(int i, int j) {
        Segment a = boundary.side(i);
        Segment b = boundary.side(j);
        if (j == i + 1) {
            return doublesBack(a, b) ? Optional.of(new SelfCrossing(i, j, a.end())) : Optional.empty();
        }
        if (i == 0 && j == n - 1) {
            return doublesBack(b, a) ? Optional.of(new SelfCrossing(i, j, a.start())) : Optional.empty();
        }
        return a.touches(b) ? Optional.of(new SelfCrossing(i, j, common(a, b))) : Optional.empty();
    }

    /** Neighbours share a vertex; they meet elsewhere too only if the second runs back along the first. */
    private static boolean doublesBack(Segment first, Segment second) {
        boolean inLine = Exact.crossSign(first.dx(), first.dy(), second.dx(), second.dy()) == 0;
        return inLine && (first.contains(second.end()) || second.contains(first.start()));
    }

    /** Returns a point of both: where they cross, or for sides that lie on each other an end that is on the other. */
    private static Point common(Segment a, Segment b) {
        return a.intersection(b)
                .orElseGet(() -> a.contains(b.start()) ? b.start() : a.contains(b.end()) ? b.end() : a.start());
    }
}
