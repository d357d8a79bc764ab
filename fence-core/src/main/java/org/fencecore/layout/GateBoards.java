package org.fencecore.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
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

    private final Optional<BoardLayout> before;
    private final BoardLayout leaf;
    private final Optional<BoardLayout> after;

    private GateBoards(Optional<BoardLayout> before, BoardLayout leaf, Optional<BoardLayout> after) {
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
        return of(
                Optional.of(BoardLayout.fit(before, pattern)),
                BoardLayout.fit(leaf, pattern),
                Optional.of(BoardLayout.fit(after, pattern)));
    }

    /**
     * Takes boards that are laid out.
     *
     * @param before those on the left of the gate; empty if no boards end there
     * @param leaf those of the leaf
     * @param after those on the right of the gate; empty if no boards begin there
     * @return the boards of all
     */
    public static GateBoards of(Optional<BoardLayout> before, BoardLayout leaf, Optional<BoardLayout> after) {
        return new GateBoards(before, leaf, after);
    }

    /**
     * Returns the boards on the left of the gate.
     *
     * @return their layout, ending on the gate post; empty if there are none
     */
    public Optional<BoardLayout> before() {
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
     * @return their layout, beginning on the gate post; empty if there are none
     */
    public Optional<BoardLayout> after() {
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
     * Returns the widths of leaf nearest this one whose full boards come out as far apart as those beside the gate, so that
     * the pattern reads through: {@code n} boards and {@code n - 1} gaps. Without boards beside it they are the {@link
     * #nearestLeafWidths}.
     *
     * @return the next smaller, if it holds a board, and the next larger; the gap is the mean of both sides
     */
    public List<Length> readThroughWidths() {
        List<Length> gaps = Stream.of(before, after)
                .flatMap(Optional::stream)
                .filter(beside -> beside.row(Face.OUTSIDE).count() > 1)
                .map(beside -> beside.row(Face.OUTSIDE).gap())
                .toList();
        if (gaps.isEmpty()) {
            return nearestLeafWidths();
        }
        Length gap = gaps.stream().reduce(Length.ZERO, Length::plus).dividedBy(gaps.size());
        Length width = leaf.pattern().width();
        int ends = leaf.pattern().hasGapAtEnds() ? 1 : -1;
        Length ofEnds = gap.times(ends);
        long boards = leaf.clearLength().minus(ofEnds).wholePieces(width.plus(gap));
        return LongStream.of(boards, boards + 1)
                .filter(count -> count > 0)
                .mapToObj(count -> width.plus(gap).times(count).plus(ofEnds))
                .toList();
    }

    /**
     * Returns what keeps the pattern from reading through: notes {@code ripped-at-gate} for each of the three whose
     * edge boards are ripped, and {@code gate-gap-differs} where the gap on the leaf is over 1/4 in from that beside it.
     * What is wrong with each layout by itself is left to its own findings.
     *
     * @return all findings
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        before.ifPresent(boards -> ripped(findings, "left of the gate", boards));
        ripped(findings, "leaf", leaf);
        after.ifPresent(boards -> ripped(findings, "right of the gate", boards));
        before.ifPresent(boards -> differing(findings, "left of the gate", boards));
        after.ifPresent(boards -> differing(findings, "right of the gate", boards));
        return List.copyOf(findings);
    }

    private static void ripped(List<Finding> findings, String place, BoardLayout layout) {
        if (!layout.boards().get(0).isFull()) {
            findings.add(Finding.note("ripped-at-gate", place, "the boards at the edges are ripped")
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
            findings.add(Finding.note(
                            "gate-gap-differs",
                            place,
                            "the gap between boards is " + Written.tape(other) + ", and on the leaf "
                                    + Written.tape(own))
                    .withRemedy("make the leaf "
                            + readThroughWidths().stream().map(Written::tape).collect(Collectors.joining(" or "))
                            + " wide, and its boards come out as far apart")
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
        return before.map(BoardLayout::count).orElse(0) + " boards, " + leaf.count() + " on the leaf, "
                + after.map(BoardLayout::count).orElse(0);
    }
}
