package org.fencecore.wind;

import java.util.Arrays;
import org.fencecore.units.Ratio;

/**
 * How hard wind of a given velocity pressure pushes on a fence, by its shape: the force coefficients Cf of ASCE 7.
 *
 * <p>A fence whose face is at least seven tenths solid is a solid freestanding wall, of length B and height s, its top at
 * the height h above grade:
 *
 * <ul>
 *   <li>{@link #caseA}: the whole face pushed evenly; case B has the same force off centre by a fifth of B;
 *   <li>{@link #caseC}: wind along the fence at a slant, which pushes hardest at the windward end; for B at least twice s;
 *   <li>{@link #openings}: what holes in the face take off.
 * </ul>
 *
 * <p>With more open than that it is an {@linkplain #ofOpenFence open sign}, and the force is on the solid parts only.
 *
 * <p>Between printed values the tables are read in proportion; beyond them the last value holds. Where the neighbouring
 * column has no such stretch of fence, the other column's value is taken. A return corner shorter than 0.3 s takes
 * nothing off, the harder of two readings in use, and neither does one on a fence shorter than 5 s.
 *
 * <p>Example: a fence on the ground, 20 times as long as high.
 *
 * <pre>{@code
 * Ratio one = Ratio.of(1);
 * ForceCoefficient.caseA(Ratio.of(20), one);                                   // 1.30
 * ForceCoefficient.caseC(Ratio.of(20), one, Ratio.ZERO, Ratio.of(0.5));        // 3.2525 in the first s of fence
 * ForceCoefficient.openings(Ratio.ofPercent(80));                              // 0.91056
 * }</pre>
 *
 * <p>Sources: ASCE 7-16, figure 29.3-1 (29.4-1 in 7-10, 6-20 in 7-05) and figure 29.4-2 (29.5-2 in 7-10).
 */
public final class ForceCoefficient {

    /** The solid part of the face from which it is a wall. */
    static final double LEAST_SOLID_OF_WALL = 0.7;

    private static final double[] ASPECTS = {0.05, 0.1, 0.2, 0.5, 1, 2, 4, 5, 10, 20, 30, 45};

    private static final double[] CLEARANCES = {0.16, 0.2, 0.3, 0.5, 0.7, 0.9, 1};

    private static final double[][] CASE_A = {
        {1.95, 1.90, 1.85, 1.85, 1.80, 1.80, 1.85, 1.85, 1.85, 1.90, 1.90, 1.95},
        {1.95, 1.90, 1.85, 1.80, 1.80, 1.80, 1.80, 1.80, 1.85, 1.90, 1.90, 1.95},
        {1.95, 1.90, 1.85, 1.80, 1.80, 1.80, 1.80, 1.80, 1.80, 1.85, 1.85, 1.85},
        {1.95, 1.85, 1.80, 1.75, 1.75, 1.70, 1.70, 1.70, 1.70, 1.70, 1.70, 1.75},
        {1.90, 1.85, 1.75, 1.70, 1.65, 1.60, 1.60, 1.55, 1.55, 1.55, 1.55, 1.55},
        {1.85, 1.75, 1.70, 1.60, 1.55, 1.50, 1.45, 1.45, 1.40, 1.40, 1.40, 1.40},
        {1.80, 1.70, 1.65, 1.55, 1.45, 1.40, 1.35, 1.35, 1.30, 1.30, 1.30, 1.30}
    };

    /** Where the stretches of case C start, in heights s from the windward end. */
    private static final double[] STRETCHES = {0, 1, 2, 3, 4, 5, 10};

    private static final double NONE = Double.NaN;

    private static final double[] LENGTHS = {2, 3, 4, 5, 6, 7, 8, 9, 10, 13, 45};

    private static final double[][] CASE_C = {
        {2.25, 1.50, NONE, NONE, NONE, NONE, NONE},
        {2.60, 1.70, 1.15, NONE, NONE, NONE, NONE},
        {2.90, 1.90, 1.30, 1.10, NONE, NONE, NONE},
        {3.10, 2.00, 1.45, 1.05, 1.05, NONE, NONE},
        {3.30, 2.15, 1.55, 1.05, 1.05, 1.05, NONE},
        {3.40, 2.25, 1.65, 1.05, 1.05, 1.05, NONE},
        {3.55, 2.30, 1.70, 1.05, 1.05, 1.05, NONE},
        {3.65, 2.35, 1.75, 1.00, 1.00, 1.00, NONE},
        {3.75, 2.45, 1.85, 0.95, 0.95, 0.95, NONE},
        {4.00, 2.60, 2.00, 1.50, 1.35, 0.90, 0.55},
        {4.30, 2.55, 1.95, 1.85, 1.85, 1.10, 0.55}
    };

    private static final double[] RETURNS = {0.3, 1, 2};

    private static final double[] RETURN_FACTORS = {0.90, 0.75, 0.60};

    private ForceCoefficient() {}

    /**
     * Returns the coefficient of the whole face, cases A and B.
     *
     * @param lengthToHeight B / s, over 0
     * @param heightToTop s / h, over 0, to 1
     * @return Cf
     * @throws IllegalArgumentException if either is out of its range
     */
    public static Ratio caseA(Ratio lengthToHeight, Ratio heightToTop) {
        return Ratio.of(wholeFace(aspect(lengthToHeight), clearance(heightToTop)));
    }

    /**
     * Returns the coefficient at a place along a fence pushed hardest at its windward end, case C, reduced for a face
     * near the ground: above s / h = 0.8 by 1.8 - s / h, which is 0.8 for a fence on the ground.
     *
     * @param lengthToHeight B / s, at least 2
     * @param heightToTop s / h, over 0, to 1
     * @param returnToHeight the length of a return corner at the windward end over s; zero for a free end
     * @param distanceToHeight the distance from the windward end over s, from 0 to B / s
     * @return Cf
     * @throws IllegalArgumentException if any of them is out of its range
     */
    public static Ratio caseC(Ratio lengthToHeight, Ratio heightToTop, Ratio returnToHeight, Ratio distanceToHeight) {
        double aspect = aspect(lengthToHeight);
        WindLimits.atLeast("lengthToHeight", lengthToHeight, 2, "since case C is for longer fences");
        WindLimits.atLeast("returnToHeight", returnToHeight, 0, "so check its sign");
        WindLimits.within("distanceToHeight", distanceToHeight, 0, aspect, "so look within the fence");
        return Ratio.of(
                fromEnd(aspect, clearance(heightToTop), returnToHeight.value()).at(distanceToHeight.value()));
    }

    /**
     * Returns what openings in a wall leave of the force on its gross area: 1 - (1 - e)^1.5.
     *
     * @param solid the solid part e of the face, from 0.7 to 1
     * @return the factor
     * @throws IllegalArgumentException if out of that range
     */
    public static Ratio openings(Ratio solid) {
        WindLimits.within("solid", solid, LEAST_SOLID_OF_WALL, 1, "since a more open fence is no wall");
        return Ratio.of(openingFactor(solid.value()));
    }

    /**
     * Returns the coefficient of an open fence of flat boards, for the force on its solid area.
     *
     * @param solid the solid part of the face, over 0, to 0.7
     * @return Cf
     * @throws IllegalArgumentException if out of that range
     */
    public static Ratio ofOpenFence(Ratio solid) {
        return Ratio.of(ofFlat(open(solid)));
    }

    /**
     * Returns the coefficient of an open fence of round members, for the force on its solid area.
     *
     * @param solid the solid part of the face, over 0, to 0.7
     * @param large true if the diameter in feet times the root of the velocity pressure in psf is over 2.5
     * @return Cf
     * @throws IllegalArgumentException if out of that range
     */
    public static Ratio ofOpenFenceOfRounds(Ratio solid, boolean large) {
        return Ratio.of(ofRound(open(solid), large));
    }

    private static double aspect(Ratio lengthToHeight) {
        return WindLimits.overZero("lengthToHeight", lengthToHeight, "so check its sign")
                .value();
    }

    private static double clearance(Ratio heightToTop) {
        WindLimits.overZero("heightToTop", heightToTop, "so check its sign");
        return WindLimits.within("heightToTop", heightToTop, 0, 1, "since s is within h")
                .value();
    }

    private static double open(Ratio solid) {
        WindLimits.overZero("solid", solid, "so give solid area over gross area");
        return WindLimits.within("solid", solid, 0, LEAST_SOLID_OF_WALL, "since a more solid fence is a wall")
                .value();
    }

    static double openingFactor(double solid) {
        return 1 - Math.pow(1 - solid, 1.5);
    }

    static double ofFlat(double solid) {
        return solid < 0.1 ? 2.0 : solid < 0.3 ? 1.8 : 1.6;
    }

    static double ofRound(double solid, boolean large) {
        double small = solid < 0.1 ? 1.2 : solid < 0.3 ? 1.3 : 1.5;
        return large ? small - 0.4 : small;
    }

    static double wholeFace(double aspect, double clearance) {
        double y = between(CLEARANCES, clearance);
        int row = Math.min((int) y, CLEARANCES.length - 2);
        double x = between(ASPECTS, aspect);
        return mix(at(CASE_A[row], x), at(CASE_A[row + 1], x), y - row);
    }

    /** Returns the coefficients of case C by the distance from the windward end, in heights s. */
    static Steps fromEnd(double aspect, double clearance, double corner) {
        double x = between(LENGTHS, aspect);
        int column = Math.min((int) x, LENGTHS.length - 2);
        double nearGround = clearance > 0.8 ? 1.8 - clearance : 1;
        int count = 1;
        while (count < STRETCHES.length && STRETCHES[count] < aspect) {
            count++;
        }
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            double left = CASE_C[column][i];
            double right = CASE_C[column + 1][i];
            values[i] = nearGround * (Double.isNaN(left) ? right : mix(left, right, x - column));
        }
        if (aspect >= 5) {
            values[0] *= cornerFactor(corner);
        }
        return new Steps(Arrays.copyOf(STRETCHES, count), values);
    }

    static double cornerFactor(double corner) {
        return corner < RETURNS[0] ? 1 : at(RETURN_FACTORS, between(RETURNS, corner));
    }

    /** Returns the place of a value in rising marks: its index, with a part for how far it is on the way to the next. */
    private static double between(double[] marks, double value) {
        int last = marks.length - 1;
        if (value <= marks[0]) {
            return 0;
        }
        for (int i = 1; i <= last; i++) {
            if (value < marks[i]) {
                return i - 1 + (value - marks[i - 1]) / (marks[i] - marks[i - 1]);
            }
        }
        return last;
    }

    private static double at(double[] values, double place) {
        int below = Math.min((int) place, values.length - 2);
        return mix(values[below], values[below + 1], place - below);
    }

    private static double mix(double from, double to, double part) {
        return part == 0 ? from : part == 1 ? to : from + part * (to - from);
    }
}
