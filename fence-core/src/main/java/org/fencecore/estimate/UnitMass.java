package org.fencecore.estimate;

import java.util.Optional;
import org.fencecore.FencePlan;
import org.fencecore.gate.hang.GateWood;
import org.fencecore.style.Lumber;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.UnitWeight;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Written;

/**
 * What one thing on the shopping list weighs, and how that is known: told by the price book; for lumber from its dressed
 * size, length and unit weight, that of its wood or the one given; a bag of concrete mix as its label says; a bag of gravel at 100 pcf.
 *
 * @param each what one weighs
 * @param how the numbers it comes from, in words
 * @param source where they come from
 */
record UnitMass(Mass each, String how, Citation source) {

    private static final Citation TOLD = Citation.of("price book", "", "");
    private static final Citation GIVEN = Citation.of("given", "", "");
    private static final Citation LABEL = Citation.of("label of the bag", "", "");
    private static final Citation WOOD = Citation.of("NDS Supplement", "3.1.3", "2018");

    /** Loose crushed stone; tables of the trade have 95 to 105 pcf. Common practice, no source. */
    private static final UnitWeight GRAVEL = UnitWeight.ofPcf(100);

    private static final Volume GRAVEL_BAG = Volume.ofCubicFeet(0.5);

    /** Weighs one thing of a line; empty if nothing is known of it, as of hinges and screws. */
    static Optional<UnitMass> of(MaterialLine line, FencePlan plan, EstimateSpec spec) {
        Optional<Mass> told = spec.prices().weight(line.item());
        if (told.isPresent()) {
            return Optional.of(new UnitMass(told.get(), "as given", TOLD));
        }
        if (line.lumber().isPresent()) {
            return Optional.of(stick(line.lumber().get(), line.length().orElseThrow(), plan, spec));
        }
        return switch (line.group()) {
            case CONCRETE -> Optional.of(new UnitMass(spec.takeoff().bag().weight(), "a bag", LABEL));
            case GRAVEL ->
                Optional.of(new UnitMass(
                        mass(GRAVEL, GRAVEL_BAG),
                        Written.volume(GRAVEL_BAG) + " at " + Written.unitWeight(GRAVEL),
                        Citation.COMMON_PRACTICE));
            default -> Optional.empty();
        };
    }

    private static UnitMass stick(Lumber lumber, Length length, FencePlan plan, EstimateSpec spec) {
        Optional<UnitWeight> told = spec.lumberWeight(lumber.name());
        UnitWeight unitWeight = told.orElseGet(() -> wood(lumber, plan, spec).unitWeight());
        Volume volume = lumber.thickness().times(lumber.width()).times(length);
        return new UnitMass(
                mass(unitWeight, volume),
                Written.inches(lumber.thickness()) + " x " + Written.inches(lumber.width()) + " x "
                        + Written.feet(length) + " at " + Written.unitWeight(unitWeight),
                told.isPresent() ? GIVEN : WOOD);
    }

    private static GateWood wood(Lumber lumber, FencePlan plan, EstimateSpec spec) {
        GateWood wood = plan.style().gateHardware().woodOf(lumber);
        return spec.moisture()
                .map(moisture -> GateWood.of(lumber.name(), wood.specificGravity(), moisture))
                .orElse(wood);
    }

    private static Mass mass(UnitWeight unitWeight, Volume volume) {
        return Mass.ofPounds(unitWeight.times(volume).poundsForce());
    }
}
