package org.fencecore.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import org.fencecore.EqualValues;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.WorkLine;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

/**
 * One gate worked by hand, then the classes asked for the same (gaps, frame and middle rail: common practice, no
 * source; the rest is right triangles).
 *
 * <pre>
 * Opening 47 1/2, hinged left, gaps 1/2 at the hinges and 1/4 at the latch; frame 56 high of 3 1/2 in lumber,
 * with a middle rail; braces 3 1/2 wide. All in inches.
 *
 * leaf            47 1/2 - 1/2 - 1/4                      = 46 3/4
 * stiles          2 of                                      56
 * rails           3 of 46 3/4 - 2 x 3 1/2                 = 39 3/4
 * middle rail     centre at 56 / 2                        = 28      so from 26 1/4 to 29 3/4
 * clear heights   26 1/4 - 3 1/2 = 22 3/4 below,  56 - 3 1/2 - 29 3/4 = 22 3/4 above
 * diagonal        sqrt(46.75^2 + 56^2) = sqrt(5321.5625)  = 72.9490
 *
 * brace           W = 39.75, H = 22.75, b = 3.5, from the hinge stile up to the latch stile in each half
 * length          sqrt(39.75^2 + 22.75^2) = sqrt(2097.625) = 45.7998
 * rise            atan(22.75 in / 39.75 in) = atan(0.572327)    = 29.784 deg, under 45: a warning
 * cuts            against the rail 90 - 29.784            = 60.216 deg off square, against the stile 29.784
 * bearing         on the rail b L / 2H = 160.2994 / 45.5  = 3.5231, on the stile b L / 2W = 160.2994 / 79.5 = 2.0163
 * edges           45.7998 - 1.75 x (39.75/22.75 + 22.75/39.75) = 45.7998 - 1.75 x 2.319576 = 41.7406
 *
 * Without the middle rail one brace would rise atan(49 / 39.75) = 50.95 deg.
 * </pre>
 */
class GateLeafTest {

    private static final GateSpec WITH_MIDDLE_RAIL =
            GateSpec.builder().middleRail(true).build();
    private static final GateLeaf GATE = leaf(inches(47.5), inches(56), HingeSide.LEFT, WITH_MIDDLE_RAIL);

    private static GateLeaf leaf(Length clearOpening, Length frameHeight, HingeSide hingeSide, GateSpec spec) {
        return GateDesign.forOpening(clearOpening, frameHeight, hingeSide, spec).activeLeaf();
    }

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static Interval inches(double from, double to) {
        return Interval.of(inches(from), inches(to));
    }

    @Test
    void theLeafIsTheOpeningLessBothGaps() {
        assertThat(GATE.width()).isEqualTo(inches(46.75));
        assertThat(GATE.frameHeight()).isEqualTo(inches(56));
        assertThat(GATE.diagonal().inches()).isCloseTo(72.9490, within(0.0001));
    }

    @Test
    void everyPieceOfTheFrameHasItsLengthAndPlace() {
        assertThat(GATE.pieces())
                .extracting(FramePiece::member, FramePiece::length, FramePiece::across, FramePiece::up)
                .containsExactly(
                        tuple(FrameMember.HINGE_STILE, inches(56), inches(0, 3.5), inches(0, 56)),
                        tuple(FrameMember.LATCH_STILE, inches(56), inches(43.25, 46.75), inches(0, 56)),
                        tuple(FrameMember.BOTTOM_RAIL, inches(39.75), inches(3.5, 43.25), inches(0, 3.5)),
                        tuple(FrameMember.MIDDLE_RAIL, inches(39.75), inches(3.5, 43.25), inches(26.25, 29.75)),
                        tuple(FrameMember.TOP_RAIL, inches(39.75), inches(3.5, 43.25), inches(52.5, 56)));
        assertThat(GATE.pieces()).allSatisfy(piece -> {
            assertThat(piece.width()).isEqualTo(inches(3.5));
            assertThat(piece.thickness()).isEqualTo(inches(1.5));
            assertThat(piece.firstCut()).isEqualTo(Angle.ZERO);
            assertThat(piece.otherCut()).isEqualTo(Angle.ZERO);
        });
        assertThat(GATE.middleRailCentre()).contains(inches(28));
        assertThat(GATE.clearWidth()).isEqualTo(inches(39.75));
        assertThat(GATE.clearHeights()).containsExactly(inches(22.75), inches(22.75));
    }

    @Test
    void eachHalfHasABraceThatRisesAwayFromTheHinges() {
        assertThat(GATE.braces())
                .extracting(GateBrace::foot, GateBrace::head, GateBrace::across, GateBrace::up)
                .containsExactly(
                        tuple(
                                new FrameCorner(FrameMember.BOTTOM_RAIL, FrameMember.HINGE_STILE),
                                new FrameCorner(FrameMember.MIDDLE_RAIL, FrameMember.LATCH_STILE),
                                inches(3.5, 43.25),
                                inches(3.5, 26.25)),
                        tuple(
                                new FrameCorner(FrameMember.MIDDLE_RAIL, FrameMember.HINGE_STILE),
                                new FrameCorner(FrameMember.TOP_RAIL, FrameMember.LATCH_STILE),
                                inches(3.5, 43.25),
                                inches(29.75, 52.5)));
    }

    @Test
    void bothBracesAreCutAsWorkedByHand() {
        assertThat(GATE.braces()).hasSize(2).allSatisfy(brace -> {
            assertThat(brace.length().inches()).isCloseTo(45.7998, within(0.0001));
            assertThat(brace.rise().degrees()).isCloseTo(29.784, within(0.001));
            assertThat(brace.railCut().orElseThrow().degrees()).isCloseTo(60.216, within(0.001));
            assertThat(brace.stileCut().orElseThrow().degrees()).isCloseTo(29.784, within(0.001));
            assertThat(brace.railBearing().inches()).isCloseTo(3.5231, within(0.0001));
            assertThat(brace.stileBearing().inches()).isCloseTo(2.0163, within(0.0001));
            assertThat(brace.edgeLength().inches()).isCloseTo(41.7406, within(0.0001));
            assertThat(brace.width()).isEqualTo(inches(3.5));
            assertThat(brace.thickness()).isEqualTo(inches(1.5));
        });
    }

    @Test
    void withoutAMiddleRailOneBraceCrossesTheWholeFrame() {
        GateLeaf gate = leaf(
                inches(47.5), inches(56), HingeSide.RIGHT, GateSpec.builder().build());

        assertThat(gate.middleRailCentre()).isEmpty();
        assertThat(gate.clearHeights()).containsExactly(inches(49));
        assertThat(gate.pieces())
                .extracting(FramePiece::member)
                .containsExactly(
                        FrameMember.HINGE_STILE,
                        FrameMember.LATCH_STILE,
                        FrameMember.BOTTOM_RAIL,
                        FrameMember.TOP_RAIL);
        assertThat(gate.pieces().get(0).across()).isEqualTo(inches(43.25, 46.75));
        assertThat(gate.braces()).singleElement().satisfies(brace -> {
            assertThat(brace.foot()).hasToString("bottom rail at hinge stile");
            assertThat(brace.head()).hasToString("top rail at latch stile");
            assertThat(brace.rise().degrees()).isCloseTo(50.95, within(0.005));
        });
        assertThat(gate.findings()).isEmpty();
    }

    @Test
    void aSpaceOfThreeToFourHasABraceOfFive() {
        GateBrace brace = braceAcross(40, 30, 3.5);

        assertThat(brace.length()).isEqualTo(inches(50));
        assertThat(brace.rise().degrees()).isCloseTo(36.87, within(0.005));
        assertThat(brace.railCut().orElseThrow().degrees()).isCloseTo(53.13, within(0.005));
        assertThat(brace.stileCut()).contains(brace.rise());
        assertThat(brace.edgeLength().inches()).isCloseTo(46 + 17.0 / 48, within(1e-7));
        assertThat(brace.railBearing().inches()).isCloseTo(3.5 / 1.2, within(1e-7)); // 2 sin = 6/5
        assertThat(brace.stileBearing().inches()).isCloseTo(3.5 / 1.6, within(1e-7)); // 2 cos = 8/5
    }

    /** The brace of a frame whose members are an inch wide around a clear space. */
    static GateBrace braceAcross(double clearWidth, double clearHeight, double braceWidth) {
        GateSpec spec = GateSpec.builder()
                .memberWidth(inches(1))
                .braceWidth(inches(braceWidth))
                .build();
        return leaf(inches(clearWidth + 2.75), inches(clearHeight + 2), HingeSide.LEFT, spec)
                .braces()
                .get(0);
    }

    @Test
    void warnsOfABraceFlatterThan45Degrees() {
        Finding flat = only(GATE);

        assertThat(flat.severity()).isEqualTo(Severity.WARNING);
        assertThat(flat.code()).isEqualTo("gate-brace-flat");
        assertThat(flat.message())
                .isEqualTo(
                        "in a clear space of 3' 3 3/4\" by 1' 10 3/4\" a brace rises at only 29.78 deg; it should rise at 45 deg"
                                + " or more");
        assertThat(flat.remedy()).isEqualTo("leave out the middle rail, so that one brace rises at 50.95 deg");
        assertThat(flat.source()).get().hasToString("Manual of Purpose-Made Woodworking Joinery, p. 85");
    }

    @Test
    void aBraceAt45DegreesIsNotFlatAndTheLeastFlatterOneIs() {
        GateSpec spec = GateSpec.builder().build();
        Length opening = inches(24 + 7.75);
        Length square = inches(24 + 7);

        assertThat(leaf(opening, square, HingeSide.LEFT, spec).findings()).isEmpty();
        Finding flat = only(leaf(opening, square.minus(Length.ofNanometres(1)), HingeSide.LEFT, spec));
        assertThat(flat.code()).isEqualTo("gate-brace-flat");
        assertThat(flat.remedy()).isEqualTo("hang two leaves, or make the frame higher");
    }

    @Test
    void warnsOfALeafWiderThanReasonable() {
        GateSpec spec = GateSpec.builder().build();

        assertThat(leaf(inches(48.75), inches(60), HingeSide.LEFT, spec).findings())
                .isEmpty();
        Finding wide = only(leaf(inches(49), inches(60), HingeSide.LEFT, spec));
        assertThat(wide.severity()).isEqualTo(Severity.WARNING);
        assertThat(wide.code()).isEqualTo("gate-leaf-wide");
        assertThat(wide.message()).isEqualTo("the leaf of 4' 0 1/4\" is wider than the reasonable 4' 0\"");
        assertThat(wide.remedy()).contains("two leaves");
    }

    @Test
    void aBraceSoWideThatNoEdgeIsLeftDoesNotFit() {
        // In a square of 24 the limit 2 W H / L is 2 x 24 x 24 / 33.941 = 33.941.
        assertThat(braceAcross(24, 24, 33.9).edgeLength().inches()).isCloseTo(0.041, within(0.001));

        GateSpec spec =
                GateSpec.builder().memberWidth(inches(1)).braceWidth(inches(34)).build();
        GateLeaf gate = leaf(inches(26.75), inches(26), HingeSide.LEFT, spec);
        Finding wide = only(gate);
        assertThat(gate.braces()).isEmpty();
        assertThat(gate.pieces()).hasSize(4);
        assertThat(wide.severity()).isEqualTo(Severity.BLOCKER);
        assertThat(wide.code()).isEqualTo("gate-brace-wide");
        assertThat(wide.message()).isEqualTo("a brace 2' 10\" wide does not fit a clear space of 2' 0\" by 2' 0\"");
        assertThat(wide.remedy()).isEqualTo("use a brace under 2' 9 15/16\" wide");
    }

    @Test
    void aLeafTooSmallForItsMembersIsBlockedAndStillMeasured() {
        GateLeaf gate = leaf(inches(7.75), inches(10.5), HingeSide.LEFT, WITH_MIDDLE_RAIL);

        assertThat(gate.findings()).extracting(Finding::code).containsExactly("gate-leaf-narrow", "gate-frame-low");
        assertThat(gate.findings()).extracting(Finding::severity).containsOnly(Severity.BLOCKER);
        assertThat(gate.findings().get(0).message())
                .isEqualTo("the leaf of 7\" leaves no room for rails between two stiles of 3 1/2\"");
        assertThat(gate.findings().get(0).remedy()).contains("at least 11 1/4\"");
        assertThat(gate.findings().get(1).message()).contains("the frame height of 10 1/2\"", "three rails of 3 1/2\"");
        assertThat(gate.findings().get(1).remedy()).contains("at least 1' 5 1/2\" high");
        assertThat(gate.pieces()).isEmpty();
        assertThat(gate.braces()).isEmpty();
        assertThat(gate.clearWidth()).isEqualTo(Length.ZERO);
        assertThat(gate.clearHeights()).containsExactly(Length.ZERO, Length.ZERO);
        assertThat(gate.worksheet().result()).isEqualTo(gate.diagonal());
    }

    @Test
    void theFrameSheetEndsWithTheDiagonal() {
        assertThat(GATE.worksheet().result()).isEqualTo(GATE.diagonal());
        assertThat(result(GATE.worksheet(), "leaf width")).isEqualTo(GATE.width());
        assertThat(result(GATE.worksheet(), "rail length"))
                .isEqualTo(GATE.pieces().get(2).length());
        assertThat(result(GATE.worksheet(), "middle rail centre"))
                .isEqualTo(GATE.middleRailCentre().orElseThrow());
        assertThat(GATE.worksheet().toText()).isEqualTo("""
                        Gate leaf and frame
                          clear opening = 3' 11 1/2"   [given]
                          hinge gap = 1/2"   [given]
                          latch gap = 1/4"   [given]
                          frame height = 4' 8"   [given]
                          member width = 3 1/2"   [given]
                          leaf width = clear opening - hinge gap - latch gap = 47.5 in - 0.5 in - 0.25 in = 3' 10 3/4"   [common practice, no source]
                          stile length = frame height = 4' 8"   [common practice, no source]
                          rail length = leaf width - 2 x member width = 46.75 in - 2 x 3.5 in = 3' 3 3/4"   [common practice, no source]
                          middle rail centre = frame height / 2 = 56 in / 2 = 2' 4"   [common practice, no source]
                          clear height of each half = (frame height - 3 x member width) / 2 = (56 in - 3 x 3.5 in) / 2 = 1' 10 3/4"
                          diagonal = sqrt(leaf width^2 + frame height^2) = sqrt((46.75 in)^2 + (56 in)^2) = 6' 0 15/16"
                        """);
    }

    @Test
    void theBraceSheetEndsWithTheEdge() {
        GateBrace brace = GATE.braces().get(0);
        Worksheet sheet = brace.worksheet();

        assertThat(sheet.result()).isEqualTo(brace.edgeLength());
        assertThat(result(sheet, "length, point to point L")).isEqualTo(brace.length());
        assertThat(result(sheet, "cut against the rail, off square"))
                .isEqualTo(brace.railCut().orElseThrow());
        assertThat(result(sheet, "cut against the stile, off square"))
                .isEqualTo(brace.stileCut().orElseThrow());
        assertThat(result(sheet, "bearing on the rail")).isEqualTo(brace.railBearing());
        assertThat(result(sheet, "bearing on the stile")).isEqualTo(brace.stileBearing());
        assertThat(sheet.toText()).isEqualTo("""
                        Gate brace from bottom rail to middle rail
                          foot = on the hinge side = bottom rail at hinge stile   [Building Construction (chestofbooks.com, Building-Construction-5), Doors]
                          head = on the latch side = middle rail at latch stile   [Building Construction (chestofbooks.com, Building-Construction-5), Doors]
                          clear width W = 3' 3 3/4"   [given]
                          clear height H = 1' 10 3/4"   [given]
                          brace width b = 3 1/2"   [given]
                          length, point to point L = sqrt(W^2 + H^2) = sqrt((39.75 in)^2 + (22.75 in)^2) = 3' 9 13/16"
                          rise from the rail = atan(H / W) = atan(22.75 in / 39.75 in) = 29.78 deg
                          cut against the rail, off square = 90 deg - rise = 90 deg - 29.78 deg = 60.22 deg
                          cut against the stile, off square = rise = 29.78 deg
                          bearing on the rail = b / (2 sin rise) = 3.5 in / (2 sin 29.78 deg) = 3 1/2"
                          bearing on the stile = b / (2 cos rise) = 3.5 in / (2 cos 29.78 deg) = 2"
                          edge length = L - b / 2 * (W / H + H / W) = 45.7998 in - 3.5 in / 2 * (39.75 in / 22.75 in + 22.75 in / 39.75 in) = 3' 5 3/4"
                        """);
    }

    @Test
    void theSheetOfAFrameWithoutMiddleRailHasOneClearHeight() {
        GateLeaf gate = leaf(
                inches(47.5), inches(56), HingeSide.LEFT, GateSpec.builder().build());

        assertThat(result(gate.worksheet(), "clear height")).isEqualTo(inches(49));
        assertThat(gate.worksheet().lines()).extracting(WorkLine::name).doesNotContain("middle rail centre");
    }

    @Test
    void theSpecSaysFromWhatSizeAGateIsSureToFit() {
        GateSpec spec =
                GateSpec.builder().memberWidth(inches(5.5)).middleRail(true).build();

        assertThat(spec.minimumOpening()).isEqualTo(inches(15.25));
        assertThat(spec.minimumHeight()).isEqualTo(inches(23.5));
        assertThat(GateSpec.builder().build().minimumHeight()).isEqualTo(inches(10.5));
    }

    @Test
    void everySizeOfTheSpecIsHeard() {
        GateSpec spec = GateSpec.builder()
                .hingeGap(inches(0.75))
                .latchGap(inches(0.5))
                .memberWidth(inches(5.5))
                .memberThickness(inches(1.25))
                .middleRail(true)
                .braceWidth(inches(2.5))
                .reasonableLeafWidth(inches(30))
                .build();
        GateLeaf gate = leaf(inches(37.25), inches(72), HingeSide.LEFT, spec);

        assertThat(gate.width()).isEqualTo(inches(36));
        assertThat(gate.pieces().get(2).length()).isEqualTo(inches(25));
        assertThat(gate.pieces().get(2).thickness()).isEqualTo(inches(1.25));
        assertThat(gate.braces().get(1).width()).isEqualTo(inches(2.5));
        assertThat(gate.braces().get(1).thickness()).isEqualTo(inches(1.25));
        assertThat(only(gate).code()).isEqualTo("gate-leaf-wide");
        assertThat(spec)
                .hasToString(
                        "gate with gaps of 3/4\" at the hinges and 1/2\" at the latch, frame of 5 1/2\" x 1 1/4\" rails butted between"
                                + " stiles,"
                                + " a middle rail, brace 2 1/2\" wide and pointed, leaf reasonable to 2' 6\"");
    }

    @Test
    void gatesOfTheSameInputsAreEqual() {
        GateLeaf metric = leaf(
                Length.ofMillimetres(1206.5),
                Length.ofMillimetres(1422.4),
                HingeSide.LEFT,
                GateSpec.builder()
                        .middleRail(true)
                        .memberWidth(Length.ofMillimetres(88.9))
                        .build());

        assertThat(metric).isEqualTo(GATE).hasSameHashCodeAs(GATE);
        assertThat(metric).isNotEqualTo(leaf(inches(47.5), inches(56), HingeSide.RIGHT, WITH_MIDDLE_RAIL));
        assertThat(metric).hasToString("gate leaf 3' 10 3/4\" wide and 4' 8\" high, hinged left");
        assertThat(metric.pieces().get(3)).hasToString("middle rail 3' 3 3/4\"");
        assertThat(metric.braces().get(0))
                .hasToString("brace 3' 9 13/16\" from bottom rail at hinge stile to middle rail at latch stile");
    }

    @Test
    void specsAreEqualIfAllTheirPartsAre() {
        EqualValues.assertDistinct(
                () -> GateSpec.builder().build(),
                () -> GateSpec.builder().hingeGap(inches(1)).build(),
                () -> GateSpec.builder().latchGap(inches(1)).build(),
                () -> GateSpec.builder().centreGap(inches(1)).build(),
                () -> GateSpec.builder().hingeBuildOut(inches(1)).build(),
                () -> GateSpec.builder().latchBuildOut(inches(1)).build(),
                () -> GateSpec.builder().joint(FrameJoint.MITRE).build(),
                () -> GateSpec.builder().memberWidth(inches(1)).build(),
                () -> GateSpec.builder().memberThickness(inches(1)).build(),
                () -> GateSpec.builder().middleRail(true).build(),
                () -> GateSpec.builder().braceKind(BraceKind.CABLE).build(),
                () -> GateSpec.builder().braceEnds(BraceEnds.RAIL_CUTS).build(),
                () -> GateSpec.builder().braceReversed(true).build(),
                () -> GateSpec.builder().braceWidth(inches(1)).build(),
                () -> GateSpec.builder().reasonableLeafWidth(inches(1)).build(),
                () -> GateSpec.builder().reasonableOverhang(inches(1)).build());
    }

    @Test
    void refusesAnOpeningThatTheGapsTakeUp() {
        assertThatThrownBy(() -> leaf(inches(0.75), inches(56), HingeSide.LEFT, WITH_MIDDLE_RAIL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("clearOpening was 3/4 in")
                .hasMessageContaining("over the hinge gap and the latch gap together, 3/4 in")
                .hasMessageContaining("sure to do from 11 1/4 in")
                .hasMessageContaining("set smaller gaps");
        assertThat(leaf(inches(0.75).plus(Length.ofNanometres(1)), inches(56), HingeSide.LEFT, WITH_MIDDLE_RAIL)
                        .width())
                .isEqualTo(Length.ofNanometres(1));
    }

    @Test
    void refusesSizesOfZeroOrLessOrOver100Feet() {
        assertThatThrownBy(() -> leaf(Length.ZERO, inches(56), HingeSide.LEFT, WITH_MIDDLE_RAIL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("clearOpening was 0 in; it must be over 0 and no more than 100 ft");
        assertThatThrownBy(() -> leaf(inches(40), inches(-1), HingeSide.LEFT, WITH_MIDDLE_RAIL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("frameHeight was -1 in;");
        assertThatThrownBy(() -> leaf(inches(40), inches(1201), HingeSide.LEFT, WITH_MIDDLE_RAIL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("frameHeight was 100 ft 1 in");
        assertThat(leaf(Length.ofFeet(100), Length.ofFeet(100), HingeSide.LEFT, WITH_MIDDLE_RAIL)
                        .frameHeight())
                .isEqualTo(Length.ofFeet(100));
        GateSpec.Builder spec = GateSpec.builder();
        assertThatThrownBy(() -> spec.hingeGap(Length.ZERO)).hasMessageContaining("hingeGap was 0 in");
        assertThatThrownBy(() -> spec.latchGap(Length.ZERO)).hasMessageContaining("latchGap was 0 in");
        assertThatThrownBy(() -> spec.memberWidth(inches(-3.5))).hasMessageContaining("memberWidth was -3 1/2 in");
        assertThatThrownBy(() -> spec.memberThickness(Length.ZERO)).hasMessageContaining("memberThickness was 0 in");
        assertThatThrownBy(() -> spec.braceWidth(Length.ofFeet(101))).hasMessageContaining("braceWidth was 101 ft");
        assertThatThrownBy(() -> spec.reasonableLeafWidth(Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("reasonableLeafWidth was 0 in");
    }

    @Test
    void aCornerIsWhereARailMeetsAStile() {
        assertThatThrownBy(() -> new FrameCorner(FrameMember.HINGE_STILE, FrameMember.BOTTOM_RAIL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rail was the hinge stile and stile the bottom rail");
    }

    private static Object result(Worksheet sheet, String name) {
        List<Object> results = sheet.lines().stream()
                .filter(line -> line.name().equals(name))
                .map(WorkLine::result)
                .toList();
        assertThat(results).as(name).hasSize(1);
        return results.get(0);
    }

    private static Finding only(GateLeaf gate) {
        assertThat(gate.findings()).hasSize(1);
        return gate.findings().get(0);
    }
}
