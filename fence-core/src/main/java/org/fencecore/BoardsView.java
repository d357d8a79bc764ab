package org.fencecore;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.Spliterator;
import java.util.Spliterators;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;

/** Every board of a plan, worked out when asked for: only the layouts are held, not the boards. */
final class BoardsView extends AbstractList<PlannedBoard> implements RandomAccess {

    private final List<String> places = new ArrayList<>();
    private final List<List<BoardPlacement>> boards = new ArrayList<>();
    /** How many boards come before each layout, and at the end how many there are. */
    private final int[] before;

    BoardsView(List<Stretch> stretches, List<GateBay> gates) {
        stretches.forEach(stretch -> add(stretch.toString(), stretch.boards()));
        gates.forEach(gate -> add(gate.name(), gate.boards()));
        before = new int[boards.size() + 1];
        for (int i = 0; i < boards.size(); i++) {
            before[i + 1] = Math.addExact(before[i], boards.get(i).size());
        }
    }

    private void add(String place, Optional<BoardLayout> layout) {
        layout.ifPresent(present -> {
            places.add(place);
            boards.add(present.boards());
        });
    }

    @Override
    public PlannedBoard get(int index) {
        Objects.checkIndex(index, size());
        int found = Arrays.binarySearch(before, index);
        int layout = found >= 0 ? found : -found - 2;
        // A layout has at least one board, so no two entries are the same and the found one begins with this board.
        return new PlannedBoard(places.get(layout), boards.get(layout).get(index - before[layout]));
    }

    @Override
    public Iterator<PlannedBoard> iterator() {
        return new Cursor(places, boards);
    }

    @Override
    public Spliterator<PlannedBoard> spliterator() {
        return Spliterators.spliterator(
                iterator(), size(), Spliterator.ORDERED | Spliterator.NONNULL | Spliterator.IMMUTABLE);
    }

    @Override
    public int size() {
        return before[before.length - 1];
    }

    /** Goes through the layouts one after the other, and through each as it goes through itself. */
    private static final class Cursor implements Iterator<PlannedBoard> {

        private final List<String> places;
        private final List<List<BoardPlacement>> boards;
        private int layout;
        private Iterator<BoardPlacement> inLayout;

        Cursor(List<String> places, List<List<BoardPlacement>> boards) {
            this.places = places;
            this.boards = boards;
            inLayout = boards.isEmpty()
                    ? Collections.emptyIterator()
                    : boards.get(0).iterator();
        }

        @Override
        public boolean hasNext() {
            return inLayout.hasNext() || goOn();
        }

        /** Goes on to the next layout, which has a board at least; apart, to keep what is done for each board small. */
        private boolean goOn() {
            if (layout + 1 >= boards.size()) {
                return false;
            }
            layout++;
            inLayout = boards.get(layout).iterator();
            return true;
        }

        @Override
        public PlannedBoard next() {
            if (!hasNext()) {
                throw new NoSuchElementException("there are no more boards");
            }
            return new PlannedBoard(places.get(layout), inLayout.next());
        }
    }
}
