package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.junit.jupiter.api.Test;

class KickBoardTest {

    private static final Length WIDTH = Length.ofInches(5.5);
    private static final SlopeSpec SPEC = SlopeSpec.builder()
            .stepIncrement(Length.ofMillimetres(1))
            .underBoards(SlopeSpec.UnderBoards.KICK_BOARD)
            .build();

    private static List<KickBoard> under(Profile ground) {
        SlopeFit fit = SlopeFit.step(ground, TreatmentsTest.feet(0, 8), SPEC);
        return KickBoard.under(fit.bay(0), SPEC, WIDTH);
    }

    /**
     * The example of the class: 19.2 in of fall in 8 ft. The gap is 2 in at the upper post and 21.2 at the other; under the
     * line at 2 + 5.5 k it is open for 96 (19.2 - 5.5 k) / 19.2 in from the lower post: 96, 68.5, 41 and 13.5 in. What is
     * left for the fourth is 21.2 - 1 - 16.5 = 3.7 in.
     */
    @Test
    void coursesCloseTheTriangleUnderASteppedBay() {
        List<KickBoard> boards = under(TreatmentsTest.ground(0, 0, 8, 1.6));

        assertThat(boards).extracting(KickBoard::course).containsExactly(1, 2, 3, 4);
        double[] lengths = {96, 68.5, 41, 13.5};
        for (int course = 0; course < 4; course++) {
            assertThat(boards.get(course).length().inches()).isEqualTo(lengths[course], within(1e-5));
            assertThat(boards.get(course).topAtStart().inches()).isEqualTo(21.2 - 5.5 * course, within(1e-6));
        }
        assertThat(boards.get(0).depth()).isEqualTo(WIDTH);
        assertThat(boards.get(3).depth().inches()).isEqualTo(3.7, within(1e-6));
        assertThat(boards.get(3).worksheet().result()).isEqualTo(boards.get(3).length());
        assertThat(boards.get(3).worksheet().toText()).isEqualTo("""
                Kick board 4
                  width of the stock = 5 1/2"   [given]
                  left to close at the widest gap, down to the minimum clearance = 3.7 in   [given]
                  depth = the lesser of both, then scribed to the ground = min(5.5 in, 3.7 in) = 3 11/16"   [common practice, no source]
                  level reach = where the gap is open under the board above = 1.125 ft - 0 ft = 1.125 ft
                  length = level reach * sqrt(1 + grade^2) = 1.125 ft * sqrt(1 + (0 %)^2) = 1' 1 1/2"
                """);
        assertThat(boards.get(3)).hasToString("kick board 4");
        assertThat(boards.get(3).grade()).isEqualTo(Slope.LEVEL);
    }

    /** They cover the triangle: what they take together is no less than what is open over the minimum clearance. */
    @Test
    void nothingStaysOpenOverTheUsualClearance() {
        SlopeFit fit = SlopeFit.step(TreatmentsTest.ground(0, 0, 3, 0.2, 8, 1.6), TreatmentsTest.feet(0, 8), SPEC);
        FittedBay bay = fit.bay(0);
        List<KickBoard> boards = KickBoard.under(bay, SPEC, WIDTH);

        for (int inch = 0; inch <= 96; inch++) {
            Length at = Length.ofInches(inch);
            Length open = bay.bottomAt(at).minus(fit.ground().elevationAt(at));
            for (KickBoard board : boards) {
                if (board.reach().contains(at)) {
                    open = open.minus(board.depth());
                }
            }
            assertThat(open).isLessThanOrEqualTo(SPEC.clearance());
        }
    }

    @Test
    void aGapWithinTheMaximumOrDeeperThanAWallTakesNone() {
        assertThat(under(TreatmentsTest.ground(0, 0, 8, 0.1))).isEmpty();
        assertThat(under(TreatmentsTest.ground(0, 0, 8, 7))).isEmpty();
        SlopeFit deep = SlopeFit.step(TreatmentsTest.ground(0, 0, 8, 7), TreatmentsTest.feet(0, 8), SPEC);
        assertThat(deep.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("wide-gap");
            assertThat(finding.remedy())
                    .isEqualTo("build a wall under it, since a gap over 4' 0\" is not closed with boards, or set posts"
                            + " closer for lower steps");
        });
    }

    /** 4 ft, the clearance of 2 in and 46 in of fall, is closed; a hair more is not. So is what is a hair over 4 in. */
    @Test
    void theDepthsAtTheLimits() {
        Length hair = Length.ofNanometres(1);
        assertThat(SPEC.closes(Length.ofFeet(4))).isTrue();
        assertThat(SPEC.closes(Length.ofFeet(4).plus(hair))).isFalse();
        assertThat(SPEC.closes(SPEC.maximumClearance())).isFalse();
        assertThat(SPEC.closes(SPEC.maximumClearance().plus(hair))).isTrue();
        assertThat(under(TreatmentsTest.ground(0, 0, 8, 46 / 12.0))).hasSize(9);
        SlopeFit fit = SlopeFit.step(TreatmentsTest.ground(0, 0, 8, 1.6), TreatmentsTest.feet(0, 8), SPEC);
        assertThat(KickBoard.under(fit.bay(0), SPEC, Length.ofInches(1))).hasSize(20);
    }

    @Test
    void misuseIsNamed() {
        SlopeFit fit = SlopeFit.step(TreatmentsTest.ground(0, 0, 8, 1), TreatmentsTest.feet(0, 8), SPEC);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> KickBoard.under(fit.bay(0), SPEC, Length.ofInches(0.5)))
                .withMessageContaining("width of a kick board was 1/2 in");
    }
}
