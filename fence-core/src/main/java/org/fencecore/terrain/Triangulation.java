package org.fencecore.terrain;

/**
 * Triangles and their neighbours. Side {@code 3 t + k} of triangle {@code t} begins at its corner {@code k} and goes to
 * the next, counterclockwise.
 */
final class Triangulation {

    /** What the twin of a side on the outside is. */
    static final int OUTSIDE = -1;

    private final int[] corners;
    private final int[] twins;

    /**
     * Takes the triangles.
     *
     * @param corners the place where each side begins
     * @param twins the same line as a side of the neighbour, or {@link #OUTSIDE}
     */
    Triangulation(int[] corners, int[] twins) {
        this.corners = corners;
        this.twins = twins;
    }

    /** Returns how many triangles there are. */
    int count() {
        return corners.length / 3;
    }

    /** Returns how many sides the triangles have, those between two of them counted twice. */
    int sides() {
        return corners.length;
    }

    /** Returns the place where a side begins. */
    int start(int side) {
        return corners[side];
    }

    /** Returns the place where a side ends. */
    int end(int side) {
        return corners[next(side)];
    }

    /** Returns the corner of the triangle that is not on a side. */
    int opposite(int side) {
        return corners[next(next(side))];
    }

    /** Returns the same line as a side of the neighbour, or {@link #OUTSIDE}. */
    int twin(int side) {
        return twins[side];
    }

    private static int next(int side) {
        return side % 3 == 2 ? side - 2 : side + 1;
    }
}
