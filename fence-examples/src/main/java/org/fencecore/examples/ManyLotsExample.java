package org.fencecore.examples;

import java.util.List;
import java.util.stream.IntStream;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.estimate.Comparison;
import org.fencecore.estimate.Estimate;
import org.fencecore.estimate.EstimateSpec;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.BoardPattern;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Length;

/** For estimating software: thousands of invented lots planned in parallel, one taken off and priced, and a what-if. */
public final class ManyLotsExample {

    private ManyLotsExample() {}

    /**
     * Prints counts over all lots, what one of them takes, and what another style would change.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        List<Site> lots =
                IntStream.range(0, 2_000).mapToObj(ManyLotsExample::lot).toList();
        EstimateSpec prices =
                EstimateSpec.builder(PriceAndCompareExample.prices()).build();
        // README begins
        FenceStyle shadowbox = FenceStyle.builder().build();
        List<FencePlan> plans = lots.parallelStream()
                .map(site -> FencePlanner.plan(site, shadowbox))
                .toList();

        System.out.println(plans.stream().mapToInt(FencePlan::boardCount).sum() + " boards");
        plans.stream()
                .filter(each -> !each.isBuildable())
                .forEach(each -> System.out.println(
                        "not buildable: " + each.findings().get(0).code()));

        FencePlan plan = plans.get(7);
        Takeoff.of(plan).materials().stream().limit(3).forEach(System.out::println);
        Estimate estimate = Estimate.of(plan, prices);
        System.out.println("materials " + estimate.pricedMaterials() + ", all priced: " + estimate.isComplete());

        FenceStyle sideBySide = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.parse("5 1/2 in")))
                .build();
        FencePlan other = FencePlanner.plan(plan.site(), sideBySide);
        Comparison comparison = Comparison.of("shadowbox", estimate, "side by side", Estimate.of(other, prices));
        System.out.println(
                "side by side: " + comparison.row("boards").difference().orElseThrow() + " boards, "
                        + comparison.row("materials").difference().orElseThrow() + " for materials");
        other.findings().stream()
                .filter(finding -> !plan.findings().contains(finding))
                .forEach(finding -> System.out.println(finding.code() + " at " + finding.place()));
        // README ends
    }

    /**
     * A lot between 50 and 99 ft deep that rises by up to 12 % away from the street, with a gate. In one of a thousand the deed
     * has a slip, and the lot does not close.
     */
    private static Site lot(int number) {
        Length depth = Length.ofFeet(50 + number % 50);
        Length width = Length.ofFeet(40);
        LotBoundary boundary = LotBoundary.of(List.of(
                Course.of(Bearing.NORTH, depth),
                Course.of(Bearing.EAST, width),
                Course.of(Bearing.SOUTH, depth),
                Course.of(Bearing.WEST, number % 1000 == 999 ? Length.ofFeet(44) : width)));
        Profile ground = Profile.builder()
                .point(Length.ZERO, Length.ZERO)
                .point(depth, depth.times(number % 13).dividedBy(100))
                .build();
        GateLocation gate = GateLocation.named("side gate")
                .onSide(1)
                .centredAt(Length.ofFeet(12))
                .clearOpening(Length.ofInches(47.5))
                .build();
        return Site.on(boundary).fenceOn(1).ground(1, ground).gate(gate).build();
    }
}
