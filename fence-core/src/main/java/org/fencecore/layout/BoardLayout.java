package org.fencecore.layout;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Which boards fill a clear length, how wide they are and where they go, with a full board at both ends.
 *
 * <p>A crew that nails boards at a fixed gap ends on a sliver. So the count comes first and the gap follows: with
 * {@code n} boards of width w in a clear length L,
 *
 * <pre>
 * gap = (L - n w) / (n - 1)
 * n   = from (L + most gap) / (w + most gap), rounded up, to (L + least gap) / (w + least gap), rounded down
 * </pre>
 *
 * <p>and of these counts the one is taken whose gap is nearest the preferred; of two alike, the smaller. If no count of
 * full boards has its gap in range, boards are ripped as {@link Fitting} lists: as few as keep the share of the width
 * that the pattern asks, in the middle, an even number of an even count and an odd number of an odd count, so that the
 * section is the same from both ends. The ends stay full unless the section is too short for that. With
 * {@linkplain BoardPattern#withGapAtEnds gaps at the ends} there are {@code n + 1} gaps, and signs change to suit.
 *
 * <p>The boards of a second row, behind those of a shadowbox or over those of board on board and board and batten, are
 * full, and each is centred on a gap of the outside: the lap on each side is half of what it is wider than the gap. A
 * ripped outside board is never so narrow that the two which lap it would overlap.
 *
 * <p>Widths and gaps sum to the clear length to the nanometre; nothing is rounded to the tape. A layout costs the same
 * for ten boards and for ten million on a face, which is the limit, as its boards are worked out when asked for.
 *
 * <p>It assumes boards of one width with straight, parallel edges, and takes no account of wood movement.
 *
 * <p>Sources: the formula is geometry; full boards at the ends and ripped ones in the middle are common practice, no
 * source.
 *
 * <p>Example: a shadowbox of 5 1/2 in boards in a section of 7 ft 10 1/2 in. With 11 boards there are 10 gaps of
 * (94 1/2 - 60 1/2) / 10 = 3.4 in, and 10 boards behind them that lap (5 1/2 - 3.4) / 2 = 1.05 in.
 *
 * <pre>{@code
 * BoardPattern pattern = BoardPattern.shadowbox(Length.ofInches(5.5)).withLap(Length.ofInches(1));
 * BoardLayout layout = BoardLayout.fit(Length.parse("7 ft 10 1/2 in"), pattern);
 * layout.count();                                // 21
 * layout.row(Face.OUTSIDE).gap();                // 3.4 in
 * layout.row(Face.INSIDE).boards().get(0).left();    // 4.45 in
 * layout.lap();                                  // 1.05 in
 * layout.choice();                               // FULL_BOARDS
 * layout.row(Face.OUTSIDE).storyPole(Length.ofInches(0.0625)).get(1);    // 8 7/8 in, for 8.9
 * }</pre>
 */
public final class BoardLayout {

    private final Length clearLength;
    private final BoardPattern pattern;
    private final Length shift;
    private final BoardFit fit;
    private final FrontBoards front;
    private final BoardList boards;
    private final BoardRow outside;
    private final BoardRow second;

    private BoardLayout(Length clearLength, BoardPattern pattern, Length shift) {
        this.clearLength = clearLength;
        this.pattern = pattern;
        this.shift = shift;
        this.fit = new BoardFitter(clearLength, pattern).fit();
        long width = pattern.width().nanometres();
        long gap = fit.gap();
        long pitch = gap + (fit.ripped() == fit.count() ? fit.rippedWidth() : width);
        this.front = new FrontBoards(fit, width, pattern.hasGapAtEnds() ? 1 : 0);
        Face secondFace = pattern.secondFace().orElse(Face.INSIDE);
        int behind = pattern.isLapped() ? fit.spaces() : 0;
        long cover = pattern.coverWidth().orElse(pattern.width()).nanometres();
        BackBoards back = new BackBoards(front, behind, cover, shift.nanometres());
        this.boards = new BoardList(front, back, secondFace);
        this.outside = new BoardRow(Face.OUTSIDE, boards.subList(0, fit.count()), front, gap, pitch);
        this.second = new BoardRow(
                secondFace,
                boards.subList(fit.count(), boards.size()),
                back,
                behind < 2 ? 0 : pitch - cover,
                behind < 2 ? cover : pitch);
    }

    /**
     * Fills a clear length with boards.
     *
     * @param clearLength the length to fill, from the edge of the first board or gap to the edge of the last; at least
     *     the width of a board, and with gaps at the ends {@link BoardPattern#minimumLength}
     * @param pattern how the boards follow each other
     * @return the layout, with {@link #findings} where the pattern could not be kept
     * @throws IllegalArgumentException if {@code clearLength} is shorter than that, or takes over 10,000,000 boards on
     *     a face
     */
    public static BoardLayout fit(Length clearLength, BoardPattern pattern) {
        Length shortest = pattern.hasGapAtEnds() ? pattern.minimumLength() : pattern.width();
        if (clearLength.compareTo(shortest) < 0) {
            throw new IllegalArgumentException("clearLength was " + clearLength + "; it must be " + shortest
                    + " or more to hold one of the " + pattern
                    + "; take narrower boards, or join the section to its neighbour");
        }
        return new BoardLayout(clearLength, pattern, Length.ZERO);
    }

    /**
     * Returns this layout with the boards of its second row moved, all alike, as to keep more of them off posts.
     *
     * @param by how far from the middle of their gaps, to the right if positive; up to {@link #mostShift} either way
     * @return the layout
     * @throws IllegalArgumentException if {@code by} is out of that range
     */
    public BoardLayout withSecondRowMoved(Length by) {
        if (by.abs().compareTo(mostShift()) > 0) {
            throw new IllegalArgumentException("by was " + by + "; it must be up to " + mostShift()
                    + " either way, or the lap on one side is under the least");
        }
        return new BoardLayout(clearLength, pattern, by);
    }

    /**
     * Returns how far the second row may be moved from the middle of the gaps, either way, and keep the least lap.
     *
     * @return the lap less the least that the pattern accepts; zero without a second row
     */
    public Length mostShift() {
        Length least = pattern.coverWidth()
                .map(cover -> cover.minus(pattern.mostGap()).dividedBy(2))
                .orElse(Length.ZERO);
        return centredLap()
                .map(lap -> Length.max(lap.minus(least), Length.ZERO))
                .orElse(Length.ZERO);
    }

    /**
     * Returns how far the second row is moved from the middle of the gaps.
     *
     * @return the distance, to the right if positive
     */
    public Length shift() {
        return shift;
    }

    /**
     * Returns the length that is filled.
     *
     * @return the clear length
     */
    public Length clearLength() {
        return clearLength;
    }

    /**
     * Returns how the boards were to follow each other.
     *
     * @return the pattern
     */
    public BoardPattern pattern() {
        return pattern;
    }

    /**
     * Returns the boards on one face.
     *
     * @param face the face
     * @return its row, without boards if the pattern has none there
     */
    public BoardRow row(Face face) {
        if (face == Face.OUTSIDE) {
            return outside;
        }
        return face == second.face() ? second : new BoardRow(face, boards.subList(0, 0), front, 0, 0);
    }

    /**
     * Returns all boards: those outside from left to right, then those of the second row.
     *
     * @return an unmodifiable view that holds no boards; going through it steps from board to board and leaves nothing to
     *     clean up, {@code get} finds one by division
     */
    public List<BoardPlacement> boards() {
        return boards;
    }

    /**
     * Returns the left edges of all boards in the order of {@link #boards}: the marks to set on the rails.
     *
     * @return an unmodifiable view, each mark measured from the left end and exact to the nanometre
     */
    public List<Length> marks() {
        return boards.marks();
    }

    /**
     * Returns how many boards there are in both rows, battens among them.
     *
     * @return the count, at least 1
     */
    public int count() {
        return outside.count() + second.count();
    }

    /**
     * Returns how many boards have their full width.
     *
     * @return the count less those ripped
     */
    public int fullCount() {
        return count() - fit.ripped();
    }

    /**
     * Returns the boards that are ripped, all outside.
     *
     * @return the exceptions from left to right, as an unmodifiable view; empty if all boards are full
     */
    public List<BoardPlacement> ripped() {
        return outside.boards().subList(front.firstRipped(), front.firstRipped() + fit.ripped());
    }

    /**
     * Returns how far a board of the second row laps the outside board on each side; where the row is moved, on the side
     * where it laps less.
     *
     * @return the lap to the nearest nanometre; empty without a second row
     */
    public Optional<Length> lap() {
        return centredLap().map(lap -> lap.minus(shift.abs()));
    }

    private Optional<Length> centredLap() {
        return second.count() == 0
                ? Optional.empty()
                : pattern.coverWidth().map(cover -> cover.minus(outside.gap()).dividedBy(2));
    }

    /**
     * Returns the nearest length that takes full boards alone and is no longer than this one, so that a post can be moved
     * until the boards come out flush: that of as many full boards as fit, with the widest gaps.
     *
     * @return the length, this very one if its boards are all full
     */
    public Length flushShorter() {
        return isFlush() ? clearLength : flush((int) fitter().mostBoards(), pattern.mostGap());
    }

    /**
     * Returns the nearest length that takes full boards alone and is no shorter than this one: that of one full board
     * more, with the narrowest gaps.
     *
     * @return the length, this very one if its boards are all full
     */
    public Length flushLonger() {
        return isFlush() ? clearLength : flush((int) fitter().mostBoards() + 1, pattern.leastGap());
    }

    private boolean isFlush() {
        return fit.choice() == Fitting.FULL_BOARDS;
    }

    private BoardFitter fitter() {
        return new BoardFitter(clearLength, pattern);
    }

    private Length flush(int boardCount, Length gap) {
        return pattern.width().times(boardCount).plus(gap.times(fitter().spaces(boardCount)));
    }

    /**
     * Returns which way of fitting was taken.
     *
     * @return the choice
     */
    public Fitting choice() {
        return fit.choice();
    }

    /**
     * Returns why that way was taken, and why the ones before it were not possible.
     *
     * @return a sentence
     */
    public String reason() {
        return new BoardExplanation(this, fit).reason();
    }

    /**
     * Returns what is wrong with the layout: blockers {@code gap-out-of-range} for a gap out of its range and {@code
     * board-too-narrow} for ripped boards, and a warning {@code end-board-ripped} for end boards that are ripped.
     *
     * @return all findings, empty if the pattern is kept
     */
    public List<Finding> findings() {
        return new BoardExplanation(this, fit).findings();
    }

    /**
     * Returns the calculation of the outside row, line by line, ending with its gap.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        return new BoardWorksheet(this, fit).worksheet();
    }

    /**
     * Tells whether two layouts fill the same length with the same pattern and move the second row alike, and so are the
     * same.
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BoardLayout that
                && clearLength.equals(that.clearLength)
                && pattern.equals(that.pattern)
                && shift.equals(that.shift);
    }

    @Override
    public int hashCode() {
        return Objects.hash(clearLength, pattern, shift);
    }

    /**
     * Describes the layout.
     *
     * @return such as {@code 12 boards in 8' 0", 2 of them ripped}
     */
    @Override
    public String toString() {
        return count() + " boards in " + Written.tape(clearLength)
                + (fit.ripped() == 0 ? "" : ", " + fit.ripped() + " of them ripped");
    }
}
