package org.fencecore.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Speed;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A case worked by hand: 120 ft of fence on the ground, 6 ft high, 115 mph by ASCE 7-16 in exposure C.
 *
 * <pre>
 *   q      0.00256 x 0.8489 x 0.85 x 115^2 = 24.43 psf
 *   end    24.43 x 0.85 x 3.2525 = 67.54 psf, x 0.6 = 40.52 psf, in the first and last 6 ft
 *   next   24.43 x 0.85 x 2.07125 x 0.6 = 25.81 psf and x 1.59125: 19.82 psf
 *   else   case A with 1.30 is more than case C: 24.43 x 0.85 x 1.30 x 0.6 = 16.20 psf
 * </pre>
 */
class FenceWindTest {

    private static final AsceWind WIND =
            AsceWind.builder().speed(Speed.ofMilesPerHour(115)).build();

    private static FenceFace.Builder face() {
        return FenceFace.builder().length(Length.ofFeet(120)).top(Length.ofFeet(6));
    }

    private static Interval feet(double start, double end) {
        return Interval.of(Length.ofFeet(start), Length.ofFeet(end));
    }

    private static List<String> codes(FenceWind push) {
        return push.findings().stream().map(Finding::code).toList();
    }

    @Test
    void theCaseWorkedByHand() {
        FenceWind push = WIND.on(face().build());

        assertThat(WIND.velocityPressure(Length.ofFeet(6)).psf()).isCloseTo(24.43, within(0.005));
        assertThat(push.zones())
                .extracting(WindZone::toString)
                .containsExactly(
                        "0.00 ft to 6.00 ft: 40.52 psf",
                        "6.00 ft to 12.00 ft: 25.81 psf",
                        "12.00 ft to 18.00 ft: 19.82 psf",
                        "18.00 ft to 102.00 ft: 16.2 psf",
                        "102.00 ft to 108.00 ft: 19.82 psf",
                        "108.00 ft to 114.00 ft: 25.81 psf",
                        "114.00 ft to 120.00 ft: 40.52 psf");
        assertThat(push.greatest()).isEqualTo(push.zones().get(0).pressure());
        assertThat(push.average(feet(0, 4)).psf()).isCloseTo(40.52, within(0.005));
        assertThat(push.average(feet(56, 64)).psf()).isCloseTo(16.2, within(0.005));
        // A post at 8 ft with bays of 8 ft: 2 ft of the first zone, 6 ft of the second.
        assertThat(push.average(feet(4, 12)).psf()).isCloseTo((2 * 40.52 + 6 * 25.81) / 8, within(0.01));
        assertThat(codes(push)).containsExactly("wind-local-code");
    }

    @Test
    void aReturnCornerSheltersItsEndOnly() {
        FenceWind push = WIND.on(face().returnAtEnd(Length.ofFeet(40)).build());

        assertThat(push.zones().get(0).coefficient().value()).isCloseTo(3.2525, within(1e-9));
        assertThat(push.average(feet(115, 120))
                        .ratioTo(push.average(feet(1, 5)))
                        .value())
                .isCloseTo(0.60, within(1e-9));
        assertThat(push.average(feet(109, 113))).isEqualTo(push.average(feet(7, 11)));
    }

    @Test
    void openingsTakeOffWhatTheyDo() {
        FenceWind solid = WIND.on(face().build());
        FenceWind slatted = WIND.on(face().solidFraction(Ratio.of(0.8)).build());

        assertThat(slatted.greatest().ratioTo(solid.greatest()).value()).isCloseTo(0.91056, within(0.000005));
    }

    /** The directionality factor counts once in either edition: with the same Kz they would be equal. */
    @Test
    void directionalityCountsOnceInEveryEdition() {
        AsceWind later = AsceWind.builder()
                .speed(Speed.ofMilesPerHour(115))
                .edition(AsceEdition.ASCE_7_22)
                .build();
        Length top = Length.ofFeet(6);
        double kz = later.kz(top).ratioTo(WIND.kz(top)).value();

        assertThat(later.velocityPressure(top)
                        .ratioTo(WIND.velocityPressure(top))
                        .value())
                .isCloseTo(kz / 0.85, within(1e-9));
        assertThat(later.on(face().build())
                        .greatest()
                        .ratioTo(WIND.on(face().build()).greatest())
                        .value())
                .isCloseTo(kz, within(1e-9));
    }

    @Test
    void aLightWindIsBroughtUpToTheLeast() {
        FenceWind push =
                AsceWind.builder().speed(Speed.ofMilesPerHour(60)).build().on(face().build());

        assertThat(push.average(feet(56, 64)).psf()).isCloseTo(16 * 0.6, within(1e-9));
        assertThat(codes(push)).contains("minimum-wind");
    }

    @Test
    void aShortRunMayBePushedOffCentre() {
        FenceWind push = WIND.on(face().length(Length.ofFeet(8)).build());

        assertThat(push.zones()).hasSize(1);
        assertThat(codes(push)).contains("off-centre-wind");
        double even = WIND.velocityPressure(Length.ofFeet(6)).psf()
                * 0.85
                * 0.6
                * ForceCoefficient.caseA(Ratio.of(8 / 6.0), Ratio.of(1)).value();
        // Two posts with 4 ft each: the windward one holds 0.7 of the whole force.
        assertThat(push.greatest().psf() * 4).isCloseTo(0.7 * even * 8, within(1e-9));
    }

    @Test
    void anOpenFenceIsPushedOnItsSolidPart() {
        FenceWind flat = WIND.on(face().solidFraction(Ratio.of(0.5)).build());
        FenceWind round = WIND.on(face().solidFraction(Ratio.of(0.5))
                .roundMembers(Length.ofInches(3))
                .build());

        assertThat(flat.zones()).hasSize(1);
        assertThat(flat.zones().get(0).coefficient().value()).isCloseTo(0.5 * 1.6, within(1e-9));
        assertThat(round.zones().get(0).coefficient().value()).isCloseTo(0.5 * 1.5, within(1e-9));
        assertThat(codes(flat)).contains("open-fence");
    }

    @Test
    void tooOpenForTheEuropeanTable() {
        FenceWind push = EnWind.builder()
                .basicSpeed(Speed.ofMetresPerSecond(25))
                .build()
                .on(face().solidFraction(Ratio.of(0.5)).build());

        assertThat(codes(push)).containsExactly("outside-wind-table", "characteristic-wind", "wind-local-code");
        assertThat(push.zones().get(0).coefficient().value()).isCloseTo(1.2, within(1e-9));
    }

    @Test
    void worksheetsEndInTheGreatestPressure() {
        for (double solid : new double[] {1, 0.8, 0.5}) {
            for (double length : new double[] {8, 120}) {
                FenceFace face = face().solidFraction(Ratio.of(solid))
                        .length(Length.ofFeet(length))
                        .build();
                for (AsceEdition edition : AsceEdition.values()) {
                    FenceWind push = AsceWind.builder()
                            .speed(Speed.ofMilesPerHour(length))
                            .edition(edition)
                            .build()
                            .on(face);
                    assertThat(push.worksheet().result()).isEqualTo(push.greatest());
                }
                FenceWind european = EnWind.builder()
                        .basicSpeed(Speed.ofMetresPerSecond(25))
                        .build()
                        .on(face);
                assertThat(european.worksheet().result()).isEqualTo(european.greatest());
            }
        }
        assertThat(WIND.on(face().build()).worksheet().toText())
                .contains(
                        "velocity pressure q = 0.00256 Kz Kzt Kd Ke V^2 = 0.00256 psf/mph^2 x 0.8489 x 1 x 0.85 x 1 x"
                                + " (115 mph)^2 = 24.43 psf",
                        "p at strength level = q G C = 24.43 psf x 0.85 x 3.2525 = 67.54 psf",
                        "= 0.6 p = 0.6 x 67.54 psf = 40.52 psf   [ASCE 7-10, section 2.4.1]");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -10, 250.1, 1000})
    void windSpeedsOutOfRange(double mph) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AsceWind.builder().speed(Speed.ofMilesPerHour(mph)))
                .withMessageContaining("it must be over 0 and no more than 250 mph");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EnWind.builder().basicSpeed(Speed.ofMilesPerHour(mph)))
                .withMessageContaining("mean was");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.01, 80})
    void solidFractionsOutOfRange(double fraction) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> face().solidFraction(Ratio.of(fraction)))
                .withMessageContaining("fraction was")
                .withMessageContaining("it must be from");
    }

    @Test
    void misuse() {
        FenceFace face = face().build();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WIND.on(face).average(feet(120, 130)))
                .withMessageContaining("must take in some of the run");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> face().bottom(Length.ofFeet(6)).build())
                .withMessageContaining("the top must be higher");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceFace.builder().top(Length.ofFeet(6)).build())
                .withMessageContaining("length was not set");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceFace.builder().length(Length.ofFeet(6)).build())
                .withMessageContaining("top was not set");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AsceWind.builder().build())
                .withMessageContaining("speed was not set");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EnWind.builder().build())
                .withMessageContaining("basicSpeed was not set");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AsceWind.builder()
                        .speed(Speed.ofMilesPerHour(100))
                        .edition(AsceEdition.ASCE_7_22)
                        .tabulatedKz(true)
                        .build())
                .withMessageContaining("use its formula");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AsceWind.builder()
                        .speed(Speed.ofMilesPerHour(100))
                        .edition(AsceEdition.ASCE_7_10)
                        .groundElevation(Length.ofFeet(100))
                        .build())
                .withMessageContaining("has no factor for it");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EnWind.inYears(Speed.ofMetresPerSecond(26), 1))
                .withMessageContaining("years was 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ForceCoefficient.caseC(Ratio.of(1.9), Ratio.of(1), Ratio.ZERO, Ratio.ZERO))
                .withMessageContaining(
                        "lengthToHeight was 1.9; it must be 2 or more, since case C is for longer fences");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ForceCoefficient.caseA(Ratio.ZERO, Ratio.of(1)))
                .withMessageContaining("lengthToHeight was 0; it must be over 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> face().returnAtEnd(Length.ofFeet(-1)))
                .withMessageContaining("returnAtEnd was -1 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ForceCoefficient.openings(Ratio.of(0.69)))
                .withMessageContaining("no wall");
    }

    @ParameterizedTest
    @EnumSource(AsceEdition.class)
    void windsAndFacesCompareByValue(AsceEdition edition) {
        AsceWind.Builder builder =
                AsceWind.builder().speed(Speed.ofMilesPerHour(115)).edition(edition);

        assertThat(builder.build()).isEqualTo(builder.build()).hasSameHashCodeAs(builder.build());
        assertThat(builder.build()).isNotEqualTo(builder.exposure(Exposure.D).build());
        assertThat(builder.build().on(face().build()))
                .isEqualTo(builder.build().on(face().build()))
                .hasSameHashCodeAs(builder.build().on(face().build()))
                .isNotEqualTo(builder.build().on(face().top(Length.ofFeet(5)).build()));
        assertThat(builder.build()).hasToString("115 mph by " + edition + ", exposure D, flat shore");
    }
}
