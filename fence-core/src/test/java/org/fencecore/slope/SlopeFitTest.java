package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.WorkLine;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

class SlopeFitTest {

    private static final SlopeSpec USUAL = SlopeSpec.builder().build();

    /** The example of the package: 1.6 ft in each 8 ft bay. */
    @Test
    void aStraightGradeIsTheSameInEveryBay() {
        Profile ground = Profile.builder()
                .point(Length.ZERO, Length.ofFeet(100))
                .point(Length.ofFeet(24), Length.ofFeet(104.8))
                .build();
        List<Length> posts = List.of(Length.ZERO, Length.ofFeet(8), Length.ofFeet(16), Length.ofFeet(24));
        SlopeSpec spec = SlopeSpec.builder()
                .clearance(Length.ofInches(2))
                .minimumClearance(Length.ofInches(1))
                .maximumClearance(Length.ofInches(4))
                .maximumGrade(Slope.ofPercent(25))
                .build();

        SlopeFit fit = SlopeFit.rack(ground, posts, spec);

        assertThat(fit.bays()).hasSize(3);
        for (FittedBay bay : fit.bays()) {
            assertThat(bay.run()).isEqualTo(Length.ofFeet(8));
            assertThat(bay.rise()).isEqualTo(Length.ofFeet(1.6));
            assertThat(bay.grade().percent()).isEqualTo(20, within(1e-12));
            assertThat(bay.grade().angle().degrees()).isEqualTo(11.3099, within(0.00005));
            assertThat(bay.grade().risePerFoot()).isEqualTo(Length.ofInches(2.4));
            assertThat(bay.railLength().feet()).isEqualTo(8.1584, within(0.00005)); // sqrt(64 + 2.56)
            assertThat(bay.endCut().degrees()).isEqualTo(11.3099, within(0.00005));
            assertThat(bay.clearance().min()).isEqualTo(Length.ofInches(2));
            assertThat(bay.clearance().max()).isEqualTo(Length.ofInches(2));
        }
        assertThat(fit.bays().get(1).start()).isEqualTo(Length.ofFeet(8));
        assertThat(fit.bays().get(1).end()).isEqualTo(Length.ofFeet(16));
        assertThat(SlopeFitProperties.line(fit).points().get(3))
                .isEqualTo(
                        new ProfilePoint(Length.ofFeet(24), Length.ofFeet(104.8).plus(Length.ofInches(2))));
        assertThat(fit.bottomAbove(3)).isEqualTo(Length.ofInches(2));
        assertThat(fit.findings()).isEmpty();

        assertThat(SlopeFit.strings(ground, posts, spec).strings()).hasSize(1);
        assertThat(SlopeFit.best(ground, posts, spec).best().treatment()).isEqualTo(Treatment.RACKED);
    }

    @Test
    void fallingGroundHasAFallAndTheSameCut() {
        FittedBay bay =
                SlopeFit.rack(ground(0, 0, 8, -1.6), feet(0, 8), USUAL).bays().get(0);

        assertThat(bay.rise()).isEqualTo(Length.ofFeet(-1.6));
        assertThat(bay.grade().percent()).isEqualTo(-20, within(1e-12));
        assertThat(bay.endCut().degrees()).isEqualTo(11.3099, within(0.00005));
        assertThat(bay.railLength().feet()).isEqualTo(8.1584, within(0.00005));
    }

    @Test
    void levelGroundNeedsNoCut() {
        FittedBay bay =
                SlopeFit.rack(ground(0, 7, 30, 7), feet(2, 10), USUAL).bays().get(0);

        assertThat(bay.rise()).isEqualTo(Length.ZERO);
        assertThat(bay.grade()).isEqualTo(Slope.LEVEL);
        assertThat(bay.endCut()).isEqualTo(Angle.ZERO);
        assertThat(bay.railLength()).isEqualTo(Length.ofFeet(8));
    }

    /** The example of the class. */
    @Test
    void aMoundLiftsThePostsBesideIt() {
        SlopeFit fit = SlopeFit.rack(twoMounds(3, 0), feet(0, 8, 16), USUAL);

        assertThat(aboveInInches(fit)).containsExactly(4, 4, 2);
        assertThat(fit.bays().get(0).clearance().min()).isEqualTo(Length.ofInches(1));
        assertThat(fit.bays().get(0).clearance().minStation()).isEqualTo(Length.ofFeet(4));
        assertThat(fit.bays().get(1).rise()).isEqualTo(Length.ofInches(-2));
        assertThat(fit.findings()).extracting(Finding::code).containsExactly("lifted-post", "lifted-post");
        assertThat(fit.findings().get(1))
                .hasToString("NOTE lifted-post at post at 8.00 ft: the boards stand 4\" above"
                        + " the ground here, 2\" more than the clearance, to stay 1\" clear of the ground at 4.00 ft;"
                        + " build it so, or take the high spot down");
    }

    /** Mounds of 3 in and 2 in need 2 in and 1 in; half of the first lift reaches the middle of the second bay. */
    @Test
    void aNeighboursLiftCounts() {
        assertThat(aboveInInches(SlopeFit.rack(twoMounds(3, 2), feet(0, 8, 16), USUAL)))
                .containsExactly(4, 4, 2);
        assertThat(aboveInInches(SlopeFit.rack(twoMounds(2, 3), feet(0, 8, 16), USUAL)))
                .containsExactly(2, 4, 4);
    }

    /** A second mound of 2 1/4 in needs 1 1/4 in at mid-bay: 2 in at one post and 1/2 in at the other, to the nanometre. */
    @Test
    void onlyWhatIsLackingIsLifted() {
        assertThat(aboveInInches(SlopeFit.rack(twoMounds(3, 2.25), feet(0, 8, 16), USUAL)))
                .containsExactly(new double[] {4, 4, 2.5}, within(1e-6));
        assertThat(aboveInInches(SlopeFit.rack(twoMounds(2.25, 3), feet(0, 8, 16), USUAL)))
                .containsExactly(new double[] {2.5, 4, 4}, within(1e-6));
    }

    @Test
    void equalMoundsLiftAllPostsAlike() {
        assertThat(aboveInInches(SlopeFit.rack(twoMounds(3, 3), feet(0, 8, 16), USUAL)))
                .containsExactly(4, 4, 4);
    }

    @Test
    void aDipIsReportedWithPlaceAndMeasure() {
        SlopeFit fit = SlopeFit.rack(twoMounds(0, -5.5), feet(0, 8, 16), USUAL);

        assertThat(fit.findings())
                .singleElement()
                .hasToString(
                        "WARNING wide-gap at bay from 8.00 ft to 16.00 ft: the gap under the boards at 12.00 ft is 7 1/2\","
                                + " 3 1/2\" over the maximum of 4\"; fill the low spot, or close the gap with a kick board");
        assertThat(aboveInInches(fit)).containsExactly(2, 2, 2);
    }

    @Test
    void aBayOverTheRackLimitIsReported() {
        SlopeSpec spec = SlopeSpec.builder().maximumGrade(Slope.ofPercent(20)).build();

        SlopeFit fit = SlopeFit.rack(ground(0, 0, 8, -1.92, 16, -3.52), feet(0, 8, 16), spec);

        assertThat(fit.findings())
                .singleElement()
                .hasToString(
                        "WARNING rack-limit at bay from 0.00 ft to 8.00 ft: the grade of -24 % is over the 20 % the bays"
                                + " can rack; step this bay, or use rails and fixings that rack further");
    }

    /** A wall of 9 ft in the first bay lifts its posts 8 ft 11 in, and the second bay falls that much in 8 ft. */
    @Test
    void aBayMadeTooSteepByLiftingIsABlocker() {
        SlopeFit fit = SlopeFit.rack(twoMounds(108, 0), feet(0, 8, 16), USUAL);

        assertThat(fit.findings())
                .filteredOn(finding -> finding.severity() == Severity.BLOCKER)
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("a grade of -111.46 %"));
    }

    /** 20 % up, level and 10 % up: three strings, whatever the number of bays under each. */
    @Test
    void baysThatRunOnStraightAreOneString() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 16, 3.2, 24, 3.2, 40, 4.8), feet(0, 8, 16, 24, 32, 40), USUAL);

        assertThat(fit.strings())
                .containsExactly(
                        Interval.of(Length.ZERO, Length.ofFeet(16)),
                        Interval.of(Length.ofFeet(16), Length.ofFeet(24)),
                        Interval.of(Length.ofFeet(24), Length.ofFeet(40)));
    }

    /** Level bays over ground that climbs and falls: at a post the higher of its two bays, past the ends the last. */
    @Test
    void aStationIsInTheBayAroundIt() {
        List<Length> posts = feet(0, 8, 16, 24);
        SlopeFit up = SlopeFit.step(ground(0, 0, 24, 4.8), posts, USUAL);
        SlopeFit down = SlopeFit.step(ground(0, 4.8, 24, 0), posts, USUAL);

        assertThat(bayStarts(up, -1, 0, 7, 8, 15, 16, 20, 24, 30)).containsExactly(0, 0, 0, 8, 8, 16, 16, 16, 16);
        assertThat(bayStarts(down, -1, 0, 7, 8, 9, 16, 20, 24, 30)).containsExactly(0, 0, 0, 0, 8, 8, 16, 16, 16);
        assertThat(up.bottomAt(Length.ofFeet(20))).isEqualTo(up.bays().get(2).bottomAtStart());
        // Where the bays on either side are as high it is the one that begins.
        SlopeFit level = SlopeFit.step(ground(0, 0, 24, 0), posts, USUAL);
        assertThat(bayStarts(level, 8, 16)).containsExactly(8, 16);
    }

    private static int[] bayStarts(SlopeFit fit, double... stations) {
        return feet(stations).stream()
                .mapToInt(station -> (int) fit.bayAt(station).start().feet())
                .toArray();
    }

    /** 20 % with parts that rack 20 % is not over the limit, and ground as steep as 100 % may be racked. */
    @Test
    void whatIsAtALimitIsNotOverIt() {
        SlopeSpec upTo20 = SlopeSpec.builder().maximumGrade(Slope.ofPercent(20)).build();
        Profile hill = ground(0, 0, 24, 4.8);
        assertThat(SlopeFit.mix(hill, feet(0, 8, 16, 24), upTo20).bays())
                .extracting(FittedBay::treatment)
                .containsOnly(Treatment.STRINGS);
        assertThat(SlopeFit.rack(hill, feet(0, 8, 16, 24), upTo20).findings()).isEmpty();
        assertThat(SlopeFit.rack(ground(0, 0, 8, 8), feet(0, 8), USUAL).findings())
                .isEmpty();
        // 46 in of fall and the clearance of 2 in make a gap of 4 ft, which boards still close.
        assertThat(SlopeFit.step(ground(0, 0, 8, 46 / 12.0), feet(0, 8), USUAL)
                        .findings()
                        .get(0)
                        .remedy())
                .isEqualTo(
                        "close it with a kick board 3' 11\" deep at that end, or with boards up to 3' 11\" longer cut"
                                + " to the ground");
        assertThat(SlopeFit.rack(twoMounds(0, -60), feet(0, 8, 16), USUAL)
                        .findings()
                        .get(0)
                        .remedy())
                .isEqualTo("build a wall under it, since a gap over 4' 0\" is not closed with boards, or fill the low"
                        + " spot");
    }

    @Test
    void aFitComparesItselfWithTheOtherTreatments() {
        SlopeFit fit = SlopeFit.step(ground(0, 0, 24, 4.8), feet(0, 8, 16, 24), USUAL);
        assertThat(fit.choice().worksheet().toText())
                .isEqualTo(SlopeFit.best(ground(0, 0, 24, 4.8), feet(0, 8, 16, 24), USUAL)
                        .worksheet()
                        .toText());
    }

    @Test
    void theWorksheetReplays() {
        SlopeFit fit = SlopeFit.rack(ground(0, 100, 24, 104.8), feet(0, 8, 16, 24), USUAL);

        Worksheet sheet = fit.worksheet(1);

        FittedBay bay = fit.bays().get(1);
        assertThat(sheet.result()).isEqualTo(bay.railLength());
        assertThat(sheet.lines())
                .extracting(WorkLine::result)
                .contains(
                        bay.run(),
                        bay.rise(),
                        bay.grade(),
                        bay.grade().risePerFoot(),
                        bay.endCut(),
                        bay.clearance().min());
        assertThat(sheet.toText()).isEqualTo("""
                Racked bay from 8.00 ft to 16.00 ft
                  station at start = 8 ft   [given]
                  ground at start = 101.6 ft   [given]
                  bottom at start = ground + clearance + lift = 101.6 ft + 2 in + 0 in = 101.7667 ft   \
                [common practice, no source]
                  station at end = 16 ft   [given]
                  ground at end = 103.2 ft   [given]
                  bottom at end = ground + clearance + lift = 103.2 ft + 2 in + 0 in = 103.3667 ft   \
                [common practice, no source]
                  run = end - start = 16 ft - 8 ft = 8 ft
                  rise = bottom at end - bottom at start = 103.3667 ft - 101.7667 ft = 1.6 ft
                  least clearance, at 8.00 ft = bottom line - ground = 101.7667 ft - 101.6 ft = 2"
                  grade = rise / run = 1.6 ft / 8 ft = 20 %
                  rise per foot = grade * 12 in = 20 % * 12 in = 2.4 in
                  end cut off square = atan(|grade|) = atan(20 %) = 11.31 deg
                  rail length, centre to centre = sqrt(run^2 + rise^2) = sqrt((8 ft)^2 + (1.6 ft)^2) = 8' 1 7/8"
                """);
    }

    @Test
    void theWorksheetShowsTheLift() {
        Worksheet sheet =
                SlopeFit.rack(twoMounds(3, 2.25), feet(0, 8, 16), USUAL).worksheet(1);

        assertThat(sheet.toText())
                .contains("bottom at end = ground + clearance + lift = 0 ft + 2 in + 0.5 in = 0.2083 ft")
                .contains("least clearance, at 12.00 ft = bottom line - ground = 0.2708 ft - 0.1875 ft = 1\"");
    }

    @Test
    void postsMustBeInOrderAndCovered() {
        Profile ground = ground(0, 0, 20, 1);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeFit.rack(ground, feet(0), USUAL))
                .withMessageContaining(
                        "number of posts was 1; a run has from 2 to 100,000, so give at least its two ends");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeFit.rack(ground, feet(0, 8, 8), USUAL))
                .withMessageContaining("station of post 3 was 8 ft, not after post 2 at 8 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeFit.rack(ground, feet(0, 10, 8), USUAL))
                .withMessageContaining("station of post 3 was 8 ft, not after post 2 at 10 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeFit.rack(ground, feet(-1, 8), USUAL))
                .withMessageContaining("station of post 1 was -1 ft, off the ground profile")
                .withMessageContaining("from 0 in to 20 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeFit.rack(ground, feet(0, 8, 21), USUAL))
                .withMessageContaining("station of post 3 was 21 ft, off the ground profile");
        assertThatNullPointerException()
                .isThrownBy(() -> SlopeFit.rack(ground, Arrays.asList(Length.ZERO, null), USUAL));
    }

    @Test
    void groundSteeperThanHundredPercentIsRefused() {
        assertThat(SlopeFit.rack(ground(0, 0, 8, 8), feet(0, 8), USUAL).bays()).hasSize(1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeFit.rack(ground(0, 0, 8, 0, 16, -8.8), feet(0, 8, 16), USUAL))
                .withMessageContaining("from post 2 at 8 ft to post 3 at 16 ft was -110 %");
    }

    @Test
    void thereIsALimitOnPosts() {
        Profile ground = ground(0, 0, 1_000_000, 0);
        List<Length> most = IntStream.range(0, 100_000).mapToObj(Length::ofFeet).toList();
        List<Length> more = IntStream.range(0, 100_001).mapToObj(Length::ofFeet).toList();

        assertThat(SlopeFit.rack(ground, most, USUAL).bays()).hasSize(99_999);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeFit.rack(ground, more, USUAL))
                .withMessageContaining("number of posts was 100001; a run has from 2 to 100,000, so split the run");
    }

    @Test
    void postsAndBaysOutsideTheRunAreRefused() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 20, 1), feet(0, 8, 16), USUAL);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> fit.bottomAbove(3))
                .withMessage("post was 3; this run has 3, numbered from 0 to 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> fit.bottomAfter(-1))
                .withMessage("post was -1; this run has 3, numbered from 0 to 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> fit.bottomBefore(3))
                .withMessage("post was 3; this run has 3, numbered from 0 to 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> fit.worksheet(-1))
                .withMessage("bay was -1; this run has 2, numbered from 0 to 1");
    }

    @Test
    void theSpecKeepsTheClearanceBetweenItsLimits() {
        SlopeSpec low = SlopeSpec.builder().clearance(Length.ofInches(3)).build();
        assertThat(low.minimumClearance()).isEqualTo(Length.ofInches(1.5));
        assertThat(low.maximumClearance()).isEqualTo(Length.ofInches(5));
        assertThat(low.maximumGrade()).isEmpty();

        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeSpec.builder().clearance(Length.ofInches(-1)))
                .withMessageContaining("clearance was -1 in; it must be 0 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        SlopeSpec.builder().minimumClearance(Length.ofInches(3)).build())
                .withMessageContaining("minimumClearance was 3 in, over the clearance of 2 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        SlopeSpec.builder().maximumClearance(Length.ofInches(1)).build())
                .withMessageContaining("maximumClearance was 1 in, under the clearance of 2 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeSpec.builder().maximumGrade(Slope.ofPercent(-20)))
                .withMessageContaining("maximumGrade was -20 %");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlopeSpec.builder().maximumGrade(Slope.ofPercent(101)))
                .withMessageContaining("maximumGrade was 101 %");
    }

    /** Level ground of 16 ft with a mound or dip of the given inches at 4 ft and one at 12 ft. */
    private static Profile twoMounds(double first, double second) {
        return ground(0, 0, 3, 0, 4, first / 12, 5, 0, 11, 0, 12, second / 12, 13, 0, 16, 0);
    }

    /** A profile of station and elevation pairs in feet. */
    private static Profile ground(double... feet) {
        Profile.Builder ground = Profile.builder();
        for (int i = 0; i < feet.length; i += 2) {
            ground.point(Length.ofFeet(feet[i]), Length.ofFeet(feet[i + 1]));
        }
        return ground.build();
    }

    private static List<Length> feet(double... stations) {
        return Arrays.stream(stations).mapToObj(Length::ofFeet).toList();
    }

    private static double[] aboveInInches(SlopeFit fit) {
        return IntStream.rangeClosed(0, fit.bays().size())
                .mapToDouble(post -> fit.bottomAbove(post).inches())
                .toArray();
    }
}
