package org.fencecore.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.drawing.sheet.Svg;
import org.fencecore.worksheet.WorkLine;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The packet as one page for a browser, on a phone in the yard or printed: the build sheet with the drawings in it, long
 * tables and worked calculations folded away. It needs nothing else, and has no scripts.
 */
final class PacketPage {

    /** Longer tables are left to the spreadsheet files. */
    static final int MOST_ROWS = 5_000;

    private static final int LONG_CELL = 34;

    private final String title;
    private final SheetText text;
    private final Paper paper;
    private final Map<String, List<Drawing>> drawings = new LinkedHashMap<>();
    private final Map<String, List<Drawing>> sectionsOfDrawings = new LinkedHashMap<>();
    private final Map<String, TextTable> folded = new LinkedHashMap<>();
    private final List<Worksheet> worksheets;
    private final Markup page = new Markup();

    PacketPage(String title, SheetText text, Paper paper, List<Worksheet> worksheets) {
        this.title = title;
        this.text = text;
        this.paper = paper;
        this.worksheets = worksheets;
    }

    /** Puts drawings into a section of their own after another. */
    PacketPage drawAfter(String section, List<Drawing> its) {
        sectionsOfDrawings.put(section, its);
        return this;
    }

    /** Puts drawings at the end of a section, which is named as in its address on the page. */
    PacketPage draw(String section, List<Drawing> its) {
        drawings.put(section, its);
        return this;
    }

    /** Puts a long table at the end of a section, folded. */
    PacketPage fold(String section, TextTable table) {
        folded.put(section, table);
        return this;
    }

    String write() {
        List<List<SheetText.Block>> sections = sections();
        page.raw("""
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                """);
        page.element("title", title);
        page.raw("<style>\n" + PageStyle.CSS + "</style>\n</head>\n<body>\n");
        page.raw("<a class=\"skip\" href=\"#summary\">Skip to the summary</a>\n<header>\n");
        page.element("h1", title);
        page.raw("</header>\n");
        contents(sections);
        page.raw("<main>\n");
        sections.forEach(this::section);
        worked();
        page.raw("</main>\n</body>\n</html>\n");
        return page.toString();
    }

    /** The blocks from heading to heading; those before the first are the summary. */
    private List<List<SheetText.Block>> sections() {
        List<List<SheetText.Block>> sections = new ArrayList<>();
        sections.add(new ArrayList<>(List.of(new SheetText.Heading("SUMMARY"))));
        for (SheetText.Block block : text.blocks()) {
            if (block instanceof SheetText.Heading) {
                sections.add(new ArrayList<>());
            }
            sections.get(sections.size() - 1).add(block);
        }
        return sections;
    }

    private static String heading(List<SheetText.Block> section) {
        return ((SheetText.Heading) section.get(0)).title();
    }

    /** The address of a section: its words without its number. */
    private static String address(List<SheetText.Block> section) {
        return heading(section)
                .replaceFirst("^[0-9]+\\. ", "")
                .toLowerCase(Locale.ROOT)
                .replace(' ', '-');
    }

    /** A heading in capitals as a sentence has it. */
    private static String sentenceCase(String capitals) {
        int first = 0;
        while (first < capitals.length() - 1 && !Character.isLetter(capitals.charAt(first))) {
            first++;
        }
        return capitals.substring(0, first + 1) + capitals.substring(first + 1).toLowerCase(Locale.ROOT);
    }

    private void contents(List<List<SheetText.Block>> sections) {
        page.raw("<nav aria-label=\"Contents\">\n<ul>\n");
        for (List<SheetText.Block> section : sections) {
            link(address(section), sentenceCase(heading(section)));
            if (sectionsOfDrawings.containsKey(address(section))) {
                link("drawings", "Drawings");
            }
        }
        if (!worksheets.isEmpty()) {
            link("worked", "Worked calculations");
        }
        page.raw("</ul>\n</nav>\n");
    }

    private void link(String address, String words) {
        page.open("li")
                .open("a", "href", "#" + address)
                .text(words)
                .close("a")
                .close("li")
                .raw("\n");
    }

    private void section(List<SheetText.Block> section) {
        String address = address(section);
        String heading = sentenceCase(heading(section));
        page.open("section", "id", address).raw("\n");
        page.element("h2", heading);
        String part = heading;
        String list = "";
        for (SheetText.Block block : section.subList(1, section.size())) {
            String kind = list(block);
            if (!kind.equals(list)) {
                page.raw(list.isEmpty() ? "" : "</ul>\n");
                page.raw(kind.isEmpty() ? "" : "<ul class=\"" + kind + "\">\n");
                list = kind;
            }
            if (block instanceof SheetText.Part begun) {
                part = begun.title();
            }
            block(block, part);
        }
        page.raw(list.isEmpty() ? "" : "</ul>\n");
        drawings.getOrDefault(address, List.of()).forEach(this::figure);
        if (folded.containsKey(address)) {
            folded(folded.get(address));
        }
        page.raw("</section>\n");
        if (sectionsOfDrawings.containsKey(address)) {
            page.raw("<section id=\"drawings\">\n").element("h2", "Drawings");
            sectionsOfDrawings.get(address).forEach(this::figure);
            page.raw("</section>\n");
        }
    }

    /** The list that a block is a line of, by its class on the page; empty if of none. */
    private static String list(SheetText.Block block) {
        if (block instanceof SheetText.Item || block instanceof SheetText.Detail) {
            return "items";
        }
        return block instanceof SheetText.Found ? "findings" : "";
    }

    private void block(SheetText.Block block, String part) {
        if (block instanceof SheetText.Fact fact) {
            page.element("p", fact.line());
        } else if (block instanceof SheetText.Notice notice) {
            page.open("p", "class", "notice").text(notice.line()).close("p").raw("\n");
        } else if (block instanceof SheetText.Item item) {
            page.element("li", item.paragraph());
        } else if (block instanceof SheetText.Found found) {
            String severity = found.finding().severity().toString();
            page.open("li", "class", severity.toLowerCase(Locale.ROOT));
            page.open("strong").text(severity).close("strong").text(" ");
            page.open("b").text(found.finding().place()).close("b").text(": " + found.rest());
            page.close("li").raw("\n");
        } else if (block instanceof SheetText.Sentence sentence) {
            page.open("p", "class", "note")
                    .text(sentence.paragraph())
                    .close("p")
                    .raw("\n");
        } else if (block instanceof SheetText.Tabled tabled) {
            table(tabled.lead().isEmpty() ? part : tabled.lead(), !tabled.lead().isEmpty(), tabled.table());
        } else if (block instanceof SheetText.Part begun) {
            page.element("h3", begun.title());
        } else if (block instanceof SheetText.Detail detail) {
            page.element("li", detail.paragraph());
        }
    }

    /** What is too wide for a phone scrolls in a box of its own, by finger or with the arrow keys. */
    private void box(String label) {
        page.open("div", "class", "box", "role", "region", "tabindex", "0", "aria-label", label)
                .raw("\n");
    }

    /** Writes a table; a caption that stands over it as a heading already is for those who cannot see it. */
    private void table(String caption, boolean isShown, TextTable table) {
        box(caption);
        page.raw("<table>\n")
                .open("caption", "class", isShown ? "shown" : "heard")
                .text(caption)
                .close("caption")
                .raw("\n");
        page.raw("<thead><tr>");
        for (String head : table.header()) {
            page.open("th", "scope", "col").text(head).close("th");
        }
        page.raw("</tr></thead>\n<tbody>\n");
        for (List<String> row : table.rows()) {
            page.raw("<tr>");
            for (int i = 0; i < row.size(); i++) {
                cell(i == 0, row.get(i));
            }
            page.raw("</tr>\n");
        }
        page.raw("</tbody>\n</table>\n</div>\n");
    }

    private void cell(boolean first, String words) {
        String name = first ? "th" : "td";
        List<String> attributes = new ArrayList<>(first ? List.of("scope", "row") : List.of());
        if (words.length() > LONG_CELL) {
            attributes.addAll(List.of("class", "long"));
        }
        page.open(name, attributes.toArray(String[]::new)).text(words).close(name);
    }

    private void figure(Drawing drawing) {
        page.raw("<figure>\n");
        page.open("figcaption").open("h3").text(drawing.title()).close("h3").raw("\n");
        drawing.caution()
                .ifPresent(caution -> page.open("p", "class", "notice")
                        .text(caution)
                        .close("p")
                        .raw("\n"));
        page.element("p", drawing.description()).raw("</figcaption>\n");
        box(drawing.title());
        String svg = Svg.writeWithoutMargins(drawing, paper);
        page.raw(svg.substring(svg.indexOf("<svg"))).raw("</div>\n</figure>\n");
    }

    private void folded(TextTable table) {
        int rows = table.rows().size();
        page.raw("<details>\n").element("summary", "Every board with its mark, " + rows + " lines");
        if (rows > MOST_ROWS) {
            page.element("p", "Over " + MOST_ROWS + " lines are in the table for spreadsheets only.");
        } else {
            table("Every board with its mark", false, table);
        }
        page.raw("</details>\n");
    }

    private void worked() {
        if (worksheets.isEmpty()) {
            return;
        }
        page.raw("<section id=\"worked\">\n").element("h2", "Worked calculations");
        page.element("p", "Each opens to the formula, the numbers put in, the result and where the formula is from.");
        for (Worksheet worksheet : worksheets) {
            page.raw("<details>\n").element("summary", worksheet.title());
            TextTable lines = TextTable.of("what", "formula", "numbers", "result", "source");
            for (WorkLine line : worksheet.lines()) {
                lines.row(line.name(), line.formula(), line.numbers(), line.shown(), line.source());
            }
            table(worksheet.title(), false, lines);
            page.raw("</details>\n");
        }
        page.raw("</section>\n");
    }

    /** Text with the marks of a page round it, everything from outside escaped. */
    private static final class Markup {

        /** A space within a figure such as 3' 10 3/4", where no line may end. */
        private static final Pattern WHOLE_FIGURE = Pattern.compile("(\\d'?) (?=\\d+[ /\"])");

        private final StringBuilder out = new StringBuilder();

        Markup raw(String markup) {
            out.append(markup);
            return this;
        }

        Markup open(String name, String... attributes) {
            out.append('<').append(name);
            for (int i = 0; i < attributes.length; i += 2) {
                out.append(' ').append(attributes[i]).append("=\"");
                text(attributes[i + 1]);
                out.append('"');
            }
            out.append('>');
            return this;
        }

        Markup close(String name) {
            out.append("</").append(name).append('>');
            return this;
        }

        Markup element(String name, String words) {
            return open(name).text(words).close(name).raw("\n");
        }

        /** Writes line by line, so that only line feeds of our own stay. */
        Markup text(String words) {
            String[] lines = words.split("\n", -1);
            for (int line = 0; line < lines.length; line++) {
                out.append(line == 0 ? "" : "\n");
                WHOLE_FIGURE
                        .matcher(Written.printable(lines[line]))
                        .replaceAll("$1\u00a0")
                        .codePoints()
                        .forEach(this::letter);
            }
            return this;
        }

        private void letter(int letter) {
            switch (letter) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(letter);
            }
        }

        @Override
        public String toString() {
            return out.toString();
        }
    }
}
