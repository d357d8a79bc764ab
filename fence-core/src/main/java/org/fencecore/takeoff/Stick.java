package org.fencecore.takeoff;

import java.util.List;
import java.util.stream.Collectors;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;

/**
 * One stick of lumber as it is bought, and the pieces that come out of it; or a number of sticks cut alike.
 *
 * <p>A stick of length S takes pieces whose lengths over all, with one saw cut for each, come to no more than S and one
 * kerf: the last cut may run off the end. A cut off square takes kerf / cos(angle) of the stick's length. Cut in the
 * order of {@link #pieces}.
 */
public final class Stick {

    private final int count;
    private final Lumber lumber;
    private final Length length;
    private final List<Piece> pieces;
    private final Length left;

    Stick(int count, Lumber lumber, Length length, List<Piece> pieces, Length left) {
        this.count = count;
        this.lumber = lumber;
        this.length = length;
        this.pieces = List.copyOf(pieces);
        this.left = left;
    }

    /**
     * Returns how many sticks are cut alike.
     *
     * @return the count, at least 1
     */
    public int count() {
        return count;
    }

    /**
     * Returns the lumber it is.
     *
     * @return the lumber
     */
    public Lumber lumber() {
        return lumber;
    }

    /**
     * Returns the length to buy.
     *
     * @return one of the lengths the lumber is sold in
     */
    public Length length() {
        return length;
    }

    /**
     * Returns the pieces cut from each of these sticks, in the order of the cuts: those cut furthest off square first,
     * and then the longer first. Boards that are cut alike are one entry of {@link Takeoff#pieces}; it is here once for
     * each board the stick gives.
     *
     * @return the pieces, at least one, unmodifiable
     */
    public List<Piece> pieces() {
        return pieces;
    }

    /**
     * Returns what is left of each stick after the last cut.
     *
     * @return the offcut, 0 or more
     */
    public Length left() {
        return left;
    }

    /**
     * Describes the cut.
     *
     * @return such as {@code 2x4, 8 ft: garden gate top rail, garden gate bottom rail; 2' 2 3/4" left}
     */
    @Override
    public String toString() {
        return (count == 1 ? "" : count + " ")
                + lumber + ", " + Written.stock(length) + ": "
                + pieces.stream().map(Piece::label).collect(Collectors.joining(", ")) + "; " + Written.tape(left)
                + " left";
    }
}
