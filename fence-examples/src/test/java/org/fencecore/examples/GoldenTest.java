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
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
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

    @Test
    void classroom() throws IOException {
        String printed = printedBy(ClassroomExample::main);
        assertGolden("classroom.txt", printed);
    }

    /** The README shows these examples and what they print, as they are. */
    @Test
    void readmeShowsExamplesAndTheirOutput() throws IOException {
        assertShown("OneSideWithGateExample", printedBy(OneSideWithGateExample::main));
        assertShown("ManyLotsExample", printedBy(ManyLotsExample::main));
        assertShown("OneGateExample", printedBy(OneGateExample::main));
        assertShown("ClassroomExample", racking());
    }

    /** The lines of an example between two marks are in the README, and the next block there is its output. */
    private static void assertShown(String example, String printed) throws IOException {
        String source = Files.readString(Path.of("src/main/java/org/fencecore/examples/" + example + ".java"));
        String lines = source.substring(
                source.indexOf('\n', source.indexOf("// README begins")) + 1, source.indexOf("// README ends"));
        String code = "```java\n" + lines.stripTrailing().stripIndent() + "\n```\n";
        Path page = Path.of("../README.md");
        String readme = Files.readString(page);
        assertThat(readme).contains(code);

        int start = readme.indexOf("```\n", readme.indexOf(code) + code.length()) + 4;
        int end = readme.indexOf("```\n", start);
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(page, readme.substring(0, start) + printed + readme.substring(end));
        } else {
            assertThat(readme.substring(start, end)).isEqualTo(printed);
        }
    }

    /** The worksheet of the classroom's first exercise. */
    private String racking() throws IOException {
        String printed = printedBy(ClassroomExample::main);
        int start = printed.indexOf("ANSWERS\n\n") + 9;
        return printed.substring(start, printed.indexOf("\n\n", start) + 1);
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
        assertGolden(folder + "-files.txt", listed(written));
        assertThat(written).isNotEmpty().isEqualTo(BuildPacket.of(plan).files());
    }

    /**
     * Every file of a packet with its length and what its text comes to, so that no drawing or table changes unseen. Look
     * at those that did before you commit the list.
     */
    private static String listed(Map<String, String> files) {
        return new TreeMap<>(files)
                .entrySet().stream()
                        .map(file -> {
                            CRC32C sum = new CRC32C();
                            byte[] text = file.getValue().getBytes(StandardCharsets.UTF_8);
                            sum.update(text);
                            return String.format(
                                    Locale.ROOT, "%-48s %7d %08x%n", file.getKey(), text.length, sum.getValue());
                        })
                        .collect(Collectors.joining())
                        .replace(System.lineSeparator(), "\n");
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
