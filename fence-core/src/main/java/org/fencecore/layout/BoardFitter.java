package org.fencecore.layout;

import java.util.Optional;
import org.fencecore.units.Length;

/**
 * Finds how many boards fill a clear length, by arithmetic on whole nanometres that costs the same for any length.
 *
 * <p>With {@code n} boards there are {@code n - 1} gaps, or {@code n + 1} if the ends have one too. Boards of width w
 * and gaps of g fill {@code n w + spaces(n) g}.
 */
final class BoardFitter {

    static final int MOST_BOARDS = 10_000_000;

    private final long length;
    private final long width;
    private final long least;
    private final long preferred;
    private final long most;
    private final long smallest;
    private final boolean lapped;
    private final long cover;
    private final Ripping ripping;
    /** How many gaps there are more than boards: -1 or 1. */
    private final int moreGaps;

    BoardFitter(Length clearLength, BoardPattern pattern) {
        length = clearLength.nanometres();
        width = pattern.width().nanometres();
        least = pattern.leastGap().nanometres();
        preferred = pattern.preferredGap().nanometres();
        most = pattern.mostGap().nanometres();
        smallest = Math.max(1, pattern.width().times(pattern.smallestPart()).nanometres());
        lapped = pattern.isLapped();
        cover = pattern.coverWidth().orElse(pattern.width()).nanometres();
        ripping = pattern.ripping();
        moreGaps = pattern.hasGapAtEnds() ? 1 : -1;
        // With this, and with widths and gaps of 100 m at most, no product overflows; the first part guards the second.
        if (length / (width + preferred) > MOST_BOARDS || boardsReaching(preferred) > MOST_BOARDS) {
            throw new IllegalArgumentException(
                    "clearLength was " + clearLength + ", which takes over 10,000,000 boards " + pattern.width()
                            + " wide; check the units, or lay out a shorter stretch");
        }
    }

    BoardFit fit() {
        return fullBoards()
                .or(this::asAsked)
                .or(() -> ripped(Fitting.MIDDLE_RIPPED, preferred))
                .or(this::rippedCloser)
                .or(this::allRipped)
                .orElseGet(this::nearest);
    }

    /** The fewest boards, all full, whose gaps are not over the most. */
    long fewest() {
        return Math.max(1, boardsReaching(most));
    }

    /** The most boards, all full, whose gaps are not under the least. */
    long mostBoards() {
        return Math.floorDiv(length - moreGaps * least, width + least);
    }

    /** The fewest full boards that reach from end to end at the preferred gap. */
    int reaching() {
        return (int) boardsReaching(preferred);
    }

    int spaces(int boards) {
        return boards + moreGaps;
    }

    /** The gap between so many full boards. */
    long fullGap(int boards) {
        return Length.ofNanometres(length - boards * width)
                .dividedBy(spaces(boards))
                .nanometres();
    }

    /** The share of its width that a ripped board must keep. */
    long smallest() {
        return smallest;
    }

    /** The least width of a ripped board between others: its share, and room for both laps of those that cover its gaps. */
    long leastWidth(long gap) {
        return lapped ? Math.max(smallest, cover - gap) : smallest;
    }

    private long boardsReaching(long gap) {
        return -Math.floorDiv(moreGaps * gap - length, width + gap);
    }

    private Optional<BoardFit> fullBoards() {
        long fewest = fewest();
        long mostBoards = mostBoards();
        if (fewest > mostBoards) {
            return Optional.empty();
        }
        int upper = (int) Math.min(Math.max(reaching(), fewest), mostBoards);
        int lower = (int) Math.max(upper - 1, fewest);
        return Optional.of(allFull(Fitting.FULL_BOARDS, offPreferred(lower) <= offPreferred(upper) ? lower : upper));
    }

    private long offPreferred(int boards) {
        return spaces(boards) == 0 ? 0 : Math.abs(fullGap(boards) - preferred);
    }

    private BoardFit allFull(Fitting choice, int boards) {
        return new BoardFit(choice, boards, 0, 0, spaces(boards), length - boards * width);
    }

    /** How much so many full boards with that gap are longer than the clear length. */
    private long excess(int boards, long gap) {
        return boards * width + spaces(boards) * gap - length;
    }

    /** Rips the boards that the pattern asks for; empty if it asks for the fewest, or they would be too narrow. */
    Optional<BoardFit> asAsked() {
        int boards = reaching();
        int asked = asked();
        if (asked == 0 || asked > boards - 2) {
            return Optional.empty();
        }
        long over = excess(boards, preferred);
        long ofGaps = ripping == Ripping.SPLIT ? over - over / 2 : 0;
        long gaps = spaces(boards) * preferred - ofGaps;
        long rippedTotal = asked * width - (over - ofGaps);
        boolean wide = rippedTotal >= asked * leastWidth(Math.floorDiv(gaps, spaces(boards)));
        if (!wide || gaps < spaces(boards) * least) {
            return Optional.empty();
        }
        Fitting choice = ripping == Ripping.SPLIT ? Fitting.MIDDLE_SPLIT : Fitting.MIDDLE_RIPPED;
        return Optional.of(new BoardFit(choice, boards, asked, rippedTotal, spaces(boards), gaps));
    }

    /** How many boards the pattern asks to be ripped, 0 for the fewest. */
    int asked() {
        return switch (ripping) {
            case FEWEST -> 0;
            case ONE, SPLIT -> 1;
            case TWO -> 2;
        };
    }

    /** What full boards at the preferred gap are too long by. */
    long over() {
        return excess(reaching(), preferred);
    }

    /** Rips as few boards in the middle as will do, but neither end board; even or odd as the count, to be centred. */
    private Optional<BoardFit> ripped(Fitting choice, long gap) {
        int boards = reaching();
        long fromEach = width - leastWidth(gap);
        if (fromEach == 0) {
            return Optional.empty();
        }
        long ripped = -Math.floorDiv(-excess(boards, gap), fromEach);
        ripped += (boards - ripped) % 2 == 0 ? 0 : 1;
        return ripped > boards - 2
                ? Optional.empty()
                : Optional.of(new BoardFit(
                        choice,
                        boards,
                        (int) ripped,
                        ripped * width - excess(boards, gap),
                        spaces(boards),
                        spaces(boards) * gap));
    }

    /** Takes the widest gap at which all boards but the end ones, ripped to the least width, leave no excess. */
    private Optional<BoardFit> rippedCloser() {
        int boards = reaching();
        long gap = Math.floorDiv((boards - 2) * (width - smallest) - excess(boards, 0), spaces(boards));
        if (lapped) {
            // Where cover - gap is the least width: excess(boards, gap) = (boards - 2) (width - cover + gap).
            gap = Math.min(gap, (boards - 2) * (width - cover) - excess(boards, 0));
        }
        return gap < least ? Optional.empty() : ripped(Fitting.MIDDLE_RIPPED_CLOSER, gap);
    }

    /** Rips all boards alike, at the gap nearest the preferred that leaves them wide enough. */
    private Optional<BoardFit> allRipped() {
        int boards = reaching();
        long widest = Math.min(most, Math.floorDiv(length - boards * smallest, spaces(boards)));
        // With a gap on either side a board takes both laps, cover - gap: length - spaces gap >= boards (cover - gap).
        long narrowest = lapped && boards > 2 ? Math.max(least, boards * cover - length) : least;
        if (narrowest > widest) {
            return Optional.empty();
        }
        long gaps = spaces(boards) * Math.min(Math.max(preferred, narrowest), widest);
        return Optional.of(new BoardFit(Fitting.ALL_RIPPED, boards, boards, length - gaps, spaces(boards), gaps));
    }

    /** What comes nearest the rules: full boards with gaps that miss the range by least, or else two without a gap. */
    private BoardFit nearest() {
        int boards = reaching();
        int fewer = boards - 1;
        boolean fits = boards * width <= length;
        if (spaces(fewer) > 0 && !(fits && least - fullGap(boards) < fullGap(fewer) - most)) {
            return allFull(Fitting.RULES_BROKEN, fewer);
        }
        return fits
                ? allFull(Fitting.RULES_BROKEN, boards)
                : new BoardFit(Fitting.RULES_BROKEN, boards, boards, length, spaces(boards), 0);
    }
}
