package org.fencecore.json;

import java.util.Map;

/**
 * How values of one kind stand in JSON: how they are written, and what the schema says of them.
 *
 * @param <T> the kind of value
 */
abstract class Shape<T> {

    /** Returns the value as a map, a list, a text, a whole number or a boolean. */
    abstract Object write(T value);

    /** Returns what the schema says where such a value stands; what has a name goes into the definitions. */
    abstract Map<String, Object> schema(Definitions definitions);
}
