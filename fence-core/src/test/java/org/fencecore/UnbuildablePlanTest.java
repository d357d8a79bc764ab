package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fencecore.Plans.gate;
import static org.fencecore.Plans.levelSide;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.util.List;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/** Designs that do not work: every problem is a finding, and what can be planned is. */
class UnbuildablePlanTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();

    // ---- what is wrong ----

    @Test
    void aLotThatDoesNotCloseHasNoPlanAndSaysByHowMuch() {
        LotBoundary lot = LotBoundary.of(
                List.of(Plans.course(0, 50), Plans.course(90, 40), Plans.course(180, 50), Plans.course(270, 30)));
        FencePlan plan = FencePlanner.plan(Site.on(lot).fenceOn(1).build(), USUAL);
        assertThat(plan.runs()).isEmpty();
        assertThat(blocker(plan)).extracting(Finding::code).isEqualTo("lot-does-not-close");
        assertThat(blocker(plan).message()).contains("10.00 ft").contains("1 part in 17");
        assertThatThrownBy(plan::requireBuildable)
                .isInstanceOf(NotBuildableException.class)
                .hasMessageContaining("do not close");
    }

    @Test
    void aLotThatCrossesItselfNamesTheSides() {
        LotBoundary lot = LotBoundary.of(List.of(
                Plans.course(45, 50 * Math.sqrt(2)),
                Plans.course(180, 50),
                Plans.course(315, 50 * Math.sqrt(2)),
                Plans.course(180, 50)));
        FencePlan plan = FencePlanner.plan(Site.on(lot).fenceOn(1).build(), USUAL);
        assertThat(blocker(plan).code()).isEqualTo("lot-crosses-itself");
        assertThat(blocker(plan).message()).contains("side 1 crosses side 3").contains("25.00 ft");
    }

    @Test
    void aGateWiderThanItsRun() {
        Site site = levelSide().gate(gate("barn gate", 1, 25, 620)).build();
        Finding finding = blocker(FencePlanner.plan(site, USUAL));
        assertThat(finding.code()).isEqualTo("gate-wider-than-run");
        assertThat(finding.place()).contains("barn gate");
        assertThat(finding.message()).contains("51' 8\"").contains("48' 5\"");
    }

    @Test
    void aGatePastTheEndOfItsRun() {
        Site site = levelSide().gate(gate("far gate", 1, 49, 48)).build();
        Finding finding = blocker(FencePlanner.plan(site, USUAL));
        assertThat(finding.code()).isEqualTo("gate-off-run");
        assertThat(finding.message()).contains("47.00 ft to 51.00 ft");
    }

    @Test
    void overlappingGates() {
        Site site = levelSide()
                .gate(gate("one", 1, 20, 48))
                .gate(gate("two", 1, 22, 48))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(blocker(plan).code()).isEqualTo("gates-overlap");
        assertThat(blocker(plan).message()).contains("20.00 ft").contains("one").contains("22.00 ft");
        assertThat(plan.gates()).hasSize(1);
    }

    @Test
    void anOpeningTooNarrowForAGate() {
        Site narrow = levelSide().gate(gate("cat gate", 1, 20, 9)).build();
        assertThat(blocker(FencePlanner.plan(narrow, USUAL)).code()).isEqualTo("gate-brace-wide");
        Site slit = levelSide().gate(gate("slit", 1, 20, 0.75)).build();
        assertThat(blocker(FencePlanner.plan(slit, USUAL)).code()).isEqualTo("gate-too-narrow");
    }

    @Test
    void aGateOnASideWithoutFence() {
        Site site = levelSide().gate(gate("lost gate", 3, 20, 48)).build();
        Finding finding = blocker(FencePlanner.plan(site, USUAL));
        assertThat(finding.code()).isEqualTo("gate-without-fence");
        assertThat(finding.place()).isEqualTo("lost gate on side 3");
    }

    @Test
    void shotsOverAnotherDatum() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1, 2)
                .ground(1, shots(0, 0, 49.5, 0))
                .ground(2, shots(0.5, 900, 40, 900))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.findings())
                .filteredOn(finding -> finding.severity() == Severity.BLOCKER)
                .extracting(Finding::code)
                .contains("ground-does-not-meet", "post-too-tall");
    }

    /** A strip 30 in wide: its two posts on side 2 stand 30 - 2 x 7 3/4 = 14 1/2 in apart, those of 16 in wide 1/2 in. */
    @Test
    void postsThatStandInEachOther() {
        FencePlan strip = FencePlanner.plan(
                Site.on(rectangle(50, 16 / 12.0))
                        .fenceOn(1, 3)
                        .ground(1, shots(0, 0, 50, 0))
                        .ground(3, shots(0, 0, 50, 0))
                        .build(),
                USUAL);
        assertThat(blocker(strip).code()).isEqualTo("posts-collide");
        assertThat(blocker(strip).message()).contains("1/2\"");
        assertThat(blocker(strip).place()).isEqualTo("posts 1 and 16");
        FencePlan wider = FencePlanner.plan(
                Site.on(rectangle(50, 25 / 12.0))
                        .fenceOn(1, 3)
                        .ground(1, shots(0, 0, 50, 0))
                        .ground(3, shots(0, 0, 50, 0))
                        .build(),
                USUAL);
        assertThat(wider.isBuildable()).isTrue();
        assertThat(wider.findings()).extracting(Finding::code).contains("holes-run-together");
    }

    @Test
    void aGateThatLeavesNoRoomForItsPost() {
        // Between the end posts' faces are 581 in; 575 leave 6 in, less than a hole.
        Site site = levelSide().gate(gate("wide gate", 1, 25, 575)).build();
        assertThat(blocker(FencePlanner.plan(site, USUAL)).code()).isEqualTo("gate-leaves-no-post");
    }

    @Test
    void groundThatDoesNotCoverTheRun() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1)
                .ground(1, shots(5, 0, 50, 0))
                .build();
        Finding finding = blocker(FencePlanner.plan(site, USUAL));
        assertThat(finding.code()).isEqualTo("ground-not-covered");
        assertThat(finding.place()).isEqualTo("side 1");
        assertThat(finding.message()).contains("5.00 ft to 50.00 ft").contains("0.65 ft to 49.35 ft");
        assertThat(blocker(FencePlanner.plan(
                                Site.on(rectangle(50, 40)).fenceOn(1).build(), USUAL))
                        .code())
                .isEqualTo("no-ground");
    }

    @Test
    void groundTooSteepToBuildOn() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1)
                .ground(1, shots(0, 0, 20, 0, 30, 15, 50, 15))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.findings())
                .filteredOn(finding -> finding.severity() == Severity.BLOCKER)
                .extracting(Finding::code)
                .contains("ground-too-steep");
    }

    @Test
    void aStretchTooShortForTheBoards() {
        // Of 24 in, 2 x 7 3/4 are off: the posts' outer edges are 12 in apart, less than two boards and a gap of 2 1/2.
        Site site = Site.on(rectangle(2, 40))
                .fenceOn(1)
                .ground(1, shots(0, 0, 2, 0))
                .build();
        FencePlan plan = FencePlanner.plan(site, USUAL);
        assertThat(plan.findings())
                .filteredOn(finding -> finding.severity() == Severity.BLOCKER)
                .extracting(Finding::code)
                .contains("too-short-for-boards");
    }

    @Test
    void aLotTooNarrowForTheSetback() {
        Site site = Site.on(rectangle(50, 1))
                .fenceOn(1)
                .ground(1, shots(0, 0, 50, 0))
                .build();
        assertThat(blocker(FencePlanner.plan(site, USUAL)).code()).isEqualTo("lot-too-narrow");
    }

    @Test
    void aStringOnTheBoundaryPutsTheConcreteOverIt() {
        Site site = levelSide().setback(in(1)).build();
        assertThat(FencePlanner.plan(site, USUAL).findings())
                .filteredOn(finding -> finding.code().equals("over-the-boundary"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("3 1/2\""));
    }

    @Test
    void shotsOfTwoSidesThatDisagreeAtTheirCorner() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1, 2)
                .ground(1, shots(0, 0, 50, 0))
                .ground(2, shots(0, 1, 40, 1))
                .build();
        assertThat(FencePlanner.plan(site, USUAL).findings())
                .filteredOn(finding -> finding.code().equals("ground-does-not-meet"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("1' 0\""));
    }

    private static Finding blocker(FencePlan plan) {
        return plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no blocker in " + plan.findings()));
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
