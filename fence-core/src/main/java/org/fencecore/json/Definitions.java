package org.fencecore.json;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;

/** The named parts of a JSON Schema, each made once. */
final class Definitions {

    private final Map<String, Map<String, Object>> byName = new TreeMap<>();
    private final Map<String, Shape<?>> owners = new HashMap<>();

    /** Returns a reference to what a shape says of itself, and asks for that the first time. */
    Map<String, Object> reference(String name, Shape<?> owner, Supplier<Map<String, Object>> schema) {
        Shape<?> known = owners.putIfAbsent(name, owner);
        if (known == null) {
            byName.put(name, schema.get());
        } else if (known != owner) {
            throw new IllegalStateException("two shapes are named " + name + "; give each a name of its own");
        }
        Map<String, Object> reference = new LinkedHashMap<>();
        reference.put("$ref", "#/$defs/" + name);
        return reference;
    }

    /** Returns the whole schema of a kind of document. */
    static String schemaOf(Function<Definitions, Map<String, Object>> document, String id, String title) {
        Definitions definitions = new Definitions();
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", id);
        schema.put("title", title);
        schema.putAll(document.apply(definitions));
        schema.put("$defs", definitions.byName);
        return JsonText.write(schema);
    }
}
