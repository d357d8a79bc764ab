package org.fencecore.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import org.junit.jupiter.api.Test;

/** Types the JShell lines of the README into a JShell and compares what it answers. */
class JShellTest {

    private static final String PROMPT = "jshell> ";

    @Test
    void linesInTheReadmeAnswerAsPrinted() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("../README.md"));
        int first = 0;
        while (!lines.get(first).startsWith(PROMPT)) {
            first++;
        }
        List<String> shown =
                lines.subList(first, first + lines.subList(first, lines.size()).indexOf("```"));
        List<String> answered = new ArrayList<>();
        AtomicInteger typed = new AtomicInteger();
        // The program numbers the variables that it names itself by the lines typed so far.
        try (JShell shell = JShell.builder()
                .executionEngine("local")
                .tempVariableNameGenerator(() -> "$" + typed.get())
                .build()) {
            for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
                shell.addToClasspath(entry);
            }
            for (String line : shown) {
                if (line.startsWith(PROMPT)) {
                    typed.incrementAndGet();
                    answered.add(line);
                    answered.addAll(answers(shell, line.substring(PROMPT.length())));
                }
            }
        }
        assertThat(answered).isEqualTo(shown);
    }

    /** What the shell prints in its usual setting: the name of the variable and its value. */
    private static List<String> answers(JShell shell, String line) {
        List<String> answers = new ArrayList<>();
        String statement = shell.sourceCodeAnalysis().analyzeCompletion(line).source(); // with its semicolon
        for (SnippetEvent event : shell.eval(statement)) {
            String problems = shell.diagnostics(event.snippet())
                    .map(problem -> problem.getMessage(null))
                    .collect(Collectors.joining(", "));
            assertThat(event.status()).as("%s: %s", line, problems).isEqualTo(Snippet.Status.VALID);
            assertThat(event.exception()).as(line).isNull();
            if (event.snippet() instanceof VarSnippet variable) {
                answers.add(variable.name() + " ==> " + event.value());
            }
        }
        return answers;
    }
}
