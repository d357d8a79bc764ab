package org.fencecore.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A program of other people, run as a test's second opinion. */
final class OtherProgram {

    private static final long MOST_SECONDS = 120;

    private final String command;

    private OtherProgram(String command) {
        this.command = command;
    }

    static OtherProgram named(String command) {
        return new OtherProgram(command);
    }

    static String missing(String debianPackage) {
        return "skipped: " + debianPackage + " is not installed";
    }

    /** Skips the test if the program does not answer, or fails it where readers are required. */
    void require(String debianPackage, String... question) throws IOException, InterruptedException {
        if (answers(question)) {
            return;
        }
        if ("required".equals(System.getenv("FENCE_READERS"))) {
            fail(missing(debianPackage) + ", but FENCE_READERS=required");
        }
        System.out.println(missing(debianPackage));
        assumeTrue(false, missing(debianPackage));
    }

    private boolean answers(String... question) throws InterruptedException {
        try {
            Process process = start(ProcessBuilder.Redirect.DISCARD, question);
            return process.waitFor(MOST_SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException notThere) {
            return false;
        }
    }

    /** Runs it and returns all that it wrote; the test fails if it does not end well. */
    String run(String... arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("program");
        Path said = folder.resolve("said.txt");
        Process process = start(ProcessBuilder.Redirect.to(said.toFile()), arguments);
        boolean ended = process.waitFor(MOST_SECONDS, TimeUnit.SECONDS);
        process.destroyForcibly().waitFor();
        String text = Files.readString(said, StandardCharsets.UTF_8);
        Files.delete(said);
        Files.delete(folder);
        assertThat(ended).as("%s ended within %s s", command, MOST_SECONDS).isTrue();
        assertThat(process.exitValue()).as("%s said: %s", command, text).isZero();
        return text;
    }

    private Process start(ProcessBuilder.Redirect output, String... arguments) throws IOException {
        List<String> line = new ArrayList<>(List.of(command));
        line.addAll(List.of(arguments));
        return new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(output)
                .start();
    }

    /** The options of a browser that shows a file of ours and asks nothing of the network. */
    static String[] headless(Path folder, String... more) {
        List<String> options = new ArrayList<>(List.of(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--user-data-dir=" + folder.resolve("browser")));
        options.addAll(List.of(more));
        return options.toArray(String[]::new);
    }
}
