package org.fencecore.layout;

import java.util.AbstractList;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;
import java.util.Spliterator;
import org.fencecore.units.Length;

/**
 * The boards of the front and then those of the second row, or some of them in a row: none is held, each is worked out
 * when it is asked for. Going through them steps from board to board, without the divisions that finding one takes.
 */
final class BoardList extends AbstractList<BoardPlacement> implements RandomAccess {

    private final FrontBoards front;
    private final BackBoards back;
    private final Face backFace;
    private final int from;
    private final int to;

    /** All boards, the second row on the given face. */
    BoardList(FrontBoards front, BackBoards back, Face backFace) {
        this(front, back, backFace, 0, front.count() + back.count());
    }

    private BoardList(FrontBoards front, BackBoards back, Face backFace, int from, int to) {
        this.front = front;
        this.back = back;
        this.backFace = backFace;
        this.from = from;
        this.to = to;
    }

    @Override
    public BoardPlacement get(int index) {
        int at = from + Objects.checkIndex(index, size());
        boolean inFront = at < front.count();
        int inRow = inFront ? at : at - front.count();
        BoardRule rule = inFront ? front : back;
        return new BoardPlacement(
                inFront ? Face.OUTSIDE : backFace, inRow, rule.left(inRow), rule.right(inRow), rule.isFull(inRow));
    }

    @Override
    public int size() {
        return to - from;
    }

    @Override
    public BoardList subList(int start, int end) {
        Objects.checkFromToIndex(start, end, size());
        return new BoardList(front, back, backFace, from + start, from + end);
    }

    @Override
    public Iterator<BoardPlacement> iterator() {
        return new BoardCursor(front, back, backFace, from, to);
    }

    @Override
    public Spliterator<BoardPlacement> spliterator() {
        return new BoardCursor(front, back, backFace, from, to);
    }

    /** The left edges of these boards, worked out in the same way. */
    List<Length> marks() {
        return new BoardMarks(this, null);
    }
}
