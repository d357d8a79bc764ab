package org.fencecore.json;

/**
 * A shape that can be read again.
 *
 * @param <T> the kind of value
 */
abstract class Form<T> extends Shape<T> {

    /** Reads the value at a place, or throws {@link UnreadableJsonException}. */
    abstract T read(Place place);
}
