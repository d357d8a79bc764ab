package org.fencecore.examples;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;

/** A whole plan in a short program: one side of an invented yard, with a gate. */
public final class OneSideWithGateExample {

    private OneSideWithGateExample() {}

    /**
     * Prints what the fence takes.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // README begins
        LotBoundary lot = LotBoundary.of(List.of(
                Course.of(Bearing.parse("N 1°30' E"), Length.parse("50 ft")),
                Course.of(Bearing.parse("S 88°30' E"), Length.parse("40 ft")),
                Course.of(Bearing.parse("S 1°30' W"), Length.parse("50 ft")),
                Course.of(Bearing.parse("N 88°30' W"), Length.parse("40 ft"))));
        Profile ground = Profile.builder()
                .point(Length.ZERO, Length.parse("10.0 ft"))
                .point(Length.parse("50 ft"), Length.parse("6.5 ft"))
                .build();
        GateLocation gate = GateLocation.named("side gate")
                .onSide(1)
                .centredAt(Length.parse("12 ft"))
                .clearOpening(Length.parse("47 1/2 in"))
                .build();
        Site site = Site.on(lot).fenceOn(1).ground(1, ground).gate(gate).build();
        FencePlan plan = FencePlanner.plan(site, FenceStyle.builder().build());

        System.out.println(plan.posts().size() + " posts, " + plan.boardCount() + " boards");
        System.out.println("gate leaf " + plan.gates().get(0).leaf().width());
        System.out.println("first hole " + plan.posts().get(0).footing().holeDepth() + " deep");
        plan.findings().forEach(finding -> System.out.println(finding.severity() + " " + finding.code()));
        // README ends
    }
}
