package org.fencecore.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Finding;

class FootingProperties {

    /** How far above the root a depth may lie. */
    private static final double TOLERANCE = 0.0001;

    /** A load, a soil and a hole in pounds, feet and pounds per square foot per foot. */
    record Pole(double force, double height, double bearing, double hole) {

        double depth() {
            return FootingDesign.forPost(
                            load(),
                            spec(PostSetting.builder()
                                            .thirdOfPostInGround(false)
                                            .minimumEmbedment(Length.ofInches(0.01)))
                                    .build())
                    .criteria()
                    .get(0)
                    .depth()
                    .metres();
        }

        LateralLoad load() {
            return LateralLoad.of(Force.ofPoundsForce(force), Length.ofFeet(height));
        }

        FootingSpec.Builder spec() {
            return spec(PostSetting.builder());
        }

        private FootingSpec.Builder spec(PostSetting.Builder setting) {
            return FootingSpec.builder()
                    .postWidth(Length.ofInches(3.5))
                    .exposedHeight(Length.ofFeet(6))
                    .soil(SoilClass.ofLateralBearing("any soil", UnitWeight.ofPcf(bearing)))
                    .setting(setting.holeDiameter(Length.ofFeet(hole)).build());
        }
    }

    @Provide
    Arbitrary<Pole> poles() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.01, 1_000_000),
                        Arbitraries.doubles().between(0.01, 100),
                        Arbitraries.doubles().between(10, 10_000),
                        Arbitraries.doubles().between(0.5, 10))
                .as(Pole::new);
    }

    /**
     * The equation is the cubic d^3 - K d - 1.09 K h = 0 with K = 7.02 P / (S b); here it is solved by Newton's method
     * from above, where a convex rising function never overshoots, in the units of the handbook.
     */
    @Property
    void depthIsTheRootOfTheCubic(@ForAll("poles") Pole pole) {
        double k = 7.02 * pole.force / (pole.bearing * pole.hole);
        double d = Math.sqrt(k) + Math.cbrt(1.09 * k * pole.height);
        for (int i = 0; i < 60; i++) {
            d -= (d * d * d - k * d - 1.09 * k * pole.height) / (3 * d * d - k);
        }

        double root = d * 0.3048;
        assertThat(pole.depth()).isBetween(root * (1 - 1e-12) - 1e-9, root * (1 + 1e-12) + TOLERANCE + 1e-9);
    }

    @Property
    void moreForceHigherUpNeedsMoreDepth(
            @ForAll("poles") Pole pole,
            @ForAll @DoubleRange(min = 1, max = 3) double heavier,
            @ForAll @DoubleRange(min = 1, max = 3) double higher) {
        Pole worse = new Pole(
                Math.min(1_000_000, pole.force * heavier),
                Math.min(100, pole.height * higher),
                pole.bearing,
                pole.hole);

        assertThat(worse.depth()).isGreaterThanOrEqualTo(pole.depth() - TOLERANCE);
    }

    @Property
    void firmerSoilAndAWiderHoleNeedLessDepth(
            @ForAll("poles") Pole pole,
            @ForAll @DoubleRange(min = 1, max = 3) double firmer,
            @ForAll @DoubleRange(min = 1, max = 3) double wider) {
        Pole better = new Pole(
                pole.force, pole.height, Math.min(10_000, pole.bearing * firmer), Math.min(10, pole.hole * wider));

        assertThat(better.depth()).isLessThanOrEqualTo(pole.depth() + TOLERANCE);
    }

    /** Twice the force is twice A; and with force and soil both doubled nothing changes. */
    @Property
    void doubledBearingIsHalfTheForce(@ForAll("poles") Pole pole) {
        Pole half = new Pole(Math.max(0.01, pole.force / 2), pole.height, pole.bearing, pole.hole);
        Pole full = new Pole(half.force * 2, pole.height, pole.bearing, pole.hole);
        Length doubled = FootingDesign.forPost(
                        full.load(), full.spec().doubledBearing(true).build())
                .criteria()
                .get(0)
                .depth();

        assertThat(doubled.metres()).isCloseTo(half.depth(), within(TOLERANCE));
    }

    @Provide
    Arbitrary<FootingSpec> specs() {
        return Combinators.combine(
                        lengths(1, 24 * 16),
                        lengths(1, 1200 * 16),
                        Arbitraries.of(SoilClass.PRESUMPTIVE),
                        lengths(0, 240 * 16).injectNull(0.2),
                        lengths(24 * 16, 240 * 16),
                        Arbitraries.of(true, false),
                        lengths(1, 12 * 16),
                        lengths(-23 * 16, 24 * 16))
                .as((post, exposed, soil, frost, minimum, third, increment, top) -> {
                    Length height = Length.max(exposed, top.plus(Length.ofInches(1)));
                    FootingSpec.Builder builder = FootingSpec.builder()
                            .postWidth(Length.max(post, Length.ofInches(1)))
                            .exposedHeight(height)
                            .soil(soil)
                            .setting(PostSetting.builder()
                                    .minimumEmbedment(minimum)
                                    .thirdOfPostInGround(third)
                                    .roundUpTo(increment)
                                    .concreteTop(top)
                                    .build())
                            .doubledBearing(third);
                    return (frost == null ? builder : builder.frostDepth(frost)).build();
                });
    }

    /** Lengths on the sixteenths of a tape. */
    private static Arbitrary<Length> lengths(int least, int most) {
        return Arbitraries.integers().between(least, most).map(sixteenths -> Length.ofInches(sixteenths / 16.0));
    }

    @Provide
    Arbitrary<LateralLoad> loads() {
        Arbitrary<LateralLoad> known = Combinators.combine(Arbitraries.doubles().between(1, 2000), lengths(1, 240 * 16))
                .as((pounds, height) -> LateralLoad.of(Force.ofPoundsForce(pounds), height));
        return Arbitraries.frequencyOf(Tuple.of(1, Arbitraries.just(LateralLoad.NONE)), Tuple.of(9, known));
    }

    @Property
    void embedmentIsTheDeepestCriterionRoundedUp(@ForAll("loads") LateralLoad load, @ForAll("specs") FootingSpec spec) {
        FootingDesign footing = FootingDesign.forPost(load, spec);

        assertThat(footing.criteria()).contains(footing.governing()).allSatisfy(criterion -> {
            assertThat(criterion.depth()).isLessThanOrEqualTo(footing.embedment());
            assertThat(criterion.shortOf(footing.governing()).isNegative()).isFalse();
        });
        assertThat(footing.embedment().minus(footing.governing().depth()))
                .isLessThan(spec.setting().increment());
        assertThat(footing.embedment().nanometres() % spec.setting().increment().nanometres())
                .isZero();
    }

    @Property
    void theFootingIsNeverAboveFrostMinimumOrAThirdOfThePost(
            @ForAll("loads") LateralLoad load, @ForAll("specs") FootingSpec spec) {
        FootingDesign footing = FootingDesign.forPost(load, spec);

        assertThat(footing.embedment()).isGreaterThanOrEqualTo(spec.setting().minimumEmbedment());
        assertThat(footing.embedment()).isGreaterThanOrEqualTo(spec.frostDepth().orElse(Length.ZERO));
        if (spec.setting().hasThirdOfPostInGround()) {
            assertThat(footing.embedment().times(3))
                    .isGreaterThanOrEqualTo(footing.postLength().minus(Length.ofNanometres(3)));
        }
    }

    @Property
    void worksheetsEndInWhatIsReturned(@ForAll("loads") LateralLoad load, @ForAll("specs") FootingSpec spec) {
        FootingDesign footing = FootingDesign.forPost(load, spec);

        assertThat(footing.worksheet().result()).isEqualTo(footing.embedment());
        assertThat(footing.concreteWorksheet().result()).isEqualTo(footing.concrete());
    }

    @Property
    void concreteGravelAndPostFillTheHole(@ForAll("loads") LateralLoad load, @ForAll("specs") FootingSpec spec) {
        FootingDesign footing = FootingDesign.forPost(load, spec);

        // Up to the top of the concrete, wherever that is.
        double radius = footing.holeDiameter().inches() / 2;
        double filled = Math.PI
                * radius
                * radius
                * footing.holeDepth().plus(spec.setting().concreteTop()).inches();
        double post = Math.pow(spec.postWidth().inches(), 2)
                * footing.embedment().plus(spec.setting().concreteTop()).inches();
        assertThat(footing.concrete().isPositive()).isTrue();
        assertThat(footing.concrete().plus(footing.gravel()).cubicFeet() * 1728 + post)
                .isCloseTo(filled, within(filled * 1e-9));
    }

    @Property
    void bagsAreEnoughAndOneLessIsNot(@ForAll("loads") LateralLoad load, @ForAll("specs") FootingSpec spec) {
        FootingDesign footing = FootingDesign.forPost(load, spec);
        int bags = footing.bags(BagSize.POUNDS_60);

        assertThat(bags * 0.45).isGreaterThan(footing.concrete().cubicFeet() - 1e-6);
        assertThat((bags - 1) * 0.45).isLessThan(footing.concrete().cubicFeet());
    }

    @Property
    void findingsComeWorstFirstAndTheLastDefersToLocalCode(
            @ForAll("loads") LateralLoad load, @ForAll("specs") FootingSpec spec) {
        FootingDesign footing = FootingDesign.forPost(load, spec);

        assertThat(footing.findings()).extracting(Finding::severity).isSortedAccordingTo((a, b) -> b.compareTo(a));
        assertThat(footing.findings().get(footing.findings().size() - 1).code()).isEqualTo("local-code");
        assertThat(footing.findings())
                .allSatisfy(finding -> assertThat(finding.remedy()).isNotBlank());
    }
}
