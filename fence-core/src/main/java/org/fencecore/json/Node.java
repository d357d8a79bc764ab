package org.fencecore.json;

import java.util.List;
import java.util.Map;

/**
 * One value of a JSON text that was read, and where it began.
 *
 * @param kind what stands there
 * @param content a map of nodes by name for an object, a list of nodes for a list, the text itself, a number as it is
 *     written, a boolean, or an empty text for null
 * @param line the line, from 1
 * @param column the column, from 1
 */
record Node(Kind kind, Object content, int line, int column) {

    /** What can stand in JSON, in the words of messages. */
    enum Kind {
        OBJECT("an object"),
        LIST("a list"),
        TEXT("a text"),
        NUMBER("a number"),
        FLAG("true or false"),
        NULL("null");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    @SuppressWarnings("unchecked") // JsonText puts nothing else into an object
    Map<String, Node> members() {
        return (Map<String, Node>) content;
    }

    @SuppressWarnings("unchecked") // JsonText puts nothing else into a list
    List<Node> items() {
        return (List<Node>) content;
    }
}
