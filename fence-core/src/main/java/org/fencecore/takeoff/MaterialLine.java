package org.fencecore.takeoff;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One line of the shopping list: so many of a thing, in the words of the yard. */
public final class MaterialLine {

    private final String item;
    private final int quantity;
    private final String unit;
    private final String note;

    MaterialLine(String item, int quantity, String unit, String note) {
        this.item = item;
        this.quantity = quantity;
        this.unit = unit;
        this.note = note;
    }

    /**
     * Returns what to buy.
     *
     * @return such as {@code 4x4 post, 10 ft}
     */
    public String item() {
        return item;
    }

    /**
     * Returns how many to buy.
     *
     * @return the quantity, rounded up to whole units, over 0
     */
    public int quantity() {
        return quantity;
    }

    /**
     * Returns what the quantity counts.
     *
     * @return such as {@code pieces} or {@code bags of 60 lb}
     */
    public String unit() {
        return unit;
    }

    /**
     * Returns what it is for or how it was counted.
     *
     * @return a few words
     */
    public String note() {
        return note;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MaterialLine that
                && quantity == that.quantity
                && item.equals(that.item)
                && unit.equals(that.unit)
                && note.equals(that.note);
    }

    @Override
    public int hashCode() {
        return Objects.hash(item, quantity, unit, note);
    }

    /**
     * Describes the line.
     *
     * @return such as {@code 4 pieces 4x4 post, 10 ft (4 posts)}
     */
    @Override
    public String toString() {
        return quantity + " " + unit + " " + item + " (" + note + ")";
    }
}
