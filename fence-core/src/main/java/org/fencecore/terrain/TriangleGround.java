package org.fencecore.terrain;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.IntConsumer;

/** Flat triangles between shots, in nanometres. */
final class TriangleGround implements Piecewise {

    private final long[] x;
    private final long[] y;
    private final long[] z;
    private final Triangulation triangles;
    private final int[] outline; // the sides that have no neighbour
    private final TriangleIndex index;
    private final long reach;

    private TriangleGround(
            long[] x, long[] y, long[] z, Triangulation triangles, int[] outline, TriangleIndex index, long reach) {
        this.x = x;
        this.y = y;
        this.z = z;
        this.triangles = triangles;
        this.outline = outline;
        this.index = index;
        this.reach = reach;
    }

    /** How far off a place or line a shot still counts as on it. */
    long reach() {
        return reach;
    }

    /**
     * Joins shots into triangles.
     *
     * @param x distances east, within 10^15 of each other
     * @param y distances north, within 10^15 of each other; no two places the same, each east of the one before or north
     *     of it at the same x
     * @param z heights
     * @param reach how far off a place or line a shot still counts as on it
     * @return the ground, without triangles if all places are in line
     */
    static TriangleGround of(long[] x, long[] y, long[] z, long reach) {
        long step = 0; // shots are read to a step, as 0.01 ft; in such steps the coordinates are small numbers
        for (int i = 1; i < x.length; i++) {
            step = commonStep(step, x[i] - x[0]);
            step = commonStep(step, y[i] - y[0]);
        }
        Triangulation triangles = Delaunay.of(steps(x, step), steps(y, step));
        int[] outline = new int[triangles.sides()];
        int count = 0;
        for (int side = 0; side < triangles.sides(); side++) {
            if (triangles.twin(side) == Triangulation.OUTSIDE) {
                outline[count++] = side;
            }
        }
        TriangleIndex index = TriangleIndex.of(x, y, triangles);
        return new TriangleGround(x, y, z, triangles, Arrays.copyOf(outline, count), index, reach);
    }

    private static long commonStep(long a, long b) {
        long greater = Math.abs(a);
        long smaller = Math.abs(b);
        while (smaller != 0) {
            long rest = greater % smaller;
            greater = smaller;
            smaller = rest;
        }
        return greater;
    }

    private static long[] steps(long[] values, long step) {
        long[] steps = new long[values.length];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = (values[i] - values[0]) / step;
        }
        return steps;
    }

    TriangleGround withReach(long newReach) {
        return new TriangleGround(x, y, z, triangles, outline, index, newReach);
    }

    Triangulation triangles() {
        return triangles;
    }

    @Override
    public OptionalLong heightAt(long px, long py) {
        int side = sideAt(px, py);
        boolean outside = triangles.twin(side) == Triangulation.OUTSIDE && isRightOf(side, px, py);
        if (outside) {
            side = nearestOutline(px, py);
            if (distance(side, px, py) > reach) {
                return OptionalLong.empty();
            }
        }
        int shot = shotAt(side / 3, px, py);
        if (shot >= 0) {
            return OptionalLong.of(z[shot]);
        }
        return OptionalLong.of(outside ? heightOnSide(side, px, py) : heightWithin(side, px, py));
    }

    /** Returns a side of the triangle that holds a place, or an outer side that has the place on its outside. */
    private int sideAt(long px, long py) {
        int triangle = index.near(px, py);
        int cameBy = Triangulation.OUTSIDE;
        while (true) {
            int across = Triangulation.OUTSIDE;
            for (int side = 3 * triangle; side < 3 * triangle + 3; side++) {
                if (side != cameBy && isRightOf(side, px, py)) {
                    if (triangles.twin(side) == Triangulation.OUTSIDE) {
                        return side;
                    }
                    across = side;
                }
            }
            if (across == Triangulation.OUTSIDE) {
                return 3 * triangle;
            }
            cameBy = triangles.twin(across);
            triangle = cameBy / 3;
        }
    }

    private boolean isRightOf(int side, long px, long py) {
        int a = triangles.start(side);
        int b = triangles.end(side);
        return Predicates.turn(x[a], y[a], x[b], y[b], px, py) < 0;
    }

    private int nearestOutline(long px, long py) {
        int nearest = outline[0];
        double least = Double.POSITIVE_INFINITY;
        for (int side : outline) {
            double distance = distance(side, px, py);
            if (distance < least) {
                least = distance;
                nearest = side;
            }
        }
        return nearest;
    }

    private double distance(int side, long px, long py) {
        int a = triangles.start(side);
        int b = triangles.end(side);
        return Near.toLine(px, py, x[a], y[a], x[b], y[b]);
    }

    /** Returns the shot nearest to a place in or beside a triangle, or -1 if none is within reach. */
    private int shotAt(int triangle, long px, long py) {
        int side = 3 * triangle;
        if (distance(side, px, py) > reach
                && distance(side + 1, px, py) > reach
                && distance(side + 2, px, py) > reach) {
            return -1; // all other shots are behind these sides
        }
        int[] nearest = {-1};
        double[] least = {reach};
        around(triangle, px, py, px, py, near -> {
            int shot = triangles.start(near);
            double distance = distanceOf(shot, px, py);
            if (distance < least[0] || (distance == least[0] && (nearest[0] < 0 || shot < nearest[0]))) {
                least[0] = distance;
                nearest[0] = shot;
            }
        });
        return nearest[0];
    }

    private long heightWithin(int side, long px, long py) {
        int a = triangles.start(side);
        int b = triangles.end(side);
        int c = triangles.opposite(side);
        double bx = (double) (x[b] - x[a]);
        double by = (double) (y[b] - y[a]);
        double cx = (double) (x[c] - x[a]);
        double cy = (double) (y[c] - y[a]);
        double dx = (double) (px - x[a]);
        double dy = (double) (py - y[a]);
        double area = bx * cy - by * cx;
        double partB = (dx * cy - dy * cx) / area;
        double partC = (bx * dy - by * dx) / area;
        return z[a] + Math.round(partB * (z[b] - z[a]) + partC * (z[c] - z[a]));
    }

    private long heightOnSide(int side, long px, long py) {
        int a = triangles.start(side);
        int b = triangles.end(side);
        double bx = (double) (x[b] - x[a]);
        double by = (double) (y[b] - y[a]);
        double along = ((px - x[a]) * bx + (py - y[a]) * by) / (bx * bx + by * by);
        return z[a] + Math.round(Math.max(0, Math.min(1, along)) * (z[b] - z[a]));
    }

    @Override
    public void addBreaks(long ax, long ay, long bx, long by, Breaks breaks) {
        double dx = (double) (bx - ax);
        double dy = (double) (by - ay);
        double length = Math.hypot(dx, dy);
        int start = sideAt(ax, ay);
        if (triangles.twin(start) == Triangulation.OUTSIDE && isRightOf(start, ax, ay)) {
            start = nearestOutline(ax, ay);
        }
        around(start / 3, ax, ay, bx, by, side -> {
            if (side < triangles.twin(side)) {
                return; // the neighbour's
            }
            int p = triangles.start(side);
            int q = triangles.end(side);
            boolean onP = Near.toLine(x[p], y[p], ax, ay, bx, by) <= reach;
            boolean onQ = Near.toLine(x[q], y[q], ax, ay, bx, by) <= reach;
            if (onP && !isAt(p, ax, ay) && !isAt(p, bx, by)) { // an end has its height from a shot at it
                breaks.add(along(p, ax, ay, dx, dy) / length, (double) z[p], true);
            }
            if (onQ && !isAt(q, ax, ay) && !isAt(q, bx, by)) {
                breaks.add(along(q, ax, ay, dx, dy) / length, (double) z[q], true);
            }
            if (onP || onQ) {
                return; // the edge only leads to that shot
            }
            double offP = dx * (y[p] - ay) - dy * (x[p] - ax);
            double offQ = dx * (y[q] - ay) - dy * (x[q] - ax);
            if (offP < 0 != offQ < 0) {
                double part = offP / (offP - offQ);
                double from = along(p, ax, ay, dx, dy) / length;
                double to = along(q, ax, ay, dx, dy) / length;
                breaks.add(from + part * (to - from), z[p] + part * (z[q] - z[p]), false);
            }
        });
    }

    private boolean isAt(int shot, long px, long py) {
        return distanceOf(shot, px, py) <= reach;
    }

    private double distanceOf(int shot, long px, long py) {
        return Math.hypot((double) (x[shot] - px), (double) (y[shot] - py));
    }

    private double along(int shot, long ax, long ay, double dx, double dy) {
        return (x[shot] - ax) * dx + (y[shot] - ay) * dy;
    }

    /** Hands over every side within reach of the straight line from a to b, from both triangles, beginning at one. */
    private void around(int first, long ax, long ay, long bx, long by, IntConsumer sides) {
        Set<Integer> seen = new HashSet<>();
        Deque<Integer> next = new ArrayDeque<>();
        seen.add(first);
        next.add(first);
        while (!next.isEmpty()) {
            int triangle = next.remove();
            for (int side = 3 * triangle; side < 3 * triangle + 3; side++) {
                if (!isWithinReach(side, ax, ay, bx, by)) {
                    continue;
                }
                sides.accept(side);
                int twin = triangles.twin(side);
                if (twin != Triangulation.OUTSIDE && seen.add(twin / 3)) {
                    next.add(twin / 3);
                }
            }
        }
    }

    private boolean isWithinReach(int side, long ax, long ay, long bx, long by) {
        int p = triangles.start(side);
        int q = triangles.end(side);
        boolean crosses = Predicates.turn(ax, ay, bx, by, x[p], y[p]) * Predicates.turn(ax, ay, bx, by, x[q], y[q]) <= 0
                && Predicates.turn(x[p], y[p], x[q], y[q], ax, ay) * Predicates.turn(x[p], y[p], x[q], y[q], bx, by)
                        <= 0
                && (ax != bx || ay != by);
        return crosses
                || distance(side, ax, ay) <= reach
                || distance(side, bx, by) <= reach
                || Near.toLine(x[p], y[p], ax, ay, bx, by) <= reach
                || Near.toLine(x[q], y[q], ax, ay, bx, by) <= reach;
    }

    @Override
    public double[] clip(long ax, long ay, long bx, long by) {
        double from = 0;
        double to = 1;
        for (int side : outline) {
            int p = triangles.start(side);
            int q = triangles.end(side);
            double dx = (double) (x[q] - x[p]);
            double dy = (double) (y[q] - y[p]);
            double insideA = dx * (ay - y[p]) - dy * (ax - x[p]);
            double insideB = dx * (by - y[p]) - dy * (bx - x[p]);
            if (insideA < 0 && insideB < 0) {
                return new double[] {0, 0};
            }
            if (insideA < 0) {
                from = Math.max(from, insideA / (insideA - insideB));
            } else if (insideB < 0) {
                to = Math.min(to, insideA / (insideA - insideB));
            }
        }
        return from < to ? new double[] {from, to} : new double[] {0, 0};
    }
}
