package org.fencecore.terrain;

import java.util.Arrays;

/**
 * The Delaunay triangulation of places in order of east, then north: the one whose triangles have no other place inside
 * the circle through their corners, which makes them as little drawn out as can be. Of places on one circle it depends on
 * their order alone which way they are split.
 *
 * <p>Two halves are triangulated and sewn together from the bottom up, by the method of L. Guibas and J. Stolfi,
 * "Primitives for the manipulation of general subdivisions and the computation of Voronoi diagrams", ACM Transactions on
 * Graphics 4 (1985), section 9 (from memory). Every decision is exact.
 *
 * <p>An edge is two numbers, {@code e} and {@code e ^ 1}, one for each direction.
 */
final class Delaunay {

    private static final int NONE = -1;

    private final long[] x;
    private final long[] y;
    private int[] origin;
    private int[] counterclockwise; // the next edge from the same origin
    private int[] clockwise;
    private int size;
    private int freed = NONE; // the first of the deleted edges, each of which names the next as its neighbour

    private Delaunay(long[] x, long[] y) {
        this.x = x;
        this.y = y;
        int room = 8 * x.length;
        origin = new int[room];
        counterclockwise = new int[room];
        clockwise = new int[room];
    }

    /**
     * Triangulates places.
     *
     * @param x distances east, within 2^52 of each other
     * @param y distances north, within 2^52 of each other; no two places the same, each east of the one before or north
     *     of it at the same x
     * @return the triangles; none if all places are in line
     */
    static Triangulation of(long[] x, long[] y) {
        Delaunay work = new Delaunay(x, y);
        work.triangulate(0, x.length);
        return work.triangles();
    }

    /** The counterclockwise hull edge out of the first place, and the clockwise one out of the last. */
    private record Ends(int fromFirst, int fromLast) {}

    private Ends triangulate(int from, int to) {
        if (to - from == 2) {
            int a = edge(from, from + 1);
            return new Ends(a, a ^ 1);
        }
        if (to - from == 3) {
            int a = edge(from, from + 1);
            int b = edge(from + 1, from + 2);
            splice(a ^ 1, b);
            int turn = turn(from, from + 1, from + 2);
            if (turn == 0) {
                return new Ends(a, b ^ 1);
            }
            int c = connect(b, a);
            return turn > 0 ? new Ends(a, b ^ 1) : new Ends(c ^ 1, c);
        }
        int middle = (from + to) >>> 1;
        Ends left = triangulate(from, middle);
        Ends right = triangulate(middle, to);
        return sew(left, right);
    }

    private Ends sew(Ends left, Ends right) {
        int outerLeft = left.fromFirst;
        int innerLeft = left.fromLast;
        int innerRight = right.fromFirst;
        int outerRight = right.fromLast;
        while (true) { // down to the line that has both halves on its upper side
            if (isLeftOf(innerLeft, origin[innerRight])) {
                innerLeft = nextAroundLeft(innerLeft);
            } else if (isRightOf(innerRight, origin[innerLeft])) {
                innerRight = counterclockwise[innerRight ^ 1];
            } else {
                break;
            }
        }
        int base = connect(innerRight ^ 1, innerLeft); // goes from right to left
        if (origin[innerLeft] == origin[outerLeft]) {
            outerLeft = base ^ 1;
        }
        if (origin[innerRight] == origin[outerRight]) {
            outerRight = base;
        }
        while (true) { // up again, one triangle at a time
            int leftSide = counterclockwise[base ^ 1];
            if (isAbove(leftSide, base)) {
                while (isInside(base, leftSide, counterclockwise[leftSide])) {
                    int next = counterclockwise[leftSide];
                    delete(leftSide);
                    leftSide = next;
                }
            }
            int rightSide = clockwise[base];
            if (isAbove(rightSide, base)) {
                while (isInside(base, rightSide, clockwise[rightSide])) {
                    int next = clockwise[rightSide];
                    delete(rightSide);
                    rightSide = next;
                }
            }
            boolean leftAbove = isAbove(leftSide, base);
            boolean rightAbove = isAbove(rightSide, base);
            if (!leftAbove && !rightAbove) {
                return new Ends(outerLeft, outerRight);
            }
            boolean takeRight = !leftAbove
                    || (rightAbove
                            && inCircle(
                                    destination(leftSide),
                                    origin[leftSide],
                                    origin[rightSide],
                                    destination(rightSide)));
            base = takeRight ? connect(rightSide, base ^ 1) : connect(base ^ 1, leftSide ^ 1);
        }
    }

    /** Tells whether the far end of {@code next} is in the circle through the base and the far end of {@code side}. */
    private boolean isInside(int base, int side, int next) {
        return inCircle(destination(base), origin[base], destination(side), destination(next));
    }

    private boolean isAbove(int edge, int base) {
        return isRightOf(base, destination(edge));
    }

    private boolean isLeftOf(int edge, int place) {
        return turn(place, origin[edge], destination(edge)) > 0;
    }

    private boolean isRightOf(int edge, int place) {
        return turn(place, destination(edge), origin[edge]) > 0;
    }

    private int turn(int a, int b, int c) {
        return Predicates.turn(x[a], y[a], x[b], y[b], x[c], y[c]);
    }

    private boolean inCircle(int a, int b, int c, int d) {
        return Predicates.inCircle(x[a], y[a], x[b], y[b], x[c], y[c], x[d], y[d]);
    }

    private int destination(int edge) {
        return origin[edge ^ 1];
    }

    private int nextAroundLeft(int edge) {
        return clockwise[edge ^ 1];
    }

    private int edge(int from, int to) {
        int e = freed;
        if (e == NONE) {
            e = size;
            size += 2;
            if (size > origin.length) {
                origin = Arrays.copyOf(origin, 2 * size);
                counterclockwise = Arrays.copyOf(counterclockwise, 2 * size);
                clockwise = Arrays.copyOf(clockwise, 2 * size);
            }
        } else {
            freed = counterclockwise[e];
        }
        begin(e, from);
        begin(e + 1, to);
        return e;
    }

    private void begin(int e, int from) {
        origin[e] = from;
        counterclockwise[e] = e;
        clockwise[e] = e;
    }

    /** Joins the rings of edges around two origins, or parts one ring into two. */
    private void splice(int a, int b) {
        int afterA = counterclockwise[a];
        int afterB = counterclockwise[b];
        counterclockwise[a] = afterB;
        counterclockwise[b] = afterA;
        clockwise[afterB] = a;
        clockwise[afterA] = b;
    }

    /** Adds the edge from the end of one to the start of another, with all three around one face on their left. */
    private int connect(int a, int b) {
        int e = edge(destination(a), origin[b]);
        splice(e, nextAroundLeft(a));
        splice(e ^ 1, b);
        return e;
    }

    private void delete(int edge) {
        int e = edge & ~1;
        splice(e, clockwise[e]);
        splice(e + 1, clockwise[e + 1]);
        origin[e] = NONE;
        origin[e + 1] = NONE;
        counterclockwise[e] = freed;
        freed = e;
    }

    private Triangulation triangles() {
        int[] halves = new int[size]; // which side of which triangle an edge is
        Arrays.fill(halves, NONE);
        int[] corners = new int[size]; // there are fewer than 2 triangles to 3 edges of 2 directions
        int[] edges = new int[size];
        int count = 0;
        for (int e = 0; e < size; e++) {
            if (origin[e] == NONE || halves[e] != NONE) {
                continue;
            }
            int f = nextAroundLeft(e);
            int g = nextAroundLeft(f);
            if (nextAroundLeft(g) != e || turn(origin[e], origin[f], origin[g]) <= 0) {
                continue; // the outside, seen from within
            }
            for (int side : new int[] {e, f, g}) {
                halves[side] = count;
                corners[count] = origin[side];
                edges[count] = side;
                count++;
            }
        }
        int[] twins = new int[count];
        for (int half = 0; half < count; half++) {
            twins[half] = halves[edges[half] ^ 1];
        }
        return new Triangulation(Arrays.copyOf(corners, count), twins);
    }
}
