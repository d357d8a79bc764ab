package org.fencecore.cutting;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Pieces to cut that are alike: how long, how many, and what is written on them.
 *
 * <p>Example: {@code CutPiece.of(Length.ofFeetAndInches(7, 4.25), 6, "rail")} is six rails of 7 ft 4 1/4 in.
 *
 * <p>A piece whose end is cut off square takes more of the stick than the kerf: kerf / cos(angle). Say so with
 * {@link #withSawCut}.
 */
public final class CutPiece {

    private final Length length;
    private final int count;
    private final String label;
    private final @Nullable Length sawCut;

    private CutPiece(Length length, int count, String label, @Nullable Length sawCut) {
        this.length = length;
        this.count = count;
        this.label = label;
        this.sawCut = sawCut;
    }

    /**
     * Returns pieces to cut.
     *
     * @param length how long each is over all, over zero
     * @param count how many, at least 1
     * @param label what it is or where it goes, not blank
     * @return the pieces
     * @throws IllegalArgumentException if the length is not over zero, the count is under 1 or the label is blank
     */
    public static CutPiece of(Length length, int count, String label) {
        if (label.isBlank()) {
            throw new IllegalArgumentException(
                    "label was blank; say what the piece is or where it goes, such as rail 3");
        }
        if (!length.isPositive()) {
            throw new IllegalArgumentException("length of " + label + " was " + length + "; it must be over 0");
        }
        if (count < 1) {
            throw new IllegalArgumentException(
                    "count of " + label + " was " + count + "; it must be at least 1: leave out what is not wanted");
        }
        return new CutPiece(length, count, label, null);
    }

    /**
     * Returns these pieces with a saw cut wider than the kerf, measured along the stick.
     *
     * @param newSawCut what the cut behind each piece takes, 0 or more; less than the kerf counts as the kerf
     * @return the pieces
     * @throws IllegalArgumentException if it is negative
     */
    public CutPiece withSawCut(Length newSawCut) {
        if (newSawCut.isNegative()) {
            throw new IllegalArgumentException("sawCut of " + label + " was " + newSawCut + "; it must be 0 or more");
        }
        return new CutPiece(length, count, label, newSawCut);
    }

    CutPiece times(int newCount) {
        return new CutPiece(length, newCount, label, sawCut);
    }

    /** What the cut behind it takes, given the kerf. */
    Length cut(Length kerf) {
        return sawCut == null ? kerf : Length.max(kerf, sawCut);
    }

    /**
     * Returns how long each is.
     *
     * @return the length over all
     */
    public Length length() {
        return length;
    }

    /**
     * Returns how many are wanted.
     *
     * @return the count, at least 1
     */
    public int count() {
        return count;
    }

    /**
     * Returns what it is or where it goes.
     *
     * @return the label
     */
    public String label() {
        return label;
    }

    /**
     * Returns what the cut behind each piece takes, if it was said.
     *
     * @return the width of the cut along the stick; empty for the kerf
     */
    public Optional<Length> sawCut() {
        return Optional.ofNullable(sawCut);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CutPiece that
                && length.equals(that.length)
                && count == that.count
                && label.equals(that.label)
                && Objects.equals(sawCut, that.sawCut);
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, count, label, sawCut);
    }

    /** Returns the pieces in words, such as {@code 6 of 7' 4 1/4", rail}. */
    @Override
    public String toString() {
        return count + " of " + Written.tape(length) + ", " + label;
    }
}
