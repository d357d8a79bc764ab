package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.fencecore.layout.BoardPattern;
import org.fencecore.site.Site;
import org.fencecore.strength.RailStrength;
import org.fencecore.strength.ReferenceValues;
import org.fencecore.strength.SpeciesGroup;
import org.fencecore.strength.WoodGrade;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Speed;
import org.fencecore.wind.AsceWind;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

/** Wind, posts and rails of a whole plan: what is told once, and what is worked out on a sheet. */
class StrengthInPlanTest {

    private static FenceStyle graded() {
        return FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .railLumber(Lumber.twoByFour().graded(SpeciesGroup.SOUTHERN_PINE, WoodGrade.NO_2))
                .postLumber(Lumber.fourByFour().graded(SpeciesGroup.SOUTHERN_PINE, WoodGrade.NO_2))
                .build();
    }

    private static FencePlan plan(Site.Builder site) {
        return FencePlanner.plan(site.build(), graded());
    }

    private static Finding find(FencePlan plan, String code) {
        List<Finding> found = plan.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .toList();
        assertThat(found).as(code).hasSize(1);
        return found.get(0);
    }

    /**
     * By hand: a side of 50 ft has 7 bays of 83 1/2 in. Boards 106 x 5 1/2 x 3/4 x 72 in over 588 in, of southern pine at
     * 37.33 pcf (19 % moisture): 96.58 lb on a bay, 32.19 on each of three rails, with 9.47 of its own 41.66 lb. Wind of 15
     * psf on the middle rail, which holds 30 1/4 in of board: 263.1 lbf. Weight 41.66 x 83.5 / 8 / 3.0625 = 142.0 of
     * 1760 psi; wind 263.1 x 83.5 / 8 / 1.3125 = 2092 of 1936 psi: 0.0807 + 1.0808 = 1.1615.
     */
    @Test
    void railsUnderBoardsAndWind() {
        FencePlan plan = plan(Plans.levelSide().windPressure(Pressure.ofPsf(15)));
        Map<RailStrength, List<Bay>> checks = new RailLoads(plan.site(), plan.style()).checks(plan.runs());

        assertThat(checks).hasSize(1);
        RailStrength check = checks.keySet().iterator().next();
        assertThat(check.used().value()).isCloseTo(1.1615, within(0.0005));
        assertThat(check.sag().inches()).isCloseTo(0.0468, within(0.0001));
        assertThat(check.sway().inches()).isCloseTo(1.608, within(0.002));
        assertThat(checks.values().iterator().next()).hasSize(7);
        Finding finding = find(plan, "rail-overstressed");
        assertThat(finding.place()).isEqualTo("bays 1 to 7");
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(find(plan, "rail-sways").place()).isEqualTo("bays 1 to 7");
        assertThat(plan.findings())
                .extracting(Finding::code)
                .doesNotContain("rail-sags")
                .contains("strength-local-code");
    }

    /** Without a wind the rails still carry the boards: 142.0 psi of 1100 x 0.9 for good. */
    @Test
    void railsUnderBoardsAlone() {
        FencePlan plan = plan(Plans.levelSide());
        RailStrength check = new RailLoads(plan.site(), plan.style())
                .checks(plan.runs())
                .keySet()
                .iterator()
                .next();

        assertThat(check.used().value()).isCloseTo(142.0 / 990, within(0.0005));
        assertThat(plan.findings()).extracting(Finding::code).doesNotContain("rail-overstressed", "rail-sways");
    }

    @Test
    void withoutAGradeNothingIsSaidOfStrength() {
        FencePlan plan = FencePlanner.plan(
                Plans.levelSide().windPressure(Pressure.ofPsf(15)).build(),
                FenceStyle.builder().build());

        assertThat(plan.findings())
                .extracting(Finding::code)
                .doesNotContain("strength-local-code")
                .contains("post-strength-not-checked");
    }

    /** Twice the strength of the wood in the case above leaves half of what is used, and the sheet names its source. */
    @Test
    void ownGradingValuesOfTheLumber() {
        ReferenceValues own = ReferenceValues.given(
                Citation.of("yard certificate 12", "", ""),
                Pressure.ofPsi(2200 / 0.85),
                Pressure.ofPsi(175),
                Pressure.ofPsi(1_400_000));
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .railLumber(Lumber.twoByFour()
                        .graded(SpeciesGroup.SOUTHERN_PINE, WoodGrade.NO_2)
                        .graded(own))
                .build();
        FencePlan plan = FencePlanner.plan(
                Plans.levelSide().windPressure(Pressure.ofPsf(15)).build(), style);

        assertThat(new RailLoads(plan.site(), style).checks(plan.runs()).keySet())
                .singleElement()
                .satisfies(check -> assertThat(check.used().value()).isCloseTo(1.1615 / 2, within(0.0005)));
        assertThat(plan.worksheets())
                .filteredOn(sheet -> sheet.title().equals("bays 1 to 7: Strength of a rail"))
                .singleElement()
                .satisfies(sheet -> assertThat(sheet.toText()).contains("yard certificate 12"));
        assertThat(Lumber.twoByFour().graded(own).species()).isEmpty();
        assertThat(Lumber.of("lath", Length.ofInches(0.1), Length.ofInches(2))
                        .graded(own)
                        .member())
                .isEmpty();
    }

    /** Free ends get more wind than the middle: rails differ bay by bay, and the worst bay speaks for all. */
    @Test
    void windByZoneReachesPostsAndRailsAndHasItsSheets() {
        FencePlan plan = plan(Plans.levelSide()
                .wind(AsceWind.builder().speed(Speed.ofMilesPerHour(115)).build()));
        Run run = plan.runs().get(0);
        assertThat(run.wind()).isPresent();
        assertThat(run.wind().get().zones().size()).isGreaterThan(1);
        assertThat(find(plan, "rail-overstressed").place()).startsWith("bays 1 to 7, most at bay ");
        assertThat(find(plan, "post-overstressed").place()).startsWith("posts 1 to 8");

        List<Worksheet> sheets = plan.worksheets();
        List<String> titles = sheets.stream().map(Worksheet::title).toList();
        assertThat(titles).doesNotHaveDuplicates().contains("side 1: Wind on a fence");
        long strengths = titles.stream()
                .filter(title -> title.endsWith(": Strength of a post"))
                .count();
        assertThat(strengths).isEqualTo(plan.footings().size()).isLessThan(8);
        Map<RailStrength, List<Bay>> checks = new RailLoads(plan.site(), plan.style()).checks(plan.runs());
        assertThat(checks.size()).isBetween(2, 6);
        checks.forEach((check, bays) -> assertThat(sheets)
                .filteredOn(sheet -> sheet.title().equals(RailLoads.numbers(bays) + ": Strength of a rail"))
                .singleElement()
                .extracting(Worksheet::result)
                .isEqualTo(check.used()));
        assertThat(sheets)
                .filteredOn(sheet -> sheet.title().equals("side 1: Wind on a fence"))
                .singleElement()
                .extracting(Worksheet::result)
                .isEqualTo(run.wind().get().greatest());
    }
}
