package org.fencecore.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;

/** One stick and the pieces that come out of it; or a number of sticks cut alike. */
public final class CutStick {

    private final int count;
    private final SoldLength sold;
    private final List<CutPiece> pieces;
    private final Length left;

    CutStick(int count, SoldLength sold, List<CutPiece> pieces, Length left) {
        this.count = count;
        this.sold = sold;
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
     * Returns the stick.
     *
     * @return one of the lengths sold
     */
    public SoldLength sold() {
        return sold;
    }

    /**
     * Returns the pieces cut from each of these sticks, in the order of the cuts: those with the widest saw cut first, and
     * then the longer first. Pieces that are alike are there once for each, and are the very ones that were asked for.
     *
     * @return the pieces, at least one, unmodifiable
     */
    public List<CutPiece> pieces() {
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

    /** Returns the cut in words, such as {@code 3 of 16 ft: 2 x 7' 4 1/4" rail; 1' 3 1/4" left}. */
    @Override
    public String toString() {
        Map<String, Integer> alike = new LinkedHashMap<>();
        pieces.forEach(piece -> alike.merge(Written.tape(piece.length()) + " " + piece.label(), 1, Integer::sum));
        List<String> words = new ArrayList<>();
        alike.forEach((piece, times) -> words.add((times == 1 ? "" : times + " x ") + piece));
        return count + " of " + Written.stock(sold.length()) + ": " + String.join(", ", words) + "; "
                + Written.tape(left) + " left";
    }
}
