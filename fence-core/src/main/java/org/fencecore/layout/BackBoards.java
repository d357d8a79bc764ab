package org.fencecore.layout;

/** Full boards of a second row, each centred on a gap of the front. */
final class BackBoards implements BoardRule {

    private final FrontBoards front;
    private final int count;
    private final long width;
    private final long shift;

    /**
     * Takes the front, and the boards that cover its gaps.
     *
     * @param count how many gaps there are between boards of the front, or 0 for no second row
     * @param shift how far all are moved from the middle of their gaps, to the right if positive
     */
    BackBoards(FrontBoards front, int count, long width, long shift) {
        this.front = front;
        this.count = count;
        this.width = width;
        this.shift = shift;
    }

    @Override
    public long left(int index) {
        return left(index, front.right(index), front.left(index + 1));
    }

    /** Where a board's left edge is, from where the gap it covers begins and ends. */
    long left(int index, long gapStart, long gapEnd) {
        long bothLaps = width - (gapEnd - gapStart);
        long less = bothLaps >> 1;
        // An odd nanometre goes to the lap farther from the middle: so the row is the same from either end, and two
        // boards behind one in front overlap by no nanometre.
        return shift + gapStart - (2 * index + 1 < count ? bothLaps - less : less);
    }

    @Override
    public long right(int index) {
        return left(index) + width;
    }

    @Override
    public boolean isFull(int index) {
        return true;
    }

    int count() {
        return count;
    }

    long width() {
        return width;
    }
}
