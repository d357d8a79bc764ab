package org.fencecore.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A calculation written out line by line; the result of the last line is the value that was returned.
 *
 * <p>Example:
 *
 * <pre>{@code
 * Worksheet sheet = Worksheet.titled("Gate leaf")
 *         .given("clear opening", opening, "47 1/2 in")
 *         .line("leaf width", "opening - hinge gap - latch gap", "47 1/2 - 1/2 - 1/4", leaf, "46 3/4 in",
 *                 Citation.COMMON_PRACTICE)
 *         .build();
 * }</pre>
 */
public final class Worksheet {

    private final String title;
    private final List<WorkLine> lines;

    private Worksheet(String title, List<WorkLine> lines) {
        this.title = title;
        this.lines = lines;
    }

    /**
     * Starts a worksheet.
     *
     * @param title what is worked out
     * @return a builder without lines
     */
    public static Builder titled(String title) {
        return new Builder(title);
    }

    /**
     * Returns what is worked out.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * Returns this worksheet for one place of several, as it stands in a plan.
     *
     * <p>Example: {@code Worksheet.titled("Post spacing")...build().within("side 2, post 4 to post 9").title()} is
     * {@code side 2, post 4 to post 9: Post spacing}.
     *
     * @param place where on the fence, in the builder's words
     * @return a worksheet with the same lines, titled "place: title"
     */
    public Worksheet within(String place) {
        return new Worksheet(Objects.requireNonNull(place, "place") + ": " + title, lines);
    }

    /**
     * Returns the lines in order.
     *
     * @return the lines, at least one, unmodifiable
     */
    public List<WorkLine> lines() {
        return lines;
    }

    /**
     * Returns the value of the last line.
     *
     * @return the result of the calculation
     */
    public Object result() {
        return lines.get(lines.size() - 1).result();
    }

    /**
     * Returns the sheet as plain text, one calculation a line with its source in brackets.
     *
     * @return the text, lines ended by a line feed
     */
    public String toText() {
        StringBuilder text = new StringBuilder(title).append('\n');
        for (WorkLine line : lines) {
            text.append("  ").append(line.name());
            if (!line.formula().isEmpty()) {
                text.append(" = ").append(line.formula());
            }
            if (!line.numbers().isEmpty()) {
                text.append(" = ").append(line.numbers());
            }
            text.append(" = ").append(line.shown());
            if (!line.source().equals(Citation.GEOMETRY)) {
                text.append("   [").append(line.source()).append(']');
            }
            text.append('\n');
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return toText();
    }

    /** Collects the lines of a worksheet. */
    public static final class Builder {

        private static final Citation GIVEN = Citation.of("given", "", "");

        private final String title;
        private final List<WorkLine> lines = new ArrayList<>();

        private Builder(String title) {
            this.title = Objects.requireNonNull(title, "title");
        }

        /**
         * Adds a value that was put in.
         *
         * @param name what it is
         * @param value the value
         * @param shown the value as written on the sheet, with its unit
         * @return this builder
         */
        public Builder given(String name, Object value, String shown) {
            return line(new WorkLine(name, "", "", value, shown, GIVEN));
        }

        /**
         * Adds a value that is worked out.
         *
         * @param name what is sought
         * @param formula the formula in plain text
         * @param numbers the formula with the numbers put in
         * @param result the value
         * @param shown the value as written on the sheet, with its unit
         * @param source where the formula comes from
         * @return this builder
         */
        public Builder line(String name, String formula, String numbers, Object result, String shown, Citation source) {
            return line(new WorkLine(name, formula, numbers, result, shown, source));
        }

        /**
         * Adds a line.
         *
         * @param line the line
         * @return this builder
         */
        public Builder line(WorkLine line) {
            lines.add(Objects.requireNonNull(line, "line"));
            return this;
        }

        /**
         * Returns the worksheet.
         *
         * @return the worksheet
         * @throws IllegalArgumentException if no line was added
         */
        public Worksheet build() {
            if (lines.isEmpty()) {
                throw new IllegalArgumentException("worksheet '" + title + "' has no lines; add at least one");
            }
            return new Worksheet(title, List.copyOf(lines));
        }
    }
}
