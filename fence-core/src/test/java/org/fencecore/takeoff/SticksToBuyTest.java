package org.fencecore.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.cutting.SoldLength;
import org.fencecore.footing.BagSize;
import org.fencecore.gate.GateSpec;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.rail.RailSpec;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/** Which sticks are bought for the pieces, and how these are cut from them. */
class SticksToBuyTest {

    /** Worked by hand in {@link TakeoffTest}. */
    private final Takeoff small = Takeoff.of(TakeoffTest.small());

    @Test
    void aPieceLongerThanAnySoldIsNamedAndOrdered() {
        // The frost takes the posts to 90 in: 74 + 90 = 164 in = 13 ft 8 in, and 4x4 is sold to 12 ft.
        Site site = TakeoffTest.smallSite().frostDepth(Length.ofInches(90)).build();
        Takeoff takeoff =
                Takeoff.of(FencePlanner.plan(site, FenceStyle.builder().build()));

        assertThat(takeoff.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.BLOCKER);
            assertThat(finding.code()).isEqualTo("piece-too-long");
            assertThat(finding.place()).isEqualTo("post 1, post 2, post 3 and post 4");
            assertThat(finding.message()).isEqualTo("the post takes 13' 8\", and the longest 4x4 sold is 12 ft");
        });
        assertThat(TakeoffTest.item("4x4 post, 13' 8\" or longer", takeoff))
                .extracting(MaterialLine::quantity, MaterialLine::note)
                .containsExactly(4, "to order: 4 posts");
        assertThat(takeoff.sticks()).noneMatch(stick -> stick.lumber().name().equals("4x4"));
    }

    @Test
    void piecesAlikeShareAFindingAndTheFirstAreNamed() {
        // 173 in at 5 ft at most are 3 bays of 57 2/3 in. Rails of the end bays measure 59.42 in, of the middle one
        // 57.67;
        // 1.40 m are 55.12 in.
        FenceStyle style = FenceStyle.builder()
                .railLumber(Lumber.twoByFour().soldIn(Length.ofMetres(1.4)))
                .postSpacing(PostSpacingSpec.builder()
                        .minimum(Length.ofFeet(3))
                        .maximum(Length.ofFeet(5))
                        .build())
                .build();
        FencePlan plan = FencePlanner.plan(TakeoffTest.smallSite().build(), style);

        assertThat(Takeoff.of(plan).findings())
                .extracting(Finding::place, Finding::message)
                .containsExactly(
                        tuple(
                                "post 2 to post 3 rail 1, post 4 to post 5 rail 1, post 2 to post 3 rail 2, post 4 to post 5 rail 2,"
                                        + " post 2 to post 3 rail 3 and post 4 to post 5 rail 3",
                                "the rail takes 4' 11 7/16\", and the longest 2x4 sold is 1.40 m"),
                        tuple(
                                "post 3 to post 4 rail 1, post 3 to post 4 rail 2 and post 3 to post 4 rail 3",
                                "the rail takes 4' 9 11/16\", and the longest 2x4 sold is 1.40 m"));
    }

    @Test
    void shortBoardsShareAStick() {
        // 38 + 1 + 9 boards of 30 in, three from each of 8 ft, 128 ft in all, for two from each of 6 ft would be 144:
        // 12
        // sticks, one with two and the one that is ripped beside a post, and 3 for the gate.
        Takeoff takeoff = Takeoff.of(smallWithBoards(Length.ofInches(30)));

        assertThat(takeoff.sticks()
                        .subList(takeoff.sticks().size() - 3, takeoff.sticks().size()))
                .extracting(Stick::toString)
                .containsExactly(
                        "12 1x6, 8 ft: post 2 to post 4 boards, post 2 to post 4 boards, post 2 to post 4 boards; 5 5/8\" left",
                        "1x6, 8 ft: post 2 to post 4 boards, post 2 to post 4 boards, post 2 to post 4 boards; 5 5/8\" left",
                        "3 1x6, 8 ft: garden gate boards, garden gate boards, garden gate boards; 5 5/8\" left");
        assertThat(TakeoffTest.item("1x6 board, 8 ft", takeoff).quantity()).isEqualTo(16);
        assertThat(takeoff.cuts().get(2)).asString().isEqualTo("1x6 board: 128 ft, proven best");
    }

    @Test
    void theSawCutDecidesWhetherTwoBoardsComeFromOne() {
        FencePlan plan = smallWithBoards(Length.ofInches(36));

        assertThat(TakeoffTest.item("1x6 board, 8 ft", Takeoff.of(plan)).quantity())
                .isEqualTo(24);
        TakeoffSpec noKerf = TakeoffSpec.builder().kerf(Length.ZERO).build();
        assertThat(TakeoffTest.item("1x6 board, 6 ft", Takeoff.of(plan, noKerf)).quantity())
                .isEqualTo(24);
    }

    @Test
    void theSticksTellHowNearToTheLeastTheyAre() {
        assertThat(small.cuts())
                .extracting(LumberCut::toString)
                .containsExactly(
                        "4x4 post: 40 ft, proven best", "2x4: 72 ft, proven best", "1x6 board: 288 ft, proven best");
        assertThat(small.cuts().get(1).gap()).isEqualTo(Ratio.ZERO);
    }

    /*
     * Invented prices: 8 ft 5.98, 10 ft 7.48, 12 ft 9.98, 14 ft 10.20, 16 ft 12.98. The rails still take three of 16 ft. The
     * gate takes 22 ft and more: two of 12 ft are 19.96; one of 10 ft (the brace, a gate rail and the block: 110.12 of
     * 120.125 in) and one of 14 ft (162.875 of 168.125) are 17.68; of 8 and 16 ft no share fits, and three of 8 ft, 17.94,
     * are dearer anyway. In all 3 x 12.98 + 17.68 = 56.62.
     */
    @Test
    void pricesChooseTheCheapestSticks() {
        Currency usd = Currency.getInstance("USD");
        String[] prices = {"5.98", "7.48", "9.98", "10.20", "12.98"};
        List<SoldLength> sold = new ArrayList<>();
        for (int i = 0; i < prices.length; i++) {
            sold.add(SoldLength.of(Length.ofFeet(8 + 2 * i)).withPrice(new BigDecimal(prices[i]), usd));
        }
        Takeoff cheapest = Takeoff.of(
                TakeoffTest.small(),
                TakeoffSpec.builder().stickPrices(Map.of("2x4", sold)).build());

        assertThat(cheapest.materials())
                .extracting(MaterialLine::quantity, MaterialLine::item)
                .startsWith(
                        tuple(4, "4x4 post, 10 ft"),
                        tuple(3, "2x4, 16 ft"),
                        tuple(1, "2x4, 14 ft"),
                        tuple(1, "2x4, 10 ft"));
        assertThat(cheapest.cuts().get(1)).asString().isEqualTo("2x4: 56.62 USD, proven best");

        // With a length missing from the prices they do not count.
        Takeoff least = Takeoff.of(
                TakeoffTest.small(),
                TakeoffSpec.builder()
                        .stickPrices(Map.of("2x4", sold.subList(1, 5)))
                        .build());
        assertThat(least.materials()).isEqualTo(small.materials());
        assertThatThrownBy(() ->
                        TakeoffSpec.builder().stickPrices(Map.of("2x4", List.of(SoldLength.of(Length.ofFeet(8))))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("newPrices had 2x4 of 8 ft without a price");
    }

    /** Of 20 sticks 19 are good: 4 / 0.95, 3 / 0.95, 2 / 0.95 and 48 / 0.95 = 50.5, each rounded up. */
    @Test
    void sparesAreBoughtForCulls() {
        TakeoffSpec spec = TakeoffSpec.builder().culls(Ratio.ofPercent(5)).build();

        assertThat(Takeoff.of(TakeoffTest.small(), spec).materials())
                .extracting(MaterialLine::quantity, MaterialLine::note)
                .startsWith(
                        tuple(5, "4 posts; 1 to spare"),
                        tuple(4, "3 rails; 1 to spare"),
                        tuple(3, "2 gate stiles, 2 gate rails, 1 gate brace and 1 gate block; 1 to spare"),
                        tuple(51, "48 boards; 3 to spare"));
    }

    @Test
    void trimmedSticksAreShorter() {
        // Boards of 72 in no more come from 6 ft; posts of 111 in from 10 ft with 9 to spare.
        Takeoff trimmed = Takeoff.of(
                TakeoffTest.small(),
                TakeoffSpec.builder().endTrim(Length.ofInches(9)).build());

        assertThat(TakeoffTest.item("1x6 board, 8 ft", trimmed).quantity()).isEqualTo(48);
        assertThat(TakeoffTest.item("4x4 post, 10 ft", trimmed).quantity()).isEqualTo(4);
        assertThat(trimmed.sticks().get(0).left()).isEqualTo(Length.ZERO);

        // Frost takes the posts to 74 + 68 = 142 in, and of 12 ft 9 in are trimmed.
        FencePlan deep = FencePlanner.plan(
                TakeoffTest.smallSite().frostDepth(Length.ofInches(68)).build(),
                FenceStyle.builder().build());
        assertThat(Takeoff.of(deep).findings()).isEmpty();
        assertThat(Takeoff.of(deep, trimmed.spec()).findings())
                .extracting(Finding::code, Finding::message)
                .containsExactly(tuple(
                        "piece-too-long",
                        "the post takes 11' 10\", and the longest 4x4 sold is 12 ft less 9\" of trim"));
        assertThatThrownBy(() -> TakeoffSpec.builder().endTrim(Length.ofInches(13)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("trim was")
                .hasMessageContaining("from 0 to 12 in");
    }

    @Test
    void otherPricesKeepTheRestOfTheSpec() {
        TakeoffSpec spec = TakeoffSpec.builder()
                .kerf(Length.ofInches(0.25))
                .endTrim(Length.ofInches(1))
                .culls(Ratio.ofPercent(5))
                .bag(BagSize.POUNDS_80)
                .build();
        List<SoldLength> sold =
                List.of(SoldLength.of(Length.ofFeet(8)).withPrice(new BigDecimal("5.98"), Currency.getInstance("USD")));
        TakeoffSpec priced = spec.withStickPrices(Map.of("2x4", sold));

        assertThat(priced.kerf()).isEqualTo(Length.ofInches(0.25));
        assertThat(priced.cutting().endTrim()).isEqualTo(Length.ofInches(1));
        assertThat(priced.cutting().culls()).isEqualTo(Ratio.ofPercent(5));
        assertThat(priced.bag()).isEqualTo(BagSize.POUNDS_80);
        assertThat(priced.stickPrices()).isEqualTo(Map.of("2x4", sold));
        assertThat(spec.stickPrices()).isEmpty();
        assertThat(TakeoffSpec.builder()
                        .stickPrices(Map.of("2x4", sold))
                        .stickPrices(Map.of("4x4", sold))
                        .build()
                        .stickPrices())
                .isEqualTo(Map.of("4x4", sold));
    }

    private static FencePlan smallWithBoards(Length length) {
        RailSpec rails = RailSpec.builder().boardLength(length).build();
        return FencePlanner.plan(
                TakeoffTest.smallSite().build(),
                FenceStyle.builder().rails(rails).build());
    }

    @Test
    void rippedPiecesSayTheirWidth() {
        // 8 ft boarded side by side takes two boards ripped to 4 in, as the example of the layout package works out.
        Site site = TakeoffTest.levelSide((96 - 3.5 + 15.5) / 12).build();
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .build();

        assertThat(TakeoffTest.only(PieceKind.BOARD, Takeoff.of(FencePlanner.plan(site, style))))
                .extracting(Piece::count, piece -> piece.width().inches(), Piece::cuts)
                .containsExactly(tuple(16, 5.5, "square ends"), tuple(2, 4.0, "square ends, ripped to 4\""));

        FenceStyle slim = FenceStyle.builder()
                .gate(GateSpec.builder().braceWidth(Length.ofInches(2.5)).build())
                .build();
        assertThat(TakeoffTest.only(
                        PieceKind.GATE_BRACE,
                        Takeoff.of(FencePlanner.plan(TakeoffTest.smallSite().build(), slim))))
                .singleElement()
                .extracting(Piece::cuts)
                .asString()
                .endsWith(", ripped to 2 1/2\"");
    }

    @Test
    void aKerfOutOfRangeIsRefused() {
        TakeoffSpec.Builder spec = TakeoffSpec.builder();
        assertThatThrownBy(() -> spec.kerf(Length.ofInches(1.1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("kerf was")
                .hasMessageContaining("from 0 to 1 in");
        assertThatThrownBy(() -> spec.kerf(Length.ofInches(-0.125))).isInstanceOf(IllegalArgumentException.class);
        assertThat(spec.build().kerf()).isEqualTo(Length.ofInches(0.125));
        assertThat(spec.kerf(Length.ofInches(1)).build().kerf()).isEqualTo(Length.ofInches(1));
        assertThat(spec.endTrim(Length.ofInches(12)).build().cutting().endTrim())
                .isEqualTo(Length.ofInches(12));
        assertThatThrownBy(() -> spec.endTrim(Length.ofInches(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("trim was -1 in; it must be from 0 to 12 in");
    }
}
