package org.fencecore.takeoff;

import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;

/**
 * One piece to cut, or a number of boards that are cut alike: what it is, where it goes, and its sizes.
 *
 * <p>Posts, rails and the parts of gates are listed one by one. Boards follow a rule and not a list, so those of one
 * stretch or gate that are cut alike are one entry with their {@link #count}; their marks are in the plan's layouts.
 */
public final class Piece {

    private final PieceKind kind;
    private final String label;
    private final int count;
    private final Lumber lumber;
    private final Length length;
    private final Length width;
    private final EndCuts ends;

    Piece(PieceKind kind, String label, int count, Lumber lumber, Length length, Length width, EndCuts ends) {
        this.kind = kind;
        this.label = label;
        this.count = count;
        this.lumber = lumber;
        this.length = length;
        this.width = width;
        this.ends = ends;
    }

    /**
     * Returns what it becomes.
     *
     * @return the kind
     */
    public PieceKind kind() {
        return kind;
    }

    /**
     * Returns where it goes, to be written on the piece.
     *
     * @return such as {@code post 3}, {@code post 4 to post 6 rail 2}, {@code garden gate brace 1}, {@code post 2 to post 4 boards}
     */
    public String label() {
        return label;
    }

    /**
     * Returns how many are cut alike.
     *
     * @return 1 but for boards
     */
    public int count() {
        return count;
    }

    /**
     * Returns what it is cut from.
     *
     * @return the lumber
     */
    public Lumber lumber() {
        return lumber;
    }

    /**
     * Returns its finished length: of a post or a board from end to end, of a rail along its edge, of a brace from point
     * to point.
     *
     * @return the length, exact
     */
    public Length length() {
        return length;
    }

    /**
     * Returns its finished width.
     *
     * @return the width of the lumber, or less when it is ripped
     */
    public Length width() {
        return width;
    }

    /**
     * Returns how long it is over all, from its outermost point to the outermost point at the other end: what the lumber
     * must measure at least. A rail whose ends slant is longer over all than along its edge, by its depth times the
     * tangent of the end cut.
     *
     * @return the length over all, no less than {@link #length}
     */
    public Length overall() {
        return length.plus(ends.slant());
    }

    /**
     * Returns how it is cut: its ends, and whether it is ripped.
     *
     * @return such as {@code square ends} or {@code both ends 3.4 deg off square, mitred 45 deg at post 1}
     */
    public String cuts() {
        return ends.words();
    }

    /** How much wider than its kerf the saw cuts along this piece. */
    double sawing() {
        return ends.sawing();
    }

    /** What it takes of a stick in nanometres: its length over all and one saw cut. */
    long take(Length kerf) {
        return overall().plus(sawCut(kerf)).nanometres();
    }

    /** Whether no stick sold is long enough for it once its end is trimmed. */
    boolean isTooLong(TakeoffSpec spec) {
        return lumber.shortestFor(overall().plus(spec.cutting().endTrim())).isEmpty();
    }

    /** What the cut behind it takes. */
    Length sawCut(Length kerf) {
        return Length.ofNanometres((long) Math.ceil(kerf.nanometres() * ends.sawing()));
    }

    /**
     * Describes the piece.
     *
     * @return such as {@code post 4 to post 5 rail 2: 2x4, 7' 4 1/4", square ends}
     */
    @Override
    public String toString() {
        return label + (count == 1 ? "" : " (" + count + ")") + ": " + lumber + ", " + Written.tape(length) + ", "
                + cuts();
    }
}
