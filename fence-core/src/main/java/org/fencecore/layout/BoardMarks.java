package org.fencecore.layout;

import java.util.AbstractList;
import java.util.Iterator;
import java.util.RandomAccess;
import org.fencecore.units.Length;

/** The left edges of boards, worked out as the boards are. */
final class BoardMarks extends AbstractList<Length> implements RandomAccess {

    private final BoardList boards;

    BoardMarks(BoardList boards) {
        this.boards = boards;
    }

    @Override
    public Length get(int index) {
        return boards.get(index).left();
    }

    @Override
    public int size() {
        return boards.size();
    }

    @Override
    public Iterator<Length> iterator() {
        Iterator<BoardPlacement> each = boards.iterator();
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return each.hasNext();
            }

            @Override
            public Length next() {
                return each.next().left();
            }
        };
    }
}
