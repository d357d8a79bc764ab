package org.fencecore.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The README gives every package of the two jars one status. */
class StabilityTest {

    private static final List<String> STATUS = List.of(
            "settled", "may still grow, but what is there stays", "may change before 1.0", "no part of the API");

    @Test
    void everyPackageHasOneStatus() throws IOException {
        List<String> listed = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("../README.md"))) {
            for (String status : STATUS) {
                if (line.startsWith("| " + status + " | ")) {
                    listed.addAll(
                            List.of(line.replaceAll("^\\| .* \\| | \\|$", "").split(", ", -1)));
                }
            }
        }
        List<String> packages = new ArrayList<>();
        for (String module : List.of("fence-units", "fence-core")) {
            Path sources = Path.of("..", module, "src/main/java");
            try (Stream<Path> files = Files.walk(sources)) {
                files.filter(file -> file.endsWith("package-info.java"))
                        .map(file ->
                                sources.relativize(file.getParent()).toString().replaceAll("[/\\\\]", "."))
                        .map(name -> name.replaceFirst("^org\\.fencecore\\.", ""))
                        .forEach(packages::add);
            }
        }
        assertThat(listed).containsExactlyInAnyOrderElementsOf(packages);
    }
}
