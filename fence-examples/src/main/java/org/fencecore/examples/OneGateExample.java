package org.fencecore.examples;

import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/** For one's own planner: a single module, here gates, without a lot, a style or a plan. */
public final class OneGateExample {

    private OneGateExample() {}

    /**
     * Prints what a gate is cut from.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // README begins
        GateDesign gate = GateDesign.forOpening(
                Length.parse("47 1/2 in"),
                Length.parse("4 ft 8 in"),
                HingeSide.LEFT,
                GateSpec.builder().build());
        GateLeaf leaf = gate.activeLeaf();
        TapeFormat tape = TapeFormat.inches(16);
        leaf.pieces().forEach(System.out::println);
        leaf.braces().forEach(System.out::println);
        System.out.println("square when the diagonals measure " + tape.format(leaf.diagonal()));
        gate.findings().forEach(System.out::println);
        // README ends
    }
}
