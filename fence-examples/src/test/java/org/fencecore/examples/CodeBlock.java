package org.fencecore.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A block of Java shown in the documents, turned into statements that can be run.
 *
 * <p>A comment at the end of a statement states its value and is checked; a remark stands on a line of its own. Comments
 * within a statement of several lines are remarks too.
 *
 * @param place file and line of the block's first line
 * @param file the file it stands in, without its ending, under the folder of the sources
 * @param lines its lines
 */
record CodeBlock(String place, String file, List<String> lines) {

    private static final Pattern JAVADOC =
            Pattern.compile("^ *\\* <pre>\\{@code\n(.*?)^ *\\* }</pre>", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern MARKDOWN = Pattern.compile("^```java\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern STATEMENT = Pattern.compile("(.*);(?:\\s*// (.*))?", Pattern.DOTALL);
    private static final Pattern DECLARATION = Pattern.compile("[A-Z][\\w.<>, ]*? (\\w+) = .*", Pattern.DOTALL);

    /** The blocks in the Javadoc of all sources under a folder. */
    static List<CodeBlock> inSources(Path folder) throws IOException {
        List<CodeBlock> blocks = new ArrayList<>();
        try (Stream<Path> sources = Files.walk(folder)) {
            for (Path source : sources.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                String name = folder.relativize(source).toString().replace('\\', '/');
                for (CodeBlock block : in(source, name.substring(0, name.length() - 5), JAVADOC)) {
                    blocks.add(block);
                }
            }
        }
        return blocks;
    }

    /** The blocks of a page. */
    static List<CodeBlock> inPage(Path page) throws IOException {
        return in(page, page.getFileName().toString(), MARKDOWN);
    }

    private static List<CodeBlock> in(Path path, String name, Pattern pattern) throws IOException {
        String text = Files.readString(path);
        List<CodeBlock> blocks = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            int line = 1 + (int) text.substring(0, matcher.start(1)).lines().count();
            List<String> lines = matcher.group(1)
                    .lines()
                    .map(raw -> pattern == JAVADOC ? raw.replaceFirst("^ *\\* ?", "") : raw)
                    .toList();
            blocks.add(new CodeBlock(name + ":" + line, name, lines));
        }
        return blocks;
    }

    /** The statements, each followed by a check of the value its comment states, if it has one. */
    String statements() {
        StringBuilder code = new StringBuilder();
        StringBuilder pending = new StringBuilder();
        for (String line : lines) {
            if (pending.isEmpty() && (line.isBlank() || line.strip().startsWith("//") || line.endsWith("}"))) {
                code.append(line).append('\n');
                continue;
            }
            pending.append(line).append('\n');
            if (line.endsWith("{")) {
                code.append(pending);
                pending.setLength(0);
            } else if (STATEMENT.matcher(line).matches()) {
                code.append(checked(pending.toString().strip()));
                pending.setLength(0);
            }
        }
        return code.append(pending).toString();
    }

    private static String checked(String statement) {
        Matcher matcher = STATEMENT.matcher(statement);
        if (!matcher.matches() || matcher.group(2) == null) {
            return statement + "\n";
        }
        String comment = "\"" + matcher.group(2).replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
        Matcher declaration = DECLARATION.matcher(matcher.group(1));
        if (declaration.matches()) {
            return statement + "\nshown.accept(" + declaration.group(1) + ", " + comment + ");\n";
        }
        return "shown.accept(" + matcher.group(1) + ", " + comment + ");\n";
    }
}
