package org.fencecore.wind;

import java.util.Objects;
import org.fencecore.internal.Limits;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;

/**
 * An edition of ASCE 7, the wind standard of the United States building codes, by what it does differently.
 *
 * <table>
 * <caption>What differs</caption>
 * <tr><th scope="col">edition</th><th scope="col">velocity pressure q</th><th scope="col">force on a wall</th>
 *     <th scope="col">coefficient Kz</th></tr>
 * <tr><td>7-10</td><td>0.00256 Kz Kzt Kd V^2</td><td>q G Cf A</td><td>2.01 (z / zg)^(2 / a)</td></tr>
 * <tr><td>7-16</td><td>0.00256 Kz Kzt Kd Ke V^2</td><td>q G Cf A</td><td>2.01 (z / zg)^(2 / a)</td></tr>
 * <tr><td>7-22</td><td>0.00256 Kz Kzt Ke V^2</td><td>q Kd G Cf A</td><td>2.41 (z / zg)^(2 / a)</td></tr>
 * </table>
 *
 * <p>The directionality factor Kd stands in the velocity pressure up to 7-16 and in the force from 7-22 on: once in
 * either. All three take ultimate wind speeds, so that 0.6 of the load is compared with allowable stresses.
 *
 * <p>Example: 6 ft up in exposure C, Kz is 0.8489 by 7-16, as at any height to 15 ft.
 *
 * <pre>{@code
 * AsceEdition.ASCE_7_16.kz(Exposure.C, Length.ofFeet(6));   // 0.8489
 * }</pre>
 *
 * <p>Sources: ASCE 7-10 and 7-16, equation 26.10-1 (27.3-1 in 7-10) and table 26.11-1 (26.9-1 in 7-10); ASCE 7-22,
 * equation 26.10-1 and table 26.11-1. The force of 7-22, equation 29.3-1, is from memory.
 */
public enum AsceEdition {
    /** ASCE 7-10. */
    ASCE_7_10("ASCE 7-10"),
    /** ASCE 7-16: the ground's elevation comes in. */
    ASCE_7_16("ASCE 7-16"),
    /** ASCE 7-22: the directionality factor moves from the velocity pressure to the force. */
    ASCE_7_22("ASCE 7-22");

    /** Kz does not fall further below this height, in metres. */
    private static final double LOWEST = 15 * 0.3048;

    /** The greatest height of the table that is read here, in metres. */
    private static final double HIGHEST_OF_TABLE = 30 * 0.3048;

    private final String name;

    AsceEdition(String name) {
        this.name = name;
    }

    /**
     * Returns the velocity pressure exposure coefficient by its formula.
     *
     * @param exposure how open the ground is
     * @param height the height above grade, from 0 to 100 ft; up to 15 ft it is that of 15 ft
     * @return Kz
     * @throws IllegalArgumentException if the height is out of that range
     */
    public Ratio kz(Exposure exposure, Length height) {
        Objects.requireNonNull(exposure, "exposure");
        Limits.within("height", height, Length.ZERO, WindLimits.HIGHEST);
        return Ratio.of(formulaKz(exposure, height.metres()));
    }

    /**
     * Returns the velocity pressure exposure coefficient as the standard's table prints it, to two decimals, and in
     * proportion between its rows of 15, 20, 25 and 30 ft.
     *
     * <p>The printed table is not always the formula rounded: at 25 ft 0.6650 is printed 0.66. The table of 7-22 was not
     * seen, so that it has none here.
     *
     * @param exposure how open the ground is
     * @param height the height above grade, from 0 to 30 ft
     * @return Kz
     * @throws IllegalArgumentException if the height is out of that range, or the edition is 7-22
     */
    public Ratio tabulatedKz(Exposure exposure, Length height) {
        Objects.requireNonNull(exposure, "exposure");
        Limits.within("height", height, Length.ZERO, Length.ofFeet(30));
        requireTable();
        return Ratio.of(tableKz(exposure, height.metres()));
    }

    void requireTable() {
        if (this == ASCE_7_22) {
            throw new IllegalArgumentException(
                    "edition was " + name + ", whose table of Kz is not held; use its formula");
        }
    }

    double formulaKz(Exposure exposure, double metres) {
        boolean later = this == ASCE_7_22;
        double relative = Math.max(metres, LOWEST) / exposure.gradientHeight(later);
        return (later ? 2.41 : 2.01) * Math.pow(relative, 2 / exposure.power(later));
    }

    static double tableKz(Exposure exposure, double metres) {
        double step = (Math.min(Math.max(metres, LOWEST), HIGHEST_OF_TABLE) - LOWEST) / (5 * 0.3048);
        int below = Math.min((int) step, 2);
        return exposure.printed(below) + (step - below) * (exposure.printed(below + 1) - exposure.printed(below));
    }

    /** Tells whether the elevation of the ground counts. */
    boolean knowsElevation() {
        return this != ASCE_7_10;
    }

    /** Tells whether Kd belongs to the velocity pressure; if not, to the force. */
    boolean hasKdInVelocityPressure() {
        return this != ASCE_7_22;
    }

    String velocityFormula() {
        return "0.00256 Kz Kzt " + (hasKdInVelocityPressure() ? "Kd " : "") + (knowsElevation() ? "Ke " : "") + "V^2";
    }

    Citation velocitySource() {
        return Citation.of(name, "equation " + (this == ASCE_7_10 ? "27.3-1" : "26.10-1"), "");
    }

    Citation terrainSource() {
        return Citation.of(name, "table " + (this == ASCE_7_10 ? "26.9-1" : "26.11-1"), "");
    }

    Citation wallSource() {
        return Citation.of(name, "figure " + (this == ASCE_7_10 ? "29.4-1" : "29.3-1"), "");
    }

    Citation openSource() {
        return Citation.of(name, "figure " + (this == ASCE_7_10 ? "29.5-2" : "29.4-2"), "");
    }

    /**
     * Returns the name of the edition.
     *
     * @return such as {@code ASCE 7-16}
     */
    @Override
    public String toString() {
        return name;
    }
}
