package org.fencecore.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.fencecore.worksheet.Written;

/**
 * Reads JSON into nodes that know their place and writes it from maps and lists, within stated limits; all that this
 * package has of Jackson is here.
 */
final class JsonText {

    static final int MOST_CHARACTERS = 50_000_000;
    static final int MOST_VALUES = 5_000_000;
    static final int DEEPEST = 32;
    static final int LONGEST_TEXT = 1_000;
    static final int LONGEST_NUMBER = 30;

    private static final int BYTE_ORDER_MARK = 0xFEFF;

    /** The limits of the parser itself; they are wider than ours, whose messages name the place. */
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxDocumentLength(MOST_CHARACTERS)
                    .maxNestingDepth(10 * DEEPEST)
                    .maxStringLength(1_000 * LONGEST_TEXT)
                    .maxNameLength(LONGEST_TEXT)
                    .maxNumberLength(10 * LONGEST_NUMBER)
                    .build())
            .build();

    private final JsonParser parser;
    private int values;

    private JsonText(JsonParser parser) {
        this.parser = parser;
    }

    static Node read(String text) {
        try {
            return read(new StringReader(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a text in memory has nothing to fail on
        }
    }

    static Node read(Reader from) throws IOException {
        // Some programs begin a file with a byte order mark, which RFC 8259, section 8.1 lets a reader leave out.
        PushbackReader text = new PushbackReader(from);
        int first = text.read();
        if (first >= 0 && first != BYTE_ORDER_MARK) {
            text.unread(first);
        }
        try (JsonParser parser = FACTORY.createParser(text)) {
            parser.disable(JsonParser.Feature.AUTO_CLOSE_SOURCE);
            return new JsonText(parser).document();
        }
    }

    private Node document() throws IOException {
        try {
            if (parser.nextToken() == null) {
                throw refusal("the document is empty");
            }
            Node node = value(0);
            if (parser.nextToken() != null) {
                throw refusal("more stands after the end of the document");
            }
            return node;
        } catch (JsonProcessingException e) {
            String what = e instanceof StreamConstraintsException ? "this is over a limit: " : "this is not JSON: ";
            UnreadableJsonException refusal = refusal(
                    Objects.requireNonNullElseGet(e.getLocation(), parser::currentLocation),
                    what + Written.printable(e.getOriginalMessage()));
            refusal.initCause(e);
            throw refusal;
        }
    }

    private UnreadableJsonException refusal(String problem) {
        return refusal(parser.currentTokenLocation(), problem);
    }

    private UnreadableJsonException refusal(JsonLocation at, String problem) {
        String path = Written.printable(
                parser.getParsingContext().pathAsPointer(false).toString());
        return new UnreadableJsonException(path, Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()), problem);
    }

    private Node value(int depth) throws IOException {
        values++;
        if (values > MOST_VALUES) {
            throw refusal("the document has more than " + MOST_VALUES + " values, which is the limit");
        }
        JsonLocation at = parser.currentTokenLocation();
        JsonToken token = parser.currentToken();
        Node.Kind kind = switch (token) {
            case START_OBJECT -> Node.Kind.OBJECT;
            case START_ARRAY -> Node.Kind.LIST;
            case VALUE_STRING -> Node.Kind.TEXT;
            case VALUE_TRUE, VALUE_FALSE -> Node.Kind.FLAG;
            case VALUE_NULL -> Node.Kind.NULL;
            default -> Node.Kind.NUMBER;
        };
        Object content = switch (kind) {
            case OBJECT -> members(depth + 1);
            case LIST -> items(depth + 1);
            case TEXT -> bounded("text", LONGEST_TEXT);
            case NUMBER -> bounded("number", LONGEST_NUMBER);
            case FLAG -> token == JsonToken.VALUE_TRUE;
            case NULL -> "";
        };
        return new Node(kind, content, at.getLineNr(), at.getColumnNr());
    }

    private String bounded(String what, int longest) throws IOException {
        if (parser.getTextLength() > longest) {
            throw refusal(
                    "this " + what + " has " + parser.getTextLength() + " characters; it may have at most " + longest);
        }
        return parser.getText();
    }

    private void requireDepth(int depth) {
        if (depth > DEEPEST) {
            throw refusal(
                    "objects and lists stand in each other deeper than " + DEEPEST + " levels, which is the limit");
        }
    }

    private Map<String, Node> members(int depth) throws IOException {
        requireDepth(depth);
        Map<String, Node> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            if (members.containsKey(name)) {
                throw refusal("the field \"" + Written.printable(name) + "\" stands here twice");
            }
            parser.nextToken();
            members.put(name, value(depth));
        }
        return members;
    }

    private List<Node> items(int depth) throws IOException {
        requireDepth(depth);
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(depth));
        }
        return items;
    }

    /** Writes maps, lists, texts, whole numbers and booleans, indented, one line a field. */
    static String write(Map<String, Object> document) {
        StringWriter text = new StringWriter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            generator.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
            write(document, generator);
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a text in memory has nothing to fail on
        }
        return text.append('\n').toString();
    }

    private static void write(Object value, JsonGenerator generator) throws IOException {
        if (value instanceof Map<?, ?> members) {
            generator.writeStartObject();
            for (Map.Entry<?, ?> member : members.entrySet()) {
                generator.writeFieldName((String) member.getKey());
                write(member.getValue(), generator);
            }
            generator.writeEndObject();
        } else if (value instanceof List<?> items) {
            generator.writeStartArray();
            for (Object item : items) {
                write(item, generator);
            }
            generator.writeEndArray();
        } else if (value instanceof Boolean flag) {
            generator.writeBoolean(flag);
        } else if (value instanceof Integer number) {
            generator.writeNumber(number);
        } else {
            generator.writeString((String) value);
        }
    }
}
