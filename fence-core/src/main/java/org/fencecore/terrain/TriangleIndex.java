package org.fencecore.terrain;

import java.util.Arrays;

/** Tells a triangle not far from a place, so that the search for the one that holds it is short. */
final class TriangleIndex {

    private static final int MOST_CELLS_ACROSS = 512;

    private final long west;
    private final long south;
    private final double cell;
    private final int across;
    private final int[] triangles;

    private TriangleIndex(long west, long south, double cell, int across, int[] triangles) {
        this.west = west;
        this.south = south;
        this.cell = cell;
        this.across = across;
        this.triangles = triangles;
    }

    static TriangleIndex of(long[] x, long[] y, Triangulation triangles) {
        long west = Arrays.stream(x).min().orElse(0);
        long south = Arrays.stream(y).min().orElse(0);
        long east = Arrays.stream(x).max().orElse(0);
        long north = Arrays.stream(y).max().orElse(0);
        int across = (int) Math.min(MOST_CELLS_ACROSS, 1 + Math.sqrt(x.length / 2.0));
        double cell = Math.max(east - west, north - south) / (double) across;
        TriangleIndex index = new TriangleIndex(west, south, cell, across, new int[across * across]);
        Arrays.fill(index.triangles, -1);
        for (int side = 0; side < triangles.sides(); side++) {
            int start = triangles.start(side);
            index.triangles[index.cellOf(x[start], y[start])] = side / 3;
        }
        int last = 0;
        for (int i = 0; i < index.triangles.length; i++) { // cells without a shot take the triangle of one before
            last = index.triangles[i] < 0 ? last : index.triangles[i];
            index.triangles[i] = last;
        }
        return index;
    }

    int near(long x, long y) {
        return triangles[cellOf(x, y)];
    }

    private int cellOf(long x, long y) {
        return row(y - south) * across + row(x - west);
    }

    private int row(long from) {
        return (int) Math.max(0, Math.min(across - 1, from / cell));
    }
}
