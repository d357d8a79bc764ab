package org.fencecore.layout;

import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Spliterator;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Goes from board to board by adding, and comes to the very places that {@link FrontBoards} and {@link BackBoards} divide
 * to find.
 *
 * <p>Of the gaps together, G shared out among n spaces, the first k measure, by {@link org.fencecore.units.Length#portion},
 *
 * <pre>
 * k share + (2 k rest + n - 1) / 2n    rounded down, for 2k up to n
 * k share + (2 k rest + n) / 2n        rounded down, past the middle
 * share = G / n, rest = G - n share
 * </pre>
 *
 * <p>So with each gap the numerator grows by twice the rest, and by one more in passing the middle. What it has over
 * whole multiples of 2n is carried, and when the carry makes a multiple, that gap is a nanometre wider than the share.
 */
final class BoardCursor implements Iterator<BoardPlacement>, Spliterator<BoardPlacement> {

    private final FrontBoards front;
    private final BackBoards back;
    private final Face backFace;
    private final int frontCount;
    private final long width;
    private final long coverWidth;
    private final int firstRipped;
    private final int pastRipped;
    private final long share;
    private final long twiceRest;
    private final long twiceSpaces;
    /** The board whose left edge is the first past the middle of the gaps. */
    private final int pastMiddle;

    private final long firstLeft;
    private final long firstRight;
    private final long firstCarry;

    private int next;
    private int end;
    /** The edges of the front's board that comes next, or covers whose right edge begins the gap to cover. */
    private long left;

    private long right;
    private long carry;

    BoardCursor(FrontBoards front, BackBoards back, Face backFace, int from, int to) {
        this.front = front;
        this.back = back;
        this.backFace = backFace;
        frontCount = front.count();
        width = front.width();
        coverWidth = back.width();
        firstRipped = front.firstRipped();
        pastRipped = firstRipped + front.ripped();
        int spaces = front.spaces();
        share = spaces == 0 ? 0 : front.gapTotal() / spaces;
        twiceRest = 2 * (front.gapTotal() - spaces * share);
        twiceSpaces = 2L * spaces;
        pastMiddle = spaces / 2 + 1 - front.gapsBeforeFirst();
        firstLeft = front.left(0);
        firstRight = front.right(0);
        firstCarry = carryAt(0);
        next = from;
        end = to;
        int index = from < frontCount ? from : from - frontCount;
        left = front.left(index);
        right = front.right(index);
        carry = carryAt(index);
    }

    /** What the numerator has over whole multiples at the left edge of a board of the front. */
    private long carryAt(int index) {
        long gaps = (long) index + front.gapsBeforeFirst();
        long half = twiceSpaces / 2;
        return twiceSpaces == 0 ? 0 : (gaps * twiceRest + half - (2 * gaps > half ? 0 : 1)) % twiceSpaces;
    }

    /** Goes on to a board of the front from the one before it. */
    private void step(int index) {
        long gap = share;
        carry += twiceRest;
        if (index == pastMiddle) {
            carry++;
        }
        if (carry >= twiceSpaces) {
            carry -= twiceSpaces;
            gap++;
        }
        left = right + gap;
        right = isRipped(index) ? front.right(index) : left + width;
    }

    private boolean isRipped(int index) {
        return index >= firstRipped && index < pastRipped;
    }

    @Override
    public boolean hasNext() {
        return next < end;
    }

    @Override
    public BoardPlacement next() {
        int at = next;
        if (at >= end) {
            throw new NoSuchElementException("there are no more boards");
        }
        next = at + 1;
        // One place where a board is made, so that the compiler can leave it unmade.
        boolean inFront = at < frontCount;
        int index = at;
        long from = left;
        long to = right;
        boolean full = true;
        if (inFront) {
            full = !isRipped(at);
            if (next < frontCount) {
                step(next);
            } else {
                left = firstLeft;
                right = firstRight;
                carry = firstCarry;
            }
        } else {
            index = at - frontCount;
            step(index + 1);
            from = back.left(index, to, left);
            to = from + coverWidth;
        }
        return new BoardPlacement(inFront ? Face.OUTSIDE : backFace, index, from, to, full);
    }

    @Override
    public void forEachRemaining(Consumer<? super BoardPlacement> action) {
        while (next < end) {
            action.accept(next());
        }
    }

    @Override
    public boolean tryAdvance(Consumer<? super BoardPlacement> action) {
        if (next >= end) {
            return false;
        }
        action.accept(next());
        return true;
    }

    @Override
    public @Nullable BoardCursor trySplit() {
        int middle = (next + end) >>> 1;
        if (middle == next) {
            return null;
        }
        BoardCursor before = new BoardCursor(front, back, backFace, next, middle);
        BoardCursor after = new BoardCursor(front, back, backFace, middle, end);
        next = middle;
        left = after.left;
        right = after.right;
        carry = after.carry;
        return before;
    }

    @Override
    public long estimateSize() {
        return (long) end - next;
    }

    @Override
    public int characteristics() {
        return ORDERED | DISTINCT | SIZED | SUBSIZED | NONNULL | IMMUTABLE;
    }
}
