package org.fencecore.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fencecore.FencePlan;
import org.fencecore.packet.BuildPacket;
import org.junit.jupiter.api.Test;

/**
 * Compares what the examples print with committed copies.
 *
 * <p>After a wanted change, run {@code mvn -B -ntp -q test -Dtest=GoldenTest -Dgolden.update=true
 * -Dsurefire.failIfNoSpecifiedTests=false} at the root, read the difference as the person with the saw would, and commit
 * it with the change.
 */
class GoldenTest {

    private static final Path GOLDEN = Path.of("src/test/resources/golden");

    @Test
    void buildPacket() throws IOException {
        assertGolden("build-packet.txt", sheet(BuildPacketExample.plan()));
    }

    @Test
    void slopingBackYard() throws IOException {
        assertGolden("sloping-back-yard.txt", sheet(SlopingBackYardExample.plan()));
    }

    /** The README shows the ten lines and what they print, as they are. */
    @Test
    void readmeShowsTheTenLinesAndTheirOutput() throws IOException {
        String readme = Files.readString(Path.of("../README.md"));
        String source = Files.readString(Path.of("src/main/java/org/fencecore/examples/TenLinesExample.java"));
        String lines = source.substring(
                        source.indexOf('\n', source.indexOf("// README begins")) + 1, source.indexOf("// README ends"))
                .stripTrailing()
                .stripIndent();
        assertThat(readme).contains("```java\n" + lines + "\n```\n");
        assertThat(readme).contains("```\n" + output() + "```\n");
    }

    private static String output() {
        PrintStream console = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try {
            TenLinesExample.main(new String[0]);
        } finally {
            System.setOut(console);
        }
        return printed.toString(StandardCharsets.UTF_8);
    }

    private static String sheet(FencePlan plan) {
        return BuildPacket.of(plan).sheet().toText();
    }

    private static void assertGolden(String name, String actual) throws IOException {
        Path golden = GOLDEN.resolve(name);
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(golden, actual);
        }
        assertThat(golden).usingCharset(StandardCharsets.UTF_8).hasContent(actual);
    }
}
