package org.fencecore.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

class CuttingPlanTest {

    private static final Currency USD = Currency.getInstance("USD");

    private static SoldLength feet(int feet) {
        return SoldLength.of(Length.ofFeet(feet));
    }

    private static SoldLength feet(int feet, String price) {
        return feet(feet).withPrice(new BigDecimal(price), USD);
    }

    private static CutPiece inches(double inches, int count, String label) {
        return CutPiece.of(Length.ofInches(inches), count, label);
    }

    @Test
    void thePackageExampleHolds() {
        CuttingPlan plan = CuttingPlan.of(
                List.of(
                        CutPiece.of(Length.ofFeetAndInches(7, 4.25), 6, "rail"),
                        CutPiece.of(Length.ofFeetAndInches(5, 6.625), 1, "brace"),
                        CutPiece.of(Length.ofFeetAndInches(5, 4), 2, "stile"),
                        CutPiece.of(Length.ofFeetAndInches(2, 10.5), 2, "gate rail")),
                List.of(feet(8), feet(10), feet(12), feet(14), feet(16)));

        assertThat(plan.length()).isEqualTo(Length.ofFeet(70));
        assertThat(plan.leastLength()).contains(Length.ofFeet(70));
        assertThat(plan.isProvenBest()).isTrue();
        assertThat(plan.gap()).isEqualTo(Ratio.ZERO);
        assertThat(plan.purchases()).hasToString("[1 of 8 ft, 1 of 14 ft, 3 of 16 ft]");
        assertThat(plan.sticks())
                .extracting(CutStick::toString)
                .containsExactly(
                        "1 of 8 ft: 7' 4 1/4\" rail; 7 5/8\" left",
                        "2 of 16 ft: 2 x 7' 4 1/4\" rail; 1' 3 1/4\" left",
                        // 192 - 88 1/4 - 64 - 34 1/2 - 3/8.
                        "1 of 16 ft: 7' 4 1/4\" rail, 5' 4\" stile, 2' 10 1/2\" gate rail; 4 7/8\" left",
                        "1 of 14 ft: 5' 6 5/8\" brace, 5' 4\" stile, 2' 10 1/2\" gate rail; 2 1/2\" left");
        assertThat(plan.findings()).isEmpty();
        assertThat(plan.unplaced()).isEmpty();
        assertThat(plan.cost()).isEmpty();
    }

    @Test
    void theCheapestIsNotTheShortest() {
        // One piece of 7 ft and one of 5 ft. By length 12 ft do, with no kerf. By price 8 + 6 ft are 5.00 + 3.50 =
        // 8.50,
        // and 12 ft are 9.00.
        List<CutPiece> pieces = List.of(inches(84, 1, "a"), inches(60, 1, "b"));
        CuttingSpec noKerf = CuttingSpec.builder().kerf(Length.ZERO).build();

        CuttingPlan shortest = CuttingPlan.of(pieces, List.of(feet(6), feet(8), feet(12)), noKerf);
        assertThat(shortest.purchases()).containsExactly(new Purchase(feet(12), 1, 0));

        CuttingPlan cheapest = CuttingPlan.of(pieces, List.of(feet(6, "3.50"), feet(8, "5"), feet(12, "9.00")), noKerf);
        assertThat(cheapest.purchases())
                .containsExactly(new Purchase(feet(6, "3.50"), 1, 0), new Purchase(feet(8, "5"), 1, 0));
        assertThat(cheapest.cost().orElseThrow()).isEqualByComparingTo("8.50");
        assertThat(cheapest.leastCost().orElseThrow()).isEqualByComparingTo("8.50");
        assertThat(cheapest.leastLength()).isEmpty();
        assertThat(cheapest.isProvenBest()).isTrue();
    }

    @Test
    void theRuleForTheLastCut() {
        // 4 pieces of 24 in: 3 kerfs of 1/8 in come to 96 3/8, more than 8 ft; of 23 7/8 in: 95 1/2 + 3/8 = 95 7/8, or
        // 96
        // with a fourth cut; of 23 29/32: 95 5/8 + 3/8 = 96, or 96 1/8.
        assertThat(sticksOfEight(24, LastCut.MAY_RUN_OFF_THE_END)).isEqualTo(2);
        assertThat(sticksOfEight(23.875, LastCut.MAY_RUN_OFF_THE_END)).isEqualTo(1);
        assertThat(sticksOfEight(23.875, LastCut.WITHIN_THE_STICK)).isEqualTo(1);
        assertThat(sticksOfEight(23.0 + 29.0 / 32, LastCut.MAY_RUN_OFF_THE_END)).isEqualTo(1);
        assertThat(sticksOfEight(23.0 + 29.0 / 32, LastCut.WITHIN_THE_STICK)).isEqualTo(2);
    }

    private static int sticksOfEight(double inches, LastCut lastCut) {
        CuttingSpec spec = CuttingSpec.builder().lastCut(lastCut).build();
        return CuttingPlan.of(List.of(inches(inches, 4, "block")), List.of(feet(8)), spec)
                .purchases()
                .get(0)
                .needed();
    }

    @Test
    void oneNanometreTooMuchDoesNotFit() {
        CuttingSpec spec = CuttingSpec.builder().kerf(Length.ofNanometres(7)).build();
        Length stick = Length.ofNanometres(2 * 1_234_567_890L + 7);
        CutPiece half = CutPiece.of(Length.ofNanometres(1_234_567_890L), 2, "half");
        CutPiece more = CutPiece.of(Length.ofNanometres(1_234_567_891L), 1, "more");

        assertThat(CuttingPlan.of(List.of(half), List.of(SoldLength.of(stick)), spec)
                        .sticks())
                .extracting(CutStick::count, CutStick::left)
                .containsExactly(tuple(1, Length.ZERO));
        assertThat(CuttingPlan.of(List.of(half, more), List.of(SoldLength.of(stick)), spec)
                        .purchases())
                .extracting(Purchase::needed)
                .containsExactly(2);
        CutPiece one = CutPiece.of(half.length(), 1, "one");
        assertThat(CuttingPlan.of(List.of(one, more), List.of(SoldLength.of(stick)), spec)
                        .purchases())
                .extracting(Purchase::needed)
                .containsExactly(2);
    }

    @Test
    void endTrimAndCulls() {
        // 1 in of trim: 95 in take one piece of 48 in. 19 pieces, 19 sticks; at 5 % culls 19 / 0.95 = 20 are bought; 20
        // pieces / 0.95 = 21.05, so 22.
        CuttingSpec spec = CuttingSpec.builder()
                .endTrim(Length.ofInches(1))
                .culls(Ratio.ofPercent(5))
                .build();

        CuttingPlan nineteen = CuttingPlan.of(List.of(inches(48, 19, "picket")), List.of(feet(8, "4.25")), spec);
        assertThat(nineteen.purchases()).containsExactly(new Purchase(feet(8, "4.25"), 19, 1));
        assertThat(nineteen.sticks())
                .extracting(CutStick::count, CutStick::left)
                // 96 - 1 - 48 - 1/8.
                .containsExactly(tuple(19, Length.ofInches(46.875)));
        assertThat(nineteen.cost().orElseThrow()).isEqualByComparingTo("80.75");
        assertThat(nineteen.costWithSpares().orElseThrow()).isEqualByComparingTo("85.00");
        assertThat(CuttingPlan.of(List.of(inches(48, 20, "picket")), List.of(feet(8)), spec)
                        .purchases())
                .containsExactly(new Purchase(feet(8), 20, 2));
        // 93 / 0.93 = 100 exactly, though 7 % is not exact as a double.
        CuttingSpec seven = CuttingSpec.builder().culls(Ratio.ofPercent(7)).build();
        assertThat(CuttingPlan.of(List.of(inches(48, 93, "picket")), List.of(feet(4)), seven)
                        .purchases())
                .containsExactly(new Purchase(feet(4), 93, 7));
    }

    @Test
    void sticksOnHandAreUsedFirstIfTheyCostNothing() {
        SoldLength onHand = feet(10, "0").withLimit(2);
        CuttingPlan plan = CuttingPlan.of(List.of(inches(110, 5, "rail")), List.of(onHand, feet(10, "7.48")));

        assertThat(plan.purchases()).containsExactly(new Purchase(onHand, 2, 0), new Purchase(feet(10, "7.48"), 3, 0));
        assertThat(plan.cost().orElseThrow()).isEqualByComparingTo("22.44");
        assertThat(plan.isProvenBest()).isTrue();
        assertThat(plan.toString()).startsWith("cutting plan: 22.44 USD, proven best");
    }

    @Test
    void piecesTooLongAreNamedAndTheRestIsCut() {
        CuttingPlan plan = CuttingPlan.of(
                List.of(
                        inches(150, 2, "bay 4 rail 1"),
                        inches(90, 1, "bay 5 rail 1"),
                        inches(144.5, 1, "bay 6 rail 2")),
                List.of(feet(8), feet(12)));

        assertThat(plan.findings())
                .extracting(Finding::severity, Finding::code, Finding::place, Finding::message)
                .containsExactly(
                        tuple(
                                Severity.BLOCKER,
                                "piece-too-long",
                                "bay 4 rail 1",
                                "it takes 150 in, and the longest stick sold is 12 ft"),
                        tuple(
                                Severity.BLOCKER,
                                "piece-too-long",
                                "bay 6 rail 2",
                                "it takes 144.5 in, and the longest stick sold is 12 ft"));
        assertThat(plan.unplaced()).containsExactly(inches(150, 2, "bay 4 rail 1"), inches(144.5, 1, "bay 6 rail 2"));
        assertThat(plan.purchases()).containsExactly(new Purchase(feet(8), 1, 0));
        assertThat(plan.isProvenBest()).isTrue();
    }

    @Test
    void sticksOnHandThatDoNotDoLeavePiecesOver() {
        // Two pieces of 60 in to a stick of 10 ft without kerf; 7 pieces need 4 sticks and there are 3.
        CuttingSpec noKerf = CuttingSpec.builder().kerf(Length.ZERO).build();
        CuttingPlan plan = CuttingPlan.of(List.of(inches(60, 7, "block")), List.of(feet(10).withLimit(3)), noKerf);

        assertThat(plan.purchases()).extracting(Purchase::needed).containsExactly(3);
        assertThat(plan.unplaced()).containsExactly(inches(60, 1, "block"));
        assertThat(plan.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("sticks-run-out");
            assertThat(finding.place()).isEqualTo("block");
            assertThat(finding.message()).isEqualTo("the sticks on hand do not do: 1 piece is left over");
            assertThat(finding.remedy()).isEqualTo("get 1 more of 10 ft");
        });
        assertThat(plan.isProvenBest()).isFalse();
        assertThat(plan.leastLength()).contains(Length.ZERO);
    }

    @Test
    void aPieceAloneOnItsStickMayLoseItsSlantingCutOffTheEnd() {
        // 95 15/16 in with a slanting cut of 1/4 in come out of 8 ft; two of 47 7/8 in take 95 3/4 + 2 x 1/4 - 1/8.
        CutPiece alone = inches(95.9375, 1, "rail").withSawCut(Length.ofInches(0.25));
        assertThat(CuttingPlan.of(List.of(alone), List.of(feet(8))).purchases()).hasSize(1);
        CutPiece two = inches(47.875, 2, "rail").withSawCut(Length.ofInches(0.25));
        assertThat(CuttingPlan.of(List.of(two), List.of(feet(8))).purchases())
                .extracting(Purchase::needed)
                .containsExactly(2);
        assertThat(CuttingPlan.of(List.of(inches(47.875, 2, "rail")), List.of(feet(8)))
                        .purchases())
                .extracting(Purchase::needed)
                .containsExactly(1);
    }

    @Test
    void nothingToCutIsNothingToBuy() {
        CuttingPlan plan = CuttingPlan.of(List.of(), List.of(feet(8)));

        assertThat(plan.sticks()).isEmpty();
        assertThat(plan.length()).isEqualTo(Length.ZERO);
        assertThat(plan.isProvenBest()).isTrue();
    }

    @Test
    void theWorksheetEndsWithTheGap() {
        CuttingPlan plan = CuttingPlan.of(List.of(inches(110, 5, "rail")), List.of(feet(10, "7.48")));
        Worksheet sheet = plan.worksheet();

        assertThat(sheet.result()).isEqualTo(plan.gap());
        assertThat(sheet.toText())
                .contains("pieces = 5")
                .contains("sticks of 10 ft at 7.48 USD = needed + spares = 5 + 0 = 5")
                .contains("sticks needed = sum of number x price = 5 x 7.48 = 37.40 USD")
                .contains("lower bound = least price for these pieces = 37.40 USD")
                .endsWith("gap = (sticks needed - lower bound) / sticks needed = (37.40 USD - 37.40 USD) / 37.40 USD"
                        + " = 0 %\n");
    }

    @Test
    void badInputIsRefused() {
        List<CutPiece> one = List.of(inches(30, 1, "block"));
        Currency euro = Currency.getInstance("EUR");
        refused(() -> CuttingPlan.of(one, List.of()), "stock was 0 lengths");
        refused(
                () -> CuttingPlan.of(one, List.of(feet(8, "5"), feet(10))),
                "all lengths must have a price or none: give what is on hand a price of 0");
        refused(
                () -> CuttingPlan.of(one, List.of(feet(8, "5"), feet(10).withPrice(BigDecimal.TEN, euro))),
                "prices in USD and EUR; give all prices in one currency");
        refused(() -> feet(8, "-0.01"), "price of a stick of 8 ft was -0.01 USD; it must be from 0 to 1,000,000");
        refused(() -> feet(8, "1.00001"), "up to 4 decimals");
        refused(() -> feet(8).withLimit(-1), "limit of sticks of 8 ft was -1");
        refused(() -> feet(0), "length was 0 in");
        refused(() -> inches(0, 1, "block"), "length of block was 0 in; it must be over 0");
        refused(() -> inches(30, 0, "block"), "count of block was 0");
        refused(() -> inches(30, 1, " "), "label was blank");
        CuttingSpec feetForInches = CuttingSpec.builder().kerf(Length.ofFeet(8)).build();
        refused(() -> CuttingPlan.of(one, List.of(feet(8)), feetForInches), "kerf was 8 ft, and a stick sold is 8 ft");
        CuttingSpec trim = CuttingSpec.builder().endTrim(Length.ofFeet(9)).build();
        refused(() -> CuttingPlan.of(one, List.of(feet(8)), trim), "endTrim was 9 ft, and a stick sold is 8 ft");
        refused(() -> CuttingSpec.builder().kerf(Length.ofInches(-1)), "kerf was -1 in");
        refused(() -> CuttingSpec.builder().culls(Ratio.of(0.51)), "culls was 0.51");
        refused(() -> CuttingSpec.builder().effort(0), "effort was 0");
        List<CutPiece> many = List.of(inches(30, 100_000, "block"), inches(31, 1, "block"));
        refused(() -> CuttingPlan.of(many, List.of(feet(8))), "pieces were 100001; a cutting plan takes up to 100,000");
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(message);
    }

    @Test
    void aHundredThousandPiecesOfTwoThousandSizes() {
        List<CutPiece> pieces = new ArrayList<>();
        for (int i = 0; i < 2_000; i++) {
            pieces.add(CutPiece.of(Length.ofMillimetres(400 + 0.7 * i), 50, "piece " + i));
        }
        CuttingPlan plan = CuttingPlan.of(pieces, List.of(SoldLength.of(Length.ofMetres(4.8))));

        assertThat(plan.sticks().stream()
                        .mapToInt(stick -> stick.count() * stick.pieces().size())
                        .sum())
                .isEqualTo(100_000);
        assertThat(plan.gap().value()).isBetween(0.0, 0.02);
    }
}
