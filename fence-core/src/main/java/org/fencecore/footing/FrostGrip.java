package org.fencecore.footing;

import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.UnitWeight;

/**
 * The force with which freezing ground may grip the side of the concrete and lift it, and what holds it down: its own
 * weight, the cohesion of class 5 soil on its side below the frost, and the soil on what is wider at the bottom. The
 * weight of the fence is left out.
 *
 * @param lift the grip times the side of the concrete in frozen ground
 * @param hold the weight and friction
 */
record FrostGrip(Force lift, Force hold) {

    /** Class 5 of table 1806.2. */
    static final Pressure COHESION = Pressure.ofPsf(130);

    /** Loose soil back on a bell; common practice, no source. */
    private static final UnitWeight SOIL = UnitWeight.ofPcf(100);

    static FrostGrip on(FootingDesign design, Length frost, Pressure grip) {
        FootingSpec spec = design.spec();
        HoleShape hole = spec.hole();
        Length frozen = Length.min(frost, design.embedment()).minus(spec.groundNotCounted());
        double side = hole.perimeter() * Math.max(0, frozen.metres());
        Length below = Length.max(Length.ZERO, design.embedment().minus(frost));
        double friction =
                spec.soil().equals(SoilClass.CLAY) ? COHESION.pascals() * hole.perimeter() * below.metres() : 0;
        double flare = Math.max(0, hole.areaAtBottom() - hole.areaAtTop()) * below.metres();
        return new FrostGrip(
                Force.ofNewtons(grip.pascals() * side),
                design.concreteWeight().weight().plus(Force.ofNewtons(friction + SOIL.newtonsPerCubicMetre() * flare)));
    }

    boolean lifts() {
        return lift.compareTo(hold) > 0;
    }
}
