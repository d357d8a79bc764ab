package org.fencecore.packet;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.worksheet.Finding;

/** What is on a sheet in the order it is read, to be written as plain text or as a page. */
final class SheetText {

    /** One part of it. */
    sealed interface Block permits Heading, Fact, Notice, Item, Found, Sentence, Tabled, Part, Detail {

        /** Writes it as plain text. */
        void write(StringBuilder text);
    }

    /** The heading of a section with its number, in capitals. */
    record Heading(String title) implements Block {
        @Override
        public void write(StringBuilder text) {
            text.append('\n').append(title).append('\n');
        }
    }

    /** A line that is not broken. */
    record Fact(String line) implements Block {
        @Override
        public void write(StringBuilder text) {
            text.append("  ").append(line).append('\n');
        }
    }

    /** What no one may overlook. */
    record Notice(String line) implements Block {
        @Override
        public void write(StringBuilder text) {
            text.append("\n  *** ").append(line).append(" ***\n");
        }
    }

    /** One of a list. */
    record Item(String paragraph) implements Block {
        @Override
        public void write(StringBuilder text) {
            BuildSheet.wrap(text, "  - ", paragraph);
        }
    }

    /** A finding in full. */
    record Found(Finding finding) implements Block {
        @Override
        public void write(StringBuilder text) {
            BuildSheet.wrap(text, "  " + finding.severity() + "  ", finding.place() + ": " + rest());
        }

        /** What it says after its place. */
        String rest() {
            String remedy = finding.remedy().isEmpty() ? "" : " What to do: " + finding.remedy() + ".";
            String source = finding.source().map(cited -> " [" + cited + "]").orElse("");
            return finding.message() + "." + remedy + source;
        }
    }

    /** A sentence or two under a table. */
    record Sentence(String paragraph) implements Block {
        @Override
        public void write(StringBuilder text) {
            BuildSheet.wrap(text, "  ", paragraph);
        }
    }

    /** A table, how far in, and what leads to it where the heading does not. */
    record Tabled(String lead, String indent, TextTable table) implements Block {
        @Override
        public void write(StringBuilder text) {
            if (!lead.isEmpty()) {
                text.append('\n').append(indent).append(lead).append('\n');
            }
            text.append(table.toText(indent));
        }
    }

    /** What begins a part of a section, such as one gate. */
    record Part(String title) implements Block {
        @Override
        public void write(StringBuilder text) {
            BuildSheet.wrap(text, "  ", title);
        }
    }

    /** One thing to know about a part. */
    record Detail(String paragraph) implements Block {
        @Override
        public void write(StringBuilder text) {
            BuildSheet.wrap(text, "    ", paragraph);
        }
    }

    private final String title;
    private final List<Block> blocks = new ArrayList<>();

    /** A sheet with its title in capitals. */
    SheetText(String title) {
        this.title = title;
    }

    void heading(String title) {
        blocks.add(new Heading(title));
    }

    void fact(String line) {
        blocks.add(new Fact(line));
    }

    void notice(String line) {
        blocks.add(new Notice(line));
    }

    void item(String paragraph) {
        blocks.add(new Item(paragraph));
    }

    void finding(Finding finding) {
        blocks.add(new Found(finding));
    }

    void sentence(String paragraph) {
        blocks.add(new Sentence(paragraph));
    }

    void table(TextTable table) {
        table("", table);
    }

    void table(String lead, TextTable table) {
        blocks.add(new Tabled(lead, "  ", table));
    }

    void part(String title) {
        blocks.add(new Part(title));
    }

    void detail(String paragraph) {
        blocks.add(new Detail(paragraph));
    }

    void detail(TextTable table) {
        blocks.add(new Tabled("", "    ", table));
    }

    List<Block> blocks() {
        return List.copyOf(blocks);
    }

    String toText() {
        StringBuilder text = new StringBuilder(title).append("\n\n");
        blocks.forEach(block -> block.write(text));
        return text.toString();
    }
}
