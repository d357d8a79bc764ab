package org.fencecore.internal;

import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What is worked out when it is first asked for, and kept. Several threads that ask at once may work it out each for
 * itself; as it always comes out the same, it does not matter whose is kept.
 *
 * @param <T> what is worked out, immutable
 */
public final class Once<T> implements Supplier<T> {

    private volatile @Nullable Supplier<? extends T> work;
    private volatile @Nullable T known;

    private Once(@Nullable Supplier<? extends T> work, @Nullable T known) {
        this.work = work;
        this.known = known;
    }

    /**
     * Puts work off.
     *
     * @param <T> what is worked out
     * @param work the work; it must come out the same each time, and not as null
     * @return its result to come
     */
    public static <T> Once<T> of(Supplier<? extends T> work) {
        return new Once<>(work, null);
    }

    /**
     * Holds what is known already.
     *
     * @param <T> what is known
     * @param known the value
     * @return the value as a result
     */
    public static <T> Once<T> known(T known) {
        return new Once<>(null, known);
    }

    /**
     * Returns the result.
     *
     * @return what the work came to
     */
    @Override
    public T get() {
        T result = known;
        if (result == null) {
            Supplier<? extends T> toDo = work;
            // Where the work is gone another thread has just done it.
            result = toDo == null ? Objects.requireNonNull(known) : Objects.requireNonNull(toDo.get());
            known = result;
            work = null;
        }
        return result;
    }
}
