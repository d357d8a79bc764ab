package org.fencecore.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Plans;
import org.fencecore.drawing.sheet.Dxf;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.drawing.view.ElevationView;
import org.fencecore.drawing.view.GateView;
import org.fencecore.layout.Face;
import org.fencecore.style.FenceStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What other people's programs make of the packet. A program that is not installed is skipped by name, or fails where
 * the environment has {@code FENCE_READERS=required}.
 */
class OtherReadersTest {

    /** Audits a file and tells its errors and fixes, its closed polylines by layer, and the extents of one layer. */
    private static final String READ_DXF = """
            import sys, collections, ezdxf
            from ezdxf.lldxf.encoding import decode_dxf_unicode
            doc = ezdxf.readfile(sys.argv[1])
            audit = doc.audit()
            print('errors', len(audit.errors), 'fixes', len(audit.fixes), doc.dxfversion)
            closed = collections.Counter()
            xs, ys = [], []
            for e in doc.modelspace():
                if e.dxftype() == 'POLYLINE' and e.is_closed:
                    closed[e.dxf.layer] += 1
                    if e.dxf.layer == sys.argv[2]:
                        xs += [v.dxf.location.x for v in e.vertices]
                        ys += [v.dxf.location.y for v in e.vertices]
                if not doc.layers.has_entry(e.dxf.layer):
                    print('no layer', e.dxf.layer)
                if e.dxftype() == 'TEXT':
                    print('text', ascii(decode_dxf_unicode(e.plain_text())))
            for layer, count in closed.items():
                print('closed', layer, count)
            if xs:
                print('extents %.6f %.6f' % (max(xs) - min(xs), max(ys) - min(ys)))
            """;

    @TempDir
    private Path folder;

    private static FencePlan withGate(String name) {
        return FencePlanner.plan(
                Plans.levelSide().gate(Plans.gate(name, 1, 12, 47.5)).build(),
                FenceStyle.builder().build());
    }

    private static Stream<BuildPacket> packets() {
        return Stream.of(
                BuildPacket.of(withGate("walk gate")).withJob("Larch Lane 7"),
                BuildPacket.of(withGate(PacketPageTest.HOSTILE))
                        .withJob(PacketPageTest.HOSTILE)
                        .withPaper(Paper.A4),
                BuildPacket.of(PacketPageTest.blocked()));
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private String readDxf(Path dxf, String layer) throws IOException, InterruptedException {
        OtherProgram python = OtherProgram.named("/usr/bin/python3");
        python.require("python3-ezdxf", "-c", "import ezdxf");
        return python.run("-c", READ_DXF, dxf.toString(), layer);
    }

    @Test
    void ezdxfFindsNothingToMendInAnyDxf() throws Exception {
        for (BuildPacket packet : packets().toList()) {
            for (Map.Entry<String, String> written : packet.files().entrySet()) {
                if (written.getKey().endsWith(".dxf")) {
                    String read = readDxf(file(written.getKey(), written.getValue()), "POSTS");
                    assertThat(read)
                            .as(written.getKey())
                            .contains("errors 0 fixes 0 AC1009")
                            .doesNotContain("no layer");
                }
            }
        }
    }

    /** The leaf of a 47 1/2 in opening is 46 3/4 in wide, 1/2 and 1/4 in being left beside it. */
    @Test
    void ezdxfMeasuresTheGateInInches() throws Exception {
        FencePlan plan = withGate("Tür 45° \\U+0041");
        Path dxf = file("gate.dxf", Dxf.write(GateView.of(plan.gates().get(0)), Paper.LETTER));
        String read = readDxf(dxf, "GATE-FRAME");
        Matcher extents = Pattern.compile("extents ([0-9.]+) ([0-9.]+)").matcher(read);
        assertThat(extents.find()).isTrue();
        assertThat(Double.parseDouble(extents.group(1))).isEqualTo(46.75, within(1e-6));
        assertThat(read).contains("closed GATE-FRAME 4").contains("Gate: T\\xfcr 45\\xb0 \\\\U+0041");
    }

    @Test
    void ezdxfCountsTheBoards() throws Exception {
        FencePlan plan = withGate("walk gate");
        Path dxf = file("side.dxf", Dxf.write(ElevationView.of(plan, plan.runs().get(0)), Paper.A3));
        int boards = plan.stretches().stream()
                        .mapToInt(stretch ->
                                stretch.boards().orElseThrow().row(Face.OUTSIDE).count())
                        .sum()
                + plan.gates()
                        .get(0)
                        .leaves()
                        .get(0)
                        .boards()
                        .orElseThrow()
                        .row(Face.OUTSIDE)
                        .count();
        assertThat(readDxf(dxf, "POSTS")).contains("closed OUTSIDE-BOARDS " + boards + "\n");
    }

    /** At 254 dots to the inch a millimetre is ten dots. Sizes: Letter 279.4 x 215.9 mm, Tabloid 431.8 x 279.4 mm. */
    @Test
    void librsvgDrawsEveryPaperInItsTrueSize() throws Exception {
        OtherProgram rsvg = OtherProgram.named("rsvg-convert");
        rsvg.require("librsvg2-bin", "--version");
        Map<Paper, List<Integer>> sizes = Map.of(
                Paper.LETTER, List.of(2794, 2159),
                Paper.TABLOID, List.of(4318, 2794),
                Paper.A4, List.of(2970, 2100),
                Paper.A3, List.of(4200, 2970));
        for (Map.Entry<Paper, List<Integer>> size : sizes.entrySet()) {
            Map<String, String> files = BuildPacket.of(withGate("walk gate"))
                    .withPaper(size.getKey())
                    .files();
            Path svg = file("plan.svg", files.getOrDefault("plan.svg", ""));
            Path png = folder.resolve("plan.png");
            rsvg.run("-d", "254", "-p", "254", "-o", png.toString(), svg.toString());
            BufferedImage picture = ImageIO.read(png.toFile());
            assertThat(List.of(picture.getWidth(), picture.getHeight()))
                    .as("%s", size.getKey())
                    .isEqualTo(size.getValue());
        }
    }

    @Test
    void xmllintReadsEveryDrawingAndThePage() throws Exception {
        OtherProgram xmllint = OtherProgram.named("xmllint");
        xmllint.require("libxml2-utils", "--version");
        for (BuildPacket packet : packets().toList()) {
            for (Map.Entry<String, String> written : packet.files().entrySet()) {
                if (written.getKey().endsWith(".svg") || written.getKey().endsWith(".html")) {
                    Path file = file(written.getKey(), written.getValue());
                    assertThat(xmllint.run("--noout", "--nonet", file.toString()))
                            .isEmpty();
                }
            }
        }
    }

    /** Wide tables and drawings scroll in boxes of their own: the page itself never does, from 320 dots wide. */
    @Test
    void chromiumShowsThePageOnAPhoneAndADeskWithoutScrollingSideways() throws Exception {
        OtherProgram chromium = OtherProgram.named("chromium");
        chromium.require("chromium", "--version");
        for (BuildPacket packet : packets().toList()) {
            Path page = file("packet.html", packet.page());
            Path frames = file("frames.html", frames(Files.readString(page), 320, 390, 1280));
            String shown = chromium.run(OtherProgram.headless(folder, "--dump-dom", "file://" + frames));
            assertThat(shown)
                    .contains("data-result=\"320 over 0, 390 over 0, 1280 over 0; ")
                    .doesNotContain("boxes 0");
        }
    }

    @Test
    void chromiumPicturesThePageWithoutErrors() throws Exception {
        OtherProgram chromium = OtherProgram.named("chromium");
        chromium.require("chromium", "--version");
        Path page = file("packet.html", BuildPacket.of(withGate("walk gate")).page());
        Path png = folder.resolve("page.png");
        String said = chromium.run(OtherProgram.headless(
                folder, "--enable-logging=stderr", "--window-size=1280,900", "--screenshot=" + png, "file://" + page));
        assertThat(said).doesNotContain(":CONSOLE");
        BufferedImage picture = ImageIO.read(png.toFile());
        assertThat(picture.getWidth()).isEqualTo(1280);
        long dark = Stream.iterate(0, x -> x < 1280, x -> x + 1)
                .filter(x -> (picture.getRGB(x, 30) & 0xff) < 0x80)
                .count();
        assertThat(dark).as("letters of the heading").isPositive();
    }

    /**
     * With the style of paper in force, nothing is wider than what 12 mm of margin leave of A4 and Letter upright: 210 - 24 =
     * 186 mm are 703 dots of 1/96 in, and 215.9 - 24 = 191.9 mm are 725.
     */
    @Test
    void chromiumPrintsNoTableWiderThanThePaper() throws Exception {
        OtherProgram chromium = OtherProgram.named("chromium");
        chromium.require("chromium", "--version");
        for (BuildPacket packet : packets().toList()) {
            String onPaper = packet.page().replace("@media print {", "@media all {");
            Path frames = file("paper.html", frames(onPaper, 703, 725));
            String shown = chromium.run(OtherProgram.headless(folder, "--dump-dom", "file://" + frames));
            assertThat(shown).contains("data-result=\"703 over 0, 725 over 0; ");
        }
    }

    /** A page of the test's own that holds the packet in frames as wide as screens, and measures them. */
    private static String frames(String page, int... widths) {
        String held = page.replace("&", "&amp;").replace("\"", "&quot;");
        StringBuilder frames = new StringBuilder("<!DOCTYPE html><html><body>");
        for (int width : widths) {
            frames.append("<iframe style=\"border:0\" width=\"" + width + "\" height=\"800\" srcdoc=\"")
                    .append(held)
                    .append("\"></iframe>");
        }
        return frames.append("""
                        <script>
                        addEventListener('load', () => {
                          const frames = [...document.querySelectorAll('iframe')];
                          const over = frames.map(f => f.width + ' over '
                            + (f.contentDocument.documentElement.scrollWidth - Number(f.width)));
                          const boxes = frames[0].contentDocument.querySelectorAll('.box').length;
                          document.body.innerHTML = '';
                          document.body.dataset.result = over.join(', ') + '; boxes ' + boxes;
                        });
                        </script></body></html>
                        """).toString();
    }
}
