package org.fencecore.units;

/**
 * A weight per volume, such as that of wood or concrete; also the gain of a soil's bearing pressure with depth,
 * since pounds per square foot per foot are pounds per cubic foot.
 */
public final class UnitWeight extends Measure<UnitWeight> {

    private static final double PCF = 4.4482216152605 / (0.3048 * 0.3048 * 0.3048);

    /** None at all. */
    public static final UnitWeight ZERO = new UnitWeight(0);

    private UnitWeight(double si) {
        super(si);
    }

    @Override
    UnitWeight with(double newSi) {
        return new UnitWeight(newSi);
    }

    /**
     * Returns a unit weight given in newtons per cubic metre.
     *
     * @param newtonsPerCubicMetre the unit weight in newtons per cubic metre, finite
     * @return the unit weight
     * @throws IllegalArgumentException if not finite
     */
    public static UnitWeight ofNewtonsPerCubicMetre(double newtonsPerCubicMetre) {
        return new UnitWeight(newtonsPerCubicMetre);
    }

    /**
     * Returns a unit weight given in pounds-force per cubic foot.
     *
     * @param pcf the unit weight in pounds-force per cubic foot, finite
     * @return the unit weight
     * @throws IllegalArgumentException if not finite
     */
    public static UnitWeight ofPcf(double pcf) {
        return new UnitWeight(pcf * PCF);
    }

    /**
     * Returns the unit weight in newtons per cubic metre.
     *
     * @return newtons per cubic metre
     */
    public double newtonsPerCubicMetre() {
        return si();
    }

    /**
     * Returns the unit weight in pounds-force per cubic foot.
     *
     * @return pounds-force per cubic foot
     */
    public double pcf() {
        return si() / PCF;
    }

    /**
     * Returns the weight of a volume.
     *
     * @param volume the volume
     * @return its weight
     */
    public Force times(Volume volume) {
        return Force.ofNewtons(si() * volume.cubicMetres());
    }

    /**
     * Returns the pressure at a depth.
     *
     * @param depth the depth
     * @return the pressure there
     */
    public Pressure times(Length depth) {
        return Pressure.ofPascals(si() * depth.metres());
    }

    @Override
    public String toString() {
        return rounded(pcf()) + " pcf";
    }
}
