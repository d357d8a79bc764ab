package org.fencecore.layout;

import java.util.AbstractList;
import java.util.Objects;
import java.util.RandomAccess;
import java.util.function.IntFunction;

/**
 * A list that works out an element when it is asked for, and holds none.
 *
 * @param <E> what it lists
 */
final class IndexedView<E> extends AbstractList<E> implements RandomAccess {

    private final int size;
    private final IntFunction<E> element;

    IndexedView(int size, IntFunction<E> element) {
        this.size = size;
        this.element = element;
    }

    @Override
    public E get(int index) {
        return element.apply(Objects.checkIndex(index, size));
    }

    @Override
    public int size() {
        return size;
    }
}
