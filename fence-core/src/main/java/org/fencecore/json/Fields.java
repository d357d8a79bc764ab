package org.fencecore.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes objects by their fields, and says in the schema what these are. */
final class Fields {

    private Fields() {}

    static <T> void write(T object, List<Field<T, ?>> fields, Map<String, Object> into) {
        for (Field<T, ?> field : fields) {
            field.write(object).ifPresent(value -> into.put(field.name(), value));
        }
    }

    /** What the schema says of an object; one of a choice begins with the name of its kind, else that is empty. */
    static Map<String, Object> schema(
            String about, String kind, List<? extends Field<?, ?>> fields, Definitions definitions) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        if (!kind.isEmpty()) {
            properties.put(Kinds.KIND, Map.of("const", kind));
            required.add(Kinds.KIND);
        }
        for (Field<?, ?> field : fields) {
            Map<String, Object> property = new LinkedHashMap<>();
            property.put("description", field.about());
            property.putAll(field.shape().schema(definitions));
            properties.put(field.name(), property);
            if (field.required()) {
                required.add(field.name());
            }
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("description", about);
        schema.put("type", "object");
        schema.put("properties", properties);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        schema.put("additionalProperties", false);
        return schema;
    }
}
