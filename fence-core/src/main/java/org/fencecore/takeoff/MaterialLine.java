package org.fencecore.takeoff;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/** One line of the shopping list: so many of a thing, in the words of the yard. */
public final class MaterialLine {

    private final MaterialGroup group;
    private final String item;
    private final int quantity;
    private final String unit;
    private final String note;
    private final @Nullable Lumber lumber;
    private final @Nullable Length length;

    private MaterialLine(
            MaterialGroup group,
            String item,
            int quantity,
            String unit,
            String note,
            @Nullable Lumber lumber,
            @Nullable Length length) {
        this.group = group;
        this.item = item;
        this.quantity = quantity;
        this.unit = unit;
        this.note = note;
        this.lumber = lumber;
        this.length = length;
    }

    MaterialLine(String item, int quantity, String unit, String note) {
        this(MaterialGroup.FASTENERS, item, quantity, unit, note, null, null);
    }

    MaterialLine in(MaterialGroup newGroup) {
        return new MaterialLine(newGroup, item, quantity, unit, note, lumber, length);
    }

    /** Sticks of one length; the item says so too. */
    MaterialLine of(Lumber newLumber, Length newLength) {
        return new MaterialLine(group, item, quantity, unit, note, newLumber, newLength);
    }

    /**
     * Returns what sort of thing it is.
     *
     * @return the group
     */
    public MaterialGroup group() {
        return group;
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

    /**
     * Returns the lumber, if it is lumber.
     *
     * @return the lumber; empty for all else
     */
    public Optional<Lumber> lumber() {
        return Optional.ofNullable(lumber);
    }

    /**
     * Returns how long each stick is, if it is lumber: the length sold, or what is to be ordered at least.
     *
     * @return the length; empty for all else
     */
    public Optional<Length> length() {
        return Optional.ofNullable(length);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MaterialLine that
                && group == that.group
                && quantity == that.quantity
                && item.equals(that.item)
                && unit.equals(that.unit)
                && note.equals(that.note)
                && Objects.equals(lumber, that.lumber)
                && Objects.equals(length, that.length);
    }

    @Override
    public int hashCode() {
        return Objects.hash(group, item, quantity, unit, note, lumber, length);
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
