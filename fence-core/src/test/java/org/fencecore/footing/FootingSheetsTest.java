package org.fencecore.footing;

import static org.assertj.core.api.Assertions.assertThat;

import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.junit.jupiter.api.Test;

/** What the worksheets show of the less usual posts and holes: 6 ft out of sand, a 4x4, no frost. */
class FootingSheetsTest {

    private static final Length FOOT = Length.ofInches(12);
    private static final LateralLoad WIND = LateralLoad.of(Force.ofPoundsForce(300), Length.ofFeet(3));
    private static final Moment GATE = Moment.ofPoundFeet(160);

    private static FootingDesign post(LateralLoad load, PostSetting.Builder setting) {
        return FootingDesign.forPost(
                load,
                FootingSpec.builder()
                        .exposedHeight(Length.ofFeet(6))
                        .soil(SoilClass.SAND)
                        .frostDepth(Length.ZERO)
                        .setting(setting.build())
                        .build());
    }

    private static PostSetting.Builder hole(HoleShape shape) {
        return PostSetting.builder().hole(shape);
    }

    private static String embedment(LateralLoad load, PostSetting.Builder setting) {
        return post(load, setting).worksheet().toText();
    }

    private static String concrete(PostSetting.Builder setting) {
        return post(LateralLoad.NONE, setting).concreteWorksheet().toText();
    }

    /** By hand: 7.6518 x 160 / (150 x 1) = 8.1619, whose cube root is 2.0134 ft, 24.16 in. */
    @Test
    void aGateAloneIsAMomentWithoutAForce() {
        assertThat(embedment(LateralLoad.NONE.withGate(GATE), hole(HoleShape.round(FOOT))))
                .contains("moment Mg of the gate's weight = 160 lbf-ft   [given]")
                .contains("moment M = 160 lbf-ft")
                .contains("depth for lateral soil bearing = cube root of 7.6518 M / (S b)"
                        + " = cube root of 7.6518 x 160 lbf-ft / (150 psf/ft x 1 ft) = 2.0134 ft = 2' 0 3/16\""
                        + "   [IBC 2018, section 1807.3.2.1, equation 18-1]")
                .doesNotContain("force P");
    }

    /**
     * By hand: 300 lbf 3 ft up are 900 lbf-ft, and 4.25 x 900 / (150 x 1) = 25.5, whose cube root is 2.9434 ft; with the
     * gate's 160 lbf-ft 1060, 30.0333 and 3.1084 ft.
     */
    @Test
    void heldAtGradeTheMomentAloneCounts() {
        PostSetting.Builder held = hole(HoleShape.round(FOOT)).heldAtGrade(true);

        assertThat(embedment(WIND, held))
                .contains("force P = 300 lbf   [given]")
                .contains("height h of P above grade = 3 ft   [given]")
                .contains("moment M = 900 lbf-ft")
                .contains("cube root of 4.25 M / (S b) = cube root of 4.25 x 900 lbf-ft / (150 psf/ft x 1 ft)"
                        + " = 2.9434 ft = 2' 11 3/8\"   [IBC 2018, section 1807.3.2.2, equations 18-2 and 18-3]");
        assertThat(embedment(WIND.withGate(GATE), held))
                .contains("height h of P with the moment of the gate = h + Mg / P"
                        + " = 3 ft + 160 lbf-ft / 300 lbf = 3.5333 ft")
                .contains("moment M = 1060 lbf-ft")
                .contains("= 3.1084 ft");
        EmbedmentCriterion bearing = post(WIND, held).criteria().get(0);
        assertThat(bearing.source()).isEqualTo(Sources.HELD_POLE);
        assertThat(bearing)
                .hasToString(
                        "lateral soil bearing 2' 11 3/8\" [IBC 2018, section 1807.3.2.2, equations 18-2 and 18-3]");
    }

    @Test
    void whereTwoRunsMeetBothPushesAreGiven() {
        LateralLoad corner =
                WIND.together(LateralLoad.of(Force.ofPoundsForce(400), Length.ofFeet(3)), Angle.ofDegrees(90));

        assertThat(embedment(corner, hole(HoleShape.round(FOOT))))
                .contains("push P1 of the one run = 300 lbf at 3 ft above grade   [given]")
                .contains("push P2 of the other run = 400 lbf at 3 ft above grade   [given]")
                .doesNotContain("force P = 500 lbf   [given]");
    }

    @Test
    void aRoundHoleIsToldByItsDiameter() {
        assertThat(concrete(hole(HoleShape.round(FOOT))))
                .contains("hole diameter = 1' 0\"   [given]")
                .contains("gravel base = 6\"   [given]")
                .contains("gravel = pi / 4 x hole^2 x gravel base = 0.7854 x (12 in)^2 x 6 in / 1728 = 0.393 cu ft")
                .contains("concrete = (pi / 4 x hole^2 - post^2) x height"
                        + " = (0.7854 x (12 in)^2 - (3.5 in)^2) x 36 in / 1728 = 2.101 cu ft")
                .doesNotContain("crown");
    }

    /** By hand: (12 x 12 - 3.5 x 3.5) x 36 = 4743 cu in, 2.745 cu ft; gravel 144 x 6 = 864 cu in, half a cubic foot. */
    @Test
    void aSquareHoleBearsOnItsDiagonal() {
        assertThat(embedment(WIND, hole(HoleShape.square(FOOT))))
                .contains("width b bearing on the soil = diagonal of the hole = 1.4142 x 12 in = 1.4142 ft");
        assertThat(concrete(hole(HoleShape.square(FOOT))))
                .contains("hole = 1' 0\" square   [given]")
                .contains("gravel = hole^2 x gravel base = (12 in)^2 x 6 in / 1728 = 0.5 cu ft")
                .contains(
                        "concrete = (hole^2 - post^2) x height = ((12 in)^2 - (3.5 in)^2) x 36 in / 1728 = 2.745 cu ft");
    }

    /** By hand: a hole that widens from 12 to 19 in within 42 in is 18 in wide on the gravel of 6 in. */
    @Test
    void aTaperedHoleIsToldInWords() {
        String sheet = concrete(hole(HoleShape.tapered(FOOT, Length.ofInches(19))));

        // The gravel: pi / 12 x 6 x (18^2 + 18 x 19 + 19^2) = 1613.2 cu in; the concrete pi / 12 x 36 x (12^2 + 12 x 18
        // + 18^2) - 12.25 x 36 = 6005.5 cu in.
        assertThat(sheet)
                .contains("hole = 1' 0\" wide, tapered to 1' 7\"   [given]")
                .contains("gravel = area of the hole x gravel base"
                        + " = area of a hole 1' 0\" wide, tapered to 1' 7\" x 6 in = 0.934 cu ft")
                .contains("concrete = (area of the hole - post^2) x height"
                        + " = (area of a hole 1' 0\" wide, tapered to 1' 7\" - (3.5 in)^2) x 36 in = 3.475 cu ft");
    }

    @Test
    void dryMixAndCrownAreAdded() {
        PostSetting.Builder setting =
                hole(HoleShape.round(FOOT)).dryMixBase(Length.ofInches(6)).crown(Length.ofInches(1));

        // 3630.5 cu in around the post, 678.6 in the base and 41.9 in the crown.
        assertThat(concrete(setting))
                .contains("dry mix base = 6\"   [given]")
                .contains("crown, a cone up to the post = 1\"   [given]")
                .contains("concrete = (pi / 4 x hole^2 - post^2) x height + crown + dry mix base")
                .contains("= 2.518 cu ft")
                .doesNotContain("gravel");
    }
}
