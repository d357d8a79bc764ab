package org.fencecore.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Compiles and runs the programs under {@code src/test/consumer}, which are no part of the build, as their author would: with
 * the built jars and nothing but what DEVELOPERS.md says they need. Their own Maven projects are built by {@code .ci/run}.
 */
class ConsumerTest {

    private static final Path CONSUMER = Path.of("src/test/consumer");

    @TempDir
    private Path classes;

    /** A level side of 50 ft, less setback and posts 584 1/2 in: seven bays of at most 8 ft, so eight posts. */
    @Test
    void onTheClassPath() throws IOException, InterruptedException, URISyntaxException {
        String path = Published.path();
        compile("classpath", "--class-path", path);
        assertThat(run("--class-path", classes + File.pathSeparator + path, "yard.OneSide"))
                .isEqualTo("8 posts\n");
    }

    /** An opening of 47 1/2 in less gaps of 1/2 and 1/4 in. */
    @Test
    void onTheModulePath() throws IOException, InterruptedException, URISyntaxException {
        String path = Published.path();
        compile("modulepath", "--module-path", path);
        assertThat(run("--module-path", classes + File.pathSeparator + path, "--module", "yard/yard.OneGate"))
                .isEqualTo("leaf 3 ft 10 3/4 in\nin modules yard, org.fencecore, org.fencecore.units\n");
    }

    private void compile(String project, String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(options));
        command.addAll(List.of("-d", classes.toString()));
        try (Stream<Path> sources = Files.walk(CONSUMER.resolve(project).resolve("src/main/java"))) {
            sources.map(Path::toString).filter(name -> name.endsWith(".java")).forEach(command::add);
        }
        assertThat(process("javac", command)).isEmpty();
    }

    private String run(String... arguments) throws IOException, InterruptedException {
        return process("java", List.of(arguments));
    }

    /** Runs a program of the JDK and gives what it prints. */
    private static String process(String program, List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(System.getProperty("java.home") + "/bin/" + program));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).as(printed).isZero();
        return printed.replace(System.lineSeparator(), "\n");
    }
}
