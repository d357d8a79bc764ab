package org.fencecore.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The forms of texts, counts, choices and lists. */
final class Basics {

    /** Any text, such as a name. */
    static final Form<String> TEXT = new Form<>() {
        @Override
        String read(Place place) {
            return place.text("a text");
        }

        @Override
        Object write(String value) {
            return value;
        }

        @Override
        Map<String, Object> schema(Definitions definitions) {
            Map<String, Object> schema = new LinkedHashMap<>();
            schema.put("type", "string");
            schema.put("maxLength", JsonText.LONGEST_TEXT);
            return schema;
        }
    };

    /** A whole number. */
    static final Form<Integer> COUNT = new Form<>() {
        @Override
        Integer read(Place place) {
            return place.count();
        }

        @Override
        Object write(Integer value) {
            return value;
        }

        @Override
        Map<String, Object> schema(Definitions definitions) {
            Map<String, Object> schema = new LinkedHashMap<>();
            schema.put("type", "integer");
            return schema;
        }
    };

    /** True or false. */
    static final Form<Boolean> FLAG = new Form<>() {
        @Override
        Boolean read(Place place) {
            return place.flag();
        }

        @Override
        Object write(Boolean value) {
            return value;
        }

        @Override
        Map<String, Object> schema(Definitions definitions) {
            Map<String, Object> schema = new LinkedHashMap<>();
            schema.put("type", "boolean");
            return schema;
        }
    };

    private Basics() {}

    /** One of the constants of an enumeration, by its name in Java. */
    static <E extends Enum<E>> Form<E> oneOf(Class<E> type) {
        Map<String, E> values = new LinkedHashMap<>();
        Arrays.stream(type.getEnumConstants()).forEach(value -> values.put(value.name(), value));
        return oneOf(values);
    }

    /** One of some values, by a name for each. */
    static <T> Form<T> oneOf(Map<String, T> values) {
        return new Form<>() {
            @Override
            T read(Place place) {
                String names = "one of " + String.join(", ", values.keySet());
                T value = values.get(place.text(names));
                if (value == null) {
                    throw place.refusal("there is no such choice; it must be " + names);
                }
                return value;
            }

            @Override
            Object write(T value) {
                return values.entrySet().stream()
                        .filter(entry -> entry.getValue().equals(value))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("value was " + value
                                + ", which JSON has no name for; it must be one of " + values.values()))
                        .getKey();
            }

            @Override
            Map<String, Object> schema(Definitions definitions) {
                Map<String, Object> schema = new LinkedHashMap<>();
                schema.put("enum", List.copyOf(values.keySet()));
                return schema;
            }
        };
    }

    /** A list of values of one form. */
    static <T> Form<List<T>> listOf(Form<T> form, int most) {
        return new Form<>() {
            @Override
            List<T> read(Place place) {
                List<T> values = new ArrayList<>();
                for (Place item : place.items(most)) {
                    values.add(form.read(item));
                }
                return values;
            }

            @Override
            Object write(List<T> values) {
                return toldListOf(form).write(values);
            }

            @Override
            Map<String, Object> schema(Definitions definitions) {
                Map<String, Object> schema = toldListOf(form).schema(definitions);
                schema.put("maxItems", most);
                return schema;
            }
        };
    }

    /** A list that is only written. */
    static <T> Shape<List<T>> toldListOf(Shape<T> shape) {
        return new Shape<>() {
            @Override
            Object write(List<T> values) {
                List<Object> items = new ArrayList<>(values.size());
                values.forEach(value -> items.add(shape.write(value)));
                return items;
            }

            @Override
            Map<String, Object> schema(Definitions definitions) {
                Map<String, Object> schema = new LinkedHashMap<>();
                schema.put("type", "array");
                schema.put("items", shape.schema(definitions));
                return schema;
            }
        };
    }

    /** A form for something that is written as another thing, of which it is made. */
    static <T, S> Form<T> as(Form<S> form, Function<S, T> of, Function<T, S> from) {
        return new Form<>() {
            @Override
            T read(Place place) {
                S source = form.read(place);
                return place.make(() -> of.apply(source));
            }

            @Override
            Object write(T value) {
                return form.write(from.apply(value));
            }

            @Override
            Map<String, Object> schema(Definitions definitions) {
                return form.schema(definitions);
            }
        };
    }
}
