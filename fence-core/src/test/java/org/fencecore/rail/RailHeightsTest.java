package org.fencecore.rail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.WorkLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RailHeightsTest {

    private static final Length TWO_INCHES = Length.ofInches(2);

    /**
     * Common practice, no source: on six-foot boards the bottom rail's bottom is 6 in up and so its top mark 9 1/2 in
     * for a 3 1/2 in rail; the top rail's top is 4 in below the tops; the middle rail's top mark is half the clear height
     * plus 1 3/4 in above the bottom rail's top, here 57 / 2 + 1 3/4 + 9 1/2.
     */
    @Test
    void threeRailsOnSixFootBoards() {
        RailHeights marks = RailHeights.of(RailSpec.builder().build(), TWO_INCHES);

        assertThat(marks.rails())
                .containsExactly(
                        new RailMarks(Length.ofInches(6), Length.ofInches(9.5)),
                        new RailMarks(Length.ofInches(36.25), Length.ofInches(39.75)),
                        new RailMarks(Length.ofInches(66.5), Length.ofInches(70)));
    }

    /** By hand: on a grade of 20 % the rail takes 3.5 * sqrt(1 + 0.2^2) = 3.5693 in. */
    @Test
    void aRailOnAGradeTakesMoreOfThePost() {
        RailSpec rails = RailSpec.builder().build();
        RailHeights marks = RailHeights.of(rails, TWO_INCHES, Slope.of(Length.ofFeet(1.6), Length.ofFeet(8)));

        assertThat(marks.rails().get(0).bottom()).isEqualTo(Length.ofInches(6));
        assertThat(marks.rails().get(0).top().inches()).isEqualTo(9.5693, within(0.00005));
    }

    @Test
    void twoRailsHaveNoneBetween() {
        RailHeights marks = RailHeights.of(
                RailSpec.builder().boardLength(Length.ofFeet(4)).rails(2).build(), TWO_INCHES);

        assertThat(marks.rails())
                .containsExactly(
                        new RailMarks(Length.ofInches(6), Length.ofInches(9.5)),
                        new RailMarks(Length.ofInches(42.5), Length.ofInches(46)));
    }

    /** 8 ft boards: 79 in clear between 8 1/2 in and 87 1/2 in, less two rails, leave three spaces of 24 in. */
    @Test
    void fourRailsShareTheHeightEvenly() {
        RailHeights marks = RailHeights.of(
                RailSpec.builder()
                        .boardLength(Length.ofFeet(8))
                        .topRailBelowTops(Length.ofInches(5))
                        .bottomRailAboveBottoms(Length.ofInches(5))
                        .rails(4)
                        .build(),
                Length.ZERO);

        assertThat(marks.rails())
                .containsExactly(
                        new RailMarks(Length.ofInches(5), Length.ofInches(8.5)),
                        new RailMarks(Length.ofInches(32.5), Length.ofInches(36)),
                        new RailMarks(Length.ofInches(60), Length.ofInches(63.5)),
                        new RailMarks(Length.ofInches(87.5), Length.ofInches(91)));
    }

    /** 3 1/2 in times sqrt(1 + 0.75^2) = 1.25 is 4 3/8 in plumb; the outer marks stay where the boards have them. */
    @ParameterizedTest
    @CsvSource({"75", "-75"})
    void onAGradeTheRailsTakeMoreOfThePost(double percent) {
        RailHeights marks = RailHeights.of(RailSpec.builder().build(), TWO_INCHES, Slope.ofPercent(percent));

        assertThat(marks.rails())
                .containsExactly(
                        new RailMarks(Length.ofInches(6), Length.ofInches(10.375)),
                        new RailMarks(Length.ofInches(35.8125), Length.ofInches(40.1875)),
                        new RailMarks(Length.ofInches(65.625), Length.ofInches(70)));
    }

    @Test
    void aLiftedPostLiftsEveryMark() {
        RailSpec spec = RailSpec.builder().build();
        RailHeights low = RailHeights.of(spec, TWO_INCHES, Slope.ofPercent(20));
        RailHeights high = RailHeights.of(spec, Length.ofInches(3.25), Slope.ofPercent(20));

        for (int rail = 0; rail < spec.rails(); rail++) {
            Length lift = Length.ofInches(1.25);
            assertThat(high.rails().get(rail).bottom())
                    .isEqualTo(low.rails().get(rail).bottom().plus(lift));
            assertThat(high.rails().get(rail).top())
                    .isEqualTo(low.rails().get(rail).top().plus(lift));
        }
    }

    @ParameterizedTest
    @CsvSource({"2", "3", "4", "5"})
    void theWorksheetReplays(int rails) {
        RailHeights marks = RailHeights.of(RailSpec.builder().rails(rails).build(), TWO_INCHES, Slope.ofPercent(20));

        assertThat(marks.worksheet().result())
                .isEqualTo(marks.rails().get(rails - 2).top());
        for (RailMarks rail : marks.rails()) {
            assertThat(marks.worksheet().lines()).extracting(WorkLine::result).contains(rail.bottom(), rail.top());
        }
    }

    @Test
    void theWorksheetShowsTheMiddleRail() {
        assertThat(RailHeights.of(RailSpec.builder().build(), TWO_INCHES)
                        .worksheet()
                        .toText())
                .contains("bottom rail, top = bottom + plumb depth = 6 in + 3.5 in = 9 1/2\"")
                .contains("clear height = bottom of top rail - top of bottom rail = 66.5 in - 9.5 in = 57 in")
                .contains("space = (clear height - rails between * plumb depth) / (rails between + 1)"
                        + " = (57 in - 1 * 3.5 in) / 2 = 2' 2 3/4\"")
                .contains("middle rail, top = bottom + plumb depth = 36.25 in + 3.5 in = 3' 3 3/4\"");
    }

    /** At 75 % a rail takes 4 3/8 in: between 10 3/8 and 65 5/8 in two rails leave (55.25 - 8.75) / 3 = 15.5 in. */
    @Test
    void theWorksheetShowsEveryRailBetween() {
        assertThat(RailHeights.of(RailSpec.builder().rails(4).build(), TWO_INCHES, Slope.ofPercent(75))
                        .worksheet()
                        .toText())
                .isEqualTo("""
                Rail marks above the ground at a post
                  board length = 6' 0"   [given]
                  clearance = 2"   [given]
                  rail depth = 3 1/2"   [given]
                  grade = 75 %   [given]
                  plumb depth = rail depth * sqrt(1 + grade^2) = 3.5 in * sqrt(1 + (75 %)^2) = 4.375 in
                  top rail, top = clearance + board length - distance below the tops = 2 in + 72 in - 4 in = 5' 10"   [common practice, no source]
                  top rail, bottom = top - plumb depth = 70 in - 4.375 in = 5' 5 5/8"
                  bottom rail, bottom = clearance + distance above the bottoms = 2 in + 4 in = 6"   [common practice, no source]
                  bottom rail, top = bottom + plumb depth = 6 in + 4.375 in = 10 3/8"
                  clear height = bottom of top rail - top of bottom rail = 65.625 in - 10.375 in = 55.25 in
                  space = (clear height - rails between * plumb depth) / (rails between + 1) = (55.25 in - 2 * 4.375 in) / 3 = 1' 3 1/2"
                  middle rail 1, bottom = top of the rail under it + space = 10.375 in + 15.5 in = 2' 1 7/8"
                  middle rail 1, top = bottom + plumb depth = 25.875 in + 4.375 in = 2' 6 1/4"
                  middle rail 2, bottom = top of the rail under it + space = 30.25 in + 15.5 in = 3' 9 3/4"
                  middle rail 2, top = bottom + plumb depth = 45.75 in + 4.375 in = 4' 2 1/8"
                """);
    }

    @Test
    void railsThatDoNotFitAreRefused() {
        // 18 in of board less 8 in leaves 10 in, and three rails take 10 1/2 in.
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        RailSpec.builder().boardLength(Length.ofInches(18)).build())
                .withMessageContaining("number of rails was 3, each 3 1/2 in plumb, on boards of 1 ft 6 in")
                .withMessageContaining("need more than 10 1/2 in and have 10 in");
        // 19 in leaves 11 in: enough on the level, but on 75 % three rails take 13 1/8 in.
        RailSpec tight = RailSpec.builder().boardLength(Length.ofInches(19)).build();
        assertThat(RailHeights.of(tight, TWO_INCHES).rails()).hasSize(3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailHeights.of(tight, TWO_INCHES, Slope.ofPercent(75)))
                .withMessageContaining("each 4 3/8 in plumb");
    }

    @Test
    void valuesOutOfRangeAreRefused() {
        RailSpec.Builder builder = RailSpec.builder();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.rails(1))
                .withMessageContaining("rails was 1; it must be from 2 to 10");
        assertThatIllegalArgumentException().isThrownBy(() -> builder.rails(11)).withMessageContaining("rails was 11");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.boardLength(Length.ZERO))
                .withMessageContaining("boardLength was 0 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.railDepth(Length.ofMillimetres(-1)))
                .withMessageContaining("railDepth was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.topRailBelowTops(Length.ofMillimetres(-1)))
                .withMessageContaining("topRailBelowTops was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.bottomRailAboveBottoms(Length.ofMillimetres(-1)))
                .withMessageContaining("bottomRailAboveBottoms was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailHeights.of(RailSpec.builder().build(), Length.ofMillimetres(-1)))
                .withMessageContaining("clearance was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RailMarks(TWO_INCHES, TWO_INCHES))
                .withMessageContaining("bottom mark was 2 in");
    }

    @Test
    void theSpecTellsItsChoices() {
        RailSpec spec = RailSpec.builder().rails(2).build();

        assertThat(spec.rails()).isEqualTo(2);
        assertThat(spec.boardLength()).isEqualTo(Length.ofFeet(6));
        assertThat(spec.railDepth().inches()).isEqualTo(3.5, within(0.0));
        assertThat(spec.topRailBelowTops()).isEqualTo(Length.ofInches(4));
        assertThat(spec.bottomRailAboveBottoms()).isEqualTo(Length.ofInches(4));
    }
}
