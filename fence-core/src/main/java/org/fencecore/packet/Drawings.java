package org.fencecore.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.view.BoardMarksView;
import org.fencecore.drawing.view.ElevationView;
import org.fencecore.drawing.view.GateView;
import org.fencecore.drawing.view.PlanView;
import org.fencecore.stakeout.StringLayout;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/** The drawings of a packet, each with the name of the job. */
final class Drawings {

    /** As much of a run as stands beside the headings of its table on Letter at 1/4 in to the foot. */
    private static final Length LONGEST = Length.ofFeet(30);

    private final FencePlan plan;
    private final TapeFormat tape;
    private final Optional<String> job;

    Drawings(FencePlan plan, TapeFormat tape, Optional<String> job) {
        this.plan = plan;
        this.tape = tape;
        this.job = job;
    }

    /** The plan with strings and batter boards. */
    Drawing plan() {
        return named(StringParts.on(PlanView.of(plan, tape), StringLayout.of(plan)));
    }

    /** The elevation of a run over as many sheets as it takes. */
    List<Drawing> elevation(Run run) {
        return named(ElevationView.sheets(plan, run, LONGEST, tape));
    }

    Drawing wholeElevation(Run run) {
        return named(ElevationView.of(plan, run, tape));
    }

    /** The story pole of each stretch that has boards, over as many sheets as it takes. */
    Map<Stretch, List<Drawing>> boardMarks() {
        Map<Stretch, List<Drawing>> poles = new LinkedHashMap<>();
        for (Run run : plan.runs()) {
            for (Stretch stretch : run.stretches()) {
                poles.put(stretch, named(BoardMarksView.sheets(plan, run, stretch, tape)));
            }
        }
        return poles;
    }

    List<Drawing> gates() {
        List<Drawing> gates = new ArrayList<>();
        for (GateBay gate : plan.gates()) {
            gates.add(GateView.of(gate, tape));
        }
        return named(gates);
    }

    private List<Drawing> named(List<Drawing> drawings) {
        return drawings.stream().map(this::named).toList();
    }

    private Drawing named(Drawing drawing) {
        return job.map(name -> drawing.toBuilder().job(name).build()).orElse(drawing);
    }
}
