package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
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
        assertThat(boards.get(3).worksheet().toText()).contains("min(5.5 in, 3.7 in) = 3 11/16\"", "= 1' 1 1/2\"");
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
        assertThat(deep.findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.code()).isEqualTo("wide-gap"));
    }

    @Test
    void misuseIsNamed() {
        SlopeFit fit = SlopeFit.step(TreatmentsTest.ground(0, 0, 8, 1), TreatmentsTest.feet(0, 8), SPEC);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> KickBoard.under(fit.bay(0), SPEC, Length.ofInches(0.5)))
                .withMessageContaining("width of a kick board was 1/2 in");
    }
}
