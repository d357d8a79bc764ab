package org.fencecore.boarding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.wood.Grain;
import org.fencecore.wood.WoodSpecies;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

class BoardMovementTest {

    private static final BoardLayout TIGHT =
            BoardLayout.fit(Length.ofFeet(11), BoardPattern.sideBySide(Length.ofInches(5.5)));

    /** 24 boards of 5 1/2 in fill 11 ft; each shrinks 99 / 405.4 = 0.2442 in from 30 to 12 % (see the wood package). */
    @Test
    void tightWetBoardsOpen() {
        BoardMovement movement = movement(TIGHT, 30, 12, 30);

        assertThat(TIGHT.fullCount()).isEqualTo(24);
        assertThat(movement.gapWhenDry().inches()).isCloseTo(0.2442, within(0.0001));
        assertThat(movement.gapWhenWet()).isEqualTo(Length.ZERO);
        assertThat(movement.lapWhenDry()).isEmpty();
        assertThat(movement.findings(Length.ofInches(0.125))).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("gap-opens");
            assertThat(finding.message())
                    .isEqualTo("gaps of 0\" open to 1/4\" as the boards dry, over the 1/8\" allowed");
        });
        assertThat(movement.findings(Length.ofInches(0.25))).isEmpty();
        assertThat(movement.worksheet().result()).isEqualTo(movement.gapWhenDry());
        assertThat(movement).hasToString("gaps from 0\" to 1/4\"");
    }

    @Test
    void tightDryBoardsBuckle() {
        // 5.5 x 18 / (30 / 0.074 - 30 + 12) = 99 / 387.405 = 0.2555 in wider at 30 %.
        BoardMovement movement = movement(TIGHT, 12, 12, 30);

        assertThat(movement.gapWhenWet().inches()).isCloseTo(-0.2555, within(0.0001));
        assertThat(movement.findings(Length.ZERO)).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("boards-buckle");
            assertThat(finding.remedy()).startsWith("leave gaps of 5/16\"");
        });
    }

    @Test
    void lapsMoveWithBothRows() {
        BoardLayout shadowbox = BoardLayout.fit(Length.ofInches(86.5), BoardPattern.shadowbox(Length.ofInches(5.5)));
        BoardMovement movement = movement(shadowbox, 30, 12, 30);

        // Both boards of a lap lose half of 0.2442 in on its side.
        assertThat(movement.lapWhenDry().orElseThrow().inches()).isCloseTo(1 - 0.2442, within(0.0001));
        assertThat(movement.lapWhenWet()).contains(Length.ofInches(1));
        assertThat(movement.findings(Length.ZERO)).isEmpty();
        BoardLayout scant = BoardLayout.fit(
                Length.ofInches(86.5),
                BoardPattern.shadowbox(Length.ofInches(5.5))
                        .withLaps(Length.ZERO, Length.ofInches(0.125), Length.ofInches(0.25)));
        assertThat(movement(scant, 30, 12, 30).findings(Length.ZERO))
                .extracting(Finding::code)
                .containsExactly("lap-lost");
    }

    @Test
    void oneBoardHasNothingToOpen() {
        BoardLayout one = BoardLayout.fit(Length.ofInches(5.5), BoardPattern.sideBySide(Length.ofInches(5.5)));
        assertThat(movement(one, 30, 12, 30).findings(Length.ZERO)).isEmpty();
    }

    @Test
    void badInputIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> movement(TIGHT, 12, 15, 30))
                .withMessageContaining("15.0 %, 12.0 % and 30.0 %; give them in rising order");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> movement(TIGHT, 12, -5, 30))
                .withMessageContaining("-5.0 %");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> movement(TIGHT, 12, 12, 30).findings(Length.ofInches(-1)))
                .withMessageContaining("allowedGap was -1 in");
    }

    private static BoardMovement movement(BoardLayout layout, double asBuilt, double driest, double wettest) {
        return BoardMovement.of(
                layout,
                WoodSpecies.LOBLOLLY_PINE,
                Grain.FLAT,
                Ratio.ofPercent(asBuilt),
                Ratio.ofPercent(driest),
                Ratio.ofPercent(wettest));
    }
}
