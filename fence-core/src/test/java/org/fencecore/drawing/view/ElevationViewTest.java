package org.fencecore.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.fencecore.BoardAtPost;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.GateBay;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.drawing.sheet.Svg;
import org.fencecore.drawing.sheet.SvgSheet;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.Face;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class ElevationViewTest {

    private static List<Outline> pieces(Drawing drawing, Layer layer) {
        return drawing.shapes().stream()
                .filter(shape -> shape.layer() == layer)
                .filter(Outline.class::isInstance)
                .map(Outline.class::cast)
                .toList();
    }

    private static Outline inches(Layer layer, double left, double bottom, double right, double top) {
        return Outline.rectangle(
                layer, Length.ofInches(left), Length.ofInches(bottom), Length.ofInches(right), Length.ofInches(top));
    }

    /**
     * By hand, in inches: a 24 ft side, strings 6 in inside and posts 3 1/2 in square, leaves 288 - 2 x 7.75 = 272.5
     * between the outer posts' centres. Level ground is at 10 ft = 120, board bottoms 2 above, boards 72 long. Boards
     * reach from post edge to post edge, 276: with n boards the gap is (276 - 5.5 n) / (n - 1), nearest 3 1/2 at
     * n = 31, where it is 105.5 / 30 = 3.51667. Posts stand 74 out of the ground and at least half of that, 37, in it,
     * on 6 of gravel, in holes 10 1/2 wide.
     */
    @Test
    void aLevelRunIsWhatItIsByHand() {
        FencePlan plan = BackYard.level(24);
        Drawing drawing = ElevationView.of(plan, plan.runs().get(0));

        List<Outline> outside = pieces(drawing, Layer.OUTSIDE_BOARDS);
        assertThat(outside).hasSize(31);
        assertThat(pieces(drawing, Layer.INSIDE_BOARDS)).hasSize(30);
        assertThat(outside.get(0)).isEqualTo(inches(Layer.OUTSIDE_BOARDS, -1.75, 122, 3.75, 194));
        assertThat(outside.get(1).corners().get(0).across().inches()).isEqualTo(3.75 + 105.5 / 30, within(1e-6));
        // Inside board 10 lies behind gap 10, its middle at 5.50833 + 9 x 9.01667, from 83.90833 to 89.40833. The
        // second
        // post's body begins at 90.83333 - 1.75 = 89.08333, so the board is ripped to there.
        assertThat(pieces(drawing, Layer.INSIDE_BOARDS)).anySatisfy(strip -> {
            assertThat(strip.corners().get(0).across().inches()).isEqualTo(83.90833, within(1e-4));
            assertThat(strip.corners().get(1).across().inches()).isEqualTo(89.08333, within(1e-4));
        });
        assertThat(outside.get(30)).isEqualTo(inches(Layer.OUTSIDE_BOARDS, 268.75, 122, 274.25, 194));
        assertThat(pieces(drawing, Layer.POSTS)).hasSize(4).contains(inches(Layer.POSTS, -1.75, 83, 1.75, 194));
        assertThat(pieces(drawing, Layer.CONCRETE)).contains(inches(Layer.CONCRETE, -5.25, 83, 5.25, 120));
        assertThat(pieces(drawing, Layer.GRAVEL)).contains(inches(Layer.GRAVEL, -5.25, 77, 5.25, 83));
        // Three rails over three bays in two pieces each; the first reach back to the post's edge, and the bottom one
        // lies 4 in up the boards.
        assertThat(pieces(drawing, Layer.RAILS)).hasSize(6);
        Spot start = pieces(drawing, Layer.RAILS).get(0).corners().get(0);
        assertThat(start.across().inches()).isEqualTo(-1.75, within(1e-6));
        assertThat(start.up().inches()).isEqualTo(126, within(1e-6));
    }

    /** The first and last board's left edges are 270 1/2 in apart, 71.569 mm on paper at 1:96; boards are 19.05 high. */
    @Test
    void onPaperItIsThatManyTimesSmaller() throws Exception {
        FencePlan plan = BackYard.level(24);
        SvgSheet sheet =
                SvgSheet.read(Svg.write(ElevationView.of(plan, plan.runs().get(0)), Paper.LETTER));
        String scale = sheet.words().stream()
                .filter(words -> words.startsWith("Scale 1:"))
                .findFirst()
                .orElseThrow();
        double denominator = Double.parseDouble(scale.replaceAll("Scale 1:| .*", ""));

        Rectangle2D first = SvgSheet.bounds(sheet.pieces("outside-boards").get(0));
        Rectangle2D last = SvgSheet.bounds(sheet.pieces("outside-boards").get(30));
        Rectangle2D post = SvgSheet.bounds(sheet.pieces("posts").get(0));

        assertThat(last.getMinX() - first.getMinX()).isEqualTo(270.5 * 25.4 / denominator, within(0.0011));
        assertThat(first.getHeight()).isEqualTo(72 * 25.4 / denominator, within(0.0011));
        assertThat(first.getWidth()).isEqualTo(5.5 * 25.4 / denominator, within(0.0011));
        assertThat(post.getHeight()).isEqualTo(111 * 25.4 / denominator, within(0.0011));
        assertThat(first.getMinX()).isEqualTo(post.getMinX(), within(0.0011));
    }

    @Test
    void everyBoardAndPostOfTheYardIsDrawnOnce() throws Exception {
        FencePlan plan = BackYard.sloping();
        for (Run run : plan.runs()) {
            SvgSheet sheet = SvgSheet.read(Svg.write(ElevationView.of(plan, run), Paper.LETTER));

            assertThat(sheet.pieces("outside-boards")).hasSize(boards(run, Face.OUTSIDE));
            assertThat(sheet.pieces("inside-boards")).hasSize(boards(run, Face.INSIDE));
            assertThat(sheet.pieces("posts")).hasSameSizeAs(run.posts());
            assertThat(sheet.pieces("gate-brace")).hasSameSizeAs(run.gates());
            assertThat(sheet.words())
                    .containsAll(run.gates().stream().map(GateBay::name).toList());
        }
    }

    private static int boards(Run run, Face face) {
        int boards = 0;
        for (Stretch stretch : run.stretches()) {
            boards += stretch.boards().orElseThrow().row(face).count();
            if (face == Face.INSIDE) {
                for (BoardAtPost met : stretch.boardsAtPosts()) {
                    int strips = (met.before().isZero() ? 0 : 1) + (met.after().isZero() ? 0 : 1);
                    boards += strips - 1;
                }
            }
        }
        for (GateBay gate : run.gates()) {
            boards += gate.leaves().get(0).boards().orElseThrow().row(face).count();
        }
        return boards;
    }

    /** Going south on the east side the lot is on the right hand, so from outside the run begins at the right. */
    @Test
    void theReaderStandsOutside() {
        FencePlan turned = BackYard.sloping();
        FencePlan straight = BackYard.level(24);

        Drawing east = ElevationView.of(turned, turned.runs().get(0));
        Drawing south = ElevationView.of(straight, straight.runs().get(0));

        assertThat(east.description()).contains("looking west. The run begins at the right.");
        assertThat(south.description()).contains("looking north. The run begins at the left.");
        Run run = turned.runs().get(0);
        assertThat(pieces(east, Layer.POSTS).get(0).corners())
                .extracting(Spot::across)
                .containsOnly(
                        run.length().minus(Length.ofInches(1.75)), run.length().plus(Length.ofInches(1.75)));
    }

    /** Seen from outside the hinges are on the right, where the owner wanted them, though the drawing is turned. */
    @Test
    void aGateHangsOnItsHingeSide() {
        FencePlan plan = BackYard.sloping();
        Run run = plan.runs().get(0);
        GateBay gate = run.gates().get(0);
        Drawing drawing = ElevationView.of(plan, run);

        List<Spot> brace = pieces(drawing, Layer.GATE_BRACE).get(0).corners();
        Length openingLeft = run.length().minus(gate.opening().end());

        // A brace stands on the hinge side: its foot is on the right and its head, the fourth corner, on the left.
        assertThat(brace.get(0).across()).isGreaterThan(brace.get(3).across());
        assertThat(brace.get(0).up()).isLessThan(brace.get(3).up());
        // The latch gap of 1/4 in is on the left.
        assertThat(pieces(drawing, Layer.GATE_FRAME).get(1).corners().get(0).across())
                .isEqualTo(openingLeft.plus(Length.ofInches(0.25)));
    }

    @Test
    void theTableSaysWhatThePlanSays() throws Exception {
        FencePlan plan = BackYard.level(24);
        SvgSheet sheet =
                SvgSheet.read(Svg.write(ElevationView.of(plan, plan.runs().get(0)), Paper.LETTER));

        // 272 1/2 in over 3 bays is 90.8333 in; boards as worked out by hand above.
        assertThat(sheet.words())
                .contains("centre to centre", "7' 6 13/16\"", "from post 1", "15' 1 11/16\"", "22' 8 1/2\"")
                .contains("post above ground", "6' 2\"", "depth of hole", "3' 7\"", "gap under boards", "2\"")
                .contains("boards outside + inside", "31 + 30", "space between, about", "3 1/2\"")
                .contains("frost, 2'\u00a00\" deep");
    }

    /** Boards set side by side with less than half of 1/16 in between them have no space worth a row. */
    @Test
    void boardsSideBySideHaveNoRowOfSpaces() throws Exception {
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .build();
        FencePlan plan = FencePlanner.plan(BackYard.sloping().site(), style);
        SvgSheet sheet =
                SvgSheet.read(Svg.write(ElevationView.of(plan, plan.runs().get(1)), Paper.LETTER));

        assertThat(sheet.words()).contains("boards").noneMatch(words -> words.startsWith("space between"));
        assertThat(sheet.words()).doesNotContain("board, inside face");
    }

    @Test
    void battensAreDrawnOverTheBoards() throws Exception {
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.boardAndBatten(Length.ofInches(5.5), Length.ofInches(2.5)))
                .build();
        FencePlan plan = FencePlanner.plan(BackYard.sloping().site(), style);
        Run run = plan.runs().get(1);
        Drawing drawing = ElevationView.of(plan, run);

        assertThat(pieces(drawing, Layer.COVER_BOARDS)).hasSize(boards(run, Face.COVER));
        assertThat(pieces(drawing, Layer.COVER_BOARDS).size()).isGreaterThan(10);
        assertThat(pieces(drawing, Layer.INSIDE_BOARDS)).isEmpty();
        assertThat(SvgSheet.read(Svg.write(drawing, Paper.LETTER)).words())
                .contains("boards + over the gaps", "over the gaps, outside face");
    }

    /** 13,000 ft take about 13,000 x 12 / 9 x 2 = 34,700 boards, over the limit. */
    @Test
    void tooManyBoardsAreDrawnBayByBay() throws Exception {
        FencePlan plan = BackYard.level(13_000);
        Run run = plan.runs().get(0);
        assertThat(plan.boardCount()).isGreaterThan(ElevationView.MOST_BOARDS);

        Drawing drawing = ElevationView.of(plan, run);

        assertThat(pieces(drawing, Layer.OUTSIDE_BOARDS)).hasSameSizeAs(plan.bays());
        assertThat(pieces(drawing, Layer.INSIDE_BOARDS)).isEmpty();
        assertThat(drawing.notes()).contains("Boards are drawn bay by bay: over 20000 are not drawn one by one.");
        assertThat(SvgSheet.read(Svg.write(drawing, Paper.LETTER)).outside(279.4, 215.9))
                .isEmpty();
    }

    @Test
    void aFenceTooLongForOneDrawingIsRefused() {
        FencePlan plan = BackYard.level(85_000);

        assertThatThrownBy(() -> ElevationView.of(plan, plan.runs().get(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("up to 10000: plan the fence in parts");
        assertThatThrownBy(() -> PlanView.of(plan))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("up to 10000: plan the fence in parts");
    }

    @Test
    void aRunOfAnotherPlanIsRefused() {
        FencePlan plan = BackYard.level(24);
        Run other = BackYard.level(24).runs().get(0);

        assertThatThrownBy(() -> ElevationView.of(plan, other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("run was side 1 of another plan");
    }

    @Test
    void whatFitsIsNotBroken() {
        FencePlan plan = BackYard.level(24);
        Run run = plan.runs().get(0);
        assertThat(ElevationView.sheets(plan, run, Length.ofFeet(32)))
                .singleElement()
                .satisfies(sheet -> assertThat(sheet.shapes())
                        .isEqualTo(ElevationView.of(plan, run).shapes()));
        assertThatThrownBy(() -> ElevationView.sheets(plan, run, Length.ofInches(11)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("longest was")
                .hasMessageContaining("1 ft or more");
    }
}
