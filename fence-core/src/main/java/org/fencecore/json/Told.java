package org.fencecore.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An object that is only written, such as a result.
 *
 * @param <T> the object
 */
final class Told<T> extends Shape<T> {

    private final String name;
    private final String about;
    private final List<Field<T, ?>> fields;

    private Told(String name, String about, List<Field<T, ?>> fields) {
        this.name = name;
        this.about = about;
        this.fields = fields;
    }

    @SafeVarargs
    @SuppressWarnings("varargs") // they are only gone through
    static <T> Told<T> of(String name, String about, Field<T, ?>... fields) {
        return new Told<>(name, about, List.of(fields));
    }

    @Override
    Map<String, Object> write(T value) {
        Map<String, Object> object = new LinkedHashMap<>();
        Fields.write(value, fields, object);
        return object;
    }

    /** What the schema says of the object itself. */
    Map<String, Object> object(Definitions definitions) {
        return Fields.schema(about, "", fields, definitions);
    }

    @Override
    Map<String, Object> schema(Definitions definitions) {
        return definitions.reference(name, this, () -> object(definitions));
    }
}
