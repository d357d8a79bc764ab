package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Clearance;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TreatmentsTest {

    private static final SlopeSpec USUAL = SlopeSpec.builder().build();
    private static final Profile HILL = ground(0, 0, 24, 4.8);

    /** 20 % in bays of 8 ft, boards 2 in up at the higher post: level bays, each 19.2 in above the one before. */
    @Test
    void aStraightGradeStepsByItsRiseInEachBay() {
        SlopeFit fit = SlopeFit.step(
                HILL,
                feet(0, 8, 16, 24),
                SlopeSpec.builder().stepIncrement(Length.ofInches(0.1)).build());

        assertThat(fit.bays()).allSatisfy(bay -> {
            assertThat(bay.grade()).isEqualTo(Slope.LEVEL);
            assertThat(bay.railLength()).isEqualTo(Length.ofFeet(8));
            assertThat(bay.groundRise()).isEqualTo(Length.ofInches(19.2));
            assertThat(bay.aboveStart()).isEqualTo(Length.ofInches(21.2));
            assertThat(bay.aboveEnd()).isEqualTo(Length.ofInches(2));
            assertThat(bay.gapArea().squareFeet()).isEqualTo(8 * 11.6 / 12, within(1e-9));
            // The gap is over 4 in from the start to 2 in / 20 % = 10 in short of the end.
            assertThat(bay.widerThan(Length.ofInches(4)))
                    .containsExactly(Interval.of(bay.start(), bay.end().minus(Length.ofInches(10))));
        });
        assertThat(fit.step(1)).isEqualTo(Length.ofInches(19.2));
        assertThat(fit.step(2)).isEqualTo(Length.ofInches(19.2));
        assertThat(fit.step(0)).isEqualTo(Length.ZERO);
        assertThat(fit.step(3)).isEqualTo(Length.ZERO);
        assertThat(fit.bottomBefore(1)).isEqualTo(Length.ofInches(2));
        assertThat(fit.bottomAfter(1)).isEqualTo(Length.ofInches(21.2));
        assertThat(fit.bottomAbove(1)).isEqualTo(Length.ofInches(21.2));
        assertThat(fit.bottomAt(Length.ofFeet(8))).isEqualTo(Length.ofInches(40.4));
        assertThat(fit.strings()).hasSize(3);
        assertThat(fit.findings()).hasSize(3).extracting(Finding::code).containsOnly("wide-gap");
        assertThat(fit.findings().get(0).toString())
                .contains("is 1' 9 1/4\"")
                .contains("kick board 1' 8 1/4\" deep at that end");
    }

    /** Whole inches: the highest bay stands as it needs, and 19.2 in and 38.4 in below it become 19 in and 38 in. */
    @Test
    void stepsAreWholeIncrements() {
        SlopeFit fit = SlopeFit.step(HILL, feet(0, 8, 16, 24), USUAL);

        assertThat(fit.bottomBefore(3)).isEqualTo(Length.ofInches(2));
        assertThat(fit.step(1)).isEqualTo(Length.ofInches(19));
        assertThat(fit.step(2)).isEqualTo(Length.ofInches(19));
        assertThat(fit.bottomBefore(1).inches()).isEqualTo(2.4, within(1e-9));
    }

    /**
     * Bays over 1/2, 1, 5 and 6 ft of ground: of the staircases over all four the lowest at the middle of the run stands
     * on the first and the third, with steps of half of 4 1/2 ft, and clears the other two.
     */
    @Test
    void evenStepsAreTheLowestStaircaseOverAllNeeds() {
        Profile ground = ground(0, 0, 16, 1, 24, 5, 32, 6);

        SlopeFit own = SlopeFit.step(ground, feet(0, 8, 16, 24, 32), USUAL);
        SlopeFit even = SlopeFit.stepEvenly(ground, feet(0, 8, 16, 24, 32), USUAL);

        assertThat(List.of(own.step(1), own.step(2), own.step(3)))
                .containsExactly(Length.ofInches(6), Length.ofInches(48), Length.ofInches(12));
        assertThat(List.of(even.step(1), even.step(2), even.step(3))).containsOnly(even.step(1));
        for (FittedBay bay : even.bays()) {
            assertThat(bay.clearance().min()).isGreaterThanOrEqualTo(Length.ofInches(2));
        }
        assertThat(even.step(1)).isEqualTo(Length.ofInches(27));
        assertThat(even.bays().get(0).bottomAtStart()).isEqualTo(Length.ofInches(6 + 2));
    }

    @ParameterizedTest
    @EnumSource
    void onLevelGroundAllTreatmentsAreTheSame(Treatment treatment) {
        SlopeFit fit = SlopeFit.of(
                ground(0, 7, 50, 7),
                feet(1, 8, 16, 26, 33),
                SlopeSpec.builder().treatment(treatment).build());

        assertThat(fit.treatment()).isEqualTo(treatment);
        assertThat(fit.strings()).hasSize(1);
        assertThat(fit.findings()).isEmpty();
        for (FittedBay bay : fit.bays()) {
            assertThat(bay.bottomAtStart()).isEqualTo(Length.ofFeet(7).plus(Length.ofInches(2)));
            assertThat(bay.bottomAtEnd()).isEqualTo(bay.bottomAtStart());
            assertThat(bay.railLength()).isEqualTo(bay.run());
        }
    }

    /** On a straight grade one string is the racked line. */
    @Test
    void oneStringFollowsAStraightGrade() {
        SlopeFit fit = SlopeFit.strings(HILL, feet(0, 8, 16, 24), USUAL);

        assertThat(fit.strings()).containsExactly(Interval.of(Length.ZERO, Length.ofFeet(24)));
        assertThat(SlopeFitProperties.line(fit))
                .isEqualTo(SlopeFitProperties.line(SlopeFit.rack(HILL, feet(0, 8, 16, 24), USUAL)));
        assertThat(fit.worksheet(1).result()).isEqualTo(fit.bays().get(1).railLength());
        assertThat(fit.worksheet(1).toText())
                .contains("Bay from 8.00 ft to 16.00 ft, on a string")
                .contains("station of the first nail = 0 ft", "station of the second nail = 24 ft")
                .contains("bottom at end = first nail + grade of the string * distance from it"
                        + " = 0.1667 ft + 20 % * 16 ft = 3.3667 ft")
                .contains("grade of the string = (second nail - first nail) / level distance"
                        + " = (4.9667 ft - 0.1667 ft) / 24 ft = 20 %")
                .contains("bottom at start = first nail + grade of the string * distance from it"
                        + " = 0.1667 ft + 20 % * 8 ft = 1.7667 ft");
    }

    /**
     * By hand: the ground lies 0, 1/2 and 0 in high at 0, 8 and 16 ft. One string lying 1/4 in nearer in the middle and
     * 1/4 in further at the ends has gaps that differ by 1/2 in; their middle is the clearance of 1 1/2 in.
     */
    @Test
    void oneStringOverAGentleRise() {
        SlopeFit fit = SlopeFit.strings(
                ground(0, 0, 8, 0.5 / 12, 16, 0),
                feet(0, 8, 16),
                SlopeSpec.builder()
                        .clearance(Length.ofInches(1.5))
                        .minimumClearance(Length.ofInches(1))
                        .maximumClearance(Length.ofInches(2))
                        .build());

        assertThat(fit.strings()).hasSize(1);
        assertThat(fit.bottomAbove(0).inches()).isEqualTo(1.75, within(1e-4));
        assertThat(fit.bottomAbove(1).inches()).isEqualTo(1.25, within(1e-4));
        assertThat(fit.bottomAbove(2).inches()).isEqualTo(1.75, within(1e-4));
    }

    /** The same rise with a post at its crest where there is no shot, in a run that begins 100 ft along the ground. */
    @Test
    void theRunMayBeginAnywhereAndPostsStandBetweenShots() {
        SlopeSpec tight = SlopeSpec.builder()
                .clearance(Length.ofInches(1.5))
                .minimumClearance(Length.ofInches(1))
                .maximumClearance(Length.ofInches(2))
                .build();
        Profile ground = ground(90, -0.5 / 12, 105, 0.25 / 12, 111, 0.25 / 12, 126, -0.5 / 12);
        // At 100, 108 and 116 ft it lies 0, 1/4 and 0 in high: gaps that differ by 1/4, round 1 1/2.
        SlopeFit fit = SlopeFit.strings(ground, feet(100, 108, 116), tight);

        assertThat(fit.strings()).containsExactly(Interval.of(Length.ofFeet(100), Length.ofFeet(116)));
        assertThat(fit.bottomAbove(0).inches()).isEqualTo(1.625, within(1e-4));
        assertThat(fit.bottomAbove(1).inches()).isEqualTo(1.375, within(1e-4));
        assertThat(fit.bottomAbove(2).inches()).isEqualTo(1.625, within(1e-4));
    }

    /** A crest rounded like a parabola, 2 in high over 16 ft and shot every inch: 1 in clear of it the string is 3 in up. */
    @Test
    void aStringPassesACrestOfManyShots() {
        Profile.Builder crest = Profile.builder();
        for (int inch = 0; inch <= 192; inch++) {
            double off = (inch - 96) / 96.0;
            crest.point(Length.ofInches(inch), Length.ofInches(2 * (1 - off * off)));
        }
        SlopeFit fit = SlopeFit.strings(crest.build(), feet(0, 16), USUAL);

        assertThat(fit.bottomAbove(0).inches()).isEqualTo(3, within(1e-4));
        assertThat(fit.bottomAbove(1).inches()).isEqualTo(3, within(1e-4));
        assertThat(fit.bays().get(0).clearance().min().inches()).isEqualTo(1, within(1e-4));
        assertThat(fit.findings()).isEmpty();
    }

    /** A mound of 9 in in mid-bay: no string keeps 1 in to 4 in there, and the gap at the posts says so. */
    /**
     * The crest at 3 1/2 ft gives the maximum up in the first bay, and the room found for the rest is no whole number of
     * nanometres: it must not be rounded before the lowest of such strings are looked for.
     */
    @Test
    void stringsAreFoundAgainWithTheSpreadTheyWereFoundWith() {
        SlopeSpec spec = SlopeSpec.builder()
                .clearance(Length.ofInches(1.5))
                .minimumClearance(Length.ofInches(1))
                .maximumClearance(Length.ofInches(2))
                .longestString(Length.ofFeet(32))
                .build();
        Profile ground = Profile.builder()
                .point(Length.ZERO, Length.ofInches(7.5))
                .point(Length.ofInches(42), Length.ofInches(11))
                .point(Length.ofInches(140), Length.ofInches(5.5))
                .point(Length.ofInches(168), Length.ofInches(5.5))
                .build();
        SlopeFit fit = SlopeFit.strings(
                ground, List.of(Length.ZERO, Length.ofFeet(5), Length.ofFeet(9), Length.ofFeet(14)), spec);

        assertThat(fit.strings())
                .containsExactly(
                        Interval.of(Length.ZERO, Length.ofFeet(9)), Interval.of(Length.ofFeet(9), Length.ofFeet(14)));
        Clearance last = fit.bays().get(2).clearance();
        assertThat(last.min().plus(last.max()).inches()).isEqualTo(2 * 1.5, within(1e-6));
        for (FittedBay bay : fit.bays()) {
            assertThat(bay.clearance().min()).isGreaterThanOrEqualTo(Length.ofInches(1));
        }
    }

    @Test
    void aBayNoStringFitsKeepsTheMinimumAndIsReported() {
        SlopeFit fit = SlopeFit.strings(ground(0, 0, 12, 0, 13, 0.75, 14, 0, 40, 0), feet(0, 8, 16, 24, 32, 40), USUAL);

        assertThat(fit.bays().get(1).clearance().min().inches()).isBetween(1.0, 2.0001);
        assertThat(fit.bays().get(1).clearance().max().inches()).isGreaterThan(9);
        assertThat(fit.findings()).extracting(Finding::code).containsOnly("wide-gap");
        // Its neighbours end at its high posts; those beyond keep their maximum.
        assertThat(fit.findings())
                .extracting(Finding::place)
                .containsExactly(
                        "bay from 0.00 ft to 8.00 ft", "bay from 8.00 ft to 16.00 ft", "bay from 16.00 ft to 24.00 ft");
        assertThat(fit.bays().get(3).clearance().max().inches()).isLessThan(4.0001);
        assertThat(fit.bays().get(4).clearance().max().inches()).isLessThan(4.0001);
    }

    /** 5 % for 32 ft, then 30 % for 16 ft with parts that rack 20 %: the gentle part is one string, the steep one steps. */
    @Test
    void aMixedRunStepsItsSteepPart() {
        SlopeSpec spec = SlopeSpec.builder().maximumGrade(Slope.ofPercent(20)).build();
        Profile ground = ground(0, 0, 32, 1.6, 48, 6.4);
        List<Length> posts = feet(0, 8, 16, 24, 32, 40, 48);

        SlopeFit fit = SlopeFit.mix(ground, posts, spec);

        assertThat(fit.bays())
                .extracting(FittedBay::treatment)
                .containsExactly(
                        Treatment.STRINGS,
                        Treatment.STRINGS,
                        Treatment.STRINGS,
                        Treatment.STRINGS,
                        Treatment.STEPPED,
                        Treatment.STEPPED);
        assertThat(fit.strings()).hasSize(3);
        assertThat(fit.step(3)).isEqualTo(Length.ZERO);
        assertThat(fit.step(4).isPositive()).isTrue();
        assertThat(SlopeFit.best(ground, posts, spec).rows())
                .extracting(SlopeChoice.Row::treatment)
                .hasSize(5)
                .contains(Treatment.MIXED);
    }

    /** The example of the class of the comparison. */
    @Test
    void partsThatDoNotRackSoFarMakeStepsTheBest() {
        SlopeChoice choice = SlopeFit.best(
                HILL,
                feet(0, 8, 16, 24),
                SlopeSpec.builder().maximumGrade(Slope.ofPercent(15)).build());

        assertThat(choice.rows())
                .extracting(SlopeChoice.Row::treatment)
                .containsExactly(Treatment.STEPPED, Treatment.EVENLY_STEPPED, Treatment.RACKED, Treatment.STRINGS);
        assertThat(choice.best().steps()).isEqualTo(2);
        assertThat(choice.rows().get(2).overLimit()).isEqualTo(3);
        assertThat(choice.rows().get(2).cuts()).isEqualTo(6);
        assertThat(choice.rows().get(2).gapOverMaximum()).isEqualTo(Length.ZERO);
        // sqrt(8^2 + 1.6^2) = 8.1584 ft in each of three bays, posts as usual.
        assertThat(choice.rows().get(2).lumber().feet()).isEqualTo(3 * 8.158431, within(1e-5));
        assertThat(choice.worksheet().result()).isEqualTo(Treatment.STEPPED);
        assertThat(choice.worksheet().toText()).isEqualTo("""
                Choice of the treatment
                  stepped = gap 2" to 1' 9 5/8", 1' 5 5/8" over the maximum; over the limit 0; steps 2; strings 3; cuts 0; lumber 28.85 ft   [given]
                  evenly stepped = gap 2" to 1' 9 5/8", 1' 5 5/8" over the maximum; over the limit 0; steps 2; strings 3; cuts 0; lumber 28.85 ft   [given]
                  racked = gap 2" to 2", 0" over the maximum; over the limit 3; steps 0; strings 1; cuts 6; lumber 24.4753 ft   [given]
                  on strings = gap 2" to 2", 0" over the maximum; over the limit 3; steps 0; strings 1; cuts 6; lumber 24.4753 ft   [given]
                  best = least by bays over the rack limit, widest gap over the maximum, step posts, strings, slanting cuts on each rail and rail, and post over the usual in this order = stepped   [common practice, no source]
                """);
        // By hand, in steps of 19 in: 24 ft of rail, and over the usual 2 in posts of 19.6, 19.4, 19.2 and 0 in: 4.85
        // ft.
        assertThat(choice.best().lumber().feet()).isEqualTo(24 + (19.6 + 19.4 + 19.2) / 12, within(1e-9));
        assertThat(choice.best()).hasToString("stepped: 2 steps, 3 strings");
        assertThat(choice.criteria()).isEqualTo(SlopeChoice.USUAL);
        // Seen from the other end it takes as much.
        assertThat(SlopeFit.best(ground(0, 4.8, 24, 0), feet(0, 8, 16, 24), USUAL)
                        .rows())
                .filteredOn(row -> row.treatment() == Treatment.STEPPED)
                .singleElement()
                .satisfies(
                        row -> assertThat(row.lumber()).isEqualTo(choice.best().lumber()));
        // Bays as steep as the limit are not over it.
        assertThat(SlopeFit.best(
                                HILL,
                                feet(0, 8, 16, 24),
                                SlopeSpec.builder()
                                        .maximumGrade(Slope.ofPercent(20))
                                        .build())
                        .rows())
                .allSatisfy(row -> assertThat(row.overLimit()).isZero());
    }

    @Test
    void byGapAloneRackedIsBest() {
        SlopeChoice choice = SlopeChoice.among(
                HILL,
                feet(0, 8, 16, 24),
                SlopeSpec.builder().maximumGrade(Slope.ofPercent(15)).build(),
                List.of(SlopeChoice.Criterion.GAP));

        assertThat(choice.best().treatment()).isEqualTo(Treatment.RACKED);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeChoice.among(HILL, feet(0, 8), USUAL, List.of()))
                .withMessageContaining("number of criteria was 0");
    }

    @Test
    void aSteppedBaysWorksheetEndsWithTheLevelRail() {
        SlopeFit fit = SlopeFit.step(HILL, feet(0, 8, 16, 24), USUAL);

        assertThat(fit.worksheet(1).result()).isEqualTo(Length.ofFeet(8));
        assertThat(fit.worksheet(1).toText())
                .startsWith("Stepped bay from 8.00 ft to 16.00 ft\n")
                .contains("bottoms, in whole steps of 1 in = 3.3833 ft   [given]")
                .contains("step at start = bottom after - bottom before = 21.4 in - 2.4 in = 1' 7\"")
                .contains("clearance at start = bottom - ground = 3.3833 ft - 1.6 ft = 1' 9 3/8\"")
                .contains("clearance at end = bottom - ground = 3.3833 ft - 3.2 ft = 2 3/16\"")
                .contains("step at end = bottom after - bottom before = 21.2 in - 2.2 in = 1' 7\"")
                .contains("height of the triangle under the bay = widest gap - narrowest gap = 21.4 in - 2.2 in")
                .contains("kick board, or longest piece of boards cut to the ground = widest gap - minimum clearance"
                        + " = 21.4 in - 1 in = 1' 8 3/8\"");
    }

    /** A 5 1/2 in board on 20 %: its uphill corner is 2 3/4 in * 20 % = 0.55 in nearer to the ground than its middle. */
    @Test
    void aBoardCutSquareComesNearerUphill() {
        FittedBay racked = SlopeFit.rack(HILL, feet(0, 8), USUAL).bays().get(0);
        Interval board = Interval.of(Length.ofInches(40), Length.ofInches(45.5));

        assertThat(racked.underBoard(board).min().inches()).isEqualTo(2 - 0.55, within(1e-6));
        assertThat(racked.underBoard(board).max().inches()).isEqualTo(2 + 0.55, within(1e-6));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> racked.underBoard(Interval.of(Length.ofInches(40), Length.ofInches(40))))
                .withMessageContaining("board was from 3 ft 4 in to 3 ft 4 in; it must have some width");
    }

    @Test
    void limitsAreNamed() {
        SlopeSpec finest = SlopeSpec.builder()
                .stepIncrement(Length.ofMillimetres(1))
                .maximumGrade(Slope.ofPercent(100))
                .clearance(Length.ZERO)
                .maximumClearance(Length.ZERO)
                .build();
        assertThat(finest.minimumClearance()).isEqualTo(Length.ZERO);
        assertThat(finest.maximumGrade()).contains(Slope.ofPercent(100));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeSpec.builder().stepIncrement(Length.ZERO))
                .withMessageContaining("stepIncrement was 0 in; it must be 1 mm or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeSpec.builder().longestString(Length.ZERO))
                .withMessageContaining("longestString was 0 in; it must be over 0");
        for (Treatment treatment : Treatment.values()) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> SlopeFit.of(
                            ground(0, 0, 8, 8.8),
                            feet(0, 8),
                            SlopeSpec.builder().treatment(treatment).build()))
                    .withMessageContaining("from post 1 at 0 in to post 2 at 8 ft was 110 %");
        }
    }

    static Profile ground(double... feet) {
        Profile.Builder ground = Profile.builder();
        for (int i = 0; i < feet.length; i += 2) {
            ground.point(Length.ofFeet(feet[i]), Length.ofFeet(feet[i + 1]));
        }
        return ground.build();
    }

    static List<Length> feet(double... stations) {
        return new ArrayList<>(Arrays.stream(stations).mapToObj(Length::ofFeet).toList());
    }
}
