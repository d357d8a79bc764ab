package org.fencecore.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Plans;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page read back with a parser of its own: it is well-formed XML but for its first line. */
class PacketPageTest {

    static final String HOSTILE = "<script>alert('1')</script> & \"gate\" \u0007 ворота 門 &amp;";

    static BuildPacket packet(String gateName) {
        Site site = Plans.levelSide().gate(Plans.gate(gateName, 1, 12, 47.5)).build();
        return BuildPacket.of(FencePlanner.plan(site, FenceStyle.builder().build()));
    }

    /** A lot that does not close, by 10 ft. */
    static FencePlan blocked() {
        LotBoundary open = LotBoundary.of(
                List.of(Plans.course(0, 50), Plans.course(90, 40), Plans.course(180, 50), Plans.course(270, 30)));
        return FencePlanner.plan(
                Site.on(open).fenceOn(1).build(), FenceStyle.builder().build());
    }

    private static Document read(String page) throws Exception {
        assertThat(page).startsWith("<!DOCTYPE html>\n");
        return DocumentBuilderFactory.newDefaultNSInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page.substring(page.indexOf('\n') + 1))));
    }

    private static List<Element> elements(Document page, String name) {
        NodeList nodes = page.getElementsByTagNameNS("*", name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static List<String> texts(Document page, String name) {
        return elements(page, name).stream().map(Element::getTextContent).toList();
    }

    @Test
    void theSectionsComeInTheOrderOfTheWork() throws Exception {
        Document page = read(packet("walk gate").withJob("Miller's yard").page());
        assertThat(texts(page, "h1")).containsExactly("Fence packet: Miller's yard");
        assertThat(texts(page, "h2"))
                .containsExactly(
                        "Summary",
                        "1. Before anything else",
                        "2. Findings",
                        "Drawings",
                        "3. Strings and corners",
                        "4. Stakes",
                        "5. Posts and holes",
                        "6. Rails",
                        "7. Boards",
                        "8. Gates",
                        "9. To buy",
                        "10. Cut list",
                        "Worked calculations");
        assertThat(texts(page, "h3"))
                .contains("Fence plan", "Gate: walk gate")
                .anyMatch(title -> title.startsWith("Elevation of side 1"))
                .anyMatch(title -> title.startsWith("Board marks, post 4"));
    }

    /** Every link of the contents leads somewhere, and no address is given twice. */
    @Test
    void theContentsLeadToEachSection() throws Exception {
        Document page = read(packet("walk gate").page());
        List<String> sections = elements(page, "section").stream()
                .map(section -> "#" + section.getAttribute("id"))
                .toList();
        List<String> links = elements(page, "a").stream()
                .filter(link -> !link.getAttribute("class").equals("skip"))
                .map(link -> link.getAttribute("href"))
                .toList();
        assertThat(links).isEqualTo(sections).doesNotHaveDuplicates().hasSize(13);
    }

    @Test
    void tablesAndDrawingsTellWhatTheyAre() throws Exception {
        Document page = read(packet("walk gate").page());
        assertThat(elements(page, "html").get(0).getAttribute("lang")).isEqualTo("en");
        assertThat(elements(page, "th")).allMatch(head -> Set.of("col", "row").contains(head.getAttribute("scope")));
        assertThat(elements(page, "table")).isNotEmpty().allSatisfy(table -> {
            assertThat(table.getElementsByTagName("caption").getLength()).isEqualTo(1);
            assertThat(table.getElementsByTagName("thead").getLength()).isEqualTo(1);
            Element box = (Element) table.getParentNode();
            assertThat(box.getAttribute("class")).isEqualTo("box");
            assertThat(box.getAttribute("tabindex")).isEqualTo("0");
            assertThat(box.getAttribute("aria-label")).isNotBlank();
        });
        assertThat(elements(page, "svg")).isNotEmpty().allSatisfy(svg -> {
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            assertThat(svg.getElementsByTagNameNS("*", "title").item(0).getTextContent())
                    .isNotBlank();
            assertThat(svg.getElementsByTagNameNS("*", "desc").item(0).getTextContent())
                    .isNotBlank();
        });
        assertThat(elements(page, "details").size()).isGreaterThan(20);
    }

    @Test
    void nothingRunsAndNothingIsLoaded() throws Exception {
        BuildPacket hostile = packet(HOSTILE).withJob(HOSTILE);
        String text = hostile.page();
        assertThat(text).doesNotContain("<script", "<link", "<img", "<iframe", "url(", "@import", "javascript:");
        Document page = read(text);
        NodeList all = page.getElementsByTagNameNS("*", "*");
        Set<String> attributes = new HashSet<>();
        for (int i = 0; i < all.getLength(); i++) {
            for (int k = 0; k < all.item(i).getAttributes().getLength(); k++) {
                attributes.add(all.item(i).getAttributes().item(k).getNodeName());
            }
        }
        assertThat(attributes).doesNotContain("src", "style").noneMatch(name -> name.startsWith("on"));
        assertThat(texts(page, "h1"))
                .containsExactly("Fence packet: <script>alert('1')</script> & \"gate\" \uFFFD ворота 門 &amp;");
        assertThat(hostile.files().values()).noneMatch(file -> file.contains("\u0007"));
    }

    @Test
    void aPlanThatCannotBeBuiltIsDrawnAndSaysSo() throws Exception {
        Document page = read(BuildPacket.of(blocked()).page());
        assertThat(texts(page, "p"))
                .contains("THIS FENCE CANNOT BE BUILT AS DESCRIBED: see the findings marked BLOCKER.")
                .anyMatch(text -> text.startsWith("DO NOT BUILD"));
        assertThat(elements(page, "svg")).hasSize(1);
        assertThat(elements(page, "li"))
                .anyMatch(finding -> finding.getAttribute("class").equals("blocker")
                        && finding.getTextContent().contains("the courses do not close"));
    }

    /** The page says all that the sheet says, table by table and sentence by sentence. */
    @Test
    void thePageSaysWhatTheSheetSays() throws Exception {
        BuildPacket packet = packet("walk gate");
        String page = spaces(read(packet.page()).getDocumentElement().getTextContent());
        List<SheetText.Block> blocks = packet.sheet().contents().blocks();
        for (SheetText.Block block : blocks) {
            if (block instanceof SheetText.Tabled tabled) {
                tabled.table()
                        .rows()
                        .forEach(row -> row.forEach(cell -> assertThat(page).contains(spaces(cell))));
            } else if (block instanceof SheetText.Sentence sentence) {
                assertThat(page).contains(spaces(sentence.paragraph()));
            } else if (block instanceof SheetText.Found found) {
                assertThat(page).contains(spaces(found.rest()));
            }
        }
        assertThat(blocks).hasAtLeastOneElementOfType(SheetText.Tabled.class);
    }

    private static String spaces(String text) {
        return text.replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }
}
