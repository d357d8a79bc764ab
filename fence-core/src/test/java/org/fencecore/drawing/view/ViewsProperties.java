package org.fencecore.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fencecore.AnySite;
import org.fencecore.AnyStyle;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.sheet.Dxf;
import org.fencecore.drawing.sheet.DxfFile;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.drawing.sheet.Svg;
import org.fencecore.drawing.sheet.SvgSheet;
import org.fencecore.layout.Face;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;

/** Drawings of fences of every kind. */
class ViewsProperties {

    @Provide
    Arbitrary<Site> sites() {
        return AnySite.sites();
    }

    @Provide
    Arbitrary<FenceStyle> styles() {
        return AnyStyle.styles();
    }

    @Provide
    Arbitrary<Paper> papers() {
        return Arbitraries.of(Paper.LETTER, Paper.TABLOID, Paper.A4, Paper.A3);
    }

    private static List<Drawing> all(FencePlan plan) {
        List<Drawing> all = new ArrayList<>(List.of(PlanView.of(plan)));
        for (Run run : plan.runs()) {
            all.add(ElevationView.of(plan, run));
            all.addAll(ElevationView.sheets(plan, run, Length.ofFeet(30)));
            for (Stretch stretch : run.stretches()) {
                all.addAll(BoardMarksView.sheets(plan, run, stretch));
            }
        }
        plan.gates().forEach(gate -> all.add(GateView.of(gate)));
        return all;
    }

    /** Every drawing is on its paper, with nothing clipped and no words over others; and whole as a DXF. */
    @Property(tries = 60)
    void everyDrawingOfAnyFenceIsOnItsPaper(
            @ForAll("sites") Site site, @ForAll("styles") FenceStyle style, @ForAll("papers") Paper paper)
            throws Exception {
        for (Drawing drawing : all(FencePlanner.plan(site, style))) {
            SvgSheet sheet = SvgSheet.read(Svg.write(drawing, paper));
            assertThat(sheet.outside(paper.width().millimetres(), paper.height().millimetres()))
                    .as(drawing.title())
                    .isEmpty();
            assertThat(sheet.clashes()).as(drawing.title()).isEmpty();
            DxfFile file = DxfFile.read(Dxf.write(drawing, paper));
            file.assertWhole();
            file.assertWithinItsExtents();
        }
    }

    /** A run drawn whole has each board of its outside row and each of its posts once. */
    @Property(tries = 100)
    void anElevationHasEveryPostAndBoardOnce(@ForAll("sites") Site site, @ForAll("styles") FenceStyle style) {
        FencePlan plan = FencePlanner.plan(site, style);
        for (Run run : plan.runs()) {
            Drawing drawing = ElevationView.of(plan, run);
            int boards = run.stretches().stream()
                    .flatMap(stretch -> stretch.boards().stream())
                    .mapToInt(layout -> layout.row(Face.OUTSIDE).count())
                    .sum();
            assertThat(count(drawing, Layer.POSTS)).isEqualTo(run.posts().size());
            if (!style.boards().isHorizontal() && plan.gates().isEmpty()) {
                assertThat(count(drawing, Layer.OUTSIDE_BOARDS)).isEqualTo(boards);
            }
        }
    }

    private static long count(Drawing drawing, Layer layer) {
        return drawing.shapes().stream().filter(shape -> shape.layer() == layer).count();
    }
}
