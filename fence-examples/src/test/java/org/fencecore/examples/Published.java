package org.fencecore.examples;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fencecore.FencePlan;
import org.fencecore.units.Length;

/** What the build publishes, and what DEVELOPERS.md says it takes. */
final class Published {

    private static final Pattern ROW = Pattern.compile("\\| `([\\w.-]+:[\\w.-]+)` \\| ([^|]*) \\|.*");

    private Published() {}

    /** Who takes which dependency, by the table in DEVELOPERS.md: {@code jars}, {@code jars, through ...} and so on. */
    static Map<String, String> dependencies() throws IOException {
        Map<String, String> dependencies = new TreeMap<>();
        for (String line : Files.readAllLines(Path.of("../DEVELOPERS.md"))) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                dependencies.put(row.group(1), row.group(2));
            }
        }
        return dependencies;
    }

    /** The two jars of the library; where they are not built yet the test is skipped, or fails if they are required. */
    static List<Path> jars() throws URISyntaxException {
        List<Path> jars = List.of(placeOf(Length.class), placeOf(FencePlan.class));
        require(jars.stream().allMatch(Files::isRegularFile), "the jars are not built; \"mvn verify\" builds them");
        return jars;
    }

    private static Path placeOf(Class<?> type) throws URISyntaxException {
        return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    }

    /** Skips a test by name where something is missing, but fails it with {@code FENCE_READERS=required}. */
    static void require(boolean there, String missing) {
        if (there) {
            return;
        }
        if ("required".equals(System.getenv("FENCE_READERS"))) {
            fail(missing + ", but FENCE_READERS=required");
        }
        System.out.println("skipped: " + missing);
        assumeTrue(false, missing);
    }

    /** The jars and the dependencies that DEVELOPERS.md says they need, and no others, as a path for Java. */
    static String path() throws IOException, URISyntaxException {
        List<String> path = new ArrayList<>(jars().stream().map(Path::toString).toList());
        for (Map.Entry<String, String> dependency : dependencies().entrySet()) {
            if (dependency.getValue().startsWith("jars")) {
                path.add(jarOf(dependency.getKey().replaceFirst(".*:", "")));
            }
        }
        return String.join(File.pathSeparator, path);
    }

    private static String jarOf(String artifact) {
        Pattern name = Pattern.compile(".*[/\\\\]" + Pattern.quote(artifact) + "-\\d[^/\\\\]*\\.jar");
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .filter(entry -> name.matcher(entry).matches())
                .findFirst()
                .orElseThrow(() -> new AssertionError(artifact + " is not on the class path of this test"));
    }
}
