package org.fencecore.boarding;

import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How the ends of boards are cut: square or along the line they end on, and with or without dog-ears.
 *
 * <p>A square end is where the line is at the middle of the board; an end cut to a slope follows the line from edge to
 * edge. A dog-ear takes both upper corners off at 45 degrees, so its size is what it takes off the top and off the edge.
 *
 * <p>Sources: dog-ears at 45 degrees are common practice, no source.
 *
 * <pre>{@code
 * BoardEnds ends = BoardEnds.square().withDogEars(Length.ofInches(1.5)).withSlopedBottom();
 * }</pre>
 */
public final class BoardEnds {

    private static final BoardEnds SQUARE = new BoardEnds(false, false, Length.ZERO);

    private final boolean slopedTop;
    private final boolean slopedBottom;
    private final Length dogEar;

    private BoardEnds(boolean slopedTop, boolean slopedBottom, Length dogEar) {
        this.slopedTop = slopedTop;
        this.slopedBottom = slopedBottom;
        this.dogEar = dogEar;
    }

    /**
     * Returns ends that are square, top and bottom.
     *
     * @return square ends
     */
    public static BoardEnds square() {
        return SQUARE;
    }

    /**
     * Returns ends with the top cut along the top line.
     *
     * @return ends like these with a sloped top
     */
    public BoardEnds withSlopedTop() {
        return new BoardEnds(true, slopedBottom, dogEar);
    }

    /**
     * Returns ends with the bottom cut along the bottom line.
     *
     * @return ends like these with a sloped bottom
     */
    public BoardEnds withSlopedBottom() {
        return new BoardEnds(slopedTop, true, dogEar);
    }

    /**
     * Returns ends with the upper corners cut off.
     *
     * @param size how much of the top and of the edge each takes, over zero
     * @return ends like these with dog-ears
     * @throws IllegalArgumentException if {@code size} is not over zero
     */
    public BoardEnds withDogEars(Length size) {
        if (!size.isPositive()) {
            throw new IllegalArgumentException(
                    "size of dog-ears was " + size + "; it must be over 0, or leave them out");
        }
        return new BoardEnds(slopedTop, slopedBottom, size);
    }

    /**
     * Tells whether tops follow the top line.
     *
     * @return false for square tops
     */
    public boolean hasSlopedTop() {
        return slopedTop;
    }

    /**
     * Tells whether bottoms follow the bottom line.
     *
     * @return false for square bottoms
     */
    public boolean hasSlopedBottom() {
        return slopedBottom;
    }

    /**
     * Returns the size of the dog-ears.
     *
     * @return what each takes off the top and off the edge, zero without
     */
    public Length dogEar() {
        return dogEar;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BoardEnds that
                && slopedTop == that.slopedTop
                && slopedBottom == that.slopedBottom
                && dogEar.equals(that.dogEar);
    }

    @Override
    public int hashCode() {
        return Objects.hash(slopedTop, slopedBottom, dogEar);
    }

    /**
     * Describes the ends.
     *
     * @return such as {@code top square, bottom sloped, dog-ears 1 1/2"}
     */
    @Override
    public String toString() {
        return "top " + (slopedTop ? "sloped" : "square") + ", bottom " + (slopedBottom ? "sloped" : "square")
                + (dogEar.isZero() ? "" : ", dog-ears " + Written.tape(dogEar));
    }
}
