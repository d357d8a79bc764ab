package org.fencecore.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A linear program to which columns are added as it goes: the cheapest amounts of its columns, none negative, that reach
 * or keep within the right side of each row.
 *
 * <p>Revised simplex that keeps its basis and the inverse of it, so that after a column has been added only the few steps
 * are made that it calls for. Amounts and prices are {@code double}: good guides, and no proof of anything.
 */
public final class CoveringSimplex {

    private static final double TOLERANCE = 1e-9;
    private static final double SMALLEST_PIVOT = 1e-7;

    private final int rows;
    private final double[] right;
    private final int[] sign;
    private final List<Column> columns = new ArrayList<>();

    private final int[] basis;
    private final double[][] inverse;
    private final double[] amounts;
    private final double[] prices;
    /** What the entering column costs less than it is worth, negative. */
    private double reduced;

    private final int[] places;
    private int sinceInverted;
    private long work;

    /** A column: its cost, and its entries by row. */
    private static final class Column {

        private final double cost;
        private final int[] rows;
        private final double[] entries;

        Column(double cost, int[] rows, double[] entries) {
            this.cost = cost;
            this.rows = rows;
            this.entries = entries;
        }
    }

    /**
     * Starts a program.
     *
     * @param right the right side of each row, 0 or more
     * @param atLeast for each row, true if it must be reached and false if it must not be exceeded
     */
    public CoveringSimplex(double[] right, boolean[] atLeast) {
        rows = right.length;
        this.right = right.clone();
        sign = new int[rows];
        for (int i = 0; i < rows; i++) {
            sign[i] = atLeast[i] ? -1 : 1;
        }
        basis = new int[rows];
        inverse = new double[rows][rows];
        amounts = new double[rows];
        prices = new double[rows];
        places = new int[rows];
    }

    /**
     * Adds a column.
     *
     * @param cost what one of it costs
     * @param inRows the rows it counts in
     * @param entries how much it counts in each of them
     * @return its number, counted from 0
     */
    public int add(double cost, int[] inRows, double[] entries) {
        columns.add(new Column(cost, inRows, entries));
        return columns.size() - 1;
    }

    /**
     * Sets the columns to start from, which must by themselves be a solution.
     *
     * @param start as many columns as there are rows, or in place of a column -1 - i for what row i leaves over
     */
    public void startFrom(int[] start) {
        System.arraycopy(start, 0, basis, 0, rows);
        invert();
    }

    /**
     * Makes steps until no column is worth more than it costs.
     *
     * @param mostSteps how many at most
     */
    public void minimise(int mostSteps) {
        double[] entering = new double[rows];
        for (int step = 0; step < mostSteps; step++) {
            int column = mostWorthwhile();
            if (column == NONE) {
                return;
            }
            Arrays.fill(entering, 0);
            multiply(column, entering);
            int leaving = leaving(entering);
            if (leaving < 0) {
                return;
            }
            pivot(column, leaving, entering);
            if (++sinceInverted > 100 + rows) {
                invert();
            }
        }
    }

    private static final int NONE = Integer.MAX_VALUE;

    private int mostWorthwhile() {
        int best = NONE;
        double least = -TOLERANCE;
        for (int i = 0; i < rows; i++) {
            double saved = -sign[i] * prices[i];
            if (saved < least) {
                least = saved;
                reduced = saved;
                best = -1 - i;
            }
        }
        for (int j = 0; j < columns.size(); j++) {
            Column column = columns.get(j);
            double saved = column.cost;
            for (int e = 0; e < column.rows.length; e++) {
                saved -= prices[column.rows[e]] * column.entries[e];
            }
            if (saved < least * Math.max(1, column.cost)) {
                least = saved / Math.max(1, column.cost);
                reduced = saved;
                best = j;
            }
        }
        work += 4L * columns.size() + rows;
        return best;
    }

    private double cost(int column) {
        return column < 0 ? 0 : columns.get(column).cost;
    }

    private void multiply(int number, double[] result) {
        if (number < 0) {
            int row = -1 - number;
            for (int i = 0; i < rows; i++) {
                result[i] = inverse[i][row] * sign[row];
            }
            return;
        }
        Column column = columns.get(number);
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            for (int e = 0; e < column.rows.length; e++) {
                sum += inverse[i][column.rows[e]] * column.entries[e];
            }
            result[i] = sum;
        }
    }

    /** The row whose amount runs out first; among those that do so together, the one with the largest pivot. */
    private int leaving(double[] entering) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            if (entering[i] > SMALLEST_PIVOT) {
                least = Math.min(least, Math.max(0, amounts[i]) / entering[i]);
            }
        }
        int best = -1;
        for (int i = 0; i < rows; i++) {
            if (entering[i] > SMALLEST_PIVOT
                    && Math.max(0, amounts[i]) / entering[i] <= least + TOLERANCE
                    && (best < 0 || entering[i] > entering[best])) {
                best = i;
            }
        }
        return best;
    }

    /** Most entries of the inverse are 0 for long, and are left alone. */
    private void pivot(int column, int leaving, double[] entering) {
        double[] pivotRow = inverse[leaving];
        double by = 1 / entering[leaving];
        int used = 0;
        for (int j = 0; j < rows; j++) {
            if (pivotRow[j] != 0) {
                pivotRow[j] *= by;
                prices[j] += reduced * pivotRow[j];
                places[used++] = j;
            }
        }
        amounts[leaving] = Math.max(0, amounts[leaving]) * by;
        for (int i = 0; i < rows; i++) {
            double factor = entering[i];
            if (i != leaving && factor != 0) {
                double[] row = inverse[i];
                for (int k = 0; k < used; k++) {
                    row[places[k]] -= factor * pivotRow[places[k]];
                }
                amounts[i] -= factor * amounts[leaving];
                work += 2L * used;
            }
        }
        basis[leaving] = column;
        work += 4L * rows;
    }

    private void price() {
        Arrays.fill(prices, 0);
        for (int i = 0; i < rows; i++) {
            double cost = cost(basis[i]);
            if (cost != 0) {
                double[] row = inverse[i];
                for (int j = 0; j < rows; j++) {
                    prices[j] += cost * row[j];
                }
            }
        }
    }

    /** Works the inverse out afresh, by elimination with the largest pivot of each column. */
    private void invert() {
        double[][] matrix = new double[rows][rows];
        for (int j = 0; j < rows; j++) {
            if (basis[j] < 0) {
                matrix[-1 - basis[j]][j] = sign[-1 - basis[j]];
            } else {
                Column column = columns.get(basis[j]);
                for (int e = 0; e < column.rows.length; e++) {
                    matrix[column.rows[e]][j] += column.entries[e];
                }
            }
        }
        double[][] unit = new double[rows][rows];
        for (int i = 0; i < rows; i++) {
            unit[i][i] = 1;
        }
        for (int j = 0; j < rows; j++) {
            int pivot = j;
            for (int i = j + 1; i < rows; i++) {
                if (Math.abs(matrix[i][j]) > Math.abs(matrix[pivot][j])) {
                    pivot = i;
                }
            }
            swap(matrix, j, pivot);
            swap(unit, j, pivot);
            double by = 1 / matrix[j][j];
            scale(matrix[j], by);
            scale(unit[j], by);
            for (int i = 0; i < rows; i++) {
                double factor = matrix[i][j];
                if (i != j && factor != 0) {
                    subtract(matrix[i], matrix[j], factor);
                    subtract(unit[i], unit[j], factor);
                    work += 2L * rows;
                }
            }
        }
        for (int i = 0; i < rows; i++) {
            System.arraycopy(unit[i], 0, inverse[i], 0, rows);
            double sum = 0;
            for (int j = 0; j < rows; j++) {
                sum += unit[i][j] * right[j];
            }
            amounts[i] = sum;
        }
        sinceInverted = 0;
        price();
    }

    private static void swap(double[][] matrix, int a, int b) {
        double[] row = matrix[a];
        matrix[a] = matrix[b];
        matrix[b] = row;
    }

    private static void scale(double[] row, double by) {
        for (int j = 0; j < row.length; j++) {
            row[j] *= by;
        }
    }

    private static void subtract(double[] row, double[] other, double factor) {
        for (int j = 0; j < row.length; j++) {
            row[j] -= factor * other[j];
        }
    }

    /**
     * Returns the price of each row: what the total would grow by if one more were asked for in it.
     *
     * @return the prices
     */
    public double[] prices() {
        return prices.clone();
    }

    /**
     * Returns the cost of the present solution.
     *
     * @return the sum of amounts times costs
     */
    public double total() {
        double sum = 0;
        for (int i = 0; i < rows; i++) {
            sum += cost(basis[i]) * amounts[i];
        }
        return sum;
    }

    /**
     * Returns the present solution.
     *
     * @return the amount of each column
     */
    public double[] solution() {
        double[] solution = new double[columns.size()];
        for (int i = 0; i < rows; i++) {
            if (basis[i] >= 0) {
                solution[basis[i]] = Math.max(0, amounts[i]);
            }
        }
        return solution;
    }

    /**
     * Returns the columns the present solution is made of.
     *
     * @return for each row a column, or -1 - i for what row i leaves over
     */
    public int[] basis() {
        return basis.clone();
    }

    /**
     * Returns how much work it has been so far.
     *
     * @return about the number of multiplications
     */
    public long work() {
        return work;
    }
}
