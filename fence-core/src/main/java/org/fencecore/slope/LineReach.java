package org.fencecore.slope;

import java.util.Arrays;

/**
 * The straight lines that begin in an upright window and pass through one window after another further on: how high and
 * how low they can arrive.
 *
 * <p>Of all such lines the steepest, for any place beyond the last window, is also the highest, and the flattest the
 * lowest. Each touches one lower and one upper window end. A new window that cuts the steepest line off turns it about
 * the lower ends to its own upper end, and the other way round for the flattest; the ends that can still be touched form
 * a convex chain, and the touching point only moves forward along it. So a window costs constant time on the average.
 * (O'Rourke, An on-line algorithm for fitting straight lines between data ranges, Communications of the ACM 24, 1981;
 * from memory.)
 *
 * <p>Heights and stations are nanometres in floating point, near zero as their user takes care of.
 */
final class LineReach {

    /** Points of a chain, of which those before the first cannot be touched any more. */
    private static final class Chain {
        private final int side;
        private double[] x = new double[16];
        private double[] y = new double[16];
        private int first;
        private int size;

        /** A chain bulging up for lower ends, with side 1, and down for upper ends, with side -1. */
        Chain(int side) {
            this.side = side;
        }

        void begin(double atX, double atY) {
            first = 0;
            size = 1;
            x[0] = atX;
            y[0] = side * atY;
        }

        void add(double atX, double atY) {
            double up = side * atY;
            while (size - first > 1
                    && (y[size - 1] - y[size - 2]) * (atX - x[size - 2])
                            <= (up - y[size - 2]) * (x[size - 1] - x[size - 2])) {
                size--;
            }
            if (size == x.length) {
                x = Arrays.copyOf(x, 2 * size);
                y = Arrays.copyOf(y, 2 * size);
            }
            x[size] = atX;
            y[size] = up;
            size++;
        }

        /** Returns the flattest slope, turned up for upper ends, of a line to this point from one of the chain. */
        double touch(double atX, double atY) {
            double up = side * atY;
            double slope = (up - y[first]) / (atX - x[first]);
            while (first + 1 < size) {
                double next = (up - y[first + 1]) / (atX - x[first + 1]);
                if (next > slope) {
                    break;
                }
                slope = next;
                first++;
            }
            return side * slope;
        }
    }

    private final Chain lowers = new Chain(1);
    private final Chain uppers = new Chain(-1);
    private boolean begun;
    private double steepX;
    private double steepY;
    private double steepest;
    private double flatX;
    private double flatY;
    private double flattest;

    /** Begins anew with the window the lines begin in. */
    void begin(double x, double low, double high) {
        lowers.begin(x, low);
        uppers.begin(x, high);
        begun = false;
    }

    /** Passes the lines through a window further on; returns whether there are any left. */
    boolean pass(double x, double low, double high) {
        if (!begun) {
            begun = true;
            steepen(x, high);
            flatten(x, low);
        } else {
            double highest = highest(x);
            double lowest = lowest(x);
            if (highest < low || lowest > high) {
                return false;
            }
            if (high < highest) {
                steepen(x, high);
            }
            if (low > lowest) {
                flatten(x, low);
            }
        }
        lowers.add(x, low);
        uppers.add(x, high);
        return true;
    }

    /** Returns the height at which the highest line arrives, at the last window or beyond. */
    double highest(double x) {
        return steepY + steepest * (x - steepX);
    }

    /** Returns the height at which the lowest line arrives, at the last window or beyond. */
    double lowest(double x) {
        return flatY + flattest * (x - flatX);
    }

    private void steepen(double x, double high) {
        steepX = x;
        steepY = high;
        steepest = lowers.touch(x, high);
    }

    private void flatten(double x, double low) {
        flatX = x;
        flatY = low;
        flattest = uppers.touch(x, low);
    }
}
