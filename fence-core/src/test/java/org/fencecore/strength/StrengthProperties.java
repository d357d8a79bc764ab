package org.fencecore.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.units.Force;
import org.fencecore.units.Length;

class StrengthProperties {

    @Provide
    Arbitrary<WoodMember> posts() {
        return Arbitraries.of(SpeciesGroup.values())
                .flatMap(species -> Arbitraries.of(WoodSection.POSTS)
                        .map(section -> WoodMember.builder(species, section).build()));
    }

    /** The deflection is the sum of what many small forces do, each by the handbook's P a^2 (3 H - a) / 6 E I. */
    @Property
    void deflectionIsThatOfManySmallForces(
            @ForAll("posts") WoodMember post,
            @ForAll @DoubleRange(min = 0.05, max = 1) double part,
            @ForAll @DoubleRange(min = 1, max = 12) double feet) {
        Length exposed = Length.ofFeet(feet);
        Length height = Length.ofFeet(feet * part);
        PostStrength check = PostStrength.of(post, Force.ofNewtons(1000), height, exposed);
        double top = exposed.metres();
        double half = Math.min(height.metres(), top - height.metres());
        int n = 2000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double at = height.metres() - half + 2 * half * (i + 0.5) / n;
            sum += 1000.0 / n * at * at * (3 * top - at) / 6;
        }
        double expected =
                sum / (post.adjusted().elasticity().pascals() * post.section().inertia(false));

        assertThat(check.deflection().metres()).isCloseTo(expected, within(1e-6 * expected + 2e-9));
    }

    @Property
    void aHarderPushUsesMoreAndAThickerPostLess(
            @ForAll("posts") WoodMember post,
            @ForAll @DoubleRange(min = 1, max = 5000) double pounds,
            @ForAll @DoubleRange(min = 1, max = 2) double harder) {
        PostStrength check = PostStrength.of(post, Force.ofPoundsForce(pounds), Length.ofFeet(3), Length.ofFeet(6));
        PostStrength more =
                PostStrength.of(post, Force.ofPoundsForce(pounds * harder), Length.ofFeet(3), Length.ofFeet(6));

        assertThat(more.used().value()).isGreaterThanOrEqualTo(check.used().value());
        assertThat(more.deflection()).isGreaterThanOrEqualTo(check.deflection());
        check.sizeThatWorks(WoodSection.POSTS)
                .ifPresent(size -> assertThat(PostStrength.of(
                                        post.withSection(size).orElseThrow(),
                                        Force.ofPoundsForce(pounds),
                                        Length.ofFeet(3),
                                        Length.ofFeet(6))
                                .isStrongEnough())
                        .isTrue());
    }

    @Property
    void longerRailsSagMore(
            @ForAll @DoubleRange(min = 2, max = 12) double feet,
            @ForAll @DoubleRange(min = 1, max = 2) double longer,
            @ForAll @DoubleRange(min = 0, max = 500) double pounds) {
        WoodMember rail = WoodMember.builder(SpeciesGroup.WESTERN_CEDARS, WoodSection.TWO_BY_FOUR)
                .build();
        Force weight = Force.ofPoundsForce(pounds);
        RailStrength check = RailStrength.onEdge(rail, Length.ofFeet(feet), weight, weight);
        RailStrength far = RailStrength.onEdge(rail, Length.ofFeet(feet * longer), weight, weight);

        assertThat(far.sag()).isGreaterThanOrEqualTo(check.sag());
        assertThat(far.used().value()).isGreaterThanOrEqualTo(check.used().value() * (1 - 1e-12));
        assertThat(RailStrength.flat(rail, Length.ofFeet(feet), weight, weight).sag())
                .isGreaterThanOrEqualTo(check.sag());
    }
}
