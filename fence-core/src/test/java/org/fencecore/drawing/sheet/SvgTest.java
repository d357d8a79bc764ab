package org.fencecore.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Run;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Lettering;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.view.BackYard;
import org.fencecore.drawing.view.ElevationView;
import org.fencecore.drawing.view.GateView;
import org.fencecore.drawing.view.PlanView;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class SvgTest {

    static List<Drawing> drawings() {
        FencePlan plan = BackYard.sloping();
        List<Drawing> drawings = new ArrayList<>();
        drawings.add(PlanView.of(plan));
        for (Run run : plan.runs()) {
            drawings.add(ElevationView.of(plan, run));
        }
        for (GateBay gate : plan.gates()) {
            drawings.add(GateView.of(gate));
        }
        return drawings;
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void everySheetOfTheYardIsLegibleAndWithinItsFrame(Drawing drawing) throws Exception {
        for (Paper paper : List.of(Paper.LETTER, Paper.TABLOID, Paper.A4, Paper.A3)) {
            SvgSheet sheet = SvgSheet.read(Svg.write(drawing, paper));

            assertThat(sheet.clashes()).isEmpty();
            assertThat(sheet.outside(paper.width().millimetres(), paper.height().millimetres()))
                    .isEmpty();
            assertThat(sheet.lettering())
                    .allSatisfy(line -> assertThat(line.size()).isGreaterThanOrEqualTo(2));
            assertThat(sheet.words()).noneMatch(words -> words.contains("left out"));
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void theSameDrawingGivesTheSameBytes(Drawing drawing) {
        assertThat(Svg.write(drawing, Paper.LETTER)).isEqualTo(Svg.write(drawing, Paper.LETTER));
    }

    @Test
    void anotherPlanOfTheSameYardGivesTheSameBytes() {
        List<String> once = drawings().stream()
                .map(drawing -> Svg.write(drawing, Paper.LETTER))
                .toList();
        List<String> again = drawings().stream()
                .map(drawing -> Svg.write(drawing, Paper.LETTER))
                .toList();

        assertThat(again).isEqualTo(once);
    }

    @Test
    void aSheetHasThePaperSizeAndNothingThatRunsOrLoads() throws Exception {
        String svg = Svg.write(PlanView.of(BackYard.sloping()), Paper.LETTER);
        Element root = SvgSheet.read(svg).root();

        assertThat(svg).startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg ");
        assertThat(root.getAttribute("width")).isEqualTo("279.4mm");
        assertThat(root.getAttribute("height")).isEqualTo("215.9mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 279.4 215.9");
        assertThat(svg).doesNotContain("<script", "<style", "<image", "<a ", "href", "<foreignObject");
        assertThat(svg).doesNotContainPattern(" on[a-z]+=");
    }

    @Test
    void aSheetTellsWhatItShowsToThoseWhoCannotSeeIt() throws Exception {
        FencePlan plan = BackYard.sloping();
        SvgSheet sheet =
                SvgSheet.read(Svg.write(ElevationView.of(plan, plan.runs().get(0)), Paper.LETTER));

        assertThat(sheet.root().getAttribute("role")).isEqualTo("img");
        assertThat(sheet.elements("", "title").get(0).getTextContent()).isEqualTo("Elevation of side 1");
        assertThat(sheet.elements("", "desc").get(0).getTextContent())
                .isEqualTo("Seen from outside the lot, looking west. The run begins at the right. 9 posts, 151 boards,"
                        + " 1 gate. Scale 1:96 (1/8\" = 1' 0\").");
    }

    /**
     * By hand: Letter is 279.4 mm wide, and the drawing stands in its middle at 139.7. Inside margin and padding 253.4 mm
     * are free. A panel 8 ft (2438.4 mm) long would be 304.8 mm at 1:8, too long, and is 203.2 mm at 1:12, from 38.1 to
     * 241.3.
     */
    @Test
    void aPanelIsDrawnAtTheLargestScaleThatFits() throws Exception {
        Drawing panel = Drawing.titled("Panel").add(rectangle(96, 24)).build();

        SvgSheet sheet = SvgSheet.read(Svg.write(panel, Paper.LETTER));
        Rectangle2D onPaper = SvgSheet.bounds(sheet.pieces("posts").get(0));

        assertThat(sheet.words()).contains("Scale 1:12 (1\" = 1' 0\")");
        assertThat(onPaper.getMinX()).isEqualTo(38.1, within(0.0006));
        assertThat(onPaper.getMaxX()).isEqualTo(241.3, within(0.0006));
        assertThat(onPaper.getHeight()).isEqualTo(50.8, within(0.0011));
    }

    /** The bar of a sheet at 1:12 is 1 ft long and so 25.4 mm, and says so. */
    @Test
    void theScaleBarIsTrue() throws Exception {
        SvgSheet sheet = SvgSheet.read(
                Svg.write(Drawing.titled("Panel").add(rectangle(96, 24)).build(), Paper.LETTER));
        List<Rectangle2D> bars = sheet.pieces("sheet-dimensions").stream()
                .map(SvgSheet::bounds)
                .filter(bounds -> bounds.getHeight() < 2)
                .toList();

        assertThat(bars).hasSize(1);
        assertThat(bars.get(0).getWidth()).isEqualTo(25.4, within(0.0011));
        assertThat(sheet.words()).contains("0", "1 ft", "Bar on paper: 1\".", "Print at 100 % on Letter.");
    }

    /** At 1:20 a panel 4 m long is 200 mm; at 1:10 it would be 400, longer than A4. */
    @Test
    void metricPaperTakesMetricScales() throws Exception {
        Drawing panel = Drawing.titled("Panel")
                .add(Outline.rectangle(Layer.POSTS, Length.ZERO, Length.ZERO, Length.ofMetres(4), Length.ofMetres(0.5)))
                .build();

        SvgSheet sheet = SvgSheet.read(Svg.write(panel, Paper.A4));

        assertThat(sheet.words()).contains("Scale 1:20", "1.0 m", "Bar on paper: 50.0 mm.");
        assertThat(SvgSheet.bounds(sheet.pieces("posts").get(0)).getWidth()).isEqualTo(200, within(0.0011));
    }

    @Test
    void namesInAnyScriptComeThroughAndMarkupIsText() throws Exception {
        String name = "<b> & \"木の門\" 'باب' 🚪 ]]>";

        SvgSheet sheet = SvgSheet.read(
                Svg.write(GateView.of(BackYard.sloping(name).gates().get(0)), Paper.TABLOID));

        assertThat(sheet.elements("", "title").get(0).getTextContent()).isEqualTo("Gate: " + name);
        assertThat(String.join(" ", sheet.words())).contains(name);
        assertThat(sheet.elements("", "b")).isEmpty();
    }

    @Test
    void whatXmlDoesNotAllowIsReplaced() throws Exception {
        String svg = Svg.write(
                Drawing.titled("a\u0000b\u001Bc\uD800d\uFFFEe\nf\tg\u0085").build(), Paper.LETTER);

        assertThat(SvgSheet.read(svg).words()).contains("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe f g\uFFFD");
    }

    @Test
    void labelsThatDoNotFitAreLeftOutAndCounted() throws Exception {
        Drawing.Builder crowd = Drawing.titled("Crowd").add(rectangle(96, 24));
        for (int i = 0; i < 3; i++) {
            crowd.add(Label.on(Spot.of(Length.ofInches(40), Length.ofInches(12)), "label " + i));
        }

        SvgSheet sheet = SvgSheet.read(Svg.write(crowd.build(), Paper.LETTER));

        assertThat(sheet.words()).contains("label 0").doesNotContain("label 1", "label 2");
        assertThat(String.join(" ", sheet.words())).contains("left out for lack of room: 2.");
    }

    @Test
    void aLabelInTheWayIsMovedFurtherTheSameWay() throws Exception {
        Spot place = Spot.of(Length.ofInches(40), Length.ofInches(24));
        Drawing drawing = Drawing.titled("Two labels")
                .add(rectangle(96, 24))
                .add(Label.beside(place, Angle.RIGHT, Length.ofMillimetres(2), "near"))
                .add(Label.beside(place, Angle.RIGHT, Length.ofMillimetres(2), "far"))
                .build();

        SvgSheet sheet = SvgSheet.read(Svg.write(drawing, Paper.LETTER));

        assertThat(top(sheet, "far")).isLessThan(top(sheet, "near"));
        assertThat(sheet.clashes()).isEmpty();
    }

    private static double top(SvgSheet sheet, String text) {
        Predicate<SvgSheet.Line> wanted = line -> line.text().equals(text);
        return sheet.lettering().stream()
                .filter(wanted)
                .findFirst()
                .orElseThrow()
                .room()
                .getBounds2D()
                .getMinY();
    }

    /** Writing is read from below or from the right, never upside down. */
    @Test
    void turnedLabelsStandUpright() throws Exception {
        Drawing.Builder turned = Drawing.titled("Turned").add(rectangle(96, 96));
        for (int i = 0; i < 8; i++) {
            turned.add(Label.on(Spot.of(Length.ofInches(12 * i), Length.ofInches(12 * i)), "turned")
                    .withTurn(Angle.ofDegrees(45 * i)));
        }

        SvgSheet sheet = SvgSheet.read(Svg.write(turned.build(), Paper.LETTER));
        List<Double> turns = sheet.elements("lettering", "text").stream()
                .map(text -> text.getAttribute("transform"))
                .filter(transform -> !transform.isEmpty())
                .map(transform -> Double.valueOf(transform.replaceAll("rotate\\(| .*", "")))
                .toList();

        assertThat(turns).containsExactly(-45.0, -90.0, 45.0, -45.0, -90.0, 45.0);
    }

    @Test
    void aCautionStandsAboveTheNotesAndInTheDescription() throws Exception {
        Drawing drawing = Drawing.titled("Panel")
                .description("A panel.")
                .caution("DO NOT BUILD.")
                .add(rectangle(96, 24))
                .note("A note.")
                .build();

        SvgSheet sheet = SvgSheet.read(Svg.write(drawing, Paper.LETTER));

        assertThat(sheet.words()).containsSubsequence("Panel", "DO NOT BUILD.", "A panel.", "A note.");
        assertThat(sheet.elements("", "desc").get(0).getTextContent()).startsWith("DO NOT BUILD. A panel.");
    }

    @Test
    void moreNotesThanASheetHoldsAreCutAndItSaysSo() throws Exception {
        Drawing.Builder drawing = Drawing.titled("Panel").add(rectangle(96, 24));
        for (int i = 0; i < 100; i++) {
            drawing.note("note " + i);
        }

        SvgSheet sheet = SvgSheet.read(Svg.write(drawing.build(), Paper.LETTER));

        assertThat(sheet.words())
                .contains("note 0", "More than this sheet has room for.")
                .doesNotContain("note 99");
    }

    /** 60 lines of 3.9 mm are 235 mm; the sheet is 216 mm high. */
    @Test
    void aKeyThatTheStripCannotHoldIsRefusedAlsoWithoutADrawing() {
        Drawing.Builder drawing = Drawing.titled("Key alone");
        for (int i = 0; i < 60; i++) {
            drawing.key(Layer.POSTS, "post " + i);
        }

        assertThatThrownBy(() -> Svg.write(drawing.build(), Paper.LETTER))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'Key alone' does not fit on Letter");
    }

    @Test
    void letteringLargerThanThePaperIsRefused() {
        Drawing drawing = Drawing.titled("Banner")
                .add(Label.on(Spot.of(Length.ZERO, Length.ZERO), "W".repeat(60)).withLettering(Lettering.TITLE))
                .build();

        assertThatThrownBy(() -> Svg.write(drawing, Paper.LETTER))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'Banner' does not fit on Letter")
                .hasMessageContaining("shorten its labels");
    }

    @Test
    void aDrawingWithoutPartsIsASheetOfNotes() throws Exception {
        SvgSheet sheet = SvgSheet.read(
                Svg.write(Drawing.titled("Nothing").note("Nothing to show.").build(), Paper.A4));

        assertThat(sheet.words()).containsExactly("Nothing", "Nothing to show.");
    }

    private static Outline rectangle(double widthInInches, double heightInInches) {
        return Outline.rectangle(
                Layer.POSTS, Length.ZERO, Length.ZERO, Length.ofInches(widthInInches), Length.ofInches(heightInInches));
    }
}
