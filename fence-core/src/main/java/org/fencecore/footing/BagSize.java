package org.fencecore.footing;

import java.util.Objects;
import org.fencecore.units.Mass;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Written;

/**
 * A bag of dry concrete mix: what it weighs and how much concrete it makes.
 *
 * <p>The usual yields are 0.15 cu ft for each 20 lb of mix, as general articles on the trade give them (civilsir.com);
 * the bag's own label decides.
 *
 * @param weight the weight of the bag, over 0
 * @param yield the concrete one bag makes, from 0.01 to 100 cu ft
 */
public record BagSize(Mass weight, Volume yield) {

    // Before the bags, which are checked against them.
    private static final Volume LEAST_YIELD = Volume.ofCubicFeet(0.01);
    private static final Volume MOST_YIELD = Volume.ofCubicFeet(100);

    /** A 40 lb bag, 0.30 cu ft. */
    public static final BagSize POUNDS_40 = ofPounds(40, 0.30);

    /** A 50 lb bag, 0.375 cu ft. */
    public static final BagSize POUNDS_50 = ofPounds(50, 0.375);

    /** A 60 lb bag, 0.45 cu ft. */
    public static final BagSize POUNDS_60 = ofPounds(60, 0.45);

    /** An 80 lb bag, 0.60 cu ft. */
    public static final BagSize POUNDS_80 = ofPounds(80, 0.60);

    /** A 90 lb bag, 0.68 cu ft. */
    public static final BagSize POUNDS_90 = ofPounds(90, 0.68);

    /**
     * Checks the bag.
     *
     * @param weight the weight of the bag, over 0
     * @param yield the concrete one bag makes, from 0.01 to 100 cu ft
     * @throws IllegalArgumentException if either is out of its range
     */
    public BagSize {
        Objects.requireNonNull(weight, "weight");
        Objects.requireNonNull(yield, "yield");
        if (!weight.isPositive()) {
            throw new IllegalArgumentException(
                    "weight was " + Written.bag(weight) + "; it must be over 0, so check the bag's label");
        }
        if (yield.compareTo(LEAST_YIELD) < 0 || yield.compareTo(MOST_YIELD) > 0) {
            throw new IllegalArgumentException(
                    "yield was " + Written.volume(yield) + "; it must be from 0.01 to 100 cu ft, so check its unit");
        }
    }

    private static BagSize ofPounds(double pounds, double cubicFeet) {
        return new BagSize(Mass.ofPounds(pounds), Volume.ofCubicFeet(cubicFeet));
    }

    /** Returns how many bags make that much concrete, rounded up. */
    int holding(Volume concrete) {
        // A billionth of a bag is the rounding of doubles, not concrete.
        return Math.toIntExact((long) Math.ceil(concrete.ratioTo(yield).value() - 1e-9));
    }

    @Override
    public String toString() {
        return Written.bag(weight) + " bag of " + Written.volume(yield);
    }
}
