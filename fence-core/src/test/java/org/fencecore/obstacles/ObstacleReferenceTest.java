package org.fencecore.obstacles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.junit.jupiter.api.Test;

/** Widths of tolerance zones as published, crossed square by a fence whose posts are driven without a hole. */
class ObstacleReferenceTest {

    private static final Segment FENCE = Segment.of(Point.ORIGIN, Point.of(Length.ofFeet(20), Length.ZERO));

    private static final Polyline PIPE = Polyline.of(
            List.of(Point.of(Length.ofFeet(10), Length.ofFeet(-10)), Point.of(Length.ofFeet(10), Length.ofFeet(10))));

    private static Length barred(Obstacle line) {
        return line.forbidden(FENCE, Length.ZERO).stream().map(Interval::length).reduce(Length.ZERO, Length::plus);
    }

    /** Sunshine 811 (Florida): 24 in from the outside edges on either side. */
    @Test
    void twentyFourInchesFromTheOutsideEdges() {
        assertThat(barred(Obstacle.utility(UtilityKind.WATER, PIPE))).isEqualTo(Length.ofInches(48));
        assertThat(barred(Obstacle.utility(UtilityKind.WATER, PIPE, Length.ofInches(8))))
                .isEqualTo(Length.ofInches(8 + 48));
    }

    /** An operator's guide: half the marked diameter and 24 in from a mark of the centre. */
    @Test
    void halfTheDiameterAndTwentyFourInchesFromTheCentre() {
        Obstacle main = Obstacle.utility(UtilityKind.GAS, PIPE, Length.ofInches(12));

        assertThat(main.forbidden(FENCE, Length.ZERO))
                .containsExactly(Interval.of(
                        Length.ofFeet(10).minus(Length.ofInches(30)),
                        Length.ofFeet(10).plus(Length.ofInches(30))));
    }

    /** MS 811 (Mississippi): 18 in each side of the facility's outer edge, or of the mark. */
    @Test
    void eighteenInchesEachSideOfTheMark() {
        Obstacle line = Obstacle.utility(UtilityKind.ELECTRIC, PIPE)
                .withClear(Length.ofInches(18), Citation.of("MS 811", "tolerance zone", ""));

        assertThat(barred(line)).isEqualTo(Length.ofInches(36));
        assertThat(line.source()).hasToString("MS 811, tolerance zone");
    }
}
