package org.fencecore.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import org.fencecore.cutting.SoldLength;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.junit.jupiter.api.Test;

/** Boards of a fence so long that they are cut length by length: 1x6 of 6 and 8 ft, with a saw cut of 1/8 in. */
class CuttingTest {

    private static final Lumber BOARD = Lumber.oneBySix();
    private static final TakeoffSpec USUAL = TakeoffSpec.builder().build();
    private static final Currency USD = Currency.getInstance("USD");

    private static Piece boards(String where, int count, double inches) {
        return new Piece(PieceKind.BOARD, where, count, BOARD, Length.ofInches(inches), BOARD.width(), EndCuts.SQUARE);
    }

    /** Three of 30 in come from 8 ft, 32 in of it each, two from 6 ft, 36 in each: 33,334 sticks, the last one full. */
    @Test
    void boardsOfOneLengthFillTheirSticks() {
        Cutting cutting = Cutting.of(List.of(boards("fence", 100_002, 30)), USUAL);

        assertThat(cutting.sticks()).singleElement().satisfies(stick -> {
            assertThat(stick.count()).isEqualTo(33_334);
            assertThat(stick.length()).isEqualTo(Length.ofFeet(8));
            assertThat(stick).hasToString("33334 1x6, 8 ft: fence, fence, fence; 5 5/8\" left");
        });
        assertThat(cutting.cuts()).singleElement().satisfies(cut -> {
            assertThat(cut).hasToString("1x6 board: 266672 ft, proven best");
            assertThat(cut.what()).isEqualTo("1x6 board");
            assertThat(cut.lumber()).isEqualTo(BOARD);
            assertThat(cut.length()).isEqualTo(Length.ofFeet(266_672));
            assertThat(cut.gap()).isEqualTo(Ratio.ZERO);
            assertThat(cut.cost()).isEmpty();
            assertThat(cut.currency()).isEmpty();
        });
    }

    /**
     * With one board less the last stick has two. At 32 in each, 3,200,032 in are the least and 3,200,064 are bought: 32 in
     * over, or 0.001 %, which a stick of 6 ft in place of one of 8 ft, 24 in less, might mend.
     */
    @Test
    void whatIsLeftOnTheLastStickIsNotProven() {
        Cutting cutting = Cutting.of(List.of(boards("fence", 100_001, 30)), USUAL);

        assertThat(cutting.sticks())
                .extracting(Stick::count, stick -> stick.pieces().size())
                .containsExactly(tuple(33_333, 3), tuple(1, 2));
        assertThat(cutting.cuts())
                .extracting(LumberCut::toString)
                .containsExactly("1x6 board: 266672 ft, no more than 0.001 % over the least");
    }

    /** 50,000 boards leave 2 on a stick, which one of the next 50,003 joins; of the other 50,002 one is left over. */
    @Test
    void boardsOfOneLengthShareSticksWhereverTheyGo() {
        Cutting cutting = Cutting.of(List.of(boards("north", 50_000, 30), boards("west", 50_003, 30)), USUAL);

        assertThat(cutting.sticks())
                .extracting(Stick::toString)
                .containsExactly(
                        "16666 1x6, 8 ft: north, north, north; 5 5/8\" left",
                        "1x6, 8 ft: north, north, west; 5 5/8\" left",
                        "16667 1x6, 8 ft: west, west, west; 5 5/8\" left",
                        "1x6, 8 ft: west; 5' 5 7/8\" left");
    }

    /**
     * Two of 40 in come from 8 ft, 48 in each, or one from 6 ft. They take at least their part of 6 ft: 40.125 of 72.125 in,
     * 40.055 in of what is bought, and those of 30 in 30.073. In all that is 60,000 x 70.128 = 4,207,695 in, and 50,000 x 96
     * = 4,800,000 are bought, 14.08 % more.
     */
    @Test
    void twoLengthsMightShareSticksAndSoAreNotProven() {
        Cutting cutting = Cutting.of(List.of(boards("low", 60_000, 30), boards("high", 60_000, 40)), USUAL);

        assertThat(cutting.sticks())
                .extracting(Stick::toString)
                .containsExactly(
                        "30000 1x6, 8 ft: high, high; 1' 3 3/4\" left", "20000 1x6, 8 ft: low, low, low; 5 5/8\" left");
        assertThat(cutting.cuts())
                .extracting(LumberCut::toString)
                .containsExactly("1x6 board: 400000 ft, no more than 15 % over the least");
    }

    /** With 6 in trimmed only two of 30 in come from 8 ft, 48 in each, and two from the 66 in of 6 ft, 36 in each. */
    @Test
    void whatIsTrimmedCountsForEveryStick() {
        Cutting cutting = Cutting.of(
                List.of(boards("fence", 100_002, 30)),
                TakeoffSpec.builder().endTrim(Length.ofInches(6)).build());

        assertThat(cutting.sticks())
                .extracting(Stick::toString)
                .containsExactly("50001 1x6, 6 ft: fence, fence; 5 3/4\" left");
    }

    /** Boards as long as the stick need no saw cut behind them, and a hair longer come from the next. */
    @Test
    void aBoardMayBeAsLongAsItsStick() {
        assertThat(Cutting.of(List.of(boards("fence", 100_001, 72)), USUAL).sticks())
                .extracting(Stick::toString)
                .containsExactly("100001 1x6, 6 ft: fence; 0\" left");
        assertThat(Cutting.of(List.of(boards("fence", 100_001, 72.001)), USUAL).sticks())
                .extracting(Stick::length)
                .containsExactly(Length.ofFeet(8));
    }

    /** Invented prices: 6 ft 5.00, two of 30 in, 2.50 each; 8 ft 9.00, three of them, 3.00 each. */
    @Test
    void pricesChooseTheStick() {
        TakeoffSpec priced = TakeoffSpec.builder()
                .stickPrices(Map.of(
                        "1x6",
                        List.of(
                                SoldLength.of(Length.ofFeet(6)).withPrice(new BigDecimal("5.00"), USD),
                                SoldLength.of(Length.ofFeet(8)).withPrice(new BigDecimal("9.00"), USD))))
                .build();
        Cutting cutting = Cutting.of(List.of(boards("fence", 100_002, 30)), priced);

        assertThat(cutting.sticks())
                .extracting(Stick::count, Stick::length)
                .containsExactly(tuple(50_001, Length.ofFeet(6)));
        assertThat(cutting.cuts()).singleElement().satisfies(cut -> {
            assertThat(cut.cost()).contains(new BigDecimal("250005.00"));
            assertThat(cut.currency()).contains(USD);
            assertThat(cut.found()).isEqualTo("250005.00 USD");
            assertThat(cut.isProvenBest()).isTrue();
        });
    }
}
