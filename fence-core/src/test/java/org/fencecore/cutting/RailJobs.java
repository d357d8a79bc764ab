package org.fencecore.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.SplittableRandom;
import org.fencecore.units.Length;

/** Random jobs of rails, the same each time. */
final class RailJobs {

    private static final String[] PRICES = {"5.97", "7.48", "9.62", "12.98"};
    private static final int[] FEET = {8, 10, 12, 16};
    private static final int LONGEST_INCHES = 108;

    private RailJobs() {}

    static List<CutPiece> pieces(long seed, int sizes, int count, int shortestInches) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] counts = new int[sizes];
        Arrays.fill(counts, 1);
        for (int i = sizes; i < count; i++) {
            counts[random.nextInt(sizes)]++;
        }
        List<CutPiece> pieces = new ArrayList<>();
        for (int i = 0; i < sizes; i++) {
            int sixteenths = 16 * shortestInches + random.nextInt(16 * (LONGEST_INCHES - shortestInches));
            pieces.add(CutPiece.of(Length.ofInches(sixteenths / 16.0), counts[i], "rail " + (i + 1)));
        }
        return pieces;
    }

    static List<SoldLength> stock(boolean priced) {
        List<SoldLength> stock = new ArrayList<>();
        for (int i = 0; i < FEET.length; i++) {
            SoldLength sold = SoldLength.of(Length.ofFeet(FEET[i]));
            stock.add(priced ? sold.withPrice(new BigDecimal(PRICES[i]), Currency.getInstance("USD")) : sold);
        }
        return stock;
    }

    static Job job(List<CutPiece> pieces, List<SoldLength> stock, Length kerf) {
        return Sizes.of(pieces, CuttingSpec.builder().kerf(kerf).build()).job(stock, Money.of(stock));
    }

    static Job job(long seed, int sizes, int count, int shortestInches, boolean priced) {
        return job(pieces(seed, sizes, count, shortestInches), stock(priced), Length.ofInches(0.125));
    }
}
