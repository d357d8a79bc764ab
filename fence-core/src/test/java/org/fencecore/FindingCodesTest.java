package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Programs rely on the codes of findings, so that those of the planner are listed where the findings are returned. */
class FindingCodesTest {

    private static final Path PLANNER = Path.of("src/main/java/org/fencecore");

    @Test
    void thePlannersCodesAreListed() throws IOException {
        SortedSet<String> used = new TreeSet<>();
        try (Stream<Path> files = Files.list(PLANNER)) {
            List<Path> sources =
                    files.filter(file -> file.toString().endsWith(".java")).toList();
            for (Path source : sources) {
                used.addAll(codes(source, "Finding\\s*\\.(?:note|warning|blocker)\\(\\s*\"([a-z-]+)\""));
            }
        }
        assertThat(codes(PLANNER.resolve("FencePlan.java"), "\\{@code ([a-z]+(?:-[a-z]+)+)\\}"))
                .containsExactlyElementsOf(used);
        assertThat(used).contains("gate-off-run", "posts-collide");
    }

    private static SortedSet<String> codes(Path file, String pattern) throws IOException {
        return Pattern.compile(pattern)
                .matcher(Files.readString(file))
                .results()
                .map((MatchResult match) -> match.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
