package org.fencecore.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.fencecore.FencePlan;
import org.fencecore.packet.BuildPacket;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs the examples and compares what they print with committed copies, and what they write with the packet of their plan.
 *
 * <p>After a wanted change, run {@code mvn -B -ntp -q test -Dtest=GoldenTest -Dgolden.update=true
 * -Dsurefire.failIfNoSpecifiedTests=false} at the root, read the difference as the person with the saw would, and commit
 * it with the change.
 */
class GoldenTest {

    private static final Path GOLDEN = Path.of("src/test/resources/golden");

    @TempDir
    private Path packets;

    @Test
    void buildPacket() throws IOException {
        String printed = printedBy(BuildPacketExample::main);
        assertPacket("packet", BuildPacketExample.plan());
        assertGolden("build-packet.txt", printed);
    }

    @Test
    void slopingBackYard() throws IOException {
        String printed = printedBy(SlopingBackYardExample::main);
        assertPacket("sloping-back-yard", SlopingBackYardExample.plan());
        assertGolden("sloping-back-yard.txt", printed);
    }

    @Test
    void cornerLotAsBuilt() throws IOException {
        assertGolden("corner-lot-as-built.txt", printedBy(CornerLotAsBuiltExample::main));
    }

    @Test
    void priceAndCompare() throws IOException {
        assertGolden("price-and-compare.txt", printedBy(PriceAndCompareExample::main));
    }

    /** The README shows the short example and what it prints, as they are. */
    @Test
    void readmeShowsTheShortExampleAndItsOutput() throws IOException {
        String readme = Files.readString(Path.of("../README.md"));
        String source = Files.readString(Path.of("src/main/java/org/fencecore/examples/OneSideWithGateExample.java"));
        String lines = source.substring(
                        source.indexOf('\n', source.indexOf("// README begins")) + 1, source.indexOf("// README ends"))
                .stripTrailing()
                .stripIndent();
        assertThat(readme).contains("```java\n" + lines + "\n```\n");
        assertThat(readme).contains("```\n" + printedBy(OneSideWithGateExample::main) + "```\n");
    }

    /** The main method of an example. */
    private interface Program {
        void run(String[] args) throws IOException;
    }

    /** What a program prints while it writes into the test's own folder, with the build's folder named in its place. */
    private String printedBy(Program program) throws IOException {
        PrintStream console = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
        System.setProperty("fence.packets", packets.toString());
        try {
            program.run(new String[0]);
        } finally {
            System.clearProperty("fence.packets");
            System.setOut(console);
        }
        String folder = packets.toString().replace(File.separatorChar, '/');
        return printed.toString(StandardCharsets.UTF_8)
                .replace(System.lineSeparator(), "\n")
                .replace(folder, "fence-examples/target");
    }

    private void assertPacket(String folder, FencePlan plan) throws IOException {
        Map<String, String> written = new HashMap<>();
        try (Stream<Path> files = Files.list(packets.resolve(folder))) {
            for (Path file : files.toList()) {
                written.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        assertThat(written).isNotEmpty().isEqualTo(BuildPacket.of(plan).files());
    }

    private static void assertGolden(String name, String actual) throws IOException {
        Path golden = GOLDEN.resolve(name);
        if (Boolean.getBoolean("golden.update")) {
            Files.createDirectories(GOLDEN);
            Files.writeString(golden, actual);
        }
        assertThat(golden)
                .as(
                        "golden file %s is missing or not what is printed now; on purpose? then run with -Dgolden.update=true",
                        name)
                .exists()
                .usingCharset(StandardCharsets.UTF_8)
                .hasContent(actual);
    }
}
