package org.fencecore.gate.hang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;

class HangProperties {

    private static final GateWood PINE = GateWood.southernPine(Ratio.ofPercent(19));

    @Property(tries = 200)
    void hingeForcesBalanceTheWeightsMoment(
            @ForAll @DoubleRange(min = 30, max = 80) double opening,
            @ForAll @DoubleRange(min = 30, max = 90) double height,
            @ForAll @IntRange(min = 2, max = 6) int hinges,
            @ForAll @DoubleRange(max = 300) double leaning,
            @ForAll("sides") HingeSide side) {
        GateLeaf leaf = GateDesign.forOpening(
                        Length.ofInches(opening),
                        Length.ofInches(height),
                        side,
                        GateSpec.builder().build())
                .activeLeaf();
        HingeSpec spec = HingeSpec.evenly(hinges, Length.ofInches(6)).withLoadAtLatch(Force.ofPoundsForce(leaning));
        HingeLoads loads = HingeLoads.of(LeafWeight.of(leaf, PINE), spec);
        List<Length> heights = spec.heightsOn(leaf);

        double sum = 0;
        double moment = 0;
        for (int i = 0; i < heights.size(); i++) {
            double pull = loads.pulls().get(i).newtons();
            sum += pull;
            moment += pull * heights.get(i).metres();
        }
        assertThat(sum).isCloseTo(0, within(1e-9));
        assertThat(moment).isCloseTo(loads.moment().newtonMetres(), within(1e-9));
        double most = loads.pulls().stream().mapToDouble(Force::newtons).max().orElseThrow();
        assertThat(loads.pullAtTop().newtons()).isEqualTo(most);
    }

    /** Whatever holds two leaves, all forces are in balance, and so are the moments about the ground line. */
    @Property(tries = 200)
    void windOnTwoLeavesIsInBalance(
            @ForAll @DoubleRange(min = 30, max = 80) double opening,
            @ForAll @IntRange(min = 2, max = 6) int hinges,
            @ForAll @DoubleRange(max = 60) double psf,
            @ForAll @DoubleRange(min = 1, max = 70) double latch,
            @ForAll("sides") HingeSide side) {
        GateLeaf leaf = GateDesign.forOpening(
                        Length.ofInches(opening),
                        Length.ofInches(56),
                        side,
                        GateSpec.builder().build())
                .activeLeaf();
        HingeLoads loads = HingeLoads.of(LeafWeight.of(leaf, PINE), HingeSpec.evenly(hinges, Length.ofInches(6)));
        LeafWind free =
                LeafWind.on(loads, Pressure.ofPsf(psf), Length.ofInches(2), Length.ofInches(74), Length.ofInches(10));
        LeafWind active = free.heldAt(Length.ofInches(latch));
        LeafWind fixed = free.heldAt(Length.ZERO).carrying(active);

        double force = 2 * free.force().newtons();
        double held = active.onHinges().newtons()
                + fixed.onHinges().newtons()
                + fixed.atLatchEdge().newtons();
        assertThat(held).isCloseTo(force, within(1e-6));
        assertThat(active.atGround().plus(fixed.atGround()).newtonMetres())
                .isCloseTo(force * free.height().metres(), within(1e-6));
        for (LeafWind wind : List.of(free, active, fixed)) {
            double sum = 0;
            double moment = 0;
            List<Length> heights = loads.hinges().heightsOn(leaf);
            for (int i = 0; i < hinges; i++) {
                double at = wind.atHinges().get(i).newtons();
                sum += at;
                moment += at * heights.get(i).plus(Length.ofInches(10)).metres();
            }
            assertThat(sum).isCloseTo(wind.onHinges().newtons(), within(1e-6));
            assertThat(moment).isCloseTo(wind.atGround().newtonMetres(), within(1e-6));
        }
    }

    /**
     * On a plane the clearance at one angle is least at one of the four corners of the leaf, and each corner goes round a
     * circle: it is highest over the ground's rise straight uphill, or at an end of its arc.
     */
    @Property(tries = 150)
    void onAPlaneTheSwingIsAsInClosedForm(
            @ForAll @DoubleRange(min = -15, max = 15) double east,
            @ForAll @DoubleRange(min = -15, max = 15) double north,
            @ForAll @DoubleRange(max = 360) double shut,
            @ForAll @DoubleRange(min = 20, max = 120) double width,
            @ForAll @DoubleRange(min = 0.5, max = 5) double thickness,
            @ForAll @DoubleRange(min = -10, max = 10) double rake,
            @ForAll @DoubleRange(min = 10, max = 180) double open,
            @ForAll("swings") Side opens) {
        Plane ground = Plane.of(Point.ORIGIN, Length.ZERO, Slope.ofPercent(east), Slope.ofPercent(north));
        Bearing along = Bearing.ofAzimuth(Angle.ofDegrees(shut));
        Segment closed = Segment.of(Point.ORIGIN, Point.ORIGIN.plus(along, Length.ofInches(width)));
        GateSwing swing = GateSwing.over(ground)
                .closed(closed)
                .opens(opens)
                .bottom(Length.ofInches(4))
                .thickness(Length.ofInches(thickness))
                .rake(Slope.ofPercent(rake))
                .openTo(Angle.ofDegrees(open))
                .build();

        // Everything turned so that the leaf opens by growing angles: mirror a swing to the right.
        int hand = opens == Side.RIGHT ? 1 : -1;
        double least = Double.POSITIVE_INFINITY;
        for (double x : new double[] {0, width}) {
            for (double back : new double[] {0, thickness}) {
                double from = Math.toRadians(shut) - hand * Math.atan2(back, x);
                double rise = highest(east / 100, north / 100, Math.hypot(x, back), from, hand * Math.toRadians(open));
                least = Math.min(least, 4 + rake / 100 * x - rise);
            }
        }
        assertThat(swing.smallestClearance().inches()).isCloseTo(least, within(1e-5));
    }

    /** How high a plane gets on an arc round the origin, from one azimuth on. */
    private static double highest(double east, double north, double radius, double from, double turn) {
        double grade = Math.hypot(east, north);
        double uphill = Math.atan2(east, north);
        double low = Math.min(from, from + turn);
        double past = uphill - low;
        past -= 2 * Math.PI * Math.floor(past / (2 * Math.PI));
        if (past <= Math.abs(turn)) {
            return grade * radius;
        }
        return grade * radius * Math.max(Math.cos(from - uphill), Math.cos(from + turn - uphill));
    }

    @Property(tries = 200)
    void raisingOrRakingAsToldClears(
            @ForAll @DoubleRange(min = -12, max = 12) double east,
            @ForAll @DoubleRange(min = -12, max = 12) double north,
            @ForAll("swings") Side opens) {
        GateSwing.Builder builder = GateSwing.over(
                        Plane.of(Point.ORIGIN, Length.ZERO, Slope.ofPercent(east), Slope.ofPercent(north)))
                .closed(Segment.of(Point.ORIGIN, Point.of(Length.ofInches(44), Length.ZERO)))
                .opens(opens)
                .bottom(Length.ofInches(3));
        GateSwing swing = builder.build();
        Length hair = Length.ofNanometres(1000);

        GateSwing raised =
                builder.bottom(Length.ofInches(3).plus(swing.raiseNeeded())).build();
        assertThat(raised.smallestClearance().plus(hair)).isGreaterThanOrEqualTo(Length.ofInches(2));
        swing.rakeNeeded().ifPresent(rake -> {
            GateSwing raked = builder.bottom(Length.ofInches(3)).rake(rake).build();
            assertThat(raked.smallestClearance().plus(hair)).isGreaterThanOrEqualTo(Length.ofInches(2));
        });
    }

    /** The drop of unequal diagonals, measured on a frame that is turned by an angle. */
    @Property(tries = 200)
    void unequalDiagonalsMeanTheDropOfATurnedFrame(
            @ForAll @DoubleRange(min = 20, max = 90) double width,
            @ForAll @DoubleRange(min = 20, max = 90) double height,
            @ForAll @DoubleRange(max = 0.3) double turn) {
        GateLeaf leaf = GateDesign.forOpening(
                        Length.ofInches(width + 0.75),
                        Length.ofInches(height),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .activeLeaf();
        double w = leaf.width().inches();
        double h = leaf.frameHeight().inches();
        double down = w * Math.sin(turn);
        double out = w * Math.cos(turn);
        double difference = Math.hypot(out, h + down) - Math.hypot(out, h - down);

        assertThat(LatchDrop.ofDiagonals(leaf, Length.ofInches(difference))
                        .drop()
                        .inches())
                .isCloseTo(down, within(1e-5));
    }

    @Provide
    static Arbitrary<HingeSide> sides() {
        return Arbitraries.of(HingeSide.class);
    }

    @Provide
    static Arbitrary<Side> swings() {
        return Arbitraries.of(Side.class);
    }
}
