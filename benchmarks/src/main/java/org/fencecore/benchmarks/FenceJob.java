package org.fencecore.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;

/**
 * An invented job of any size, in plain inches: a lot half as wide as its fence is long and half as deep as it is wide,
 * fenced on three sides, on rolling ground with a shot every 10 ft, with two gates in the back.
 *
 * <p>The ground rolls so gently from shot to shot that no board comes nearer to it than the style allows and no post has
 * to be lifted; {@link PlainFence} counts on that.
 */
final class FenceJob {

    static final double SETBACK = 6;
    static final double CLEAR_OPENING = 47.5;
    static final double WIND_PSF = 10;
    static final double FROST_DEPTH = 24;

    private static final double SHOT_SPACING = 120;
    private static final double ROLL = 24;
    private static final double ROLL_LENGTH = 2400;

    /** How wide and how deep the lot is. */
    final double width;

    final double depth;
    /** For each of the three sides, how far along the shots were taken and what heights they gave. */
    final double[][] shotStations = new double[3][];

    final double[][] shotHeights = new double[3][];
    /** How far along the back the gates' middles are. */
    final double[] gateCentres;

    private FenceJob(int feet) {
        width = feet * 6.0;
        depth = width / 2;
        gateCentres = new double[] {width / 4, width * 3 / 4};
        survey(0, 0, 0, 0, 1, depth);
        survey(1, 0, depth, 1, 0, width);
        survey(2, width, depth, 0, -1, depth);
    }

    /**
     * Returns the job with so much fence.
     *
     * @param feet how long the three fenced lot sides are together, a multiple of 2 and 50 or more
     */
    static FenceJob ofFeet(int feet) {
        if (feet < 50 || feet % 2 != 0) {
            throw new IllegalArgumentException("feet was " + feet + "; use an even number, 50 or more");
        }
        return new FenceJob(feet);
    }

    private void survey(int side, double east, double north, int eastward, int northward, double length) {
        int shots = (int) Math.ceil(length / SHOT_SPACING) + 1;
        shotStations[side] = new double[shots];
        shotHeights[side] = new double[shots];
        for (int shot = 0; shot < shots; shot++) {
            double along = Math.min(shot * SHOT_SPACING, length);
            shotStations[side][shot] = along;
            shotHeights[side][shot] = height(east + eastward * along, north + northward * along);
        }
    }

    /** Two rolls across each other, read to the nearest eighth. */
    private static double height(double east, double north) {
        double roll = Math.sin(2 * Math.PI * east / ROLL_LENGTH + 1) + Math.sin(2 * Math.PI * north / ROLL_LENGTH);
        return Math.rint(8 * ROLL * roll) / 8;
    }

    /** The job as the library takes it. */
    Site site() {
        Length wide = Length.ofInches(width);
        Length deep = Length.ofInches(depth);
        LotBoundary lot = LotBoundary.of(List.of(
                Course.of(Bearing.NORTH, deep),
                Course.of(Bearing.EAST, wide),
                Course.of(Bearing.SOUTH, deep),
                Course.of(Bearing.WEST, wide)));
        Site.Builder site = Site.on(lot)
                .fenceOn(1, 2, 3)
                .setback(Length.ofInches(SETBACK))
                .soil(SoilClass.SANDY_GRAVEL)
                .frostDepth(Length.ofInches(FROST_DEPTH))
                .windPressure(Pressure.ofPsf(WIND_PSF));
        for (int side = 0; side < 3; side++) {
            site.ground(side + 1, profile(side));
        }
        for (GateLocation gate : gates()) {
            site.gate(gate);
        }
        return site.build();
    }

    /** Shadowbox of 1x6 boards lapping 1 in, and the rest as usual. */
    static FenceStyle style() {
        return FenceStyle.builder().build();
    }

    private Profile profile(int side) {
        Profile.Builder ground = Profile.builder();
        for (int shot = 0; shot < shotStations[side].length; shot++) {
            ground.point(Length.ofInches(shotStations[side][shot]), Length.ofInches(shotHeights[side][shot]));
        }
        return ground.build();
    }

    private List<GateLocation> gates() {
        List<GateLocation> gates = new ArrayList<>();
        for (double centre : gateCentres) {
            gates.add(GateLocation.named("gate " + (gates.size() + 1))
                    .onSide(2)
                    .centredAt(Length.ofInches(centre))
                    .clearOpening(Length.ofInches(CLEAR_OPENING))
                    .build());
        }
        return gates;
    }
}
