package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.units.Length;

/**
 * The ground by heights at the nodes of an even grid that runs with east and north, bilinear inside each cell.
 *
 * <p>At parts u and v of a cell, eastward and northward, with the heights z00, z10, z01 and z11 at its south-west,
 * south-east, north-west and north-east nodes:
 *
 * <pre>
 * height = z00 (1 - u) (1 - v) + z10 u (1 - v) + z01 (1 - u) v + z11 u v
 * </pre>
 *
 * <p>Under a line, every edge of a cell that the line crosses is kept as a break. Along a slanted line the ground inside
 * a cell is a parabola, so more breaks are put there, no fewer than keep the straight pieces within 1/16 in of it. A
 * line that runs 1/16 in outside the grid counts as on its edge, and breaks within 0.1 mm of each other are one.
 *
 * <p>It has from 2 to 500,000 columns and rows, 1,000,000 nodes in all at most. Source: geometry.
 *
 * <p>Example: one cell of 10 ft that is warped.
 *
 * <pre>{@code
 * GridSurface yard = GridSurface.of(Point.ORIGIN, Length.ofFeet(10), List.of(
 *         List.of(Length.ofFeet(100), Length.ofFeet(101)),     // the south row, from the west
 *         List.of(Length.ofFeet(101), Length.ofFeet(104))));
 * yard.elevationAt(Point.of(Length.ofFeet(5), Length.ofFeet(5)));   // 101.5 ft
 * }</pre>
 */
public final class GridSurface implements Surface {

    private static final int MOST_NODES = 1_000_000;
    private static final Length LEAST_SPACING = Length.ofMillimetres(10);
    private static final Length WIDEST = Length.ofMetres(1_000_000);

    private final Point origin;
    private final Length spacing;
    private final GridGround ground;

    private GridSurface(Point origin, Length spacing, GridGround ground) {
        this.origin = origin;
        this.spacing = spacing;
        this.ground = ground;
    }

    /**
     * Returns the ground by a grid of heights.
     *
     * @param origin the south-west node
     * @param spacing the distance between neighbouring nodes, both ways, at least 10 mm
     * @param rows the heights row by row from the south, each from the west, all rows as long
     * @return the surface
     * @throws IllegalArgumentException if there are fewer than 2 rows or columns or over 1,000,000 nodes, if a row has
     *     another number of heights than the first, if the grid is over 1,000 km long or wide, or if a height is over
     *     1,000,000 km from zero
     */
    public static GridSurface of(Point origin, Length spacing, List<List<Length>> rows) {
        int columns = rows.isEmpty() ? 0 : rows.get(0).size();
        if (rows.size() < 2 || columns < 2 || (long) rows.size() * columns > MOST_NODES) {
            throw new IllegalArgumentException("rows were " + rows.size() + " of " + columns
                    + " heights; give at least 2 of 2, and at most 1,000,000 heights in all");
        }
        if (spacing.compareTo(LEAST_SPACING) < 0) {
            throw new IllegalArgumentException(
                    "spacing was " + spacing + "; it must be at least " + LEAST_SPACING + ": check its unit");
        }
        int longer = Math.max(rows.size(), columns) - 1;
        if (spacing.compareTo(WIDEST.dividedBy(longer)) > 0) {
            throw new IllegalArgumentException("spacing was " + spacing + ", which makes the grid over 1,000 km long; "
                    + "check its unit, or give a part of the grid");
        }
        long[] heights = new long[rows.size() * columns];
        int node = 0;
        for (int row = 0; row < rows.size(); row++) {
            List<Length> heightsOfRow = rows.get(row);
            if (heightsOfRow.size() != columns) {
                throw new IllegalArgumentException("row " + row + " had " + heightsOfRow.size()
                        + " heights and the first had " + columns + "; give as many in every row, counting from 0");
            }
            for (Length height : heightsOfRow) {
                heights[node++] = Heights.checked(height);
            }
        }
        return new GridSurface(
                origin,
                spacing,
                new GridGround(
                        origin.east().nanometres(),
                        origin.north().nanometres(),
                        spacing.nanometres(),
                        columns,
                        heights,
                        Near.SIXTEENTH.nanometres()));
    }

    /**
     * Returns the south-west node.
     *
     * @return its place
     */
    public Point origin() {
        return origin;
    }

    /**
     * Returns the distance between neighbouring nodes.
     *
     * @return the distance, the same eastward and northward
     */
    public Length spacing() {
        return spacing;
    }

    /**
     * Returns how many nodes a row has.
     *
     * @return the columns, at least 2
     */
    public int columns() {
        return ground.columns();
    }

    /**
     * Returns how many rows of nodes there are.
     *
     * @return the rows, at least 2
     */
    public int rows() {
        return ground.rows();
    }

    /**
     * Returns the heights as they were given.
     *
     * @return row after row from the south, each from the west, unmodifiable
     */
    public List<List<Length>> heights() {
        List<List<Length>> heights = new ArrayList<>(rows());
        for (int row = 0; row < rows(); row++) {
            List<Length> ofRow = new ArrayList<>(columns());
            for (int column = 0; column < columns(); column++) {
                ofRow.add(Length.ofNanometres(ground.height(column, row)));
            }
            heights.add(Collections.unmodifiableList(ofRow));
        }
        return Collections.unmodifiableList(heights);
    }

    @Override
    public Optional<Length> elevationAt(Point place) {
        return GroundPieces.elevation(place, ground);
    }

    /**
     * Returns the ground under a line, with a point at every edge of a cell that it crosses, and as many between as keep
     * it within 1/16 in.
     *
     * @param line the line in plan
     * @return heights by level distance from the start of the line, or empty if the surface does not cover all of it
     * @throws IllegalArgumentException if the line breaks over 1,000,000 times
     */
    @Override
    public Optional<Profile> under(Polyline line) {
        return GroundPieces.profile(line, ground);
    }

    @Override
    public List<Interval> uncovered(Polyline line) {
        return GroundPieces.uncovered(line, ground);
    }

    /**
     * Describes the grid.
     *
     * @return such as {@code 9 by 5 heights, 10 ft apart, from (E 0 in, N 0 in)}
     */
    @Override
    public String toString() {
        return columns() + " by " + rows() + " heights, " + spacing + " apart, from " + origin;
    }
}
