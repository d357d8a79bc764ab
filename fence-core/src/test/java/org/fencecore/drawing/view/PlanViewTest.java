package org.fencecore.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.GateBay;
import org.fencecore.Plans;
import org.fencecore.PostKind;
import org.fencecore.Run;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Mark;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Shape;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.SwingArc;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.drawing.sheet.Svg;
import org.fencecore.drawing.sheet.SvgSheet;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.rules.CornerVisibility;
import org.fencecore.rules.HeightLimit;
import org.fencecore.rules.LocalRules;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.junit.jupiter.api.Test;

class PlanViewTest {

    private static <T extends Shape> List<T> shapes(Drawing drawing, Class<T> type) {
        return drawing.shapes().stream()
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }

    @Test
    void everyPostIsMarkedByKindAndNumbered() throws Exception {
        FencePlan plan = BackYard.sloping();
        Drawing drawing = PlanView.of(plan);
        SvgSheet sheet = SvgSheet.read(Svg.write(drawing, Paper.LETTER));

        assertThat(shapes(drawing, Mark.class)).hasSameSizeAs(plan.posts());
        long linePosts = plan.posts().stream()
                .filter(post -> post.kind() == PostKind.LINE)
                .count();
        assertThat(sheet.elements("post-marks", "circle")).hasSize((int) linePosts);
        assertThat(sheet.pieces("post-marks")).hasSize(plan.posts().size() - (int) linePosts);
        assertThat(sheet.words())
                .containsAll(plan.posts().stream()
                        .map(post -> Integer.toString(post.number()))
                        .toList());
        assertThat(sheet.words()).contains("corner post", "end post", "gate post", "line post");
    }

    @Test
    void sidesStringsAndGatesAreNamed() throws Exception {
        SvgSheet sheet = SvgSheet.read(Svg.write(PlanView.of(BackYard.sloping()), Paper.LETTER));

        // The string of side 2 is 66 ft less 6 in at both ends.
        assertThat(sheet.words())
                .contains("side 1: S 2°15' W, 58.40 ft", "side 4: S 87°45' E, 66.00 ft", "string 65' 0\"")
                .contains("side gate, 3' 6\" clear", "garden gate, 3' 11 1/2\" clear", "N")
                .contains("Strings run 6\" inside the boundary.", "Gates are drawn swinging into the lot.");
    }

    /**
     * By hand, in inches from the first corner: posts stand 7.75 inside, so the run's station 0 is 7.75 east and
     * north. The opening of 36 is centred 10 ft along, from 102 to 138 east. Hung left as seen from the south, the
     * leaf turns about 102.5, and opens 35.25 north; its latch edge comes from 137.75.
     */
    @Test
    void aGateSwingsIntoTheLotFromItsHinges() {
        LotBoundary lot = LotBoundary.of(List.of(
                BackYard.course("N 90° E", 30),
                BackYard.course("N 0° E", 20),
                BackYard.course("N 90° W", 30),
                BackYard.course("S 0° E", 20)));
        Site site = Site.on(lot)
                .fenceOn(1)
                .ground(1, BackYard.feet(0, 10, 30, 10))
                .gate(BackYard.gate("gate", 1, 10, 36).build())
                .build();
        FencePlan plan = FencePlanner.plan(site, FenceStyle.builder().build());

        SwingArc arc = shapes(PlanView.of(plan), SwingArc.class).get(0);
        Line leaf = shapes(PlanView.of(plan), Line.class).stream()
                .filter(line -> line.layer() == Layer.SWING)
                .findFirst()
                .orElseThrow();

        assertThat(arc.hinge()).isEqualTo(inches(102.5, 7.75));
        assertThat(arc.start()).isEqualTo(inches(137.75, 7.75));
        assertThat(arc.turn().degrees()).isEqualTo(90);
        assertThat(leaf.spots()).containsExactly(inches(102.5, 7.75), inches(102.5, 43));
    }

    /** Whichever way the lot is gone round and the gate is hung, the open leaf stands in the lot. */
    @Test
    void openLeavesStandInTheLotAndArcsEndThere() {
        FencePlan plan = BackYard.sloping();
        Drawing drawing = PlanView.of(plan);
        List<SwingArc> arcs = shapes(drawing, SwingArc.class);
        List<Line> leaves = shapes(drawing, Line.class).stream()
                .filter(line -> line.layer() == Layer.SWING)
                .toList();

        assertThat(arcs).hasSize(2);
        for (int gate = 0; gate < arcs.size(); gate++) {
            Spot open = leaves.get(gate).spots().get(1);
            assertThat(plan.site().lot().outline().orElseThrow().contains(Point.of(open.across(), open.up())))
                    .isTrue();
            assertThat(end(arcs.get(gate)).distanceTo(Point.of(open.across(), open.up())))
                    .isLessThan(Length.ofMillimetres(0.001));
        }
        // The side gate hangs on the right as seen from the east: on its northern post, where the run going south
        // begins.
        Run east = plan.runs().get(0);
        GateBay gate = east.gates().get(0);
        assertThat(gate.leaf().hingeSide()).isEqualTo(HingeSide.RIGHT);
        assertThat(arcs.get(0).hinge())
                .isEqualTo(
                        Spot.of(east.postLine().pointAt(gate.opening().start().plus(Length.ofInches(0.5)))));
    }

    /**
     * The street runs along the south side of the lot, and its rule holds to 25 ft either side of it: one edge is 25 ft
     * north of it, as far as the sheet goes, 10 ft past the lot, and the other one off the sheet. The triangle at the corner has legs of 20 and 10 ft. What holds
     * everywhere has no edge.
     */
    @Test
    void zonesOfTheRulesAreDrawnByTheirEdges() {
        Citation town = Citation.of("invented town code", "1", "");
        Polyline street = Polyline.of(List.of(feet(-100, 0), feet(200, 0)));
        Corner corner = Corner.of(feet(0, 0), Bearing.SOUTH, Bearing.EAST, Side.LEFT);
        FencePlan plan = FencePlanner.plan(
                Plans.levelSide()
                        .rules(LocalRules.of(List.of(
                                HeightLimit.of(
                                        Zone.along(street, Length.ofFeet(25)), Length.ofFeet(4), "front yard", town),
                                HeightLimit.permitOver(Zone.everywhere(), Length.ofFeet(6), "permit", town),
                                CornerVisibility.of(
                                        corner,
                                        Length.ofFeet(20),
                                        Length.ofFeet(10),
                                        Length.ofFeet(3),
                                        "open corner",
                                        town))))
                        .build(),
                FenceStyle.builder().build());
        Polygon lot = plan.site().lot().outline().orElseThrow();

        Drawing drawing = PlanView.of(plan);

        List<Line> edges = shapes(drawing, Line.class).stream()
                .filter(line -> line.layer() == Layer.ZONES)
                .toList();
        assertThat(edges).hasSize(1);
        assertThat(edges.get(0).spots()).extracting(spot -> spot.up().feet()).containsExactly(25.0, 25.0);
        double west = lot.vertices().stream()
                .mapToDouble(vertex -> vertex.east().feet())
                .min()
                .orElseThrow();
        assertThat(edges.get(0).spots().get(0).across().feet()).isEqualTo(west - 10);
        List<Outline> triangles = shapes(drawing, Outline.class).stream()
                .filter(outline -> outline.layer() == Layer.ZONES)
                .toList();
        assertThat(triangles).hasSize(1);
        assertThat(triangles.get(0).corners())
                .contains(Spot.of(feet(0, 0)), Spot.of(feet(10, 0)), Spot.of(feet(0, 20)));
        assertThat(shapes(drawing, Label.class).stream().map(Label::text))
                .contains("front yard", "open corner")
                .doesNotContain("permit");
    }

    private static Point feet(double east, double north) {
        return Point.of(Length.ofFeet(east), Length.ofFeet(north));
    }

    /** Where an arc ends, turned with plain trigonometry. */
    private static Point end(SwingArc arc) {
        double dx = arc.start().across().minus(arc.hinge().across()).metres();
        double dy = arc.start().up().minus(arc.hinge().up()).metres();
        double turn = arc.turn().radians();
        return Point.of(
                arc.hinge().across().plus(Length.ofMetres(dx * Math.cos(turn) - dy * Math.sin(turn))),
                arc.hinge().up().plus(Length.ofMetres(dx * Math.sin(turn) + dy * Math.cos(turn))));
    }

    private static Spot inches(double east, double north) {
        return Spot.of(Length.ofInches(east), Length.ofInches(north));
    }

    @Test
    void aLotThatDoesNotCloseIsASheetThatSaysSo() throws Exception {
        LotBoundary open = LotBoundary.of(
                List.of(BackYard.course("N 90° E", 60), BackYard.course("N 0° E", 50), BackYard.course("N 90° W", 40)));
        FencePlan plan = FencePlanner.plan(
                Site.on(open).fenceOn(1).build(), FenceStyle.builder().build());

        SvgSheet sheet = SvgSheet.read(Svg.write(PlanView.of(plan), Paper.LETTER));

        assertThat(String.join(" ", sheet.words())).contains("DO NOT BUILD: 1 problem to settle first.");
        assertThat(sheet.pieces("boundary")).isEmpty();
    }

    @Test
    void theLinesOfThePackageWork() {
        FencePlan plan = BackYard.sloping();

        Drawing lot = PlanView.of(plan);
        Drawing side = ElevationView.of(plan, plan.runs().get(0));
        Drawing gate = GateView.of(plan.gates().get(0));
        String svg = Svg.write(side, Paper.LETTER);

        assertThat(lot).hasToString("Fence plan");
        assertThat(side).hasToString("Elevation of side 1");
        assertThat(gate).hasToString("Gate: side gate");
        assertThat(svg).contains("<svg ").endsWith("</svg>\n");
    }
}
