package org.fencecore.cutting;

import org.fencecore.worksheet.Written;

/**
 * How many sticks of one length to buy.
 *
 * @param sold the stick
 * @param needed how many are cut
 * @param spares how many more to buy for those that are no good
 */
public record Purchase(SoldLength sold, int needed, int spares) {

    /**
     * Returns how many to buy.
     *
     * @return needed and spares
     */
    public int sticks() {
        return needed + spares;
    }

    /** Returns the purchase in words, such as {@code 21 of 16 ft, 1 of them spare}. */
    @Override
    public String toString() {
        return sticks() + " of " + Written.stock(sold.length()) + (spares == 0 ? "" : ", " + spares + " of them spare");
    }
}
