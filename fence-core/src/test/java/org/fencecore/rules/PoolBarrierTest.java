package org.fencecore.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fencecore.rules.Plans.ORDINANCE;
import static org.fencecore.rules.Plans.at;
import static org.fencecore.rules.Plans.east;
import static org.fencecore.rules.Plans.feet;
import static org.fencecore.rules.Plans.inches;
import static org.fencecore.rules.Plans.sloping;

import java.util.List;
import java.util.function.UnaryOperator;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

/**
 * A fence due east with the water to the north, on its left, against the figures that are published: International Swimming
 * Pool and Spa Code, section 305, as guides to builders and pages of local offices repeat them (48 in high; 2 in and 4 in
 * under it; openings 4 in, or 1-3/4 in where horizontal members are under 45 in apart and then on the side of the water;
 * release 54 in up, or 3 in under the top on the side of the water with no opening over 1/2 in near it).
 */
class PoolBarrierTest {

    private static final PoolBarrier PUBLISHED = PoolBarrier.builder(Side.LEFT, "pool barrier", PoolBarrier.PUBLISHED)
            .build();

    /** What just meets every figure; the members count as widely spaced. */
    private static FencePart.Builder fence() {
        return FencePart.on("side 2", east(0, 40, 0))
                .bottom(inches(2))
                .top(inches(48))
                .opening(inches(4))
                .horizontals(inches(45), Side.RIGHT);
    }

    /** A gate that just meets every figure with its release within reach. */
    private static GatePart gate() {
        FencePart leaf = FencePart.on("garden gate", east(40, 43, 0))
                .top(inches(51))
                .opening(inches(0.5))
                .withoutHorizontals()
                .build();
        return GatePart.of("garden gate", leaf)
                .withSwing(Side.RIGHT)
                .withSelfClosing(true)
                .withSelfLatching(true)
                .withLock(true)
                .withRelease(inches(48), Side.LEFT);
    }

    private static List<Finding> check(PoolBarrier rule, FencePart.Builder fence) {
        return LocalRules.of(List.of(rule)).check(List.of(fence.build()));
    }

    private static List<Finding> check(GatePart gate) {
        return LocalRules.of(List.of(PUBLISHED)).check(List.of(), List.of(), List.of(gate));
    }

    private static Finding only(UnaryOperator<FencePart.Builder> change) {
        List<Finding> findings = check(PUBLISHED, change.apply(fence()));
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).source()).contains(PoolBarrier.PUBLISHED);
        assertThat(findings.get(0).severity()).isEqualTo(Severity.BLOCKER);
        assertThat(findings.get(0).remedy()).endsWith("the local office decides");
        return findings.get(0);
    }

    private static Finding only(GatePart gate) {
        List<Finding> findings = check(gate);
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).place()).isEqualTo("garden gate");
        return findings.get(0);
    }

    @Test
    void whatJustMeetsTheFiguresKeepsThem() {
        assertThat(LocalRules.of(List.of(PUBLISHED)).check(List.of(fence().build()), List.of(), List.of(gate())))
                .isEmpty();
    }

    @Test
    void heightIsCheckedAllAlong() {
        // From 52 in down to 44 in in 40 ft: under 48 in beyond the middle.
        Finding low = only(fence -> fence.top(sloping(40, 52 / 12.0, 44 / 12.0)));

        assertThat(low.code()).isEqualTo("pool-height");
        assertThat(low.message())
                .isEqualTo(
                        "pool barrier: the fence is only 3' 8\" high from 20.00 ft to 40.00 ft, and 4' 0\" is the least");
    }

    @Test
    void theGapUnderItDependsOnTheGround() {
        Finding soft = only(fence -> fence.bottom(inches(2.5)));
        Finding paved = only(fence -> fence.bottom(inches(4.5)).overPaving(true));

        assertThat(soft.code()).isEqualTo("pool-clearance");
        assertThat(soft.message()).contains("up to 2 1/2\" off the ground").contains("2\" is the most over grass");
        assertThat(paved.code()).isEqualTo("pool-clearance");
        assertThat(paved.message()).contains("4\" is the most over paving");
        assertThat(check(PUBLISHED, fence().bottom(inches(4)).overPaving(true))).isEmpty();
    }

    @Test
    void openingsAreNarrowerOverALadder() {
        Finding wide = only(fence -> fence.opening(inches(4.25)));
        Finding ladder = only(fence -> fence.opening(inches(2)).horizontals(inches(30), Side.LEFT));

        assertThat(wide.code()).isEqualTo("pool-opening");
        assertThat(wide.message()).contains("4 1/4\" wide").contains("4\" is the most");
        assertThat(ladder.code()).isEqualTo("pool-opening");
        assertThat(ladder.message()).contains("1 3/4\" is the most between closely spaced horizontal members");
        assertThat(check(PUBLISHED, fence().opening(inches(1.75)).horizontals(inches(30), Side.LEFT)))
                .isEmpty();
        assertThat(check(PUBLISHED, fence().opening(inches(4)).withoutHorizontals()))
                .isEmpty();
    }

    @Test
    void aLadderIsOnTheSideOfTheWater() {
        Finding climbable = only(fence -> fence.opening(Length.ZERO).horizontals(inches(44), Side.RIGHT));

        assertThat(climbable.code()).isEqualTo("pool-climbable");
        assertThat(climbable.message()).contains("only 3' 8\" apart from 0.00 ft to 40.00 ft");
    }

    @Test
    void aGateOpensAwayAndShutsByItself() {
        assertThat(only(gate().withSwing(Side.LEFT)).code()).isEqualTo("pool-gate-swing");
        assertThat(only(gate().withSelfClosing(false)).message())
                .isEqualTo("pool barrier: the gate is not said to close by itself");
        Finding neither = only(gate().withSelfClosing(false).withSelfLatching(false));
        assertThat(neither.code()).isEqualTo("pool-gate-closing");
        assertThat(neither.message()).contains("close and latch by itself");
        assertThat(only(gate().withLock(false)).code()).isEqualTo("pool-gate-lock");
    }

    @Test
    void aReleaseWithinReachIsShielded() {
        Finding outside = only(gate().withRelease(inches(48), Side.RIGHT));
        Finding nearTop = only(gate().withRelease(inches(48.5), Side.LEFT));
        Finding open = only(gate().withOpeningAtRelease(inches(0.75)));
        Finding all = only(gate().withRelease(inches(52), Side.RIGHT).withOpeningAtRelease(inches(0.75)));

        assertThat(List.of(outside, nearTop, open, all))
                .extracting(Finding::code)
                .containsOnly("pool-gate-release");
        assertThat(outside.message()).endsWith("under 4' 6\" up, is on the side away from the water");
        assertThat(nearTop.message()).endsWith("is only 2 1/2\" under the top of the gate");
        assertThat(open.message()).endsWith("is near openings of up to 3/4\"");
        assertThat(all.message())
                .endsWith("on the side away from the water, over the top of the gate and near openings of up to 3/4\"");
        assertThat(check(gate().withRelease(inches(54), Side.RIGHT).withOpeningAtRelease(inches(4))))
                .isEmpty();
    }

    /** The release is 51 - 48 = 3 in under the top, which is just enough. */
    @Test
    void theSheetHasTheGateBesideTheFigures() {
        Worksheet good = PUBLISHED.worksheet(gate());
        assertThat(good.result()).isEqualTo(0);
        assertThat(good.toString())
                .contains("release under the top")
                .contains("51 in - 48 in")
                .contains("widest opening within 1' 6\" of it");
        GatePart bad = gate().withSwing(Side.LEFT)
                .withSelfLatching(false)
                .withLock(false)
                .withRelease(inches(50), Side.RIGHT);
        assertThat(PUBLISHED.worksheet(bad).result()).isEqualTo(check(bad).size());
        assertThat(check(bad))
                .extracting(Finding::code)
                .containsExactly("pool-gate-swing", "pool-gate-closing", "pool-gate-lock", "pool-gate-release");
        Worksheet high = PUBLISHED.worksheet(gate().withRelease(inches(54), Side.RIGHT));
        assertThat(high.result()).isEqualTo(0);
        assertThat(high.toString()).doesNotContain("under the top");
        Worksheet untold = PUBLISHED.worksheet(GatePart.of("gate", gate().leaf()));
        assertThat(untold.result()).isEqualTo(1);
        assertThat(PUBLISHED.concerns(bad)).isTrue();
    }

    @Test
    void whatIsNotToldIsSaidToBeUnchecked() {
        FencePart fence = FencePart.on("side 2", east(0, 40, 0)).top(feet(6)).build();
        GatePart gate = GatePart.of(
                "garden gate",
                FencePart.on("garden gate", east(40, 43, 0)).top(feet(6)).build());

        List<Finding> findings =
                LocalRules.of(List.of(PUBLISHED)).check(List.of(fence, fence), List.of(), List.of(gate));

        assertThat(findings)
                .extracting(Finding::code)
                .containsExactly("pool-gate-closing", "pool-not-told", "pool-not-told");
        assertThat(findings.get(1).severity()).isEqualTo(Severity.NOTE);
        assertThat(findings.get(1).message())
                .isEqualTo(
                        "pool barrier: not checked, since not told: how wide its openings are and where its horizontal"
                                + " members are");
        assertThat(findings.get(2).message())
                .contains("to which side it opens, whether it takes a lock and where the release of its latch is");
    }

    @Test
    void onlyTheFenceInTheZoneIsABarrier() {
        PoolBarrier yard = PoolBarrier.builder(Side.LEFT, "pool barrier", ORDINANCE)
                .zone(Zone.inside(Polygon.of(List.of(at(10, -5), at(30, -5), at(30, 50), at(10, 50)))))
                .build();

        assertThat(check(yard, fence().top(inches(36))))
                .singleElement()
                .extracting(Finding::message)
                .asString()
                .contains("from 10.00 ft to 30.00 ft");
        FencePart.Builder away = FencePart.on("side 3", east(31, 90, 0)).top(inches(36));
        assertThat(check(yard, away)).isEmpty();
    }

    /** Two stricter places, as told of Nevada County and of Visalia, California: 5 ft high, and members 48 in apart. */
    @Test
    void everyFigureIsAParameter() {
        PoolBarrier strict = PoolBarrier.builder(Side.LEFT, "pool barrier", ORDINANCE)
                .height(feet(5))
                .gap(inches(1), inches(2))
                .opening(inches(3))
                .ladder(inches(48), inches(1.5))
                .release(inches(60), inches(4), inches(0.25), inches(24))
                .build();

        assertThat(check(strict, fence()))
                .extracting(Finding::code)
                .containsExactly("pool-height", "pool-clearance", "pool-opening", "pool-climbable");
        assertThat(LocalRules.of(List.of(strict)).check(List.of(), List.of(), List.of(gate())))
                .extracting(Finding::code)
                .containsExactly("pool-height", "pool-gate-release");
        assertThat(List.of(strict.height(), strict.gap(), strict.gapOverPaving(), strict.opening()))
                .containsExactly(feet(5), inches(1), inches(2), inches(3));
        assertThat(List.of(strict.ladderSpacing(), strict.openingAtLadder())).containsExactly(inches(48), inches(1.5));
        assertThat(List.of(strict.releaseHeight(), strict.releaseUnderTop(), strict.openingAtRelease()))
                .containsExactly(inches(60), inches(4), inches(0.25));
        assertThat(strict.nearRelease()).isEqualTo(inches(24));
        assertThat(strict.gateRequirements().get(2))
                .startsWith("release of the latch 5' 0\" up or higher, or on the side of the water, 4\" or more under")
                .contains("no opening over 1/4\" within 2' 0\" of it");
        assertThat(strict.water()).isEqualTo(Side.LEFT);
        assertThat(strict.zone().isEverywhere()).isTrue();
    }

    @Test
    void misuseIsToldWithAWayOut() {
        PoolBarrier.Builder builder = PoolBarrier.builder(Side.LEFT, "pool barrier", ORDINANCE);

        assertThatThrownBy(() -> builder.height(inches(-48)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("height was -4 ft")
                .hasMessageContaining("from 0 to 10,000 ft");
        assertThatThrownBy(() -> builder.opening(inches(1)).build())
                .hasMessageContaining("openingBelow was 1 3/4 in, over the opening of 1 in");
        assertThatThrownBy(() -> PoolBarrier.builder(Side.LEFT, "", ORDINANCE).build())
                .hasMessageContaining("words was blank");
        assertThatThrownBy(() -> gate().withRelease(inches(-1), Side.LEFT)).hasMessageContaining("height was -1 in");
        assertThatThrownBy(() -> gate().withOpeningAtRelease(inches(-1))).hasMessageContaining("width was -1 in");
        assertThatThrownBy(() -> GatePart.of("", fence().build())).hasMessageContaining("name was blank");
    }
}
