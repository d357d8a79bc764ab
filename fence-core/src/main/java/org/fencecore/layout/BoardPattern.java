package org.fencecore.layout;

import java.util.Locale;
import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How boards are to follow each other along a fence: their width, the gap that is preferred and those still accepted,
 * and how narrow a ripped board may be.
 *
 * <p>Three arrangements:
 *
 * <ul>
 *   <li>{@linkplain #sideBySide side by side}: boards that touch, or nearly; gaps from 0 to 1/8 in are accepted, 0
 *       preferred.
 *   <li>{@linkplain #spaced spaced}: pickets with a gap; half the preferred gap to one and a half times is accepted.
 *   <li>{@linkplain #shadowbox shadowbox}: boards on both faces in turn, each lapping behind its neighbours. The gap on
 *       a face is the board less two laps. A lap of 1 in is preferred, 3/4 in to 1 1/2 in accepted, less on boards under
 *       4 in.
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
    private static final Ratio HALF = Ratio.of(0.5);

    private enum Arrangement {
        SIDE_BY_SIDE,
        SPACED,
        SHADOWBOX;

        String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    private final Arrangement arrangement;
    private final Length width;
    private final Length leastGap;
    private final Length preferredGap;
    private final Length mostGap;
    private final Ratio smallestPart;
    private final boolean gapAtEnds;

    private BoardPattern(
            Arrangement arrangement,
            Length width,
            Length leastGap,
            Length preferredGap,
            Length mostGap,
            Ratio smallestPart,
            boolean gapAtEnds) {
        this.arrangement = arrangement;
        this.width = width;
        this.leastGap = leastGap;
        this.preferredGap = preferredGap;
        this.mostGap = mostGap;
        this.smallestPart = smallestPart;
        this.gapAtEnds = gapAtEnds;
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
        return new BoardPattern(Arrangement.SIDE_BY_SIDE, width, Length.ZERO, Length.ZERO, USUAL_SLACK, HALF, false);
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
        return new BoardPattern(Arrangement.SPACED, width, Length.ZERO, Length.ZERO, Length.ZERO, HALF, false)
                .withGaps(half, preferredGap, preferredGap.plus(half));
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
        return new BoardPattern(Arrangement.SHADOWBOX, width, Length.ZERO, Length.ZERO, Length.ZERO, HALF, false)
                .withLap(Length.min(USUAL_LAP, width.dividedBy(4)));
    }

    private static void requireWidth(Length width) {
        if (!width.isPositive() || width.compareTo(LIMIT) > 0) {
            throw new IllegalArgumentException(
                    "width was " + width + "; it must be over 0 and up to 100 m: give the width of one board");
        }
    }

    /**
     * Returns this shadowbox with another lap, and with laps accepted from 3/4 of it to 1 1/2 times, but well short of
     * half a board.
     *
     * @param preferred how much a board should lap behind its neighbour on each side
     * @return the pattern with that lap
     * @throws IllegalArgumentException if the lap is negative, or half a board or more, or this is no shadowbox
     */
    public BoardPattern withLap(Length preferred) {
        requireLap("preferred", preferred);
        Length most = Length.min(
                preferred.times(3).dividedBy(2),
                preferred.plus(width.dividedBy(2)).dividedBy(2));
        return withLaps(preferred.times(3).dividedBy(4), preferred, most);
    }

    /**
     * Returns this shadowbox with other laps.
     *
     * @param least the smallest lap accepted
     * @param preferred how much a board should lap behind its neighbour on each side
     * @param most the largest lap accepted
     * @return the pattern with those laps
     * @throws IllegalArgumentException if a lap is negative, or half a board or more, or they are not in order, or this
     *     is no shadowbox
     */
    public BoardPattern withLaps(Length least, Length preferred, Length most) {
        requireLap("least", least);
        requireLap("preferred", preferred);
        requireLap("most", most);
        requireOrder("lap", least, preferred, most);
        return keepingTo(gapAtLap(most), gapAtLap(preferred), gapAtLap(least));
    }

    private void requireLap(String name, Length lap) {
        if (!isShadowbox()) {
            throw new IllegalArgumentException(name + " lap was " + lap + " for boards " + arrangement.words()
                    + ", which do not lap; use withGaps, or start from shadowbox");
        }
        if (lap.isNegative() || !gapAtLap(lap).isPositive()) {
            throw new IllegalArgumentException(name + " lap was " + lap + " for boards " + width
                    + " wide; it must be from 0 to under half a board, or nothing is left of the gap in front");
        }
    }

    private Length gapAtLap(Length lap) {
        return width.minus(lap.times(2));
    }

    /**
     * Returns this pattern with other gaps. The count of boards is the one whose gap comes nearest the preferred; to
     * have as few boards as a largest gap allows, prefer the largest.
     *
     * @param least the smallest gap accepted
     * @param preferred the gap wanted
     * @param most the largest gap accepted
     * @return the pattern with those gaps
     * @throws IllegalArgumentException if a gap is negative or over 100 m, or they are not in order, or this is a
     *     shadowbox
     */
    public BoardPattern withGaps(Length least, Length preferred, Length most) {
        if (isShadowbox()) {
            throw new IllegalArgumentException("gaps from " + least + " to " + most
                    + " were given for a shadowbox, whose gaps follow from the laps; use withLaps");
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
        return new BoardPattern(arrangement, width, least, preferred, most, smallestPart, gapAtEnds);
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
        return new BoardPattern(arrangement, width, leastGap, preferredGap, mostGap, part, gapAtEnds);
    }

    /**
     * Returns this pattern with a gap in place of a board at both ends, as for pickets between two posts.
     *
     * @return the pattern with gaps at its ends, equal to those between boards
     * @throws IllegalArgumentException if this is a shadowbox, which needs boards at its ends to lap behind
     */
    public BoardPattern withGapAtEnds() {
        if (isShadowbox()) {
            throw new IllegalArgumentException("gaps at the ends were asked of a shadowbox, whose inside boards lap"
                    + " behind the outside ones at both ends; use spaced or sideBySide");
        }
        return new BoardPattern(arrangement, width, leastGap, preferredGap, mostGap, smallestPart, true);
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
                && leastGap.equals(that.leastGap)
                && preferredGap.equals(that.preferredGap)
                && mostGap.equals(that.mostGap)
                && smallestPart.equals(that.smallestPart)
                && gapAtEnds == that.gapAtEnds;
    }

    @Override
    public int hashCode() {
        return Objects.hash(arrangement, width, leastGap, preferredGap, mostGap, smallestPart, gapAtEnds);
    }

    /**
     * Describes the pattern.
     *
     * @return such as {@code boards 5 1/2" wide, shadowbox, gaps 2 1/2" to 4", 3 1/2" preferred}
     */
    @Override
    public String toString() {
        return "boards " + Written.tape(width) + " wide, " + arrangement.words() + ", gaps " + Written.tape(leastGap)
                + " to " + Written.tape(mostGap) + ", " + Written.tape(preferredGap) + " preferred"
                + (gapAtEnds ? ", a gap at both ends" : "");
    }
}
