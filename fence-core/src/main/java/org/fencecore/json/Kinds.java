package org.fencecore.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * An object of one of several kinds, which its field {@code kind} tells apart.
 *
 * @param <T> what all kinds are
 */
final class Kinds<T> extends Form<T> {

    /** The field that names the kind. */
    static final String KIND = "kind";

    private record Kind<S>(String name, Class<S> type, Predicate<S> holds, Made<S, ?> form) {

        boolean isOf(Object value) {
            return type.isInstance(value) && holds.test(type.cast(value));
        }

        Map<String, Object> write(Object value) {
            Map<String, Object> object = new LinkedHashMap<>();
            object.put(KIND, name);
            form.write(type.cast(value), object);
            return object;
        }

        S read(Place place) {
            List<String> known = new ArrayList<>(List.of(KIND));
            known.addAll(form.fieldNames());
            return form.read(place, place.fields(known));
        }
    }

    private final String name;
    private final String about;
    private final List<Kind<? extends T>> kinds = new ArrayList<>();

    private Kinds(String name, String about) {
        this.name = name;
        this.about = about;
    }

    static <T> Kinds<T> named(String name, String about) {
        return new Kinds<>(name, about);
    }

    /** Adds a kind: the objects of a class of which something holds. */
    <S extends T> Kinds<T> kind(String kind, Class<S> type, Predicate<S> holds, Made<S, ?> form) {
        kinds.add(new Kind<>(kind, type, holds, form));
        return this;
    }

    String name() {
        return name;
    }

    List<String> kindNames() {
        return kinds.stream().map(Kind::name).toList();
    }

    @Override
    T read(Place place) {
        Place at = place.field(KIND);
        String wanted = at.text("one of " + String.join(", ", kindNames()));
        for (Kind<? extends T> kind : kinds) {
            if (kind.name().equals(wanted)) {
                return kind.read(place);
            }
        }
        throw at.refusal("there is no kind of that name; it must be one of " + String.join(", ", kindNames()));
    }

    @Override
    Object write(T value) {
        return kinds.stream()
                .filter(kind -> kind.isOf(value))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " was " + value
                        + ", of a kind that JSON has no form for; use one of " + String.join(", ", kindNames())))
                .write(value);
    }

    @Override
    Map<String, Object> schema(Definitions definitions) {
        return definitions.reference(name, this, () -> {
            Map<String, Object> schema = new LinkedHashMap<>();
            schema.put("description", about);
            schema.put(
                    "oneOf",
                    kinds.stream()
                            .map(kind -> kind.form().object(definitions, kind.name()))
                            .collect(Collectors.toList()));
            return schema;
        });
    }
}
