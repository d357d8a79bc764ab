package org.fencecore.boarding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.ProfilePoint;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/** One upright board as it is cut: how long along each edge, at what angles, with what dog-ears. */
public final class BoardCut {

    private final BoardPlacement board;
    private final long bottomLeft;
    private final long bottomRight;
    private final long topLeft;
    private final long topRight;
    private final long dogEar;

    BoardCut(BoardPlacement board, long bottomLeft, long bottomRight, long topLeft, long topRight, long dogEar) {
        this.board = board;
        this.bottomLeft = bottomLeft;
        this.bottomRight = bottomRight;
        this.topLeft = topLeft;
        this.topRight = topRight;
        this.dogEar = dogEar;
    }

    /**
     * Returns which board it is, and how wide.
     *
     * @return its place in the layout
     */
    public BoardPlacement board() {
        return board;
    }

    /**
     * Returns the length to cut from stock, between the longest points of both ends, dog-ears not taken off.
     *
     * @return highest corner less lowest, over zero
     */
    public Length length() {
        return Length.ofNanometres(Math.max(topLeft, topRight) - Math.min(bottomLeft, bottomRight));
    }

    /**
     * Returns the length along the left edge, dog-ears not taken off.
     *
     * @return corner to corner
     */
    public Length leftEdge() {
        return Length.ofNanometres(topLeft - bottomLeft);
    }

    /**
     * Returns the length along the right edge, dog-ears not taken off.
     *
     * @return corner to corner
     */
    public Length rightEdge() {
        return Length.ofNanometres(topRight - bottomRight);
    }

    /**
     * Returns the height of the lower left corner, in the datum of the lines.
     *
     * @return the elevation
     */
    public Length bottom() {
        return Length.ofNanometres(bottomLeft);
    }

    /**
     * Returns the corners of the board, to draw it or to lay it out on a bench.
     *
     * @return going round from the lower left one, by the lower right: how far each is along the clear length, and its
     *     height in the datum of the lines; unmodifiable, 4 or, with dog-ears, 6
     */
    public List<ProfilePoint> outline() {
        List<ProfilePoint> corners = new ArrayList<>();
        long left = board.left().nanometres();
        long right = board.right().nanometres();
        corners.add(at(left, bottomLeft));
        corners.add(at(right, bottomRight));
        if (dogEar == 0) {
            corners.add(at(right, topRight));
            corners.add(at(left, topLeft));
        } else {
            // Along a sloped top, a dog-ear begins where the top has come its size in from the edge.
            double rise = (double) (topRight - topLeft) / (right - left);
            long risen = Math.round(rise * dogEar);
            corners.add(at(right, topRight - dogEar));
            corners.add(at(right - dogEar, topRight - risen));
            corners.add(at(left + dogEar, topLeft + risen));
            corners.add(at(left, topLeft - dogEar));
        }
        return List.copyOf(corners);
    }

    private static ProfilePoint at(long station, long height) {
        return new ProfilePoint(Length.ofNanometres(station), Length.ofNanometres(height));
    }

    /**
     * Returns how the top is cut.
     *
     * @return the angle off square, over zero if it rises to the right
     */
    public Angle topCut() {
        return Angle.ofTangent(Length.ofNanometres(topRight - topLeft), board.width());
    }

    /**
     * Returns how the bottom is cut.
     *
     * @return the angle off square, over zero if it rises to the right
     */
    public Angle bottomCut() {
        return Angle.ofTangent(Length.ofNanometres(bottomRight - bottomLeft), board.width());
    }

    /**
     * Returns the size of its dog-ears.
     *
     * @return what each takes off the top and off the edge, zero without
     */
    public Length dogEar() {
        return Length.ofNanometres(dogEar);
    }

    /**
     * Tells whether it is ripped to a smaller width.
     *
     * @return false for a board of full width
     */
    public boolean isRipped() {
        return !board.isFull();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BoardCut that
                && board.equals(that.board)
                && bottomLeft == that.bottomLeft
                && bottomRight == that.bottomRight
                && topLeft == that.topLeft
                && topRight == that.topRight
                && dogEar == that.dogEar;
    }

    @Override
    public int hashCode() {
        return Objects.hash(board, bottomLeft, bottomRight, topLeft, topRight, dogEar);
    }

    /**
     * Describes the board as a cut list does.
     *
     * @return such as {@code 6' 0 1/2" long, ripped to 4", top 5.7 deg, bottom square, dog-ears 1 1/2"}
     */
    @Override
    public String toString() {
        return Written.tape(length()) + " long, " + work();
    }

    /**
     * Returns what is done to the board besides cutting it to length.
     *
     * @return such as {@code ripped to 4", top 5.7 deg, bottom square, dog-ears 1 1/2"}
     */
    public String work() {
        return (isRipped() ? "ripped to " + Written.tape(board.width()) + ", " : "") + ends();
    }

    /**
     * Returns how its ends are cut.
     *
     * @return such as {@code square ends}, or {@code top 5.7 deg, bottom square, dog-ears 1 1/2"}
     */
    public String ends() {
        String ends = topLeft == topRight && bottomLeft == bottomRight
                ? "square ends"
                : "top " + end(topLeft, topRight, topCut()) + ", bottom " + end(bottomLeft, bottomRight, bottomCut());
        return ends + (dogEar == 0 ? "" : ", dog-ears " + Written.tape(dogEar()));
    }

    private static String end(long left, long right, Angle cut) {
        return left == right ? "square" : Written.saw(cut);
    }
}
