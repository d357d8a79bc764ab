package org.fencecore.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.UnitWeight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published values. All examples of embedment are of the post free at grade, equation 18-1. */
class FootingReferenceTest {

    private static final double FOOT = 0.3048;
    private static final double POUND = 4.4482216152605;
    private static final double PSF = POUND / (FOOT * FOOT);

    private static FootingSpec.Builder post(double psfPerFoot, double holeFeet) {
        return FootingSpec.builder()
                .postWidth(Length.ofInches(6))
                .exposedHeight(Length.ofFeet(10))
                .soil(SoilClass.ofLateralBearing("the example's soil", UnitWeight.ofPcf(psfPerFoot)))
                .frostDepth(Length.ZERO)
                .setting(PostSetting.builder()
                        .minimumEmbedment(Length.ofInches(1))
                        .thirdOfPostInGround(false)
                        .holeDiameter(Length.ofFeet(holeFeet))
                        .build());
    }

    private static LateralLoad load(double pounds, double feet) {
        return LateralLoad.of(Force.ofPoundsForce(pounds), Length.ofFeet(feet));
    }

    /** A check published with an open-source library for structural engineers, after IBC 2006, section 1805.7.2. */
    @Test
    void aPoleInASixFootFooting() {
        FootingDesign footing =
                FootingDesign.forPost(load(5400, 37.25), post(200, 6).build());

        assertThat(footing.governing().depth().feet()).isCloseTo(11.83, within(0.005));
        assertThat(footing.embedment()).isEqualTo(Length.ofInches(142));
    }

    /** The same pole on doubled bearing; not published, worked out anew from the same inputs. */
    @Test
    void aPoleInASixFootFootingOnDoubledBearing() {
        FootingDesign footing = FootingDesign.forPost(
                load(5400, 37.25), post(200, 6).doubledBearing(true).build());

        assertThat(footing.governing().depth().feet()).isCloseTo(9.233, within(0.001));
    }

    /**
     * "Engineering with the Spreadsheet", American Society of Civil Engineers 2006, sheet 16, Pole. The printed input
     * of 0.5 kip is 0.510 kip rounded.
     */
    @Test
    void aPoleInAOneFootShaft() {
        FootingDesign footing = FootingDesign.forPost(load(510, 4), post(266, 1).build());

        Length depth = footing.governing().depth();
        assertThat(depth.feet()).isCloseTo(5.02, within(0.01));
        assertThat(UnitWeight.ofPcf(266).times(depth).dividedBy(3).psf()).isCloseTo(445, within(1.0));
    }

    /**
     * A sign's calculation in the permit archive of Zephyrhills, Florida: sand doubled to 300 psf/ft, a trial depth of
     * 4 ft, so S1 = 400 psf, and a face 5.5 ft wide. It prints A = 1.9 and d = 3.97 ft after this one pass.
     */
    @Test
    void oneHandPassOfTheFormula() {
        double a = LateralBearing.a(1740 * POUND, 400 * PSF, 5.5 * FOOT);

        assertThat(a / FOOT).isCloseTo(1.9, within(0.05));
        assertThat(LateralBearing.depth(a, 4.17 * FOOT) / FOOT).isCloseTo(3.97, within(0.01));
    }

    /** The same sign with the depth brought to fit its own bearing; not published, worked out anew. */
    @Test
    void theHandPassBroughtToAnEnd() {
        FootingSpec spec =
                post(150, 5.5).soil(SoilClass.SAND).doubledBearing(true).build();

        assertThat(FootingDesign.forPost(load(1740, 4.17), spec)
                        .governing()
                        .depth()
                        .feet())
                .isCloseTo(3.982, within(0.001));
    }

    /**
     * An engineers' forum, thread 276653 on eng-tips.com: P = 3000 lb, S1 = 150 psf/ft x 6 ft / 3 raised by a third,
     * b = 1 ft; A = 17.6 ft.
     */
    @Test
    void aAlone() {
        double a = LateralBearing.a(3000 * POUND, 1.33 * 150 * 6 / 3 * PSF, 1 * FOOT);

        assertThat(a / FOOT).isCloseTo(17.6, within(0.05));
    }

    /** IBC 2012, table 1806.2: lateral bearing, psf per ft below natural grade. */
    @ParameterizedTest
    @CsvSource({"1, 1200", "2, 400", "3, 200", "4, 150", "5, 100"})
    void presumptiveBearing(int soilClass, double psfPerFoot) {
        SoilClass soil = SoilClass.PRESUMPTIVE.get(soilClass - 1);

        assertThat(soil.lateralBearing().pcf()).isCloseTo(psfPerFoot, within(1e-9));
        assertThat(soil.source().toString()).isEqualTo("IBC 2012, table 1806.2, class " + soilClass);
    }

    /**
     * A published calculation sheet of a 6.6 ft wall on the ground by ASCE 7-05, 689 ft long: qh = 21.2704 psf, gust
     * factor 0.85, Cf = 1.30; it prints F = 106.88 kip and a moment at grade of 387.98 ft-kip.
     */
    @Test
    void windOnAWallThatStandsOnTheGround() {
        LateralLoad load = LateralLoad.ofPressure(
                Pressure.ofPsf(21.2704 * 0.85 * 1.30), Length.ofFeet(689), Length.ZERO, Length.ofFeet(6.6));

        assertThat(load.force().poundsForce()).isCloseTo(106_880, within(11.0));
        assertThat(load.force().times(load.height()).poundFeet()).isCloseTo(387_980, within(39.0));
    }

    /** ASCE 7-10, figure 29.4-1: a sign clear of the ground is pushed at its middle. */
    @Test
    void windOnASurfaceHighAboveTheGround() {
        LateralLoad load =
                LateralLoad.ofPressure(Pressure.ofPsf(10), Length.ofFeet(3), Length.ofFeet(17), Length.ofFeet(20));

        assertThat(load.height()).isEqualTo(Length.ofFeet(18.5));
    }

    /**
     * Holes filled to grade, and bags of 0.60, 0.45 and 0.375 cu ft; plain geometry, worked out apart from this code.
     * The yields are those of general articles on the trade (civilsir.com).
     */
    @ParameterizedTest
    @CsvSource({
        // hole in, deep in, post in, concrete cu ft, bags of 80, 60 and 50 lb
        "10, 30, 3.5, 1.1509, 2, 3, 4",
        "12, 36, 3.5, 2.1010, 4, 5, 6",
        "12, 36, 5.5, 1.7260, 3, 4, 5",
        "8, 24, 3.5, 0.5280, 1, 2, 2",
        "16, 48, 5.5, 4.7448, 8, 11, 13"
    })
    void concreteAroundAPost(
            double hole, double deep, double post, double cubicFeet, int bags80, int bags60, int bags50) {
        FootingSpec spec = FootingSpec.builder()
                .postWidth(Length.ofInches(post))
                .exposedHeight(Length.ofInches(24))
                .setting(PostSetting.builder()
                        .minimumEmbedment(Length.ofInches(deep))
                        .holeDiameter(Length.ofInches(hole))
                        .build())
                .build();
        FootingDesign footing = FootingDesign.forPost(LateralLoad.NONE, spec);

        assertThat(footing.concrete().cubicFeet()).isCloseTo(cubicFeet, within(0.00005));
        assertThat(footing.bags(BagSize.POUNDS_80)).isEqualTo(bags80);
        assertThat(footing.bags(BagSize.POUNDS_60)).isEqualTo(bags60);
        assertThat(footing.bags(BagSize.POUNDS_50)).isEqualTo(bags50);
    }

    /** The usual yields, 0.15 cu ft for each 20 lb; by the cubic yard 90, 72, 60 and 45 bags (civilsir.com). */
    @Test
    void bagsToTheCubicYard() {
        assertThat(27 / BagSize.POUNDS_40.yield().cubicFeet()).isCloseTo(90, within(1e-9));
        assertThat(27 / BagSize.POUNDS_50.yield().cubicFeet()).isCloseTo(72, within(1e-9));
        assertThat(27 / BagSize.POUNDS_60.yield().cubicFeet()).isCloseTo(60, within(1e-9));
        assertThat(27 / BagSize.POUNDS_80.yield().cubicFeet()).isCloseTo(45, within(1e-9));
        assertThat(BagSize.POUNDS_90.yield().cubicFeet()).isCloseTo(0.15 * 90 / 20, within(0.0051));
        assertThat(BagSize.POUNDS_90).hasToString("90 lb bag of 0.68 cu ft");
    }
}
