package org.fencecore.geometry;

import java.util.Arrays;
import java.util.Optional;
import org.fencecore.geometry.exact.Exact;

/**
 * Looks for two sides of a boundary that meet where they should not. Every side is compared with those after it, but
 * sides that follow each other are dismissed a block at a time: they seldom are near a side elsewhere.
 */
final class SelfCrossingSearch {

    private static final int BLOCK = 64;

    private final Polygon boundary;
    private final int n;
    private final Boxes sides;
    private final Boxes blocks;

    private SelfCrossingSearch(Polygon boundary) {
        this.boundary = boundary;
        n = boundary.vertices().size();
        sides = new Boxes(n);
        blocks = new Boxes((n + BLOCK - 1) / BLOCK);
        for (int i = 0; i < n; i++) {
            Segment side = boundary.side(i);
            for (Point end : new Point[] {side.start(), side.end()}) {
                sides.cover(i, end);
                blocks.cover(i / BLOCK, end);
            }
        }
    }

    /** Boxes that cover points. */
    private static final class Boxes {

        private final long[] west;
        private final long[] east;
        private final long[] south;
        private final long[] north;

        Boxes(int count) {
            west = new long[count];
            east = new long[count];
            south = new long[count];
            north = new long[count];
            Arrays.fill(west, Long.MAX_VALUE);
            Arrays.fill(south, Long.MAX_VALUE);
            Arrays.fill(east, Long.MIN_VALUE);
            Arrays.fill(north, Long.MIN_VALUE);
        }

        void cover(int i, Point point) {
            west[i] = Math.min(west[i], point.x());
            east[i] = Math.max(east[i], point.x());
            south[i] = Math.min(south[i], point.y());
            north[i] = Math.max(north[i], point.y());
        }

        boolean meet(int i, Boxes others, int j) {
            return west[i] <= others.east[j]
                    && others.west[j] <= east[i]
                    && south[i] <= others.north[j]
                    && others.south[j] <= north[i];
        }
    }

    static Optional<SelfCrossing> first(Polygon boundary) {
        return new SelfCrossingSearch(boundary).first();
    }

    private Optional<SelfCrossing> first() {
        for (int i = 0; i < n - 1; i++) {
            for (int block = (i + 1) / BLOCK; block * BLOCK < n; block++) {
                if (sides.meet(i, blocks, block)) {
                    Optional<SelfCrossing> found = firstInBlock(i, block);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<SelfCrossing> firstInBlock(int i, int block) {
        int end = Math.min(n, (block + 1) * BLOCK);
        for (int j = Math.max(i + 1, block * BLOCK); j < end; j++) {
            if (sides.meet(i, sides, j)) {
                Optional<SelfCrossing> found = meeting(i, j);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
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

    /**
     * Returns a point of both: where they cross, or for sides that lie on each other an end that is on the other. The
     * start of b is not on a, or the side before b would have been found to touch a.
     */
    private static Point common(Segment a, Segment b) {
        return a.intersection(b).orElseGet(() -> a.contains(b.end()) ? b.end() : a.start());
    }
}
