package org.fencecore.geometry;

import java.util.List;
import java.util.Optional;

/** Looks for two sides of a boundary that meet where they should not: every pair, nearly all of them dismissed at once. */
final class SelfCrossingSearch {

    private SelfCrossingSearch() {}

    static Optional<SelfCrossing> first(Polygon boundary) {
        List<Point> vertices = boundary.vertices();
        int n = vertices.size();
        long[] west = new long[n];
        long[] east = new long[n];
        long[] south = new long[n];
        long[] north = new long[n];
        for (int i = 0; i < n; i++) {
            Segment side = boundary.side(i);
            west[i] = Math.min(side.start().x(), side.end().x());
            east[i] = Math.max(side.start().x(), side.end().x());
            south[i] = Math.min(side.start().y(), side.end().y());
            north[i] = Math.max(side.start().y(), side.end().y());
        }
        for (int i = 0; i < n - 1; i++) {
            for (int j = i + 1; j < n; j++) {
                boolean near = west[i] <= east[j] && west[j] <= east[i] && south[i] <= north[j] && south[j] <= north[i];
                if (near) {
                    Optional<SelfCrossing> found = meeting(boundary, i, j);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<SelfCrossing> meeting(Polygon boundary, int i, int j) {
        int n = boundary.vertices().size();
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
