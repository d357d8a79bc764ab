package org.fencecore.layout;

/** Boards with equal gaps, full but for a block in the middle that is ripped. */
final class FrontBoards implements BoardRule {

    private final long width;
    private final int ripped;
    private final int firstRipped;
    private final EqualParts rips;
    private final EqualParts gaps;
    private final int gapsBeforeFirst;

    FrontBoards(BoardFit fit, long width, int gapsBeforeFirst) {
        this.width = width;
        this.ripped = fit.ripped();
        this.firstRipped = (fit.count() - ripped) / 2;
        this.rips = new EqualParts(fit.rippedTotal(), ripped);
        this.gaps = new EqualParts(fit.gapTotal(), fit.spaces());
        this.gapsBeforeFirst = gapsBeforeFirst;
    }

    @Override
    public long left(int index) {
        return widthOfFirst(index) + gaps.upTo(index + gapsBeforeFirst);
    }

    @Override
    public long right(int index) {
        return widthOfFirst(index + 1) + gaps.upTo(index + gapsBeforeFirst);
    }

    @Override
    public boolean isFull(int index) {
        return index < firstRipped || index >= firstRipped + ripped;
    }

    int firstRipped() {
        return firstRipped;
    }

    private long widthOfFirst(int boards) {
        if (boards <= firstRipped) {
            return boards * width;
        }
        int past = boards - firstRipped;
        return past < ripped ? firstRipped * width + rips.upTo(past) : (boards - ripped) * width + rips.upTo(ripped);
    }
}
