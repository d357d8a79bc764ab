package org.fencecore.layout;

/** Full boards on the other face, each centred behind a gap of the front. */
final class BackBoards implements BoardRule {

    private final BoardRule front;
    private final int count;
    private final long width;

    /** @param count how many gaps there are between boards of the front */
    BackBoards(BoardRule front, int count, long width) {
        this.front = front;
        this.count = count;
        this.width = width;
    }

    @Override
    public long left(int index) {
        long gapStart = front.right(index);
        long bothLaps = width - (front.left(index + 1) - gapStart);
        long less = Math.floorDiv(bothLaps, 2);
        // An odd nanometre goes to the lap farther from the middle: so the row is the same from either end, and two
        // boards
        // behind one in front overlap by no nanometre.
        return gapStart - (2 * index + 1 < count ? bothLaps - less : less);
    }

    @Override
    public long right(int index) {
        return left(index) + width;
    }

    @Override
    public boolean isFull(int index) {
        return true;
    }
}
