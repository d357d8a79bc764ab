package org.fencecore.gate.hang;

import java.util.Objects;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Volume;

/**
 * The boards on a leaf, spread evenly over its width, as far as their weight goes.
 *
 * @param count how many, on both faces together, from 0 to 10,000
 * @param width how wide each is, over 0, to 100 ft
 * @param thickness how thick each is, over 0, to 100 ft
 * @param length how long each is, over 0, to 100 ft
 * @param bottom how high their lower ends are over the lower edge of the frame; negative below it
 * @param wood what they are of
 */
public record LeafBoards(int count, Length width, Length thickness, Length length, Length bottom, GateWood wood) {

    private static final int MOST = 10_000;

    /**
     * Checks the sizes.
     *
     * @param count how many, on both faces together, from 0 to 10,000
     * @param width how wide each is, over 0, to 100 ft
     * @param thickness how thick each is, over 0, to 100 ft
     * @param length how long each is, over 0, to 100 ft
     * @param bottom how high their lower ends are over the lower edge of the frame; negative below it
     * @param wood what they are of
     * @throws IllegalArgumentException if one is out of range
     */
    public LeafBoards {
        if (count < 0 || count > MOST) {
            throw new IllegalArgumentException(
                    "count was " + count + "; it must be from 0 to " + MOST + " boards on one leaf");
        }
        Sizes.require("width", width);
        Sizes.require("thickness", thickness);
        Sizes.require("length", length);
        Sizes.requireWithin("bottom", bottom);
        Objects.requireNonNull(wood, "wood");
    }

    /**
     * Returns boards.
     *
     * @param count how many, on both faces together, from 0 to 10,000
     * @param width how wide each is, over 0, to 100 ft
     * @param thickness how thick each is, over 0, to 100 ft
     * @param length how long each is, over 0, to 100 ft
     * @param bottom how high their lower ends are over the lower edge of the frame; negative below it
     * @param wood what they are of
     * @return the boards
     * @throws IllegalArgumentException if one is out of range
     */
    public static LeafBoards of(
            int count, Length width, Length thickness, Length length, Length bottom, GateWood wood) {
        return new LeafBoards(count, width, thickness, length, bottom, wood);
    }

    /**
     * Returns how much wood is in them.
     *
     * @return count x width x thickness x length
     */
    public Volume volume() {
        return width.times(thickness).times(length).times(count);
    }

    /**
     * Returns what they weigh.
     *
     * @return volume x unit weight
     */
    public Force weight() {
        return wood.unitWeight().times(volume());
    }
}
