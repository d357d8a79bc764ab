package org.fencecore.json;

import java.util.Optional;
import java.util.function.Function;

/**
 * A field of an object in JSON, declared once for writing, for reading and for the schema.
 *
 * @param name what it is called
 * @param about what it is, for the schema
 * @param shape how its value stands
 * @param get where to get its value; empty for one that is left out
 * @param required whether it must be there
 * @param <T> the object
 * @param <V> the value
 */
record Field<T, V>(String name, String about, Shape<V> shape, Function<T, Optional<V>> get, boolean required) {

    /** A field that must be there. */
    static <T, V> Field<T, V> required(String name, Shape<V> shape, Function<T, V> get, String about) {
        return new Field<>(name, about, shape, get.andThen(Optional::of), true);
    }

    /** A field that has a usual value: it may be left out by others, and is always written. */
    static <T, V> Field<T, V> usual(String name, Shape<V> shape, Function<T, V> get, String about) {
        return new Field<>(name, about, shape, get.andThen(Optional::of), false);
    }

    /** A field for what may be absent. */
    static <T, V> Field<T, V> maybe(String name, Shape<V> shape, Function<T, Optional<V>> get, String about) {
        return new Field<>(name, about, shape, get, false);
    }

    /** Another way to say what other fields say; it is read and never written. */
    static <T, V> Field<T, V> instead(String name, Shape<V> shape, String about) {
        return new Field<>(name, about, shape, object -> Optional.empty(), false);
    }

    Optional<Object> write(T object) {
        return get.apply(object).map(shape::write);
    }
}
