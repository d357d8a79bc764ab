package org.fencecore.terrain;

import java.util.Arrays;
import java.util.OptionalLong;

/** Heights at the nodes of an even grid, in nanometres. */
final class GridGround implements Piecewise {

    private final long west;
    private final long south;
    private final long spacing;
    private final int columns;
    private final long[] heights; // row after row from the south, each from the west
    private final long reach;

    GridGround(long west, long south, long spacing, int columns, long[] heights, long reach) {
        this.west = west;
        this.south = south;
        this.spacing = spacing;
        this.columns = columns;
        this.heights = heights;
        this.reach = reach;
    }

    int columns() {
        return columns;
    }

    int rows() {
        return heights.length / columns;
    }

    long height(int column, int row) {
        return heights[row * columns + column];
    }

    @Override
    public OptionalLong heightAt(long x, long y) {
        double offEast = x - west - (double) spacing * (columns - 1);
        double offNorth = y - south - (double) spacing * (rows() - 1);
        boolean covered = west - x <= reach && offEast <= reach && south - y <= reach && offNorth <= reach;
        return covered ? OptionalLong.of(Math.round(height(eastward(x), northward(y)))) : OptionalLong.empty();
    }

    /** Returns how many columns east of the first a place is. */
    private double eastward(long x) {
        return (double) (x - west) / spacing;
    }

    /** Returns how many rows north of the first a place is. */
    private double northward(long y) {
        return (double) (y - south) / spacing;
    }

    private double height(double eastward, double northward) {
        double u = within(eastward, columns - 1);
        double v = within(northward, rows() - 1);
        int i = cell(u, columns);
        int j = cell(v, rows());
        double partEast = u - i;
        double partNorth = v - j;
        long z00 = height(i, j);
        double onSouth = partEast * (height(i + 1, j) - z00);
        double onNorth = height(i, j + 1) - z00 + partEast * (height(i + 1, j + 1) - height(i, j + 1));
        return z00 + (1 - partNorth) * onSouth + partNorth * onNorth;
    }

    private static double within(double value, int most) {
        return Math.max(0, Math.min(most, value));
    }

    private static int cell(double value, int nodes) {
        return Math.min((int) value, nodes - 2);
    }

    @Override
    public void addBreaks(long ax, long ay, long bx, long by, Breaks breaks) {
        double u = within(eastward(ax), columns - 1);
        double v = within(northward(ay), rows() - 1);
        double du = within(eastward(bx), columns - 1) - u;
        double dv = within(northward(by), rows() - 1) - v;
        double length = Math.hypot((double) (bx - ax), (double) (by - ay));
        double[] cuts = cuts(u, du, v, dv);
        for (int i = 1; i < cuts.length; i++) {
            double from = cuts[i - 1];
            double part = cuts[i] - from;
            long pieces = pieces(u + du * (from + part / 2), v + dv * (from + part / 2), du * part, dv * part);
            for (long k = 1; k <= pieces; k++) {
                double t = from + part * k / pieces;
                breaks.add(t * length, height(u + du * t, v + dv * t), false);
            }
        }
    }

    /** Returns where along a piece, as parts of it, it enters each cell, and its two ends. */
    private static double[] cuts(double u, double du, double v, double dv) {
        double[] east = crossings(u, du);
        double[] north = crossings(v, dv);
        double[] cuts = new double[east.length + north.length + 2];
        System.arraycopy(east, 0, cuts, 1, east.length);
        System.arraycopy(north, 0, cuts, 1 + east.length, north.length);
        cuts[cuts.length - 1] = 1;
        Arrays.sort(cuts);
        return cuts;
    }

    private static double[] crossings(double from, double step) {
        if (step == 0) {
            return new double[0];
        }
        int first = (int) Math.ceil(Math.min(from, from + step));
        int last = (int) Math.floor(Math.max(from, from + step));
        double[] crossings = new double[Math.max(0, last - first + 1)];
        Arrays.setAll(crossings, i -> within01((first + i - from) / step));
        return crossings;
    }

    private static double within01(double part) {
        return Math.max(0, Math.min(1, part));
    }

    /**
     * Returns into how many straight pieces to cut a part of the line inside a cell, so that none is farther from the
     * ground than a sixteenth of an inch.
     *
     * <p>Along the line the ground is a parabola with c t^2 as its square term, c = twist x du x dv and t from 0 to 1. A
     * chord over a part h of that is off by c h^2 / 4 in its middle.
     */
    private long pieces(double middleEast, double middleNorth, double du, double dv) {
        int i = cell(within(middleEast, columns - 1), columns);
        int j = cell(within(middleNorth, rows() - 1), rows());
        double twist = (double) height(i, j) - height(i + 1, j) - height(i, j + 1) + height(i + 1, j + 1);
        double off = Math.abs(twist * du * dv) / 4;
        return Math.max(1, (long) Math.ceil(Math.sqrt(off / Near.SIXTEENTH.nanometres())));
    }

    @Override
    public double[] clip(long ax, long ay, long bx, long by) {
        double[] east = clip(eastward(ax), eastward(bx), columns - 1);
        double[] north = clip(northward(ay), northward(by), rows() - 1);
        double from = Math.max(east[0], north[0]);
        double to = Math.min(east[1], north[1]);
        return from < to ? new double[] {from, to} : new double[] {0, 0};
    }

    private static double[] clip(double a, double b, int most) {
        if (a == b) {
            return a >= 0 && a <= most ? new double[] {0, 1} : new double[] {0, 0};
        }
        double atZero = -a / (b - a);
        double atMost = (most - a) / (b - a);
        return new double[] {within01(Math.min(atZero, atMost)), within01(Math.max(atZero, atMost))};
    }
}
