package org.fencecore.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/**
 * Cases worked by hand: 720 lbf 40.7 in up a post that stands 74 in out of the ground.
 *
 * <pre>
 *   moment    720 x 40.7 = 29,304 lbf-in = 2,442 lbf-ft
 *   4x4       29,304 / 7.1458 = 4,100.8 psi; allowed 1100 x 1.6 = 1760 psi; 2.330
 *   spacing   8 ft / 2.330 = 3.4335 ft
 *   4x6       29,304 / 17.646 = 1,660.7 psi of 1000 x 1.6 = 1600: just too much
 *   6x6       29,304 / 27.729 = 1,056.8 psi of 850 x 1.6 = 1360: 0.777
 *   a rail    60 lb down: 720 lbf-in / 3.0625 = 235.1 psi; 80 lb sideways: 960 / 1.3125 = 731.4 psi;
 *             235.1 / 1760 + 731.4 / (1760 x 1.1) = 0.1336 + 0.3778 = 0.5114
 * </pre>
 */
class StrengthTest {

    private static final WoodMember POST = WoodMember.builder(SpeciesGroup.SOUTHERN_PINE, WoodSection.FOUR_BY_FOUR)
            .build();

    private static final WoodMember RAIL = WoodMember.builder(SpeciesGroup.SOUTHERN_PINE, WoodSection.TWO_BY_FOUR)
            .build();

    private static final PostStrength WEAK =
            PostStrength.of(POST, Force.ofPoundsForce(720), Length.ofInches(40.7), Length.ofInches(74));

    private static PostStrength sixBySix() {
        return PostStrength.of(
                POST.withSection(WoodSection.SIX_BY_SIX).orElseThrow(),
                Force.ofPoundsForce(720),
                Length.ofInches(40.7),
                Length.ofInches(74));
    }

    private static List<String> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }

    @Test
    void thePostWorkedByHand() {
        assertThat(WEAK.moment().poundFeet()).isCloseTo(2442, within(0.001));
        assertThat(WEAK.used().value()).isCloseTo(2.330, within(0.0005));
        assertThat(WEAK.largestSpacing(Length.ofFeet(8)).feet()).isCloseTo(3.4335, within(0.0005));
        assertThat(WEAK.sizeThatWorks(WoodSection.POSTS)).contains(WoodSection.SIX_BY_SIX);
        assertThat(sixBySix().used().value()).isCloseTo(0.777, within(0.0005));
        assertThat(codes(WEAK.findings())).containsExactly("post-overstressed", "post-bends", "strength-local-code");
        assertThat(WEAK.findings().get(0).message())
                .isEqualTo("the Southern Pine No.2, 3 1/2\" x 3 1/2\" is bent by 2442 lbf-ft at the ground line, 2.33"
                        + " times what its wood allows");
        assertThat(WEAK.findings().get(0).remedy())
                .endsWith("a post of 5 1/2\" x 5 1/2\" in the same wood would do" + " for this push");
        assertThat(codes(sixBySix().findings())).containsExactly("strength-local-code");
    }

    /** At the largest spacing the strength is used up, to the last nanometre of spacing. */
    @Test
    void theLargestSpacingUsesTheStrengthUp() {
        double part =
                WEAK.largestSpacing(Length.ofFeet(8)).ratioTo(Length.ofFeet(8)).value();
        PostStrength there =
                PostStrength.of(POST, Force.ofPoundsForce(720 * part), Length.ofInches(40.7), Length.ofInches(74));

        assertThat(there.used().value()).isCloseTo(1, within(1e-7));
    }

    @Test
    void aGateAddsItsMoment() {
        PostStrength gate = sixBySix().withGate(Moment.ofPoundFeet(200));

        assertThat(gate.moment().poundFeet()).isCloseTo(2642, within(0.001));
        assertThat(gate.deflection()).isGreaterThan(sixBySix().deflection());
        assertThat(gate.largestSpacing(Length.ofFeet(8))).isLessThan(sixBySix().largestSpacing(Length.ofFeet(8)));
        // 4000 lbf-ft for good: 48,000 / 27.729 = 1731 psi of 850 x 0.9 = 765.
        PostStrength heavy = sixBySix().withGate(Moment.ofPoundFeet(4000));
        assertThat(heavy.used().value()).isCloseTo(1731.04 / 765, within(0.0005));
        assertThat(heavy.largestSpacing(Length.ofFeet(8)).isZero()).isTrue();
        assertThat(heavy.worksheet().result()).isEqualTo(heavy.used());
    }

    @Test
    void theRailWorkedByHand() {
        RailStrength check =
                RailStrength.onEdge(RAIL, Length.ofFeet(8), Force.ofPoundsForce(60), Force.ofPoundsForce(80));

        assertThat(check.used().value()).isCloseTo(0.5114, within(0.0001));
        assertThat(check.sag().inches()).isCloseTo(0.1024, within(0.0001));
        assertThat(check.lastingSag().inches()).isCloseTo(0.2047, within(0.0001));
        assertThat(codes(check.findings())).containsExactly("strength-local-code");
        assertThat(codes(RailStrength.flat(RAIL, Length.ofFeet(8), Force.ofPoundsForce(60), Force.ofPoundsForce(80))
                        .findings()))
                .containsExactly("rail-sags", "strength-local-code");
        assertThat(codes(RailStrength.onEdge(RAIL, Length.ofFeet(12), Force.ofPoundsForce(60), Force.ofPoundsForce(400))
                        .findings()))
                .containsExactly("rail-overstressed", "rail-sags", "rail-sways", "strength-local-code");
        assertThat(check.worksheet().result()).isEqualTo(check.used());
    }

    @Test
    void worksheetsEndInWhatIsReturned() {
        assertThat(WEAK.worksheet().result()).isEqualTo(WEAK.used());
        assertThat(POST.adjusted().worksheet().result())
                .isEqualTo(POST.adjusted().bending());
        assertThat(WEAK.worksheet().toText())
                .contains(
                        "allowable bending Fb' = Fb CD CM Ct CF Cfu Ci = 1100 psi x 1.6 x 1 x 1 x 1 x 1 x 1 = 1760 psi",
                        "bending stress fb = 6 M / (b d^2) = 6 x 12 x 2442 lbf-ft / (3.5 in x (3.5 in)^2) = 4100.9 psi");
    }

    @Test
    void misuse() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WoodMember.builder(SpeciesGroup.REDWOOD, WoodSection.FOUR_BY_FOUR)
                        .grade(WoodGrade.NO_1)
                        .build())
                .withMessageContaining("no reference values are held for Redwood No.1");
        assertThat(ReferenceValues.find(
                        SpeciesGroup.REDWOOD,
                        WoodGrade.NO_2,
                        WoodSection.of(Length.ofInches(0.75), Length.ofInches(5.5))))
                .isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WoodSection.of(Length.ofInches(5.5), Length.ofInches(3.5)))
                .withMessageContaining("check their units and order");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PostStrength.of(POST, Force.ofPoundsForce(-1), Length.ofFeet(3), Length.ofFeet(6)))
                .withMessageContaining("push was -1 lbf");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PostStrength.of(POST, Force.ofPoundsForce(1), Length.ofFeet(7), Length.ofFeet(6)))
                .withMessageContaining("no higher than the post");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WEAK.withGate(Moment.ofPoundFeet(-1)))
                .withMessageContaining("moment was");
        // The largest that its range names is taken, whatever the unit it is kept in makes of it.
        Force most = Force.ofPoundsForce(1_000_000);
        assertThat(PostStrength.of(POST, most, Length.ofFeet(3), Length.ofFeet(6))
                        .moment())
                .isEqualTo(most.times(Length.ofFeet(3)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WEAK.withGate(Moment.ofPoundFeet(1_000_001)))
                .withMessageContaining("moment was 1000001 lbf-ft; it must be from 0 to 1,000,000 lbf-ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PostStrength.of(POST, Force.ZERO, Length.ofFeet(3), Length.ofFeet(6))
                        .largestSpacing(Length.ofFeet(8)))
                .withMessageContaining("push was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailStrength.flat(RAIL, Length.ZERO, Force.ZERO, Force.ZERO))
                .withMessageContaining("span was");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailStrength.flat(RAIL, Length.ofFeet(8), Force.ZERO, Force.ZERO)
                        .overSpans(4))
                .withMessageContaining("number was 4");
    }

    /**
     * Machine-graded lumber, 1650f-1.5E (NDS Supplement 2018, table 4C, from memory), wet: 1650 x 1.6 x 0.85 = 2244 psi,
     * flat 1.1 times that, and no size factor, which a 2x4 of table 4A would have.
     */
    @Test
    void valuesOfOnesOwn() {
        Citation source = Citation.of("NDS Supplement", "table 4C, 1650f-1.5E, from memory", "2018");
        ReferenceValues own =
                ReferenceValues.given(source, Pressure.ofPsi(1650), Pressure.ofPsi(175), Pressure.ofPsi(1_500_000));
        WoodMember member = WoodMember.builder(own, WoodSection.TWO_BY_FOUR).build();

        assertThat(member.adjusted().bending().psi()).isCloseTo(2244, within(0.01));
        assertThat(member.adjustedFlat().bending().psi()).isCloseTo(2468.4, within(0.01));
        assertThat(member.adjusted().worksheet().toText()).contains("table 4C, 1650f-1.5E");
        assertThat(member.species()).isEmpty();
        assertThat(member.withSection(WoodSection.TWO_BY_SIX)).isEmpty();
        assertThat(member.lasting(LoadDuration.PERMANENT).adjusted().bending().psi())
                .isCloseTo(2244 / 1.6 * 0.9, within(0.01));
        assertThat(member)
                .isEqualTo(WoodMember.builder(own, WoodSection.TWO_BY_FOUR).build());
        assertThat(PostStrength.of(
                                WoodMember.builder(own, WoodSection.FOUR_BY_FOUR)
                                        .build(),
                                Force.ofPoundsForce(5000),
                                Length.ofFeet(3),
                                Length.ofFeet(6))
                        .sizeThatWorks(WoodSection.POSTS))
                .isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReferenceValues.given(
                        source, Pressure.ofPsi(175), Pressure.ofPsi(1650), Pressure.ofPsi(1_500_000)))
                .withMessageContaining("shear was 1650 psi")
                .withMessageContaining("in this order");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        ReferenceValues.given(source, Pressure.ofPsi(1650), Pressure.ofPsi(175), Pressure.ofPsi(1.5)))
                .withMessageContaining("elasticity was 1.5 psi");
    }

    @Test
    void equalChecksAreEqual() {
        assertThat(sixBySix())
                .isEqualTo(sixBySix())
                .hasSameHashCodeAs(sixBySix())
                .isNotEqualTo(WEAK)
                .isNotEqualTo(sixBySix().withGate(Moment.ofPoundFeet(1)));
        assertThat(POST.lasting(LoadDuration.PERMANENT).lasting(LoadDuration.WIND))
                .isEqualTo(POST);
    }
}
