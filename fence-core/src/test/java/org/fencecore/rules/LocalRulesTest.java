package org.fencecore.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fencecore.rules.Plans.ORDINANCE;
import static org.fencecore.rules.Plans.at;
import static org.fencecore.rules.Plans.east;
import static org.fencecore.rules.Plans.feet;
import static org.fencecore.rules.Plans.inches;
import static org.fencecore.rules.Plans.sloping;

import java.util.Collections;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Zone;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/** Heights and clear ground; a side of 100 ft due east of which the first 25 ft are in the front yard. */
class LocalRulesTest {

    private static final Zone FRONT =
            Zone.inside(Polygon.of(List.of(at(-50, -50), at(25, -50), at(25, 50), at(-50, 50))));

    private static final HeightLimit FOUR_FEET = HeightLimit.of(FRONT, feet(4), "front yards", ORDINANCE);

    private static FencePart.Builder side(double from, double to) {
        return FencePart.on("side 1", east(from, to, 0)).firstStation(feet(from));
    }

    private static List<Finding> check(LocalRule rule, FencePart... parts) {
        return LocalRules.of(List.of(rule)).check(List.of(parts));
    }

    @Test
    void aJobIsTenLines() {
        LocalRules rules = LocalRules.of(List.of(
                FOUR_FEET,
                HeightLimit.permitOver(Zone.everywhere(), feet(7), "fence permit", ORDINANCE),
                ClearGround.easement(
                        Zone.along(Polyline.of(List.of(at(60, -50), at(60, 50))), feet(5)), "drain", ORDINANCE)));
        FencePart fence = side(0, 100).top(feet(6)).build();
        PostPart post = PostPart.of("side 1", "post 9", at(64, 0), inches(6));

        List<Finding> findings = rules.check(List.of(fence), List.of(post), List.of());

        assertThat(findings).extracting(Finding::code).containsExactly("rule-height", "rule-clear-ground");
        assertThat(findings).allSatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.BLOCKER);
            assertThat(finding.place()).isEqualTo("side 1");
            assertThat(finding.source()).contains(ORDINANCE);
            assertThat(finding.remedy()).isNotBlank();
        });
        assertThat(findings.get(0).message())
                .isEqualTo(
                        "front yards: the fence is up to 6' 0\" high from 0.00 ft to 25.00 ft, and 4' 0\" is the limit");
        assertThat(findings.get(1).message())
                .isEqualTo("drain: the fence stands in it from 55.00 ft to 65.00 ft, and the hole reaches into it at"
                        + " post 9");
    }

    @Test
    void aFenceAsHighAsTheLimitKeepsIt() {
        assertThat(check(FOUR_FEET, side(0, 100).top(feet(4)).build())).isEmpty();
        assertThat(check(FOUR_FEET, side(0, 100).top(inches(48.0625)).build())).hasSize(1);
        assertThat(check(FOUR_FEET, side(30, 100).top(feet(6)).build())).isEmpty();
    }

    @Test
    void aSlopingTopIsTooHighFromWhereItPassesTheLimit() {
        // From 3 ft up to 8 ft in 50 ft is 1 ft in 10: over 4 ft from 10 ft on, and 5 1/2 ft at the end of the yard.
        FencePart fence = side(0, 50).top(sloping(50, 3, 8)).build();

        assertThat(check(FOUR_FEET, fence))
                .singleElement()
                .extracting(Finding::message)
                .asString()
                .contains("up to 5' 6\" high from 10.00 ft to 25.00 ft");
    }

    @Test
    void partsOfOnePlaceAreToldTogether() {
        FencePart first = side(0, 8).top(feet(5)).build();
        FencePart second = side(8, 16).top(feet(6)).build();
        FencePart low = side(16, 20).top(feet(3)).build();
        FencePart third = side(20, 40).top(feet(5)).build();
        FencePart other = FencePart.on("side 4", east(-20, 0, 10)).top(feet(5)).build();

        List<Finding> findings = check(FOUR_FEET, first, second, low, third, other);

        assertThat(findings).extracting(Finding::place).containsExactly("side 1", "side 4");
        assertThat(findings.get(0).message())
                .contains("up to 6' 0\" high from 0.00 ft to 16.00 ft and from 20.00 ft to 25.00 ft,");
        assertThat(findings.get(1).message()).contains("up to 5' 0\" high from 0.00 ft to 20.00 ft,");
    }

    @Test
    void anOpenFenceMayBeExempt() {
        HeightLimit solid = FOUR_FEET.withExemption(Ratio.ofPercent(50));
        HeightLimit open = HeightLimit.of(FRONT, feet(5), "front yards, open fences", ORDINANCE);
        FencePart.Builder fence = side(0, 100).top(feet(5));

        assertThat(check(solid, fence.openness(Ratio.ofPercent(49)).build())).hasSize(1);
        assertThat(check(solid, fence.openness(Ratio.ofPercent(50)).build())).isEmpty();
        assertThat(check(open, fence.build())).isEmpty();
        assertThat(solid.exemptFrom()).contains(Ratio.ofPercent(50));
    }

    /** Seven feet: International Residential Code, R105.2 item 2, 2015 edition, as local offices repeat it. */
    @Test
    void aPermitIsANote() {
        HeightLimit permit = HeightLimit.permitOver(Zone.everywhere(), feet(7), "fence permit", ORDINANCE);

        assertThat(check(permit, side(0, 100).top(feet(7)).build())).isEmpty();
        assertThat(check(permit, side(0, 100).top(feet(7.5)).build()))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo("permit-needed");
                    assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                    assertThat(finding.message())
                            .endsWith("7' 6\" high from 0.00 ft to 100.00 ft, and needs a permit" + " over 7' 0\"");
                });
    }

    @Test
    void aSetbackIsKeptByTheFacesOfTheFence() {
        ClearGround rule =
                ClearGround.setback(Polyline.of(List.of(at(0, 0), at(100, 0))), feet(25), "front setback", ORDINANCE);
        FencePart.Builder fence = FencePart.on("front", east(0, 100, 25.25)).top(feet(4));

        assertThat(check(rule, fence.reach(inches(3)).build())).isEmpty();
        assertThat(check(rule, fence.reach(inches(3.5)).build()))
                .singleElement()
                .extracting(Finding::code)
                .isEqualTo("rule-clear-ground");
        assertThat(rule.barsHoles()).isFalse();
    }

    /** A fence on the line between the front yard and the ground behind is in the yard; one with a face on it is not. */
    @Test
    void theBoundaryOfAnAreaBelongsToIt() {
        Segment boundary = Segment.of(at(25, -20), at(25, 20));
        Segment behind = Segment.of(at(25.25, -20), at(25.25, 20));

        assertThat(check(
                        FOUR_FEET, FencePart.on("side 2", boundary).top(feet(6)).build()))
                .hasSize(1);
        assertThat(check(
                        FOUR_FEET,
                        FencePart.on("side 2", behind)
                                .reach(inches(3))
                                .top(feet(6))
                                .build()))
                .isEmpty();
    }

    @Test
    void holesMayBeBarredWhereTheFenceIsNot() {
        Zone pipe = Zone.along(Polyline.of(List.of(at(60, -50), at(60, 50))), feet(5));
        LocalRules rules = LocalRules.of(List.of(FOUR_FEET, ClearGround.noHoles(pipe, "pipe", ORDINANCE)));
        FencePart fence = side(30, 100).top(feet(6)).build();

        List<Interval> forbidden = rules.forbidden(east(0, 100, 0), inches(6));

        // 5 ft for the easement and 6 in for half a hole either side, less the hundredth of a millimetre of rounding.
        assertThat(forbidden).hasSize(1);
        assertThat(forbidden.get(0).start().minus(feet(54.5)).abs()).isLessThanOrEqualTo(LocalRule.ROUNDING);
        assertThat(forbidden.get(0).end().minus(feet(65.5)).abs()).isLessThanOrEqualTo(LocalRule.ROUNDING);
        PostPart clear = PostPart.of("side 1", "post 8", at(54.5, 0), inches(6));
        assertThat(rules.check(List.of(fence), List.of(clear), List.of())).isEmpty();
        PostPart inside = PostPart.of("side 1", "post 8", at(54.6, 0), inches(6));
        assertThat(rules.check(List.of(fence), List.of(inside), List.of()))
                .singleElement()
                .extracting(Finding::code)
                .isEqualTo("rule-no-holes");
    }

    @Test
    void aGatesLeafIsPartOfTheFence() {
        FencePart leaf = FencePart.on("garden gate", east(4, 8, 0)).top(feet(5)).build();

        assertThat(LocalRules.of(List.of(FOUR_FEET))
                        .check(List.of(), List.of(), List.of(GatePart.of("garden gate", leaf))))
                .singleElement()
                .extracting(Finding::place)
                .isEqualTo("garden gate");
    }

    @Test
    void noRulesFindNothing() {
        assertThat(LocalRules.none().check(List.of(side(0, 100).top(feet(90)).build())))
                .isEmpty();
        assertThat(LocalRules.none().forbidden(east(0, 1, 0), Length.ZERO)).isEmpty();
        assertThat(LocalRules.none().list()).isEmpty();
    }

    @Test
    void misuseIsToldWithAWayOut() {
        assertThatThrownBy(() -> HeightLimit.of(FRONT, feet(-4), "front yards", ORDINANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("limit was -4 ft")
                .hasMessageContaining("from 0 to 10,000 ft");
        assertThatThrownBy(() -> HeightLimit.of(FRONT, feet(4), " ", ORDINANCE))
                .hasMessageContaining("words was blank");
        assertThatThrownBy(() -> FOUR_FEET.withExemption(Ratio.of(50)))
                .hasMessageContaining("openness was 5000")
                .hasMessageContaining("from 0 to 100 %");
        assertThatThrownBy(() -> ClearGround.setback(
                        Polyline.of(List.of(at(0, 0), at(1, 0))), feet(20_000), "setback", ORDINANCE))
                .hasMessageContaining("distance was 20000 ft");
        assertThatThrownBy(() -> LocalRules.of(Collections.nCopies(1_001, FOUR_FEET)))
                .hasMessageContaining("number of rules was 1001");
        FencePart part = side(0, 8).top(feet(6)).build();
        assertThatThrownBy(() -> LocalRules.none().check(Collections.nCopies(100_001, part)))
                .hasMessageContaining("number of parts was 100001");
        assertThatThrownBy(() -> LocalRules.none().forbidden(east(0, 1, 0), inches(-1)))
                .hasMessageContaining("holeRadius was -1 in");
    }

    @Test
    void aPartThatCannotBeIsRefused() {
        assertThatThrownBy(() -> side(0, 8).build())
                .isInstanceOf(NullPointerException.class)
                .hasMessageContaining("top");
        assertThatThrownBy(() -> side(0, 8).bottom(feet(2)).top(feet(1)).build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("top was 1 ft below the bottom");
        assertThatThrownBy(() -> side(0, 8).top(sloping(6, 4, 4)).build())
                .hasMessageContaining("top was given from 0 in to 6 ft; the part runs from 0 to 8 ft");
        assertThatThrownBy(() -> side(0, 8).top(feet(101)).build()).hasMessageContaining("from 0 to 100 ft");
        assertThatThrownBy(() -> FencePart.on("", east(0, 1, 0))).hasMessageContaining("place was blank");
        assertThatThrownBy(() -> PostPart.of("side 1", " ", at(0, 0), inches(6)))
                .hasMessageContaining("name was blank");
        assertThatThrownBy(() -> PostPart.of("side 1", "post 1", at(0, 0), inches(-6)))
                .hasMessageContaining("holeRadius was -6 in");
    }
}
