package org.fencecore.layout;

import java.util.AbstractList;
import java.util.Iterator;
import java.util.RandomAccess;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.jspecify.annotations.Nullable;

/** The left edges of boards, worked out as the boards are, and rounded once if they are to be. */
final class BoardMarks extends AbstractList<Length> implements RandomAccess {

    private final BoardList boards;

    private final @Nullable Length increment;

    BoardMarks(BoardList boards, @Nullable Length increment) {
        this.boards = boards;
        this.increment = increment;
    }

    private Length mark(BoardPlacement board) {
        return increment == null ? board.left() : board.left().roundedTo(increment, Rounding.NEAREST);
    }

    @Override
    public Length get(int index) {
        return mark(boards.get(index));
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
                return mark(each.next());
            }
        };
    }
}
