package org.fencecore.gate.hang;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Boards on a leaf that are alike, as far as their weight goes: spread evenly over its width, or all at one place across it.
 *
 * <p>A board whose top is cut to a line counts as square at its mean length; where a leaf's boards differ, each is a lot of
 * its own, at its place.
 */
public final class LeafBoards {

    private static final int MOST = 10_000;

    private final int count;
    private final Length width;
    private final Length thickness;
    private final Length length;
    private final Length bottom;
    private final GateWood wood;
    private final @Nullable Length centre;

    private LeafBoards(
            int count,
            Length width,
            Length thickness,
            Length length,
            Length bottom,
            GateWood wood,
            @Nullable Length centre) {
        this.count = count;
        this.width = width;
        this.thickness = thickness;
        this.length = length;
        this.bottom = bottom;
        this.wood = wood;
        this.centre = centre;
    }

    /**
     * Returns boards that are spread evenly over the leaf.
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
        if (count < 0 || count > MOST) {
            throw new IllegalArgumentException(
                    "count was " + count + "; it must be from 0 to " + MOST + " boards on one leaf");
        }
        return new LeafBoards(
                count,
                Sizes.require("width", width),
                Sizes.require("thickness", thickness),
                Sizes.require("length", length),
                Sizes.requireWithin("bottom", bottom),
                Objects.requireNonNull(wood, "wood"),
                null);
    }

    /**
     * Returns the same boards at one place across the leaf.
     *
     * @param fromLeft how far their middle is from the left edge of the leaf seen from outside, 0 to 100 ft
     * @return the boards there
     * @throws IllegalArgumentException if out of that range
     */
    public LeafBoards at(Length fromLeft) {
        return new LeafBoards(count, width, thickness, length, bottom, wood, Sizes.requireOrZero("fromLeft", fromLeft));
    }

    /**
     * Returns how many there are.
     *
     * @return the number on both faces
     */
    public int count() {
        return count;
    }

    /**
     * Returns how wide each is.
     *
     * @return the width
     */
    public Length width() {
        return width;
    }

    /**
     * Returns how thick each is.
     *
     * @return the thickness
     */
    public Length thickness() {
        return thickness;
    }

    /**
     * Returns how long each is.
     *
     * @return the length, of a top cut to a line the mean
     */
    public Length length() {
        return length;
    }

    /**
     * Returns how high their lower ends are.
     *
     * @return the height over the lower edge of the frame; negative below it
     */
    public Length bottom() {
        return bottom;
    }

    /**
     * Returns what they are of.
     *
     * @return the wood
     */
    public GateWood wood() {
        return wood;
    }

    /**
     * Returns where they are across the leaf.
     *
     * @return how far their middle is from its left edge seen from outside; empty when spread evenly
     */
    public Optional<Length> centre() {
        return Optional.ofNullable(centre);
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

    /** Tells whether only length and place set these apart from others. */
    boolean isLike(LeafBoards other) {
        return width.equals(other.width) && thickness.equals(other.thickness) && wood.equals(other.wood);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LeafBoards that
                && count == that.count
                && isLike(that)
                && length.equals(that.length)
                && bottom.equals(that.bottom)
                && Objects.equals(centre, that.centre);
    }

    @Override
    public int hashCode() {
        return Objects.hash(count, width, thickness, length, bottom, wood, centre);
    }

    @Override
    public String toString() {
        return count + " boards of " + Written.tape(width) + " by " + Written.tape(thickness) + ", "
                + Written.tape(length) + " long";
    }
}
