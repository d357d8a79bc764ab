package org.fencecore.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.Plans.gate;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Currency;
import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.footing.BagSize;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.takeoff.MaterialGroup;
import org.fencecore.takeoff.TakeoffSpec;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Ratio;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/** Prices, times and weights of hardware are invented. */
class EstimateTest {

    static final Currency USD = Currency.getInstance("USD");

    /*
     * The fence of the takeoff's example, whose shopping list is worked by hand there. Boards and 5 %: 48 x 1.05 = 50.4, so
     * 51. Fasteners and 10 %: 270 x 1.1 = 297, 18 x 1.1 = 19.8 so 20, 14 x 1.1 = 15.4 so 16: one box each.
     *
     *   4 x 17.98   71.92    posts               1 x 34.97   34.97    box of 350 for 297
     *   3 x 12.98   38.94    2x4 of 16 ft        1 x 28.50   28.50    box of 50 for 20
     *   2 x  8.98   17.96    2x4 of 12 ft        1 x 41.25   41.25    box of 50 for 16
     *  51 x  3.47  176.97    boards              3 x 14.75   44.25    hinges
     *  16 x  5.28   84.48    concrete mix        1 x 18.60   18.60    latch
     *   3 x  6.15   18.45    gravel              2 x  6.40   12.80    batter boards
     *             ------                         1 x  7.95    7.95    roll of 250 ft for 25 ft
     *             408.72                         1 x  9.90    9.90    bundle of 12 for 4 stakes
     *                                            8 x  0.00    0.00    braces, which the crew has
     *                                            1 x  6.98    6.98    paint
     *                                                       ------
     *                                                       205.20    408.72 + 205.20 = 613.92
     * Tax         613.92 x 0.0825 = 50.6484, 50.65
     * Labour      at 42.00: 4 posts x 10 min = 40 min, 28.00; 4 holes x 45 = 3 h, 126.00; 4 posts x 30 = 2 h, 84.00; 2 bays
     *             x 40 = 80 min, 56.00; 39 boards x 3 = 117 min, 81.90; 1 leaf of 3 h, 126.00: 501.90
     * Total       613.92 + 50.65 + 501.90 = 1166.47
     */
    static PriceBook.Builder prices() {
        return PriceBook.in(USD)
                .stick("4x4", Length.ofFeet(10), money("17.98"))
                .stick("2x4", Length.ofFeet(8), money("5.98"))
                .stick("2x4", Length.ofFeet(10), money("7.48"))
                .stick("2x4", Length.ofFeet(12), money("8.98"))
                .stick("2x4", Length.ofFeet(14), money("10.78"))
                .stick("2x4", Length.ofFeet(16), money("12.98"))
                .stick("1x6", Length.ofFeet(6), money("3.47"))
                .stick("1x6", Length.ofFeet(8), money("5.10"))
                .item("concrete mix", money("5.28"))
                .item("gravel", money("6.15"))
                .pack("exterior screw or ring-shank nail, under 2 1/4\"", "box", 350, money("34.97"))
                .pack("structural screw, 3 1/2\"", "box", 50, money("28.50"))
                .pack("structural screw, 5 1/2\"", "box", 50, money("41.25"))
                .item("gate hinge with its screws", money("14.75"))
                .item("gate latch with its screws", money("18.60"))
                .item("batter board, two stakes and a crosspiece", money("6.40"))
                .pack("mason's line", "roll", 250, money("7.95"))
                .pack("stake", "bundle", 12, money("9.90"))
                .item("post brace with its stake", money("0"))
                .item("marking paint", money("6.98"));
    }

    static CrewRates.Builder crew() {
        return CrewRates.builder()
                .takes(Task.LAYOUT, Duration.ofMinutes(10))
                .takes(Task.DIGGING, Duration.ofMinutes(45))
                .takes(Task.SETTING, Duration.ofMinutes(30))
                .takes(Task.RAILS, Duration.ofMinutes(40))
                .takes(Task.BOARDS, Duration.ofMinutes(3))
                .takes(Task.GATES, Duration.ofHours(3))
                .wage(money("42.00"), USD);
    }

    static EstimateSpec.Builder spec(PriceBook book) {
        return EstimateSpec.builder(book)
                .crew(crew().build())
                .waste(MaterialGroup.BOARDS, money("5"))
                .waste(MaterialGroup.FASTENERS, money("10"))
                .salesTax(money("8.25"));
    }

    static FencePlan small() {
        return small(FenceStyle.builder()
                .postLumber(Lumber.fourByFour().soldIn(Length.ofFeet(10)))
                .build());
    }

    private static FencePlan small(FenceStyle style) {
        double feet = 234.25 / 12;
        Site site = Site.on(rectangle(feet, 60))
                .fenceOn(1)
                .ground(1, shots(0, 0, feet, 0))
                .gate(gate("garden gate", 1, 30.625 / 12, 42.25))
                .build();
        return FencePlanner.plan(site, style);
    }

    static BigDecimal money(String amount) {
        return new BigDecimal(amount);
    }

    private final Estimate estimate =
            Estimate.of(small(), spec(prices().build()).build());

    @Test
    void theEstimateOfASmallFence() {
        assertThat(estimate.materials())
                .extracting(
                        EstimateLine::packs,
                        EstimateLine::pack,
                        line -> line.amount().orElseThrow().toPlainString())
                .containsExactly(
                        tuple(4, "pieces", "71.92"),
                        tuple(3, "pieces", "38.94"),
                        tuple(2, "pieces", "17.96"),
                        tuple(51, "pieces", "176.97"),
                        tuple(16, "bags of 60 lb", "84.48"),
                        tuple(3, "bags of 1/2 cu ft", "18.45"),
                        tuple(1, "box of 350", "34.97"),
                        tuple(1, "box of 50", "28.50"),
                        tuple(1, "box of 50", "41.25"),
                        tuple(3, "pieces", "44.25"),
                        tuple(1, "pieces", "18.60"),
                        tuple(2, "pieces", "12.80"),
                        tuple(1, "roll of 250", "7.95"),
                        tuple(1, "bundle of 12", "9.90"),
                        tuple(8, "pieces", "0.00"),
                        tuple(1, "cans", "6.98"));
        assertThat(estimate.materials().get(6).withWaste()).isEqualTo(297);
        assertThat(estimate.labour())
                .extracting(
                        LabourLine::task,
                        LabourLine::count,
                        line -> line.amount().orElseThrow().toPlainString())
                .containsExactly(
                        tuple(Task.LAYOUT, 4, "28.00"),
                        tuple(Task.DIGGING, 4, "126.00"),
                        tuple(Task.SETTING, 4, "84.00"),
                        tuple(Task.RAILS, 2, "56.00"),
                        tuple(Task.BOARDS, 39, "81.90"),
                        tuple(Task.GATES, 1, "126.00"));
        // 4 x 17.98; 38.94 + 17.96; 48 x 3.47 without the waste.
        assertThat(estimate.takeoff().cuts())
                .extracting(Object::toString)
                .containsExactly(
                        "4x4 post: 71.92 USD, proven best",
                        "2x4: 56.90 USD, proven best",
                        "1x6 board: 166.56 USD, proven best");
        assertThat(estimate.pricedMaterials()).isEqualTo(money("613.92"));
        assertThat(estimate.tax()).isEqualTo(money("50.65"));
        assertThat(estimate.pricedLabour()).isEqualTo(money("501.90"));
        assertThat(estimate.total()).contains(money("1166.47"));
        assertThat(estimate.worksheet().result()).isEqualTo(money("1166.47"));
        assertThat(estimate.worksheet().toText())
                .contains("  tax = materials x tax / 100 = 613.92 x 8.25 / 100 = 50.65 USD")
                .contains("  total = materials + labour + tax = 613.92 + 501.90 + 50.65 = 1166.47 USD");
        assertThat(estimate.findings()).extracting(Finding::code).containsOnly("weight-missing");
    }

    @Test
    void labourIsTaxedWhereThatIsTheLaw() {
        // (613.92 + 501.90) x 0.0825 = 92.05515.
        Estimate taxed = Estimate.of(small(), spec(prices().build()).taxLabour().build());

        assertThat(taxed.tax()).isEqualTo(money("92.06"));
        assertThat(taxed.total()).contains(money("1207.88"));
        assertThat(taxed.worksheet().result()).isEqualTo(money("1207.88"));
    }

    @Test
    void aMissingPriceIsAGapAndNeverFree() {
        PriceBook empty = PriceBook.in(USD).item("gravel", money("6.15")).build();
        Estimate gaps = Estimate.of(small(), EstimateSpec.builder(empty).build());

        assertThat(gaps.total()).isEmpty();
        assertThat(gaps.pricedTotal()).isEqualTo(money("18.45"));
        assertThat(gaps.findings())
                .filteredOn(finding -> finding.code().equals("price-missing"))
                .hasSize(15)
                .first()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
                    assertThat(finding.place()).isEqualTo("4x4 post, 10 ft");
                    assertThat(finding.message())
                            .isEqualTo("the price book has no price for 4 pieces of it, which are not in the sum");
                });
        assertThat(gaps.worksheet().result()).isEqualTo(money("18.45"));
        assertThat(gaps.worksheet().toText()).contains("total of what is priced");
        assertThat(gaps.schedule()).isEmpty();
    }

    @Test
    void aFreeThingHasAPriceOfZero() {
        PriceBook book = PriceBook.in(USD).item("gravel", BigDecimal.ZERO).build();
        Estimate given = Estimate.of(small(), EstimateSpec.builder(book).build());

        assertThat(given.materials().get(5).amount()).contains(money("0.00"));
        assertThat(given.findings())
                .extracting(Finding::place)
                .filteredOn("gravel"::equals)
                .isEmpty();
    }

    @Test
    void missingTimesAndWagesAreGaps() {
        CrewRates some =
                CrewRates.builder().takes(Task.DIGGING, Duration.ofMinutes(45)).build();
        Estimate gaps = Estimate.of(
                small(), EstimateSpec.builder(prices().build()).crew(some).build());

        assertThat(gaps.total()).isEmpty();
        assertThat(gaps.pricedLabour()).isEqualTo(money("0.00"));
        assertThat(gaps.findings())
                .extracting(Finding::code, Finding::place)
                .startsWith(
                        tuple("time-missing", "layout"),
                        tuple("time-missing", "setting posts"),
                        tuple("time-missing", "rails"),
                        tuple("time-missing", "boards"),
                        tuple("time-missing", "gates"),
                        tuple("wage-missing", "labour"));
        assertThat(gaps.schedule().orElseThrow().days()).isEmpty();
    }

    @Test
    void someLengthsWithoutAPriceAreTold() {
        FencePlan usualPosts = small(FenceStyle.builder().build());
        Estimate partly = Estimate.of(usualPosts, spec(prices().build()).build());

        assertThat(partly.total()).contains(money("1166.47"));
        assertThat(partly.findings().get(0))
                .isEqualTo(Finding.note(
                                "lengths-without-price",
                                "4x4",
                                "sticks of 8 ft, 9 ft and 12 ft have no price, so that the least length is bought and"
                                        + " not the cheapest sticks")
                        .withRemedy("add their prices, or leave these lengths out of those the lumber is sold in"));
    }

    /*
     * Lumber at 19 % moisture is southern pine of 37.33 pcf: 62.4 x 0.55 / (1 + 0.9 x 0.55 x 0.19) x 1.19.
     *
     *   post   3.5 x 3.5 x 120 in = 1470 cu in = 0.85069 cu ft,  31.757 lb,  x 4 = 127.03
     *   2x4    1.5 x 3.5 x 192    = 1008       = 0.58333,        21.777,     x 3 =  65.33
     *          1.5 x 3.5 x 144    =  756       = 0.43750,        16.332,     x 2 =  32.66
     *   board  0.75 x 5.5 x 72    =  297       = 0.17188,         6.416,    x 51 = 327.23
     *   mix    16 x 60 = 960, gravel 3 x 50 = 150; in all 1662.25
     */
    @Test
    void theLoadOfASmallFence() {
        Load load = estimate.load();

        assertThat(load.weight().pounds()).isEqualTo(1662.25, within(0.02));
        assertThat(estimate.materials().get(0).weight().orElseThrow().pounds()).isEqualTo(127.03, within(0.01));
        assertThat(load.unknown()).hasSize(10);
        // 6.367 cu ft of concrete at 145 pcf.
        assertThat(load.concreteInPlace().pounds()).isEqualTo(6.367 * 145, within(0.1));
        assertThat(load.worksheet().result()).isEqualTo(load.weight());
        assertThat(load.worksheet().toText())
                .contains("  4x4 post, 10 ft, each = 3.5 in x 3.5 in x 10 ft at 37.33 pcf = 31.756 lb"
                        + "   [NDS Supplement 2018, 3.1.3]");
    }

    @Test
    void tripsAreFilledInTheOrderOfTheList() {
        // 552.25 lb of lumber leave room for 447.75: 7 bags of 60 lb. The other 9 and the gravel are 690 lb.
        List<Load.Trip> trips = estimate.load().trips(Mass.ofPounds(1000));

        assertThat(trips).hasSize(2);
        assertThat(trips.get(0).parts())
                .extracting(Load.Part::toString)
                .containsExactly(
                        "4 4x4 post, 10 ft", "3 2x4, 16 ft", "2 2x4, 12 ft", "51 1x6 board, 6 ft", "7 concrete mix");
        assertThat(trips.get(1).parts()).extracting(Load.Part::toString).containsExactly("9 concrete mix", "3 gravel");
        assertThat(trips.get(1).weight().pounds()).isEqualTo(690, within(1e-6));
        assertThat(estimate.load().trips(estimate.load().weight())).hasSize(1);
        assertThatThrownBy(() -> estimate.load().trips(Mass.ofPounds(55)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("payload was 55 lb, and one concrete mix weighs 60 lb");
    }

    @Test
    void whatIsWetterOrKnownWeighsAsGiven() {
        PriceBook book = prices().weighs("gate hinge with its screws", Mass.ofPounds(1.5))
                .weighs("gravel", Mass.ofPounds(55))
                .build();
        Estimate wet = Estimate.of(
                small(),
                spec(book)
                        .moisture(Ratio.ofPercent(15))
                        .lumberWeighs("4x4", UnitWeight.ofPcf(50))
                        .takeoff(TakeoffSpec.builder().bag(BagSize.POUNDS_80).build())
                        .build());

        // 1470 / 1728 x 50; southern pine at 15 % is 36.74 pcf; 3 hinges, 3 bags of 55 lb; 4 x 3 bags of 80 lb.
        assertThat(wet.materials().get(0).weightEach().orElseThrow().pounds()).isEqualTo(42.535, within(0.001));
        assertThat(wet.materials().get(1).weightEach().orElseThrow().pounds()).isEqualTo(21.43, within(0.01));
        assertThat(wet.materials().get(4).weight().orElseThrow().pounds()).isEqualTo(960, within(1e-6));
        assertThat(wet.materials().get(5).weight().orElseThrow().pounds()).isEqualTo(165, within(1e-6));
        assertThat(wet.materials().get(9).weight().orElseThrow().pounds()).isEqualTo(4.5, within(1e-6));
    }

    @Test
    void pricesOutOfRangeAreRefused() {
        PriceBook.Builder book = PriceBook.in(USD);
        assertThatThrownBy(() -> book.item("gravel", money("-1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("price of gravel was -1 USD; it must be from 0 to 1,000,000 with up to 4 decimals");
        assertThatThrownBy(() -> book.stick("2x4", Length.ofFeet(8), money("-0.01")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("price of a stick of 8 ft was -0.01 USD");
        assertThatThrownBy(() -> book.pack("stake", "bundle", 0, money("9")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("count of a bundle of stake was 0");
        assertThatThrownBy(() -> book.item(" ", money("9"))).isInstanceOf(IllegalArgumentException.class);
        book.item("stake", money("1"));
        assertThatThrownBy(() -> book.item("stake", money("2")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("has a price already");
        assertThatThrownBy(() -> EstimateSpec.builder(book.build()).salesTax(money("100.5")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("salesTax was 100.5 %");
        assertThatThrownBy(() -> CrewRates.builder().wage(money("-42"), USD))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wage was -42 USD");
    }

    @Test
    void currenciesAreNotMixed() {
        CrewRates euros = crew().wage(money("42"), Currency.getInstance("EUR")).build();
        EstimateSpec.Builder mixed = EstimateSpec.builder(prices().build()).crew(euros);

        assertThatThrownBy(mixed::build)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the wage was in EUR and the prices in USD; give all in one currency");
    }

    @Test
    void amountsAreRoundedToTheSmallestCoin() {
        // 3 bags at 0.3350 are 1.005, and half a cent goes up; yen have no coin below one.
        PriceBook cents = PriceBook.in(USD).item("gravel", money("0.3350")).build();
        PriceBook yen = PriceBook.in(Currency.getInstance("JPY"))
                .item("gravel", money("410.5"))
                .build();

        assertThat(Estimate.of(small(), EstimateSpec.builder(cents).build()).pricedTotal())
                .isEqualTo(money("1.01"));
        assertThat(Estimate.of(small(), EstimateSpec.builder(yen).build()).pricedTotal())
                .isEqualTo(money("1232"));
    }
}
