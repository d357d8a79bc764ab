package org.fencecore.terrain;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;

/**
 * The ground as flat triangles between spot shots, out to the outermost of them.
 *
 * <p>The shots are joined into the Delaunay triangulation, the one that draws its triangles out least: no shot lies in the
 * circle through the corners of a triangle. Within a triangle
 *
 * <pre>
 * height = w1 z1 + w2 z2 + w3 z3, each w the part of the triangle's area that lies across from its corner
 * </pre>
 *
 * <p>Under a line, every edge of a triangle that the line crosses is kept as a break, and so is every shot on it.
 *
 * <p>What is near enough: shots are read to a hundredth of a foot, so a shot within 1/16 in of a line or place counts as
 * on it, and a line that runs 1/16 in outside the outermost shots as covered; {@link #withReach} changes that. Breaks
 * within 0.1 mm of each other are one.
 *
 * <p>It assumes that the ground is straight between neighbouring shots, so shoot every place where it breaks, and shots
 * on both sides of the line: at the outside, long flat triangles join shots that are far apart. The triangles, and so the
 * heights, do not depend on the order of the shots. Of four shots on one circle, as in an even grid, the triangles could
 * be split either way; which one is taken follows from their places alone.
 *
 * <p>It has from 3 to 1,000,000 shots within 1,000 km of each other. Source: geometry.
 *
 * <p>Example: three shots at the corners of a yard that falls 2 ft to the east.
 *
 * <pre>{@code
 * ShotSurface yard = ShotSurface.of(List.of(
 *         Shot.of(Length.ZERO, Length.ZERO, Length.ofFeet(100)),
 *         Shot.of(Length.ofFeet(40), Length.ZERO, Length.ofFeet(98)),
 *         Shot.of(Length.ZERO, Length.ofFeet(30), Length.ofFeet(100))));
 * yard.elevationAt(Point.of(Length.ofFeet(10), Length.ofFeet(10)));   // 99.5 ft
 * }</pre>
 */
public final class ShotSurface implements Surface {

    private static final int FEWEST = 3;
    private static final int MOST = 1_000_000;
    private static final long WIDEST = 1_000_000_000_000_000L;
    private static final Length LEAST_REACH = Length.ofMillimetres(0.1);
    private static final Length MOST_REACH = Length.ofFeet(1);

    private static final Comparator<Shot> EAST_THEN_NORTH = Comparator.comparingLong(
                    (Shot shot) -> shot.place().east().nanometres())
            .thenComparingLong(shot -> shot.place().north().nanometres());

    private final List<Shot> shots;
    private final int doubled;
    private final TriangleGround ground;

    private ShotSurface(List<Shot> shots, int doubled, TriangleGround ground) {
        this.shots = shots;
        this.doubled = doubled;
        this.ground = ground;
    }

    /**
     * Joins shots into a surface.
     *
     * @param shots the shots in any order; the same shot given twice is taken once, with a finding
     * @return the surface
     * @throws IllegalArgumentException if there are fewer than 3 or more than 1,000,000 shots, if two at the same place
     *     have different heights, if all are in line, if two are over 1,000 km apart, or if a height is over 1,000,000 km
     *     from zero
     */
    public static ShotSurface of(List<Shot> shots) {
        if (shots.size() < FEWEST || shots.size() > MOST) {
            throw new IllegalArgumentException(
                    "number of shots was " + shots.size() + "; give from 3 to 1,000,000, and thin out a denser survey");
        }
        List<Shot> kept = withoutDoubles(shots);
        long[] x = new long[kept.size()];
        long[] y = new long[kept.size()];
        long[] z = new long[kept.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = kept.get(i).place().east().nanometres();
            y[i] = kept.get(i).place().north().nanometres();
            z[i] = Heights.checked(kept.get(i).elevation());
        }
        requireClose("east", x);
        requireClose("north", y);
        TriangleGround ground = x.length < FEWEST ? null : TriangleGround.of(x, y, z, Near.SIXTEENTH.nanometres());
        if (ground == null || ground.triangles().count() == 0) {
            throw new IllegalArgumentException("all " + kept.size() + " different shots are in line, from "
                    + kept.get(0).place() + " to " + kept.get(kept.size() - 1).place()
                    + ", which tells the ground along that line only; add a shot off it, or give a profile instead");
        }
        return new ShotSurface(kept, shots.size() - kept.size(), ground);
    }

    private static List<Shot> withoutDoubles(List<Shot> shots) {
        List<Shot> sorted = new ArrayList<>(shots);
        sorted.sort(EAST_THEN_NORTH);
        List<Shot> kept = new ArrayList<>(sorted.size());
        for (Shot shot : sorted) {
            Shot last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
            if (last == null || !last.place().equals(shot.place())) {
                kept.add(shot);
            } else if (!last.elevation().equals(shot.elevation())) {
                throw new IllegalArgumentException("two shots at " + shot.place() + " were " + last.elevation()
                        + " and " + shot.elevation() + " high; find out which is right and leave out the other");
            }
        }
        return List.copyOf(kept);
    }

    private static void requireClose(String name, long[] values) {
        long least = values[0];
        long most = values[0];
        for (long value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        if (most - least > WIDEST) {
            throw new IllegalArgumentException(name + " was from " + Length.ofNanometres(least) + " to "
                    + Length.ofNanometres(most)
                    + "; shots must be within 1,000 km of each other, so look for one with a wrong unit or digit");
        }
    }

    /**
     * Returns this surface with another distance within which a shot counts as being on a line or place, and a line as
     * covered beyond the outermost shots. A shot 2 in off the string then tells the ground under the string, if 2 in is
     * what the rod was off.
     *
     * @param reach the distance, from 0.1 mm to 1 ft; 1/16 in when not said
     * @return a surface through the same shots
     * @throws IllegalArgumentException if the distance is out of its range
     */
    public ShotSurface withReach(Length reach) {
        if (reach.compareTo(LEAST_REACH) < 0 || reach.compareTo(MOST_REACH) > 0) {
            throw new IllegalArgumentException("reach was " + reach + "; it must be from " + LEAST_REACH + " to "
                    + MOST_REACH + ", since a shot farther off does not tell the ground at the line");
        }
        return new ShotSurface(shots, doubled, ground.withReach(reach.nanometres()));
    }

    /**
     * Returns the shots the surface goes through.
     *
     * @return the shots from west to east, each once, unmodifiable
     */
    public List<Shot> shots() {
        return shots;
    }

    /**
     * Returns how far off a place or line a shot still counts as on it.
     *
     * @return the reach
     */
    public Length reach() {
        return Length.ofNanometres(ground.reach());
    }

    /**
     * Returns the flat triangles between the shots, such as for a drawing of the ground.
     *
     * @return the triangles, an unmodifiable view that makes each when asked
     */
    public List<Facet> facets() {
        Triangulation triangles = ground.triangles();
        return new AbstractList<>() {
            @Override
            public Facet get(int index) {
                int side = 3 * index;
                return new Facet(
                        shots.get(triangles.start(side)),
                        shots.get(triangles.end(side)),
                        shots.get(triangles.opposite(side)));
            }

            @Override
            public int size() {
                return triangles.count();
            }
        };
    }

    @Override
    public Optional<Length> elevationAt(Point place) {
        return GroundPieces.elevation(place, ground);
    }

    /**
     * Returns the ground under a line, with a point at every edge of a triangle that it crosses and every shot on it.
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
     * Returns what is odd about the shots: {@code shots-doubled} if some were given more than once.
     *
     * @return all findings, empty if every shot was given once
     */
    public List<Finding> findings() {
        if (doubled == 0) {
            return List.of();
        }
        return List.of(Finding.note(
                        "shots-doubled",
                        "shots",
                        doubled + (doubled == 1 ? " shot was" : " shots were")
                                + " given more than once, with the same height, and left out")
                .withRemedy("see whether a shot was booked under a wrong place"));
    }

    /**
     * Describes the surface.
     *
     * @return such as {@code 7 triangles between 7 shots}
     */
    @Override
    public String toString() {
        int count = ground.triangles().count();
        return count + (count == 1 ? " triangle between " : " triangles between ") + shots.size() + " shots";
    }
}
