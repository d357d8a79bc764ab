package org.fencecore.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.fencecore.FencePlan;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.SwingArc;
import org.fencecore.drawing.view.BackYard;
import org.fencecore.drawing.view.ElevationView;
import org.fencecore.drawing.view.PlanView;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** Other programs read these files in the packet's tests. */
class DxfTest {

    private static List<String> values(String dxf, int code) {
        return DxfFile.read(dxf).values(code);
    }

    private static Drawing stake() {
        return Drawing.titled("Stake")
                .add(Outline.rectangle(
                        Layer.POSTS, Length.ZERO, Length.ofInches(-1), Length.ofInches(2), Length.ofFeet(2)))
                .add(new SwingArc(
                        Layer.SWING,
                        Spot.of(Length.ZERO, Length.ZERO),
                        Spot.of(Length.ofInches(5), Length.ZERO),
                        Angle.ofDegrees(-90)))
                .build();
    }

    /** A reader must know the unit, and release 12 knows no LWPOLYLINE. */
    @Test
    void theHeaderNamesReleaseAndUnit() {
        assertThat(Dxf.write(stake(), Paper.LETTER))
                .contains("9\n$ACADVER\n1\nAC1009\n9\n$INSUNITS\n70\n1\n")
                .endsWith("0\nENDSEC\n0\nEOF\n");
        assertThat(Dxf.write(stake(), Paper.A4)).contains("9\n$INSUNITS\n70\n4\n");
        FencePlan plan = BackYard.sloping();
        assertThat(values(Dxf.write(ElevationView.of(plan, plan.runs().get(0)), Paper.LETTER), 0))
                .allMatch(Set.of(
                        "SECTION",
                        "ENDSEC",
                        "TABLE",
                        "ENDTAB",
                        "LTYPE",
                        "LAYER",
                        "STYLE",
                        "POLYLINE",
                        "VERTEX",
                        "SEQEND",
                        "LINE",
                        "CIRCLE",
                        "ARC",
                        "TEXT",
                        "EOF")::contains);
    }

    @Test
    void piecesHaveTheirRealSizeInInchesOrMillimetres() {
        String inches = Dxf.write(stake(), Paper.LETTER);
        assertThat(inches)
                .contains(("0|POLYLINE|8|POSTS|66|1|10|0|20|0|30|0|70|1|"
                                + "0|VERTEX|8|POSTS|10|0|20|-1|30|0|"
                                + "0|VERTEX|8|POSTS|10|2|20|-1|30|0|"
                                + "0|VERTEX|8|POSTS|10|2|20|24|30|0|"
                                + "0|VERTEX|8|POSTS|10|0|20|24|30|0|"
                                + "0|SEQEND|8|POSTS|")
                        .replace('|', '\n'));
        assertThat(Dxf.write(stake(), Paper.A4)).contains("10\n50.8\n20\n609.6\n");
    }

    /** Arcs run anticlockwise: one that swings a quarter turn clockwise from the east begins in the south. */
    @Test
    void anArcRunsAnticlockwiseFromItsLowerEnd() {
        assertThat(Dxf.write(stake(), Paper.LETTER))
                .contains("0\nARC\n8\nSWING\n10\n0\n20\n0\n30\n0\n40\n5\n50\n270\n51\n0\n");
    }

    @Test
    void lettersThatAreNotAsciiAndCodesInNamesAreWrittenAsText() {
        Drawing drawing = Drawing.titled("Größe 45° \\U+0041 100 %%d 🦌 \u0007")
                .caution("DO NOT BUILD: 1 problem")
                .build();
        String dxf = Dxf.write(drawing, Paper.LETTER);
        assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(dxf)).isTrue();
        assertThat(values(dxf, 1))
                .contains(
                        "Gr\\U+00F6\\U+00DFe 45%%d \\U+005CU+0041 100 %\\U+0025d \\U+FFFD \\U+FFFD",
                        "DO NOT BUILD: 1 problem");
    }

    @Test
    void everyWordOfTheSheetIsInTheFile() {
        FencePlan plan = BackYard.sloping();
        Drawing drawing = PlanView.of(plan);
        List<String> words = values(Dxf.write(drawing, Paper.LETTER), 1);
        for (int number = 1; number <= plan.posts().size(); number++) {
            assertThat(words).contains(Integer.toString(number));
        }
        assertThat(words).contains("Fence plan").anyMatch(text -> text.startsWith("side gate"));
    }

    @Test
    void theSameDrawingGivesTheSameBytes() {
        assertThat(Dxf.write(PlanView.of(BackYard.sloping()), Paper.TABLOID))
                .isEqualTo(Dxf.write(PlanView.of(BackYard.sloping()), Paper.TABLOID));
    }
}
