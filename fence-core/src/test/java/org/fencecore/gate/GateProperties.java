package org.fencecore.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;

class GateProperties {

    @Property
    void leafAndGapsAreTheOpening(@ForAll("anyGates") GateLeaf gate) {
        assertThat(gate.width().plus(gate.spec().hingeGap()).plus(gate.spec().latchGap()))
                .isEqualTo(gate.clearOpening());
    }

    @Property
    void fromTheMinimumOnNothingBlocks(@ForAll("sureGates") GateLeaf gate) {
        assertThat(gate.findings()).extracting(Finding::severity).doesNotContain(Severity.BLOCKER);
        assertThat(gate.pieces()).hasSize(gate.spec().hasMiddleRail() ? 5 : 4);
        assertThat(gate.braces()).hasSize(gate.spec().hasMiddleRail() ? 2 : 1);
    }

    @Property
    void aBlockerAndOnlyABlockerLeavesPiecesOut(@ForAll("anyGates") GateLeaf gate) {
        boolean blocked = gate.findings().stream().anyMatch(finding -> finding.severity() == Severity.BLOCKER);

        assertThat(gate.braces().isEmpty()).isEqualTo(blocked);
        assertThat(gate.worksheet().result()).isEqualTo(gate.diagonal());
    }

    @Property
    void piecesAndClearSpacesFillTheFrame(@ForAll("sureGates") GateLeaf gate) {
        List<FramePiece> rails = gate.pieces().subList(2, gate.pieces().size());
        Interval left = stile(gate, HingeSide.LEFT).across();
        Interval right = stile(gate, HingeSide.RIGHT).across();

        assertThat(left.start()).isEqualTo(Length.ZERO);
        assertThat(right.end()).isEqualTo(gate.width());
        assertThat(rails).allSatisfy(rail -> assertThat(rail.across()).isEqualTo(gap(left, right)));
        Length height = rails.stream().map(FramePiece::width).reduce(Length.ZERO, Length::plus);
        for (Length clear : gate.clearHeights()) {
            height = height.plus(clear);
        }
        assertThat(height).isEqualTo(gate.frameHeight());
        assertThat(rails.get(rails.size() - 1).up().end()).isEqualTo(gate.frameHeight());
    }

    @Property
    void theMiddleRailIsInTheMiddle(@ForAll("sureGates") GateLeaf gate) {
        gate.middleRailCentre().ifPresent(centre -> {
            assertThat(gate.pieces().get(3).up().middle()).isEqualTo(centre);
            long odd =
                    gate.clearHeights().get(0).minus(gate.clearHeights().get(1)).nanometres();
            assertThat(odd).isBetween(-1L, 1L);
        });
    }

    @Property
    void bothDiagonalsOfTheFrameMeasureTheSame(@ForAll("sureGates") GateLeaf gate) {
        FramePiece left = stile(gate, HingeSide.LEFT);
        FramePiece right = stile(gate, HingeSide.RIGHT);
        Point bottomLeft = Point.of(left.across().start(), left.up().start());
        Point topLeft = Point.of(left.across().start(), left.up().end());
        Point bottomRight = Point.of(right.across().end(), right.up().start());
        Point topRight = Point.of(right.across().end(), right.up().end());

        assertThat(bottomLeft.distanceTo(topRight)).isCloseTo(topLeft.distanceTo(bottomRight), within(1.0));
        assertThat(bottomLeft.distanceTo(topRight)).isCloseTo(nanometres(gate.diagonal()), within(1.0));
    }

    @Property
    void eachBraceLiesInsideTheFrameAndBearsOnItsFourMembers(@ForAll("sureGates") GateLeaf gate) {
        for (GateBrace brace : gate.braces()) {
            Interval between = between(gate, brace);
            Interval height = gap(
                    piece(gate, brace.foot().rail()).up(),
                    piece(gate, brace.head().rail()).up());
            assertThat(brace.across()).isEqualTo(between);
            assertThat(brace.up()).isEqualTo(height);

            List<Point> outline = outline(brace);
            double rounding = 1;
            assertThat(outline).allSatisfy(point -> {
                assertThat(point.x()).isBetween(-rounding, nanometres(between.length()) + rounding);
                assertThat(point.y()).isBetween(-rounding, nanometres(height.length()) + rounding);
            });
            assertThat(outline.stream().filter(point -> point.y() == 0)).hasSize(2);
            assertThat(outline.stream().filter(point -> point.y() == nanometres(height.length())))
                    .hasSize(2);
            assertThat(outline.stream().filter(point -> point.x() == 0)).hasSize(2);
            assertThat(outline.stream().filter(point -> point.x() == nanometres(between.length())))
                    .hasSize(2);
        }
    }

    @Property
    void theCutPieceIsAsWideAndLongAndBevelledAsItSays(@ForAll("sureGates") GateLeaf gate) {
        for (GateBrace brace : gate.braces()) {
            List<Point> outline = outline(brace);
            Point foot = outline.get(0);
            Point footOnRail = outline.get(1);
            Point headOnStile = outline.get(2);
            Point head = outline.get(3);
            Point headOnRail = outline.get(4);
            Point footOnStile = outline.get(5);
            double few = 4; // corners are rounded to the nanometre

            assertThat(foot.distanceTo(head)).isCloseTo(nanometres(brace.length()), within(few));
            assertThat(footOnRail.distanceTo(headOnStile)).isCloseTo(nanometres(brace.edgeLength()), within(few));
            assertThat(footOnStile.distanceTo(headOnRail)).isCloseTo(nanometres(brace.edgeLength()), within(few));
            // The centreline has half the width on either side, at both ends.
            for (Point corner : List.of(footOnRail, headOnStile, headOnRail, footOnStile)) {
                assertThat(corner.offLine(foot, head)).isCloseTo(nanometres(brace.width()) / 2, within(few));
            }
            // A cut square to the centreline would be half the width long; off square it grows by the cosine.
            double half = nanometres(brace.width()) / 2;
            assertThat(foot.distanceTo(footOnRail)
                            * brace.railCut().orElseThrow().cos())
                    .isCloseTo(half, within(few));
            assertThat(head.distanceTo(headOnRail)
                            * brace.railCut().orElseThrow().cos())
                    .isCloseTo(half, within(few));
            assertThat(foot.distanceTo(footOnStile)
                            * brace.stileCut().orElseThrow().cos())
                    .isCloseTo(half, within(few));
            assertThat(head.distanceTo(headOnStile)
                            * brace.stileCut().orElseThrow().cos())
                    .isCloseTo(half, within(few));
            assertThat(brace.railCut()
                            .orElseThrow()
                            .plus(brace.stileCut().orElseThrow())
                            .degrees())
                    .isCloseTo(90, within(1e-9));
        }
    }

    @Property
    void onTheOtherHandEveryPieceIsMirrored(@ForAll("anyGates") GateLeaf gate) {
        HingeSide other = gate.hingeSide() == HingeSide.LEFT ? HingeSide.RIGHT : HingeSide.LEFT;
        GateLeaf mirrored = leaf(gate.clearOpening(), gate.frameHeight(), other, gate.spec());

        assertThat(mirrored.diagonal()).isEqualTo(gate.diagonal());
        assertThat(mirrored.findings()).isEqualTo(gate.findings());
        assertThat(mirrored.pieces()).hasSameSizeAs(gate.pieces());
        for (int i = 0; i < gate.pieces().size(); i++) {
            FramePiece here = gate.pieces().get(i);
            FramePiece there = mirrored.pieces().get(i);
            assertThat(there.member()).isEqualTo(here.member());
            assertThat(there.up()).isEqualTo(here.up());
            assertThat(there.across()).isEqualTo(mirror(here.across(), gate.width()));
        }
        assertThat(mirrored.braces()).hasSameSizeAs(gate.braces());
        for (int i = 0; i < gate.braces().size(); i++) {
            GateBrace here = gate.braces().get(i);
            GateBrace there = mirrored.braces().get(i);
            assertThat(there.foot()).isEqualTo(here.foot());
            assertThat(there.head()).isEqualTo(here.head());
            assertThat(there.up()).isEqualTo(here.up());
            assertThat(there.across()).isEqualTo(mirror(here.across(), gate.width()));
            assertThat(there.length()).isEqualTo(here.length());
            assertThat(there.worksheet().result()).isEqualTo(there.edgeLength());
        }
    }

    private static GateLeaf leaf(Length clearOpening, Length frameHeight, HingeSide hingeSide, GateSpec spec) {
        return GateDesign.forOpening(clearOpening, frameHeight, hingeSide, spec).activeLeaf();
    }

    private static Interval mirror(Interval across, Length leafWidth) {
        return Interval.of(leafWidth.minus(across.end()), leafWidth.minus(across.start()));
    }

    private static FramePiece piece(GateLeaf gate, FrameMember member) {
        return gate.pieces().stream()
                .filter(piece -> piece.member() == member)
                .findFirst()
                .orElseThrow();
    }

    private static FramePiece stile(GateLeaf gate, HingeSide side) {
        return piece(gate, gate.hingeSide() == side ? FrameMember.HINGE_STILE : FrameMember.LATCH_STILE);
    }

    private static Interval between(GateLeaf gate, GateBrace brace) {
        Interval foot = piece(gate, brace.foot().stile()).across();
        Interval head = piece(gate, brace.head().stile()).across();
        return gate.hingeSide() == HingeSide.LEFT ? gap(foot, head) : gap(head, foot);
    }

    private static Interval gap(Interval first, Interval second) {
        Length start = first.end();
        Length end = second.start();
        return Interval.of(start, end);
    }

    private static double nanometres(Length length) {
        return length.nanometres();
    }

    /** The corners of a brace in its clear space, from the foot round, measured away from the foot. */
    private static List<Point> outline(GateBrace brace) {
        Length w = brace.across().length();
        Length h = brace.up().length();
        return List.of(
                Point.of(Length.ZERO, Length.ZERO),
                Point.of(brace.railBearing(), Length.ZERO),
                Point.of(w, h.minus(brace.stileBearing())),
                Point.of(w, h),
                Point.of(w.minus(brace.railBearing()), h),
                Point.of(Length.ZERO, brace.stileBearing()));
    }

    private record Point(double x, double y) {

        static Point of(Length x, Length y) {
            return new Point(nanometres(x), nanometres(y));
        }

        double distanceTo(Point other) {
            return Math.hypot(x - other.x, y - other.y);
        }

        /** How far this is from the line through two points, on either side. */
        double offLine(Point from, Point to) {
            double cross = (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x);
            return Math.abs(cross) / from.distanceTo(to);
        }
    }

    @Provide
    static Arbitrary<GateLeaf> sureGates() {
        return gates(GateSpec::minimumOpening, GateSpec::minimumHeight);
    }

    @Provide
    static Arbitrary<GateLeaf> anyGates() {
        return gates(
                spec -> spec.hingeGap().plus(spec.latchGap()).plus(Length.ofNanometres(1)),
                spec -> Length.ofNanometres(1));
    }

    private static Arbitrary<GateLeaf> gates(
            Function<GateSpec, Length> leastOpening, Function<GateSpec, Length> leastHeight) {
        return specs().flatMap(spec -> Combinators.combine(upTo(3000), upTo(3000), Arbitraries.of(HingeSide.class))
                .as((wider, higher, side) -> leaf(
                        leastOpening.apply(spec).plus(wider),
                        leastHeight.apply(spec).plus(higher),
                        side,
                        spec)));
    }

    private static Arbitrary<GateSpec> specs() {
        return Combinators.combine(
                        anySize(50), anySize(50), anySize(200), sizes(200), anySize(100), Arbitraries.of(true, false))
                .as((hingeGap, latchGap, member, brace, thickness, middleRail) -> GateSpec.builder()
                        .hingeGap(hingeGap)
                        .latchGap(latchGap)
                        .memberWidth(member)
                        .braceWidth(brace)
                        .memberThickness(thickness)
                        .middleRail(middleRail)
                        .build());
    }

    private static Arbitrary<Length> sizes(long largestMillimetres) {
        return upTo(largestMillimetres).map(length -> length.plus(Length.ofMillimetres(1)));
    }

    /** Edge cases of every size at once would leave no tries for others. */
    private static Arbitrary<Length> anySize(long largestMillimetres) {
        return sizes(largestMillimetres).withoutEdgeCases();
    }

    private static Arbitrary<Length> upTo(long millimetres) {
        return Arbitraries.longs().between(0, millimetres * 1_000_000).map(Length::ofNanometres);
    }
}
