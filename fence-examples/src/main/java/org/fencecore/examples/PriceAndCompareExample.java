package org.fencecore.examples;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Currency;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.estimate.Comparison;
import org.fencecore.estimate.CrewRates;
import org.fencecore.estimate.Estimate;
import org.fencecore.estimate.EstimateSpec;
import org.fencecore.estimate.PriceBook;
import org.fencecore.estimate.Task;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.packet.ComparisonSheet;
import org.fencecore.packet.EstimateSheet;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.survey.LotBoundary;
import org.fencecore.takeoff.MaterialGroup;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;

/**
 * Prices one side of the yard of {@link BuildPacketExample} with an invented price book, and compares posts up to 8 ft apart
 * with posts up to 6 ft apart.
 */
public final class PriceAndCompareExample {

    private static final Currency USD = Currency.getInstance("USD");

    private PriceAndCompareExample() {}

    /**
     * Prints the estimate and the comparison.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        CrewRates crew = CrewRates.builder()
                .takes(Task.LAYOUT, Duration.ofMinutes(10))
                .takes(Task.DIGGING, Duration.ofMinutes(45))
                .takes(Task.SETTING, Duration.ofMinutes(30))
                .takes(Task.RAILS, Duration.ofMinutes(40))
                .takes(Task.BOARDS, Duration.ofMinutes(3))
                .takes(Task.GATES, Duration.ofHours(4))
                .wage(new BigDecimal("42.00"), USD)
                .build();
        EstimateSpec spec = EstimateSpec.builder(prices())
                .crew(crew)
                .waste(MaterialGroup.BOARDS, new BigDecimal(5))
                .waste(MaterialGroup.FASTENERS, new BigDecimal(10))
                .salesTax(new BigDecimal("8.25"))
                .build();
        Estimate wide = Estimate.of(plan(8), spec);
        Estimate close = Estimate.of(plan(6), spec);

        System.out.print(EstimateSheet.of(wide)
                .withJob("Back fence, posts up to 8 ft apart")
                .withPayload(Mass.ofPounds(1500))
                .toText());
        System.out.println();
        System.out.print(
                ComparisonSheet.of(Comparison.of("8 ft", wide, "6 ft", close)).toText());
    }

    private static FencePlan plan(int feetApart) {
        LotBoundary lot = BuildPacketExample.plan().site().lot();
        Profile ground = Shots.feet(0, 12.40, 22, 11.95, 48, 10.10, 70, 9.20, 91, 8.90);
        Site site = Site.on(lot).fenceOn(1).ground(1, ground).build();
        FenceStyle style = FenceStyle.builder()
                .postLumber(Lumber.fourByFour().soldIn(Length.ofFeet(10), Length.ofFeet(12)))
                .postSpacing(PostSpacingSpec.builder()
                        .minimum(Length.ofFeet(4))
                        .maximum(Length.ofFeet(feetApart))
                        .build())
                .build();
        return FencePlanner.plan(site, style);
    }

    /** Invented prices of all that the examples buy for a fence with a walk gate. */
    static PriceBook prices() {
        return PriceBook.in(USD)
                .stick("4x4", Length.ofFeet(10), new BigDecimal("17.98"))
                .stick("4x4", Length.ofFeet(12), new BigDecimal("22.50"))
                .stick("2x4", Length.ofFeet(8), new BigDecimal("5.98"))
                .stick("2x4", Length.ofFeet(10), new BigDecimal("7.48"))
                .stick("2x4", Length.ofFeet(12), new BigDecimal("8.98"))
                .stick("2x4", Length.ofFeet(14), new BigDecimal("10.78"))
                .stick("2x4", Length.ofFeet(16), new BigDecimal("12.98"))
                .stick("1x6", Length.ofFeet(6), new BigDecimal("3.47"))
                .stick("1x6", Length.ofFeet(8), new BigDecimal("5.10"))
                .item("concrete mix", new BigDecimal("5.28"))
                .item("gravel", new BigDecimal("6.15"))
                .pack("exterior screw or ring-shank nail, under 2 1/4\"", "box", 350, new BigDecimal("34.97"))
                .pack("structural screw, 3 1/2\"", "box", 50, new BigDecimal("28.50"))
                .pack("structural screw, 5 1/2\"", "box", 50, new BigDecimal("41.25"))
                .item("gate hinge with its screws", new BigDecimal("14.75"))
                .item("gate latch with its screws", new BigDecimal("18.60"))
                .item("batter board, two stakes and a crosspiece", new BigDecimal("6.40"))
                .pack("mason's line", "roll", 250, new BigDecimal("7.95"))
                .pack("stake", "bundle", 12, new BigDecimal("9.90"))
                .item("post brace with its stake", BigDecimal.ZERO)
                .item("marking paint", new BigDecimal("6.98"))
                .build();
    }
}
