package yard;

import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.units.Length;

/** A program by someone else, who has the jars on the module path. */
public final class OneGate {

    private OneGate() {}

    public static void main(String[] args) {
        GateDesign gate = GateDesign.forOpening(
                Length.parse("47 1/2 in"),
                Length.parse("56 in"),
                HingeSide.LEFT,
                GateSpec.builder().build());
        System.out.println("leaf " + gate.activeLeaf().width());
        System.out.println("in modules " + OneGate.class.getModule().getName() + ", "
                + GateDesign.class.getModule().getName() + ", "
                + Length.class.getModule().getName());
    }
}
