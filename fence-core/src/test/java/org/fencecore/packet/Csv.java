package org.fencecore.packet;

import java.util.ArrayList;
import java.util.List;

/** Reads comma-separated values letter by letter, by RFC 4180, section 2, with or without the carriage return. */
final class Csv {

    private Csv() {}

    static List<List<String>> read(String text) {
        List<List<String>> lines = new ArrayList<>();
        List<String> line = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (quoted && letter == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (letter == '"') {
                if (!quoted && cell.length() > 0) {
                    throw new IllegalStateException("a quote within a cell that does not begin with one: " + cell);
                }
                quoted = !quoted;
            } else if (!quoted && (letter == ',' || letter == '\n')) {
                line.add(cell.toString());
                cell.setLength(0);
                if (letter == '\n') {
                    lines.add(line);
                    line = new ArrayList<>();
                }
            } else {
                cell.append(letter);
            }
        }
        if (quoted || cell.length() > 0 || !line.isEmpty()) {
            throw new IllegalStateException("the last line does not end: " + line + cell);
        }
        return lines;
    }
}
