package org.fencecore.boarding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * One upright board as it is cut: how long along each edge, at what angles, with what dog-ears. Ends are straight, but for
 * those that are marked in place along a line of tops that bends, or along the ground.
 */
public final class BoardCut {

    private final BoardPlacement board;
    private final BoardEdge lower;
    private final BoardEdge upper;
    private final Length dogEar;

    BoardCut(BoardPlacement board, BoardEdge lower, BoardEdge upper, Length dogEar) {
        this.board = board;
        this.lower = lower;
        this.upper = upper;
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
     * @return highest point less lowest; zero where the tops come down to the bottoms
     */
    public Length length() {
        return upper.highest().minus(lower.lowest());
    }

    /**
     * Returns the length along the left edge, dog-ears not taken off.
     *
     * @return corner to corner
     */
    public Length leftEdge() {
        return upper.left().minus(lower.left());
    }

    /**
     * Returns the length along the right edge, dog-ears not taken off.
     *
     * @return corner to corner
     */
    public Length rightEdge() {
        return upper.right().minus(lower.right());
    }

    /**
     * Returns the height of the lower left corner, in the datum of the lines.
     *
     * @return the elevation
     */
    public Length bottom() {
        return lower.left();
    }

    /**
     * Returns the height of the lowest point, in the datum of the lines.
     *
     * @return the elevation
     */
    public Length lowest() {
        return lower.lowest();
    }

    /**
     * Returns the corners of the board, to draw it or to lay it out on a bench.
     *
     * @return going round from the lower left one, by the lower right: how far each is along the clear length, and its
     *     height in the datum of the lines; unmodifiable, at least 4 or, with dog-ears, 6
     */
    public List<ProfilePoint> outline() {
        return outline(Interval.of(board.left(), board.right()));
    }

    /**
     * Returns the corners of an upright strip of the board, such as is kept beside a post.
     *
     * @param strip from where to where it reaches along the clear length, within the board
     * @return going round like {@link #outline()}
     * @throws IllegalArgumentException if the strip has no width or is not within the board
     */
    public List<ProfilePoint> outline(Interval strip) {
        if (!strip.length().isPositive()
                || !Interval.of(board.left(), board.right()).contains(strip)) {
            throw new IllegalArgumentException("strip was " + strip
                    + "; it must be over 0 wide and within the board from " + board.left() + " to " + board.right());
        }
        List<ProfilePoint> corners = new ArrayList<>(lower.within(strip));
        List<ProfilePoint> top = new ArrayList<>(upper.withDogEars(dogEar).within(strip));
        Collections.reverse(top);
        corners.addAll(top);
        return List.copyOf(corners);
    }

    /**
     * Returns how long it is on the average: its face over its width, dog-ears taken off.
     *
     * @return the length of a square board with as much wood in it
     */
    public Length meanLength() {
        List<ProfilePoint> corners = outline();
        Length base = lowest();
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            ProfilePoint a = corners.get(i);
            ProfilePoint b = corners.get((i + 1) % corners.size());
            twice += (b.station().metres() - a.station().metres())
                    * (a.elevation().minus(base).metres()
                            + b.elevation().minus(base).metres());
        }
        // The corners go round from left to right along the bottom, which counts less than the top.
        return Length.ofMetres(-twice / 2 / board.width().metres());
    }

    /**
     * Returns how the top is cut.
     *
     * @return the angle off square from its left corner to its right one, over zero if it rises to the right
     */
    public Angle topCut() {
        return upper.cut();
    }

    /**
     * Returns how the bottom is cut.
     *
     * @return the angle off square from its left corner to its right one, over zero if it rises to the right
     */
    public Angle bottomCut() {
        return lower.cut();
    }

    /**
     * Tells whether an end is marked in place, along a line that bends or the ground, so that the board is cut long first.
     *
     * @return false if both ends are cut to an angle, or square
     */
    public boolean isMarkedInPlace() {
        return lower.isMarked() || upper.isMarked();
    }

    /**
     * Returns the size of its dog-ears.
     *
     * @return what each takes off the top and off the edge, zero without
     */
    public Length dogEar() {
        return dogEar;
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
                && lower.equals(that.lower)
                && upper.equals(that.upper)
                && dogEar.equals(that.dogEar);
    }

    @Override
    public int hashCode() {
        return Objects.hash(board, lower, upper, dogEar);
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
        String ends = upper.isSquare() && lower.isSquare()
                ? "square ends"
                : "top " + upper.words("to the line") + ", bottom " + lower.words("to the ground");
        return ends + (dogEar.isZero() ? "" : ", dog-ears " + Written.tape(dogEar));
    }
}
