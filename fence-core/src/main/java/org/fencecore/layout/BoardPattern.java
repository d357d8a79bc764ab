package org.fencecore.layout;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How boards are to follow each other along a fence: their width, the gap that is preferred and those still accepted,
 * and how narrow a ripped board may be.
 *
 * <p>Five arrangements:
 *
 * <ul>
 *   <li>{@linkplain #sideBySide side by side}: boards that touch, or nearly; gaps from 0 to 1/8 in are accepted, 0
 *       preferred.
 *   <li>{@linkplain #spaced spaced}: pickets with a gap; half the preferred gap to one and a half times is accepted.
 *   <li>{@linkplain #shadowbox shadowbox}: boards on both faces in turn, each lapping behind its neighbours. The gap on
 *       a face is the board less two laps. A lap of 1 in is preferred, 3/4 in to 1 1/2 in accepted, less on boards under
 *       4 in.
 *   <li>{@linkplain #boardOnBoard board on board}: two layers on the outside, the second over the gaps of the first, with
 *       the laps of a shadowbox.
 *   <li>{@linkplain #boardAndBatten board and batten}: boards 1/2 in apart, 1/4 in to 3/4 in accepted, and a batten over
 *       each gap. A batten laps 1/2 in or more, so that gaps are smaller under battens less than 1 3/4 in wide.
 * </ul>
 *
 * <p>A ripped board is at least half a board. All these figures are common practice, no source, and each can be
 * replaced. Patterns are immutable; the methods that set something return another pattern.
 *
 * <p>Wood movement is left out: give the gap at the moisture the boards are put up with.
 *
 * <p>Example: 5 1/2 in boards that lap 1 in on each side are 3 1/2 in apart on each face.
 *
 * <pre>{@code
 * BoardPattern pattern = BoardPattern.shadowbox(Length.ofInches(5.5)).withLap(Length.ofInches(1));
 * pattern.preferredGap();     // 3 1/2 in
 * pattern.leastGap();         // 2 1/2 in, at laps of 1 1/2 in
 * pattern.minimumLength();    // 1 ft 1 1/2 in: two boards and the least gap
 * }</pre>
 */
public final class BoardPattern {

    private static final Length LIMIT = Length.ofMetres(100);
    private static final Length USUAL_LAP = Length.ofInches(1);
    private static final Length USUAL_SLACK = Length.ofInches(0.125);
    private static final Length BATTEN_LAP = Length.ofInches(0.5);
    private static final Length BATTEN_GAP = Length.ofInches(0.25);
    private static final Ratio HALF = Ratio.of(0.5);

    /** How boards are arranged. */
    public enum Arrangement {
        /** One row, touching or nearly so. */
        SIDE_BY_SIDE,
        /** One row with gaps. */
        SPACED,
        /** Two rows on either face, each over the gaps of the other. */
        SHADOWBOX,
        /** Boards over the gaps of a first row, on the same face. */
        BOARD_ON_BOARD,
        /** Narrow battens over the gaps of the boards. */
        BOARD_AND_BATTEN;

        String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    private final Arrangement arrangement;
    private final Length width;
    private final Length coverWidth;
    private final Length leastGap;
    private final Length preferredGap;
    private final Length mostGap;
    private final Ratio smallestPart;
    private final boolean gapAtEnds;
    private final Ripping ripping;

    private BoardPattern(
            Arrangement arrangement,
            Length width,
            Length coverWidth,
            Length leastGap,
            Length preferredGap,
            Length mostGap,
            Ratio smallestPart,
            boolean gapAtEnds,
            Ripping ripping) {
        this.arrangement = arrangement;
        this.width = width;
        this.coverWidth = coverWidth;
        this.leastGap = leastGap;
        this.preferredGap = preferredGap;
        this.mostGap = mostGap;
        this.smallestPart = smallestPart;
        this.gapAtEnds = gapAtEnds;
        this.ripping = ripping;
    }

    /**
     * Returns boards that touch, or leave gaps of up to 1/8 in where that saves ripping one.
     *
     * @param width the width of a board
     * @return the pattern
     * @throws IllegalArgumentException if {@code width} is not over zero and up to 100 m
     */
    public static BoardPattern sideBySide(Length width) {
        requireWidth(width);
        return unspaced(Arrangement.SIDE_BY_SIDE, width, width).withGaps(Length.ZERO, Length.ZERO, USUAL_SLACK);
    }

    /**
     * Returns boards or pickets with a gap, from half to one and a half times the preferred one.
     *
     * @param width the width of a board
     * @param preferredGap the gap wanted
     * @return the pattern
     * @throws IllegalArgumentException if {@code width} or {@code preferredGap} is not over zero, or they are over
     *     100 m
     */
    public static BoardPattern spaced(Length width, Length preferredGap) {
        requireWidth(width);
        if (!preferredGap.isPositive()) {
            throw new IllegalArgumentException("preferredGap was " + preferredGap
                    + "; it must be over 0 and up to 100 m, and for boards that touch use sideBySide");
        }
        Length half = preferredGap.dividedBy(2);
        return unspaced(Arrangement.SPACED, width, width).withGaps(half, preferredGap, preferredGap.plus(half));
    }

    /**
     * Returns boards on both faces in turn, lapping 1 in, or a quarter of a board under 4 in wide.
     *
     * @param width the width of a board
     * @return the pattern
     * @throws IllegalArgumentException if {@code width} is not over zero and up to 100 m
     */
    public static BoardPattern shadowbox(Length width) {
        requireWidth(width);
        return unspaced(Arrangement.SHADOWBOX, width, width).withLap(Length.min(USUAL_LAP, width.dividedBy(4)));
    }

    /**
     * Returns boards in two layers on the outside face, the second over the gaps of the first and lapping 1 in, or a
     * quarter of a board under 4 in wide. The first layer reaches from end to end, so that every board is fixed to the
     * rails, those of the second layer through the first.
     *
     * @param width the width of a board
     * @return the pattern
     * @throws IllegalArgumentException if {@code width} is not over zero and up to 100 m
     */
    public static BoardPattern boardOnBoard(Length width) {
        requireWidth(width);
        return unspaced(Arrangement.BOARD_ON_BOARD, width, width).withLap(Length.min(USUAL_LAP, width.dividedBy(4)));
    }

    /**
     * Returns boards with a narrow gap and a batten over each: gaps of 1/4 in to 3/4 in, 1/2 in preferred, as far as the
     * batten laps 1/2 in on each side.
     *
     * @param width the width of a board
     * @param battenWidth the width of a batten
     * @return the pattern
     * @throws IllegalArgumentException if {@code width} is not over zero and up to 100 m, or {@code battenWidth} is under
     *     1 1/4 in or over {@code width}
     */
    public static BoardPattern boardAndBatten(Length width, Length battenWidth) {
        requireWidth(width);
        Length narrowest = BATTEN_GAP.plus(BATTEN_LAP.times(2));
        if (battenWidth.compareTo(narrowest) < 0 || battenWidth.compareTo(width) > 0) {
            throw new IllegalArgumentException("battenWidth was " + battenWidth + " on boards " + width
                    + " wide; it must be from " + narrowest + " to the width of a board: it laps " + BATTEN_LAP
                    + " on each side of a gap of " + BATTEN_GAP + " or more");
        }
        Length most = Length.min(BATTEN_GAP.times(3), battenWidth.minus(BATTEN_LAP.times(2)));
        return unspaced(Arrangement.BOARD_AND_BATTEN, width, battenWidth)
                .keepingTo(BATTEN_GAP, Length.min(BATTEN_GAP.times(2), most), most);
    }

    private static BoardPattern unspaced(Arrangement arrangement, Length width, Length coverWidth) {
        return new BoardPattern(
                arrangement, width, coverWidth, Length.ZERO, Length.ZERO, Length.ZERO, HALF, false, Ripping.FEWEST);
    }

    private static void requireWidth(Length width) {
        if (!width.isPositive() || width.compareTo(LIMIT) > 0) {
            throw new IllegalArgumentException(
                    "width was " + width + "; it must be over 0 and up to 100 m: give the width of one board");
        }
    }

    /**
     * Returns this lapped pattern with another lap, and with laps accepted from 3/4 of it to 1 1/2 times, but well short
     * of half a board, or of half a batten.
     *
     * @param preferred how much a board or batten should lap its neighbour on each side
     * @return the pattern with that lap
     * @throws IllegalArgumentException if the lap is negative, or half a board or more, or nothing laps here
     */
    public BoardPattern withLap(Length preferred) {
        requireLap("preferred", preferred);
        Length most = Length.min(
                preferred.times(3).dividedBy(2),
                preferred.plus(coverWidth.dividedBy(2)).dividedBy(2));
        return withLaps(preferred.times(3).dividedBy(4), preferred, most);
    }

    /**
     * Returns this lapped pattern with other laps.
     *
     * @param least the smallest lap accepted
     * @param preferred how much a board or batten should lap its neighbour on each side
     * @param most the largest lap accepted
     * @return the pattern with those laps
     * @throws IllegalArgumentException if a lap is negative, or half a board or more, or they are not in order, or
     *     nothing laps here
     */
    public BoardPattern withLaps(Length least, Length preferred, Length most) {
        requireLap("least", least);
        requireLap("most", most);
        requireOrder("lap", least, preferred, most);
        return keepingTo(gapAtLap(most), gapAtLap(preferred), gapAtLap(least));
    }

    private void requireLap(String name, Length lap) {
        if (!isLapped()) {
            throw new IllegalArgumentException(name + " lap was " + lap + " for boards " + arrangement.words()
                    + ", which do not lap; use withGaps, or start from shadowbox");
        }
        if (lap.isNegative() || !gapAtLap(lap).isPositive()) {
            String cover = arrangement == Arrangement.BOARD_AND_BATTEN ? "batten" : "board";
            throw new IllegalArgumentException(name + " lap was " + lap + " for " + cover + "s " + coverWidth
                    + " wide; it must be from 0 to under half a " + cover + ", or nothing is left of the gap");
        }
    }

    private Length gapAtLap(Length lap) {
        return coverWidth.minus(lap.times(2));
    }

    /**
     * Returns this pattern with other gaps. The count of boards is the one whose gap comes nearest the preferred; to
     * have as few boards as a largest gap allows, prefer the largest.
     *
     * @param least the smallest gap accepted
     * @param preferred the gap wanted
     * @param most the largest gap accepted
     * @return the pattern with those gaps
     * @throws IllegalArgumentException if a gap is negative or over 100 m, or they are not in order, or this is
     *     a lapped pattern
     */
    public BoardPattern withGaps(Length least, Length preferred, Length most) {
        if (isLapped()) {
            throw new IllegalArgumentException("gaps from " + least + " to " + most + " were given for a "
                    + arrangement.words() + ", whose gaps follow from the laps; use withLaps");
        }
        if (least.isNegative() || most.compareTo(LIMIT) > 0) {
            throw new IllegalArgumentException("gaps were from " + least + " to " + most
                    + "; they must be from 0 to 100 m: give the distance between two boards");
        }
        requireOrder("gap", least, preferred, most);
        return keepingTo(least, preferred, most);
    }

    private static void requireOrder(String name, Length least, Length preferred, Length most) {
        if (least.compareTo(preferred) > 0 || preferred.compareTo(most) > 0) {
            throw new IllegalArgumentException("least, preferred and most " + name + " were " + least + ", " + preferred
                    + " and " + most + "; give them in rising order, the preferred one within the range");
        }
    }

    private BoardPattern keepingTo(Length least, Length preferred, Length most) {
        return new BoardPattern(
                arrangement, width, coverWidth, least, preferred, most, smallestPart, gapAtEnds, ripping);
    }

    /**
     * Returns this pattern with another limit for ripped boards.
     *
     * @param part the smallest share of a board's width that a ripped board may have; 1 if none may be ripped
     * @return the pattern with that limit
     * @throws IllegalArgumentException if {@code part} is not over 0 and up to 1
     */
    public BoardPattern withSmallestPart(Ratio part) {
        if (!part.isPositive() || part.compareTo(Ratio.of(1)) > 0) {
            throw new IllegalArgumentException("part was " + part
                    + "; it must be over 0 and up to 1: the share of a board's width that a ripped board must keep");
        }
        return new BoardPattern(
                arrangement, width, coverWidth, leastGap, preferredGap, mostGap, part, gapAtEnds, ripping);
    }

    /**
     * Returns this pattern with a gap in place of a board at both ends, as for pickets between two posts.
     *
     * @return the pattern with gaps at its ends, equal to those between boards
     * @throws IllegalArgumentException if this is a lapped pattern, which needs boards at its ends to lap
     */
    public BoardPattern withGapAtEnds() {
        if (isLapped()) {
            throw new IllegalArgumentException("gaps at the ends were asked of a " + arrangement.words()
                    + ", whose second row laps the first at both ends; use spaced or sideBySide");
        }
        return new BoardPattern(
                arrangement, width, coverWidth, leastGap, preferredGap, mostGap, smallestPart, true, ripping);
    }

    /**
     * Returns this pattern with another way of ripping boards; the fewest are ripped if not said.
     *
     * @param way which boards to rip where full ones do not fill a length
     * @return the pattern with that way
     */
    public BoardPattern withRipping(Ripping way) {
        return new BoardPattern(
                arrangement,
                width,
                coverWidth,
                leastGap,
                preferredGap,
                mostGap,
                smallestPart,
                gapAtEnds,
                Objects.requireNonNull(way, "way"));
    }

    /**
     * Returns which boards are ripped where full ones do not fill a length.
     *
     * @return the way wanted
     */
    public Ripping ripping() {
        return ripping;
    }

    /**
     * Returns how the boards are arranged.
     *
     * @return the arrangement that the factory is named after
     */
    public Arrangement arrangement() {
        return arrangement;
    }

    /**
     * Returns the width of a full board.
     *
     * @return the width
     */
    public Length width() {
        return width;
    }

    /**
     * Returns the width of the boards or battens of the second row.
     *
     * @return the width, as wide as the boards except for battens; empty if there is one row
     */
    public Optional<Length> coverWidth() {
        return isLapped() ? Optional.of(coverWidth) : Optional.empty();
    }

    /**
     * Returns how much the second row is to lap the first on each side.
     *
     * @return half of what it is wider than the preferred gap; empty if there is one row
     */
    public Optional<Length> preferredLap() {
        return isLapped() ? Optional.of(coverWidth.minus(preferredGap).dividedBy(2)) : Optional.empty();
    }

    /**
     * Returns where the second row is fixed.
     *
     * @return the inside face for a shadowbox, over the first row for board on board and board and batten; empty if there
     *     is one row
     */
    public Optional<Face> secondFace() {
        return switch (arrangement) {
            case SIDE_BY_SIDE, SPACED -> Optional.empty();
            case SHADOWBOX -> Optional.of(Face.INSIDE);
            case BOARD_ON_BOARD, BOARD_AND_BATTEN -> Optional.of(Face.COVER);
        };
    }

    /**
     * Returns the smallest gap accepted between boards of one face.
     *
     * @return the least gap
     */
    public Length leastGap() {
        return leastGap;
    }

    /**
     * Returns the gap wanted between boards of one face.
     *
     * @return the preferred gap
     */
    public Length preferredGap() {
        return preferredGap;
    }

    /**
     * Returns the largest gap accepted between boards of one face.
     *
     * @return the most gap
     */
    public Length mostGap() {
        return mostGap;
    }

    /**
     * Returns the smallest share of its width that a ripped board keeps.
     *
     * @return the share, over 0 and up to 1
     */
    public Ratio smallestPart() {
        return smallestPart;
    }

    /**
     * Tells whether a second row of boards or battens laps the first.
     *
     * @return true for a shadowbox, board on board, and board and batten
     */
    public boolean isLapped() {
        return secondFace().isPresent();
    }

    /**
     * Tells whether boards stand on both faces in turn.
     *
     * @return true for a shadowbox
     */
    public boolean isShadowbox() {
        return arrangement == Arrangement.SHADOWBOX;
    }

    /**
     * Tells whether the pattern begins and ends with a gap.
     *
     * @return false if it begins and ends with a board
     */
    public boolean hasGapAtEnds() {
        return gapAtEnds;
    }

    /**
     * Returns the shortest section that shows the pattern with full boards: two boards and the least gap between them,
     * or with gaps at the ends one board between two of them. A single full board fits in its own width, but a section
     * between that and this length is filled with boards that are ripped at its ends.
     *
     * @return the length
     */
    public Length minimumLength() {
        return gapAtEnds ? width.plus(leastGap.times(2)) : width.times(2).plus(leastGap);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BoardPattern that
                && arrangement == that.arrangement
                && width.equals(that.width)
                && coverWidth.equals(that.coverWidth)
                && leastGap.equals(that.leastGap)
                && preferredGap.equals(that.preferredGap)
                && mostGap.equals(that.mostGap)
                && smallestPart.equals(that.smallestPart)
                && gapAtEnds == that.gapAtEnds
                && ripping == that.ripping;
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                arrangement, width, coverWidth, leastGap, preferredGap, mostGap, smallestPart, gapAtEnds, ripping);
    }

    /**
     * Describes the pattern.
     *
     * @return such as {@code boards 5 1/2" wide, shadowbox, gaps 2 1/2" to 4", 3 1/2" preferred}
     */
    @Override
    public String toString() {
        String battens = coverWidth.equals(width) ? "" : " with battens " + Written.tape(coverWidth);
        return "boards " + Written.tape(width) + " wide, " + arrangement.words() + battens + ", gaps "
                + Written.tape(leastGap)
                + " to " + Written.tape(mostGap) + ", " + Written.tape(preferredGap) + " preferred"
                + (gapAtEnds ? ", a gap at both ends" : "");
    }
}
