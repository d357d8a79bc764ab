package org.fencecore.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.fencecore.AnySite;
import org.fencecore.AnyStyle;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Plans;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.worksheet.Written;
import org.xml.sax.InputSource;

/** Files of packets of every kind of fence, read back. */
class PacketProperties {

    @Provide
    Arbitrary<Site> sites() {
        return AnySite.sites();
    }

    @Provide
    Arbitrary<FenceStyle> styles() {
        return AnyStyle.styles();
    }

    /** Names with what tables and pages are made of. */
    @Provide
    Arbitrary<String> names() {
        return Arbitraries.oneOf(
                        Arbitraries.strings().ofMaxLength(30),
                        Arbitraries.strings().withChars(",\";\n\r\t<>&'=\\ ab").ofMaxLength(20))
                .filter(name -> !name.isBlank());
    }

    @Property
    void cellsReadBackAsTheyWereWritten(
            @ForAll @Size(min = 1, max = 6) List<@Size(3) List<@From("names") String>> rows) {
        TextTable table = TextTable.of("a", "b, c", "\"d\"");
        rows.forEach(row -> table.row(row.toArray()));
        List<List<String>> read = Csv.read(table.toCsv());
        assertThat(read.get(0)).containsExactly("a", "b, c", "\"d\"");
        assertThat(read.subList(1, read.size()))
                .isEqualTo(rows.stream()
                        .map(row -> row.stream().map(Written::printable).toList())
                        .toList());
    }

    private static void assertReadable(Map<String, String> files) throws Exception {
        for (Map.Entry<String, String> file : files.entrySet()) {
            String name = file.getKey();
            String text = file.getValue();
            // A name of a file that any disk takes.
            assertThat(name).matches("[a-z0-9-]+\\.(txt|html|csv|svg|dxf)");
            assertThat(text).as(name).endsWith("\n");
            if (name.endsWith(".csv")) {
                List<List<String>> lines = Csv.read(text);
                assertThat(lines.get(0)).as(name).doesNotHaveDuplicates();
                assertThat(lines).as(name).allSatisfy(line -> assertThat(line).hasSameSizeAs(lines.get(0)));
            }
            if (name.endsWith(".html") || name.endsWith(".svg")) {
                DocumentBuilderFactory.newDefaultNSInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(text.replaceFirst("^<!DOCTYPE html>\n", ""))));
            }
        }
    }

    @Property(tries = 40)
    void everyFileOfAnyFenceCanBeRead(@ForAll("sites") Site site, @ForAll("styles") FenceStyle style) throws Exception {
        assertReadable(BuildPacket.of(FencePlanner.plan(site, style)).files());
    }

    @Property(tries = 40)
    void everyFileCanBeReadWhateverGateAndJobAreCalled(@ForAll("names") String gate, @ForAll("names") String job)
            throws Exception {
        FencePlan plan = FencePlanner.plan(
                Plans.levelSide().gate(Plans.gate(gate, 1, 12, 47.5)).build(),
                FenceStyle.builder().build());
        Map<String, String> files = BuildPacket.of(plan).withJob(job).files();
        assertReadable(files);
        assertThat(Csv.read(files.getOrDefault("posts.csv", "")))
                .hasSize(1 + plan.posts().size());
        assertThat(Csv.read(files.getOrDefault("holes.csv", "")))
                .hasSize(1 + plan.holes().groups().size());
    }
}
