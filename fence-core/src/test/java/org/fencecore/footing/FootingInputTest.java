package org.fencecore.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.function.Consumer;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.UnitWeight;
import org.fencecore.units.Volume;
import org.junit.jupiter.api.Test;

/** What goes into a footing: defaults, equal values, and how misuse is answered. */
class FootingInputTest {

    private static final Length FOOT = Length.ofFeet(1);
    private static final Length SIX_FEET = Length.ofFeet(6);

    @Test
    void theUsualPost() {
        FootingSpec spec = FootingSpec.builder().exposedHeight(SIX_FEET).build();

        assertThat(spec.postWidth()).isEqualTo(Length.ofInches(3.5));
        assertThat(spec.exposedHeight()).isEqualTo(SIX_FEET);
        assertThat(spec.soil()).isEqualTo(SoilClass.CLAY);
        assertThat(spec.hasDoubledBearing()).isFalse();
        assertThat(spec.frostDepth()).isEmpty();
        assertThat(spec.setting().minimumEmbedment()).isEqualTo(Length.ofInches(24));
        assertThat(spec.setting().hasThirdOfPostInGround()).isTrue();
        assertThat(spec.setting().increment()).isEqualTo(Length.ofInches(1));
        assertThat(spec.holeDiameter()).isEqualTo(Length.ofInches(10.5));
        assertThat(spec.setting().base()).isEqualTo(Length.ofInches(6));
        assertThat(spec.setting().concreteTop()).isEqualTo(Length.ZERO);
        assertThat(spec)
                .hasToString("post 3 1/2\" wide standing 6' 0\" out of the ground, in clay, sandy or silty clay, silt,"
                        + " clayey or sandy silt, 100 psf/ft, frost not known, hole three posts wide, gravel 6\", concrete to"
                        + " 0\" above grade");
    }

    @Test
    void theHoleFollowsThePostUnlessSet() {
        FootingSpec.Builder builder =
                FootingSpec.builder().exposedHeight(SIX_FEET).postWidth(Length.ofInches(5.5));

        assertThat(builder.build().holeDiameter()).isEqualTo(Length.ofInches(16.5));
        assertThat(builder.setting(PostSetting.builder().holeDiameter(FOOT).build())
                        .build()
                        .holeDiameter())
                .isEqualTo(FOOT);
    }

    @Test
    void everyOptionTellsSpecsApart() {
        FootingSpec usual = FootingSpec.builder().exposedHeight(SIX_FEET).build();
        assertThat(usual)
                .isEqualTo(FootingSpec.builder().exposedHeight(SIX_FEET).build())
                .hasSameHashCodeAs(FootingSpec.builder().exposedHeight(SIX_FEET).build())
                .isEqualTo(usual.withExposedHeight(FOOT).withExposedHeight(SIX_FEET))
                .doesNotHaveSameHashCodeAs(usual.withExposedHeight(FOOT));
        different(
                usual,
                builder -> builder.postWidth(Length.ofInches(3))
                        .setting(PostSetting.builder()
                                .holeDiameter(Length.ofInches(10.5))
                                .build()));
        different(usual, builder -> builder.exposedHeight(FOOT));
        different(usual, builder -> builder.soil(SoilClass.SAND));
        different(usual, builder -> builder.doubledBearing(true));
        different(usual, builder -> builder.frostDepth(Length.ZERO));
        different(
                usual,
                builder -> builder.setting(
                        PostSetting.builder().minimumEmbedment(FOOT).build()));
        different(
                usual,
                builder -> builder.setting(
                        PostSetting.builder().thirdOfPostInGround(false).build()));
        different(
                usual,
                builder -> builder.setting(
                        PostSetting.builder().roundUpTo(Length.ofInches(2)).build()));
        different(
                usual,
                builder ->
                        builder.setting(PostSetting.builder().holeDiameter(FOOT).build()));
        different(
                usual,
                builder ->
                        builder.setting(PostSetting.builder().gravelBase(FOOT).build()));
        different(
                usual,
                builder -> builder.setting(
                        PostSetting.builder().concreteTop(Length.ofInches(1)).build()));
    }

    private static void different(FootingSpec usual, Consumer<FootingSpec.Builder> option) {
        FootingSpec.Builder builder = FootingSpec.builder().exposedHeight(SIX_FEET);
        option.accept(builder);
        assertThat(builder.build()).isNotEqualTo(usual);
    }

    @Test
    void sizesOutOfRangeAreNamedWithTheirRange() {
        refused(
                () -> FootingSpec.builder().postWidth(Length.ofInches(25)),
                "postWidth was 2 ft 1 in; it must be from 1 in to 2 ft, so check its unit" + " and sign");
        refused(() -> FootingSpec.builder().postWidth(Length.ofMillimetres(3.5)), "postWidth was 3.5 mm");
        refused(() -> FootingSpec.builder().exposedHeight(Length.ZERO), "exposedHeight was 0 in; it must be over 0");
        refused(() -> FootingSpec.builder().exposedHeight(Length.ofFeet(101)), "exposedHeight was 101 ft");
        refused(() -> FootingSpec.builder().frostDepth(FOOT.negated()), "frostDepth was -1 ft; it must be from 0");
        refused(() -> FootingSpec.builder().frostDepth(Length.ofFeet(21)), "frostDepth was 21 ft");
        refused(() -> PostSetting.builder().minimumEmbedment(Length.ZERO), "minimumEmbedment was 0 in");
        refused(() -> PostSetting.builder().minimumEmbedment(Length.ofFeet(21)), "minimumEmbedment was 21 ft");
        refused(() -> PostSetting.builder().roundUpTo(Length.ZERO), "newIncrement was 0 in");
        refused(() -> PostSetting.builder().roundUpTo(Length.ofInches(13)), "newIncrement was 1 ft 1 in");
        refused(() -> PostSetting.builder().holeDiameter(FOOT.negated()), "holeDiameter was -1 ft");
        refused(() -> PostSetting.builder().holeDiameter(Length.ofFeet(11)), "holeDiameter was 11 ft");
        refused(() -> PostSetting.builder().gravelBase(FOOT.negated()), "gravelBase was -1 ft");
        refused(() -> PostSetting.builder().gravelBase(Length.ofFeet(5)), "gravelBase was 5 ft");
        refused(() -> PostSetting.builder().concreteTop(Length.ofFeet(3)), "concreteTop was 3 ft");
        refused(() -> PostSetting.builder().concreteTop(Length.ofFeet(-3)), "concreteTop was -3 ft");
    }

    @Test
    void partsThatDoNotGoTogetherAreNamed() {
        refused(() -> FootingSpec.builder().build(), "exposedHeight was not set; say how far the post stands");
        FootingSpec.Builder tight = FootingSpec.builder()
                .exposedHeight(SIX_FEET)
                .setting(
                        PostSetting.builder().holeDiameter(Length.ofInches(4.9)).build());
        refused(
                tight::build,
                // 3 1/2 in on a side are 4.95 in across the corners, 4 15/16 in and a hair.
                "postWidth was 3 1/2 in, 5\" across its corners; the post must fit in its hole, 124.46 mm wide");
        refused(
                () -> PostSetting.builder().hole(HoleShape.square(FOOT)).build().holeFor(FOOT),
                "postWidth was 1 ft; the post must fit in its hole, 1 ft wide");
        refused(
                () -> PostSetting.builder()
                        .hole(HoleShape.tapered(FOOT, Length.ofInches(4)))
                        .build()
                        .holeFor(Length.ofInches(4)),
                "postWidth was 4 in, 5 11/16\" across its corners; the post must fit in its hole, 4 in wide");
        PostSetting.Builder buried = PostSetting.builder().concreteTop(Length.ofInches(-24));
        refused(buried::build, "concreteTop was -2 ft above grade");
        FootingSpec.Builder stub = FootingSpec.builder()
                .exposedHeight(FOOT)
                .setting(PostSetting.builder().concreteTop(FOOT).build());
        refused(stub::build, "it must be below the top of the post, 1 ft");
    }

    @Test
    void loadsOutOfRangeAreNamedWithTheirRange() {
        Pressure wind = Pressure.ofPsf(15);
        refused(
                () -> LateralLoad.ofPressure(wind.negated(), FOOT, Length.ZERO, SIX_FEET),
                "windPressure was -15 psf; it must be over 0 and no more than 1,000 psf; if it is not known, use"
                        + " LateralLoad.NONE");
        refused(() -> LateralLoad.ofPressure(Pressure.ZERO, FOOT, Length.ZERO, SIX_FEET), "windPressure was 0 psf");
        refused(
                () -> LateralLoad.ofPressure(Pressure.ofPsi(15), FOOT, Length.ZERO, SIX_FEET),
                "windPressure was 2160 psf");
        refused(() -> LateralLoad.ofPressure(wind, Length.ZERO, Length.ZERO, SIX_FEET), "tributaryWidth was 0 in");
        refused(() -> LateralLoad.ofPressure(wind, FOOT, FOOT.negated(), SIX_FEET), "bottom was -1 ft");
        refused(
                () -> LateralLoad.ofPressure(wind, FOOT, SIX_FEET, SIX_FEET),
                "bottom was 6 ft and top 6 ft; the top must be higher");
        refused(() -> LateralLoad.ofPressure(wind, FOOT, FOOT, Length.ofFeet(101)), "top was 101 ft");
        refused(
                () -> LateralLoad.of(Force.ofPoundsForce(-5), FOOT),
                "force was -5 lbf; it must be from 0.01 to 1,000,000 lbf; if there is none or it is not known, use"
                        + " LateralLoad.NONE");
        refused(() -> LateralLoad.of(Force.ofPoundsForce(1_000_001), FOOT), "force was 1000001 lbf");
        refused(() -> LateralLoad.of(Force.ofPoundsForce(5), Length.ZERO), "height was 0 in; it must be over 0");
    }

    @Test
    void loadsAreValues() {
        LateralLoad wind = LateralLoad.ofPressure(Pressure.ofPsf(15), FOOT, Length.ZERO, SIX_FEET);

        assertThat(wind)
                .isEqualTo(LateralLoad.ofPressure(Pressure.ofPsf(15), FOOT, Length.ZERO, SIX_FEET))
                .hasSameHashCodeAs(LateralLoad.ofPressure(Pressure.ofPsf(15), FOOT, Length.ZERO, SIX_FEET))
                .isNotEqualTo(LateralLoad.of(wind.force(), wind.height()))
                .doesNotHaveSameHashCodeAs(LateralLoad.NONE)
                .hasToString("90 lbf at 3.3 ft above grade");
        assertThat(LateralLoad.NONE.isNone()).isTrue();
        assertThat(LateralLoad.NONE).hasToString("wind not known");
        assertThat(wind.isNone()).isFalse();
    }

    @Test
    void soilsAreValues() {
        UnitWeight bearing = UnitWeight.ofPcf(150);
        SoilClass own = SoilClass.ofLateralBearing(SoilClass.SAND.name(), bearing);

        assertThat(own)
                .isEqualTo(SoilClass.ofLateralBearing(SoilClass.SAND.name(), bearing))
                .hasSameHashCodeAs(SoilClass.ofLateralBearing(SoilClass.SAND.name(), bearing))
                .isNotEqualTo(SoilClass.SAND)
                .doesNotHaveSameHashCodeAs(SoilClass.SAND);
        assertThat(own.isPresumptive()).isFalse();
        assertThat(SoilClass.PRESUMPTIVE).allMatch(SoilClass::isPresumptive);
        refused(() -> SoilClass.ofLateralBearing(" ", bearing), "name was blank");
        refused(
                () -> SoilClass.ofLateralBearing("fill", UnitWeight.ZERO),
                "lateralBearing was 0 psf/ft; it must be from 10 to 10,000 psf/ft");
        refused(() -> SoilClass.ofLateralBearing("steel", UnitWeight.ofPcf(10_001)), "lateralBearing was 10001 psf/ft");
    }

    /** IBC 2012, table 1806.2: the symbols of classes 3 to 5, and section 1806.2: no value for organic soils. */
    @Test
    void soilsBySymbol() {
        assertThat(List.of("GW", "GP").stream().map(SoilClass::ofSymbol)).containsOnly(SoilClass.SANDY_GRAVEL);
        assertThat(List.of("SW", "SP", "SM", "SC", "GM", "gc").stream().map(SoilClass::ofSymbol))
                .containsOnly(SoilClass.SAND);
        assertThat(List.of("CL", "ML", "MH", "CH").stream().map(SoilClass::ofSymbol))
                .containsOnly(SoilClass.CLAY);
        for (String organic : List.of("OL", "OH", "PT")) {
            refused(
                    () -> SoilClass.ofSymbol(organic),
                    "symbol was " + organic + ", an organic soil, which has no" + " presumptive value; have it tested");
        }
        refused(() -> SoilClass.ofSymbol("XX"), "symbol was XX; it must be one of GW");
    }

    private static void refused(ThrowingCallable misuse, String message) {
        assertThatIllegalArgumentException().isThrownBy(misuse).withMessageContaining(message);
    }

    @Test
    void theEndsOfTheRangesAreWithin() {
        assertThat(LateralLoad.ofPressure(Pressure.ofPsf(1000), FOOT, Length.ZERO, SIX_FEET)
                        .knowsPush())
                .isTrue();
        assertThat(LateralLoad.NONE.withGate(Moment.ofPoundFeet(1_000_000)).gate())
                .isEqualTo(Moment.ofPoundFeet(1_000_000));
        refused(
                () -> LateralLoad.NONE.withGate(Moment.ofPoundFeet(1_000_001)),
                "moment was 1000001 lbf-ft; it must be from 0 to 1,000,000 lbf-ft");
        Pressure grip = Pressure.ofPascals(1_000_000);
        assertThat(FootingSpec.builder()
                        .exposedHeight(SIX_FEET)
                        .frostGrip(grip)
                        .build()
                        .frostGrip())
                .contains(grip);
        assertThat(new BagSize(Mass.ofPounds(1), Volume.ofCubicFeet(0.01)).weight())
                .isEqualTo(Mass.ofPounds(1));
        assertThat(new BagSize(Mass.ofPounds(80), Volume.ofCubicFeet(100)).yield())
                .isEqualTo(Volume.ofCubicFeet(100));
        refused(
                () -> new BagSize(Mass.ofPounds(80), Volume.ofCubicFeet(100.1)),
                "yield was 100.1 cu ft; it must be from 0.01 to 100 cu ft");
    }

    @Test
    void finesGripUnlessItIsSaidHowHard() {
        FootingSpec.Builder clay = FootingSpec.builder().exposedHeight(SIX_FEET).soil(SoilClass.CLAY);

        assertThat(clay.build().frostGrip()).contains(Pressure.ofPascals(65_000));
        assertThat(clay.soil(SoilClass.SAND).build().frostGrip()).isEmpty();
    }
}
