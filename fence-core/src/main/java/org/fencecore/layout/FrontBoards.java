package org.fencecore.layout;

import org.fencecore.units.Length;

/** Boards with equal gaps, full but for a block in the middle that is ripped. */
final class FrontBoards implements BoardRule {

    private final int count;
    private final long width;
    private final int ripped;
    private final int firstRipped;
    private final Length rips;
    private final Length gaps;
    private final int spaces;
    private final int gapsBeforeFirst;

    FrontBoards(BoardFit fit, long width, int gapsBeforeFirst) {
        this.count = fit.count();
        this.width = width;
        this.ripped = fit.ripped();
        this.firstRipped = (count - ripped) / 2;
        this.rips = Length.ofNanometres(fit.rippedTotal());
        this.gaps = Length.ofNanometres(fit.gapTotal());
        this.spaces = fit.spaces();
        this.gapsBeforeFirst = gapsBeforeFirst;
    }

    @Override
    public long left(int index) {
        return widthOfFirst(index) + firstGaps(index + gapsBeforeFirst);
    }

    @Override
    public long right(int index) {
        return widthOfFirst(index + 1) + firstGaps(index + gapsBeforeFirst);
    }

    @Override
    public boolean isFull(int index) {
        return index < firstRipped || index >= firstRipped + ripped;
    }

    int count() {
        return count;
    }

    int firstRipped() {
        return firstRipped;
    }

    int ripped() {
        return ripped;
    }

    long width() {
        return width;
    }

    /** All gaps together, to be shared out among {@link #spaces}. */
    long gapTotal() {
        return gaps.nanometres();
    }

    int spaces() {
        return spaces;
    }

    int gapsBeforeFirst() {
        return gapsBeforeFirst;
    }

    private long widthOfFirst(int boards) {
        if (boards <= firstRipped) {
            return boards * width;
        }
        int past = boards - firstRipped;
        return past < ripped
                ? firstRipped * width + rips.portion(past, ripped).nanometres()
                : (boards - ripped) * width + rips.nanometres();
    }

    private long firstGaps(int gapCount) {
        return gapCount == 0 ? 0 : gaps.portion(gapCount, spaces).nanometres();
    }
}
