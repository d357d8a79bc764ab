package org.fencecore.gate.hang;

import java.util.Objects;
import org.fencecore.units.Ratio;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Wood by how heavy it is: its specific gravity, and how much moisture is in it.
 *
 * <pre>
 * unit weight = 62.4 pcf * G / (1 + 0.9 G m) * (1 + m)
 * </pre>
 *
 * <p>with the specific gravity G on oven-dry weight and volume, which also decides how screws hold, and the moisture m as
 * a share of the oven-dry weight. Above 30 % wood is as large as it gets and only grows heavier, so that the formula is
 * kept to that. What treatment adds is left out: wood fresh from treatment can weigh half as much again.
 *
 * <p>Sources: the formula and the specific gravities are those of the National Design Specification for Wood
 * Construction Supplement, 2018 (section 3.1.3, Table 4A).
 *
 * <p>Example: southern pine, G = 0.55, weighs 36.74 pcf at 15 % moisture and 37.33 pcf at 19 %.
 */
public final class GateWood {

    private static final UnitWeight WATER = UnitWeight.ofPcf(62.4);
    private static final Ratio HEAVIEST = Ratio.of(1.3);
    private static final Ratio WETTEST = Ratio.ofPercent(30);

    private final String name;
    private final Ratio specificGravity;
    private final Ratio moisture;

    private GateWood(String name, Ratio specificGravity, Ratio moisture) {
        this.name = name;
        this.specificGravity = specificGravity;
        this.moisture = moisture;
    }

    /**
     * Returns any wood.
     *
     * @param name what it is called
     * @param specificGravity its specific gravity, on oven-dry weight and volume, over 0, to 1.3
     * @param moisture its moisture as a share of the oven-dry weight, from 0 to 30 %
     * @return the wood
     * @throws IllegalArgumentException if either is out of range
     */
    public static GateWood of(String name, Ratio specificGravity, Ratio moisture) {
        Objects.requireNonNull(name, "name");
        if (!specificGravity.isPositive() || specificGravity.compareTo(HEAVIEST) > 0) {
            throw new IllegalArgumentException("specificGravity was " + Written.factor(specificGravity)
                    + "; it must be over 0 and no more than 1.3, such as 0.55 for southern pine");
        }
        if (moisture.isNegative() || moisture.compareTo(WETTEST) > 0) {
            throw new IllegalArgumentException("moisture was " + Written.factor(moisture.times(100)) + " %; it must be"
                    + " from 0 to 30 %, beyond which the formula does not reach");
        }
        return new GateWood(name, specificGravity, moisture);
    }

    /**
     * Returns southern pine, which most treated lumber is; G = 0.55.
     *
     * @param moisture its moisture, from 0 to 30 %
     * @return the wood
     * @throws IllegalArgumentException if out of range
     */
    public static GateWood southernPine(Ratio moisture) {
        return of("southern pine", Ratio.of(0.55), moisture);
    }

    /**
     * Returns Douglas fir-larch; G = 0.50.
     *
     * @param moisture its moisture, from 0 to 30 %
     * @return the wood
     * @throws IllegalArgumentException if out of range
     */
    public static GateWood douglasFirLarch(Ratio moisture) {
        return of("Douglas fir-larch", Ratio.of(0.50), moisture);
    }

    /**
     * Returns hem-fir; G = 0.43.
     *
     * @param moisture its moisture, from 0 to 30 %
     * @return the wood
     * @throws IllegalArgumentException if out of range
     */
    public static GateWood hemFir(Ratio moisture) {
        return of("hem-fir", Ratio.of(0.43), moisture);
    }

    /**
     * Returns spruce-pine-fir; G = 0.42.
     *
     * @param moisture its moisture, from 0 to 30 %
     * @return the wood
     * @throws IllegalArgumentException if out of range
     */
    public static GateWood sprucePineFir(Ratio moisture) {
        return of("spruce-pine-fir", Ratio.of(0.42), moisture);
    }

    /**
     * Returns redwood; G = 0.37.
     *
     * @param moisture its moisture, from 0 to 30 %
     * @return the wood
     * @throws IllegalArgumentException if out of range
     */
    public static GateWood redwood(Ratio moisture) {
        return of("redwood", Ratio.of(0.37), moisture);
    }

    /**
     * Returns western cedars; G = 0.36.
     *
     * @param moisture its moisture, from 0 to 30 %
     * @return the wood
     * @throws IllegalArgumentException if out of range
     */
    public static GateWood westernCedars(Ratio moisture) {
        return of("western cedars", Ratio.of(0.36), moisture);
    }

    /**
     * Returns its specific gravity.
     *
     * @return G, on oven-dry weight and volume
     */
    public Ratio specificGravity() {
        return specificGravity;
    }

    /**
     * Returns how much moisture is in it.
     *
     * @return the share of the oven-dry weight
     */
    public Ratio moisture() {
        return moisture;
    }

    /**
     * Returns what it weighs with its moisture.
     *
     * @return the unit weight
     */
    public UnitWeight unitWeight() {
        double g = specificGravity.value();
        double m = moisture.value();
        return WATER.times(g / (1 + 0.9 * g * m) * (1 + m));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GateWood that
                && name.equals(that.name)
                && specificGravity.equals(that.specificGravity)
                && moisture.equals(that.moisture);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, specificGravity, moisture);
    }

    @Override
    public String toString() {
        return name + " at " + Written.factor(moisture.times(100)) + " % moisture";
    }
}
