package org.fencecore.packet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.fencecore.worksheet.Written;

/** A table of text, written in columns for people or with commas for programs. */
final class TextTable {

    /** As wide as the paragraphs of a sheet, where the columns before the last leave it anything. */
    private static final int PAGE = 110;

    private static final int LEAST_WIDE = 30;

    private final List<String> header;
    private final Set<Integer> numbers = new HashSet<>();
    private final List<List<String>> rows = new ArrayList<>();

    private TextTable(List<String> header) {
        this.header = header;
    }

    static TextTable of(String... header) {
        return new TextTable(List.of(header));
    }

    /** Sets columns, counted from 0, to end at the same place in text, as sums have them. */
    TextTable numbers(Integer... columns) {
        numbers.addAll(List.of(columns));
        return this;
    }

    TextTable row(Object... cells) {
        if (cells.length != header.size()) {
            throw new IllegalArgumentException(
                    "row had " + cells.length + " cells; the table has " + header.size() + " columns");
        }
        List<String> row = new ArrayList<>(cells.length);
        for (Object cell : cells) {
            row.add(Written.printable(cell.toString()));
        }
        rows.add(row);
        return this;
    }

    List<String> header() {
        return header;
    }

    List<List<String>> rows() {
        return rows;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /**
     * Columns two spaces apart, each as wide as its widest cell, the header underlined. Where that is wider than a page, the
     * last column is broken between words.
     */
    String toText(String indent) {
        int[] widths = new int[header.size()];
        for (int column = 0; column < widths.length; column++) {
            widths[column] = header.get(column).length();
            for (List<String> row : rows) {
                widths[column] = Math.max(widths[column], row.get(column).length());
            }
        }
        int last = widths.length - 1;
        int before = indent.length() + Arrays.stream(widths, 0, last).sum() + 2 * last;
        widths[last] = Math.min(widths[last], Math.max(LEAST_WIDE, PAGE - before));
        List<String> rule = new ArrayList<>();
        for (int width : widths) {
            rule.add("-".repeat(width));
        }
        StringBuilder text = new StringBuilder();
        List<List<String>> lines = new ArrayList<>(List.of(header, rule));
        lines.addAll(rows);
        for (List<String> line : lines) {
            StringBuilder row = new StringBuilder(indent);
            for (int column = 0; column < last; column++) {
                row.append(padded(line.get(column), column, widths[column])).append("  ");
            }
            for (String part : broken(line.get(last), widths[last])) {
                row.append(padded(part, last, widths[last]));
                text.append(row.toString().stripTrailing()).append('\n');
                row = new StringBuilder(" ".repeat(before));
            }
        }
        return text.toString();
    }

    private String padded(String cell, int column, int width) {
        String rest = " ".repeat(Math.max(0, width - cell.length()));
        return numbers.contains(column) ? rest + cell : cell + rest;
    }

    /** A word that is longer than a line stays whole. */
    private static List<String> broken(String cell, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : cell.split(" ", -1)) {
            boolean fits = line.length() + 1 + word.length() <= width;
            if (!line.isEmpty() && !fits) {
                lines.add(line);
                line = word;
            } else {
                line = line.isEmpty() ? word : line + " " + word;
            }
        }
        lines.add(line);
        return lines;
    }

    /** Comma-separated values by RFC 4180, except that lines end with a line feed alone. */
    String toCsv() {
        List<List<String>> lines = new ArrayList<>(List.of(header));
        lines.addAll(rows);
        return lines.stream()
                .map(line -> line.stream().map(TextTable::quoted).collect(Collectors.joining(",")))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
