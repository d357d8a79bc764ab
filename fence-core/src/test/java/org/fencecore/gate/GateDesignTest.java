package org.fencecore.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.groups.Tuple.tuple;

import org.fencecore.EqualValues;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/**
 * Openings with one and two leaves, the other joints, the other braces, and raked leaves, each worked by hand (sizes:
 * common practice, no source; the rest is right triangles).
 */
class GateDesignTest {

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static GateLeaf leaf(GateSpec spec) {
        return GateDesign.forOpening(inches(47.5), inches(56), HingeSide.LEFT, spec)
                .activeLeaf();
    }

    /** 96 - 2 x 1/2 - 1/2 = 94 1/2, half of which is 47 1/4; the right leaf starts at 1/2 + 47 1/4 + 1/2 = 48 1/4. */
    @Test
    void twoLeavesShareTheOpeningBetweenTwoHingePosts() {
        GateDesign gate = GateDesign.pairForOpening(
                inches(96), inches(56), HingeSide.RIGHT, GateSpec.builder().build());

        assertThat(gate.isPair()).isTrue();
        assertThat(gate.leaves())
                .extracting(
                        GateLeaf::hingeSide,
                        GateLeaf::width,
                        leaf -> leaf.place().start())
                .containsExactly(
                        tuple(HingeSide.LEFT, inches(47.25), inches(0.5)),
                        tuple(HingeSide.RIGHT, inches(47.25), inches(48.25)));
        assertThat(gate.activeLeaf()).isEqualTo(gate.leaves().get(1));
        assertThat(gate.fixedLeaf()).contains(gate.leaves().get(0));
        assertThat(gate.findings()).isEmpty();
        assertThat(gate.leaves().get(0).worksheet().toText())
                .contains("leaf width = (clear opening - 2 x hinge gap - centre gap) / 2 ="
                        + " (96 in - 2 x 0.5 in - 0.5 in) / 2 = 3' 11 1/4\"");
    }

    @Test
    void theOddNanometreGoesToTheActiveLeaf() {
        Length odd = inches(96).plus(Length.ofNanometres(1));
        GateDesign gate = GateDesign.pairForOpening(
                odd, inches(56), HingeSide.LEFT, GateSpec.builder().build());

        assertThat(gate.activeLeaf().width()).isEqualTo(inches(47.25).plus(Length.ofNanometres(1)));
        assertThat(gate.fixedLeaf().orElseThrow().width()).isEqualTo(inches(47.25));
    }

    /** 47 1/2 - 1 1/2 - 1/2 - 1/4 - 3/4 = 44 1/2. */
    @Test
    void whatIsBuiltOutFromThePostsComesOffTheLeaf() {
        GateSpec spec = GateSpec.builder()
                .hingeBuildOut(inches(1.5))
                .latchBuildOut(inches(0.75))
                .build();
        GateLeaf leaf = leaf(spec);

        assertThat(leaf.width()).isEqualTo(inches(44.5));
        assertThat(leaf.place().start()).isEqualTo(inches(2));
        assertThat(leaf.worksheet().toText())
                .contains("clear opening - hinge build-out - hinge gap - latch gap - latch build-out ="
                        + " 47.5 in - 1.5 in - 0.5 in - 0.25 in - 0.75 in = 3' 8 1/2\"");
        assertThat(spec.minimumOpening()).isEqualTo(inches(1.5 + 0.5 + 0.25 + 0.75 + 7 + 3.5));
    }

    /** Leaf 46 3/4 by 56 of 3 1/2 lumber: between rails 56 - 7 = 49, between stiles 39 3/4. */
    @Test
    void theJointDecidesTheLengthsOfTheFrame() {
        assertThat(lengths(FrameJoint.RAILS_BETWEEN_STILES)).containsExactly(56, 56, 39.75, 39.75, 39.75);
        assertThat(lengths(FrameJoint.STILES_BETWEEN_RAILS)).containsExactly(49, 49, 46.75, 39.75, 46.75);
        assertThat(lengths(FrameJoint.HALF_LAP)).containsExactly(56, 56, 46.75, 46.75, 46.75);
        assertThat(lengths(FrameJoint.MITRE)).containsExactly(56, 56, 46.75, 39.75, 46.75);
    }

    private static double[] lengths(FrameJoint joint) {
        GateLeaf leaf = leaf(GateSpec.builder().joint(joint).middleRail(true).build());
        assertThat(leaf.worksheet().result()).isEqualTo(leaf.diagonal());
        return leaf.pieces().stream()
                .mapToDouble(piece -> piece.length().inches())
                .toArray();
    }

    @Test
    void aMitredFrameIsCutAt45DegreesAndItsMiddleRailSquare() {
        GateLeaf leaf =
                leaf(GateSpec.builder().joint(FrameJoint.MITRE).middleRail(true).build());
        FramePiece stile = leaf.pieces().get(0);
        FramePiece middle = leaf.pieces().get(3);

        assertThat(stile.firstCut().degrees()).isCloseTo(45, within(1e-9));
        assertThat(stile.otherCut().degrees()).isCloseTo(45, within(1e-9));
        assertThat(stile.shortEdge()).isEqualTo(inches(49));
        assertThat(leaf.pieces().get(2).shortEdge()).isEqualTo(inches(39.75));
        assertThat(middle.joint()).isEqualTo(FrameJoint.RAILS_BETWEEN_STILES);
        assertThat(middle.firstCut()).isEqualTo(Angle.ZERO);
    }

    /** However it is joined, the same wood fills the frame: 46.75 x 56 - 39.75 x (56 - 3 x 3.5), all 1 1/2 thick. */
    @Test
    void theFrameHoldsTheSameWoodHoweverItIsJoined() {
        double square = 46.75 * 56 - 39.75 * 45.5;
        for (FrameJoint joint : FrameJoint.values()) {
            GateLeaf leaf =
                    leaf(GateSpec.builder().joint(joint).middleRail(true).build());
            double cubicFeet = leaf.pieces().stream()
                    .mapToDouble(piece -> piece.volume().cubicFeet())
                    .sum();
            assertThat(cubicFeet * 1728).as("%s", joint).isCloseTo(square * 1.5, within(1e-6));
        }
        assertThat(leaf(GateSpec.builder().joint(FrameJoint.HALF_LAP).build()).pieces())
                .extracting(FramePiece::laps)
                .containsOnly(2);
        // Raked at 75 % the rails are 3.5 x 1.25 = 4.375 deep, plumb, and plumb slices stay what they are.
        double raked = 46.75 * 56 - 39.75 * (56 - 2 * 4.375);
        for (FrameJoint joint : FrameJoint.values()) {
            double cubicFeet = GateDesign.forOpening(
                            inches(47.5),
                            inches(56),
                            HingeSide.LEFT,
                            GateSpec.builder().joint(joint).build())
                    .withRake(Slope.ofPercent(75))
                    .activeLeaf()
                    .pieces()
                    .stream()
                    .mapToDouble(piece -> piece.volume().cubicFeet())
                    .sum();
            assertThat(cubicFeet * 1728).as("%s, raked", joint).isCloseTo(raked * 1.5, within(1e-6));
        }
    }

    /** W = 40, H = 30, b = 3 1/2: D = 50, so it rises at 36.8699 + asin(0.07) = 36.8699 + 4.0140 = 40.8839 deg. */
    @Test
    void aBraceWithOneCutAlongTheRailsHasAnEdgeInEachCorner() {
        GateBrace brace = across40By30(BraceEnds.RAIL_CUTS);

        assertThat(brace.rise().degrees()).isCloseTo(40.8839, within(0.0001));
        assertThat(brace.edgeLength().inches()).isCloseTo(30 / Math.sin(Math.toRadians(40.8839)), within(0.0001));
        assertThat(brace.edgeLength().inches()).isCloseTo(45.834, within(0.001));
        assertThat(brace.railCut().orElseThrow().degrees()).isCloseTo(49.1161, within(0.0001));
        assertThat(brace.stileCut()).isEmpty();
        assertThat(brace.stileBearing()).isEqualTo(Length.ZERO);
        // Along the rail 3.5 / sin 40.8839 = 5.3473; over all 45.834 + 3.5 / tan 40.8839 = 49.877.
        assertThat(brace.railBearing().inches()).isCloseTo(5.3473, within(0.0001));
        assertThat(brace.length().inches()).isCloseTo(49.877, within(0.001));
        assertThat(brace.outline()).hasSize(4);
        assertThat(brace.worksheet().result()).isEqualTo(brace.edgeLength());
        assertThat(brace.worksheet().toText())
                .contains("rise = atan(H / W) + asin(b / D) = atan(30 in / 40 in) + asin(3.5 in / 50 in) = 40.88 deg");
    }

    /** It rises at 36.8699 - 4.0140 = 32.8559 deg; an edge is 40 / cos 32.8559 = 47.616. */
    @Test
    void aBraceWithOneCutAlongTheStilesLiesFlatter() {
        GateBrace brace = across40By30(BraceEnds.STILE_CUTS);

        assertThat(brace.rise().degrees()).isCloseTo(32.8559, within(0.0001));
        assertThat(brace.edgeLength().inches()).isCloseTo(47.616, within(0.001));
        assertThat(brace.stileCut()).contains(brace.rise());
        assertThat(brace.railCut()).isEmpty();
        assertThat(brace.railBearing()).isEqualTo(Length.ZERO);
        // Along the stile 3.5 / cos 32.8559 = 4.1665; over all 47.616 + 3.5 x tan 32.8559 = 49.877.
        assertThat(brace.stileBearing().inches()).isCloseTo(4.1665, within(0.0001));
        assertThat(brace.length().inches()).isCloseTo(49.877, within(0.001));
        assertThat(brace.worksheet().result()).isEqualTo(brace.edgeLength());
    }

    /**
     * A parallelogram along the rails is 5.3473 x 30 = 160.42 sq in, one along the stiles 4.1665 x 40 = 166.66, and a
     * pointed one 3.5 x 50 less two corners of 1.75 x 1.75 x (4/3 + 3/4) / 2 = 3.19 each: 168.62; all 1 1/2 in thick.
     */
    @Test
    void aBraceHoldsTheWoodOfItsOutline() {
        assertThat(cubicInches(across40By30(BraceEnds.RAIL_CUTS))).isCloseTo(160.42 * 1.5, within(0.01));
        assertThat(cubicInches(across40By30(BraceEnds.STILE_CUTS))).isCloseTo(166.66 * 1.5, within(0.01));
        assertThat(cubicInches(across40By30(BraceEnds.POINTS))).isCloseTo(168.62 * 1.5, within(0.01));
        for (BraceEnds ends : BraceEnds.values()) {
            assertThat(across40By30(ends).centre()).isEqualTo(new ProfilePoint(inches(21), inches(16)));
        }
    }

    private static double cubicInches(GateBrace brace) {
        return brace.volume().cubicFeet() * 1728;
    }

    /** It fits if b is W at most along the rails, H cos t at most along the stiles: at 75 % a 3, 4, 5 triangle. */
    @Test
    void aBraceWithOneCutFitsUpToTheWholeClearSpace() {
        Length hair = Length.ofNanometres(1);
        assertThat(fitted(BraceEnds.RAIL_CUTS, inches(24), 0)).isEmpty();
        assertThat(fitted(BraceEnds.RAIL_CUTS, inches(24).plus(hair), 0)).isEqualTo("use a brace under 2' 0\" wide");
        // Rails an inch wide are 1.25 in deep, plumb: 42.5 - 2.5 = 40 clear, and 40 x 0.8 = 32 square to them.
        assertThat(fitted(BraceEnds.STILE_CUTS, inches(32), 75)).isEmpty();
        assertThat(fitted(BraceEnds.STILE_CUTS, inches(32).plus(hair), 75)).isEqualTo("use a brace under 2' 8\" wide");
    }

    /** What is told of a brace so wide in a clear space 24 in wide; nothing if it fits. */
    private static String fitted(BraceEnds ends, Length width, double rake) {
        GateSpec spec = GateSpec.builder()
                .memberWidth(inches(1))
                .braceEnds(ends)
                .braceWidth(width)
                .build();
        return GateDesign.forOpening(inches(26.75), inches(42.5), HingeSide.LEFT, spec)
                .withRake(Slope.ofPercent(rake))
                .findings()
                .stream()
                .filter(finding -> finding.code().equals("gate-brace-wide"))
                .map(Finding::remedy)
                .findFirst()
                .orElse("");
    }

    /**
     * Raked down at 100 % from the hinges, 40 in wide and 100 in high between the rails, it rises 60 in 40, at 56.31
     * degrees, and stands at 101.31 degrees to the rails: the cut along the rail reaches b / 2 x cot 78.69 = 0.35 in past
     * the corner at each end, and from point to point it is sqrt(40^2 + 60^2) = 72.111 in.
     */
    @Test
    void aCutThatLeansOverTheCornerMakesTheBraceLonger() {
        GateBrace brace = falling(100);

        assertThat(brace.rise().degrees()).isCloseTo(56.31, within(0.001));
        assertThat(brace.length().inches()).isCloseTo(72.111 + 2 * 0.35, within(0.001));
    }

    /** As wide as high between rails that fall at 100 %, its head is no higher than its foot. */
    @Test
    void aBraceThatLiesLevelCarriesNothing() {
        GateBrace level = falling(40);

        assertThat(level.rise()).isEqualTo(Angle.ZERO);
        assertThatThrownBy(() -> level.forceFrom(Force.ofPoundsForce(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the brace rises at 0 deg; it must rise from foot to head");
    }

    /** The brace between rails that fall at 100 % from the hinges, 40 in apart across and so many plumb. */
    private static GateBrace falling(double clearHeight) {
        Slope down = Slope.ofPercent(-100);
        GateSpec spec = GateSpec.builder().memberWidth(inches(1)).build();
        Length rails = down.lengthOver(inches(1)).times(2);
        return GateDesign.forOpening(inches(42.75), inches(clearHeight).plus(rails), HingeSide.LEFT, spec)
                .withRake(down)
                .activeLeaf()
                .braces()
                .get(0);
    }

    private static GateBrace across40By30(BraceEnds ends) {
        GateSpec spec =
                GateSpec.builder().memberWidth(inches(1)).braceEnds(ends).build();
        return GateDesign.forOpening(inches(42.75), inches(32), HingeSide.LEFT, spec)
                .activeLeaf()
                .braces()
                .get(0);
    }

    @Test
    void aCableRunsTheOtherWayOverTheWholeHeight() {
        GateLeaf leaf = leaf(
                GateSpec.builder().braceKind(BraceKind.CABLE).middleRail(true).build());

        assertThat(leaf.findings()).isEmpty();
        assertThat(leaf.braces()).singleElement().satisfies(cable -> {
            assertThat(cable.foot()).hasToString("bottom rail at latch stile");
            assertThat(cable.head()).hasToString("top rail at hinge stile");
            assertThat(cable.length().inches()).isCloseTo(Math.hypot(39.75, 49), within(1e-6));
            assertThat(cable.edgeLength()).isEqualTo(cable.length());
            assertThat(cable.outline())
                    .containsExactly(
                            new ProfilePoint(inches(43.25), inches(3.5)), new ProfilePoint(inches(3.5), inches(52.5)));
            assertThat(cable.isRightWay()).isTrue();
            assertThat(cable.volume().cubicFeet()).isZero();
            assertThat(cable.worksheet().result()).isEqualTo(cable.edgeLength());
        });
    }

    @Test
    void aBraceTheWrongWayRoundIsAFindingWithItsReason() {
        Finding wood = onlyFinding(GateSpec.builder().braceReversed(true).build());
        assertThat(wood.code()).isEqualTo("gate-brace-wrong-way");
        assertThat(wood.severity()).isEqualTo(Severity.WARNING);
        assertThat(wood.message()).contains("pulls at its joints");
        assertThat(wood.remedy()).contains("bottom at the hinges up to the top at the latch");

        Finding cable = onlyFinding(GateSpec.builder()
                .braceKind(BraceKind.CABLE)
                .braceReversed(true)
                .build());
        assertThat(cable.message()).contains("slackens it");

        GateBrace brace =
                leaf(GateSpec.builder().braceReversed(true).build()).braces().get(0);
        assertThat(brace.foot()).hasToString("bottom rail at latch stile");
        assertThat(brace.forceFrom(Force.ofPoundsForce(50)).isNegative()).isTrue();
    }

    private static Finding onlyFinding(GateSpec spec) {
        assertThat(leaf(spec).findings()).hasSize(1);
        return leaf(spec).findings().get(0);
    }

    /** A frame of 30 by 40 inside, with 50 lbf at the latch: 50 x 50 / 40 = 62.5 lbf along the brace. */
    @Test
    void aBraceCarriesTheLoadTimesDiagonalOverHeight() {
        GateSpec spec = GateSpec.builder().memberWidth(inches(1)).build();
        GateBrace brace = GateDesign.forOpening(inches(32.75), inches(42), HingeSide.LEFT, spec)
                .activeLeaf()
                .braces()
                .get(0);

        assertThat(brace.forceFrom(Force.ofPoundsForce(50)).poundsForce()).isCloseTo(62.5, within(1e-9));
    }

    /**
     * Raked 25 % up to the right: a rail is 3.5 x sqrt(1.0625) = 3.6077 deep, plumb, its edges 39.75 x 1.030776 =
     * 40.9734, and over all 0.25 x 3.5 = 0.875 more. The brace rises from the left: 56 - 2 x 3.6077 = 48.7846 clear, and
     * 0.25 x 39.75 = 9.9375 more over the space, so at atan(58.7221 / 39.75) = 55.9052 deg.
     */
    @Test
    void aRakedLeafKeepsItsStilesPlumbAndItsRailsOnTheSlope() {
        GateLeaf leaf = GateDesign.forOpening(
                        inches(47.5),
                        inches(56),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .withRake(Slope.ofPercent(25))
                .activeLeaf();
        FramePiece rail = leaf.pieces().get(2);
        FramePiece stile = leaf.pieces().get(0);

        assertThat(rail.shortEdge().inches()).isCloseTo(40.9734, within(0.0001));
        assertThat(rail.length().inches()).isCloseTo(40.9734 + 0.875, within(0.0001));
        assertThat(rail.firstCut().degrees()).isCloseTo(14.0362, within(0.0001));
        assertThat(rail.otherCut().degrees()).isCloseTo(14.0362, within(0.0001));
        assertThat(stile.shortEdge()).isEqualTo(inches(56));
        assertThat(stile.length()).isEqualTo(inches(56.875));
        assertThat(stile.firstCut().degrees()).isCloseTo(14.0362, within(0.0001));
        GateBrace brace = leaf.braces().get(0);
        assertThat(brace.rise().degrees()).isCloseTo(55.9052, within(0.0005));
        assertThat(brace.railCut().orElseThrow().degrees()).isCloseTo(90 - 55.9052 + 14.0362, within(0.0005));
        assertThat(brace.worksheet().result()).isEqualTo(brace.edgeLength());
        // 46.75 x 0.25 = 11.6875: diagonals sqrt(46.75^2 + 67.6875^2) and sqrt(46.75^2 + 44.3125^2).
        assertThat(leaf.risingDiagonal().inches()).isCloseTo(82.26275, within(0.0005));
        assertThat(leaf.fallingDiagonal().inches()).isCloseTo(64.41397, within(0.0005));
        assertThat(leaf.worksheet().result()).isEqualTo(leaf.risingDiagonal());
        assertThat(leaf.topLine().elevationAt(inches(46.75))).isEqualTo(inches(56 + 11.6875));
        assertThat(leaf.topLine()
                        .elevationAt(inches(20))
                        .minus(leaf.bottomLine().elevationAt(inches(20))))
                .isEqualTo(inches(56));
    }

    @Test
    void mitresOfARakedFrameShareTheCornersAngle() {
        GateLeaf leaf = GateDesign.forOpening(
                        inches(47.5),
                        inches(56),
                        HingeSide.LEFT,
                        GateSpec.builder().joint(FrameJoint.MITRE).build())
                .withRake(Slope.ofPercent(25))
                .activeLeaf();
        FramePiece stile = leaf.pieces().get(0);
        FramePiece bottom = leaf.pieces().get(2);

        // The lower left corner is 90 - 14.0362 deg, half of it off each axis: 45 + 14.0362 / 2 off square.
        assertThat(stile.firstCut().degrees()).isCloseTo(45 + 7.0181, within(0.0001));
        assertThat(bottom.firstCut().degrees()).isCloseTo(45 + 7.0181, within(0.0001));
        assertThat(stile.otherCut().degrees()).isCloseTo(45 - 7.0181, within(0.0001));
        assertThat(stile.outline().get(1).station()).isEqualTo(inches(3.5));
    }

    @Test
    void aLeafRakedDownSteeplyHasABraceThatFalls() {
        GateDesign gate = GateDesign.forOpening(
                        inches(60),
                        inches(30),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .withRake(Slope.ofPercent(-100));

        assertThat(gate.findings())
                .extracting(Finding::code)
                .contains("gate-brace-falls", "gate-brace-flat", "gate-leaf-wide");
        GateBrace brace = gate.activeLeaf().braces().get(0);
        assertThatThrownBy(() -> brace.forceFrom(Force.ofPoundsForce(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must rise from foot to head");
    }

    @Test
    void aLeafTooWideIsToldHowWideTwoWouldBe() {
        Finding wide = GateDesign.forOpening(
                        inches(96),
                        inches(120),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .findings()
                .get(0);

        assertThat(wide.code()).isEqualTo("gate-leaf-wide");
        assertThat(wide.remedy()).startsWith("hang two leaves of 3' 11 1/4\"");
    }

    /** With 3 1/2 in lumber two leaves are sure to fit from 1 1/2 + 2 x (7 + 3 1/2) = 22 1/2 in on, and not before. */
    @Test
    void twoLeavesAreAdvisedOnlyWhereTheyAreSureToFit() {
        assertThat(tooWide(inches(22.5))).startsWith("hang two leaves of 10 1/2\"");
        assertThat(tooWide(inches(22.5).minus(Length.ofNanometres(1)))).startsWith("choose frame, hinges and posts");
    }

    private static String tooWide(Length opening) {
        GateSpec spec = GateSpec.builder().reasonableLeafWidth(inches(20)).build();
        Finding wide = GateDesign.forOpening(opening, inches(56), HingeSide.LEFT, spec)
                .findings()
                .get(0);
        assertThat(wide.code()).isEqualTo("gate-leaf-wide");
        return wide.remedy();
    }

    /** Without the middle rail one brace rises 56 - 7 = 49 in: at 45 degrees over 49 in, flatter over a hair more. */
    @Test
    void theMiddleRailIsInTheWayOnlyIfOneBraceWouldBeSteepEnough() {
        assertThat(tooFlat(inches(56.75))).isEqualTo("leave out the middle rail, so that one brace rises at 45 deg");
        assertThat(tooFlat(inches(56.75).plus(Length.ofNanometres(1))))
                .isEqualTo("hang two leaves, or make the frame higher");
    }

    private static String tooFlat(Length opening) {
        GateSpec spec = GateSpec.builder()
                .middleRail(true)
                .reasonableLeafWidth(inches(60))
                .build();
        Finding flat = GateDesign.forOpening(opening, inches(56), HingeSide.LEFT, spec)
                .findings()
                .get(0);
        assertThat(flat.code()).isEqualTo("gate-brace-flat");
        return flat.remedy();
    }

    /** Common practice, no source: two hinges, three over 5 ft high or wider than reasonable. */
    @Test
    void aLeafUsuallyHasTwoHingesAndALargeOneThree() {
        Length hair = Length.ofNanometres(1);
        assertThat(hinges(inches(48.75), inches(60))).isEqualTo(2);
        assertThat(hinges(inches(48.75).plus(hair), inches(60))).isEqualTo(3);
        assertThat(hinges(inches(48.75), inches(60).plus(hair))).isEqualTo(3);
    }

    private static int hinges(Length opening, Length height) {
        return GateDesign.forOpening(
                        opening, height, HingeSide.LEFT, GateSpec.builder().build())
                .activeLeaf()
                .usualHinges();
    }

    @Test
    void designsAreEqualIfAllTheirPartsAre() {
        GateSpec usual = GateSpec.builder().build();
        GateSpec thick = GateSpec.builder().memberThickness(inches(1.75)).build();
        EqualValues.assertDistinct(
                () -> GateDesign.forOpening(inches(47.5), inches(56), HingeSide.LEFT, usual),
                () -> GateDesign.forOpening(inches(47), inches(56), HingeSide.LEFT, usual),
                () -> GateDesign.forOpening(inches(47.5), inches(55), HingeSide.LEFT, usual),
                () -> GateDesign.forOpening(inches(47.5), inches(56), HingeSide.RIGHT, usual),
                () -> GateDesign.pairForOpening(inches(47.5), inches(56), HingeSide.LEFT, usual),
                () -> GateDesign.forOpening(inches(47.5), inches(56), HingeSide.LEFT, usual)
                        .withRake(Slope.ofPercent(1)),
                () -> GateDesign.forOpening(inches(47.5), inches(56), HingeSide.LEFT, thick));
        EqualValues.assertDistinct(
                () -> leaf(usual),
                () -> leaf(thick),
                () -> leaf(GateSpec.builder().hingeGap(inches(1)).build()));
    }

    @Test
    void aDesignTellsItsLeaves() {
        GateSpec usual = GateSpec.builder().build();
        assertThat(GateDesign.forOpening(inches(47.5), inches(56), HingeSide.RIGHT, usual))
                .hasToString("gate leaf 3' 10 3/4\" wide and 4' 8\" high, hinged right");
        assertThat(GateDesign.pairForOpening(inches(96), inches(56), HingeSide.LEFT, usual))
                .hasToString("two leaves: gate leaf 3' 11 1/4\" wide and 4' 8\" high, hinged left;"
                        + " gate leaf 3' 11 1/4\" wide and 4' 8\" high, hinged right");
    }

    @Test
    void ofTwoLeavesAlikeEachFindingIsToldOnce() {
        GateDesign gate = GateDesign.pairForOpening(
                inches(120), inches(64), HingeSide.LEFT, GateSpec.builder().build());

        assertThat(gate.findings()).extracting(Finding::code).containsExactly("gate-leaf-wide");
        assertThat(gate.findings().get(0).place()).isEqualTo("each leaf, gate leaf");
    }

    @Test
    void refusesOpeningsWithoutRoomAndRakesThatAreTooSteep() {
        GateSpec spec = GateSpec.builder().build();
        assertThatThrownBy(() -> GateDesign.pairForOpening(inches(1.5), inches(56), HingeSide.LEFT, spec))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("clearOpening was 1 1/2 in")
                .hasMessageContaining("the gaps beside and between two leaves together");
        assertThatThrownBy(() -> GateDesign.forOpening(inches(47.5), inches(56), HingeSide.LEFT, spec)
                        .withRake(Slope.ofPercent(101)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("risingRight was");
        assertThatThrownBy(() -> GateSpec.builder().hingeBuildOut(inches(-1)))
                .hasMessageContaining("hingeBuildOut was -1 in");
    }
}
