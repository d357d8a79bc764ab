package org.fencecore.layout;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * The boards of a gate's leaf and of the fence on either side of it, so that the pattern reads through: a full board on
 * each gate post and at both edges of the leaf.
 *
 * <p>The three are fitted one by one, each from full board to full board, with a clear gap between the leaf and either
 * post. Where ripped boards come out at an edge, or the gaps of leaf and fence differ so much that it shows, there is a
 * finding, and {@link #nearestLeafWidths} says what leaf would do.
 *
 * <p>Sources: common practice, no source.
 *
 * <p>Example: spaced 3 1/2 in pickets 2 in apart, 36 1/2 in of leaf between two stretches of 91 1/2 in. The leaf takes 7
 * pickets and 6 gaps of 2 in, the stretches 17 pickets and 16 gaps of 2 in.
 *
 * <pre>{@code
 * GateBoards boards = GateBoards.fit(BoardPattern.spaced(Length.ofInches(3.5), Length.ofInches(2)),
 *         Length.ofInches(91.5), Length.ofInches(36.5), Length.ofInches(91.5));
 * boards.leaf().count();           // 7
 * boards.readsThrough();           // true
 * }</pre>
 */
public final class GateBoards {

    private static final Length SEEN = Length.ofInches(0.25);

    private final BoardLayout before;
    private final BoardLayout leaf;
    private final BoardLayout after;

    private GateBoards(BoardLayout before, BoardLayout leaf, BoardLayout after) {
        this.before = before;
        this.leaf = leaf;
        this.after = after;
    }

    /**
     * Fits the boards beside and on a gate.
     *
     * @param pattern how boards follow each other
     * @param before the boarded length up to the opening's side of the gate post on the left
     * @param leaf the width of the leaf
     * @param after the boarded length from the opening's side of the gate post on the right
     * @return the boards of all three
     * @throws IllegalArgumentException if one of them is shorter than {@link BoardLayout#fit} takes, or longer
     */
    public static GateBoards fit(BoardPattern pattern, Length before, Length leaf, Length after) {
        return new GateBoards(
                BoardLayout.fit(before, pattern), BoardLayout.fit(leaf, pattern), BoardLayout.fit(after, pattern));
    }

    /**
     * Returns the boards on the left of the gate.
     *
     * @return their layout, ending on the gate post
     */
    public BoardLayout before() {
        return before;
    }

    /**
     * Returns the boards on the leaf.
     *
     * @return their layout
     */
    public BoardLayout leaf() {
        return leaf;
    }

    /**
     * Returns the boards on the right of the gate.
     *
     * @return their layout, beginning on the gate post
     */
    public BoardLayout after() {
        return after;
    }

    /**
     * Tells whether the pattern reads through the gate.
     *
     * @return true without findings
     */
    public boolean readsThrough() {
        return findings().isEmpty();
    }

    /**
     * Returns the widths of leaf nearest this one that take full boards alone.
     *
     * @return the next smaller and the next larger, or this one twice
     */
    public List<Length> nearestLeafWidths() {
        return List.of(leaf.flushShorter(), leaf.flushLonger());
    }

    /**
     * Returns what keeps the pattern from reading through: warnings {@code ripped-at-gate} for each of the three whose
     * edge boards are ripped, and {@code gate-gap-differs} where the gap on the leaf is over 1/4 in from that beside it.
     * What is wrong with each layout by itself is left to its own findings.
     *
     * @return all findings
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        ripped(findings, "left of the gate", before);
        ripped(findings, "leaf", leaf);
        ripped(findings, "right of the gate", after);
        differing(findings, "left of the gate", before);
        differing(findings, "right of the gate", after);
        return List.copyOf(findings);
    }

    private static void ripped(List<Finding> findings, String place, BoardLayout layout) {
        if (!layout.boards().get(0).isFull()) {
            findings.add(Finding.warning("ripped-at-gate", place, "the boards at the edges are ripped")
                    .withRemedy("make it " + Written.tape(layout.flushShorter()) + " or "
                            + Written.tape(layout.flushLonger()) + " long")
                    .withSource(Citation.COMMON_PRACTICE));
        }
    }

    private void differing(List<Finding> findings, String place, BoardLayout beside) {
        Length own = leaf.row(Face.OUTSIDE).gap();
        Length other = beside.row(Face.OUTSIDE).gap();
        boolean bothHaveGaps =
                leaf.row(Face.OUTSIDE).count() > 1 && beside.row(Face.OUTSIDE).count() > 1;
        if (bothHaveGaps && own.minus(other).abs().compareTo(SEEN) > 0) {
            findings.add(Finding.warning(
                            "gate-gap-differs",
                            place,
                            "the gap between boards is " + Written.tape(other) + ", and on the leaf "
                                    + Written.tape(own))
                    .withRemedy("make the leaf wider or narrower until its boards come out as far apart")
                    .withSource(Citation.COMMON_PRACTICE));
        }
    }

    /**
     * Describes the boards.
     *
     * @return such as {@code 17 boards, 7 on the leaf, 17}
     */
    @Override
    public String toString() {
        return before.count() + " boards, " + leaf.count() + " on the leaf, " + after.count();
    }
}
