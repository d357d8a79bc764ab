package org.fencecore.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/** Gates of one and two leaves, every joint, every brace, level and raked. */
class GateFrameProperties {

    /** Corners are rounded to the nanometre; lengths worked out from rounded corners may be off by a few. */
    private static final double FEW = 8;

    @Property(tries = 500)
    void leavesGapsAndBuildOutsAreTheOpening(@ForAll("gates") GateDesign gate) {
        GateSpec spec = gate.spec();
        Length sum = Length.ZERO;
        for (GateLeaf leaf : gate.leaves()) {
            sum = sum.plus(leaf.width());
        }
        Length beside = spec.hingeBuildOut().plus(spec.hingeGap());
        sum = gate.isPair()
                ? sum.plus(beside.times(2)).plus(spec.centreGap())
                : sum.plus(beside).plus(spec.latchGap()).plus(spec.latchBuildOut());
        assertThat(sum).isEqualTo(gate.clearOpening());
        if (gate.isPair()) {
            long odd = gate.activeLeaf()
                    .width()
                    .minus(gate.fixedLeaf().orElseThrow().width())
                    .nanometres();
            assertThat(odd).isBetween(0L, 1L);
        }
    }

    @Property(tries = 500)
    void eachBraceTouchesTheFrameWhereItIsCutAndIsNowhereOutside(@ForAll("gates") GateDesign gate) {
        for (GateLeaf leaf : gate.leaves()) {
            for (GateBrace brace : leaf.braces()) {
                List<Double> aboveLower = new ArrayList<>();
                List<Double> belowUpper = new ArrayList<>();
                List<Double> fromFootStile = new ArrayList<>();
                List<Double> fromHeadStile = new ArrayList<>();
                double grade = leaf.rake().ratio().value();
                double high = y(brace.headPoint())
                        - y(brace.footPoint())
                        - grade * (x(brace.headPoint()) - x(brace.footPoint()));
                for (ProfilePoint point : brace.outline()) {
                    double above = y(point) - y(brace.footPoint()) - grade * (x(point) - x(brace.footPoint()));
                    aboveLower.add(above);
                    belowUpper.add(high - above);
                    double side = Math.signum(x(brace.headPoint()) - x(brace.footPoint()));
                    fromFootStile.add(side * (x(point) - x(brace.footPoint())));
                    fromHeadStile.add(side * (x(brace.headPoint()) - x(point)));
                }
                for (List<Double> distances : List.of(aboveLower, belowUpper, fromFootStile, fromHeadStile)) {
                    assertThat(distances).allMatch(distance -> distance > -FEW);
                }
                boolean wood = brace.kind() == BraceKind.WOOD;
                int onRail = wood && brace.ends() != BraceEnds.STILE_CUTS ? 2 : 1;
                int onStile = wood && brace.ends() != BraceEnds.RAIL_CUTS ? 2 : 1;
                assertThat(touching(aboveLower)).isGreaterThanOrEqualTo(onRail);
                assertThat(touching(belowUpper)).isGreaterThanOrEqualTo(onRail);
                assertThat(touching(fromFootStile)).isGreaterThanOrEqualTo(onStile);
                assertThat(touching(fromHeadStile)).isGreaterThanOrEqualTo(onStile);
            }
        }
    }

    private static long touching(List<Double> distances) {
        return distances.stream().filter(distance -> Math.abs(distance) <= FEW).count();
    }

    /** Both long edges run at the rise, as far apart as the lumber is wide, and are as long as edgeLength says. */
    @Property(tries = 500)
    void theCutBraceIsAsWideAndLongAsItSays(@ForAll("gates") GateDesign gate) {
        for (GateBrace brace : gate.activeLeaf().braces()) {
            if (brace.kind() == BraceKind.CABLE) {
                continue;
            }
            List<ProfilePoint> outline = brace.outline();
            // The lower edge comes after the cut at the foot, the upper edge half way round.
            int lower = brace.ends() == BraceEnds.STILE_CUTS ? 0 : 1;
            int half = outline.size() / 2;
            ProfilePoint a = outline.get(lower);
            ProfilePoint b = outline.get(lower + 1);
            ProfilePoint c = outline.get(lower + half);
            double dx = x(b) - x(a);
            double dy = y(b) - y(a);
            double edge = Math.hypot(dx, dy);
            double away = Math.abs(dx * (y(c) - y(a)) - dy * (x(c) - x(a))) / edge;

            assertThat(edge).isCloseTo((double) brace.edgeLength().nanometres(), within(FEW));
            if (edge > 1e6) {
                // An edge shorter than a millimetre has no direction worth measuring between rounded corners.
                assertThat(away).isCloseTo((double) brace.width().nanometres(), within(1e4));
            }
            double cos = Math.cos(brace.rise().radians());
            double sin = Math.sin(brace.rise().radians());
            double side = Math.signum(x(brace.headPoint()) - x(brace.footPoint()));
            double most = Double.NEGATIVE_INFINITY;
            double least = Double.POSITIVE_INFINITY;
            for (ProfilePoint point : outline) {
                double along = side * x(point) * cos + y(point) * sin;
                most = Math.max(most, along);
                least = Math.min(least, along);
            }
            assertThat(most - least).isCloseTo((double) brace.length().nanometres(), within(FEW * 4));
            assertThat(brace.worksheet().result()).isEqualTo(brace.edgeLength());
        }
    }

    @Property(tries = 500)
    void piecesStayInTheFrameAndDiagonalsDifferByTheRakeAlone(@ForAll("gates") GateDesign gate) {
        for (GateLeaf leaf : gate.leaves()) {
            double grade = leaf.rake().ratio().value();
            for (FramePiece piece : leaf.pieces()) {
                for (ProfilePoint point : piece.outline()) {
                    double above = y(point) - grade * x(point);
                    assertThat(x(point)).isBetween(0.0, (double) leaf.width().nanometres());
                    assertThat(above).isBetween(-FEW, leaf.frameHeight().nanometres() + FEW);
                }
                assertThat(piece.shortEdge()).isLessThanOrEqualTo(piece.length().plus(Length.ofNanometres(8)));
            }
            assertThat(leaf.risingDiagonal().equals(leaf.fallingDiagonal()))
                    .isEqualTo(leaf.rake().isZero());
        }
    }

    @Property(tries = 300)
    void mirroredHandMirroredPieces(@ForAll("gates") GateDesign gate) {
        GateLeaf here = gate.activeLeaf();
        HingeSide other = here.hingeSide().opposite();
        GateDesign mirror = gate.isPair()
                ? GateDesign.pairForOpening(gate.clearOpening(), gate.frameHeight(), other, gate.spec())
                : GateDesign.forOpening(gate.clearOpening(), gate.frameHeight(), other, gate.spec());
        GateLeaf there = mirror.withRake(gate.rake().negated()).activeLeaf();

        assertThat(there.place().start())
                .isEqualTo(gate.clearOpening().minus(here.place().end()));
        assertThat(there.pieces()).extracting(FramePiece::length).hasSameSizeAs(here.pieces());
        for (int i = 0; i < here.pieces().size(); i++) {
            assertThat(there.pieces().get(i).member())
                    .isEqualTo(here.pieces().get(i).member());
            assertClose(there.pieces().get(i).length(), here.pieces().get(i).length());
        }
        for (int i = 0; i < here.braces().size(); i++) {
            assertThat(there.braces().get(i).foot())
                    .isEqualTo(here.braces().get(i).foot());
            assertClose(there.braces().get(i).length(), here.braces().get(i).length());
            assertClose(there.braces().get(i).edgeLength(), here.braces().get(i).edgeLength());
        }
    }

    private static void assertClose(Length a, Length b) {
        assertThat(a.minus(b).abs()).isLessThanOrEqualTo(Length.ofNanometres(16));
    }

    private static double x(ProfilePoint point) {
        return point.station().nanometres();
    }

    private static double y(ProfilePoint point) {
        return point.elevation().nanometres();
    }

    @Provide
    static Arbitrary<GateDesign> gates() {
        Arbitrary<GateSpec> specs = Combinators.combine(
                        Arbitraries.of(FrameJoint.class),
                        Arbitraries.of(BraceKind.class),
                        Arbitraries.of(BraceEnds.class),
                        millimetres(30, 140),
                        millimetres(30, 140),
                        millimetres(1, 40),
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false))
                .as((joint, kind, ends, member, brace, buildOut, middle, reversed) -> GateSpec.builder()
                        .joint(joint)
                        .braceKind(kind)
                        .braceEnds(ends)
                        .memberWidth(member)
                        .braceWidth(brace)
                        .hingeBuildOut(buildOut)
                        .middleRail(middle)
                        .braceReversed(reversed)
                        .build());
        return Combinators.combine(
                        specs,
                        millimetres(800, 4000),
                        millimetres(700, 2500),
                        Arbitraries.of(HingeSide.class),
                        Arbitraries.of(true, false),
                        Arbitraries.frequencyOf(
                                net.jqwik.api.Tuple.of(1, Arbitraries.just(0)),
                                net.jqwik.api.Tuple.of(2, Arbitraries.integers().between(-20, 20))))
                .as((spec, opening, height, side, pair, rake) -> (pair
                                ? GateDesign.pairForOpening(opening, height, side, spec)
                                : GateDesign.forOpening(opening, height, side, spec))
                        .withRake(Slope.ofPercent(rake)));
    }

    private static Arbitrary<Length> millimetres(int from, int to) {
        return Arbitraries.longs()
                .between(from * 1_000_000L, to * 1_000_000L)
                .map(Length::ofNanometres)
                .withoutEdgeCases();
    }
}
