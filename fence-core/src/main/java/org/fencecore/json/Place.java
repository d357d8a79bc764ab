package org.fencecore.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.fencecore.worksheet.Written;

/** A place in a JSON text that is being read: what stands there, and the way to it for messages. */
final class Place {

    private final String pointer;
    private final Node node;

    private Place(String pointer, Node node) {
        this.pointer = pointer;
        this.node = node;
    }

    static Place root(Node node) {
        return new Place("", node);
    }

    /** The way from an object to one of its fields, as JSON Pointer writes it. */
    static String step(String name) {
        return "/" + Written.printable(name).replace("~", "~0").replace("/", "~1");
    }

    UnreadableJsonException refusal(String problem) {
        return new UnreadableJsonException(pointer, node.line(), node.column(), problem);
    }

    private Object content(Node.Kind wanted, String expected) {
        if (node.kind() != wanted) {
            throw refusal("here stands " + node.kind() + "; it must be " + expected
                    + (node.kind() == Node.Kind.NULL ? ", or be left out" : ""));
        }
        return node.content();
    }

    String text(String expected) {
        return (String) content(Node.Kind.TEXT, expected);
    }

    boolean flag() {
        return (Boolean) content(Node.Kind.FLAG, "true or false");
    }

    int count() {
        String number = (String) content(Node.Kind.NUMBER, "a whole number");
        if (!number.matches("-?[0-9]{1,9}")) {
            throw refusal("the number was " + number + "; it must be a whole number of at most 9 digits");
        }
        return Integer.parseInt(number);
    }

    List<Place> items(int most) {
        content(Node.Kind.LIST, "a list");
        List<Node> items = node.items();
        if (items.size() > most) {
            throw refusal("the list has " + items.size() + " elements; it may have at most " + most);
        }
        List<Place> places = new ArrayList<>(items.size());
        for (int i = 0; i < items.size(); i++) {
            places.add(new Place(pointer + "/" + i, items.get(i)));
        }
        return places;
    }

    /** The fields of an object, each of which must be known. */
    Map<String, Place> fields(List<String> known) {
        content(Node.Kind.OBJECT, "an object with the fields " + String.join(", ", known));
        Map<String, Place> places = new LinkedHashMap<>();
        node.members().forEach((name, value) -> {
            Place place = new Place(pointer + step(name), value);
            if (!known.contains(name)) {
                throw place.refusal("there is no field \"" + Written.printable(name) + "\" here; the fields are "
                        + String.join(", ", known));
            }
            places.put(name, place);
        });
        return places;
    }

    /** One field of an object, whatever its others are. */
    Place field(String name) {
        content(Node.Kind.OBJECT, "an object");
        Node value = node.members().get(name);
        if (value == null) {
            throw refusal("the field \"" + name + "\" is missing");
        }
        return new Place(pointer + step(name), value);
    }

    /** Refuses anything but what was written for the same. */
    void requireSame(Object written) {
        if (written instanceof Map<?, ?> members) {
            List<String> names =
                    members.keySet().stream().map(String.class::cast).toList();
            fields(names);
            members.forEach((name, member) -> field((String) name).requireSame(member));
        } else if (written instanceof List<?> values) {
            List<Place> items = items(Integer.MAX_VALUE);
            if (items.size() != values.size()) {
                throw different(items.size() + " elements", values.size() + " elements");
            }
            for (int i = 0; i < values.size(); i++) {
                items.get(i).requireSame(values.get(i));
            }
        } else {
            Node.Kind kind = written instanceof Boolean
                    ? Node.Kind.FLAG
                    : written instanceof Integer ? Node.Kind.NUMBER : Node.Kind.TEXT;
            String here = String.valueOf(content(kind, kind.toString()));
            if (!here.equals(String.valueOf(written))) {
                throw different(Written.printable(here), Written.printable(String.valueOf(written)));
            }
        }
    }

    private UnreadableJsonException different(String here, String there) {
        return refusal("here stands " + here + ", and planning the job gives " + there
                + "; read the job alone and plan it, or write the plan again");
    }

    /** Makes something of what was read here; what the library does not take is refused at this place. */
    <V> V make(Supplier<V> maker) {
        try {
            return maker.get();
        } catch (IllegalArgumentException | ArithmeticException e) {
            UnreadableJsonException refusal = refusal(Written.printable(String.valueOf(e.getMessage())));
            refusal.initCause(e);
            throw refusal;
        }
    }
}
