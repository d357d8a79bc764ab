package org.fencecore.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.rail.RailSpec;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** The takeoff of a fence of 57 miles. */
class TakeoffSizeTest {

    @Test
    void millionsOfBoardsAreAFewEntries() {
        // 300,000 ft in bays of 15 1/2 ft with two rails: 19,356 posts and 38,710 rails, and about 1,030,000 boards.
        RailSpec twoRails = RailSpec.builder().rails(2).build();
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(3.5)))
                .boardLumber(Lumber.oneByFour())
                .rails(twoRails)
                .postSpacing(PostSpacingSpec.builder()
                        .minimum(Length.ofFeet(6))
                        .maximum(Length.ofFeet(15.5))
                        .build())
                .build();
        Site site = Site.on(rectangle(300_000, 60))
                .fenceOn(1)
                .ground(1, shots(0, 0, 300_000, 0))
                .build();
        FencePlan plan = FencePlanner.plan(site, style);
        Takeoff takeoff = Takeoff.of(plan);

        assertThat(plan.boardCount()).isGreaterThan(1_000_000);
        assertThat(takeoff.pieces())
                .filteredOn(piece -> piece.kind() == PieceKind.BOARD)
                .hasSizeLessThanOrEqualTo(2);
        assertThat(takeoff.materials())
                .filteredOn(line -> line.item().equals("1x4 board, 6 ft"))
                .extracting(MaterialLine::quantity)
                .containsExactly(plan.boardCount());
        // Each board takes a whole stick of 6 ft, and its 72 in are 3/4 of 8 ft.
        assertThat(takeoff.cuts().get(2).isProvenBest()).isTrue();
    }
}
