package org.fencecore.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.fencecore.estimate.EstimateTest.money;
import static org.fencecore.estimate.EstimateTest.prices;
import static org.fencecore.estimate.EstimateTest.small;
import static org.fencecore.estimate.EstimateTest.spec;

import java.util.Currency;
import java.util.Optional;
import org.fencecore.FencePlanner;
import org.fencecore.layout.BoardPattern;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class ComparisonTest {

    private final Estimate shadowbox =
            Estimate.of(small(), spec(prices().build()).build());

    /*
     * The small fence side by side, by hand: boarded 176 1/2 in are 32 boards of 5 1/2 in, 1/62 in apart; the leaf of 41 1/2
     * in has 6 full ones and 2 ripped to 4 1/4 in. That is 40 against 39 + 9; posts, bays, gates, concrete and sticks stay.
     */
    @Test
    void shadowboxAgainstSideBySide() {
        FenceStyle style = FenceStyle.builder()
                .postLumber(Lumber.fourByFour().soldIn(Length.ofFeet(10)))
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .build();
        Estimate sideBySide = Estimate.of(
                FencePlanner.plan(small().site(), style), spec(prices().build()).build());
        Comparison comparison = Comparison.of("shadowbox", shadowbox, "side by side", sideBySide);

        assertThat(comparison.rows())
                .extracting(Comparison.Row::what)
                .containsExactly(
                        "posts",
                        "bays",
                        "gates",
                        "boards",
                        "sticks and boards",
                        "concrete",
                        "bags of concrete mix",
                        "materials",
                        "labour",
                        "total",
                        "weight of the load",
                        "days");
        assertThat(comparison.row("boards").first()).contains(money("48"));
        assertThat(comparison.row("boards").second()).contains(money("40"));
        assertThat(comparison.row("boards").difference()).contains(money("-8"));
        assertThat(comparison.row("posts").difference()).contains(money("0"));
        // 3 x 16 + 2 x 12 ft of 2x4, 4 x 10 of posts, 48 x 6 of boards.
        assertThat(comparison.row("sticks and boards").first()).contains(money("400"));
        assertThat(comparison.row("sticks and boards").difference()).contains(money("-48"));
        assertThat(comparison.row("total").first()).contains(money("1166.47"));
        // 40 x 1.05 = 42 boards for 51: 9 x 3.47 = 31.23 less, and the screws still come from one box.
        assertThat(comparison.row("materials").difference()).contains(money("-31.23"));
        // 32 x 3 min for 39 x 3: 21 min x 42 an hour.
        assertThat(comparison.row("labour").difference()).contains(money("-14.70"));
        assertThat(comparison.row("weight of the load").first()).contains(money("1662"));
        assertThat(comparison.row("days"))
                .extracting(Comparison.Row::first, Comparison.Row::second, Comparison.Row::difference)
                .containsExactly(Optional.of(money("4")), Optional.of(money("4")), Optional.of(money("0")));
    }

    @Test
    void whatIsNotKnownHasNoDifference() {
        PriceBook empty = PriceBook.in(EstimateTest.USD).build();
        Estimate unpriced = Estimate.of(small(), EstimateSpec.builder(empty).build());
        Comparison comparison = Comparison.of("priced", shadowbox, "unpriced", unpriced);

        assertThat(comparison.rows())
                .filteredOn(row -> row.difference().isEmpty())
                .extracting(Comparison.Row::what, Comparison.Row::unit)
                .containsExactly(
                        tuple("materials", "USD"), tuple("labour", "USD"), tuple("total", "USD"), tuple("days", ""));
        assertThat(comparison.row("total").first()).isPresent();
        assertThatThrownBy(() -> comparison.row("hinges"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("what was 'hinges'; it must be one of posts, bays");
    }

    @Test
    void currenciesAreNotMixed() {
        PriceBook euros = PriceBook.in(Currency.getInstance("EUR")).build();
        Estimate abroad = Estimate.of(small(), EstimateSpec.builder(euros).build());

        assertThatThrownBy(() -> Comparison.of("here", shadowbox, "there", abroad))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("here was in USD and there in EUR; price both in one currency");
    }
}
