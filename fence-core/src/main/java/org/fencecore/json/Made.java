package org.fencecore.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * An object that is made from its fields: begun with those that must be there, and taken further with each of the others
 * that is, as a builder or the {@code with} methods of a value do.
 *
 * @param <T> the object
 * @param <B> what it is made with
 */
final class Made<T, B> extends Form<T> {

    /** Values that were read, by field. */
    private static final class Found {
        private final Map<String, Object> values = new HashMap<>();

        @SuppressWarnings("unchecked") // the field's own form read it
        <V> V get(Field<?, V> field) {
            return (V) Objects.requireNonNull(values.get(field.name()), field.name());
        }
    }

    private record Step<T, V, B>(Field<T, V> field, BiFunction<B, V, B> with) {
        B apply(B made, Found found, Place place) {
            return place.make(() -> with.apply(made, found.get(field)));
        }
    }

    private final String name;
    private final String about;
    private final List<Field<T, ?>> fields;
    private final Function<Found, B> begin;
    private final List<Step<T, ?, B>> steps;
    private final Function<B, T> end;

    private Made(
            String name,
            String about,
            List<Field<T, ?>> fields,
            Function<Found, B> begin,
            List<Step<T, ?, B>> steps,
            Function<B, T> end) {
        this.name = name;
        this.about = about;
        this.fields = fields;
        this.begin = begin;
        this.steps = steps;
        this.end = end;
    }

    static <T> Name<T> named(String name, String about) {
        return new Name<>(name, about);
    }

    /** What the object is called in the schema, from which its making begins. */
    record Name<T>(String name, String about) {

        <B> Begun<T, B> from(Supplier<B> maker) {
            return begun(List.of(), found -> maker.get());
        }

        <B, V> Begun<T, B> from(Field<T, V> one, Function<V, B> maker) {
            return begun(List.of(one), found -> maker.apply(found.get(one)));
        }

        <B, V, W> Begun<T, B> from(Field<T, V> one, Field<T, W> two, BiFunction<V, W, B> maker) {
            return begun(List.of(one, two), found -> maker.apply(found.get(one), found.get(two)));
        }

        <B, V, W, X> Begun<T, B> from(Field<T, V> one, Field<T, W> two, Field<T, X> three, Three<V, W, X, B> maker) {
            return begun(
                    List.of(one, two, three), found -> maker.apply(found.get(one), found.get(two), found.get(three)));
        }

        <B, V, W, X, Y> Begun<T, B> from(
                Field<T, V> one, Field<T, W> two, Field<T, X> three, Field<T, Y> four, Four<V, W, X, Y, B> maker) {
            return begun(
                    List.of(one, two, three, four),
                    found -> maker.apply(found.get(one), found.get(two), found.get(three), found.get(four)));
        }

        private <B> Begun<T, B> begun(List<Field<T, ?>> fields, Function<Found, B> begin) {
            return new Begun<>(name, about, new ArrayList<>(fields), begin, new ArrayList<>());
        }
    }

    /** Takes three values. */
    interface Three<V, W, X, B> {
        B apply(V one, W two, X three);
    }

    /** Takes four values. */
    interface Four<V, W, X, Y, B> {
        B apply(V one, W two, X three, Y four);
    }

    /** An object that is begun, to be taken further. */
    record Begun<T, B>(
            String name, String about, List<Field<T, ?>> fields, Function<Found, B> begin, List<Step<T, ?, B>> steps) {

        <V> Begun<T, B> with(Field<T, V> field, BiFunction<B, V, B> step) {
            fields.add(field);
            steps.add(new Step<>(field, step));
            return this;
        }

        Made<T, B> end(Function<B, T> build) {
            return new Made<>(name, about, List.copyOf(fields), begin, List.copyOf(steps), build);
        }
    }

    String name() {
        return name;
    }

    List<String> fieldNames() {
        return fields.stream().map(Field::name).toList();
    }

    @Override
    T read(Place place) {
        return read(place, place.fields(fieldNames()));
    }

    T read(Place place, Map<String, Place> given) {
        Found found = new Found();
        for (Field<T, ?> field : fields) {
            Place at = given.get(field.name());
            if (at != null) {
                // Only shapes that can be read are among the fields of what is made.
                found.values.put(field.name(), ((Form<?>) field.shape()).read(at));
            } else if (field.required()) {
                throw place.refusal("the field \"" + field.name() + "\" is missing: " + field.about());
            }
        }
        B made = place.make(() -> begin.apply(found));
        for (Step<T, ?, B> step : steps) {
            Place at = given.get(step.field().name());
            if (at != null) {
                made = step.apply(made, found, at);
            }
        }
        B last = made;
        return place.make(() -> end.apply(last));
    }

    @Override
    Map<String, Object> write(T value) {
        Map<String, Object> object = new LinkedHashMap<>();
        write(value, object);
        return object;
    }

    void write(T value, Map<String, Object> into) {
        Fields.write(value, fields, into);
    }

    /** What the schema says of the object itself. */
    Map<String, Object> object(Definitions definitions) {
        return Fields.schema(about, "", fields, definitions);
    }

    /** What the schema says of the object as one kind of several. */
    Map<String, Object> object(Definitions definitions, String kind) {
        return Fields.schema(about, kind, fields, definitions);
    }

    @Override
    Map<String, Object> schema(Definitions definitions) {
        return definitions.reference(name, this, () -> object(definitions));
    }
}
